//! Every card is whole: its printed law is its kernel, its limits evaluate, it is cited, and
//! enough is known from outside to check it.

mod folder;

use formulas::reference::{Catalogue, Evidence};
use formulas::register;
use reckoning::{Card, Law, law};
use std::collections::{BTreeMap, BTreeSet};

/// Greatest relative distance between the printed law and the kernel.
const SAME: f64 = 1e-12;

fn report(faults: &[String]) {
    assert!(
        faults.is_empty(),
        "{} faults:\n{}",
        faults.len(),
        faults.join("\n")
    );
}

#[test]
fn the_printed_law_is_the_kernel_on_every_reference_case() {
    let mut faults = Vec::new();
    for file in folder::read().0 {
        for case in &file.cases {
            let card = case.card;
            let at = format!("{}:{} {}", file.file, case.line, card.id);
            let (Some(printed), Ok(kernel)) =
                (card.by_printed_law(&case.given), card.work(&case.given))
            else {
                continue;
            };
            match printed {
                Ok(printed) if (printed - kernel.value).abs() <= SAME * kernel.value.abs() => {}
                Ok(printed) => faults.push(format!("{at}: law {printed}, kernel {}", kernel.value)),
                Err(e) => faults.push(format!("{at}: {e}")),
            }
        }
    }
    report(&faults);
}

#[test]
fn laws_and_limits_read_and_name_only_symbols_of_the_card() {
    let mut faults = Vec::new();
    for card in register::cards() {
        if let Some(Err(e)) = card.by_printed_law(&vec![1.0; card.takes.len()]) {
            faults.push(format!("{}: law: {e}", card.id));
        }
        for limit in card.limits {
            let known = |name: &str| {
                (name == card.gives.name || card.takes.iter().any(|s| s.name == name))
                    .then_some(1.0)
            };
            if let Err(e) = law::evaluate(limit.expr, &known) {
                faults.push(format!("{}: limit `{}`: {e}", card.id, limit.expr));
            }
            if limit.low.is_none() && limit.high.is_none() {
                faults.push(format!(
                    "{}: limit `{}` limits nothing",
                    card.id, limit.expr
                ));
            }
        }
    }
    report(&faults);
}

#[test]
fn each_symbol_of_a_closed_law_is_taken_and_each_taken_symbol_used() {
    let mut faults = Vec::new();
    for card in register::cards() {
        let Law::Closed(text) = card.law else {
            continue;
        };
        let Ok(steps) = law::read(text) else {
            continue;
        };
        let mut used = BTreeSet::new();
        steps.iter().for_each(|step| names(&step.expr, &mut used));
        for symbol in card.takes {
            if !used.contains(symbol.name) {
                faults.push(format!(
                    "{}: `{}` is taken and not used",
                    card.id, symbol.name
                ));
            }
        }
        let last = steps.last().map_or("", |s| s.name.as_str());
        if !last.is_empty() && last != card.gives.name {
            faults.push(format!(
                "{}: the law ends with `{last}`, not `{}`",
                card.id, card.gives.name
            ));
        }
    }
    report(&faults);
}

fn names(expr: &law::Expr, into: &mut BTreeSet<String>) {
    match expr {
        law::Expr::Number(_) => {}
        law::Expr::Name(name) => {
            into.insert(name.clone());
        }
        law::Expr::Negative(inner) => names(inner, into),
        law::Expr::Binary(_, a, b) => {
            names(a, into);
            names(b, into);
        }
        law::Expr::Call(_, args) => args.iter().for_each(|a| names(a, into)),
    }
}

/// Two reference cases for a closed law, four for one in words; where nothing is published, one
/// limit case in a file that says so.
#[test]
fn every_card_is_checked_from_outside() {
    let mut published: BTreeMap<&str, usize> = BTreeMap::new();
    let mut without: BTreeMap<&str, usize> = BTreeMap::new();
    for file in folder::read().0 {
        let counts = match file.provenance.kind {
            Evidence::NonePublished => &mut without,
            _ => &mut published,
        };
        for case in &file.cases {
            *counts.entry(case.card.id).or_insert(0) += 1;
        }
    }
    let faults: Vec<String> = register::cards()
        .filter_map(|card| {
            let wanted = match card.law {
                Law::Closed(_) => 2,
                Law::Words(_) => 4,
            };
            let found = published.get(card.id).copied().unwrap_or(0);
            let none_published = without.get(card.id).copied().unwrap_or(0);
            (found < wanted && none_published == 0)
                .then(|| format!("{} has {found} reference cases and wants {wanted}", card.id))
        })
        .collect();
    report(&faults);
}

#[test]
fn ids_and_symbols_are_well_formed_and_no_id_is_given_twice() {
    let mut seen = BTreeSet::new();
    let mut faults = Vec::new();
    for card in register::cards() {
        if !seen.insert(card.id) {
            faults.push(format!("{} is registered twice", card.id));
        }
        let lower = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        let mut parts = card.id.split('.');
        let fine = parts.clone().count() >= 2
            && parts
                .all(|p| p.starts_with(|c: char| c.is_ascii_lowercase()) && p.chars().all(lower));
        if !fine {
            faults.push(format!("{} is not of the form family.name", card.id));
        }
        faults.extend(symbols_at_fault(card));
    }
    report(&faults);
}

fn symbols_at_fault(card: &Card) -> Vec<String> {
    let mut names = BTreeSet::new();
    card.takes
        .iter()
        .chain([&card.gives])
        .filter(|s| !names.insert(s.name) || s.meaning.is_empty())
        .map(|s| {
            format!(
                "{}: symbol `{}` stands twice or has no meaning",
                card.id, s.name
            )
        })
        .collect()
}

#[test]
fn every_card_is_cited_and_no_key_means_two_sources() {
    let mut faults = Vec::new();
    for card in register::cards() {
        if card.cite.place.is_empty() {
            faults.push(format!(
                "{} cites no place in {}",
                card.id, card.cite.source.key
            ));
        }
    }
    let mut keys = BTreeSet::new();
    for source in Catalogue::registered().sources {
        if !keys.insert(source.key) {
            faults.push(format!("the key {} stands for two sources", source.key));
        }
        let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        if source.title.is_empty() || !source.key.chars().all(plain) {
            faults.push(format!(
                "source {} has no title or a key that is not plain",
                source.key
            ));
        }
    }
    report(&faults);
}

#[test]
fn every_source_is_listed() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src/sources");
    let mut faults = Vec::new();
    for entry in std::fs::read_dir(folder).expect("the sources") {
        let path = entry.expect("an entry").path();
        let text = std::fs::read_to_string(&path).expect("a text file");
        for line in text
            .lines()
            .filter(|l| l.trim_start().starts_with("key: \""))
        {
            let key = line.split('"').nth(1).unwrap_or("");
            if formulas::sources::find(key).is_none() {
                faults.push(format!("{key} is in no list of {}", path.display()));
            }
        }
    }
    report(&faults);
}
