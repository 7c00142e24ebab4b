//! Rules of our set for ends, girders, threads and long stays, and for openings that lie close.

use super::cite;
use formulas::sources::{
    ASME_VIII_1, ASME_VIII_2, COMMON_PRACTICE, DERIVED, IBR_1950, MACHINERYS_HANDBOOK_24,
    STRESS_FORMULAS_7,
};
use reckoning::Rule;

/// A flat end without stays.
pub(crate) static END_FLAT: Rule = Rule {
    id: "ours.end-flat",
    sentence: "A flat end without stays bends within its limit as a disc whose edge turns freely, whatever \
               its flange.",
    remedy: "a thicker plate, or stays",
    cite: cite(&STRESS_FORMULAS_7, "table 11.2, case 10a"),
};

/// A flat end round a flue.
pub(crate) static END_RING: Rule = Rule {
    id: "ours.end-ring",
    sentence: "A flat end round a flue bends within its limit by the worst of four pairs of edges.",
    remedy: "a thicker plate, or stays",
    cite: cite(&STRESS_FORMULAS_7, "table 11.2, case 2"),
};

/// A flat end with stays.
pub(crate) static END_STAYED: Rule = Rule {
    id: "ours.end-stayed",
    sentence: "A flat end that stays hold is thick enough for its widest bare field.",
    remedy: "a thicker plate, or a further stay",
    cite: cite(&ASME_VIII_1, "UG-47"),
};

/// Pull of an end on its flue.
pub(crate) static END_PULL: Rule = Rule {
    id: "ours.end-pull",
    sentence: "The joint of a flue bears the pull of the end that it holds.",
    remedy: "a thicker plate, or a joint that shows filler on both sides",
    cite: cite(
        &DERIVED,
        "share of the load of a ring that its inner edge takes",
    ),
};

/// Growth of a flue.
pub(crate) static END_GROWTH: Rule = Rule {
    id: "ours.end-growth",
    sentence: "What a flue that grows more than its shell would put on its joints is known.",
    remedy: "ends that give, or a thinner flue",
    cite: cite(&DERIVED, "two bars between rigid plates"),
};

/// Opening in a flat end.
pub(crate) static END_OPENING: Rule = Rule {
    id: "ours.end-opening",
    sentence: "Half the metal that an opening takes away from a flat end is there beside it.",
    remedy: "a thicker bush or plate",
    cite: cite(&ASME_VIII_1, "UG-39(b)"),
};

/// A dished end.
pub(crate) static END_DISHED: Rule = Rule {
    id: "ours.end-dished",
    sentence: "A dished end is thick enough for the side on which the pressure is.",
    remedy: "a thicker dish",
    cite: cite(&ASME_VIII_2, "4.4.7, and VIII-1 UG-32 and UG-33"),
};

/// Two openings that share metal.
pub(crate) static OPENING_BETWEEN: Rule = Rule {
    id: "ours.opening-between",
    sentence: "Between two openings whose limits overlap lies half the metal that they ask, and they stand \
               a third more than their mean diameter apart.",
    remedy: "openings further apart",
    cite: cite(&ASME_VIII_1, "UG-42"),
};

/// An opening beside a lap.
pub(crate) static OPENING_LAP: Rule = Rule {
    id: "ours.opening-lap",
    sentence: "An opening stands clear of the lap of an end or ring.",
    remedy: "the opening further from the end",
    cite: cite(&COMMON_PRACTICE, "a hole through a brazed lap opens it"),
};

/// Bending of a girder.
pub(crate) static GIRDER_BENDING: Rule = Rule {
    id: "ours.girder-bending",
    sentence: "A girder on a crown bends within the design stress, the crown plate not counted.",
    remedy: "a deeper girder, or more of them",
    cite: cite(&DERIVED, "beam on two feet"),
};

/// Foot of a girder.
pub(crate) static GIRDER_FOOT: Rule = Rule {
    id: "ours.girder-foot",
    sentence: "The feet of a girder press on no more than the design stress.",
    remedy: "a longer foot",
    cite: cite(&DERIVED, "load over area"),
};

/// Tube plate under girders.
pub(crate) static GIRDER_PLATE: Rule = Rule {
    id: "ours.girder-plate",
    sentence: "A tube plate on which girders stand is pressed between its tubes within the design stress.",
    remedy: "a thicker tube plate, or tubes further apart",
    cite: cite(&IBR_1950, "regulation 582"),
};

/// Threads engaged.
pub(crate) static THREAD_TURNS: Rule = Rule {
    id: "ours.thread-turns",
    sentence: "What is screwed into a bush under pressure engages four full threads or more.",
    remedy: "a longer bush, or a finer thread",
    cite: cite(
        &COMMON_PRACTICE,
        "four threads; regulation 586 asks three of a stay",
    ),
};

/// Shear of threads.
pub(crate) static THREAD_SHEAR: Rule = Rule {
    id: "ours.thread-shear",
    sentence: "At the water test the threads of bush and screw bear their push in shear, and the bush is not \
               of copper.",
    remedy: "a longer thread, or a bush of bronze",
    cite: cite(&MACHINERYS_HANDBOOK_24, "shear areas of mating threads"),
};

/// Growth of a long stay.
pub(crate) static STAY_GROWTH: Rule = Rule {
    id: "ours.stay-growth",
    sentence: "The joints of a stay from end to end bear its load and what unequal growth adds, and it may bow.",
    remedy: "an end in a gland, or a thinner stay",
    cite: cite(&DERIVED, "two bars between rigid plates"),
};
