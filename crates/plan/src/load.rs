//! The reader: a visitor that fills every entry from a parsed text and notes what is wrong.

use std::ops::Range;

use toml_edit::{Item, Table, TableLike, Value};

use crate::field::Field;
use crate::place::Place;
use crate::problem::{Fault, nearest};
use crate::slot::{Misfits, Slot};
use crate::value_text::is_id;
use crate::visit::{Row, Rows, Section, Visitor};
use crate::written::Written;

/// What is wrong: the bytes, the path, the fault.
pub(crate) type Found = (Option<Range<usize>>, String, Fault);

/// Fills a section and everything in it. Without a table every entry only gets its path.
pub(crate) fn load(
    section: &mut dyn Section,
    table: Option<&dyn TableLike>,
    source: &str,
) -> Vec<Found> {
    let mut loader = Loader {
        source,
        frames: Vec::new(),
        found: Vec::new(),
    };
    loader.descend(table, String::new(), section);
    loader.found
}

/// Gives a row that was just added its id, and every entry in it its path.
pub(crate) fn named(row: &mut dyn Row, path: &str, id: &str) {
    let mut table = Table::new();
    table.insert("id", Item::Value(Value::from(id)));
    let mut loader = Loader {
        source: "",
        frames: Vec::new(),
        found: Vec::new(),
    };
    loader.descend(Some(&table), path.to_owned(), row);
}

struct Loader<'d> {
    source: &'d str,
    frames: Vec<Frame<'d>>,
    found: Vec<Found>,
}

/// The table at hand.
#[derive(Default)]
struct Frame<'d> {
    table: Option<&'d dyn TableLike>,
    path: String,
    known: Vec<&'static str>,
}

impl<'d> Loader<'d> {
    fn descend(
        &mut self,
        table: Option<&'d dyn TableLike>,
        path: String,
        section: &mut dyn Section,
    ) {
        let known = Vec::new();
        self.frames.push(Frame { table, path, known });
        section.visit(self);
        if let Some(frame) = self.frames.pop() {
            self.unknown_keys(&frame);
        }
    }

    /// Notes a key as known; gives its item and its path.
    fn take(&mut self, key: &'static str) -> (Option<&'d Item>, String) {
        let Some(frame) = self.frames.last_mut() else {
            panic!("a field is visited within a section: descend begins with one");
        };
        frame.known.push(key);
        let item = frame.table.and_then(|table| table.get(key));
        (item, join(&frame.path, key))
    }

    fn unknown_keys(&mut self, frame: &Frame<'d>) {
        let Some(table) = frame.table else { return };
        for (key, item) in table.iter() {
            if frame.known.contains(&key) {
                continue;
            }
            let span = table.key(key).and_then(toml_edit::Key::span);
            let fault = Fault::UnknownKey {
                key: key.to_owned(),
                allowed: frame.known.iter().map(|&k| k.to_owned()).collect(),
                nearest: nearest(key, frame.known.iter().copied()).map(str::to_owned),
            };
            let path = join(&frame.path, key);
            self.found.push((span.or_else(|| item.span()), path, fault));
        }
    }

    fn wrong_sort(&mut self, item: &Item, path: &str, wanted: &'static str, example: String) {
        let written = Written::of_item(item, self.source);
        let fault = Fault::WrongSort {
            read: written.shown(),
            sort: written.what(),
            wanted,
            example,
        };
        self.found.push((written.span, path.to_owned(), fault));
    }

    /// The rows of a list: tables under headings of their own, or between braces.
    fn row_tables(&mut self, item: &'d Item, path: &str) -> Vec<RowTable<'d>> {
        if let Some(tables) = item.as_array_of_tables() {
            return tables
                .iter()
                .map(|table| RowTable::of(table, table.span()))
                .collect();
        }
        let Some(list) = item.as_array() else {
            self.wrong_sort(item, path, "a list of tables", format!("[[{path}]]"));
            return Vec::new();
        };
        let mut rows = Vec::new();
        for value in list {
            match value {
                Value::InlineTable(table) => rows.push(RowTable::of(table, value.span())),
                other => {
                    let item = Item::Value(other.clone());
                    self.wrong_sort(&item, path, "a table", format!("[[{path}]]"));
                }
            }
        }
        rows
    }

    /// The part of the path that names a row: its id, where it has one of its own; else its
    /// number from 1. Says so where it has none of its own.
    fn row_name(&mut self, rows: &[RowTable<'d>], index: usize, path: &str) -> String {
        let number = (index + 1).to_string();
        let row = &rows[index];
        let Some(id) = row.id() else {
            if row.table.get("id").is_none() {
                let path = join(path, &number);
                self.found.push((row.span.clone(), path, Fault::MissingId));
            }
            return number;
        };
        let Some(first) = rows[..index].iter().find(|r| r.id() == Some(id)) else {
            return id.to_owned();
        };
        let line = first
            .id_span()
            .map_or(1, |s| Place::of(self.source, &s).line);
        let fault = Fault::DuplicateId {
            id: id.to_owned(),
            first: line,
        };
        let path = join(&join(path, &number), "id");
        self.found.push((row.id_span(), path, fault));
        number
    }
}

/// A row of a list with the bytes of its heading or braces.
struct RowTable<'d> {
    table: &'d dyn TableLike,
    span: Option<Range<usize>>,
}

impl<'d> RowTable<'d> {
    fn of(table: &'d dyn TableLike, span: Option<Range<usize>>) -> Self {
        Self { table, span }
    }

    fn id(&self) -> Option<&'d str> {
        let id = self.table.get("id")?.as_str()?;
        is_id(id).then_some(id)
    }

    fn id_span(&self) -> Option<Range<usize>> {
        self.table.get("id").and_then(Item::span)
    }
}

impl Visitor for Loader<'_> {
    fn field(&mut self, field: Field, slot: &mut dyn Slot) {
        let (item, path) = self.take(field.key);
        let Some(item) = item.filter(|item| !item.is_none()) else {
            slot.locate(&path, None);
            return;
        };
        let written = Written::of_item(item, self.source);
        let at = written
            .span
            .as_ref()
            .map(|span| Place::of(self.source, span));
        slot.locate(&path, at);
        let mut misfits = Misfits::default();
        slot.accept(written, &mut misfits);
        for (span, fault) in misfits.0 {
            self.found.push((span, path.clone(), fault));
        }
    }

    fn table(&mut self, key: &'static str, _meaning: &'static str, section: &mut dyn Section) {
        let (item, path) = self.take(key);
        let table = item.and_then(Item::as_table_like);
        if let (Some(item), None) = (item, table) {
            self.wrong_sort(item, &path, "a table", format!("[{path}]"));
        }
        self.descend(table, path, section);
    }

    fn rows(&mut self, key: &'static str, _meaning: &'static str, rows: &mut dyn Rows) {
        let (item, path) = self.take(key);
        let Some(item) = item else { return };
        let tables = self.row_tables(item, &path);
        for index in 0..tables.len() {
            let name = self.row_name(&tables, index, &path);
            rows.add();
            self.descend(
                Some(tables[index].table),
                join(&path, &name),
                rows.row(index),
            );
        }
    }
}

/// A path and one more part.
pub(crate) fn join(path: &str, key: &str) -> String {
    if path.is_empty() {
        key.to_owned()
    } else {
        format!("{path}.{key}")
    }
}
