//! The answers in words.

use super::Answered;
use reckoning::quantity::Unit;
use reckoning::{Breach, Card, Law, Limit, Spread, Symbol};
use std::fmt::{Result, Write as _};

/// All cards by family, with what each gives.
pub(super) fn list(cards: &[&'static Card]) -> String {
    text(|out| {
        let width = width(cards.iter().map(|c| c.id));
        let mut family = "";
        for card in cards {
            let own = super::json::family(card);
            if own != family {
                let gap = if family.is_empty() { "" } else { "\n" };
                writeln!(out, "{gap}{own}")?;
                family = own;
            }
            let Symbol {
                name,
                meaning,
                unit,
            } = card.gives;
            let id = card.id;
            writeln!(out, "  {id:width$}  {name}, {meaning}{}", in_unit(unit))?;
        }
        Ok(())
    })
}

/// One card as the source has it.
pub(super) fn explain(card: &Card) -> String {
    text(|out| {
        writeln!(out, "{}", card.id)?;
        let all = || card.takes.iter().chain([&card.gives]);
        let names = width(all().map(|s| s.name));
        let units = width(all().map(|s| s.unit.symbol));
        let mut row = |head: &str, s: &Symbol| {
            let unit = s.unit.symbol;
            writeln!(
                out,
                "{head:7}{:names$}  {unit:units$}  {}",
                s.name, s.meaning
            )
        };
        row("gives", &card.gives)?;
        for (place, symbol) in card.takes.iter().enumerate() {
            row(if place == 0 { "takes" } else { "" }, symbol)?;
        }
        for (place, line) in law_lines(card).iter().enumerate() {
            writeln!(out, "{:7}{line}", if place == 0 { "law" } else { "" })?;
        }
        for (place, limit) in card.limits.iter().enumerate() {
            let head = if place == 0 { "limits" } else { "" };
            writeln!(out, "{head:7}{}", limit_words(limit))?;
        }
        writeln!(out, "spread {}", spread_words(card.spread))?;
        writeln!(out, "source {}", source_words(card))?;
        let ask: Vec<String> = card
            .takes
            .iter()
            .map(|s| format!("{}=\"…\"", s.name))
            .collect();
        writeln!(
            out,
            "ask    steamwright reckon {} {}",
            card.id,
            ask.join(" ")
        )
    })
}

/// A worked card: result, working, limits broken, source.
pub(super) fn worked(answered: &Answered) -> String {
    let printed = answered.working.printed(answered.result);
    text(|out| {
        let card = answered.card;
        writeln!(out, "{}   ({})", printed.result, card.gives.meaning)?;
        writeln!(out, "\nworking")?;
        let lines = answered.working.lines();
        let rows = card.takes.iter().zip(lines).zip(&answered.inputs);
        for ((symbol, line), (_, typed)) in rows {
            let shown = with_unit(&line.shown, symbol.unit);
            let also = if says_the_same(typed, &shown) {
                String::new()
            } else {
                format!(" ({typed})")
            };
            writeln!(
                out,
                "  {} = {shown}{also}   {}",
                symbol.name, symbol.meaning
            )?;
        }
        for line in law_lines(card) {
            writeln!(out, "  {line}")?;
        }
        if let Some(numbers) = &printed.with_numbers {
            for step in numbers.split(';') {
                writeln!(out, "  {}", step.trim())?;
            }
        }
        writeln!(out, "  {}", printed.result)?;
        if !answered.breaches.is_empty() {
            writeln!(
                out,
                "\noutside the limits of its source, so nothing can be proved with it"
            )?;
            for breach in &answered.breaches {
                writeln!(out, "  {}", breach_words(breach))?;
            }
        }
        writeln!(out, "\nsource {}", source_words(card))
    })
}

fn text(write: impl FnOnce(&mut String) -> Result) -> String {
    let mut out = String::new();
    // Writing to a String cannot fail.
    let _: Result = write(&mut out);
    out
}

fn width<'a>(texts: impl Iterator<Item = &'a str>) -> usize {
    texts.map(|t| t.chars().count()).fold(0, usize::max)
}

fn in_unit(unit: &Unit) -> String {
    if unit.symbol.is_empty() {
        String::new()
    } else {
        format!(", in {}", unit.symbol)
    }
}

/// Whether two texts are the same number in the same unit, as `26 MPa` and `26.0000 MPa` are.
fn says_the_same(typed: &str, shown: &str) -> bool {
    let split = |text: &str| {
        let (number, unit) = text.split_once(' ').unwrap_or((text, ""));
        number
            .parse::<f64>()
            .map(|n| (n.to_bits(), unit.to_owned()))
    };
    matches!((split(typed), split(shown)), (Ok(a), Ok(b)) if a == b)
}

fn with_unit(number: &str, unit: &Unit) -> String {
    format!("{number} {}", unit.symbol).trim_end().to_owned()
}

fn law_lines(card: &Card) -> Vec<String> {
    match card.law {
        Law::Closed(law) => law.split(';').map(|step| step.trim().to_owned()).collect(),
        Law::Words(words) => vec![words.to_owned()],
    }
}

fn limit_words(limit: &Limit) -> String {
    let expr = limit.expr;
    match (limit.low, limit.high) {
        (Some(low), Some(high)) => format!("{expr} from {low} to {high}"),
        (Some(low), None) => format!("{expr} at least {low}"),
        (None, Some(high)) => format!("{expr} at most {high}"),
        (None, None) => expr.to_owned(),
    }
}

fn breach_words(breach: &Breach) -> String {
    let limit = Limit {
        expr: breach.expr,
        low: breach.low,
        high: breach.high,
    };
    let value = reckoning::quantity::show::figures(breach.value, 4);
    format!("{}, and is {value}", limit_words(&limit))
}

fn spread_words(spread: Spread) -> String {
    match spread {
        Spread::Exact => "none of its own: it follows from definitions".to_owned(),
        Spread::Conservative => "errs on the careful side".to_owned(),
        Spread::Percent(percent) => format!("{percent} % either way, as the source states it"),
        Spread::Unstated => "the source states none".to_owned(),
    }
}

fn source_words(card: &Card) -> String {
    let source = card.cite.source;
    let year = if source.year == 0 {
        String::new()
    } else {
        source.year.to_string()
    };
    let parts = [
        source.title,
        source.identifier,
        source.edition,
        &year,
        card.cite.place,
    ];
    let parts: Vec<&str> = parts.into_iter().filter(|p| !p.is_empty()).collect();
    format!("{} ({})", parts.join(", "), source.seen.words())
}
