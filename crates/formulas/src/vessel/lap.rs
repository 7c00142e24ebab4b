//! Family `lap`: brazed laps between a flange and the tube round it.
//!
//! Sources: a filler maker's guide for the length of full strength, the lap tests behind the rule
//! of three, statics for the rest. Peel has no formula here: a joint that is loaded so is refused.

use super::positive;
use crate::sources::{BRAZING_GUIDE, DERIVED, LAP_TESTS};
use reckoning::quantity::{MM, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&OVERLAP, &RULE_OF_THREE, &FULL_STRENGTH, &SHEAR];

const NOTHING: &str = "there must be a lap and a load";

/// Lap of a flange; see [`OVERLAP`].
#[must_use]
pub fn overlap(h_mm: f64, r_mm: f64, t_mm: f64) -> f64 {
    h_mm - r_mm - t_mm
}

/// Straight length of a flange that lies against the tube: its height less the outside of the
/// bend.
pub static OVERLAP: Card = Card {
    id: "lap.overlap",
    law: Law::Closed("l = h - r - t"),
    gives: symbol("l", &MM, "lap of the flange"),
    takes: &[
        symbol("h", &MM, "height of the flange over all"),
        symbol("r", &MM, "inside radius of the bend"),
        symbol("t", &MM, "plate"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a flanged plate",
    },
    eval: |v| {
        let r = overlap(v[0], v[1], v[2]);
        positive(r, OVERLAP.id, ("h", v[0]), NOTHING)
    },
};

/// Lap of three walls; see [`RULE_OF_THREE`].
#[must_use]
pub fn rule_of_three(t_mm: f64) -> f64 {
    3.0 * t_mm
}

/// Lap beyond which the metal fails before the braze: tests put the change above twice the
/// thinner member.
pub static RULE_OF_THREE: Card = Card {
    id: "lap.rule-of-three",
    law: Law::Closed("l = 3 * t"),
    gives: symbol("l", &MM, "lap asked"),
    takes: &[symbol("t", &MM, "thinner member")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &LAP_TESTS,
        place: "failure in the parent metal above 2 t, hence 3 t",
    },
    eval: |v| Ok(rule_of_three(v[0])),
};

/// Lap of full strength; see [`FULL_STRENGTH`].
#[must_use]
pub fn full_strength(t_mpa: f64, w_mm: f64, c: f64, l_mpa: f64) -> f64 {
    t_mpa * w_mm / (c * l_mpa)
}

/// Lap at which the braze is as strong as the thinner member.
pub static FULL_STRENGTH: Card = Card {
    id: "lap.full-strength",
    law: Law::Closed("X = T * W / (C * L)"),
    gives: symbol("X", &MM, "lap of full strength"),
    takes: &[
        symbol("T", &MPA, "tensile strength of the thinner member"),
        symbol("W", &MM, "its thickness"),
        symbol("C", &ONE, "share of the lap that is whole"),
        symbol("L", &MPA, "shear strength of the filler"),
    ],
    limits: &[Limit::within("C", 0.0, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &BRAZING_GUIDE,
        place: "joint design, length of lap",
    },
    eval: |v| Ok(full_strength(v[0], v[1], v[2], v[3])),
};

/// Shear in the lap of an end plate; see [`SHEAR`].
#[must_use]
pub fn shear(p_mpa: f64, d_mm: f64, l_mm: f64) -> f64 {
    p_mpa * d_mm / (4.0 * l_mm)
}

/// Shear in the lap round an end plate that holds its whole load, whatever tubes and stays
/// take.
pub static SHEAR: Card = Card {
    id: "lap.shear",
    law: Law::Closed("tau = P * D / (4 * l)"),
    gives: symbol("tau", &MPA, "shear in the lap"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("D", &MM, "inside diameter of the tube round the plate"),
        symbol("l", &MM, "lap"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "load of a disc over its rim",
    },
    eval: |v| {
        let r = shear(v[0], v[1], v[2]);
        positive(r, SHEAR.id, ("l", v[2]), NOTHING)
    },
};
