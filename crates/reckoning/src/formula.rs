//! The card of a published formula: what it gives, what it takes, the law as printed, the
//! limits inside which it was published, and the citation.

use crate::law::{self, LawError};
use crate::quantity::Unit;
use crate::source::Source;

/// A symbol of a formula with its unit and meaning.
#[derive(Clone, Copy, Debug)]
pub struct Symbol {
    /// The symbol as the source prints it, in ASCII (`D_i`).
    pub name: &'static str,
    /// The unit in which the source writes the law.
    pub unit: &'static Unit,
    /// What it stands for, in words.
    pub meaning: &'static str,
}

/// Makes a [`Symbol`]; short so that cards read like a page.
#[must_use]
pub const fn symbol(name: &'static str, unit: &'static Unit, meaning: &'static str) -> Symbol {
    Symbol {
        name,
        unit,
        meaning,
    }
}

/// Where in a source a formula stands.
#[derive(Clone, Copy, Debug)]
pub struct Cite {
    /// The work.
    pub source: &'static Source,
    /// Clause, equation, table or page.
    pub place: &'static str,
}

/// The law of a card as printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Law {
    /// A closed form in the small language of [`crate::law`]; steps are separated by `;` and
    /// the last one gives the result.
    Closed(&'static str),
    /// An iteration or a table: said in words, and carried by twice the reference cases.
    Words(&'static str),
}

/// A limit inside which the formula was published, evaluated on every use.
#[derive(Clone, Copy, Debug)]
pub struct Limit {
    /// An expression over the symbols of the card and its result.
    pub expr: &'static str,
    /// Least value, if any.
    pub low: Option<f64>,
    /// Greatest value, if any.
    pub high: Option<f64>,
}

impl Limit {
    /// The expression may not be more than `high`.
    #[must_use]
    pub const fn at_most(expr: &'static str, high: f64) -> Self {
        Self {
            expr,
            low: None,
            high: Some(high),
        }
    }
    /// The expression may not be less than `low`.
    #[must_use]
    pub const fn at_least(expr: &'static str, low: f64) -> Self {
        Self {
            expr,
            low: Some(low),
            high: None,
        }
    }
    /// The expression must lie in `low ..= high`.
    #[must_use]
    pub const fn within(expr: &'static str, low: f64, high: f64) -> Self {
        Self {
            expr,
            low: Some(low),
            high: Some(high),
        }
    }
}

/// A limit that was broken, with the value that broke it.
#[derive(Clone, Debug, PartialEq)]
pub struct Breach {
    /// The card whose limit it is.
    pub card: &'static str,
    /// The expression.
    pub expr: &'static str,
    /// What it came to.
    pub value: f64,
    /// Least value allowed, if any.
    pub low: Option<f64>,
    /// Greatest value allowed, if any.
    pub high: Option<f64>,
}

impl std::fmt::Display for Breach {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let value = crate::quantity::show::figures(self.value, 4);
        write!(f, "{}: {} is {value}", self.card, self.expr)?;
        match (self.low, self.high) {
            (Some(low), Some(high)) => write!(f, ", published for {low} to {high}"),
            (Some(low), None) => write!(f, ", published for {low} and more"),
            (None, Some(high)) => write!(f, ", published for {high} and less"),
            (None, None) => Ok(()),
        }
    }
}

/// How far the published formula is known to lie from what is measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Spread {
    /// Follows from definitions; no spread of its own.
    Exact,
    /// Errs on the careful side.
    Conservative,
    /// Percent either way, as the source states it.
    Percent(f64),
    /// The source states none.
    Unstated,
}

/// A formula that cannot be worked at these inputs.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{card}: {symbol} = {value} cannot be worked: {why}")]
pub struct Refused {
    /// The card.
    pub card: &'static str,
    /// The input at fault.
    pub symbol: &'static str,
    /// Its value, in the card's unit.
    pub value: f64,
    /// What is wrong with it.
    pub why: &'static str,
}

/// The card of one published formula.
#[derive(Debug)]
pub struct Card {
    /// `family.name`.
    pub id: &'static str,
    /// The law as printed.
    pub law: Law,
    /// What it gives.
    pub gives: Symbol,
    /// What it takes, in the order of the kernel.
    pub takes: &'static [Symbol],
    /// Limits of the source.
    pub limits: &'static [Limit],
    /// Known spread.
    pub spread: Spread,
    /// Citation.
    pub cite: Cite,
    /// Calls the kernel; inputs in the units of `takes`, result in the unit of `gives`.
    pub eval: fn(&[f64]) -> Result<f64, Refused>,
}

/// A worked result: the value in the card's unit and the limits that were broken.
#[derive(Clone, Debug, PartialEq)]
pub struct Worked {
    /// Result in the unit of `gives`.
    pub value: f64,
    /// Limits broken on these inputs.
    pub breaches: Vec<Breach>,
}

impl Card {
    /// Works the card and evaluates every limit on the settled values.
    ///
    /// # Errors
    /// [`Refused`] when the kernel cannot be evaluated at these inputs.
    ///
    /// # Panics
    /// When the number of inputs differs from `takes`, or a limit of the card does not parse:
    /// both are broken promises of ours, and the card tests find them.
    pub fn work(&self, inputs: &[f64]) -> Result<Worked, Refused> {
        assert!(
            inputs.len() == self.takes.len(),
            "card {} takes {} values and was given {}",
            self.id,
            self.takes.len(),
            inputs.len()
        );
        let value = (self.eval)(inputs)?;
        Ok(Worked {
            value,
            breaches: self.breaches(inputs, value),
        })
    }

    fn breaches(&self, inputs: &[f64], value: f64) -> Vec<Breach> {
        let look_up = |name: &str| self.look_up(name, inputs, value);
        self.limits
            .iter()
            .filter_map(|limit| {
                let found = match law::evaluate(limit.expr, &look_up) {
                    Ok(found) => found,
                    Err(e) => panic!(
                        "limit `{}` of card {} does not read: {e}",
                        limit.expr, self.id
                    ),
                };
                let kept = limit.low.is_none_or(|low| low <= found)
                    && limit.high.is_none_or(|high| found <= high);
                (!kept).then_some(Breach {
                    card: self.id,
                    expr: limit.expr,
                    value: found,
                    low: limit.low,
                    high: limit.high,
                })
            })
            .collect()
    }

    fn look_up(&self, name: &str, inputs: &[f64], value: f64) -> Option<f64> {
        if name == self.gives.name {
            return Some(value);
        }
        self.takes
            .iter()
            .position(|s| s.name == name)
            .map(|i| inputs[i])
    }

    /// The result by the printed law, for comparison with the kernel; `None` for a law in words.
    ///
    /// # Errors
    /// [`LawError`] when the printed law does not read.
    pub fn by_printed_law(&self, inputs: &[f64]) -> Option<Result<f64, LawError>> {
        match self.law {
            Law::Words(_) => None,
            Law::Closed(text) => {
                let look_up = |name: &str| {
                    self.takes
                        .iter()
                        .position(|s| s.name == name)
                        .map(|i| inputs[i])
                };
                Some(law::run(text, &look_up))
            }
        }
    }
}
