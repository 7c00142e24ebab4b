//! Rules of the European standards: the vessel standard, and the shell boiler standard apart from
//! it.

use super::cite;
use formulas::sources::{EN_12953_3, EN_13445_3};
use reckoning::Rule;

/// Wall of a shell by the vessel standard.
pub(crate) static EN_SHELL_WALL: Rule = Rule {
    id: "en-13445.shell-wall",
    sentence: "The wall of a seamless shell is at least what internal pressure asks.",
    remedy: "a thicker wall",
    cite: cite(&EN_13445_3, "7.4.2"),
};

/// Openings by the vessel standard.
pub(crate) static EN_OPENING: Rule = Rule {
    id: "en-13445.opening",
    sentence: "The metal beside an opening holds the pressure over the area that leans on it.",
    remedy: "a thicker shell, or a smaller opening",
    cite: cite(&EN_13445_3, "9.5"),
};

/// Openings that stand alone.
pub(crate) static EN_OPENINGS_APART: Rule = Rule {
    id: "en-13445.openings-apart",
    sentence: "Openings that are judged one by one stand so far apart that they share no shell.",
    remedy: "openings further apart",
    cite: cite(&EN_13445_3, "9.5.1"),
};

/// External pressure by the vessel standard.
pub(crate) static EN_EXTERNAL: Rule = Rule {
    id: "en-13445.external",
    sentence: "A tube with pressure outside stays below its collapse, at work and at the water test.",
    remedy: "a thicker wall, or a rounder tube",
    cite: cite(&EN_13445_3, "8.5.2"),
};

/// Flat ends by the vessel standard.
pub(crate) static EN_FLAT_END: Rule = Rule {
    id: "en-13445.flat-end",
    sentence: "A flat end is thick enough without help from stays or shell.",
    remedy: "a thicker end",
    cite: cite(&EN_13445_3, "10.4"),
};

/// What the vessel standard is not worked for.
pub(crate) static EN_NOT_WORKED: Rule = Rule {
    id: "en-13445.not-worked",
    sentence: "Parts for which the vessel standard is not worked here are not left unjudged.",
    remedy: "judge the part by another rule set",
    cite: cite(&EN_13445_3, "clauses 10, 13 and 15"),
};

/// Furnaces by the shell boiler standard.
pub(crate) static BOILER_FURNACE: Rule = Rule {
    id: "en-12953.furnace",
    sentence: "A furnace tube stays below yielding and collapse by the factors of shell boilers.",
    remedy: "a thicker wall, or a rounder tube",
    cite: cite(&EN_12953_3, "furnace tubes"),
};

/// What the shell boiler standard is not worked for.
pub(crate) static BOILER_NOT_WORKED: Rule = Rule {
    id: "en-12953.not-worked",
    sentence: "Parts for which the shell boiler standard is not worked here are not left unjudged.",
    remedy: "judge the part by another rule set",
    cite: cite(&EN_12953_3, "shells, ends, stays and openings"),
};
