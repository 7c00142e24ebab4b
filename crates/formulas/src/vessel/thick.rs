//! Family `thick`: hoop stress of a tube whatever its wall.
//!
//! Source: the theory of elasticity (Lamé), from memory. External pressure is left out: there
//! buckling governs.

use super::positive;
use crate::sources::STRESS_FORMULAS_7;
use reckoning::quantity::{MM, MPA, MPA_GAUGE};
use reckoning::{Card, Cite, Law, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&HOOP];

const NOTHING: &str = "there must be a wall";

/// Hoop stress at the bore of a tube; see [`HOOP`].
#[must_use]
pub fn hoop(p_mpa: f64, d_o_mm: f64, d_i_mm: f64) -> f64 {
    p_mpa * (d_o_mm * d_o_mm + d_i_mm * d_i_mm) / (d_o_mm * d_o_mm - d_i_mm * d_i_mm)
}

/// Hoop stress at the bore of a tube with pressure inside.
pub static HOOP: Card = Card {
    id: "thick.hoop",
    law: Law::Closed("sigma = P * (D_o^2 + D_i^2) / (D_o^2 - D_i^2)"),
    gives: symbol("sigma", &MPA, "hoop stress at the bore"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure inside, gauge"),
        symbol("D_o", &MM, "outside diameter"),
        symbol("D_i", &MM, "bore"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &STRESS_FORMULAS_7,
        place: "table 13.5, thick cylinder under internal pressure",
    },
    eval: |v| positive(hoop(v[0], v[1], v[2]), HOOP.id, ("D_o", v[1]), NOTHING),
};
