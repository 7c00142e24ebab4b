//! Text of a reference file to its cases.

use super::{Case, Catalogue, Evidence, Provenance, Reach, ReferenceFile, Tolerance};
use crate::located::{Fault, Reading, Wrong, key_at, nearest, number, start};
use reckoning::quantity::{Kind, Unit, parse};
use reckoning::{Card, Source};
use toml_edit::{Item, TableLike};

const TOP: &[&str] = &["provenance", "tolerance", "case"];
const PROVENANCE: &[&str] = &[
    "family", "card", "source", "place", "kind", "seen", "printed",
];
const TOLERANCE: &[&str] = &["relative", "absolute", "because"];
const CASE: &[&str] = &["card", "given", "gives", "tolerance", "breaches"];

/// Reads a reference file.
///
/// # Errors
/// Every [`Fault`] found, each with its line.
pub fn read(file: &str, text: &str, catalogue: &Catalogue) -> Result<ReferenceFile, Vec<Fault>> {
    let mut reading = Reading::new(file, text);
    let found = whole(&mut reading, file, catalogue);
    match found {
        Some(found) if reading.faults.is_empty() => Ok(found),
        _ => Err(reading.faults),
    }
}

/// What the cases of a file share.
struct Shared<'a> {
    catalogue: &'a Catalogue,
    family: String,
    card: Option<&'static Card>,
    tolerance: Option<Tolerance>,
}

fn whole(reading: &mut Reading<'_>, file: &str, catalogue: &Catalogue) -> Option<ReferenceFile> {
    let document = reading.document()?;
    let top: &dyn TableLike = document.as_table();
    reading.only(top, TOP);
    let head = reading.table(top, "provenance", 0)?;
    let provenance = provenance(reading, head, key_at(top, "provenance"), catalogue);
    let tolerance = reading
        .table(top, "tolerance", 0)
        .and_then(|table| tolerance(reading, table, key_at(top, "tolerance")));
    let card = head
        .get("card")
        .and_then(|item| card(reading, item, catalogue));
    let shared = Shared {
        catalogue,
        family: head
            .get("family")
            .and_then(Item::as_str)
            .unwrap_or("")
            .to_owned(),
        card,
        tolerance,
    };
    let cases = reading.item(top, "case", 0)?;
    let Some(cases) = cases.as_array_of_tables() else {
        reading.wrong_sort(cases, "case", "a list of [[case]]");
        return None;
    };
    let mut read = Vec::new();
    for table in cases {
        let at = table.span().map_or(0, |s| s.start);
        case(reading, table, at, &shared, &mut read);
    }
    Some(ReferenceFile {
        file: file.to_owned(),
        provenance: provenance?,
        cases: read,
    })
}

fn provenance(
    reading: &mut Reading<'_>,
    head: &dyn TableLike,
    at: usize,
    catalogue: &Catalogue,
) -> Option<Provenance> {
    reading.only(head, PROVENANCE);
    let [family, source, place, kind, seen, printed] =
        ["family", "source", "place", "kind", "seen", "printed"]
            .map(|key| reading.text(head, key, at).map(str::to_owned));
    if let Some(family) = &family {
        check_family(reading, head, family, catalogue);
    }
    let source = source.and_then(|key| find_source(reading, head, &key, catalogue));
    let kind = kind.and_then(|word| {
        let kind = Evidence::ALL.into_iter().find(|k| k.words() == word);
        if kind.is_none() {
            let allowed = Evidence::ALL.map(|k| k.words().to_owned()).to_vec();
            let of = "kind of evidence";
            reading.file_at(
                key_at(head, "kind"),
                Wrong::UnknownWord { word, of, allowed },
            );
        }
        kind
    });
    if let Some(seen) = &seen {
        reading.check_seen(key_at(head, "seen"), seen);
    }
    Some(Provenance {
        family: family?,
        source: source?,
        place: place?,
        kind: kind?,
        seen: seen?,
        printed: printed?,
    })
}

/// A family is the first part of a card's id, or more of it.
fn check_family(
    reading: &mut Reading<'_>,
    head: &dyn TableLike,
    family: &str,
    catalogue: &Catalogue,
) {
    if !catalogue.cards.iter().any(|c| belongs(c, family)) {
        let mut allowed: Vec<String> = catalogue
            .cards
            .iter()
            .filter_map(|c| c.id.split('.').next())
            .map(str::to_owned)
            .collect();
        allowed.dedup();
        let word = family.to_owned();
        let of = "family of registered cards";
        reading.file_at(
            key_at(head, "family"),
            Wrong::UnknownWord { word, of, allowed },
        );
    }
}

fn belongs(card: &Card, family: &str) -> bool {
    card.id == family
        || card
            .id
            .strip_prefix(family)
            .is_some_and(|rest| rest.starts_with('.'))
}

fn find_source(
    reading: &mut Reading<'_>,
    head: &dyn TableLike,
    key: &str,
    catalogue: &Catalogue,
) -> Option<&'static Source> {
    let found = catalogue.sources.iter().find(|s| s.key == key).copied();
    if found.is_none() {
        let allowed = nearest(catalogue.sources.iter().map(|s| s.key), key);
        let word = key.to_owned();
        let of = "known source";
        reading.file_at(
            key_at(head, "source"),
            Wrong::UnknownWord { word, of, allowed },
        );
    }
    found
}

fn tolerance(reading: &mut Reading<'_>, table: &dyn TableLike, at: usize) -> Option<Tolerance> {
    reading.only(table, TOLERANCE);
    let because = reading.text(table, "because", at).map(str::to_owned);
    let relative = table.get("relative").and_then(number).filter(|r| *r > 0.0);
    let absolute = table.get("absolute").and_then(Item::as_str);
    let reach = match (relative, absolute, table.get("relative").is_some()) {
        (Some(share), None, _) if table.get("absolute").is_none() => Reach::Relative(share),
        (None, Some(text), false) => Reach::Absolute(text.to_owned()),
        _ => {
            reading.file_at(at, Wrong::Tolerance);
            return None;
        }
    };
    Some(Tolerance {
        reach,
        because: because?,
    })
}

fn card(reading: &mut Reading<'_>, item: &Item, catalogue: &Catalogue) -> Option<&'static Card> {
    let word = item.as_str().unwrap_or("").to_owned();
    let found = catalogue.cards.iter().find(|c| c.id == word).copied();
    if found.is_none() {
        let allowed = nearest(catalogue.cards.iter().map(|c| c.id), &word);
        let of = "registered card";
        reading.file_at(start(item), Wrong::UnknownWord { word, of, allowed });
    }
    found
}

/// Reads one `[[case]]`, which has one wanted value or more.
fn case(
    reading: &mut Reading<'_>,
    table: &dyn TableLike,
    at: usize,
    shared: &Shared<'_>,
    read: &mut Vec<Case>,
) {
    reading.only(table, CASE);
    let own_card = match table.get("card") {
        Some(item) => match card(reading, item, shared.catalogue) {
            Some(card) => Some(card),
            None => return,
        },
        None => shared.card,
    };
    let own_tolerance = match table.get("tolerance").and_then(Item::as_table_like) {
        Some(own) => tolerance(reading, own, at),
        None => shared.tolerance.clone(),
    };
    let breaches = texts(reading, table, "breaches");
    let given = reading.table(table, "given", at);
    let gives = reading.table(table, "gives", at);
    let (Some(given), Some(gives), Some(tolerance)) = (given, gives, own_tolerance) else {
        return;
    };
    let mut used = Vec::new();
    for (symbol, wanted) in gives.iter() {
        let Some(card) = pick(reading, own_card, shared, symbol, given, start(wanted)) else {
            continue;
        };
        used.push(card);
        if let Some(mut case) = value(reading, card, given, wanted, &tolerance) {
            case.line = reading.line_of(at);
            case.breaches.clone_from(&breaches);
            read.push(case);
        }
    }
    unused(reading, given, &used);
}

/// The card that gives a symbol: the one named, else the only one of the family that gives it
/// from what is given.
fn pick(
    reading: &mut Reading<'_>,
    named: Option<&'static Card>,
    shared: &Shared<'_>,
    symbol: &str,
    given: &dyn TableLike,
    at: usize,
) -> Option<&'static Card> {
    if let Some(card) = named.filter(|card| card.gives.name == symbol) {
        return Some(card);
    }
    let fits: Vec<&'static Card> = shared
        .catalogue
        .cards
        .iter()
        .copied()
        .filter(|c| named.is_none() && belongs(c, &shared.family) && c.gives.name == symbol)
        .filter(|c| c.takes.iter().all(|s| given.contains_key(s.name)))
        .collect();
    let family = named.map_or_else(|| shared.family.clone(), |c| c.id.to_owned());
    let symbol = symbol.to_owned();
    match fits.as_slice() {
        [card] => return Some(card),
        [] => reading.file_at(at, Wrong::NoCardGives { family, symbol }),
        several => {
            let cards = several.iter().map(|c| c.id).collect();
            reading.file_at(at, Wrong::SeveralCardsGive { symbol, cards });
        }
    }
    None
}

fn value(
    reading: &mut Reading<'_>,
    card: &'static Card,
    given: &dyn TableLike,
    wanted: &Item,
    tolerance: &Tolerance,
) -> Option<Case> {
    let mut values = Vec::new();
    let mut written = Vec::new();
    for symbol in card.takes {
        let Some(item) = given.get(symbol.name) else {
            let missing = Wrong::NotGiven {
                card: card.id,
                symbol: symbol.name,
            };
            reading.file_at(start(wanted), missing);
            continue;
        };
        if let Some((value, text)) = quantity(reading, item, symbol.unit) {
            values.push(value);
            written.push(text);
        }
    }
    let (wanted_value, wanted_written) = quantity(reading, wanted, card.gives.unit)?;
    let reach = distance(reading, wanted, wanted_value, card.gives.unit, tolerance)?;
    (values.len() == card.takes.len()).then(|| Case {
        line: 0,
        card,
        given: values,
        written,
        wanted: wanted_value,
        wanted_written,
        tolerance: reach,
        because: tolerance.because.clone(),
        breaches: Vec::new(),
    })
}

/// A value in `unit`, and the text in which it was written. A bare number is a ratio.
fn quantity(reading: &mut Reading<'_>, item: &Item, unit: &Unit) -> Option<(f64, String)> {
    if let (Kind::Ratio, Some(x)) = (unit.kind, number(item)) {
        return Some((unit.from_si(x), x.to_string()));
    }
    let Some(text) = item.as_str() else {
        reading.wrong_sort(item, "value", "a quantity in quotation marks");
        return None;
    };
    match parse::read_kind(unit.kind, text) {
        Ok(si) => Some((unit.from_si(si), text.to_owned())),
        Err(misread) => {
            reading.file_at(start(item), Wrong::Misread(misread));
            None
        }
    }
}

/// The greatest distance allowed, in the unit of the result.
fn distance(
    reading: &mut Reading<'_>,
    wanted: &Item,
    value: f64,
    unit: &Unit,
    tolerance: &Tolerance,
) -> Option<f64> {
    match &tolerance.reach {
        Reach::Relative(_) if value == 0.0 => {
            reading.file_at(start(wanted), Wrong::RelativeOfZero);
            None
        }
        Reach::Relative(share) => Some(share * value.abs()),
        Reach::Absolute(text) => {
            // A distance between temperatures is a rise, so that `0.1 °C` is a tenth of a kelvin.
            let kind = match unit.kind {
                Kind::Temperature => Kind::TemperatureRise,
                other => other,
            };
            match parse::read_kind(kind, text) {
                Ok(si) if si > 0.0 => Some(unit.from_si(si) - unit.from_si(0.0)),
                Ok(_) => {
                    reading.file_at(start(wanted), Wrong::Tolerance);
                    None
                }
                Err(misread) => {
                    reading.file_at(start(wanted), Wrong::Misread(misread));
                    None
                }
            }
        }
    }
}

/// What is given must be taken by one of the cards used.
fn unused(reading: &mut Reading<'_>, given: &dyn TableLike, used: &[&'static Card]) {
    let Some(last) = used.last() else {
        return;
    };
    for (symbol, _) in given.iter() {
        if !used
            .iter()
            .any(|c| c.takes.iter().any(|s| s.name == symbol))
        {
            let wrong = Wrong::NotTaken {
                card: last.id,
                symbol: symbol.to_owned(),
                takes: last.takes.iter().map(|s| s.name).collect(),
            };
            reading.file_at(key_at(given, symbol), wrong);
        }
    }
}

fn texts(reading: &mut Reading<'_>, table: &dyn TableLike, key: &str) -> Vec<String> {
    let Some(item) = table.get(key) else {
        return Vec::new();
    };
    let Some(list) = item.as_array() else {
        reading.wrong_sort(item, key, "a list of texts");
        return Vec::new();
    };
    list.iter()
        .filter_map(|v| v.as_str().map(str::to_owned))
        .collect()
}
