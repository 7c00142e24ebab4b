//! Rules of the pressure vessel code.

use super::cite;
use formulas::sources::{ASME_VIII_1, ASME_VIII_2};
use reckoning::Rule;

/// Wall of a shell by the code.
pub(crate) static CODE_SHELL_WALL: Rule = Rule {
    id: "asme-viii.shell-wall",
    sentence: "The wall of a shell is at least what hoop and axial stress ask.",
    remedy: "a thicker wall",
    cite: cite(&ASME_VIII_1, "UG-27"),
};

/// Area replacement by the code.
pub(crate) static CODE_OPENING_AREA: Rule = Rule {
    id: "asme-viii.opening-area",
    sentence: "The metal that an opening takes away is there beside it.",
    remedy: "a thicker bush",
    cite: cite(&ASME_VIII_1, "UG-37"),
};

/// External pressure by the code.
pub(crate) static CODE_EXTERNAL: Rule = Rule {
    id: "asme-viii.external",
    sentence: "A tube with pressure outside bears it by the closed form of Division 2.",
    remedy: "a thicker wall",
    cite: cite(&ASME_VIII_2, "4.4.5"),
};

/// Stayed plates by the code.
pub(crate) static CODE_STAYED: Rule = Rule {
    id: "asme-viii.plate-stayed",
    sentence: "A stayed plate is thick enough for the greatest pitch.",
    remedy: "a thicker plate, or a smaller pitch",
    cite: cite(&ASME_VIII_1, "UG-47"),
};

/// Openings that the code is not worked for.
pub(crate) static CODE_ELSEWHERE: Rule = Rule {
    id: "asme-viii.opening-elsewhere",
    sentence: "Openings in stayed plates and in tubes with pressure outside are not left unjudged.",
    remedy: "judge the opening by another rule set",
    cite: cite(&ASME_VIII_1, "UG-37(d), UG-39"),
};

/// Parts that the code is not worked for.
pub(crate) static CODE_NOT_WORKED: Rule = Rule {
    id: "asme-viii.not-worked",
    sentence: "Flanges, rings, ties and stays are not left unjudged.",
    remedy: "judge the part by another rule set",
    cite: cite(&ASME_VIII_1, "UB-16, UW-19"),
};

/// Flat ends by the code.
pub(crate) static CODE_FLAT_END: Rule = Rule {
    id: "asme-viii.flat-end",
    sentence: "A flat end that no stay holds is thick enough for the circle that it spans.",
    remedy: "a thicker end",
    cite: cite(&ASME_VIII_1, "UG-34"),
};

/// Dished ends by the code.
pub(crate) static CODE_DISHED: Rule = Rule {
    id: "asme-viii.dished-end",
    sentence: "A dished end with its hollow side pressed is thick enough for its curve.",
    remedy: "a thicker end",
    cite: cite(&ASME_VIII_1, "UG-32"),
};
