//! Where heat, draught and fuel go: the lines of an account of a settled fire.

use reckoning::formula::{Law, Spread};
use reckoning::quantity::{J_PER_KG, KG, KG_PER_M3, KG_PER_S, M, M2, ONE, PA, SECOND, WATT};
use reckoning::{Card, symbol};

use super::derived;

/// Heat of the fuel burnt.
#[must_use]
pub fn fuel_heat(m_f: f64, h: f64) -> f64 {
    m_f * h
}

/// Card of [`fuel_heat`].
pub static FUEL_HEAT: Card = Card {
    id: "balance.fuel-heat",
    law: Law::Closed("Q = m_f * H"),
    gives: symbol("Q", &WATT, "heat of the fuel burnt"),
    takes: &[
        symbol("m_f", &KG_PER_S, "fuel burnt"),
        symbol("H", &J_PER_KG, "lower heating value"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the heating value"),
    eval: |v| Ok(fuel_heat(v[0], v[1])),
};

/// Heat of the fuel that is never set free.
#[must_use]
pub fn unburnt_heat(eta: f64, q_f: f64) -> f64 {
    (1.0 - eta) * q_f
}

/// Card of [`unburnt_heat`].
pub static UNBURNT_HEAT: Card = Card {
    id: "balance.unburnt-heat",
    law: Law::Closed("Q_u = (1 - eta) * Q_f"),
    gives: symbol("Q_u", &WATT, "heat never set free"),
    takes: &[
        symbol("eta", &ONE, "share of the heating value set free"),
        symbol("Q_f", &WATT, "heat of the fuel burnt"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the share set free"),
    eval: |v| Ok(unburnt_heat(v[0], v[1])),
};

/// Share of the heat brought by fuel and air.
#[must_use]
pub fn heat_share(q: f64, q_f: f64, q_a: f64) -> f64 {
    q / (q_f + q_a)
}

/// Card of [`heat_share`].
pub static HEAT_SHARE: Card = Card {
    id: "balance.heat-share",
    law: Law::Closed("s = Q / (Q_f + Q_a)"),
    gives: symbol("s", &ONE, "share of the heat of fuel and air"),
    takes: &[
        symbol("Q", &WATT, "heat that goes this way"),
        symbol("Q_f", &WATT, "heat of the fuel burnt"),
        symbol("Q_a", &WATT, "heat of the air above 298.15 K"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("first law for the boiler"),
    eval: |v| Ok(heat_share(v[0], v[1], v[2])),
};

/// Fuel that lies on the grate.
#[must_use]
pub fn bed_mass(e: f64, rho_p: f64, l: f64, a: f64) -> f64 {
    (1.0 - e) * rho_p * l * a
}

/// Card of [`bed_mass`].
pub static BED_MASS: Card = Card {
    id: "balance.bed-mass",
    law: Law::Closed("m = (1 - e) * rho_p * L * A"),
    gives: symbol("m", &KG, "fuel on the grate"),
    takes: &[
        symbol("e", &ONE, "empty share of the bed"),
        symbol("rho_p", &KG_PER_M3, "density of a lump"),
        symbol("L", &M, "depth of the bed"),
        symbol("A", &M2, "area of the grate"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("volume of the lumps"),
    eval: |v| Ok(bed_mass(v[0], v[1], v[2], v[3])),
};

/// Time in which a store is used.
#[must_use]
pub fn time_to_use(m: f64, q: f64) -> f64 {
    m / q
}

/// Card of [`time_to_use`].
pub static TIME_TO_USE: Card = Card {
    id: "balance.time-to-use",
    law: Law::Closed("t = m / q"),
    gives: symbol("t", &SECOND, "time in which it is used"),
    takes: &[
        symbol("m", &KG, "what is there"),
        symbol("q", &KG_PER_S, "what is used"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the flow"),
    eval: |v| Ok(time_to_use(v[0], v[1])),
};

/// What is left of a loss without one of its parts.
#[must_use]
pub fn rest_of_loss(dp: f64, dp_1: f64) -> f64 {
    dp - dp_1
}

/// Card of [`rest_of_loss`].
pub static REST_OF_LOSS: Card = Card {
    id: "balance.rest-of-loss",
    law: Law::Closed("dp_2 = dp - dp_1"),
    gives: symbol("dp_2", &PA, "rest of the loss"),
    takes: &[
        symbol("dp", &PA, "whole loss"),
        symbol("dp_1", &PA, "known part of it"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("sum of losses"),
    eval: |v| Ok(rest_of_loss(v[0], v[1])),
};

/// Two losses in a row.
#[must_use]
pub fn both_losses(dp_1: f64, dp_2: f64) -> f64 {
    dp_1 + dp_2
}

/// Card of [`both_losses`].
pub static BOTH_LOSSES: Card = Card {
    id: "balance.both-losses",
    law: Law::Closed("dp = dp_1 + dp_2"),
    gives: symbol("dp", &PA, "both losses"),
    takes: &[
        symbol("dp_1", &PA, "loss"),
        symbol("dp_2", &PA, "loss that follows it"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("sum of losses"),
    eval: |v| Ok(both_losses(v[0], v[1])),
};

/// Air through the bed and beside it, over the air that the fuel needs.
#[must_use]
pub fn whole_air_ratio(lambda_b: f64, m_2: f64, af: f64, m_f: f64) -> f64 {
    lambda_b + m_2 / (af * m_f)
}

/// Card of [`whole_air_ratio`].
pub static WHOLE_AIR_RATIO: Card = Card {
    id: "balance.whole-air-ratio",
    law: Law::Closed("lambda = lambda_b + m_2 / (AF * m_f)"),
    gives: symbol("lambda", &ONE, "air over air needed"),
    takes: &[
        symbol("lambda_b", &ONE, "air through the bed over air needed"),
        symbol("m_2", &KG_PER_S, "air through the holes over the fire"),
        symbol("AF", &ONE, "air that a kilogram of fuel needs"),
        symbol("m_f", &KG_PER_S, "fuel burnt"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("sum of both airs"),
    eval: |v| Ok(whole_air_ratio(v[0], v[1], v[2], v[3])),
};
