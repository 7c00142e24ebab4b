//! Putting a value into a text and cutting one out, leaving every other letter as it stands.
//!
//! A value that stands already is replaced in place by its bytes. A new key goes to the end of its
//! table, which is made where it is missing.

use std::ops::Range;

use toml_edit::{ArrayOfTables, Document, DocumentMut, InlineTable, Item, Table, TableLike, Value};

use crate::fill::{Filling, NewRow};

/// A text as TOML, in the quotes of the writing that it replaces where they can hold it.
pub(crate) fn text_literal(text: &str, old: &str) -> String {
    let single = old.starts_with('\'') && !old.starts_with("'''");
    if single && !text.contains('\'') && !text.chars().any(char::is_control) {
        return format!("'{text}'");
    }
    Value::from(text).to_string()
}

/// The writing of the value at `path`; empty for a table under a heading or of dotted keys.
pub(crate) fn raw<'t>(text: &'t str, path: &str) -> Option<&'t str> {
    let document = Document::parse(text).ok()?;
    let spot = find(&document, path)?;
    match spot.value {
        Some(span) => text.get(span),
        None => Some(""),
    }
}

/// The text with `literal` as the value at `path`; `None` where the way to it is barred by
/// something that is no table.
pub(crate) fn put(text: &str, path: &str, literal: &str) -> Option<String> {
    let document = Document::parse(text).ok()?;
    match find(&document, path).map(|spot| spot.value) {
        Some(Some(span)) => {
            let mut text = text.to_owned();
            text.replace_range(span, literal);
            Some(text)
        }
        Some(None) => None,
        None => insert(text, path, literal),
    }
}

/// The text without the value at `path`. What is not there is not cut.
pub(crate) fn cut(text: &str, path: &str) -> Option<String> {
    let document = Document::parse(text).ok()?;
    let Some(spot) = find(&document, path) else {
        return Some(text.to_owned());
    };
    if let (Some(key), Some(value), Around::Lines) = (spot.key, spot.value, spot.around) {
        let start = text[..key.start].rfind('\n').map_or(0, |i| i + 1);
        let end = text[value.end..]
            .find('\n')
            .map_or(text.len(), |i| value.end + i + 1);
        let mut text = text.to_owned();
        text.replace_range(start..end, "");
        return Some(text);
    }
    let mut document: DocumentMut = text.parse().ok()?;
    let (way, key) = split(path);
    let (table, around) = walk(document.as_table_mut(), &way)?;
    table.remove(key);
    space(table, around);
    Some(document.to_string())
}

/// A text that takes several values one after another and is written out once.
pub(crate) struct Editing(DocumentMut);

impl Editing {
    /// Opens a text; `None` where it is not TOML.
    pub(crate) fn open(text: &str) -> Option<Self> {
        text.parse().ok().map(Self)
    }

    /// Fills a field that is not there; `None` where the way to it is barred.
    pub(crate) fn fill(&mut self, filling: &Filling, row: Option<&NewRow>) -> Option<()> {
        if let Some(row) = row {
            self.add(row, &comment(&filling.remark))?;
        }
        let value: Value = filling.literal.parse().ok()?;
        let (way, key) = split(&filling.path);
        let (table, around) = walk(self.0.as_table_mut(), &way)?;
        if table.get(key).is_some_and(|item| !item.is_none()) {
            return Some(());
        }
        table.insert(key, Item::Value(value));
        if let (Around::Lines, None, false) = (around, row, filling.remark.is_empty()) {
            let mut named = table.key_mut(key)?;
            named.leaf_decor_mut().set_prefix(comment(&filling.remark));
        }
        space(table, around);
        Some(())
    }

    /// Adds a row with its id at the end of its list, its comment above its heading.
    fn add(&mut self, row: &NewRow, comment: &str) -> Option<()> {
        let (way, key) = split(&row.list);
        let (table, _) = walk(self.0.as_table_mut(), &way)?;
        if table.get(key).is_none() {
            table.insert(key, Item::ArrayOfTables(ArrayOfTables::new()));
        }
        let id = Value::from(row.id.as_str());
        match table.get_mut(key)? {
            Item::ArrayOfTables(list) => {
                let mut made = new_table(false);
                made.decor_mut().set_prefix(format!("\n{comment}"));
                made.insert("id", Item::Value(id));
                list.push(made);
            }
            Item::Value(Value::Array(list)) => {
                let mut made = InlineTable::new();
                made.insert("id", id);
                list.push(Value::InlineTable(made));
            }
            _ => return None,
        }
        Some(())
    }

    /// The text.
    pub(crate) fn text(&self) -> String {
        self.0.to_string()
    }
}

/// Lines as a comment of a file.
fn comment(lines: &[String]) -> String {
    lines.iter().map(|line| format!("# {line}\n")).collect()
}

/// Where a value stands.
struct Spot {
    key: Option<Range<usize>>,
    /// `None` for a table under a heading or of dotted keys.
    value: Option<Range<usize>>,
    around: Around,
}

/// What stands around a key.
#[derive(Clone, Copy)]
enum Around {
    /// Lines of a table.
    Lines,
    /// The braces of a table within a line.
    Braces,
}

fn split(path: &str) -> (Vec<&str>, &str) {
    match path.rsplit_once('.') {
        Some((way, key)) => (way.split('.').collect(), key),
        None => (Vec::new(), path),
    }
}

fn find(document: &Document<&str>, path: &str) -> Option<Spot> {
    let (way, key) = split(path);
    let mut table: &dyn TableLike = document.as_table();
    let mut around = Around::Lines;
    let mut parts = way.into_iter();
    while let Some(part) = parts.next() {
        let item = table.get(part)?;
        match item {
            Item::Value(Value::Array(list)) => {
                around = Around::Braces;
                let name = parts.next()?;
                let rows = list.iter().map(Value::as_inline_table);
                table = list
                    .get(row(rows.map(|r| r.map(|t| t as &dyn TableLike)), name)?)?
                    .as_inline_table()?;
            }
            Item::ArrayOfTables(list) => {
                let name = parts.next()?;
                let rows = list.iter().map(|t| Some(t as &dyn TableLike));
                table = list.get(row(rows, name)?)?;
            }
            other => {
                if other.is_inline_table() {
                    around = Around::Braces;
                }
                table = other.as_table_like()?;
            }
        }
    }
    let item = table.get(key).filter(|item| !item.is_none())?;
    Some(Spot {
        key: table.key(key).and_then(toml_edit::Key::span),
        value: item.as_value().and_then(Value::span),
        around,
    })
}

/// The row that a path names: by its id, or by its number from 1.
fn row<'t>(rows: impl Iterator<Item = Option<&'t dyn TableLike>>, name: &str) -> Option<usize> {
    let number = name.parse::<usize>().ok();
    let id = |table: &dyn TableLike| table.get("id").and_then(Item::as_str).map(str::to_owned);
    rows.enumerate()
        .find(|(index, table)| match number {
            Some(number) => index + 1 == number,
            None => table.and_then(id).as_deref() == Some(name),
        })
        .map(|(index, _)| index)
}

fn insert(text: &str, path: &str, literal: &str) -> Option<String> {
    let mut document: DocumentMut = text.parse().ok()?;
    let value: Value = literal.parse().ok()?;
    let (way, key) = split(path);
    let (table, around) = walk(document.as_table_mut(), &way)?;
    table.insert(key, Item::Value(value));
    space(table, around);
    Some(document.to_string())
}

/// Leaves one space before the closing brace and none before the commas; comments within braces
/// stay.
fn space(table: &mut dyn TableLike, around: Around) {
    let last = table.len();
    for (index, (_, item)) in table.iter_mut().enumerate() {
        let (Around::Braces, Some(value)) = (around, item.as_value_mut()) else {
            continue;
        };
        let suffix = value.decor().suffix().and_then(|s| s.as_str());
        if suffix.is_none_or(|s| s.chars().all(|c| c == ' ')) {
            let space = if index + 1 == last { " " } else { "" };
            value.decor_mut().set_suffix(space);
        }
    }
}

/// The table at the end of a way, made where it is missing.
fn walk<'t>(root: &'t mut Table, way: &[&str]) -> Option<(&'t mut dyn TableLike, Around)> {
    let mut table: &mut dyn TableLike = root;
    let mut around = Around::Lines;
    let mut parts = way.iter();
    while let Some(part) = parts.next() {
        if table.get(part).is_none() {
            let made = if matches!(around, Around::Braces) {
                Item::Value(Value::InlineTable(InlineTable::new()))
            } else {
                Item::Table(new_table(parts.len() > 0))
            };
            table.insert(part, made);
        }
        table = match table.get_mut(part)? {
            Item::Value(Value::Array(list)) => {
                around = Around::Braces;
                let rows = list.iter().map(Value::as_inline_table);
                let index = row(rows.map(|r| r.map(|t| t as &dyn TableLike)), parts.next()?)?;
                list.get_mut(index)?.as_inline_table_mut()?
            }
            Item::ArrayOfTables(list) => {
                let rows = list.iter().map(|t| Some(t as &dyn TableLike));
                let index = row(rows, parts.next()?)?;
                list.get_mut(index)?
            }
            other => {
                if other.is_inline_table() {
                    around = Around::Braces;
                }
                other.as_table_like_mut()?
            }
        };
    }
    Some((table, around))
}

/// A table under a heading of its own; without heading where only its own tables will be filled.
fn new_table(only_passed: bool) -> Table {
    let mut table = Table::new();
    table.set_implicit(only_passed);
    table.decor_mut().set_prefix("\n");
    table
}
