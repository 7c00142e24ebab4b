//! Published tables: one reader for the files under `tables/`.
//!
//! A file names its source, the unit of each column, the order of its columns, the rules that
//! every row must keep, and how to read between rows. A row that contradicts itself is refused
//! when the file is loaded, with file and line. Rules stand in the law language and are evaluated
//! in SI. There is no reading outside the rows.

mod embedded;
mod read;

pub use embedded::{FILES, embedded, find};
pub use read::read;

use reckoning::known::Given;
use reckoning::quantity::show::figures;
use reckoning::quantity::{Quantity, Unit};
use reckoning::{Known, Source};

/// How a column is ordered from row to row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Order {
    /// Each value is greater than the one before.
    Rising,
    /// Each value is less than the one before.
    Falling,
    /// No value is less than the one before.
    NotFalling,
    /// No value is greater than the one before.
    NotRising,
    /// None is claimed.
    Free,
}

impl Order {
    /// As written in files.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Rising => "rising",
            Self::Falling => "falling",
            Self::NotFalling => "not falling",
            Self::NotRising => "not rising",
            Self::Free => "free",
        }
    }

    /// Every order.
    pub const ALL: [Self; 5] = [
        Self::Rising,
        Self::Falling,
        Self::NotFalling,
        Self::NotRising,
        Self::Free,
    ];

    fn holds(self, value: f64, next: f64) -> bool {
        match self {
            Self::Rising => next > value,
            Self::Falling => next < value,
            Self::NotFalling => next >= value,
            Self::NotRising => next <= value,
            Self::Free => true,
        }
    }
}

/// How a table is read between its rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Interpolation {
    /// A straight line between neighbouring rows.
    Linear,
    /// Rows only.
    RowsOnly,
}

impl Interpolation {
    /// As written in files.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Linear => "linear between rows",
            Self::RowsOnly => "rows only",
        }
    }
}

/// A column of a table.
#[derive(Clone, Debug)]
pub struct Column {
    /// Name, a symbol of the law language.
    pub name: String,
    /// Unit in which the source prints it; `None` for a column of words.
    pub unit: Option<&'static Unit>,
    /// What it is.
    pub meaning: String,
    /// Its order.
    pub order: Order,
}

/// A cell of a table.
#[derive(Clone, Debug, PartialEq)]
enum Cell {
    /// A value in SI.
    Si(f64),
    /// Words.
    Words(String),
}

/// A published table as read.
#[derive(Clone, Debug)]
pub struct Table {
    /// Name of the file.
    pub file: String,
    /// Name of the table, as printed in workings.
    pub name: String,
    /// The work.
    pub source: &'static Source,
    /// Table or page.
    pub place: String,
    /// `from memory`, or the date on which it was read.
    pub seen: String,
    /// How it is read between rows.
    pub interpolation: Interpolation,
    /// Columns.
    pub columns: Vec<Column>,
    rows: Vec<Vec<Cell>>,
}

/// Why a table gives no value.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NoValue {
    /// The table ends before the value.
    #[error("{table} runs from {low} to {high}, and {value} is outside it")]
    Outside {
        /// Name of the table.
        table: String,
        /// The value asked, with its unit.
        value: String,
        /// The first row, with its unit.
        low: String,
        /// The last row, with its unit.
        high: String,
    },
    /// The table is not to be read between its rows.
    #[error("{table} has no row at {value}, and is not read between rows")]
    BetweenRows {
        /// Name of the table.
        table: String,
        /// The value asked, with its unit.
        value: String,
    },
    /// No row carries this name.
    #[error("{table} has no row `{row}`")]
    NoRow {
        /// Name of the table.
        table: String,
        /// The row asked.
        row: String,
    },
}

/// A value found in a table, with the row or rows it stands on.
#[derive(Clone, Debug, PartialEq)]
pub struct Found<Q> {
    /// The value.
    pub value: Q,
    /// The row, or the two rows between which it lies.
    pub row: String,
}

impl Table {
    /// How many rows there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.rows.len()
    }

    /// Whether there is no row; a table that was read has at least one.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// The value of a column in a row, from 0.
    ///
    /// # Panics
    /// When the column is missing, holds words, or is of another kind, or the row is not there:
    /// tables are ours, and their tests read every one.
    #[must_use]
    pub fn value<Q: Quantity>(&self, row: usize, column: &str) -> Q {
        Q::from_si(self.si(row, self.numbers::<Q>(column)))
    }

    /// The words of a column in a row, from 0.
    ///
    /// # Panics
    /// As [`Table::value`], and when the column holds numbers.
    #[must_use]
    pub fn words(&self, row: usize, column: &str) -> &str {
        match &self.rows[row][self.place(column)] {
            Cell::Words(words) => words,
            Cell::Si(_) => panic!("column {column} of {} holds numbers", self.file),
        }
    }

    /// The row in which a column of words holds `wanted`.
    ///
    /// # Errors
    /// [`NoValue::NoRow`] when there is none.
    ///
    /// # Panics
    /// As [`Table::words`].
    pub fn row_of(&self, column: &str, wanted: &str) -> Result<usize, NoValue> {
        (0..self.len())
            .find(|row| self.words(*row, column) == wanted)
            .ok_or_else(|| NoValue::NoRow {
                table: self.name.clone(),
                row: wanted.to_owned(),
            })
    }

    /// The value of column `to` where column `from` is `at`.
    ///
    /// # Errors
    /// [`NoValue`] outside the rows, or between them where the table is not read so.
    ///
    /// # Panics
    /// As [`Table::value`], and when `from` neither rises nor falls all the way.
    pub fn at<A: Quantity, B: Quantity>(
        &self,
        from: &str,
        at: A,
        to: &str,
    ) -> Result<Found<B>, NoValue> {
        let (x, y) = (self.numbers::<A>(from), self.numbers::<B>(to));
        let si = at.si();
        let (row, share) = match self.place_along(x, si) {
            Some((row, None)) => {
                return Ok(Found {
                    value: B::from_si(self.si(row, y)),
                    row: self.shown(x, self.si(row, x)),
                });
            }
            Some((row, Some(share))) => (row, share),
            None => return Err(self.outside(x, si)),
        };
        if self.interpolation == Interpolation::RowsOnly {
            let (table, value) = (self.name.clone(), self.shown(x, si));
            return Err(NoValue::BetweenRows { table, value });
        }
        let (low, high) = (self.si(row, x), self.si(row + 1, x));
        Ok(Found {
            value: B::from_si(self.between(row, share, y)),
            row: format!("between {} and {}", self.shown(x, low), self.shown(x, high)),
        })
    }

    /// As [`Table::at`], the bare value for a loop: nothing is allocated.
    ///
    /// # Panics
    /// As [`Table::at`].
    #[must_use]
    pub fn value_at<A: Quantity, B: Quantity>(&self, from: &str, at: A, to: &str) -> Option<B> {
        let (x, y) = (self.numbers::<A>(from), self.numbers::<B>(to));
        let si = match self.place_along(x, at.si())? {
            (row, None) => self.si(row, y),
            (_, Some(_)) if self.interpolation == Interpolation::RowsOnly => return None,
            (row, Some(share)) => self.between(row, share, y),
        };
        Some(B::from_si(si))
    }

    /// The row at this value of an ordered column, with the share of the way to the next row
    /// where it lies between the two; none outside the rows.
    fn place_along(&self, x: usize, si: f64) -> Option<(usize, Option<f64>)> {
        let column = &self.columns[x];
        assert!(
            matches!(column.order, Order::Rising | Order::Falling),
            "column {} of {} is {}, and cannot be read along",
            column.name,
            self.file,
            column.order.words()
        );
        let last = self.len() - 1;
        if let Some(row) = (0..=last).find(|r| self.si(*r, x).total_cmp(&si).is_eq()) {
            return Some((row, None));
        }
        let between = |r: &usize| (self.si(*r, x) < si) != (self.si(r + 1, x) < si);
        let row = (0..last).find(between).filter(|_| si.is_finite())?;
        let (low, high) = (self.si(row, x), self.si(row + 1, x));
        Some((row, Some((si - low) / (high - low))))
    }

    fn between(&self, row: usize, share: f64, y: usize) -> f64 {
        let (low, high) = (self.si(row, y), self.si(row + 1, y));
        low + (high - low) * share
    }

    fn outside(&self, place: usize, si: f64) -> NoValue {
        NoValue::Outside {
            table: self.name.clone(),
            value: self.shown(place, si),
            low: self.shown(place, self.si(0, place)),
            high: self.shown(place, self.si(self.len() - 1, place)),
        }
    }

    /// A found value as it enters a working.
    #[must_use]
    pub fn known<Q: Quantity>(&self, found: Found<Q>) -> Known<Q> {
        Known {
            value: found.value,
            given: Given::Table {
                table: self.name.clone(),
                row: found.row,
                source: self.source,
            },
        }
    }

    fn place(&self, column: &str) -> usize {
        match self.columns.iter().position(|c| c.name == column) {
            Some(place) => place,
            None => panic!("{} has no column {column}", self.file),
        }
    }

    /// The place of a column of numbers of this kind.
    fn numbers<Q: Quantity>(&self, column: &str) -> usize {
        let place = self.place(column);
        let kind = self.columns[place].unit.map(|u| u.kind);
        assert!(
            kind == Some(Q::KIND),
            "column {column} of {} is not of kind {}",
            self.file,
            Q::KIND.words()
        );
        place
    }

    fn si(&self, row: usize, place: usize) -> f64 {
        match &self.rows[row][place] {
            Cell::Si(si) => *si,
            Cell::Words(_) => f64::NAN,
        }
    }

    /// A value of a column in the unit of the print.
    fn shown(&self, place: usize, si: f64) -> String {
        match self.columns[place].unit {
            Some(unit) => format!("{} {}", figures(unit.from_si(si), 4), unit.symbol),
            None => String::new(),
        }
    }
}

#[cfg(test)]
mod tests;
