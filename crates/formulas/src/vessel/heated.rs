//! Family `heated`: what heat through a wall does to it.
//!
//! Source: conduction through a thin plate, and the theory of elasticity. Thick tubes are left out:
//! at the walls of small coils the two differ by less than their conductivities are known.

use super::positive;
use crate::sources::{ASME_VIII_2, DERIVED, STRESS_FORMULAS_7};
use reckoning::quantity::{KELVIN_RISE, KW_PER_M2, MM, MPA, ONE, PER_K, W_PER_M_K};
use reckoning::{Card, Cite, Law, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&RISE, &STRESS, &TOGETHER, &RANGE];

const NOTHING: &str = "there must be a wall, and heat through it";

/// Temperature across a wall; see [`RISE`].
#[must_use]
pub fn rise(q_kw_m2: f64, t_mm: f64, k_w_m_k: f64) -> f64 {
    q_kw_m2 * t_mm / k_w_m_k
}

/// Temperature across a thin wall that heat passes.
pub static RISE: Card = Card {
    id: "heated.rise",
    law: Law::Closed("dT = q * t / k"),
    gives: symbol("dT", &KELVIN_RISE, "temperature across the wall"),
    takes: &[
        symbol("q", &KW_PER_M2, "heat through the wall"),
        symbol("t", &MM, "wall"),
        symbol("k", &W_PER_M_K, "conductivity of the metal"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "conduction through a plate",
    },
    eval: |v| positive(rise(v[0], v[1], v[2]), RISE.id, ("k", v[2]), NOTHING),
};

/// Thermal stress of a thin wall; see [`STRESS`].
#[must_use]
pub fn stress(e_mpa: f64, alpha_per_k: f64, rise_k: f64, nu: f64) -> f64 {
    e_mpa * alpha_per_k * rise_k / (2.0 * (1.0 - nu))
}

/// Thermal stress at the faces of a thin wall that is kept flat or round.
pub static STRESS: Card = Card {
    id: "heated.stress",
    law: Law::Closed("sigma = E * alpha * dT / (2 * (1 - nu))"),
    gives: symbol("sigma", &MPA, "stress of the two faces"),
    takes: &[
        symbol("E", &MPA, "modulus of elasticity"),
        symbol("alpha", &PER_K, "expansion"),
        symbol("dT", &KELVIN_RISE, "temperature across the wall"),
        symbol("nu", &ONE, "ratio of lateral to axial strain"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &STRESS_FORMULAS_7,
        place: "thermal stresses, plate with its edges held from turning",
    },
    eval: |v| {
        positive(
            stress(v[0], v[1], v[2], v[3]),
            STRESS.id,
            ("nu", v[3]),
            NOTHING,
        )
    },
};

/// Stress of pressure and heat together; see [`TOGETHER`].
#[must_use]
pub fn together(pressure_mpa: f64, heat_mpa: f64) -> f64 {
    pressure_mpa + heat_mpa
}

/// Stress of pressure and heat, at the face where they add.
pub static TOGETHER: Card = Card {
    id: "heated.together",
    law: Law::Closed("sigma_s = sigma_p + sigma_t"),
    gives: symbol("sigma_s", &MPA, "stress of pressure and heat together"),
    takes: &[
        symbol("sigma_p", &MPA, "stress of the pressure"),
        symbol("sigma_t", &MPA, "stress of the heat"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "sum at the worse face",
    },
    eval: |v| {
        positive(
            together(v[0], v[1]),
            TOGETHER.id,
            ("sigma_p", v[0]),
            NOTHING,
        )
    },
};

/// Range allowed for pressure and heat; see [`RANGE`].
#[must_use]
pub fn range(f_mpa: f64) -> f64 {
    3.0 * f_mpa
}

/// Range of primary and secondary stress allowed.
pub static RANGE: Card = Card {
    id: "heated.range",
    law: Law::Closed("sigma_a = 3 * f"),
    gives: symbol("sigma_a", &MPA, "stress range allowed"),
    takes: &[symbol("f", &MPA, "design stress")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.1.6, primary and secondary stress range",
    },
    eval: |v| positive(range(v[0]), RANGE.id, ("f", v[0]), NOTHING),
};
