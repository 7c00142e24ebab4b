//! Rules of our set for shells, openings, flues and tube plates.

use super::cite;
use formulas::sources::{
    ASME_VIII_1, ASME_VIII_2, COMMON_PRACTICE, COPPER_TUBE_HANDBOOK, DERIVED, EN_13445_3,
    SPECIAL_SERVICE_CRAFT,
};
use reckoning::Rule;

/// Brazed joints in steam.
pub(crate) static STEAM_RATING: Rule = Rule {
    id: "ours.steam-rating",
    sentence: "Brazed copper in saturated steam is rated to 8.3 bar; above it, ask first.",
    remedy: "a lower working pressure",
    cite: cite(
        &COPPER_TUBE_HANDBOOK,
        "table 4, brazed joints, saturated steam",
    ),
};

/// Metal no hotter than the tables reach.
pub(crate) static METAL_TEMPERATURE: Rule = Rule {
    id: "ours.metal-temperature",
    sentence: "Copper under pressure stays at or below 200 °C.",
    remedy: "keep the part under water, or lower the pressure",
    cite: cite(
        &SPECIAL_SERVICE_CRAFT,
        "Part 15, chapter 1, section 6, temperature limits",
    ),
};

/// No brass in a wetted brazed joint.
pub(crate) static WETTED_METAL: Rule = Rule {
    id: "ours.wetted-metal",
    sentence: "A bush that is brazed in and wetted is not of brass, which loses its zinc, nor of steel, which \
               rusts beside copper.",
    remedy: "phosphor bronze or gunmetal",
    cite: cite(&COMMON_PRACTICE, "dezincified boiler bushes"),
};

/// Wall of a shell.
pub(crate) static SHELL_WALL: Rule = Rule {
    id: "ours.shell-wall",
    sentence: "The wall of a shell is at least what internal pressure asks at its seam.",
    remedy: "a thicker wall",
    cite: cite(&EN_13445_3, "7.4.2"),
};

/// Membrane stress at the water test.
pub(crate) static SHELL_TEST: Rule = Rule {
    id: "ours.shell-test",
    sentence: "At the water test the shell stays below nine tenths of its yield.",
    remedy: "a thicker wall",
    cite: cite(&ASME_VIII_2, "4.1.6.2"),
};

/// Least wall for handling and wear.
pub(crate) static SHELL_FLOOR: Rule = Rule {
    id: "ours.shell-floor",
    sentence: "A shell no thinner than copper pipe of its size is made leaves metal for handling and wear.",
    remedy: "a thicker wall",
    cite: cite(&SPECIAL_SERVICE_CRAFT, "Part 15, chapter 1, table 1.6.1"),
};

/// Two openings close together.
pub(crate) static SHELL_LIGAMENT: Rule = Rule {
    id: "ours.shell-ligament",
    sentence: "Where openings lie close, the shell still has the wall that the ligament asks.",
    remedy: "openings further apart",
    cite: cite(&ASME_VIII_1, "UG-53"),
};

/// Area replacement.
pub(crate) static OPENING_AREA: Rule = Rule {
    id: "ours.opening-area",
    sentence: "The metal that an opening takes away is there beside it, whatever its size.",
    remedy: "a thicker bush",
    cite: cite(&ASME_VIII_1, "UG-37"),
};

/// Pressure area.
pub(crate) static OPENING_PRESSURE_AREA: Rule = Rule {
    id: "ours.opening-pressure-area",
    sentence: "The metal round an opening holds the pressure on the area that hangs on it.",
    remedy: "a thicker bush",
    cite: cite(&EN_13445_3, "9.5.2"),
};

/// Braze of a bush.
pub(crate) static OPENING_BRAZE: Rule = Rule {
    id: "ours.opening-braze",
    sentence: "The braze ties the replacing metal to the shell over half its circumference.",
    remedy: "a joint that shows filler on both sides, or a thicker wall",
    cite: cite(&ASME_VIII_1, "UG-41"),
};

/// External pressure.
pub(crate) static FLUE_PRESSURE: Rule = Rule {
    id: "ours.flue-pressure",
    sentence: "A tube with pressure outside bears it by the least of collapse and first yield, at \
               work and at the water test, and by its design stress.",
    remedy: "a thicker wall, or a rounder tube",
    cite: cite(&EN_13445_3, "8.5"),
};

/// Openings under external pressure.
pub(crate) static FLUE_OPENING: Rule = Rule {
    id: "ours.flue-opening",
    sentence: "Half the metal that external pressure asks is there beside an opening.",
    remedy: "a thicker ring or wall",
    cite: cite(&ASME_VIII_1, "UG-37(d)(1)"),
};

/// Stayed plates.
pub(crate) static PLATE_STAYED: Rule = Rule {
    id: "ours.plate-stayed",
    sentence: "A plate held by tubes is thick enough for their pitch.",
    remedy: "a thicker plate, or a smaller pitch",
    cite: cite(&ASME_VIII_1, "UG-47"),
};

/// Margin of a plate.
pub(crate) static PLATE_MARGIN: Rule = Rule {
    id: "ours.plate-margin",
    sentence: "The strip of plate between the outer tubes and the wall bends within its limit.",
    remedy: "a thicker plate, or tubes nearer to the wall",
    cite: cite(&DERIVED, "supported strip"),
};

/// Plate between tubes.
pub(crate) static PLATE_BETWEEN: Rule = Rule {
    id: "ours.plate-between",
    sentence: "The disc of plate between neighbouring tubes bends within its limit.",
    remedy: "a thicker plate, or a smaller pitch",
    cite: cite(&DERIVED, "supported disc"),
};

/// Ligament between tubes.
pub(crate) static PLATE_LIGAMENT: Rule = Rule {
    id: "ours.plate-ligament",
    sentence: "Between tubes there is at least the plate's thickness, and 2.5 mm.",
    remedy: "a larger pitch",
    cite: cite(
        &COMMON_PRACTICE,
        "room for filler and heat between brazed tubes",
    ),
};

/// Opening in a plate.
pub(crate) static PLATE_OPENING: Rule = Rule {
    id: "ours.plate-opening",
    sentence: "A plate with an opening that is not a tube is thicker by the root of two.",
    remedy: "a thicker plate, or the opening elsewhere",
    cite: cite(&ASME_VIII_1, "UG-39"),
};

/// Pull of the tubes.
pub(crate) static TUBE_PULL: Rule = Rule {
    id: "ours.tube-pull",
    sentence: "A tube that holds a plate bears its pull within the design stress.",
    remedy: "a thicker tube",
    cite: cite(&ASME_VIII_1, "UG-50"),
};

/// Braze of the tubes.
pub(crate) static TUBE_BRAZE: Rule = Rule {
    id: "ours.tube-braze",
    sentence: "The braze of a tube bears its pull in shear over the plate's thickness.",
    remedy: "a joint that shows filler on both sides, or a thicker plate",
    cite: cite(&COMMON_PRACTICE, "an eighth of printed shear strengths"),
};
