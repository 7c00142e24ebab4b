//! The 47.5 degree British Association form (BS 93 as given on public data pages).
//!
//! The internal minor diameter equals the core. Pitch and diameter come from the table of the
//! series, whose own law (pitch 0.9^n, diameter 6 p^1.2, two figures) its test repeats.

use reckoning::quantity::{MM, PERCENT};
use reckoning::{Card, Cite, Law, Spread, symbol};

use crate::sources::BA_PAGES;

/// Effective diameter of a BA thread, mm; see [`BA_EFFECTIVE`].
#[must_use]
pub fn ba_effective(d_mm: f64, p_mm: f64) -> f64 {
    d_mm - 0.6 * p_mm
}

/// Effective diameter of a BA thread.
pub static BA_EFFECTIVE: Card = Card {
    id: "thread.ba-effective",
    law: Law::Closed("d_e = D - 0.6 * P"),
    gives: symbol("d_e", &MM, "effective diameter of a BA thread"),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &BA_PAGES,
        place: "basic form",
    },
    eval: |v| Ok(ba_effective(v[0], v[1])),
};

/// Core diameter of a BA thread, internal and external, mm; see [`BA_CORE`].
#[must_use]
pub fn ba_core(d_mm: f64, p_mm: f64) -> f64 {
    d_mm - 1.2 * p_mm
}

/// Core diameter of a BA thread, internal and external.
pub static BA_CORE: Card = Card {
    id: "thread.ba-core",
    law: Law::Closed("d_r = D - 1.2 * P"),
    gives: symbol(
        "d_r",
        &MM,
        "core diameter of a BA thread, internal and external",
    ),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &BA_PAGES,
        place: "basic form",
    },
    eval: |v| Ok(ba_core(v[0], v[1])),
};

/// Share of the full depth of thread that a hole leaves, percent; see [`BA_DEPTH_SHARE`].
#[must_use]
pub fn ba_depth_share(d_mm: f64, p_mm: f64, hole_mm: f64) -> f64 {
    100.0 * (d_mm - hole_mm) / (1.2 * p_mm)
}

/// Share of the full depth of thread that a hole leaves.
pub static BA_DEPTH_SHARE: Card = Card {
    id: "thread.ba-depth-share",
    law: Law::Closed("q = 100 * (D - d) / (1.2 * P)"),
    gives: symbol("q", &PERCENT, "share of the full depth of thread"),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
        symbol("d", &MM, "hole before tapping"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &BA_PAGES,
        place: "the depth of thread, both sides",
    },
    eval: |v| Ok(ba_depth_share(v[0], v[1], v[2])),
};
