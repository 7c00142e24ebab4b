//! Filling fields that nobody has filled yet, in a file that was read and in its text.
//!
//! A value that stands already is never touched here: that is [`Document::set`](crate::Document).

use toml_edit::Document;

use crate::field::Field;
use crate::file::File;
use crate::load::{join, named};
use crate::problem::Fault;
use crate::slot::{Misfits, Slot};
use crate::visit::{Rows, Section, Visitor};
use crate::written::Written;

/// A field to be filled in the text of a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Filling {
    /// Path of the field (`boiler.barrel.wall`); a row that is not there yet is added under its
    /// id (`boiler.bush.valve.height`).
    pub path: String,
    /// Its value as it stands in a file: `"3 mm"` with its quotes, `3`,
    /// `{ drawn = "3 mm", tolerance = "10 %" }`.
    pub literal: String,
    /// Lines of the comment above it, without their sign; none for no comment.
    pub remark: Vec<String>,
}

/// A row that had to be added for a field to stand in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NewRow {
    /// Path of its list.
    pub list: String,
    /// Its id.
    pub id: String,
}

/// Puts a value, written as in a file, into a field of a file in memory, whatever stood there. A
/// row that is not there yet is added under its id, and told.
///
/// # Errors
/// What is wrong with the value, or that the path names no field.
pub fn put<F: File>(file: &mut F, path: &str, literal: &str) -> Result<Option<NewRow>, Fault> {
    let strange = || Fault::UnknownKey {
        key: path.to_owned(),
        allowed: Vec::new(),
        nearest: None,
    };
    // Only a parsed document keeps how a number was written.
    let text = format!("x = {literal}");
    let document = Document::parse(text.as_str()).map_err(|_| strange())?;
    let item = document.get("x").ok_or_else(strange)?;
    let mut putting = Putting {
        path,
        written: Some(Written::of_item(item, &text)),
        here: vec![String::new()],
        row: None,
        misfits: Misfits::default(),
    };
    file.visit(&mut putting);
    if putting.written.is_some() {
        return Err(strange());
    }
    match putting.misfits.0.into_iter().next() {
        Some((_, fault)) => Err(fault),
        None => Ok(putting.row),
    }
}

struct Putting<'a> {
    path: &'a str,
    /// What is to be put; taken when it is.
    written: Option<Written>,
    /// Paths of the tables at hand.
    here: Vec<String>,
    row: Option<NewRow>,
    misfits: Misfits,
}

impl Putting<'_> {
    fn join(&self, key: &str) -> String {
        join(self.here.last().map_or("", String::as_str), key)
    }

    /// What of the path lies under a table.
    fn under(&self, table: &str) -> Option<&str> {
        self.path.strip_prefix(table)?.strip_prefix('.')
    }

    fn descend(&mut self, path: String, section: &mut dyn Section) {
        self.here.push(path);
        section.visit(self);
        self.here.pop();
    }
}

impl Visitor for Putting<'_> {
    fn field(&mut self, field: Field, slot: &mut dyn Slot) {
        if self.written.is_some() && self.join(field.key) == self.path {
            slot.locate(self.path, None);
            if let Some(written) = self.written.take() {
                slot.accept(written, &mut self.misfits);
            }
        }
    }

    fn table(&mut self, key: &'static str, _meaning: &'static str, section: &mut dyn Section) {
        let path = self.join(key);
        if self.under(&path).is_some() {
            self.descend(path, section);
        }
    }

    fn rows(&mut self, key: &'static str, _meaning: &'static str, rows: &mut dyn Rows) {
        let list = self.join(key);
        let Some((id, _)) = self.under(&list).and_then(|rest| rest.split_once('.')) else {
            return;
        };
        let id = id.to_owned();
        let found = (0..rows.count()).find(|&index| rows.row(index).called() == id);
        let path = join(&list, &id);
        let index = found.unwrap_or_else(|| {
            rows.add();
            let last = rows.count() - 1;
            named(rows.row(last), &path, &id);
            self.row = Some(NewRow { list, id });
            last
        });
        self.descend(path, rows.row(index));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Plan, read};

    fn fill(text: &str, fillings: &[(&str, &str, &str)]) -> String {
        let fillings: Vec<Filling> = fillings
            .iter()
            .map(|(path, literal, remark)| Filling {
                path: (*path).to_owned(),
                literal: (*literal).to_owned(),
                remark: remark.lines().map(str::to_owned).collect(),
            })
            .collect();
        let mut document = crate::Document::<Plan>::open(text, "plan.toml").expect("opens");
        document.fill(&fillings).expect("fills");
        document.text().to_owned()
    }

    #[test]
    fn what_is_put_in_memory_is_what_is_read_from_the_filled_text() {
        let text = "format = 1\n\n[boiler.barrel] # mine\noutside = '4 in'\n";
        let fillings = [
            (
                "boiler.barrel.wall",
                "{ drawn = \"2.5 mm\", tolerance = \"10 %\" }",
                "why",
            ),
            (
                "boiler.bush.valve.on",
                "\"barrel\"",
                "a bush\nfor the valve",
            ),
            ("boiler.bush.valve.height", "\"90 mm\"", ""),
            ("blower.jets", "3", ""),
        ];
        let mut plan = read(text, "plan.toml").content;
        for (path, literal, _) in fillings {
            put(&mut plan, path, literal).expect("put");
        }
        let filled = fill(text, &fillings);
        let back = read(&filled, "plan.toml");
        assert!(back.problems.is_empty(), "{filled}");
        assert_eq!(back.content, plan, "{filled}");
        assert!(filled.starts_with(text), "{filled}");
        assert!(filled.contains("# why\nwall = {"), "{filled}");
        assert!(
            filled.contains("# a bush\n# for the valve\n[[boiler.bush]]\nid = \"valve\"\n"),
            "{filled}"
        );
    }

    #[test]
    fn a_value_that_stands_is_not_touched() {
        let text = "format = 1\nname = \"mine\"\nbush = 3\n";
        assert_eq!(fill(text, &[("name", "\"yours\"", "why")]), text);
    }

    #[test]
    fn a_path_without_a_field_and_a_value_that_does_not_read_are_refused() {
        let mut plan = Plan::blank();
        assert!(put(&mut plan, "boiler.funnel", "\"3 mm\"").is_err());
        assert!(put(&mut plan, "boiler.barrel.wall", "3").is_err());
        assert!(put(&mut plan, "boiler.barrel.wall", "\"3").is_err());
    }
}
