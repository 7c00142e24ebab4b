//! The writer: a file as text, sections in the order in which they are visited.

use crate::field::Field;
use crate::file::File;
use crate::load::join;
use crate::slot::Slot;
use crate::visit::{Rows, Section, Visitor};

/// The text of a file. It holds what was written and nothing more: comments, order and quoting of
/// an older text are kept by [`crate::Document`], not here.
#[must_use]
pub fn write<F: File>(file: &F) -> String {
    let mut writer = Writer {
        tables: vec![Table::default()],
    };
    file.clone().visit(&mut writer);
    writer.tables.pop().map_or(String::new(), |root| {
        let gap = if root.lines.is_empty() { 1 } else { 0 };
        format!("{}{}", root.lines, &root.below[gap.min(root.below.len())..])
    })
}

struct Writer {
    tables: Vec<Table>,
}

/// A table while it is written: its own lines must come before the tables within it.
#[derive(Default)]
struct Table {
    path: String,
    lines: String,
    below: String,
}

impl Writer {
    fn here(&mut self) -> &mut Table {
        match self.tables.last_mut() {
            Some(table) => table,
            None => panic!("the writer begins with the root table and pops only what it pushed"),
        }
    }

    fn descend(&mut self, key: &str, section: &mut dyn Section) -> Table {
        let path = join(&self.here().path, key);
        self.tables.push(Table {
            path,
            ..Table::default()
        });
        section.visit(self);
        match self.tables.pop() {
            Some(table) => table,
            None => panic!("the table pushed above is still there"),
        }
    }
}

impl Visitor for Writer {
    fn field(&mut self, field: Field, slot: &mut dyn Slot) {
        if let Some(written) = slot.written() {
            let line = format!("{} = {}\n", field.key, written.toml());
            self.here().lines.push_str(&line);
        }
    }

    fn table(&mut self, key: &'static str, _meaning: &'static str, section: &mut dyn Section) {
        let table = self.descend(key, section);
        let here = self.here();
        if !table.lines.is_empty() {
            here.below
                .push_str(&format!("\n[{}]\n{}", table.path, table.lines));
        }
        here.below.push_str(&table.below);
    }

    fn rows(&mut self, key: &'static str, _meaning: &'static str, rows: &mut dyn Rows) {
        for index in 0..rows.count() {
            let row = self.descend(key, rows.row(index));
            let text = format!("\n[[{}]]\n{}{}", row.path, row.lines, row.below);
            self.here().below.push_str(&text);
        }
    }
}
