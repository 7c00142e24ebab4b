//! The lift of a hot column and the flow through a hole, from hydrostatics and from the
//! discharge law of a sharp opening. Left out: compressibility, which is below one part in a
//! thousand at the pressures of a draught.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{KG_PER_M3, KG_PER_S, M, M2, ONE, PA, STANDARD_GRAVITY};
use reckoning::{Card, Cite, symbol};

use crate::sources::{COMMON_PRACTICE, DERIVED};

/// Pressure that a column of hot gas of height `h` lacks against the air beside it.
#[must_use]
pub fn buoyancy(h: f64, rho_a: f64, rho_g: f64) -> f64 {
    STANDARD_GRAVITY * h * (rho_a - rho_g)
}

/// Card of [`buoyancy`].
pub static BUOYANCY: Card = Card {
    id: "draught.buoyancy",
    law: Law::Closed("dp = g_n * H * (rho_a - rho_g)"),
    gives: symbol("dp", &PA, "lift of the hot column"),
    takes: &[
        symbol("H", &M, "height of the hot column"),
        symbol("rho_a", &KG_PER_M3, "density of the air outside"),
        symbol("rho_g", &KG_PER_M3, "density of the gas in the column"),
    ],
    limits: &[Limit::at_least("rho_g", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "hydrostatics of two columns",
    },
    eval: |v| Ok(buoyancy(v[0], v[1], v[2])),
};

/// Mass flow through a hole of area `a` under a small pressure difference.
#[must_use]
pub fn orifice_flow(c_d: f64, a: f64, rho: f64, dp: f64) -> f64 {
    c_d * a * (2.0 * rho * dp).sqrt()
}

/// Card of [`orifice_flow`].
pub static ORIFICE_FLOW: Card = Card {
    id: "draught.orifice-flow",
    law: Law::Closed("m = C_d * A * sqrt(2 * rho * dp)"),
    gives: symbol("m", &KG_PER_S, "flow through the hole"),
    takes: &[
        symbol("C_d", &ONE, "discharge coefficient"),
        symbol("A", &M2, "area of the hole"),
        symbol("rho", &KG_PER_M3, "density before the hole"),
        symbol("dp", &PA, "pressure difference"),
    ],
    limits: &[
        Limit::within("C_d", 0.5, 1.0),
        Limit::within("dp", 0.0, 5e3),
    ],
    spread: Spread::Percent(5.0),
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "discharge of a hole at small pressure difference",
    },
    eval: |v| Ok(orifice_flow(v[0], v[1], v[2], v[3])),
};

/// Pressure that the flow `m` through a hole of area `a` takes.
#[must_use]
pub fn opening_loss(m: f64, rho: f64, c_d: f64, a: f64) -> f64 {
    m * m / (2.0 * rho * (c_d * a).powi(2))
}

/// Card of [`opening_loss`], the law of [`ORIFICE_FLOW`] turned round.
pub static OPENING_LOSS: Card = Card {
    id: "draught.opening-loss",
    law: Law::Closed("dp = m^2 / (2 * rho * (C_d * A)^2)"),
    gives: symbol("dp", &PA, "pressure that the opening takes"),
    takes: &[
        symbol("m", &KG_PER_S, "flow through the opening"),
        symbol("rho", &KG_PER_M3, "density before the opening"),
        symbol("C_d", &ONE, "discharge coefficient"),
        symbol("A", &M2, "area of the opening"),
    ],
    limits: &[
        Limit::within("C_d", 0.5, 1.0),
        Limit::within("dp", 0.0, 5e3),
    ],
    spread: Spread::Percent(10.0),
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "discharge of a hole at small pressure difference",
    },
    eval: |v| Ok(opening_loss(v[0], v[1], v[2], v[3])),
};
