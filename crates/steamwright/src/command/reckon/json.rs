//! The answers in JSON, as `docs/json.md` promises them.

use super::Answered;
use reckoning::quantity::show::figures;
use reckoning::{Card, Law, Spread, Symbol};
use serde_json::{Value, json};

/// Every card with every symbol.
pub(super) fn list(cards: &[&'static Card]) -> Value {
    let cards: Vec<Value> = cards.iter().map(|card| explain(card)).collect();
    json!({ "formulas": cards })
}

/// One card.
pub(super) fn explain(card: &Card) -> Value {
    let (law, form) = match card.law {
        Law::Closed(law) => (law, "closed"),
        Law::Words(words) => (words, "words"),
    };
    let limits: Vec<Value> = card
        .limits
        .iter()
        .map(|l| json!({ "expr": l.expr, "low": l.low, "high": l.high }))
        .collect();
    json!({
        "id": card.id,
        "family": family(card),
        "gives": symbol(&card.gives),
        "takes": card.takes.iter().map(symbol).collect::<Vec<_>>(),
        "law": law,
        "law_form": form,
        "limits": limits,
        "spread": spread(card.spread),
        "source": source(card),
    })
}

/// A worked card.
pub(super) fn worked(answered: &Answered) -> Value {
    let card = answered.card;
    let inputs: Vec<Value> = card
        .takes
        .iter()
        .zip(&answered.inputs)
        .map(|(symbol, (si, typed))| value(symbol, *si, typed))
        .collect();
    let line = answered.working.line(answered.result);
    let shown = format!("{} {}", line.shown, line.unit.symbol);
    let si = answered.working.si(answered.result);
    let breaches: Vec<Value> = answered
        .breaches
        .iter()
        .map(|b| json!({ "expr": b.expr, "value": b.value, "low": b.low, "high": b.high }))
        .collect();
    json!({
        "id": card.id,
        "results": [value(&card.gives, si, shown.trim_end())],
        "inputs": inputs,
        "breaches": breaches,
        "source": source(card),
    })
}

/// The part of the id before the last point.
pub(super) fn family(card: &Card) -> &'static str {
    card.id
        .rsplit_once('.')
        .map_or(card.id, |(family, _)| family)
}

fn value(symbol: &Symbol, si: f64, shown: &str) -> Value {
    json!({ "symbol": symbol.name, "si": si, "unit": symbol.unit.symbol, "shown": shown })
}

fn symbol(symbol: &Symbol) -> Value {
    json!({
        "symbol": symbol.name,
        "unit": symbol.unit.symbol,
        "kind": symbol.unit.kind.words(),
        "si_unit": symbol.unit.kind.si_unit().symbol,
        "meaning": symbol.meaning,
    })
}

fn spread(spread: Spread) -> Value {
    match spread {
        Spread::Exact => json!("exact"),
        Spread::Conservative => json!("conservative"),
        Spread::Unstated => json!("unstated"),
        Spread::Percent(percent) => json!(format!("{} %", figures(percent, 6))),
    }
}

fn source(card: &Card) -> Value {
    let source = card.cite.source;
    json!({
        "key": source.key,
        "title": source.title,
        "edition": source.edition,
        "year": if source.year == 0 { Value::Null } else { json!(source.year) },
        "publisher": source.publisher,
        "identifier": source.identifier,
        "place": card.cite.place,
        "seen": source.seen.words(),
    })
}
