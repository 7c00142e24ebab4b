//! The 55 degree form of Whitworth: BSW, BSF, brass thread, the constant pitch model series and
//! parallel pipe threads (BS 84, ISO 228-1).
//!
//! The internal minor diameter equals the core. Taper pipe threads are left out.

use reckoning::quantity::{MM, PERCENT};
use reckoning::{Card, Cite, Law, Spread, symbol};

use crate::sources::BS_84;

/// Effective diameter of a Whitworth thread, mm; see [`WHITWORTH_EFFECTIVE`].
#[must_use]
pub fn whitworth_effective(d_mm: f64, p_mm: f64) -> f64 {
    d_mm - 0.640_327 * p_mm
}

/// Effective diameter of a Whitworth thread.
pub static WHITWORTH_EFFECTIVE: Card = Card {
    id: "thread.whitworth-effective",
    law: Law::Closed("d_e = D - 0.640327 * P"),
    gives: symbol("d_e", &MM, "effective diameter of a Whitworth thread"),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &BS_84,
        place: "basic form",
    },
    eval: |v| Ok(whitworth_effective(v[0], v[1])),
};

/// Core diameter of a Whitworth thread, internal and external, mm; see [`WHITWORTH_CORE`].
#[must_use]
pub fn whitworth_core(d_mm: f64, p_mm: f64) -> f64 {
    d_mm - 1.280_654 * p_mm
}

/// Core diameter of a Whitworth thread, internal and external.
pub static WHITWORTH_CORE: Card = Card {
    id: "thread.whitworth-core",
    law: Law::Closed("d_r = D - 1.280654 * P"),
    gives: symbol(
        "d_r",
        &MM,
        "core diameter of a Whitworth thread, internal and external",
    ),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &BS_84,
        place: "basic form",
    },
    eval: |v| Ok(whitworth_core(v[0], v[1])),
};

/// Share of the full depth of thread that a hole leaves, percent; see [`WHITWORTH_DEPTH_SHARE`].
#[must_use]
pub fn whitworth_depth_share(d_mm: f64, p_mm: f64, hole_mm: f64) -> f64 {
    100.0 * (d_mm - hole_mm) / (1.280_654 * p_mm)
}

/// Share of the full depth of thread that a hole leaves.
pub static WHITWORTH_DEPTH_SHARE: Card = Card {
    id: "thread.whitworth-depth-share",
    law: Law::Closed("q = 100 * (D - d) / (1.280654 * P)"),
    gives: symbol("q", &PERCENT, "share of the full depth of thread"),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
        symbol("d", &MM, "hole before tapping"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &BS_84,
        place: "the depth of thread, both sides",
    },
    eval: |v| Ok(whitworth_depth_share(v[0], v[1], v[2])),
};
