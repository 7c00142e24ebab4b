//! The 60 degree metric form (ISO 68-1, basic sizes ISO 261), from memory.
//!
//! The root is that of the classic form (17/24 of the sharp height); a root cut to a flat is less
//! deep. Tolerances are left out: sizes are basic.

use reckoning::quantity::{MM, PERCENT};
use reckoning::{Card, Cite, Law, Spread, symbol};

use crate::sources::{ISO_68_1, MACHINERYS_HANDBOOK_31};

/// Effective diameter of a metric thread, mm; see [`METRIC_EFFECTIVE`].
#[must_use]
pub fn metric_effective(d_mm: f64, p_mm: f64) -> f64 {
    d_mm - 0.649_519 * p_mm
}

/// Effective diameter of a metric thread.
pub static METRIC_EFFECTIVE: Card = Card {
    id: "thread.metric-effective",
    law: Law::Closed("d_e = D - 0.649519 * P"),
    gives: symbol("d_e", &MM, "effective diameter of a metric thread"),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &ISO_68_1,
        place: "basic profile",
    },
    eval: |v| Ok(metric_effective(v[0], v[1])),
};

/// Root diameter of an external metric thread, mm; see [`METRIC_ROOT`].
#[must_use]
pub fn metric_root(d_mm: f64, p_mm: f64) -> f64 {
    d_mm - 1.226_869 * p_mm
}

/// Root diameter of an external metric thread.
pub static METRIC_ROOT: Card = Card {
    id: "thread.metric-root",
    law: Law::Closed("d_r = D - 1.226869 * P"),
    gives: symbol("d_r", &MM, "root diameter of an external metric thread"),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &ISO_68_1,
        place: "basic profile",
    },
    eval: |v| Ok(metric_root(v[0], v[1])),
};

/// Basic minor diameter of an internal metric thread, mm; see [`METRIC_INTERNAL_MINOR`].
#[must_use]
pub fn metric_internal_minor(d_mm: f64, p_mm: f64) -> f64 {
    d_mm - 1.082_532 * p_mm
}

/// Basic minor diameter of an internal metric thread.
pub static METRIC_INTERNAL_MINOR: Card = Card {
    id: "thread.metric-internal-minor",
    law: Law::Closed("d_i = D - 1.082532 * P"),
    gives: symbol(
        "d_i",
        &MM,
        "basic minor diameter of an internal metric thread",
    ),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &ISO_68_1,
        place: "basic profile",
    },
    eval: |v| Ok(metric_internal_minor(v[0], v[1])),
};

/// Share of the full depth of thread that a hole leaves, percent; see [`METRIC_DEPTH_SHARE`].
#[must_use]
pub fn metric_depth_share(d_mm: f64, p_mm: f64, hole_mm: f64) -> f64 {
    100.0 * (d_mm - hole_mm) / (1.299_038 * p_mm)
}

/// Share of the full depth of thread that a hole leaves.
pub static METRIC_DEPTH_SHARE: Card = Card {
    id: "thread.metric-depth-share",
    law: Law::Closed("q = 100 * (D - d) / (1.299038 * P)"),
    gives: symbol("q", &PERCENT, "share of the full depth of thread"),
    takes: &[
        symbol("D", &MM, "major diameter"),
        symbol("P", &MM, "pitch"),
        symbol("d", &MM, "hole before tapping"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &MACHINERYS_HANDBOOK_31,
        place: "page 2155, 1.299 over the threads in an inch",
    },
    eval: |v| Ok(metric_depth_share(v[0], v[1], v[2])),
};
