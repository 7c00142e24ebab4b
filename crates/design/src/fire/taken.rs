//! How a number enters a sum: from the plan, from an assumption, or not at all.

use plan::Entry;
use reckoning::quantity::{Length, Quantity, Unit};
use reckoning::{Given, Known, Size};
use steaming::Entering;

/// A number as it was taken, for the working.
#[derive(Clone, Debug)]
pub struct TakenNumber {
    /// Path of the plan field.
    pub field: String,
    /// Value in SI.
    pub si: f64,
    /// SI unit.
    pub unit: &'static Unit,
    /// Where it came from.
    pub given: Given,
}

/// What was taken at the door of an analysis.
#[derive(Clone, Debug, Default)]
pub struct Taken {
    /// Every number that was taken.
    pub numbers: Vec<TakenNumber>,
    /// The assumptions that stand in for empty fields.
    pub assumed: Vec<&'static Entering>,
    /// Fields that are wanted and empty.
    pub gaps: Vec<String>,
}

impl Taken {
    /// A number that the plan must give.
    pub fn wanted<Q: Quantity>(&mut self, entry: &Entry<Q>) -> Option<f64> {
        let known = entry.known();
        self.keep(entry.path(), known)
    }

    /// A size that the plan must give, as it is most likely.
    pub fn size(&mut self, entry: &Entry<Size>) -> Option<f64> {
        let known: Option<Known<Length>> = entry.likely();
        self.keep(entry.path(), known)
    }

    /// A number that the plan may give; else the assumption of the same name stands in.
    pub fn number<Q: Quantity>(&mut self, entry: &Entry<Q>) -> Option<f64> {
        if let Some(known) = entry.known() {
            return self.keep(entry.path(), Some(known));
        }
        let Some(entering) = steaming::assumption(entry.path()) else {
            return self.keep::<Q>(entry.path(), None);
        };
        self.assumed.push(entering);
        self.keep(entry.path(), Some(Known::<Q>::assumed(entering.assumption)))
    }

    /// As [`Self::number`], with the assumption that belongs to a choice of the plan.
    pub fn number_for<Q: Quantity>(&mut self, entry: &Entry<Q>, choice: &str) -> Option<f64> {
        let id = format!("{} for {choice}", entry.path());
        match steaming::assumption(&id) {
            Some(entering) if entry.known().is_none() => {
                self.assumed.push(entering);
                let known = Known::<Q>::assumed(entering.assumption);
                self.keep(entry.path(), Some(known))
            }
            _ => self.keep(entry.path(), entry.known()),
        }
    }

    /// Notes a value that was given and taken away again as a gap, where a field that was never
    /// there means the usual thing: the maker had found that the usual does not hold.
    pub fn not_taken_away<T>(&mut self, entry: &Entry<T>) {
        if entry.is_emptied() {
            self.gaps.push(entry.path().to_owned());
        }
    }

    /// Where the number of a plan field came from.
    #[must_use]
    pub fn given(&self, field: &str) -> Option<Given> {
        let number = self.numbers.iter().find(|n| n.field == field)?;
        Some(number.given.clone())
    }

    /// Keeps a number, or notes the gap.
    pub fn keep<Q: Quantity>(&mut self, field: &str, known: Option<Known<Q>>) -> Option<f64> {
        let Some(known) = known else {
            self.gaps.push(field.to_owned());
            return None;
        };
        let si = known.value.si();
        self.numbers.push(TakenNumber {
            field: field.to_owned(),
            si,
            unit: Q::KIND.si_unit(),
            given: known.given,
        });
        Some(si)
    }
}
