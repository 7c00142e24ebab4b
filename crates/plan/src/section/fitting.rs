//! `[[fitting]]`: one turned part by its features, for the order of making.
//!
//! The outside is a row of steps from the left end to the right; bores start from either end;
//! lengths are measured along the axis from the left end.

use reckoning::Size;
use reckoning::quantity::{Angle, Length};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Row, Section, Visitor};

/// `[[fitting]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Fitting {
    /// Id.
    pub id: Entry<String>,
    /// What it is called at the bench.
    pub name: Entry<String>,
    /// What it is.
    pub kind: Entry<FittingKind>,
    /// How many are made.
    pub count: Entry<u32>,
    /// Metal.
    pub metal: Entry<String>,
    /// Diameter, or size across flats, of the bar it is made from.
    pub bar: Entry<Size>,
    /// Least wall or floor that may be left anywhere in it.
    pub least_wall: Entry<Length>,
    /// Steps of the outside, left to right.
    pub steps: Vec<Step>,
    /// Bores along the axis.
    pub bores: Vec<Bore>,
    /// Holes across the axis.
    pub cross_holes: Vec<CrossHole>,
    /// Features asked to run true with each other.
    pub coaxial: Vec<Coaxial>,
}

impl Row for Fitting {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Fitting {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the part");
        v.text(
            &mut self.name,
            "name",
            "what the part is called at the bench",
        );
        v.choice(&mut self.kind, "kind", "what sort of part it is");
        v.count(&mut self.count, "count", "how many are made", (1, 500));
        v.text(
            &mut self.metal,
            "metal",
            "metal of the part, by its standard name",
        );
        v.size(
            &mut self.bar,
            "bar",
            "diameter, or size across flats, of the bar it is made from",
            within("1 mm", "200 mm"),
        );
        v.number(
            &mut self.least_wall,
            "least-wall",
            "least wall or floor that may be left anywhere in it, threads counted at their depth",
            within("0.1 mm", "50 mm"),
        );
        self.visit_features(v);
    }
}

impl Fitting {
    fn visit_features(&mut self, v: &mut dyn Visitor) {
        v.rows(
            "step",
            "a step of the outside, in order from the left end",
            &mut self.steps,
        );
        v.rows("bore", "a bore along the axis", &mut self.bores);
        v.rows(
            "cross-hole",
            "a hole across the axis",
            &mut self.cross_holes,
        );
        v.rows(
            "coaxial",
            "features that must run true with each other",
            &mut self.coaxial,
        );
    }
}

/// What sort of part it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FittingKind {
    /// Turned from bar.
    TurnedBush,
}

impl Choice for FittingKind {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[(
        Self::TurnedBush,
        "turned bush",
        "turned from bar, bored along its axis, drilled across",
    )];
}

/// `[[fitting.step]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Step {
    /// Id.
    pub id: Entry<String>,
    /// Diameter.
    pub diameter: Entry<Size>,
    /// Length.
    pub length: Entry<Size>,
    /// Thread over it.
    pub thread: Entry<String>,
    /// Length of full thread from its free end.
    pub thread_length: Entry<Size>,
    /// Chamfer at its free end.
    pub chamfer: Entry<Size>,
}

impl Row for Step {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Step {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the step");
        v.size(
            &mut self.diameter,
            "diameter",
            "diameter of the step",
            within("0.5 mm", "200 mm"),
        );
        v.size(
            &mut self.length,
            "length",
            "length of the step",
            within("0.1 mm", "300 mm"),
        );
        v.text(
            &mut self.thread,
            "thread",
            "thread on the outside of the step, by its standard name",
        );
        v.size(
            &mut self.thread_length,
            "thread-length",
            "length of full thread from the free end of the step",
            within("0.3 mm", "300 mm"),
        );
        v.size(
            &mut self.chamfer,
            "chamfer",
            "chamfer at the free end of the step, at 45 degrees",
            within("0.05 mm", "10 mm"),
        );
    }
}

/// `[[fitting.bore]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Bore {
    /// Id.
    pub id: Entry<String>,
    /// From which end it is entered.
    pub from: Entry<End>,
    /// How it is finished.
    pub kind: Entry<BoreKind>,
    /// Diameter.
    pub diameter: Entry<Size>,
    /// Depth at full diameter; empty for a bore right through.
    pub depth: Entry<Size>,
    /// Thread in it.
    pub thread: Entry<String>,
    /// Length of full thread.
    pub thread_length: Entry<Size>,
}

impl Row for Bore {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Bore {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the bore");
        v.choice(&mut self.from, "from", "from which end the bore is entered");
        v.choice(&mut self.kind, "kind", "how the bore is finished");
        v.size(
            &mut self.diameter,
            "diameter",
            "diameter of the bore; of the thread's drill where it is tapped",
            within("0.3 mm", "150 mm"),
        );
        v.size(
            &mut self.depth,
            "depth",
            "depth at full diameter from the end it is entered; left out for a bore right through",
            within("0.2 mm", "300 mm"),
        );
        v.text(
            &mut self.thread,
            "thread",
            "thread in the bore, by its standard name",
        );
        v.size(
            &mut self.thread_length,
            "thread-length",
            "length of full thread from the end it is entered",
            within("0.3 mm", "300 mm"),
        );
    }
}

/// An end of a turned part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// The left end, where the steps begin.
    Left,
    /// The right end.
    Right,
}

impl Choice for End {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Left, "left", "the end at which the steps begin"),
        (Self::Right, "right", "the end at which the steps end"),
    ];
}

/// How a bore is finished.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BoreKind {
    /// As the drill leaves it.
    Drilled,
    /// Reamed.
    Reamed,
    /// Bored with a single-point tool.
    Bored,
    /// Tapped.
    Tapped,
}

impl Choice for BoreKind {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::Drilled,
            "drilled",
            "as the drill leaves it, with the drill's point at the bottom",
        ),
        (Self::Reamed, "reamed", ""),
        (
            Self::Bored,
            "bored",
            "bored to size with a single-point tool",
        ),
        (Self::Tapped, "tapped", "drilled and tapped"),
    ];
}

/// `[[fitting.cross-hole]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CrossHole {
    /// Id.
    pub id: Entry<String>,
    /// Distance of its middle from the left end.
    pub at: Entry<Size>,
    /// Angle about the axis.
    pub angle: Entry<Angle>,
    /// Diameter.
    pub diameter: Entry<Size>,
    /// How far it goes.
    pub reach: Entry<CrossReach>,
    /// Distance of its axis from the axis of the part.
    pub offset: Entry<Length>,
    /// Thread in it.
    pub thread: Entry<String>,
}

impl Row for CrossHole {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for CrossHole {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the hole");
        v.size(
            &mut self.at,
            "at",
            "distance of its middle from the left end of the part",
            within("0 mm", "300 mm"),
        );
        v.number(
            &mut self.angle,
            "angle",
            "angle about the axis, clockwise seen from the left end",
            within("0°", "360°"),
        );
        v.size(
            &mut self.diameter,
            "diameter",
            "diameter of the hole; of the thread's drill where it is tapped",
            within("0.3 mm", "80 mm"),
        );
        v.choice(&mut self.reach, "reach", "how far the hole goes");
        v.number(
            &mut self.offset,
            "offset",
            "distance of the axis of the hole from the axis of the part; left out for a hole that \
             crosses the axis",
            within("0 mm", "100 mm"),
        );
        v.text(
            &mut self.thread,
            "thread",
            "thread in the hole, by its standard name",
        );
    }
}

/// How far a cross hole goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CrossReach {
    /// Into the bore, leaving the far wall whole.
    IntoBore,
    /// Right through the part.
    Through,
}

impl Choice for CrossReach {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::IntoBore,
            "into the bore",
            "through one wall into the bore; the far wall stays whole",
        ),
        (Self::Through, "through", "through both walls"),
    ];
}

/// `[[fitting.coaxial]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Coaxial {
    /// Id.
    pub id: Entry<String>,
    /// Ids of the steps and bores.
    pub of: Entry<Vec<String>>,
    /// Diameter of the zone in which their axes must lie.
    pub within: Entry<Length>,
}

impl Row for Coaxial {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Coaxial {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the demand");
        v.texts(
            &mut self.of,
            "of",
            "ids of the steps and bores that must run true",
        );
        v.number(
            &mut self.within,
            "within",
            "diameter of the zone in which their axes must lie",
            within("0.002 mm", "1 mm"),
        );
    }
}
