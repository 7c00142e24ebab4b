//! The index of formulas: what each gives, its law, its limits, its source.

use crate::{cited, family, head, row};
use reckoning::{Card, Law, Limit, Symbol};

/// The page.
pub(crate) fn page() -> String {
    let count = formulas::register::cards().count();
    let mut out = format!(
        "# Formulas\n\nThis page is made from the {count} cards in the code. `steamwright reckon \
         NAME` explains one, `steamwright reckon NAME SYMBOL=QUANTITY …` works it. Outside its \
         limits a formula still gives its value, and whatever rests on it is unproved.\n"
    );
    let mut last = "";
    for card in formulas::register::cards() {
        let own = family(card.id);
        if own != last {
            last = own;
            out += &format!("\n## {own}\n");
            out += &head(&["formula", "gives", "law", "limits", "from"]);
        }
        out += &row(&cells(card));
    }
    out
}

fn cells(card: &Card) -> [String; 5] {
    let law = match card.law {
        Law::Closed(law) => format!("`{law}`"),
        Law::Words(words) => words.to_owned(),
    };
    let limits: Vec<String> = card.limits.iter().map(limit).collect();
    [
        format!("`{}`", card.id),
        symbol(&card.gives),
        law,
        limits.join("; "),
        cited(&card.cite),
    ]
}

fn symbol(symbol: &Symbol) -> String {
    let unit = symbol.unit.symbol;
    let unit = if unit.is_empty() {
        String::new()
    } else {
        format!(", {unit}")
    };
    format!("`{}`, {}{unit}", symbol.name, symbol.meaning)
}

fn limit(limit: &Limit) -> String {
    let expr = limit.expr;
    match (limit.low, limit.high) {
        (Some(low), Some(high)) => format!("`{expr}` {low} to {high}"),
        (Some(low), None) => format!("`{expr}` at least {low}"),
        (None, Some(high)) => format!("`{expr}` at most {high}"),
        (None, None) => format!("`{expr}`"),
    }
}
