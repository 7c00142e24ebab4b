//! Check values from outside: the files under `reference/`, read and compared.
//!
//! A file holds one place of one source. This module takes text and file name; tests and the
//! command read the folder. Every quantity is read in the kind of the card's symbol, so that
//! `3 MPa absolute` is an absolute pressure and nothing else.

mod check;
mod read;

pub use check::{Check, checks};
pub use read::read;

use reckoning::{Card, Source};

/// The cards and sources that a file may name.
#[derive(Clone, Debug)]
pub struct Catalogue {
    /// Cards.
    pub cards: Vec<&'static Card>,
    /// Sources.
    pub sources: Vec<&'static Source>,
}

impl Catalogue {
    /// Every registered card, every listed source and every source that a card cites.
    #[must_use]
    pub fn registered() -> Self {
        let cards: Vec<&'static Card> = crate::register::cards().collect();
        let mut sources: Vec<&'static Source> = crate::sources::all().collect();
        for card in &cards {
            if !sources.contains(&card.cite.source) {
                sources.push(card.cite.source);
            }
        }
        Self { cards, sources }
    }
}

/// The kinds of evidence, strongest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Evidence {
    /// A table that a standard prints for checking programs.
    VerificationTable,
    /// A row of a standard.
    StandardTable,
    /// A row of a handbook or a public table.
    PublishedTable,
    /// A sum that a source works.
    WorkedExample,
    /// Something measured and published.
    Measured,
    /// Points read off a published curve.
    DigitisedCurve,
    /// Worked by other means than this code.
    IndependentCalculation,
    /// Nothing is published: limit cases and identities only.
    NonePublished,
}

impl Evidence {
    /// Every kind.
    pub const ALL: [Self; 8] = [
        Self::VerificationTable,
        Self::StandardTable,
        Self::PublishedTable,
        Self::WorkedExample,
        Self::Measured,
        Self::DigitisedCurve,
        Self::IndependentCalculation,
        Self::NonePublished,
    ];

    /// As written in files and on pages.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::VerificationTable => "verification table",
            Self::StandardTable => "standard table",
            Self::PublishedTable => "published table",
            Self::WorkedExample => "worked example",
            Self::Measured => "measured",
            Self::DigitisedCurve => "digitised curve",
            Self::IndependentCalculation => "independent calculation",
            Self::NonePublished => "none published",
        }
    }
}

/// Where the check values of a file come from.
#[derive(Clone, Debug)]
pub struct Provenance {
    /// Family of the cards.
    pub family: String,
    /// The work.
    pub source: &'static Source,
    /// Table, equation or page.
    pub place: String,
    /// Kind of evidence.
    pub kind: Evidence,
    /// `from memory`, the date on which it was read, or how it was computed.
    pub seen: String,
    /// How many figures the source prints.
    pub printed: String,
}

/// How far a found value may lie from the wanted one, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct Tolerance {
    /// The distance.
    pub reach: Reach,
    /// Why.
    pub because: String,
}

/// The distance of a tolerance.
#[derive(Clone, Debug, PartialEq)]
pub enum Reach {
    /// As a share of the wanted value.
    Relative(f64),
    /// A quantity of the kind of the result, as written.
    Absolute(String),
}

/// One wanted value.
#[derive(Clone, Debug)]
pub struct Case {
    /// Line of the file.
    pub line: usize,
    /// The card.
    pub card: &'static Card,
    /// Inputs in the order and the units of the card.
    pub given: Vec<f64>,
    /// The inputs as written, in the order of the card.
    pub written: Vec<String>,
    /// The wanted value in the unit of the card's result.
    pub wanted: f64,
    /// The wanted value as written.
    pub wanted_written: String,
    /// Greatest distance allowed, in the unit of the card's result.
    pub tolerance: f64,
    /// Why that distance.
    pub because: String,
    /// Limits of the card that this case lies outside, by their expressions.
    pub breaches: Vec<String>,
}

/// A reference file as read.
#[derive(Clone, Debug)]
pub struct ReferenceFile {
    /// Name of the file.
    pub file: String,
    /// Where its values come from.
    pub provenance: Provenance,
    /// Its cases, one for each wanted value.
    pub cases: Vec<Case>,
}

#[cfg(test)]
mod tests;
