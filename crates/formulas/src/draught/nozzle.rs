//! Steam through the blast nozzle at the low back pressure of an exhaust.
//!
//! The steam is taken at the density it has after expansion, which holds while the back
//! pressure stays below 0.3 bar; the limit is evaluated. The coefficient stands in both places:
//! the jet is narrower than the hole, and faster than the mean speed over the hole.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{KG_PER_M3, KG_PER_S, M_PER_S, M2, ONE, PA};
use reckoning::{Card, Cite, symbol};

use crate::sources::DERIVED;

/// Speed of the exhaust jet of flow `m` from nozzles of area `a_n` in all.
#[must_use]
pub fn blast_speed(m: f64, c: f64, a_n: f64, rho_s: f64) -> f64 {
    m / (c * a_n * rho_s)
}

/// Card of [`blast_speed`].
pub static BLAST_SPEED: Card = Card {
    id: "draught.blast-speed",
    law: Law::Closed("u_s = m / (C * A_n * rho_s)"),
    gives: symbol("u_s", &M_PER_S, "speed of the exhaust jet"),
    takes: &[
        symbol("m", &KG_PER_S, "exhaust steam"),
        symbol("C", &ONE, "nozzle coefficient"),
        symbol("A_n", &M2, "bore area of the blast nozzle"),
        symbol("rho_s", &KG_PER_M3, "density of the expanded steam"),
    ],
    limits: &[Limit::within("C", 0.8, 1.0), Limit::at_most("u_s", 450.0)],
    spread: Spread::Percent(1.0),
    cite: Cite {
        source: &DERIVED,
        place: "continuity at the density after expansion",
    },
    eval: |v| Ok(blast_speed(v[0], v[1], v[2], v[3])),
};

/// Pressure above the smokebox that the exhaust needs to reach the speed `u_s`.
#[must_use]
pub fn blast_back_pressure(rho_s: f64, u_s: f64, c: f64) -> f64 {
    rho_s * (u_s / c).powi(2) / 2.0
}

/// Card of [`blast_back_pressure`].
pub static BLAST_BACK_PRESSURE: Card = Card {
    id: "draught.blast-back-pressure",
    law: Law::Closed("dp = rho_s * (u_s / C)^2 / 2"),
    gives: symbol("dp", &PA, "back pressure of the blast nozzle"),
    takes: &[
        symbol("rho_s", &KG_PER_M3, "density of the expanded steam"),
        symbol("u_s", &M_PER_S, "speed of the exhaust jet"),
        symbol("C", &ONE, "nozzle coefficient"),
    ],
    limits: &[Limit::within("C", 0.8, 1.0), Limit::at_most("dp", 3e4)],
    spread: Spread::Percent(7.0),
    cite: Cite {
        source: &DERIVED,
        place: "Bernoulli's law at the density after expansion",
    },
    eval: |v| Ok(blast_back_pressure(v[0], v[1], v[2])),
};
