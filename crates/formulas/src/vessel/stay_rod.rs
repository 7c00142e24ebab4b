//! Family `rod`: solid and hollow stays, and the bending of a stay across a water leg.
//!
//! Source: statics and the theory of beams. Screwed stays and girders are left out.

use super::positive;
use crate::sources::DERIVED;
use reckoning::quantity::{KELVIN_RISE, MM, MM2, MPA, MPA_GAUGE, NEWTON, ONE, PER_K};
use reckoning::{Card, Cite, Law, Spread, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[&LOAD, &SECTION, &STRESS, &GROWTH, &BENDING_STRAIN];

const NOTHING: &str = "there must be a stay and a load";

/// Load of a stay; see [`LOAD`].
#[must_use]
pub fn load(p_mpa: f64, a_mm2: f64, d_mm: f64) -> f64 {
    p_mpa * (a_mm2 - PI / 4.0 * d_mm * d_mm)
}

/// Pressure on the plate that a stay holds, less the stay.
pub static LOAD: Card = Card {
    id: "rod.load",
    law: Law::Closed("F = P * (A - pi / 4 * d^2)"),
    gives: symbol("F", &NEWTON, "load on the stay"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("A", &MM2, "plate that hangs on the stay"),
        symbol("d", &MM, "diameter of the stay"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "pressure over area",
    },
    eval: |v| {
        let r = load(v[0], v[1], v[2]);
        positive(r, LOAD.id, ("A", v[1]), NOTHING)
    },
};

/// Section of a stay; see [`SECTION`].
#[must_use]
pub fn section(d_mm: f64, b_mm: f64) -> f64 {
    PI / 4.0 * (d_mm * d_mm - b_mm * b_mm)
}

/// Cross-section of a stay with a bore, or none.
pub static SECTION: Card = Card {
    id: "rod.section",
    law: Law::Closed("A = pi / 4 * (d^2 - b^2)"),
    gives: symbol("A", &MM2, "cross-section of the stay"),
    takes: &[
        symbol("d", &MM, "diameter of the stay"),
        symbol("b", &MM, "bore of the stay"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a tube",
    },
    eval: |v| {
        let r = section(v[0], v[1]);
        positive(r, SECTION.id, ("d", v[0]), NOTHING)
    },
};

/// Stress of a stay; see [`STRESS`].
#[must_use]
pub fn stress(f_n: f64, a_mm2: f64) -> f64 {
    f_n / a_mm2
}

/// Stress along a stay.
pub static STRESS: Card = Card {
    id: "rod.stress",
    law: Law::Closed("sigma = F / A"),
    gives: symbol("sigma", &MPA, "stress along the stay"),
    takes: &[
        symbol("F", &NEWTON, "load on the stay"),
        symbol("A", &MM2, "cross-section of the stay"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "load over section",
    },
    eval: |v| {
        let r = stress(v[0], v[1]);
        positive(r, STRESS.id, ("A", v[1]), NOTHING)
    },
};

/// Growth of a firebox past its shell; see [`GROWTH`].
#[must_use]
pub fn growth(alpha: f64, dt_k: f64, h_mm: f64) -> f64 {
    alpha * dt_k * h_mm
}

/// How far the firebox grows past the shell at a height above the foundation ring.
pub static GROWTH: Card = Card {
    id: "rod.growth",
    law: Law::Closed("delta = alpha * dT * H"),
    gives: symbol("delta", &MM, "growth of the firebox past the shell"),
    takes: &[
        symbol("alpha", &PER_K, "expansion"),
        symbol("dT", &KELVIN_RISE, "firebox over shell"),
        symbol("H", &MM, "height above the foundation ring"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "free expansion",
    },
    eval: |v| Ok(growth(v[0], v[1], v[2])),
};

/// Bending strain of a stay across a leg; see [`BENDING_STRAIN`].
#[must_use]
pub fn bending_strain(d_mm: f64, delta_mm: f64, l_mm: f64) -> f64 {
    3.0 * d_mm * delta_mm / (l_mm * l_mm)
}

/// Strain at the ends of a stay that are held and pushed aside.
pub static BENDING_STRAIN: Card = Card {
    id: "rod.bending-strain",
    law: Law::Closed("eps = 3 * d * delta / L^2"),
    gives: symbol("eps", &ONE, "bending strain of the stay"),
    takes: &[
        symbol("d", &MM, "diameter of the stay"),
        symbol("delta", &MM, "growth of the firebox past the shell"),
        symbol("L", &MM, "free length, the width of the leg"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "beam held at both ends and swayed",
    },
    eval: |v| {
        let r = bending_strain(v[0], v[1], v[2]);
        positive(r, BENDING_STRAIN.id, ("L", v[2]), NOTHING)
    },
};
