//! Steam that condenses on the walls of a cylinder: a wall whose surface is swung between hot and
//! cold once a turn behind a film of condensing steam.
//!
//! The surface follows the steam by a share that the film and the wall settle between them; what
//! the wall takes in during admission is condensed there and leaves with the exhaust. Left out:
//! water that stays in the cylinder, cold starts, and jackets.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{
    J_PER_KG, J_PER_KG_K, JOULE, KELVIN, KELVIN_RISE, KG, KG_PER_M3, M, M2, ONE, PER_S, W_PER_M_K,
    W_PER_M2_K,
};
use reckoning::{Card, Cite, Symbol, symbol};
use std::f64::consts::PI;

use crate::sources::{COMMON_PRACTICE, DERIVED};

/// A wall that is heated and cooled once a turn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SwungWall {
    /// Conductivity, W/(m K).
    pub k: f64,
    /// Density, kg/m³.
    pub rho: f64,
    /// Specific heat, J/(kg K).
    pub c: f64,
    /// Turns in a second.
    pub turns: f64,
}

/// Swing of the surface over that of the steam, for a film coefficient in W/(m² K).
#[must_use]
pub fn wall_share(wall: &SwungWall, film: f64) -> f64 {
    let b = (wall.k * wall.rho * wall.c * PI * wall.turns).sqrt() / film;
    0.5 / (1.0 + 2.0 * b + 2.0 * b * b).sqrt()
}

const K: Symbol = symbol("k", &W_PER_M_K, "conductivity of the wall");
const RHO: Symbol = symbol("rho", &KG_PER_M3, "density of the wall");
const C: Symbol = symbol("c", &J_PER_KG_K, "specific heat of the wall");
const N: Symbol = symbol("N", &PER_S, "turns of the crankshaft in a second");
const PERIODIC: Cite = Cite {
    source: &DERIVED,
    place: "conduction into a thick wall whose surface swings once a turn behind a film",
};

/// Card of [`wall_share`].
pub static WALL_SHARE: Card = Card {
    id: "engine.wall-share",
    law: Law::Closed("b = sqrt(k * rho * c * pi * N) / h; phi = 0.5 / sqrt(1 + 2 * b + 2 * b^2)"),
    gives: symbol("phi", &ONE, "swing of the surface over that of the steam"),
    takes: &[
        K,
        RHO,
        C,
        N,
        symbol("h", &W_PER_M2_K, "film coefficient of condensing steam"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: PERIODIC,
    eval: |v| {
        let wall = SwungWall {
            k: v[0],
            rho: v[1],
            c: v[2],
            turns: v[3],
        };
        Ok(wall_share(&wall, v[4]))
    },
};

/// Surface of one end of a cylinder that the steam meets up to cut-off, of bore `d` and stroke
/// `s`: cover and piston, ports as a share `e` of both, and the wall uncovered.
#[must_use]
pub fn wall_area(d: f64, s: f64, e: f64, r: f64) -> f64 {
    PI / 2.0 * d * d * (1.0 + e) + PI * d * s * r
}

/// Card of [`wall_area`].
pub static WALL_AREA: Card = Card {
    id: "engine.wall-area",
    law: Law::Closed("A_c = pi / 2 * D^2 * (1 + e) + pi * D * S * r"),
    gives: symbol("A_c", &M2, "surface that the steam meets up to cut-off"),
    takes: &[
        symbol("D", &M, "bore of the cylinder"),
        symbol("S", &M, "stroke"),
        symbol(
            "e",
            &ONE,
            "surface of the ports over that of cover and piston",
        ),
        symbol("r", &ONE, "cut-off as a share of the stroke"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "surface of a short cylinder with its ports",
    },
    eval: |v| Ok(wall_area(v[0], v[1], v[2], v[3])),
};

/// Heat that a wall of area `a` takes in from one admission, J, where its surface swings by a
/// share of the difference between the steam that comes and the steam that goes, K.
#[must_use]
pub fn wall_heat(phi: f64, swing_k: f64, a: f64, wall: &SwungWall) -> f64 {
    2.0 * phi * swing_k * a * (wall.k * wall.rho * wall.c / (2.0 * PI * wall.turns)).sqrt()
}

/// Card of [`wall_heat`].
pub static WALL_HEAT: Card = Card {
    id: "engine.wall-heat",
    law: Law::Closed("Q_c = 2 * phi * (T_1 - T_b) * A_c * sqrt(k * rho * c / (2 * pi * N))"),
    gives: symbol(
        "Q_c",
        &JOULE,
        "heat that the wall takes in from one admission",
    ),
    takes: &[
        symbol("phi", &ONE, "swing of the surface over that of the steam"),
        symbol("T_1", &KELVIN, "temperature of the steam admitted"),
        symbol("T_b", &KELVIN, "temperature of the steam exhausted"),
        symbol("A_c", &M2, "surface that the steam meets up to cut-off"),
        K,
        RHO,
        C,
        N,
    ],
    limits: &[Limit::at_least("T_1 - T_b", 0.0)],
    spread: Spread::Unstated,
    cite: PERIODIC,
    eval: |v| {
        let wall = SwungWall {
            k: v[4],
            rho: v[5],
            c: v[6],
            turns: v[7],
        };
        Ok(wall_heat(v[0], v[1] - v[2], v[3], &wall))
    },
};

/// Share of the condensation that is left with superheated steam.
#[must_use]
pub fn superheat_relief(superheat: f64) -> f64 {
    0.5_f64.powf(superheat / 50.0)
}

/// Card of [`superheat_relief`].
pub static SUPERHEAT_RELIEF: Card = Card {
    id: "engine.superheat-relief",
    law: Law::Closed("f = 0.5^(dT / 50)"),
    gives: symbol("f", &ONE, "condensation over that with saturated steam"),
    takes: &[symbol("dT", &KELVIN_RISE, "superheat at the engine")],
    limits: &[Limit::within("dT", 0.0, 150.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "a superheat of 50 K roughly halves the condensation",
    },
    eval: |v| Ok(superheat_relief(v[0])),
};

/// Steam condensed in a stroke, kg.
#[must_use]
pub fn wall_steam(f: f64, heat: f64, latent: f64) -> f64 {
    f * heat / latent
}

/// Card of [`wall_steam`].
pub static WALL_STEAM: Card = Card {
    id: "engine.wall-steam",
    law: Law::Closed("m_c = f * Q_c / h_lg"),
    gives: symbol("m_c", &KG, "steam condensed on the walls in a stroke"),
    takes: &[
        symbol("f", &ONE, "condensation over that with saturated steam"),
        symbol(
            "Q_c",
            &JOULE,
            "heat that the wall takes in from one admission",
        ),
        symbol("h_lg", &J_PER_KG, "heat of evaporation at admission"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "heat of evaporation",
    },
    eval: |v| Ok(wall_steam(v[0], v[1], v[2])),
};
