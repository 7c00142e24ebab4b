//! What a change of setting costs in truth, and a part in bar.
//!
//! Tilt of a part in its holder is left out: only the offset of two axes is reckoned.

use reckoning::quantity::{MM, ONE};
use reckoning::{Card, Cite, Law, Spread, symbol};

use crate::sources::DERIVED;

/// Greatest offset of two axes after one more setting, mm; see [`OFFSET_WORST`].
#[must_use]
pub fn offset_worst(e_0_mm: f64, swing_mm: f64) -> f64 {
    e_0_mm + swing_mm / 2.0
}

/// Greatest offset of two axes after one more setting: each holder adds half its dial swing.
pub static OFFSET_WORST: Card = Card {
    id: "cutting.offset-worst",
    law: Law::Closed("e = e_0 + T / 2"),
    gives: symbol("e", &MM, "greatest offset of the axes"),
    takes: &[
        symbol("e_0", &MM, "greatest offset before this setting"),
        symbol("T", &MM, "full dial swing of the holder"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "offsets along one line",
    },
    eval: |v| Ok(offset_worst(v[0], v[1])),
};

/// Likely offset of two axes after one more setting, mm; see [`OFFSET_LIKELY`].
#[must_use]
pub fn offset_likely(e_0_mm: f64, swing_mm: f64) -> f64 {
    (e_0_mm.powi(2) + (swing_mm / 2.0).powi(2)).sqrt()
}

/// Likely offset of two axes after one more setting: offsets in chance directions.
pub static OFFSET_LIKELY: Card = Card {
    id: "cutting.offset-likely",
    law: Law::Closed("e = sqrt(e_0^2 + (T / 2)^2)"),
    gives: symbol("e", &MM, "likely offset of the axes"),
    takes: &[
        symbol("e_0", &MM, "likely offset before this setting"),
        symbol("T", &MM, "full dial swing of the holder"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "root of the sum of squares of independent offsets",
    },
    eval: |v| Ok(offset_likely(v[0], v[1])),
};

/// Bar that a number of equal parts uses, mm; see [`BAR_LENGTH`].
#[must_use]
pub fn bar_length(n: f64, l_mm: f64, blade_mm: f64, facing_mm: f64, grip_mm: f64) -> f64 {
    n * (l_mm + blade_mm + facing_mm) + grip_mm
}

/// Bar that a number of equal parts uses, with the last grip.
pub static BAR_LENGTH: Card = Card {
    id: "cutting.bar-length",
    law: Law::Closed("B = n * (L + b + f) + g"),
    gives: symbol("B", &MM, "length of bar"),
    takes: &[
        symbol("n", &ONE, "number of parts"),
        symbol("L", &MM, "length of a part"),
        symbol("b", &MM, "width of the parting blade"),
        symbol("f", &MM, "facing allowance"),
        symbol("g", &MM, "grip"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "sum of lengths",
    },
    eval: |v| Ok(bar_length(v[0], v[1], v[2], v[3], v[4])),
};
