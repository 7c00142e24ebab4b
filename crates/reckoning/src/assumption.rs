//! A number nobody has measured yet, with its range.

use crate::formula::Cite;
use crate::quantity::Unit;

/// A number nobody measured yet: the value used, and the range in which it may lie.
///
/// `low` and `high` are the 5 % and 95 % points of a split normal law unless the source says
/// otherwise. Assumptions that share a `variable` move together.
#[derive(Clone, Copy, Debug)]
pub struct Assumption {
    /// Name, for instance `bed.voidage`; it begins with the plan field that replaces it, where
    /// there is one. Where the number depends on a choice of the plan, that choice follows:
    /// `fire.lump-density for charcoal`.
    pub id: &'static str,
    /// What the number means, in words.
    pub meaning: &'static str,
    /// The unit in which `value`, `low` and `high` are written.
    pub unit: &'static Unit,
    /// The value used where one number is wanted.
    pub value: f64,
    /// 5 % point.
    pub low: f64,
    /// 95 % point.
    pub high: f64,
    /// Shared random variable; assumptions with the same name are wholly correlated.
    pub variable: &'static str,
    /// Where the range comes from.
    pub cite: Cite,
}

/// The standard normal value of the 95 % point.
const Z95: f64 = 1.644_853_626_951_472_7;

impl Assumption {
    /// The plan field that replaces it, where there is one.
    #[must_use]
    pub fn field(&self) -> &'static str {
        match self.id.split_once(" for ") {
            Some((field, _)) => field,
            None => self.id,
        }
    }

    /// The value at a standard normal deviate `z` by the split normal law: the lower half has
    /// the spread of `low`, the upper half that of `high`.
    #[must_use]
    pub fn at_deviate(&self, z: f64) -> f64 {
        let reach = if z < 0.0 {
            self.value - self.low
        } else {
            self.high - self.value
        };
        self.value + reach * z / Z95
    }

    /// The end of the range that is worse for a check which gets worse as the number grows
    /// (`true`) or shrinks (`false`).
    #[must_use]
    pub fn worse_end(&self, worse: Worse) -> f64 {
        match worse {
            Worse::WhenHigh => self.high,
            Worse::WhenLow => self.low,
        }
    }
}

/// Which way a check gets worse.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Worse {
    /// The check gets worse as the number grows.
    WhenHigh,
    /// The check gets worse as the number shrinks.
    WhenLow,
}
