//! Family `bush`: the braze of a bush against push-out and against the spanner.
//!
//! Source: statics. The flange of a bush, in bearing, is not counted.

use super::positive;
use crate::sources::DERIVED;
use reckoning::quantity::{MM, MPA, MPA_GAUGE, N_MM};
use reckoning::{Card, Cite, Law, Spread, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[&PUSH_OUT, &TORQUE];

const NOTHING: &str = "there must be a braze";

/// Push on the braze of a bush; see [`PUSH_OUT`].
#[must_use]
pub fn push_out(p_mpa: f64, d_mm: f64, t_mm: f64) -> f64 {
    p_mpa * d_mm / (4.0 * t_mm)
}

/// Shear in the braze of a bush that pressure pushes out.
pub static PUSH_OUT: Card = Card {
    id: "bush.push-out",
    law: Law::Closed("tau = P * d / (4 * t)"),
    gives: symbol("tau", &MPA, "shear in the braze"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("d", &MM, "diameter of the bush in the wall"),
        symbol("t", &MM, "wall"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "pressure on the bush over its braze",
    },
    eval: |v| {
        let r = push_out(v[0], v[1], v[2]);
        positive(r, PUSH_OUT.id, ("t", v[2]), NOTHING)
    },
};

/// Torque that a braze bears; see [`TORQUE`].
#[must_use]
pub fn torque(tau_mpa: f64, d_mm: f64, t_mm: f64) -> f64 {
    tau_mpa * PI / 2.0 * d_mm * d_mm * t_mm
}

/// Torque that the braze of a bush bears at a shear.
pub static TORQUE: Card = Card {
    id: "bush.torque",
    law: Law::Closed("T = tau * pi / 2 * d^2 * t"),
    gives: symbol("T", &N_MM, "torque that the braze bears"),
    takes: &[
        symbol("tau", &MPA, "shear allowed"),
        symbol("d", &MM, "diameter of the bush in the wall"),
        symbol("t", &MM, "wall"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "shear on a thin cylinder",
    },
    eval: |v| {
        let r = torque(v[0], v[1], v[2]);
        positive(r, TORQUE.id, ("tau", v[0]), NOTHING)
    },
};
