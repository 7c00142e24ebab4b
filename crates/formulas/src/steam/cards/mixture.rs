//! Cards of wet steam, which follow from the balance of mass and of energy alone.

use super::domain::refused;
use crate::sources::DERIVED;
use crate::steam::{dryness, wet_density};
use reckoning::quantity::{KG_PER_M3, KJ_PER_KG, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// Density of wet steam.
pub static WET_DENSITY: Card = Card {
    id: "steam.wet-density",
    law: Law::Closed("rho = 1 / (1 / rho_l + x * (1 / rho_g - 1 / rho_l))"),
    gives: symbol("rho", &KG_PER_M3, "density of the mixture"),
    takes: &[
        symbol("rho_l", &KG_PER_M3, "density of saturated water"),
        symbol("rho_g", &KG_PER_M3, "density of saturated steam"),
        symbol("x", &ONE, "dryness"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "the volumes of the phases add",
    },
    eval: |v| {
        if !(0.0..=1.0).contains(&v[2]) {
            let why = "a share lies between 0 and 1";
            return Err(refused("steam.wet-density", "x", v[2], why));
        }
        Ok(wet_density(v[0], v[1], v[2]))
    },
};

/// Dryness from enthalpies.
pub static DRYNESS: Card = Card {
    id: "steam.dryness",
    law: Law::Closed("x = (h - h_l) / (h_g - h_l)"),
    gives: symbol("x", &ONE, "dryness"),
    takes: &[
        symbol("h", &KJ_PER_KG, "specific enthalpy of the mixture"),
        symbol("h_l", &KJ_PER_KG, "specific enthalpy of saturated water"),
        symbol("h_g", &KJ_PER_KG, "specific enthalpy of saturated steam"),
    ],
    limits: &[Limit::within("x", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "the enthalpies of the phases add",
    },
    eval: |v| Ok(dryness(v[0], v[1], v[2])),
};
