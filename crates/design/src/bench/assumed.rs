//! What is assumed of a workshop whose maker has not measured it yet.
//!
//! Each stands for the field of the workshop file that replaces it. Left out: what no card can be
//! written without (speeds, drills, holders), which is a gap.

use plan::workshop::HoldingKind;
use reckoning::formula::Cite;
use reckoning::quantity::{MM, PERCENT};
use reckoning::source::COMMON_PRACTICE;
use reckoning::{Assumption, Known, quantity::Length};

/// Every assumption of this module.
pub static ASSUMPTIONS: &[&Assumption] =
    &[&BLADE, &SHARE, &THREE_JAW, &FOUR_JAW, &COLLETS, &SOFT_JAWS];

const fn practice(place: &'static str) -> Cite {
    Cite {
        source: &COMMON_PRACTICE,
        place,
    }
}

/// Width of the parting blade.
pub(super) static BLADE: Assumption = Assumption {
    id: "lathe.blade",
    meaning: "width of the parting blade",
    unit: &MM,
    value: 2.0,
    low: 1.5,
    high: 3.0,
    variable: "lathe.blade",
    cite: practice("parting blades of small lathes"),
};

/// Share of full thread wanted in a tapped hole.
pub(super) static SHARE: Assumption = Assumption {
    id: "threading.share",
    meaning: "share of full thread wanted in a tapped hole",
    unit: &PERCENT,
    value: 70.0,
    low: 65.0,
    high: 75.0,
    variable: "threading.share",
    cite: practice("tapped holes in general work"),
};

/// A swing that nobody has measured, by the kind of holder.
const fn swing(
    id: &'static str,
    meaning: &'static str,
    (value, low, high): (f64, f64, f64),
) -> Assumption {
    Assumption {
        id,
        meaning,
        unit: &MM,
        value,
        low,
        high,
        variable: id,
        cite: practice("full dial swing of work in holders of small workshops"),
    }
}

/// Three hard jaws, from new to well used.
pub(super) static THREE_JAW: Assumption = swing(
    "holding.run-out (three-jaw)",
    "full dial swing of true bar in the three-jaw chuck",
    (0.10, 0.05, 0.25),
);

/// Four jaws, the work set true with a dial.
pub(super) static FOUR_JAW: Assumption = swing(
    "holding.run-out (four-jaw)",
    "full dial swing of work dialled true in the four-jaw chuck",
    (0.01, 0.005, 0.02),
);

/// Collets.
pub(super) static COLLETS: Assumption = swing(
    "holding.run-out (collets)",
    "full dial swing of true bar in a collet of its size",
    (0.02, 0.01, 0.03),
);

/// Soft jaws bored in place.
pub(super) static SOFT_JAWS: Assumption = swing(
    "holding.run-out (soft jaws)",
    "full dial swing of work in soft jaws bored to its diameter",
    (0.015, 0.01, 0.02),
);

/// The swing assumed of a kind of holder; none for what the work does not turn in.
#[must_use]
pub(super) fn swing_of(kind: HoldingKind) -> Option<Known<Length>> {
    let assumption = match kind {
        HoldingKind::ThreeJaw => &THREE_JAW,
        HoldingKind::FourJaw => &FOUR_JAW,
        HoldingKind::Collets => &COLLETS,
        HoldingKind::SoftJaws => &SOFT_JAWS,
        HoldingKind::Mandrel
        | HoldingKind::Faceplate
        | HoldingKind::VeeBlock
        | HoldingKind::Vice => return None,
    };
    Some(Known::assumed(assumption))
}
