//! `[lathe]`, `[[holding]]`, `[drilling-machine]`, `[rotary-table]`: the machines.

use reckoning::Typed;
use reckoning::quantity::{Length, Power, Rotation};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Row, Section, Visitor};

/// `[lathe]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Lathe {
    /// Greatest diameter over the bed.
    pub swing: Entry<Length>,
    /// Greatest diameter over the cross-slide.
    pub swing_over_slide: Entry<Length>,
    /// Distance between centres.
    pub between_centres: Entry<Length>,
    /// Bore of the spindle.
    pub spindle_bore: Entry<Length>,
    /// Power of the motor.
    pub power: Entry<Power>,
    /// Spindle speeds, where they go by steps.
    pub speeds: Entry<Vec<Typed<Rotation>>>,
    /// Slowest speed, where it is set freely.
    pub slowest: Entry<Rotation>,
    /// Fastest speed, where it is set freely.
    pub fastest: Entry<Rotation>,
    /// Travel of the cross-slide for a turn of its handle.
    pub cross_slide_lead: Entry<Length>,
    /// Divisions of the cross-slide dial.
    pub cross_slide_divisions: Entry<u32>,
    /// Travel of the top-slide for a turn of its handle.
    pub top_slide_lead: Entry<Length>,
    /// Divisions of the top-slide dial.
    pub top_slide_divisions: Entry<u32>,
    /// Travel of the top-slide.
    pub top_slide_travel: Entry<Length>,
    /// Pitch of the leadscrew.
    pub leadscrew: Entry<Length>,
    /// Travel of the tailstock barrel for a turn of its handle.
    pub tailstock_lead: Entry<Length>,
    /// Divisions of the tailstock dial.
    pub tailstock_divisions: Entry<u32>,
    /// Width of the parting blade.
    pub blade: Entry<Length>,
    /// What its dials read.
    pub reads: Entry<DialUnit>,
}

impl Section for Lathe {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.swing,
            "swing",
            "greatest diameter that turns over the bed",
            within("40 mm", "1 m"),
        );
        v.number(
            &mut self.swing_over_slide,
            "swing-over-slide",
            "greatest diameter that turns over the cross-slide",
            within("20 mm", "800 mm"),
        );
        v.number(
            &mut self.between_centres,
            "between-centres",
            "distance between centres",
            within("80 mm", "3 m"),
        );
        v.number(
            &mut self.spindle_bore,
            "spindle-bore",
            "bore of the spindle",
            within("5 mm", "120 mm"),
        );
        v.number(
            &mut self.power,
            "power",
            "power of the motor",
            within("30 W", "10 kW"),
        );
        self.visit_speeds(v);
    }
}

impl Lathe {
    fn visit_speeds(&mut self, v: &mut dyn Visitor) {
        v.numbers(
            &mut self.speeds,
            "speeds",
            "spindle speeds, where they go by steps",
            within("10 rpm", "10000 rpm"),
        );
        v.number(
            &mut self.slowest,
            "slowest",
            "slowest spindle speed, where it is set freely",
            within("5 rpm", "2000 rpm"),
        );
        v.number(
            &mut self.fastest,
            "fastest",
            "fastest spindle speed, where it is set freely",
            within("100 rpm", "10000 rpm"),
        );
        self.visit_feeds(v);
    }

    fn visit_feeds(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.cross_slide_lead,
            "cross-slide-lead",
            "travel of the cross-slide for a turn of its handle",
            within("0.5 mm", "10 mm"),
        );
        v.count(
            &mut self.cross_slide_divisions,
            "cross-slide-divisions",
            "divisions of the cross-slide dial",
            (10, 500),
        );
        v.number(
            &mut self.top_slide_lead,
            "top-slide-lead",
            "travel of the top-slide for a turn of its handle",
            within("0.5 mm", "10 mm"),
        );
        v.count(
            &mut self.top_slide_divisions,
            "top-slide-divisions",
            "divisions of the top-slide dial",
            (10, 500),
        );
        v.number(
            &mut self.top_slide_travel,
            "top-slide-travel",
            "travel of the top-slide",
            within("10 mm", "300 mm"),
        );
        v.number(
            &mut self.leadscrew,
            "leadscrew",
            "pitch of the leadscrew",
            within("0.5 mm", "12.7 mm"),
        );
        self.visit_tailstock(v);
    }

    fn visit_tailstock(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.tailstock_lead,
            "tailstock-lead",
            "travel of the tailstock barrel for a turn of its handle",
            within("0.5 mm", "10 mm"),
        );
        v.count(
            &mut self.tailstock_divisions,
            "tailstock-divisions",
            "divisions of the tailstock dial",
            (10, 500),
        );
        v.number(
            &mut self.blade,
            "blade",
            "width of the parting blade",
            within("0.5 mm", "6 mm"),
        );
        v.choice(
            &mut self.reads,
            "reads",
            "what the dials read, in which the cards are written",
        );
    }
}

/// What a dial reads.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DialUnit {
    /// Millimetres.
    Millimetres,
    /// Inches.
    Inches,
}

impl Choice for DialUnit {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::Millimetres,
            "millimetres",
            "hundredths of a millimetre",
        ),
        (Self::Inches, "inches", "thousandths of an inch"),
    ];
}

/// `[[holding]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Holding {
    /// Id.
    pub id: Entry<String>,
    /// What it is.
    pub kind: Entry<HoldingKind>,
    /// Full swing of the dial on work that it holds.
    pub run_out: Entry<Length>,
    /// Least diameter it takes.
    pub least: Entry<Length>,
    /// Greatest diameter it takes.
    pub greatest: Entry<Length>,
    /// Sizes, of collets or mandrels.
    pub sizes: Entry<Vec<Typed<Length>>>,
    /// Depth over which it grips.
    pub grip: Entry<Length>,
}

impl Row for Holding {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Holding {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the means of holding");
        v.choice(&mut self.kind, "kind", "what it is");
        v.number(
            &mut self.run_out,
            "run-out",
            "full swing of the dial on true bar held in it",
            within("0 mm", "1 mm"),
        );
        v.number(
            &mut self.least,
            "least",
            "least diameter or width it takes",
            within("0 mm", "300 mm"),
        );
        v.number(
            &mut self.greatest,
            "greatest",
            "greatest diameter or width it takes",
            within("1 mm", "1 m"),
        );
        v.numbers(
            &mut self.sizes,
            "sizes",
            "sizes it comes in, of collets or mandrels",
            within("0.5 mm", "80 mm"),
        );
        v.number(
            &mut self.grip,
            "grip",
            "depth over which it grips",
            within("1 mm", "200 mm"),
        );
    }
}

/// What holds the work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HoldingKind {
    /// Self-centring chuck with three hard jaws.
    ThreeJaw,
    /// Chuck with four jaws moved one by one.
    FourJaw,
    /// Collets.
    Collets,
    /// Soft jaws bored in place.
    SoftJaws,
    /// Mandrel turned in place or between centres.
    Mandrel,
    /// Faceplate.
    Faceplate,
    /// Vee-block.
    VeeBlock,
    /// Vice.
    Vice,
}

impl Choice for HoldingKind {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::ThreeJaw,
            "three-jaw",
            "self-centring chuck with hard jaws",
        ),
        (
            Self::FourJaw,
            "four-jaw",
            "chuck whose jaws are moved one by one",
        ),
        (Self::Collets, "collets", ""),
        (
            Self::SoftJaws,
            "soft jaws",
            "jaws bored in place to the size of the work",
        ),
        (
            Self::Mandrel,
            "mandrel",
            "turned in place, tapped, expanding, or between centres",
        ),
        (Self::Faceplate, "faceplate", ""),
        (Self::VeeBlock, "vee-block", ""),
        (Self::Vice, "vice", ""),
    ];
}

/// `[drilling-machine]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DrillingMachine {
    /// Greatest drill.
    pub capacity: Entry<Length>,
    /// Travel of its quill.
    pub travel: Entry<Length>,
    /// Distance from spindle to column.
    pub throat: Entry<Length>,
    /// Speeds.
    pub speeds: Entry<Vec<Typed<Rotation>>>,
}

impl Section for DrillingMachine {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.capacity,
            "capacity",
            "greatest drill its chuck takes",
            within("1 mm", "50 mm"),
        );
        v.number(
            &mut self.travel,
            "travel",
            "travel of its quill",
            within("10 mm", "300 mm"),
        );
        v.number(
            &mut self.throat,
            "throat",
            "distance from the spindle to the column",
            within("30 mm", "1 m"),
        );
        v.numbers(
            &mut self.speeds,
            "speeds",
            "spindle speeds",
            within("10 rpm", "20000 rpm"),
        );
    }
}

/// `[rotary-table]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RotaryTable {
    /// Turns of the handle for one of the table.
    pub ratio: Entry<u32>,
    /// Divisions of its dial.
    pub dial_divisions: Entry<u32>,
    /// Circles of holes of the dividing plates.
    pub plates: Entry<Vec<u32>>,
    /// Diameter of the table.
    pub diameter: Entry<Length>,
}

impl Section for RotaryTable {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.count(
            &mut self.ratio,
            "ratio",
            "turns of the handle for one turn of the table",
            (1, 360),
        );
        v.count(
            &mut self.dial_divisions,
            "dial-divisions",
            "divisions of the dial on the handle",
            (1, 3600),
        );
        v.counts(
            &mut self.plates,
            "plates",
            "numbers of holes in the circles of the dividing plates",
            (2, 400),
        );
        v.number(
            &mut self.diameter,
            "diameter",
            "diameter of the table",
            within("30 mm", "1 m"),
        );
    }
}
