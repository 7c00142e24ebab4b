//! The index of formulas: what each gives, its law, its limits, its source.

use crate::cell;
use reckoning::{Card, Law};

/// The page.
pub(crate) fn page() -> String {
    let mut out = String::from(
        "# Formulas\n\nThis page is made from the cards in the code. `steamwright reckon NAME` \
         explains one and works it.\n",
    );
    let mut family = "";
    for card in formulas::register::cards() {
        let own = card.id.split('.').next().unwrap_or(card.id);
        if own != family {
            family = own;
            out += &format!(
                "\n## {own}\n\n| formula | gives | law | limits | from |\n| --- | --- | --- | --- | --- |\n"
            );
        }
        out += &row(card);
    }
    out
}

fn row(card: &Card) -> String {
    let law = match card.law {
        Law::Closed(law) => format!("`{law}`"),
        Law::Words(words) => words.to_owned(),
    };
    let number = |x: Option<f64>| x.map_or(String::new(), |x| x.to_string());
    let limits: Vec<String> = card
        .limits
        .iter()
        .map(|l| format!("`{}` {}…{}", l.expr, number(l.low), number(l.high)))
        .collect();
    let source = card.cite.source;
    let cells = [
        format!("`{}`", card.id),
        format!(
            "{}, {} {}",
            card.gives.name, card.gives.meaning, card.gives.unit.symbol
        ),
        law,
        limits.join("; "),
        format!(
            "{}, {} ({})",
            source.title,
            card.cite.place,
            source.seen.words()
        ),
    ]
    .map(|text| cell(text.trim()));
    format!("| {} |\n", cells.join(" | "))
}
