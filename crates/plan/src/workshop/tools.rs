//! `[[drill-set]]`, `[[reamer]]`, `[threading]`: the cutting tools.

use reckoning::Typed;
use reckoning::quantity::{Length, Ratio};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Row, Section, Visitor};

/// `[[drill-set]]`: a set by its series, or single drills by their sizes.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DrillSet {
    /// Id.
    pub id: Entry<String>,
    /// Its series.
    pub series: Entry<DrillSeries>,
    /// Smallest drill.
    pub from: Entry<Length>,
    /// Largest drill.
    pub to: Entry<Length>,
    /// Step from one drill to the next.
    pub by: Entry<Length>,
    /// Sizes, of single drills.
    pub sizes: Entry<Vec<Typed<Length>>>,
}

impl Row for DrillSet {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for DrillSet {
    fn visit(&mut self, v: &mut dyn Visitor) {
        let drill = within("0.1 mm", "40 mm");
        v.id(&mut self.id, "name of the set");
        v.choice(
            &mut self.series,
            "series",
            "series to which the drills belong",
        );
        v.number(
            &mut self.from,
            "from",
            "smallest drill; left out for all of a numbered or lettered series",
            drill,
        );
        v.number(
            &mut self.to,
            "to",
            "largest drill; left out for all of a numbered or lettered series",
            drill,
        );
        v.number(
            &mut self.by,
            "by",
            "step from one drill to the next, in the series that have one",
            within("0.01 mm", "3.2 mm"),
        );
        v.numbers(&mut self.sizes, "sizes", "sizes, of single drills", drill);
    }
}

/// Series of drills.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DrillSeries {
    /// By a metric step.
    Metric,
    /// By fractions of an inch.
    Fractional,
    /// By numbers, 80 to 1.
    Number,
    /// By letters, A to Z.
    Letter,
    /// Single drills.
    Single,
}

impl Choice for DrillSeries {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Metric, "metric", "from, to and by a metric step"),
        (
            Self::Fractional,
            "fractional",
            "from, to and by a fraction of an inch",
        ),
        (Self::Number, "number", "numbers 80 to 1"),
        (Self::Letter, "letter", "letters A to Z"),
        (Self::Single, "single", "the sizes listed"),
    ];
}

/// `[[reamer]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Reamer {
    /// Id.
    pub id: Entry<String>,
    /// Size.
    pub size: Entry<Length>,
    /// What it is.
    pub kind: Entry<ReamerKind>,
    /// Length of its tapered lead.
    pub lead: Entry<Length>,
}

impl Row for Reamer {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Reamer {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the reamer");
        v.number(
            &mut self.size,
            "size",
            "size that it reams",
            within("0.5 mm", "50 mm"),
        );
        v.choice(&mut self.kind, "kind", "what it is");
        v.number(
            &mut self.lead,
            "lead",
            "length of its tapered lead",
            within("0.1 mm", "60 mm"),
        );
    }
}

/// What a reamer is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReamerKind {
    /// Turned by hand, with a long lead.
    Hand,
    /// Run in a machine, with a short lead.
    Machine,
}

impl Choice for ReamerKind {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Hand, "hand", "turned by hand, with a long lead"),
        (
            Self::Machine,
            "machine",
            "run in a machine, with a short lead",
        ),
    ];
}

/// `[threading]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Threading {
    /// Threads for which there is a tap.
    pub taps: Entry<Vec<String>>,
    /// Threads for which there is a die.
    pub dies: Entry<Vec<String>>,
    /// Pitches that the lathe cuts.
    pub pitches: Entry<Vec<Typed<Length>>>,
    /// Share of full thread wanted in a tapped hole.
    pub share: Entry<Ratio>,
}

impl Section for Threading {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.texts(
            &mut self.taps,
            "taps",
            "threads for which there is a tap, by their standard names",
        );
        v.texts(
            &mut self.dies,
            "dies",
            "threads for which there is a die, by their standard names",
        );
        v.numbers(
            &mut self.pitches,
            "pitches",
            "pitches that the lathe can cut",
            within("0.1 mm", "10 mm"),
        );
        v.number(
            &mut self.share,
            "share",
            "share of full thread wanted in a tapped hole",
            within("50 %", "88 %"),
        );
    }
}
