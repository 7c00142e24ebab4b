//! Rules of the state boiler regulations.

use super::cite;
use formulas::sources::IBR_1950;
use reckoning::Rule;

/// Shells.
pub(crate) static STATE_SHELL: Rule = Rule {
    id: "ibr.shell",
    sentence: "The working pressure of a seamless shell is at most what its wall allows.",
    remedy: "a thicker wall",
    cite: cite(&IBR_1950, "regulation 366"),
};

/// Furnaces.
pub(crate) static STATE_FURNACE: Rule = Rule {
    id: "ibr.furnace",
    sentence: "The working pressure of a plain copper furnace is at most the lesser of two forms.",
    remedy: "a thicker or shorter furnace",
    cite: cite(&IBR_1950, "regulation 220"),
};

/// Plain stays.
pub(crate) static STATE_STAY: Rule = Rule {
    id: "ibr.stay",
    sentence: "A solid copper stay holds the plate that hangs on it.",
    remedy: "a thicker stay, or more of them",
    cite: cite(&IBR_1950, "regulations 202 and 585a"),
};

/// Thickness of tube plates.
pub(crate) static STATE_TUBE_PLATE: Rule = Rule {
    id: "ibr.tube-plate",
    sentence: "A plate in which steel tubes are expanded is as thick as their size asks.",
    remedy: "a thicker plate",
    cite: cite(&IBR_1950, "regulation 580"),
};

/// Metal between tubes.
pub(crate) static STATE_BETWEEN: Rule = Rule {
    id: "ibr.between-tubes",
    sentence: "Between two expanded tubes there is the section of plate that their size asks.",
    remedy: "a larger pitch, or a thicker plate",
    cite: cite(&IBR_1950, "regulation 580"),
};

/// Girders.
pub(crate) static STATE_GIRDER: Rule = Rule {
    id: "ibr.girder",
    sentence: "A crown girder that stands on the ends of the firebox carries its strip of crown.",
    remedy: "a deeper girder",
    cite: cite(&IBR_1950, "regulation 229"),
};

/// The plate under girders.
pub(crate) static STATE_UNDER_GIRDERS: Rule = Rule {
    id: "ibr.under-girders",
    sentence: "The tube plate on which girders stand is not crushed between its tubes.",
    remedy: "a thicker plate, or a larger pitch",
    cite: cite(&IBR_1950, "regulation 582"),
};

/// Dished ends.
pub(crate) static STATE_DISHED: Rule = Rule {
    id: "ibr.dished",
    sentence: "An unstayed dished end holds the pressure on the side where it is pressed.",
    remedy: "a thicker end, or a smaller radius",
    cite: cite(&IBR_1950, "regulations 567, 190 and 223"),
};

/// Cross tubes.
pub(crate) static STATE_CROSS_TUBES: Rule = Rule {
    id: "ibr.cross-tubes",
    sentence: "Cross tubes of steel have wall left for the pressure beyond 7/32 in.",
    remedy: "a thicker tube",
    cite: cite(&IBR_1950, "regulation 227"),
};

/// What the regulations are not worked for.
pub(crate) static STATE_NOT_WORKED: Rule = Rule {
    id: "ibr.not-worked",
    sentence: "Parts for which the regulations are not worked here are not left unjudged.",
    remedy: "judge the part by another rule set",
    cite: cite(&IBR_1950, "chapters 5 and 12"),
};
