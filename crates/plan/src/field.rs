//! What a field is: its key, its meaning, and what may stand in it.

use reckoning::quantity::Kind;

/// The definition of one field.
#[derive(Clone, Debug, PartialEq)]
pub struct Field {
    /// Key in its table.
    pub key: &'static str,
    /// What it means, in words.
    pub meaning: &'static str,
    /// What may stand in it.
    pub kind: FieldKind,
}

/// What may stand in a field.
#[derive(Clone, Debug, PartialEq)]
pub enum FieldKind {
    /// A quantity as text.
    Number {
        /// Its kind.
        kind: Kind,
        /// Least and greatest.
        limits: Limits,
    },
    /// A list of quantities.
    Numbers {
        /// Their kind.
        kind: Kind,
        /// Least and greatest of each.
        limits: Limits,
    },
    /// A size: a length as text, or `{ drawn, tolerance, made }`.
    Size {
        /// Least and greatest of what is drawn or made.
        limits: Limits,
    },
    /// A whole number without a unit.
    Count {
        /// Least.
        low: u32,
        /// Greatest.
        high: u32,
    },
    /// A list of whole numbers.
    Counts {
        /// Least of each.
        low: u32,
        /// Greatest of each.
        high: u32,
    },
    /// One of several names.
    Choice {
        /// The names.
        names: Vec<Named>,
        /// Names that are understood and refused, because nothing works with them yet.
        not_yet: Vec<Named>,
    },
    /// Free text, a standard's designation, or the id of something else in the plan.
    Text,
    /// A list of texts.
    Texts,
    /// The name of a row of a list: lower case letters, digits and hyphens, a letter first.
    Id,
}

/// A name with its meaning.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Named {
    /// As written in the file.
    pub name: &'static str,
    /// What it stands for; empty where the name says it.
    pub meaning: &'static str,
}

/// Least and greatest value of a field, as a maker writes them.
///
/// They catch a slip of the unit or of the decimal point and judge nothing: what lies inside
/// them may still be refused by every rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limits {
    /// Least.
    pub low: &'static str,
    /// Greatest.
    pub high: &'static str,
}

/// Limits from `low` to `high`.
#[must_use]
pub const fn within(low: &'static str, high: &'static str) -> Limits {
    Limits { low, high }
}

/// A closed list of names that a field may hold.
pub trait Choice: Copy + Eq + std::fmt::Debug + 'static {
    /// Each value with its name and meaning.
    const NAMES: &'static [(Self, &'static str, &'static str)];
    /// Names that are understood and refused, because nothing works with them yet.
    const NOT_YET: &'static [(&'static str, &'static str)] = &[];

    /// The name as written in the file.
    fn name(self) -> &'static str {
        Self::NAMES
            .iter()
            .find(|(value, _, _)| *value == self)
            .map_or("", |(_, name, _)| name)
    }
}
