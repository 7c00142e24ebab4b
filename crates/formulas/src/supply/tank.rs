//! A tank that lives on its own vapour: what evaporation takes, what the air gives back, and the
//! rate at which both are equal.
//!
//! Liquid and metal are one lump of one temperature. Left out: frost, which gives its heat to
//! the tank, and warmth from boiler or cab unless its coefficient and area are added.

use std::f64::consts::PI;

use reckoning::quantity::{
    J_PER_KG, J_PER_KG_K, KELVIN, KELVIN_RISE, KG, KG_PER_M3, KG_PER_S, M, M2, M3, ONE, SECOND,
    W_PER_M2_K, WATT,
};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::sources::{COMMON_PRACTICE, DERIVED};

const fn derived(place: &'static str) -> Cite {
    Cite {
        source: &DERIVED,
        place,
    }
}

/// Share of a tank that liquid fills.
#[must_use]
pub fn liquid_share(mass: f64, density: f64, volume: f64) -> f64 {
    mass / (density * volume)
}

/// Card of [`liquid_share`].
pub static LIQUID_SHARE: Card = Card {
    id: "supply.liquid-share",
    law: Law::Closed("z = m / (rho_l * V)"),
    gives: symbol("z", &ONE, "share of the tank that is liquid"),
    takes: &[
        symbol("m", &KG, "liquid in the tank"),
        symbol("rho_l", &KG_PER_M3, "density of the liquid"),
        symbol("V", &M3, "volume of the tank"),
    ],
    limits: &[Limit::within("z", 0.0, 0.8)],
    spread: Spread::Exact,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "a tank is filled to four fifths of its volume at the most",
    },
    eval: |v| Ok(liquid_share(v[0], v[1], v[2])),
};

/// Volume of a round tank inside, m³.
#[must_use]
pub fn tank_volume(bore: f64, length: f64) -> f64 {
    PI / 4.0 * bore * bore * length
}

/// Card of [`tank_volume`].
pub static TANK_VOLUME: Card = Card {
    id: "supply.tank-volume",
    law: Law::Closed("V = pi / 4 * d^2 * L"),
    gives: symbol("V", &M3, "volume of the tank"),
    takes: &[
        symbol("d", &M, "inside diameter of the tank"),
        symbol("L", &M, "length of the tank inside"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("geometry of a cylinder"),
    eval: |v| Ok(tank_volume(v[0], v[1])),
};

/// Outside area of a round tank with both ends, m²; its wall reaches as far as its inside.
#[must_use]
pub fn tank_surface(bore: f64, length: f64, wall: f64) -> f64 {
    let d = bore + 2.0 * wall;
    PI * d * length + PI / 2.0 * d * d
}

/// Card of [`tank_surface`].
pub static TANK_SURFACE: Card = Card {
    id: "supply.tank-surface",
    law: Law::Closed("D = d + 2 * t; A = pi * D * L + pi / 2 * D^2"),
    gives: symbol("A", &M2, "outside area of the tank"),
    takes: &[
        symbol("d", &M, "inside diameter of the tank"),
        symbol("L", &M, "length of the tank inside"),
        symbol("t", &M, "wall of the tank"),
    ],
    limits: &[],
    spread: Spread::Percent(3.0),
    cite: derived("geometry of a cylinder, its flat ends counted and their edges left out"),
    eval: |v| Ok(tank_surface(v[0], v[1], v[2])),
};

/// Metal of the tank, kg, from its outside area.
#[must_use]
pub fn tank_metal(area: f64, wall: f64, density: f64) -> f64 {
    area * wall * density
}

/// Card of [`tank_metal`].
pub static TANK_METAL: Card = Card {
    id: "supply.tank-metal",
    law: Law::Closed("m_w = A * t * rho"),
    gives: symbol("m_w", &KG, "metal of the tank"),
    takes: &[
        symbol("A", &M2, "outside area of the tank"),
        symbol("t", &M, "wall of the tank"),
        symbol("rho", &KG_PER_M3, "density of its metal"),
    ],
    limits: &[],
    spread: Spread::Percent(3.0),
    cite: derived("a thin wall laid flat"),
    eval: |v| Ok(tank_metal(v[0], v[1], v[2])),
};

/// Outside area that has liquid behind it, m², whichever way the tank lies.
#[must_use]
pub fn wet_area(z: f64, area: f64) -> f64 {
    z * area
}

/// Card of [`wet_area`]. A tank that lies half full is wet on half its wall and half its ends; at
/// a quarter or three quarters its wall is wet an eighth more or less of the whole than this says.
pub static WET_AREA: Card = Card {
    id: "supply.wet-area",
    law: Law::Closed("A_w = z * A"),
    gives: symbol("A_w", &M2, "outside area with liquid behind it"),
    takes: &[
        symbol("z", &ONE, "share of the tank that is liquid"),
        symbol("A", &M2, "outside area of the tank"),
    ],
    limits: &[Limit::within("z", 0.0, 1.0)],
    spread: Spread::Percent(50.0),
    cite: derived("chosen here: the share of the volume stands for that of the wall"),
    eval: |v| Ok(wet_area(v[0], v[1])),
};

/// Area that takes heat in for the liquid, m²: the dry wall counts by the share `phi`.
#[must_use]
pub fn warming_area(wet: f64, area: f64, phi: f64) -> f64 {
    wet + phi * (area - wet)
}

/// Card of [`warming_area`].
pub static WARMING_AREA: Card = Card {
    id: "supply.warming-area",
    law: Law::Closed("A_h = A_w + phi * (A - A_w)"),
    gives: symbol("A_h", &M2, "area that takes heat in for the liquid"),
    takes: &[
        symbol("A_w", &M2, "outside area with liquid behind it"),
        symbol("A", &M2, "outside area of the tank"),
        symbol(
            "phi",
            &ONE,
            "share of the dry wall that conducts to the liquid",
        ),
    ],
    limits: &[Limit::within("phi", 0.0, 1.0)],
    spread: Spread::Unstated,
    cite: derived("the dry wall as a fin of a stated worth"),
    eval: |v| Ok(warming_area(v[0], v[1], v[2])),
};

/// Heat that the air gives to the tank, W.
#[must_use]
pub fn tank_heat(h: f64, area: f64, air: f64, tank: f64) -> f64 {
    h * area * (air - tank)
}

/// Card of [`tank_heat`].
pub static TANK_HEAT: Card = Card {
    id: "supply.tank-heat",
    law: Law::Closed("Q = h * A * (T_a - T)"),
    gives: symbol("Q", &WATT, "heat that the air gives to the tank"),
    takes: &[
        symbol(
            "h",
            &W_PER_M2_K,
            "heat transfer coefficient outside the tank",
        ),
        symbol("A", &M2, "area that takes heat in for the liquid"),
        symbol("T_a", &KELVIN, "temperature of the air"),
        symbol("T", &KELVIN, "temperature of the tank"),
    ],
    limits: &[Limit::within("h", 3.0, 25.0)],
    spread: Spread::Percent(50.0),
    cite: derived("definition of the coefficient"),
    eval: |v| Ok(tank_heat(v[0], v[1], v[2], v[3])),
};

/// Gas that the tank can give for ever at one temperature, kg/s.
#[must_use]
pub fn holding_rate(heat: f64, latent: f64) -> f64 {
    heat / latent
}

/// Card of [`holding_rate`].
pub static HOLDING_RATE: Card = Card {
    id: "supply.holding-rate",
    law: Law::Closed("m = Q / r"),
    gives: symbol(
        "m",
        &KG_PER_S,
        "gas that the tank can hold at this temperature",
    ),
    takes: &[
        symbol("Q", &WATT, "heat that the air gives to the tank"),
        symbol("r", &J_PER_KG, "latent heat of the vapour drawn"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("heat balance of a tank that no longer cools"),
    eval: |v| Ok(holding_rate(v[0], v[1])),
};

/// A tank while gas is drawn from it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drawing {
    /// Heat that the air gives to the tank, W.
    pub heat: f64,
    /// Gas drawn, kg/s.
    pub m_jet: f64,
    /// Latent heat of the vapour drawn, J/kg.
    pub latent: f64,
    /// Liquid in the tank, kg.
    pub liquid: f64,
    /// Specific heat of the liquid, J/(kg K).
    pub c_l: f64,
    /// Metal of the tank, kg.
    pub metal: f64,
    /// Specific heat of the metal, J/(kg K).
    pub c_w: f64,
}

/// Change of the temperature of the tank over `dt` seconds at these rates, K.
#[must_use]
pub fn tank_change(t: &Drawing, dt: f64) -> f64 {
    (t.heat - t.m_jet * t.latent) * dt / (t.liquid * t.c_l + t.metal * t.c_w)
}

/// Card of [`tank_change`].
pub static TANK_CHANGE: Card = Card {
    id: "supply.tank-change",
    law: Law::Closed("dT = (Q - m_j * r) * dt / (m_l * c_l + m_w * c_w)"),
    gives: symbol("dT", &KELVIN_RISE, "change of the temperature of the tank"),
    takes: &[
        symbol("Q", &WATT, "heat that the air gives to the tank"),
        symbol("m_j", &KG_PER_S, "gas drawn"),
        symbol("r", &J_PER_KG, "latent heat of the vapour drawn"),
        symbol("m_l", &KG, "liquid in the tank"),
        symbol("c_l", &J_PER_KG_K, "specific heat of the liquid"),
        symbol("m_w", &KG, "metal of the tank"),
        symbol("c_w", &J_PER_KG_K, "specific heat of the metal"),
        symbol("dt", &SECOND, "time over which these rates hold"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("heat balance of liquid and metal as one lump"),
    eval: |v| {
        let drawing = Drawing {
            heat: v[0],
            m_jet: v[1],
            latent: v[2],
            liquid: v[3],
            c_l: v[4],
            metal: v[5],
            c_w: v[6],
        };
        Ok(tank_change(&drawing, v[7]))
    },
};
