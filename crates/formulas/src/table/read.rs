//! Text of a table file to its columns and rows.

use super::{Cell, Column, Interpolation, Order, Table};
use crate::located::{Fault, Reading, Wrong, key_at, number, start};
use reckoning::law;
use reckoning::quantity::{UNITS, Unit, parse};
use toml_edit::{Item, TableLike, Value};

const TOP: &[&str] = &[
    "name",
    "source",
    "place",
    "seen",
    "interpolation",
    "rules",
    "column",
    "values",
];
const COLUMN: &[&str] = &["name", "kind", "unit", "meaning", "order"];
/// The kind of a column that holds no quantity.
const WORDS: &str = "words";

/// Reads a table file and holds every row to the order and the rules that its header declares.
///
/// # Errors
/// Every [`Fault`] found, each with its line.
pub fn read(file: &str, text: &str) -> Result<Table, Vec<Fault>> {
    let mut reading = Reading::new(file, text);
    let found = whole(&mut reading, file);
    match found {
        Some(found) if reading.faults.is_empty() => Ok(found),
        _ => Err(reading.faults),
    }
}

fn whole(reading: &mut Reading<'_>, file: &str) -> Option<Table> {
    let document = reading.document()?;
    let top: &dyn TableLike = document.as_table();
    reading.only(top, TOP);
    let [name, key, place, seen, rule] = ["name", "source", "place", "seen", "interpolation"]
        .map(|key| reading.text(top, key, 0).map(str::to_owned));
    if let Some(seen) = &seen {
        reading.check_seen(key_at(top, "seen"), seen);
    }
    let source = key.and_then(|key| {
        let found = crate::sources::find(&key);
        if found.is_none() {
            let allowed = crate::sources::all().map(|s| s.key);
            unknown(
                reading,
                key_at(top, "source"),
                &key,
                "known source",
                allowed,
            );
        }
        found
    });
    let interpolation = rule.and_then(|word| interpolation(reading, top, &word));
    let columns = columns(reading, top)?;
    let rules = rules(reading, top, &columns)?;
    let rows = rows(reading, top, &columns, &rules)?;
    Some(Table {
        file: file.to_owned(),
        name: name?,
        source: source?,
        place: place?,
        seen: seen?,
        interpolation: interpolation?,
        columns,
        rows,
    })
}

fn interpolation(
    reading: &mut Reading<'_>,
    top: &dyn TableLike,
    word: &str,
) -> Option<Interpolation> {
    let all = [Interpolation::Linear, Interpolation::RowsOnly];
    let found = all.into_iter().find(|i| i.words() == word);
    if found.is_none() {
        let allowed = all.map(Interpolation::words).into_iter();
        let of = "way of reading between rows";
        unknown(reading, key_at(top, "interpolation"), word, of, allowed);
    }
    found
}

fn unknown<'n>(
    reading: &mut Reading<'_>,
    at: usize,
    word: &str,
    of: &'static str,
    names: impl Iterator<Item = &'n str>,
) {
    let allowed = crate::located::nearest(names, word);
    let word = word.to_owned();
    reading.file_at(at, Wrong::UnknownWord { word, of, allowed });
}

fn columns(reading: &mut Reading<'_>, top: &dyn TableLike) -> Option<Vec<Column>> {
    let item = reading.item(top, "column", 0)?;
    let Some(list) = item.as_array_of_tables() else {
        reading.wrong_sort(item, "column", "a list of [[column]]");
        return None;
    };
    list.iter()
        .map(|table| {
            let at = table.span().map_or(0, |s| s.start);
            column(reading, table, at)
        })
        .collect()
}

fn column(reading: &mut Reading<'_>, table: &dyn TableLike, at: usize) -> Option<Column> {
    reading.only(table, COLUMN);
    let name = reading.text(table, "name", at)?.to_owned();
    let meaning = reading.text(table, "meaning", at)?.to_owned();
    let kind = reading.text(table, "kind", at)?.to_owned();
    let order = match table.get("order").and_then(Item::as_str) {
        None => Order::Free,
        Some(word) => match Order::ALL.into_iter().find(|o| o.words() == word) {
            Some(order) => order,
            None => {
                let allowed = Order::ALL.map(Order::words).into_iter();
                unknown(reading, key_at(table, "order"), word, "order", allowed);
                return None;
            }
        },
    };
    let unit = if kind == WORDS {
        None
    } else {
        let symbol = table.get("unit").and_then(Item::as_str).unwrap_or("");
        let Some(unit) = unit(&kind, symbol) else {
            let of = "unit of that kind";
            let allowed = UNITS
                .iter()
                .filter(|u| u.kind.words() == kind)
                .map(|u| u.symbol);
            unknown(reading, key_at(table, "unit"), symbol, of, allowed);
            return None;
        };
        Some(unit)
    };
    Some(Column {
        name,
        unit,
        meaning,
        order,
    })
}

fn unit(kind: &str, symbol: &str) -> Option<&'static Unit> {
    UNITS
        .iter()
        .copied()
        .find(|u| u.kind.words() == kind && (u.symbol == symbol || u.also.contains(&symbol)))
}

/// The rules, each of which must read and name columns of numbers only.
fn rules(
    reading: &mut Reading<'_>,
    top: &dyn TableLike,
    columns: &[Column],
) -> Option<Vec<String>> {
    let item = reading.item(top, "rules", 0)?;
    let Some(list) = item.as_array() else {
        reading.wrong_sort(item, "rules", "a list of rules");
        return None;
    };
    let mut rules = Vec::new();
    for value in list {
        let rule = value.as_str().unwrap_or("").to_owned();
        let number = |name: &str| {
            let known = columns.iter().any(|c| c.name == name && c.unit.is_some());
            known.then_some(1.0)
        };
        match law::evaluate(&rule, &number) {
            Ok(_) => rules.push(rule),
            Err(why) => {
                let at = value.span().map_or(0, |s| s.start);
                reading.file_at(at, Wrong::RuleDoesNotRead { rule, why });
            }
        }
    }
    Some(rules)
}

fn rows(
    reading: &mut Reading<'_>,
    top: &dyn TableLike,
    columns: &[Column],
    rules: &[String],
) -> Option<Vec<Vec<Cell>>> {
    let values = reading.table(top, "values", 0)?;
    reading.only(values, &["rows"]);
    let item = reading.item(values, "rows", key_at(top, "values"))?;
    let Some(list) = item.as_array().filter(|list| !list.is_empty()) else {
        reading.wrong_sort(item, "rows", "a list of rows");
        return None;
    };
    let mut rows: Vec<Vec<Cell>> = Vec::new();
    for value in list {
        let at = value.span().map_or_else(|| start(item), |s| s.start);
        let row = row(reading, value, at, columns)?;
        keep_rules(reading, &row, at, columns, rules);
        if let Some(before) = rows.last() {
            keep_order(reading, before, &row, at, columns);
        }
        rows.push(row);
    }
    Some(rows)
}

fn row(
    reading: &mut Reading<'_>,
    value: &Value,
    at: usize,
    columns: &[Column],
) -> Option<Vec<Cell>> {
    let found = value.as_array().map_or(0, toml_edit::Array::len);
    let Some(cells) = value.as_array().filter(|_| found == columns.len()) else {
        let wanted = columns.len();
        reading.file_at(at, Wrong::RowLength { found, wanted });
        return None;
    };
    cells
        .iter()
        .zip(columns)
        .map(|(value, column)| cell(reading, value, at, column))
        .collect()
}

/// A number in the unit of the column, or a quantity in quotation marks.
fn cell(reading: &mut Reading<'_>, value: &Value, at: usize, column: &Column) -> Option<Cell> {
    let item = Item::Value(value.clone());
    let key = column.name.clone();
    match (column.unit, item.as_str(), number(&item)) {
        (None, Some(words), _) => Some(Cell::Words(words.to_owned())),
        (None, None, _) => {
            reading.file_at(
                at,
                Wrong::WrongSort {
                    key,
                    wanted: "words",
                },
            );
            None
        }
        (Some(unit), None, Some(x)) => Some(Cell::Si(unit.to_si(x))),
        (Some(unit), Some(text), _) => match parse::read_kind(unit.kind, text) {
            Ok(si) => Some(Cell::Si(si)),
            Err(misread) => {
                reading.file_at(at, Wrong::Misread(misread));
                None
            }
        },
        (Some(_), None, None) => {
            reading.file_at(
                at,
                Wrong::WrongSort {
                    key,
                    wanted: "a number",
                },
            );
            None
        }
    }
}

fn keep_rules(
    reading: &mut Reading<'_>,
    row: &[Cell],
    at: usize,
    columns: &[Column],
    rules: &[String],
) {
    let look_up = |name: &str| {
        let place = columns.iter().position(|c| c.name == name)?;
        match row[place] {
            Cell::Si(si) => Some(si),
            Cell::Words(_) => None,
        }
    };
    for rule in rules {
        // A comparison gives 1 where it holds.
        if !law::evaluate(rule, &look_up).is_ok_and(|held| held > 0.5) {
            let first = row.first().zip(columns.first());
            let named = match first {
                Some((Cell::Words(words), _)) => words.clone(),
                Some((Cell::Si(si), Column { unit: Some(u), .. })) => {
                    let number = reckoning::quantity::show::figures(u.from_si(*si), 5);
                    format!("{number} {}", u.symbol)
                }
                _ => String::new(),
            };
            let rule = rule.clone();
            reading.file_at(at, Wrong::RowBreaksRule { row: named, rule });
        }
    }
}

fn keep_order(
    reading: &mut Reading<'_>,
    before: &[Cell],
    row: &[Cell],
    at: usize,
    columns: &[Column],
) {
    for ((column, before), next) in columns.iter().zip(before).zip(row) {
        let (Some(unit), Cell::Si(before), Cell::Si(next)) = (column.unit, before, next) else {
            continue;
        };
        if !column.order.holds(*before, *next) {
            let wrong = Wrong::NotMonotone {
                column: column.name.clone(),
                order: column.order.words(),
                value: unit.from_si(*before),
                next: unit.from_si(*next),
            };
            reading.file_at(at, wrong);
        }
    }
}
