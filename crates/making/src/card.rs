//! The route card: settings, each with its rows, and the words of the trade for each operation.

use formulas::thread::TapLead;
use plant::part::{CrossHole, End, Form, Span, Turned};
use reckoning::quantity::Length;

use crate::words::Reads;
use crate::workshop::{Drill, Holder, Reamer};

/// One operation: what is done, and which feature of the finished piece it completes.
#[derive(Clone, Debug, PartialEq)]
pub struct Operation {
    /// Id of the feature that is finished by it; none for work on the way.
    pub makes: Option<String>,
    /// What is done.
    pub work: Work,
}

/// What is done. Depths are measured from the face as it stands at that moment, positions along
/// the axis from the same face: an operation does what the maker's dial says, wherever the face
/// then is.
#[derive(Clone, Debug, PartialEq)]
pub enum Work {
    /// Face an end to the plane `at`.
    Face {
        /// Which end.
        end: End,
        /// Where the plane lies in the finished piece.
        at: Length,
    },
    /// Turn the outside, a chamfer or a groove.
    Turn(Form),
    /// Centre-drill the end to a cone with this mouth.
    CentreDrill {
        /// Which end.
        end: End,
        /// Diameter of the mouth of the cone.
        mouth: Length,
    },
    /// Drill along the axis.
    Drill {
        /// From which end.
        end: End,
        /// With what.
        drill: Drill,
        /// Depth of the full diameter from the face.
        depth: Length,
    },
    /// Bore.
    Bore(Form),
    /// Ream to the hole that the drawing shows.
    Ream {
        /// The hole as drawn.
        form: Form,
        /// With what.
        reamer: Reamer,
    },
    /// Countersink or chamfer the mouth of a hole.
    Countersink(Form),
    /// Tap.
    Tap {
        /// The thread as drawn.
        form: Form,
        /// From which end the tap enters.
        end: End,
        /// The last tap used.
        tap: TapLead,
    },
    /// Cut a thread on the outside with a die or a tool.
    ScrewCut(Form),
    /// Part off at the plane `at`, which becomes the face of the piece.
    Part {
        /// Where.
        at: Length,
        /// Width of the blade.
        blade: Length,
    },
    /// Drill across the axis.
    CrossDrill {
        /// The hole as drawn.
        hole: CrossHole,
        /// How far the tip goes in from the outside; none: right through.
        tip: Option<Length>,
    },
    /// Break the edges of a feature and clear its burrs.
    Deburr {
        /// Id of the feature.
        feature: String,
    },
}

/// What kind of machine a setting is on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Machine {
    /// The lathe.
    Lathe,
    /// The drilling machine.
    DrillingMachine,
}

/// Which side of the piece can be reached in a setting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Facing {
    /// One end is outward, on the axis of the spindle.
    End(End),
    /// The side is up; holes cross the axis. Handwork through an open hole is possible.
    Side,
}

/// One way of holding, and what is done in it.
#[derive(Clone, Debug)]
pub struct Setting {
    /// On which machine.
    pub machine: Machine,
    /// In what.
    pub holder: Holder,
    /// Over which stretch of the outside.
    pub grip: Span,
    /// What can be reached.
    pub facing: Facing,
    /// The rows.
    pub rows: Vec<Row>,
}

/// One row of a card.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// What is done.
    pub operation: Operation,
}

/// A route card.
#[derive(Clone, Debug)]
pub struct RouteCard {
    /// Id of the part.
    pub part: String,
    /// The bar as it goes into the first setting: shape and place along the axis of the piece.
    pub stock: Turned,
    /// Settings in order.
    pub settings: Vec<Setting>,
    /// In what units it is written.
    pub reads: Reads,
}

/// Where a row stands: setting and place in it, both from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// Setting.
    pub setting: usize,
    /// Row within it.
    pub row: usize,
}

impl Operation {
    /// An operation on the way.
    #[must_use]
    pub fn on_the_way(work: Work) -> Self {
        Self { makes: None, work }
    }

    /// An operation that finishes a feature.
    #[must_use]
    pub fn making(feature: impl Into<String>, work: Work) -> Self {
        Self {
            makes: Some(feature.into()),
            work,
        }
    }
}

impl From<Operation> for Row {
    fn from(operation: Operation) -> Self {
        Self { operation }
    }
}

impl Work {
    /// The word of the trade.
    #[must_use]
    pub fn word(&self) -> &'static str {
        match self {
            Self::Face { .. } => "face",
            Self::Turn(_) => "turn",
            Self::CentreDrill { .. } => "centre-drill",
            Self::Drill { .. } => "drill",
            Self::Bore(_) => "bore",
            Self::Ream { .. } => "ream",
            Self::Countersink(_) => "countersink",
            Self::Tap { .. } => "tap",
            Self::ScrewCut(_) => "screw-cut",
            Self::Part { .. } => "part off",
            Self::CrossDrill { .. } => "cross-drill",
            Self::Deburr { .. } => "deburr",
        }
    }
}

impl RouteCard {
    /// Every row with its place, in order.
    pub fn rows(&self) -> impl Iterator<Item = (Place, &Row)> {
        self.settings.iter().enumerate().flat_map(|(setting, s)| {
            s.rows
                .iter()
                .enumerate()
                .map(move |(row, r)| (Place { setting, row }, r))
        })
    }

    /// Number of the row at a place, counted through the card from 1.
    #[must_use]
    pub fn number(&self, place: Place) -> usize {
        let before: usize = self.settings[..place.setting]
            .iter()
            .map(|s| s.rows.len())
            .sum();
        before + place.row + 1
    }

    /// The same card with the row at `from` moved, so that it stands at `to` once it is taken out.
    #[must_use]
    pub fn moved(&self, from: Place, to: Place) -> Self {
        let mut card = self.clone();
        let row = card.settings[from.setting].rows.remove(from.row);
        card.settings[to.setting].rows.insert(to.row, row);
        card
    }

    /// The same card with one more row at a place.
    #[must_use]
    pub fn inserted(&self, at: Place, operation: Operation) -> Self {
        let mut card = self.clone();
        card.settings[at.setting]
            .rows
            .insert(at.row, operation.into());
        card
    }

    /// The same card without a row.
    #[must_use]
    pub fn without(&self, at: Place) -> Self {
        let mut card = self.clone();
        card.settings[at.setting].rows.remove(at.row);
        card
    }
}
