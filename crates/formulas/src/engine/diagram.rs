//! The hyperbolic indicator diagram with clearance and compression. Left out: lead, release
//! before the end of the stroke, and the rounding of corners; the diagram factor carries them.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{KPA, KPA_ABSOLUTE, LITRE, ONE, PER_S, WATT};
use reckoning::{Card, Cite, symbol};

use crate::sources::{DERIVED, STEAM_ENGINES_1911};

/// What the diagram follows from; pressures absolute and in one unit.
#[derive(Clone, Copy, Debug)]
pub struct Diagram {
    /// Pressure at admission.
    pub p_1: f64,
    /// Back pressure.
    pub p_b: f64,
    /// Cut-off as a share of the stroke.
    pub r: f64,
    /// Clearance over stroke volume.
    pub c: f64,
    /// Share of the return stroke during which the steam is compressed.
    pub q: f64,
}

/// Mean effective pressure of the hyperbolic diagram, in the unit of its pressures.
#[must_use]
pub fn mean_effective_pressure(d: &Diagram) -> f64 {
    d.p_1 * expanded_share(d.r, d.c) - d.p_b * returned_share(d.q, d.c)
}

/// Mean pressure of the working stroke over that of admission.
pub(super) fn expanded_share(r: f64, c: f64) -> f64 {
    r + (r + c) * ((1.0 + c) / (r + c)).ln()
}

/// Mean pressure of the return stroke over the back pressure.
pub(super) fn returned_share(q: f64, c: f64) -> f64 {
    (1.0 - q) + (q + c) * ((q + c) / c).ln()
}

/// Card of [`mean_effective_pressure`].
pub static MEAN_EFFECTIVE_PRESSURE: Card = Card {
    id: "engine.mean-effective-pressure",
    law: Law::Closed(
        "p_m = p_1 * (r + (r + c) * ln((1 + c) / (r + c))) \
         - p_b * ((1 - q) + (q + c) * ln((q + c) / c))",
    ),
    gives: symbol("p_m", &KPA, "mean effective pressure of the diagram"),
    takes: &[
        symbol("p_1", &KPA_ABSOLUTE, "pressure at admission"),
        symbol("p_b", &KPA_ABSOLUTE, "back pressure"),
        symbol("r", &ONE, "cut-off as a share of the stroke"),
        symbol("c", &ONE, "clearance over stroke volume"),
        symbol("q", &ONE, "compression as a share of the stroke"),
    ],
    limits: &[
        Limit::within("r", 0.05, 1.0),
        Limit::within("c", 0.01, 0.3),
        Limit::within("q", 0.0, 0.5),
    ],
    spread: Spread::Unstated,
    cite: Cite {
        source: &STEAM_ENGINES_1911,
        place: "table of mean pressure against cut-off; the compression term is derived",
    },
    eval: |v| {
        Ok(mean_effective_pressure(&Diagram {
            p_1: v[0],
            p_b: v[1],
            r: v[2],
            c: v[3],
            q: v[4],
        }))
    },
};

/// Pressure at the end of compression, in the unit of `p_b`.
#[must_use]
pub fn compression_pressure(p_b: f64, q: f64, c: f64) -> f64 {
    p_b * (q + c) / c
}

/// Card of [`compression_pressure`].
pub static COMPRESSION_PRESSURE: Card = Card {
    id: "engine.compression-pressure",
    law: Law::Closed("p_c = p_b * (q + c) / c"),
    gives: symbol("p_c", &KPA_ABSOLUTE, "pressure at the end of compression"),
    takes: &[
        symbol("p_b", &KPA_ABSOLUTE, "back pressure"),
        symbol("q", &ONE, "compression as a share of the stroke"),
        symbol("c", &ONE, "clearance over stroke volume"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "hyperbolic compression into the clearance",
    },
    eval: |v| Ok(compression_pressure(v[0], v[1], v[2])),
};

/// Indicated power from the mean effective pressure, the diagram factor, the stroke volume and
/// the strokes in a second; kPa and litres give watts.
#[must_use]
pub fn indicated_power(phi: f64, p_m: f64, v: f64, n: f64) -> f64 {
    phi * p_m * v * n
}

/// Card of [`indicated_power`].
pub static INDICATED_POWER: Card = Card {
    id: "engine.indicated-power",
    law: Law::Closed("P_i = phi * p_m * V * n"),
    gives: symbol("P_i", &WATT, "indicated power"),
    takes: &[
        symbol("phi", &ONE, "diagram factor"),
        symbol("p_m", &KPA, "mean effective pressure of the diagram"),
        symbol("V", &LITRE, "stroke volume of one end"),
        symbol("n", &PER_S, "working strokes in a second"),
    ],
    limits: &[Limit::within("phi", 0.5, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "work of the diagram",
    },
    eval: |v| Ok(indicated_power(v[0], v[1], v[2], v[3])),
};
