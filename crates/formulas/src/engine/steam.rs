//! The steam that an engine takes, and the heat that it loses between stop valve and exhaust.
//! Dry saturated densities are used; thinner superheated steam is not credited.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{G_PER_S, GRAM, J_PER_KG, KG_PER_M3, KG_PER_S, LITRE, ONE, PER_S, WATT};
use reckoning::{Card, Cite, symbol};

use crate::sources::DERIVED;

/// State of the steam at cut-off and at the start of compression, with the diagram's shares.
#[derive(Clone, Copy, Debug)]
pub struct Charge {
    /// Density of dry steam at admission.
    pub rho_1: f64,
    /// Density of dry steam at the start of compression.
    pub rho_x: f64,
    /// Cut-off as a share of the stroke.
    pub r: f64,
    /// Clearance over stroke volume.
    pub c: f64,
    /// Share of the return stroke during which the steam is compressed.
    pub q: f64,
}

/// Steam that the diagram accounts for in one stroke of volume `v`; kg/m³ and litres give grams.
#[must_use]
pub fn steam_per_stroke(charge: &Charge, v: f64) -> f64 {
    charge.rho_1 * (charge.r + charge.c) * v - charge.rho_x * (charge.q + charge.c) * v
}

/// Card of [`steam_per_stroke`].
pub static STEAM_PER_STROKE: Card = Card {
    id: "engine.steam-per-stroke",
    law: Law::Closed("m_i = rho_1 * (r + c) * V - rho_x * (q + c) * V"),
    gives: symbol(
        "m_i",
        &GRAM,
        "steam accounted for by the diagram in a stroke",
    ),
    takes: &[
        symbol("rho_1", &KG_PER_M3, "density of dry steam at admission"),
        symbol(
            "rho_x",
            &KG_PER_M3,
            "density of dry steam at the start of compression",
        ),
        symbol("r", &ONE, "cut-off as a share of the stroke"),
        symbol("c", &ONE, "clearance over stroke volume"),
        symbol("q", &ONE, "compression as a share of the stroke"),
        symbol("V", &LITRE, "stroke volume of one end"),
    ],
    limits: &[Limit::at_least("m_i", 0.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "filling of the cylinder less what compression keeps back",
    },
    eval: |v| {
        let charge = Charge {
            rho_1: v[0],
            rho_x: v[1],
            r: v[2],
            c: v[3],
            q: v[4],
        };
        Ok(steam_per_stroke(&charge, v[5]))
    },
};

/// Steam supplied: what the diagram accounts for and the missing quantity beside it.
#[must_use]
pub fn steam_flow(m_i: f64, mu: f64, n: f64) -> f64 {
    m_i * (1.0 + mu) * n
}

/// Card of [`steam_flow`].
pub static STEAM_FLOW: Card = Card {
    id: "engine.steam-flow",
    law: Law::Closed("m = m_i * (1 + mu) * n"),
    gives: symbol("m", &G_PER_S, "steam supplied to the engine"),
    takes: &[
        symbol(
            "m_i",
            &GRAM,
            "steam accounted for by the diagram in a stroke",
        ),
        symbol("mu", &ONE, "missing quantity over the indicated steam"),
        symbol("n", &PER_S, "working strokes in a second"),
    ],
    limits: &[Limit::within("mu", 0.0, 1.5)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "definition of the missing quantity",
    },
    eval: |v| Ok(steam_flow(v[0], v[1], v[2])),
};

/// Heat that the engine loses to its surroundings.
#[must_use]
pub fn heat_lost(m: f64, h_in: f64, h_ex: f64, p_i: f64) -> f64 {
    m * (h_in - h_ex) - p_i
}

/// Card of [`heat_lost`].
pub static HEAT_LOST: Card = Card {
    id: "engine.heat-lost",
    law: Law::Closed("Q = m * (h_in - h_ex) - P_i"),
    gives: symbol("Q", &WATT, "heat lost by the engine"),
    takes: &[
        symbol("m", &KG_PER_S, "steam supplied to the engine"),
        symbol("h_in", &J_PER_KG, "enthalpy of the steam supplied"),
        symbol("h_ex", &J_PER_KG, "enthalpy of the exhaust"),
        symbol("P_i", &WATT, "indicated power"),
    ],
    limits: &[Limit::at_least("Q", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "first law for the engine",
    },
    eval: |v| Ok(heat_lost(v[0], v[1], v[2], v[3])),
};
