//! The text of a file that is edited field by field, so that the maker's comments, order and
//! quoting stay.

use std::marker::PhantomData;

use crate::field::{Field, FieldKind};
use crate::file::{File, Read, read_file};
use crate::fill::{Filling, put};
use crate::place::Place;
use crate::problem::{Fault, Problem, nearest};
use crate::size_text::PARTS;
use crate::slot::Slot;
use crate::splice::{Editing, cut, put as replace, raw, text_literal};
use crate::visit::{Rows, Section, Visitor};

/// The text of a file under edit.
///
/// Every edit is tried on a copy and read again whole; an edit that brings a problem is refused
/// with that problem and leaves the text as it was. Problems that were there before hinder no
/// edit.
#[derive(Clone, Debug)]
pub struct Document<F> {
    name: String,
    text: String,
    kind: PhantomData<F>,
}

impl<F: File> Document<F> {
    /// Opens a text for editing; `name` is the name of the file, for the messages.
    ///
    /// # Errors
    /// The problem of a text that is not TOML, or that a later program wrote.
    pub fn open(text: &str, name: &str) -> Result<Self, Box<Problem>> {
        let read: Read<F> = read_file(text, name);
        let closed =
            |fault: &Fault| matches!(fault, Fault::Syntax { .. } | Fault::FormatNewer { .. });
        match read.problems.into_iter().find(|p| closed(&p.fault)) {
            Some(problem) => Err(Box::new(problem)),
            None => Ok(Self {
                name: name.to_owned(),
                text: text.to_owned(),
                kind: PhantomData,
            }),
        }
    }

    /// The text as it stands.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The file as it stands.
    #[must_use]
    pub fn read(&self) -> Read<F> {
        read_file(&self.text, &self.name)
    }

    /// Gives a field a value, as it would be typed: `set("boiler.barrel.wall", "3 mm")`.
    ///
    /// Quantities, choices and texts are given without quotes, lists between square brackets as
    /// in the file. A part of a size has a name of its own, `boiler.barrel.wall.made`; setting the
    /// field itself sets what is drawn and leaves the other parts. The empty text marks the value
    /// as taken away.
    ///
    /// # Errors
    /// The problem that the value would bring, placed in the text that would hold it; or the
    /// problem of a path that names no field.
    pub fn set(&mut self, path: &str, value: &str) -> Result<(), Box<Problem>> {
        let target = self.target(path)?;
        let old = raw(&self.text, &target.field_path);
        let literal = match (target.part, old) {
            (None, None) => literal(&target.kind, value, ""),
            (None, Some(old)) if old.starts_with('{') => {
                return self.set_part(&target.field_path, "drawn", value);
            }
            (None, Some(old)) => literal(&target.kind, value, old),
            (Some("drawn"), None) => text_literal(value, ""),
            (Some(part), None) => format!("{{ {part} = {} }}", text_literal(value, "")),
            (Some(part), Some(old)) if is_table(old) => {
                return self.set_part(&target.field_path, part, value);
            }
            (Some("drawn"), Some(old)) => text_literal(value, old),
            (Some(part), Some(old)) => {
                format!("{{ drawn = {old}, {part} = {} }}", text_literal(value, old))
            }
        };
        let text = replace(&self.text, &target.field_path, &literal);
        self.keep(text, path)
    }

    /// Sets a part of a size that already stands between braces or under a heading.
    fn set_part(&mut self, field_path: &str, part: &str, value: &str) -> Result<(), Box<Problem>> {
        let path = format!("{field_path}.{part}");
        let old = raw(&self.text, &path).unwrap_or("");
        let text = replace(&self.text, &path, &text_literal(value, old));
        self.keep(text, &path)
    }

    /// Takes a field out of the text, or a part of a size. The comments above it stay.
    ///
    /// # Errors
    /// The problem that its absence would bring (a row needs its id, a size what is drawn), or the
    /// problem of a path that names no field.
    pub fn unset(&mut self, path: &str) -> Result<(), Box<Problem>> {
        self.target(path)?;
        let text = cut(&self.text, path);
        self.keep(text, path)
    }

    /// Fills fields that are not there, each with its comment above it, and leaves those that are.
    /// Rows that are not there are added at the end of their list.
    ///
    /// # Errors
    /// The problem of a value or a path, or that a row has no place in the text; the text is then
    /// left as it was.
    pub fn fill(&mut self, fillings: &[Filling]) -> Result<(), Box<Problem>> {
        let mut content = self.read().content;
        let mut editing = Editing::open(&self.text);
        for filling in fillings {
            let path = &filling.path;
            let row = put(&mut content, path, &filling.literal).map_err(|fault| {
                Box::new(Problem {
                    file: self.name.clone(),
                    place: Place::START,
                    path: path.clone(),
                    fault,
                })
            })?;
            let done = editing.as_mut().and_then(|e| e.fill(filling, row.as_ref()));
            if done.is_none() {
                return Err(self.no_such(path, &paths(content)));
            }
        }
        match editing {
            Some(editing) => self.keep(Some(editing.text()), ""),
            None => Ok(()),
        }
    }

    /// Keeps an edited text if it reads no worse than the text before.
    fn keep(&mut self, text: Option<String>, path: &str) -> Result<(), Box<Problem>> {
        let before = self.read();
        let Some(text) = text else {
            return Err(self.no_such(path, &paths(before.content)));
        };
        let after: Read<F> = read_file(&text, &self.name);
        let stood = |p: &Problem| {
            let same = |old: &Problem| old.path == p.path && old.fault == p.fault;
            before.problems.iter().any(same)
        };
        match after.problems.into_iter().find(|p| !stood(p)) {
            Some(problem) => Err(Box::new(problem)),
            None => {
                self.text = text;
                Ok(())
            }
        }
    }

    fn target(&self, path: &str) -> Result<Target, Box<Problem>> {
        let fields = paths(self.read().content);
        let find = |wanted: &str| fields.iter().find(|(path, _)| path == wanted);
        if let Some((found, kind)) = find(path) {
            return Ok(Target {
                field_path: found.clone(),
                part: None,
                kind: kind.clone(),
            });
        }
        let split = path.rsplit_once('.');
        if let Some((field_path, last)) = split
            && let Some(part) = PARTS.into_iter().find(|part| *part == last)
            && let Some((found, kind @ FieldKind::Size { .. })) = find(field_path)
        {
            return Ok(Target {
                field_path: found.clone(),
                part: Some(part),
                kind: kind.clone(),
            });
        }
        Err(self.no_such(path, &fields))
    }

    fn no_such(&self, path: &str, fields: &[(String, FieldKind)]) -> Box<Problem> {
        let names = || fields.iter().map(|(path, _)| path.as_str());
        let table = path.rsplit_once('.').map_or("", |(table, _)| table);
        let beside = |name: &&str| name.rsplit_once('.').map_or("", |(t, _)| t) == table;
        Box::new(Problem {
            file: self.name.clone(),
            place: Place::START,
            path: path.to_owned(),
            fault: Fault::UnknownKey {
                key: path.to_owned(),
                allowed: names().filter(beside).map(str::to_owned).collect(),
                nearest: nearest(path, names()).map(str::to_owned),
            },
        })
    }
}

/// What an edit is aimed at.
struct Target {
    field_path: String,
    part: Option<&'static str>,
    kind: FieldKind,
}

fn is_table(old: &str) -> bool {
    old.is_empty() || old.starts_with('{')
}

/// The value as TOML, in the style of the writing that it replaces.
fn literal(kind: &FieldKind, value: &str, old: &str) -> String {
    let bare = match kind {
        FieldKind::Count { .. } => value.parse::<i64>().is_ok(),
        FieldKind::Number { .. } => {
            let is_bare = |text: &str| text.parse::<f64>().is_ok();
            is_bare(old) && is_bare(value)
        }
        FieldKind::Counts { .. } | FieldKind::Numbers { .. } | FieldKind::Texts => value
            .parse::<toml_edit::Value>()
            .is_ok_and(|v| v.is_array()),
        FieldKind::Size { .. } | FieldKind::Choice { .. } | FieldKind::Text | FieldKind::Id => {
            false
        }
    };
    if bare {
        value.trim().to_owned()
    } else {
        text_literal(value, old)
    }
}

/// The path and kind of every field that a file has, rows as they are named in it.
fn paths<F: File>(mut file: F) -> Vec<(String, FieldKind)> {
    let mut paths = Paths(Vec::new());
    file.visit(&mut paths);
    paths.0
}

struct Paths(Vec<(String, FieldKind)>);

impl Visitor for Paths {
    fn field(&mut self, field: Field, slot: &mut dyn Slot) {
        self.0.push((slot.path().to_owned(), field.kind));
    }

    fn table(&mut self, _key: &'static str, _meaning: &'static str, section: &mut dyn Section) {
        section.visit(self);
    }

    fn rows(&mut self, _key: &'static str, _meaning: &'static str, rows: &mut dyn Rows) {
        for index in 0..rows.count() {
            rows.row(index).visit(self);
        }
    }
}
