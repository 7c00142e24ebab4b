//! The lines of a sum, each with its source.
//!
//! An area's `explain` files the settled values of a state here, through the cards. Every line
//! keeps its full value; rounding happens only where a line is printed, and a printed result is
//! shown to no more figures than its own printed numbers give.

mod print;

pub use print::Printed;

use crate::finding::Origin;
use crate::formula::{Breach, Card, Cite, Refused, Symbol};
use crate::known::{Given, Known};
use crate::quantity::{Quantity, Unit};

/// A line of a [`Working`], by number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Ref(usize);

impl Ref {
    /// The number of the line, from 0.
    #[must_use]
    pub fn index(self) -> usize {
        self.0
    }
}

/// What a line rests on.
#[derive(Clone, Debug)]
pub enum Basis {
    /// It entered from outside the sum.
    Given(Given),
    /// A choice within the sum, with its reason.
    Chosen {
        /// What it was chosen from, in words.
        between: String,
        /// Why.
        reason: String,
        /// The lines that were compared.
        from: Vec<Ref>,
        /// Where the rule of choice stands, if it is published.
        cite: Option<Cite>,
    },
    /// Worked by a formula.
    Worked {
        /// The card.
        card: &'static Card,
        /// The lines that went in, in the order of the card.
        inputs: Vec<Ref>,
        /// Limits broken.
        breaches: Vec<Breach>,
        /// The value that the solver had, where the line was filed from a settled state.
        settled: Option<f64>,
    },
    /// Found by solving a balance.
    Solved {
        /// The balance, in words.
        balance: String,
        /// Bracket, in the unit of the line.
        bracket: (f64, f64),
        /// What is left of the balance, in words with its unit.
        residual: String,
        /// How often the balance was worked.
        rounds: usize,
        /// The lines it rests on.
        from: Vec<Ref>,
    },
}

/// One line of a working.
#[derive(Clone, Debug)]
pub struct Line {
    /// Symbol.
    pub symbol: String,
    /// What it stands for.
    pub meaning: String,
    /// Value in `unit`.
    pub value: f64,
    /// Unit in which it is printed.
    pub unit: &'static Unit,
    /// What it rests on.
    pub basis: Basis,
    /// The weakest origin in its chain.
    pub origin: Origin,
    /// The number as printed, to the figures that its own printed numbers support.
    pub shown: String,
}

/// The lines of a sum in the order in which they were filed.
#[derive(Clone, Debug, Default)]
pub struct Working {
    lines: Vec<Line>,
}

impl Working {
    /// An empty working.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// The lines in order.
    #[must_use]
    pub fn lines(&self) -> &[Line] {
        &self.lines
    }

    /// The lines by their reference, in order.
    pub fn refs(&self) -> impl Iterator<Item = Ref> + use<> {
        (0..self.lines.len()).map(Ref)
    }

    /// One line.
    #[must_use]
    pub fn line(&self, r: Ref) -> &Line {
        &self.lines[r.0]
    }

    /// The value of a line in SI.
    #[must_use]
    pub fn si(&self, r: Ref) -> f64 {
        let line = self.line(r);
        line.unit.to_si(line.value)
    }

    /// Files a value that enters from outside, shown in `unit`.
    pub fn know<Q: Quantity>(
        &mut self,
        symbol: &str,
        meaning: &str,
        unit: &'static Unit,
        known: &Known<Q>,
    ) -> Ref {
        self.know_si(symbol, meaning, unit, known.value.si(), known.given.clone())
    }

    /// Files a value that enters from outside and whose kind is known only when the program runs:
    /// `si` is in the SI unit of the kind of `unit`.
    pub fn know_si(
        &mut self,
        symbol: &str,
        meaning: &str,
        unit: &'static Unit,
        si: f64,
        given: Given,
    ) -> Ref {
        let origin = given.origin();
        let value = unit.from_si(si);
        self.push(symbol, meaning, value, unit, Basis::Given(given), origin)
    }

    /// Works a card on earlier lines and files the result.
    ///
    /// # Errors
    /// [`Refused`] when the card cannot be worked on these inputs; nothing is filed then.
    ///
    /// # Panics
    /// When an input is of another kind than the card takes: a broken promise of the caller.
    pub fn worked(&mut self, card: &'static Card, inputs: &[Ref]) -> Result<Ref, Refused> {
        self.file(card, inputs, None)
    }

    /// Files a value that a solver has settled, working the card again beside it.
    ///
    /// `settled` is in the unit of the card's result. [`Working::disagreement`] tells how far the
    /// two lie apart; tests hold it below 1e-12.
    ///
    /// # Errors
    /// As [`Working::worked`].
    pub fn settled(
        &mut self,
        card: &'static Card,
        inputs: &[Ref],
        settled: f64,
    ) -> Result<Ref, Refused> {
        self.file(card, inputs, Some(settled))
    }

    fn file(
        &mut self,
        card: &'static Card,
        inputs: &[Ref],
        settled: Option<f64>,
    ) -> Result<Ref, Refused> {
        let values = self.values(card, inputs);
        let worked = card.work(&values)?;
        let own: Origin = card.cite.source.seen.into();
        let origin = inputs
            .iter()
            .map(|r| self.line(*r).origin)
            .fold(own, Origin::max);
        let basis = Basis::Worked {
            card,
            inputs: inputs.to_vec(),
            breaches: worked.breaches,
            settled,
        };
        let gives = &card.gives;
        Ok(self.push(
            gives.name,
            gives.meaning,
            worked.value,
            gives.unit,
            basis,
            origin,
        ))
    }

    /// The values of these lines in the units of a card. A line of another kind than the symbol
    /// is a fault of the caller.
    fn values(&self, card: &Card, inputs: &[Ref]) -> Vec<f64> {
        let value = |(symbol, r): (&Symbol, &Ref)| {
            let line = self.line(*r);
            assert!(
                symbol.unit.kind == line.unit.kind,
                "card {}: {} is a {}, and {} was given, a {}",
                card.id,
                symbol.name,
                symbol.unit.kind.words(),
                line.symbol,
                line.unit.kind.words()
            );
            if symbol.unit == line.unit {
                line.value
            } else {
                symbol.unit.from_si(line.unit.to_si(line.value))
            }
        };
        card.takes.iter().zip(inputs).map(value).collect()
    }

    /// Files a choice among earlier lines, with its reason.
    pub fn chosen(&mut self, line: Choice<'_>) -> Ref {
        let origin = line.from.iter().map(|r| self.line(*r).origin).fold(
            line.cite.map_or(Origin::Read, |c| c.source.seen.into()),
            Origin::max,
        );
        let basis = Basis::Chosen {
            between: line.between.to_owned(),
            reason: line.reason.to_owned(),
            from: line.from.to_vec(),
            cite: line.cite,
        };
        self.push(
            line.symbol,
            line.meaning,
            line.value,
            line.unit,
            basis,
            origin,
        )
    }

    /// Files the root of a balance.
    pub fn solved(&mut self, line: Root<'_>) -> Ref {
        let origin = line
            .from
            .iter()
            .map(|r| self.line(*r).origin)
            .fold(Origin::Read, Origin::max);
        let basis = Basis::Solved {
            balance: line.balance.to_owned(),
            bracket: line.solved.bracket,
            residual: line.residual.to_owned(),
            rounds: line.solved.rounds,
            from: line.from.to_vec(),
        };
        self.push(
            line.symbol,
            line.meaning,
            line.solved.x,
            line.unit,
            basis,
            origin,
        )
    }

    fn push(
        &mut self,
        symbol: &str,
        meaning: &str,
        value: f64,
        unit: &'static Unit,
        basis: Basis,
        origin: Origin,
    ) -> Ref {
        let shown = self.figures_supported(value, &basis);
        self.lines.push(Line {
            symbol: symbol.to_owned(),
            meaning: meaning.to_owned(),
            value,
            unit,
            basis,
            origin,
            shown,
        });
        Ref(self.lines.len() - 1)
    }

    /// The weakest origin among all lines.
    #[must_use]
    pub fn weakest(&self) -> Origin {
        self.lines
            .iter()
            .map(|l| l.origin)
            .fold(Origin::Read, Origin::max)
    }

    /// Every limit broken in any line.
    pub fn breaches(&self) -> impl Iterator<Item = &Breach> {
        self.lines.iter().flat_map(|line| match &line.basis {
            Basis::Worked { breaches, .. } => breaches.as_slice(),
            _ => &[],
        })
    }

    /// The greatest relative distance between a settled value and its card; 0 where none was
    /// settled.
    #[must_use]
    pub fn disagreement(&self) -> f64 {
        self.lines
            .iter()
            .filter_map(|line| match &line.basis {
                Basis::Worked {
                    settled: Some(s), ..
                } => {
                    let scale = line.value.abs().max(f64::MIN_POSITIVE);
                    Some((s - line.value).abs() / scale)
                }
                _ => None,
            })
            .fold(0.0, f64::max)
    }
}

/// A choice to be filed.
#[derive(Clone, Copy, Debug)]
pub struct Choice<'a> {
    /// Symbol.
    pub symbol: &'a str,
    /// What it stands for.
    pub meaning: &'a str,
    /// Value in `unit`.
    pub value: f64,
    /// Unit.
    pub unit: &'static Unit,
    /// What it was chosen from, in words.
    pub between: &'a str,
    /// Why.
    pub reason: &'a str,
    /// The lines compared.
    pub from: &'a [Ref],
    /// Where the rule of choice stands, if it is published.
    pub cite: Option<Cite>,
}

/// The root of a balance to be filed.
#[derive(Clone, Copy, Debug)]
pub struct Root<'a> {
    /// Symbol.
    pub symbol: &'a str,
    /// What it stands for.
    pub meaning: &'a str,
    /// Unit of the unknown and its bracket.
    pub unit: &'static Unit,
    /// The balance, in words.
    pub balance: &'a str,
    /// What was found.
    pub solved: crate::solve::Solved,
    /// What is left of the balance, in words with its unit.
    pub residual: &'a str,
    /// The lines it rests on.
    pub from: &'a [Ref],
}
