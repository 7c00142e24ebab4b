//! Rules of our set for flanges, the frame of a wet firebox, bushes and stays.

use super::cite;
use formulas::sources::{ASME_VIII_1, COMMON_PRACTICE, DERIVED, LAP_TESTS};
use reckoning::Rule;

/// Lap of a flange.
pub(crate) static JOINT_LAP: Rule = Rule {
    id: "ours.joint-lap",
    sentence: "A brazed flange laps its wall by three times the thinner of the two.",
    remedy: "a longer flange",
    cite: cite(&LAP_TESTS, "lap of three walls"),
};

/// Shear of a flange.
pub(crate) static JOINT_SHEAR: Rule = Rule {
    id: "ours.joint-shear",
    sentence: "The lap of an end plate bears its whole load in shear, whatever tubes and stays take.",
    remedy: "a longer flange, or a joint that shows filler on both sides",
    cite: cite(&COMMON_PRACTICE, "an eighth of printed shear strengths"),
};

/// No peel.
pub(crate) static JOINT_PEEL: Rule = Rule {
    id: "ours.joint-peel",
    sentence: "An end plate has a flange that laps its wall, and pressure does not work to peel it.",
    remedy: "a flange towards the water",
    cite: cite(&COMMON_PRACTICE, "joints are not loaded in peel"),
};

/// Load of a firebox crown.
pub(crate) static CROWN_CHAIN: Rule = Rule {
    id: "ours.crown-chain",
    sentence: "The load on a firebox crown comes out to the shell by a chain whose every link holds.",
    remedy: "more tubes, or a thicker plate",
    cite: cite(&DERIVED, "statics of crown, tubes, upper plate and shell"),
};

/// Unequal growth.
pub(crate) static TUBE_GROWTH: Rule = Rule {
    id: "ours.tube-growth",
    sentence: "The joints of the tubes bear their pull and what unequal growth adds.",
    remedy: "a thicker plate, or thinner tubes",
    cite: cite(&DERIVED, "two bars between rigid plates"),
};

/// Bending of a foundation ring.
pub(crate) static RING_BENDING: Rule = Rule {
    id: "ours.ring-bending",
    sentence: "The foundation ring bends within its limit.",
    remedy: "a deeper ring",
    cite: cite(&DERIVED, "strip across the water leg"),
};

/// Joints of a foundation ring.
pub(crate) static RING_JOINT: Rule = Rule {
    id: "ours.ring-joint",
    sentence: "The joints of the foundation ring bear their load in shear over its depth.",
    remedy: "a deeper ring, or a joint that shows filler on both sides",
    cite: cite(&DERIVED, "load over joint area"),
};

/// Joints of a firehole tube.
pub(crate) static FIREHOLE_JOINT: Rule = Rule {
    id: "ours.firehole-joint",
    sentence: "A firehole tube is a stay of both walls, and its joints bear half a pitch of wall.",
    remedy: "a joint that shows filler on both sides",
    cite: cite(&DERIVED, "half a pitch of wall hung on the rim"),
};

/// Push on a bush.
pub(crate) static BUSH_PUSH_OUT: Rule = Rule {
    id: "ours.bush-push-out",
    sentence: "The braze of a bush bears the water test that pushes it out.",
    remedy: "a joint that shows filler on both sides",
    cite: cite(&DERIVED, "pressure on the bush over its braze"),
};

/// Spanner on a bush.
pub(crate) static BUSH_TORQUE: Rule = Rule {
    id: "ours.bush-torque",
    sentence: "A bush whose braze bears less than 10 N m is held with a second spanner.",
    remedy: "a larger bush, or a thicker wall",
    cite: cite(&COMMON_PRACTICE, "torque of a hand on a short spanner"),
};

/// Metal of a stay.
pub(crate) static STAY_METAL: Rule = Rule {
    id: "ours.stay-metal",
    sentence: "A stay is not of steel, which rusts beside copper, nor of brass, which loses its zinc.",
    remedy: "copper or phosphor bronze",
    cite: cite(&COMMON_PRACTICE, "wasted stays"),
};

/// Section of a stay.
pub(crate) static STAY_ROD: Rule = Rule {
    id: "ours.stay-rod",
    sentence: "A stay has a tenth more section than its load asks.",
    remedy: "a thicker stay",
    cite: cite(&ASME_VIII_1, "UG-50"),
};

/// Joint of a stay.
pub(crate) static STAY_JOINT: Rule = Rule {
    id: "ours.stay-joint",
    sentence: "The braze of a stay bears its load in shear over the thinner wall.",
    remedy: "a thicker plate, more stays, or a joint that shows filler on both sides",
    cite: cite(&COMMON_PRACTICE, "an eighth of printed shear strengths"),
};

/// Strain of a stay across a leg.
pub(crate) static STAY_STRAIN: Rule = Rule {
    id: "ours.stay-strain",
    sentence: "A stay across a water leg is strained by the growth of the firebox by no more than 0.2 %.",
    remedy: "a thinner or longer stay",
    cite: cite(&COMMON_PRACTICE, "low-cycle wear above 0.2 %"),
};
