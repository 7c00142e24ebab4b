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
    &ENDS_STAND,
    &FLUE_CLEAR,
    &CROSS_TUBE_PASSES,
    &CROSS_TUBES_APART,
    &CROSS_TUBE_SLOPE,
    &CROSS_TUBE_BORE,
    &CROSS_TUBE_ENDS,
    &CROSS_TUBE_DROWNED,
    &BUSH_CLEAR,
    &STAY_CLEAR,
    &BURNER_FITS,
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
    sentence: "Between the holes of a brazed tube plate or end stand 2.5 mm, and the thickness of the plate where that is more.",
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

/// A horizontal barrel holds ends and flue.
pub static ENDS_STAND: Rule = Rule {
    id: "plant.ends-stand",
    sentence: "The back end of a horizontal boiler lies behind the front end, and the flue within the barrel.",
    remedy: "Lengthen the barrel, or move ends or flue.",
    cite: GEOMETRY,
};

/// Water on all sides of the flue.
pub static FLUE_CLEAR: Rule = Rule {
    id: "plant.flue-clear",
    sentence: "Round the flue stand at least 5 mm of water.",
    remedy: "A smaller flue, a larger barrel, or the flue nearer to its middle.",
    cite: TRADE,
};

/// Gas can pass a cross tube.
pub static CROSS_TUBE_PASSES: Rule = Rule {
    id: "plant.cross-tube-passes",
    sentence: "Beside a cross tube the flue leaves the gas a way.",
    remedy: "Smaller cross tubes or a larger flue.",
    cite: GEOMETRY,
};

/// Metal between the holes of the flue, and room to braze.
pub static CROSS_TUBES_APART: Rule = Rule {
    id: "plant.cross-tubes-apart",
    sentence: "Between neighbouring cross tubes, and between a cross tube and an end, stand 2.5 mm.",
    remedy: "A larger spacing, fewer tubes, or a longer flue.",
    cite: TRADE,
};

/// Steam rises out of a cross tube.
pub static CROSS_TUBE_SLOPE: Rule = Rule {
    id: "plant.cross-tube-slope",
    sentence: "A cross tube slopes by at least 10° from the horizontal, so that its steam rises and water follows.",
    remedy: "Another incline of the first tube, or another turn from one to the next.",
    cite: TRADE,
};

/// Steam and water pass each other in a cross tube.
pub static CROSS_TUBE_BORE: Rule = Rule {
    id: "plant.cross-tube-bore",
    sentence: "The bore of a cross tube is at least 4.5 mm.",
    remedy: "Larger tubes, or a thinner wall where its proof allows.",
    cite: TRADE,
};

/// Water gets into the ends of a cross tube.
pub static CROSS_TUBE_ENDS: Rule = Rule {
    id: "plant.cross-tube-ends",
    sentence: "The end of a cross tube stands off the barrel by a quarter of its bore.",
    remedy: "Shorter ends beyond the flue, a smaller flue, or a larger barrel.",
    cite: Cite {
        source: &reckoning::source::DERIVED,
        place: "a ring a quarter of the bore high is as wide a way as the bore",
    },
};

/// A cross tube draws water, not steam.
pub static CROSS_TUBE_DROWNED: Rule = Rule {
    id: "plant.cross-tube-drowned",
    sentence: "The lowest water allowed stands above the upper ends of all cross tubes.",
    remedy: "Raise the lowest level, lower the flue, or let the tubes lie flatter.",
    cite: TRADE,
};

/// Bushes of a horizontal barrel have their room.
pub static BUSH_CLEAR: Rule = Rule {
    id: "plant.bush-clear",
    sentence: "A bush in a horizontal barrel stands clear of the flue, the cross tubes, the ends and the next bush.",
    remedy: "Move the bush, or let it reach in less.",
    cite: GEOMETRY,
};

/// A stay passes what stands across the barrel.
pub static STAY_CLEAR: Rule = Rule {
    id: "plant.stay-clear",
    sentence: "A stay from end to end of a horizontal boiler stands clear of the cross tubes and of the bushes in the barrel.",
    remedy: "Move the stay or the bush, or shorten what reaches in.",
    cite: GEOMETRY,
};

/// The burner lies where it has room.
pub static BURNER_FITS: Rule = Rule {
    id: "plant.burner-fits",
    sentence: "A burner in the flue is narrower than it, and its ports end before the first cross tube.",
    remedy: "A smaller or shorter burner, or the first cross tube further in.",
    cite: GEOMETRY,
};

/// The lowest water covers the crown.
pub static WATER_COVERS_CROWN: Rule = Rule {
    id: "plant.water-covers-crown",
    sentence: "The lowest water allowed stands at least 10 mm above the crown of the firebox or of the flue.",
    remedy: "Raise the lowest level, or lower the crown.",
    cite: TRADE,
};

/// The levels lie inside the barrel, in their order.
pub static WATER_LEVEL: Rule = Rule {
    id: "plant.water-level",
    sentence: "The working level stands above the lowest level and below the top of the barrel.",
    remedy: "Set the levels between the crown and the top of the barrel.",
    cite: GEOMETRY,
};

/// The plant fits the room that it is allowed.
pub static ROOM: Rule = Rule {
    id: "plant.room",
    sentence: "The plant is no higher, no wider, no longer and no heavier than the room allows.",
    remedy: "A shorter chimney, a smaller barrel, or more room.",
    cite: TRADE,
};
