//! A value together with where it came from, as it enters a sum at the door.

use crate::assumption::Assumption;
use crate::finding::Origin;
use crate::quantity::Quantity;
use crate::source::Source;

/// Where a value that enters a sum came from.
#[derive(Clone, Debug)]
pub enum Given {
    /// From the plan or workshop file.
    Plan {
        /// Path of the field (`boiler.barrel.bore`).
        field: String,
        /// The text as typed.
        typed: String,
    },
    /// From a published table.
    Table {
        /// Name of the table.
        table: String,
        /// Row, and the two rows between which it was interpolated where it was.
        row: String,
        /// Citation of the table.
        source: &'static Source,
    },
    /// Assumed, because nobody has measured it.
    Assumed {
        /// The assumption.
        assumption: &'static Assumption,
    },
    /// Taken off the shape of what the plan describes, exactly: a length, an area, a volume.
    Shape {
        /// Of what, in words, with the fields that shape it.
        of: String,
        /// The weakest origin among these fields.
        weakest: Origin,
    },
    /// A choice with its reason.
    Chosen {
        /// What it was chosen from, in words.
        between: String,
        /// Why.
        reason: String,
        /// The weakest origin of what the choice rests on.
        weakest: Origin,
    },
}

impl Given {
    /// How well founded it is.
    #[must_use]
    pub fn origin(&self) -> Origin {
        match self {
            Self::Plan { .. } => Origin::Read,
            Self::Table { source, .. } => source.seen.into(),
            Self::Assumed { .. } => Origin::Assumed,
            Self::Shape { weakest, .. } | Self::Chosen { weakest, .. } => *weakest,
        }
    }
}

/// A value with its origin.
#[derive(Clone, Debug)]
pub struct Known<Q> {
    /// The value.
    pub value: Q,
    /// Where it came from.
    pub given: Given,
}

impl<Q: Quantity> Known<Q> {
    /// A value from the plan.
    #[must_use]
    pub fn from_plan(value: Q, field: impl Into<String>, typed: impl Into<String>) -> Self {
        Self {
            value,
            given: Given::Plan {
                field: field.into(),
                typed: typed.into(),
            },
        }
    }

    /// The value of an assumption.
    #[must_use]
    pub fn assumed(assumption: &'static Assumption) -> Self {
        let value = Q::from_unit(assumption.value, assumption.unit);
        Self {
            value,
            given: Given::Assumed { assumption },
        }
    }

    /// Whether it was assumed.
    #[must_use]
    pub fn is_assumed(&self) -> bool {
        matches!(self.given, Given::Assumed { .. })
    }
}
