//! Rules of the ship register.

use super::cite;
use formulas::sources::{COPPER_PIPE_FORM, NAVAL_SHIPS, SPECIAL_SERVICE_CRAFT};
use reckoning::Rule;

/// Wall of copper pipe.
pub(crate) static SHIP_PIPE_WALL: Rule = Rule {
    id: "ship-register.pipe-wall",
    sentence: "The wall of seamless copper pipe is what pressure asks and what corrosion may take.",
    remedy: "a thicker wall",
    cite: cite(&COPPER_PIPE_FORM, "part 15, chapter 1, 6.1"),
};

/// Least wall of copper pipe.
pub(crate) static SHIP_LEAST_WALL: Rule = Rule {
    id: "ship-register.least-wall",
    sentence: "Copper pipe is no thinner than the least nominal wall of its size.",
    remedy: "a wall of the next size",
    cite: cite(&SPECIAL_SERVICE_CRAFT, "part 15, chapter 1, table 1.6.1"),
};

/// Smoke tubes.
pub(crate) static SHIP_SMOKE_TUBE: Rule = Rule {
    id: "ship-register.smoke-tube",
    sentence: "A smoke tube of steel has the wall that the table asks for its size and pressure.",
    remedy: "a thicker tube",
    cite: cite(&NAVAL_SHIPS, "volume 2, part 8, chapter 1, table 1.12.1"),
};

/// Bends of flanges.
pub(crate) static SHIP_BEND: Rule = Rule {
    id: "ship-register.bend-radius",
    sentence: "A flanged end is bent to 1.75 times its plate, a firebox plate to its plate.",
    remedy: "a larger radius at the bend",
    cite: cite(&NAVAL_SHIPS, "volume 2, part 8, chapter 1, 9.1"),
};

/// Filler of pressure joints.
pub(crate) static SHIP_FILLER: Rule = Rule {
    id: "ship-register.filler",
    sentence: "The filler of a joint under pressure holds at least 49 per cent of silver.",
    remedy: "a filler with more silver, such as Ag 155",
    cite: cite(&SPECIAL_SERVICE_CRAFT, "brazed joints of pipe"),
};

/// What the register is not worked for.
pub(crate) static SHIP_NOT_WORKED: Rule = Rule {
    id: "ship-register.not-worked",
    sentence: "Parts for which the register is not worked here are not left unjudged.",
    remedy: "judge the part by another rule set",
    cite: cite(&NAVAL_SHIPS, "volume 2, part 8, chapters 1 and 2"),
};
