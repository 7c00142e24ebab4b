//! Reading what was asked, with every fault told at once.

use crate::output::Failure;
use formulas::register;
use reckoning::Card;
use reckoning::quantity::parse::read_kind;

/// There is no card of this name; the nearest are named.
pub(super) fn unknown_card(name: &str) -> Failure {
    let mut near: Vec<&str> = register::cards().map(|c| c.id).collect();
    near.sort_by_key(|id| distance(id, name));
    near.truncate(3);
    Failure {
        says: format!("there is no formula `{name}`"),
        faults: vec![
            format!("nearest: {}", near.join(", ")),
            "`steamwright reckon` lists them all".to_owned(),
        ],
    }
}

/// How far a name lies from what was typed. Typed text that stands in the name is near whatever
/// stands around it: who types `wall` means one of the walls.
fn distance(id: &str, typed: &str) -> usize {
    let typed = typed.to_lowercase();
    let whole = strsim::levenshtein(&id.to_lowercase(), &typed);
    if !typed.is_empty() && id.to_lowercase().contains(&typed) {
        0
    } else {
        whole
    }
}

/// Value in SI and text as typed for each symbol of the card, in its order.
pub(super) fn inputs(card: &Card, given: &[String]) -> Result<Vec<(f64, String)>, Failure> {
    let mut found: Vec<Option<(f64, String)>> = vec![None; card.takes.len()];
    let mut named = vec![false; card.takes.len()];
    let mut faults = Vec::new();
    for argument in given {
        let Some((name, text)) = argument.split_once('=') else {
            faults.push(format!("`{argument}` is not of the form SYMBOL=QUANTITY"));
            continue;
        };
        let name = name.trim();
        let Some(place) = card.takes.iter().position(|s| s.name == name) else {
            faults.push(unknown_symbol(card, name));
            continue;
        };
        if std::mem::replace(&mut named[place], true) {
            faults.push(format!("{name} is given twice"));
        }
        match read_kind(card.takes[place].unit.kind, text) {
            Ok(si) => found[place] = Some((si, text.trim().to_owned())),
            Err(misread) => faults.push(format!("{name}: {misread}")),
        }
    }
    for (symbol, _) in card.takes.iter().zip(&named).filter(|(_, named)| !**named) {
        // Reading nothing tells what is wanted, with an example of the kind.
        let wanted = match read_kind(symbol.unit.kind, "") {
            Err(misread) => misread.meant,
            Ok(_) => String::new(),
        };
        faults.push(format!(
            "{} is missing, the {}: {wanted}",
            symbol.name, symbol.meaning
        ));
    }
    match found.into_iter().collect() {
        Some(inputs) if faults.is_empty() => Ok(inputs),
        _ => Err(Failure {
            says: format!("{} cannot be worked:", card.id),
            faults,
        }),
    }
}

fn unknown_symbol(card: &Card, name: &str) -> String {
    let lower = name.to_lowercase();
    let nearest = card
        .takes
        .iter()
        .map(|s| (strsim::levenshtein(&s.name.to_lowercase(), &lower), s.name))
        .min();
    match nearest {
        Some((distance, near)) if distance < near.chars().count().max(2) => {
            format!("{name} is not a symbol of it, did you mean {near}?")
        }
        _ => {
            let names: Vec<&str> = card.takes.iter().map(|s| s.name).collect();
            format!(
                "{name} is not a symbol of it; it takes {}",
                names.join(", ")
            )
        }
    }
}
