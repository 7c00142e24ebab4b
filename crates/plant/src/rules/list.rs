//! The rules of the geometry.

use reckoning::source::COMMON_PRACTICE;
use reckoning::{Cite, Rule};

const TRADE: Cite = Cite {
    source: &COMMON_PRACTICE,
    place: "small brazed boilers",
};

const GEOMETRY: Cite = Cite {
    source: &reckoning::source::DERIVED,
    place: "two parts cannot be in one place",
};

/// Every rule of this crate.
pub static RULES: &[&Rule] = &[
    &SHAPE,
    &STANDS,
    &FLANGE,
    &TUBES_FIT,
    &LIGAMENT,
    &HOLE_CLEAR_OF_BEND,
    &TUBE_TOUCHES,
    &WATER_LEG,
    &WATER_COVERS_CROWN,
    &WATER_LEVEL,
    &ROOM,
];

/// The sizes of a part make a shape.
pub static SHAPE: Rule = Rule {
    id: "plant.shape",
    sentence: "The sizes of a part make a shape that leaves metal.",
    remedy: "Correct the size that is named.",
    cite: GEOMETRY,
};

/// The parts of the vessel follow each other upwards.
pub static STANDS: Rule = Rule {
    id: "plant.stands",
    sentence: "The crown of the firebox stands above the foundation ring and below the upper tube plate.",
    remedy: "Lengthen the barrel, shorten the firebox, or move the plates.",
    cite: GEOMETRY,
};

/// A flange is higher than its bend.
pub static FLANGE: Rule = Rule {
    id: "plant.flange",
    sentence: "A flange is higher than its bend, so that some of it lies on the wall.",
    remedy: "Make the flange higher or its radius smaller.",
    cite: GEOMETRY,
};

/// The tubes that are asked for have places.
pub static TUBES_FIT: Rule = Rule {
    id: "plant.tubes-fit",
    sentence: "Every tube has a place that keeps the margin to the wall and one thickness of flat plate to the bend.",
    remedy: "Fewer tubes, a smaller pitch, a smaller margin, or a larger firebox.",
    cite: TRADE,
};

/// Metal between the holes of a tube plate.
pub static LIGAMENT: Rule = Rule {
    id: "plant.ligament",
    sentence: "Between the holes of a brazed tube plate stand 2.5 mm, and the thickness of the plate where that is more.",
    remedy: "A larger pitch or smaller tubes.",
    cite: TRADE,
};

/// Holes lie on the flat of a flanged plate.
pub static HOLE_CLEAR_OF_BEND: Rule = Rule {
    id: "plant.hole-clear-of-bend",
    sentence: "The edge of a hole in a flanged plate lies one thickness of the plate inside the bend.",
    remedy: "Move the hole inwards, or make the inside radius of the flange smaller.",
    cite: TRADE,
};

/// Tubes stand clear of bushes and stays.
pub static TUBE_TOUCHES: Rule = Rule {
    id: "plant.tube-touches",
    sentence: "A fire tube stands clear of every bush and stay.",
    remedy: "Move the bush or the stay, or leave the tube out.",
    cite: GEOMETRY,
};

/// Room for steam to rise and for scale to fall.
pub static WATER_LEG: Rule = Rule {
    id: "plant.water-leg",
    sentence: "The water leg round the firebox is at least 5 mm wide.",
    remedy: "A smaller firebox or a larger barrel.",
    cite: TRADE,
};

/// The lowest water covers the crown.
pub static WATER_COVERS_CROWN: Rule = Rule {
    id: "plant.water-covers-crown",
    sentence: "The lowest water allowed stands at least 10 mm above the crown of the firebox.",
    remedy: "Raise the lowest level, or lower the crown.",
    cite: TRADE,
};

/// The levels lie inside the barrel, in their order.
pub static WATER_LEVEL: Rule = Rule {
    id: "plant.water-level",
    sentence: "The working level stands above the lowest level and below the upper tube plate.",
    remedy: "Set the levels between crown and upper tube plate.",
    cite: GEOMETRY,
};

/// The plant fits the room that it is allowed.
pub static ROOM: Rule = Rule {
    id: "plant.room",
    sentence: "The plant is no higher, no wider and no heavier than the room allows.",
    remedy: "A shorter chimney, a smaller barrel, or more room.",
    cite: TRADE,
};
