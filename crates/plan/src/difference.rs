//! The difference between two files: which fields were given, changed or taken away.

use std::collections::HashMap;

use crate::field::Field;
use crate::file::File;
use crate::load::join;
use crate::slot::Slot;
use crate::visit::{Rows, Section, Visitor};
use crate::written::Written;

/// One field, or one row, that is not the same in two files.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// Path of the field or the row.
    pub path: String,
    /// What happened to it.
    pub kind: ChangeKind,
}

/// What happened to a field or a row.
#[derive(Clone, Debug, PartialEq)]
pub enum ChangeKind {
    /// A value was given where there was none.
    Given {
        /// The value now.
        now: Written,
    },
    /// A value was changed.
    Changed {
        /// The value before.
        was: Written,
        /// The value now.
        now: Written,
    },
    /// A value was taken away.
    Emptied {
        /// The value before.
        was: Written,
    },
    /// A row was added; its fields are listed after it.
    RowAdded,
    /// A row was taken away; its fields are listed after it.
    RowTaken,
}

/// What became of `before` in `now`: first what stands in `now`, in its order, then what was
/// taken away. Where a value stands, its comments and its quoting do not count; neither does the
/// order of rows, which are known by their ids.
#[must_use]
pub fn difference<F: File>(before: &F, now: &F) -> Vec<Change> {
    let (before, now) = (Flat::of(before), Flat::of(now));
    let (old, new) = (before.by_path(), now.by_path());
    let mut changes = Vec::new();
    for (path, item) in &now.items {
        let kind = match (old.get(path.as_str()), item) {
            (None, Item::Row) => ChangeKind::RowAdded,
            (None, Item::Value(now)) => ChangeKind::Given { now: now.clone() },
            (Some(Item::Value(was)), Item::Value(now)) if was != now => ChangeKind::Changed {
                was: was.clone(),
                now: now.clone(),
            },
            (Some(_), _) => continue,
        };
        let path = path.clone();
        changes.push(Change { path, kind });
    }
    for (path, item) in &before.items {
        if new.contains_key(path.as_str()) {
            continue;
        }
        let kind = match item {
            Item::Row => ChangeKind::RowTaken,
            Item::Value(was) => ChangeKind::Emptied { was: was.clone() },
        };
        let path = path.clone();
        changes.push(Change { path, kind });
    }
    changes
}

enum Item {
    Row,
    Value(Written),
}

/// Every row and every filled field of a file, in order.
#[derive(Default)]
struct Flat {
    path: String,
    items: Vec<(String, Item)>,
}

impl Flat {
    fn of<F: File>(file: &F) -> Self {
        let mut flat = Self::default();
        file.clone().visit(&mut flat);
        flat
    }

    fn by_path(&self) -> HashMap<&str, &Item> {
        self.items
            .iter()
            .map(|(path, item)| (path.as_str(), item))
            .collect()
    }

    fn descend(&mut self, path: String, section: &mut dyn Section) {
        let outer = std::mem::replace(&mut self.path, path);
        section.visit(self);
        self.path = outer;
    }
}

impl Visitor for Flat {
    fn field(&mut self, field: Field, slot: &mut dyn Slot) {
        // An emptied value counts as taken away; its mark in the file is no value.
        if let Some(written) = slot.written().filter(|w| !w.is_empty_text()) {
            let path = join(&self.path, field.key);
            self.items.push((path, Item::Value(written.clone())));
        }
    }

    fn table(&mut self, key: &'static str, _meaning: &'static str, section: &mut dyn Section) {
        self.descend(join(&self.path, key), section);
    }

    fn rows(&mut self, key: &'static str, _meaning: &'static str, rows: &mut dyn Rows) {
        let list = join(&self.path, key);
        for index in 0..rows.count() {
            let row = rows.row(index);
            let name = row.id().get().cloned();
            let path = join(&list, &name.unwrap_or_else(|| (index + 1).to_string()));
            self.items.push((path.clone(), Item::Row));
            self.descend(path, row);
        }
    }
}
