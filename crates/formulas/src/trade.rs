//! Rules of the trade, which a maker may know by heart: evaporation by surface, steam by the
//! swept volume, bores by a share of the grate, the shape of a tube.
//!
//! They are shown beside an answer and never are the answer: none of them knows the bed, the
//! draught or the temperature. Left out: the rules of full-size railway practice by surface and
//! grate, which belong to turbulent tubes.

use std::f64::consts::PI;

use reckoning::formula::{Law, Spread};
use reckoning::quantity::{
    INCH, KG_PER_H, KG_PER_M2_H, KG_PER_M3, KG_PER_S, M2, M3, MM, MM2, ONE, PER_S,
};
use reckoning::{Card, Cite, symbol};

use crate::sources::COMMON_PRACTICE;

const fn practice(place: &'static str) -> Cite {
    Cite {
        source: &COMMON_PRACTICE,
        place,
    }
}

/// Steam in kg/h from a heating surface in m² that makes `s` kg/(m² h).
#[must_use]
pub fn surface_evaporation(s: f64, a: f64) -> f64 {
    s * a
}

/// Card of [`surface_evaporation`].
pub static SURFACE_EVAPORATION: Card = Card {
    id: "trade.surface-evaporation",
    law: Law::Closed("m = s * A"),
    gives: symbol("m", &KG_PER_H, "steam, by the rule of the heating surface"),
    takes: &[
        symbol("s", &KG_PER_M2_H, "steam from a square metre of surface"),
        symbol("A", &M2, "heating surface"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: practice("steam by heating surface"),
    eval: |v| Ok(surface_evaporation(v[0], v[1])),
};

/// Steam in kg/s of an engine that sweeps `v` m³ a stroke with `n` working strokes a second with steam of
/// density `rho` in kg/m³, `k` times over.
#[must_use]
pub fn swept_steam(k: f64, v: f64, n: f64, rho: f64) -> f64 {
    k * v * n * rho
}

/// Card of [`swept_steam`].
pub static SWEPT_STEAM: Card = Card {
    id: "trade.swept-steam",
    law: Law::Closed("m = k * V * n * rho"),
    gives: symbol("m", &KG_PER_S, "steam, by the rule of the swept volume"),
    takes: &[
        symbol("k", &ONE, "allowance of the rule"),
        symbol("V", &M3, "volume swept in a stroke of one end"),
        symbol("n", &PER_S, "working strokes of all ends"),
        symbol("rho", &KG_PER_M3, "density of dry steam in the boiler"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: practice("steam of an engine by its swept volume"),
    eval: |v| Ok(swept_steam(v[0], v[1], v[2], v[3])),
};

/// Bore in mm of a round hole whose area is a share of an area in mm².
#[must_use]
pub fn bore_of_share(s: f64, a: f64) -> f64 {
    (4.0 * s * a / PI).sqrt()
}

/// Card of [`bore_of_share`].
pub static BORE_OF_SHARE: Card = Card {
    id: "trade.bore-of-share",
    law: Law::Closed("d = sqrt(4 * s * A / pi)"),
    gives: symbol("d", &MM, "bore, by a share of the grate"),
    takes: &[
        symbol("s", &ONE, "share of the area of the grate"),
        symbol("A", &MM2, "area of the grate"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: practice("nozzle and choke by the area of the grate"),
    eval: |v| Ok(bore_of_share(v[0], v[1])),
};

/// Length of a tube over the square of its bore, both in inches.
#[must_use]
pub fn tube_shape(l: f64, d: f64) -> f64 {
    l / d.powi(2)
}

/// Card of [`tube_shape`].
pub static TUBE_SHAPE: Card = Card {
    id: "trade.tube-shape",
    law: Law::Closed("q = L / d^2"),
    gives: symbol("q", &ONE, "length over the square of the bore, in inches"),
    takes: &[
        symbol("L", &INCH, "length of a tube"),
        symbol("d", &INCH, "bore of a tube"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: practice("shape of a fire tube"),
    eval: |v| Ok(tube_shape(v[0], v[1])),
};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &SURFACE_EVAPORATION,
    &SWEPT_STEAM,
    &BORE_OF_SHARE,
    &TUBE_SHAPE,
];
