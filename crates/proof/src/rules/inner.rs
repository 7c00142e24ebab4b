//! Rules of our set for what stands inside a boiler or in its gas, and for its pipes.

use super::cite;
use formulas::sources::{ASME_II_D, ASME_VIII_2, EN_13445_3, SPECIAL_SERVICE_CRAFT};
use reckoning::Rule;

/// Wall of a tube with pressure inside.
pub(crate) static TUBE_WALL: Rule = Rule {
    id: "ours.tube-wall",
    sentence: "The wall of a tube with pressure inside is at least what the pressure asks at the temperature \
               of its metal.",
    remedy: "a thicker wall",
    cite: cite(&EN_13445_3, "7.4.2"),
};

/// A tube at the water test.
pub(crate) static TUBE_TEST: Rule = Rule {
    id: "ours.tube-test",
    sentence: "At the water test a tube stays below nine tenths of its proof stress.",
    remedy: "a thicker wall",
    cite: cite(&ASME_VIII_2, "4.1.6.2"),
};

/// A coil while steam flows.
pub(crate) static COIL_FLOWING: Rule = Rule {
    id: "ours.coil-flowing",
    sentence: "While steam flows, a coil bears the pressure of the boiler at the temperature of its metal.",
    remedy: "a coil of stainless steel",
    cite: cite(
        &SPECIAL_SERVICE_CRAFT,
        "Part 15, chapter 1, section 6, temperature limits",
    ),
};

/// A coil while none does.
pub(crate) static COIL_STANDING: Rule = Rule {
    id: "ours.coil-standing",
    sentence: "While no steam flows, a coil bears the pressure of the boiler at the temperature of the gas: \
               copper does not stand in gas hotter than 200 °C.",
    remedy: "a coil of stainless steel",
    cite: cite(&ASME_II_D, "table 1A"),
};

/// Heat through the wall of a coil.
pub(crate) static COIL_STRAIN: Rule = Rule {
    id: "ours.coil-strain",
    sentence: "Pressure and heat together strain the wall of a coil within three times its design stress, and \
               it is free to grow.",
    remedy: "a thinner wall, or the coil in cooler gas",
    cite: cite(&ASME_VIII_2, "4.1.6"),
};
