//! The plan while it grows: what the maker gave, and the choices so far.

use std::collections::BTreeSet;

use plan::{Entry, Field, File, Plan, Rows, Section, Slot, Visitor, put};
use reckoning::Size;
use reckoning::quantity::Length;

use super::choice::{By, Choice};

/// Fields that say the same of a part in another way: where one is given, the other is not filled.
const INSTEAD: &[(&str, &str)] = &[
    ("boiler.barrel.outside", "boiler.barrel.bore"),
    ("boiler.firebox.outside", "boiler.firebox.bore"),
    ("boiler.firehole.outside", "boiler.firehole.bore"),
    ("boiler.firehole.bore", "boiler.firehole.outside"),
];

/// A plan under a walk.
#[derive(Clone, Debug)]
pub(super) struct Draft {
    /// The plan as it stands.
    pub(super) plan: Plan,
    /// Fields that the maker gave or emptied.
    given: BTreeSet<String>,
    /// The steps so far.
    pub(super) choices: Vec<Choice>,
}

impl Draft {
    pub(super) fn of(plan: Plan) -> Self {
        Self {
            given: written(&plan),
            plan,
            choices: Vec::new(),
        }
    }

    /// Whether the maker gave the field, or emptied it: either is his to say.
    pub(super) fn is_given(&self, path: &str) -> bool {
        let instead = INSTEAD.iter().filter(|(field, _)| *field == path);
        self.given.contains(path)
            || instead
                .map(|(_, other)| *other)
                .any(|other| self.given.contains(other))
    }

    /// Takes a step into the plan; a step of the same name that was taken before is taken back.
    /// What the maker gave is kept. A value that its field does not take is left out: the check
    /// of the whole plan then misses it.
    pub(super) fn take(&mut self, mut choice: Choice) {
        for field in &mut choice.fields {
            if self.is_given(&field.path) {
                field.by = By::Maker;
            }
        }
        choice.fields.retain_mut(|field| match field.by {
            By::Maker => match shown(&self.plan, &field.path) {
                Some(literal) => {
                    field.literal = literal;
                    true
                }
                None => false,
            },
            By::Step => put(&mut self.plan, &field.path, &field.literal).is_ok(),
        });
        match self.choices.iter_mut().find(|c| c.step == choice.step) {
            Some(before) => *before = choice,
            None => self.choices.push(choice),
        }
    }

    /// The plan with other values on trial, but for those that the maker gave.
    pub(super) fn with(&self, changes: &[(&str, String)]) -> Plan {
        let mut plan = self.plan.clone();
        for (path, literal) in changes.iter().filter(|(path, _)| !self.is_given(path)) {
            // A value that the field does not take leaves the trial without it.
            if put(&mut plan, path, literal).is_err() {
                continue;
            }
        }
        plan
    }
}

/// A size in millimetres, as it is likely.
pub(super) fn size_mm(entry: &Entry<Size>) -> Option<f64> {
    entry.likely().map(|known| known.value.mm())
}

/// A length in millimetres.
pub(super) fn length_mm(entry: &Entry<Length>) -> Option<f64> {
    entry.value().map(Length::mm)
}

/// Paths of every field that stands in a file.
fn written<F: File>(file: &F) -> BTreeSet<String> {
    let mut found = Found::default();
    file.clone().visit(&mut found);
    found.fields.into_iter().map(|(path, _)| path).collect()
}

/// What stands in a field.
fn shown<F: File>(file: &F, path: &str) -> Option<String> {
    let mut found = Found::default();
    file.clone().visit(&mut found);
    let mut fields = found.fields.into_iter();
    fields.find(|(p, _)| p == path).map(|(_, written)| written)
}

#[derive(Default)]
struct Found {
    fields: Vec<(String, String)>,
}

impl Visitor for Found {
    fn field(&mut self, _field: Field, slot: &mut dyn Slot) {
        if let Some(written) = slot.written() {
            let stands = (slot.path().to_owned(), written.to_string());
            self.fields.push(stands);
        }
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
