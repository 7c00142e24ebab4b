//! The register of fields, read off the sections themselves.

use crate::field::{Field, FieldKind};
use crate::file::File;
use crate::load::join;
use crate::slot::Slot;
use crate::visit::{Rows, Section, Visitor};

/// How the id of a row stands in the path of a field of every row.
pub const ANY_ID: &str = "<id>";

/// A table, a list of tables or a field of a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Registered {
    /// Path, for instance `boiler.barrel.wall` or `boiler.stay.<id>.diameter`.
    pub path: String,
    /// What it means, in words.
    pub meaning: &'static str,
    /// What it is.
    pub what: What,
}

/// What a registered path is.
#[derive(Clone, Debug, PartialEq)]
pub enum What {
    /// A table.
    Table,
    /// A list of tables.
    List,
    /// A field.
    Field(FieldKind),
}

/// Every table and field of a file, in the order in which it is written.
#[must_use]
pub fn register<F: File>() -> Vec<Registered> {
    let mut registrar = Registrar::default();
    F::default().visit(&mut registrar);
    registrar.found
}

#[derive(Default)]
struct Registrar {
    path: String,
    found: Vec<Registered>,
}

impl Registrar {
    fn note(&mut self, key: &str, meaning: &'static str, what: What) -> String {
        let path = join(&self.path, key);
        self.found.push(Registered {
            path: path.clone(),
            meaning,
            what,
        });
        path
    }

    fn descend(&mut self, path: String, section: &mut dyn Section) {
        let outer = std::mem::replace(&mut self.path, path);
        section.visit(self);
        self.path = outer;
    }
}

impl Visitor for Registrar {
    fn field(&mut self, field: Field, _slot: &mut dyn Slot) {
        self.note(field.key, field.meaning, What::Field(field.kind));
    }

    fn table(&mut self, key: &'static str, meaning: &'static str, section: &mut dyn Section) {
        let path = self.note(key, meaning, What::Table);
        self.descend(path, section);
    }

    fn rows(&mut self, key: &'static str, meaning: &'static str, rows: &mut dyn Rows) {
        let path = self.note(key, meaning, What::List);
        rows.add();
        self.descend(join(&path, ANY_ID), rows.row(0));
    }
}
