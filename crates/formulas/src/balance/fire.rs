//! Balances of the fire: air, gas, heat and draught.

use reckoning::formula::{Law, Spread};
use reckoning::quantity::{J_PER_KG, KG_PER_M2_S, KG_PER_S, M2, ONE, PA, WATT};
use reckoning::{Card, symbol};

use super::derived;

/// Air supplied to a kilogram of fuel.
#[must_use]
pub fn air_for_fuel(lambda: f64, af: f64) -> f64 {
    lambda * af
}

/// Card of [`air_for_fuel`].
pub static AIR_FOR_FUEL: Card = Card {
    id: "balance.air-for-fuel",
    law: Law::Closed("a = lambda * AF"),
    gives: symbol("a", &ONE, "air supplied to a kilogram of fuel, kg/kg"),
    takes: &[
        symbol("lambda", &ONE, "air ratio"),
        symbol("AF", &ONE, "dry air to burn a kilogram of fuel, kg/kg"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the air ratio"),
    eval: |v| Ok(air_for_fuel(v[0], v[1])),
};

/// Air or gas that goes with the fuel burnt.
#[must_use]
pub fn flow_for_fuel(a: f64, m_f: f64) -> f64 {
    a * m_f
}

/// Card of [`flow_for_fuel`].
pub static FLOW_FOR_FUEL: Card = Card {
    id: "balance.flow-for-fuel",
    law: Law::Closed("m = a * m_f"),
    gives: symbol("m", &KG_PER_S, "flow of air or gas"),
    takes: &[
        symbol("a", &ONE, "air or gas for a kilogram of fuel, kg/kg"),
        symbol("m_f", &KG_PER_S, "fuel burnt"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("balance of mass"),
    eval: |v| Ok(flow_for_fuel(v[0], v[1])),
};

/// Mass flux of a share of a flow on an area.
#[must_use]
pub fn flux_on_area(s: f64, m: f64, a: f64) -> f64 {
    s * m / a
}

/// Card of [`flux_on_area`].
pub static FLUX_ON_AREA: Card = Card {
    id: "balance.flux-on-area",
    law: Law::Closed("G = s * m / A"),
    gives: symbol("G", &KG_PER_M2_S, "mass flux"),
    takes: &[
        symbol("s", &ONE, "share of the flow"),
        symbol("m", &KG_PER_S, "flow"),
        symbol("A", &M2, "area"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the mass flux"),
    eval: |v| Ok(flux_on_area(v[0], v[1], v[2])),
};

/// Loss of bed, grate and ash together.
#[must_use]
pub fn bed_and_grate_loss(k_g: f64, k_a: f64, dp_b: f64) -> f64 {
    k_g * k_a * dp_b
}

/// Card of [`bed_and_grate_loss`].
pub static BED_AND_GRATE_LOSS: Card = Card {
    id: "balance.bed-and-grate-loss",
    law: Law::Closed("dp = k_g * k_a * dp_b"),
    gives: symbol("dp", &PA, "loss of bed, grate and ash"),
    takes: &[
        symbol(
            "k_g",
            &ONE,
            "loss of bed and grate over that of the bare bed",
        ),
        symbol("k_a", &ONE, "loss with ash over that when clean"),
        symbol("dp_b", &PA, "loss of the bare bed"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the two factors"),
    eval: |v| Ok(bed_and_grate_loss(v[0], v[1], v[2])),
};

/// How near a bed is to being lifted.
#[must_use]
pub fn lift_share(dp: f64, w: f64) -> f64 {
    dp / w
}

/// Card of [`lift_share`].
pub static LIFT_SHARE: Card = Card {
    id: "balance.lift-share",
    law: Law::Closed("s = dp / w"),
    gives: symbol("s", &ONE, "loss of the bare bed over its weight"),
    takes: &[
        symbol("dp", &PA, "loss of the bare bed"),
        symbol("w", &PA, "weight of the bed on its area"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("a bed is lifted when its loss is its weight"),
    eval: |v| Ok(lift_share(v[0], v[1])),
};

/// Heat set free in the fire.
#[must_use]
pub fn heat_set_free(eta: f64, m_f: f64, h: f64, m_a: f64, h_a: f64) -> f64 {
    eta * m_f * h + m_a * h_a
}

/// Card of [`heat_set_free`].
pub static HEAT_SET_FREE: Card = Card {
    id: "balance.heat-set-free",
    law: Law::Closed("Q = eta * m_f * H + m_a * h_a"),
    gives: symbol("Q", &WATT, "heat set free, with the enthalpy of the air"),
    takes: &[
        symbol("eta", &ONE, "share of the heating value set free"),
        symbol("m_f", &KG_PER_S, "fuel burnt"),
        symbol("H", &J_PER_KG, "lower heating value"),
        symbol("m_a", &KG_PER_S, "air"),
        symbol("h_a", &J_PER_KG, "enthalpy of the air above 298.15 K"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("first law for the fire"),
    eval: |v| Ok(heat_set_free(v[0], v[1], v[2], v[3], v[4])),
};

/// Heat that a stream gives between two places.
#[must_use]
pub fn heat_carried(m: f64, h_1: f64, h_2: f64) -> f64 {
    m * (h_1 - h_2)
}

/// Card of [`heat_carried`].
pub static HEAT_CARRIED: Card = Card {
    id: "balance.heat-carried",
    law: Law::Closed("Q = m * (h_1 - h_2)"),
    gives: symbol("Q", &WATT, "heat given by the gas"),
    takes: &[
        symbol("m", &KG_PER_S, "gas"),
        symbol("h_1", &J_PER_KG, "enthalpy where it enters"),
        symbol("h_2", &J_PER_KG, "enthalpy where it leaves"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("first law for the gas"),
    eval: |v| Ok(heat_carried(v[0], v[1], v[2])),
};

/// Draught that the tubes take.
#[must_use]
pub fn tube_loss(dp_1: f64, dp_f: f64, dp_2: f64, dp_m: f64) -> f64 {
    dp_1 + dp_f + dp_2 + dp_m
}

/// Card of [`tube_loss`].
pub static TUBE_LOSS: Card = Card {
    id: "balance.tube-loss",
    law: Law::Closed("dp = dp_1 + dp_f + dp_2 + dp_m"),
    gives: symbol("dp", &PA, "draught taken by the tubes"),
    takes: &[
        symbol("dp_1", &PA, "loss where the gas enters"),
        symbol("dp_f", &PA, "loss by friction"),
        symbol("dp_2", &PA, "loss where the gas leaves"),
        symbol("dp_m", &PA, "pressure spent on the change of speed"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("sum of the losses in line"),
    eval: |v| Ok(tube_loss(v[0], v[1], v[2], v[3])),
};

/// Draught lost before the chimney.
#[must_use]
pub fn draught_lost(dp_b: f64, dp_t: f64, dp_x: f64) -> f64 {
    dp_b + dp_t + dp_x
}

/// Card of [`draught_lost`].
pub static DRAUGHT_LOST: Card = Card {
    id: "balance.draught-lost",
    law: Law::Closed("dp = dp_b + dp_t + dp_x"),
    gives: symbol("dp", &PA, "draught lost before the chimney"),
    takes: &[
        symbol(
            "dp_b",
            &PA,
            "loss where the air comes in: bed, grate and ash, or the mouth of a flame",
        ),
        symbol("dp_t", &PA, "draught taken by tubes or flue"),
        symbol("dp_x", &PA, "draught lost in turns, entry and arrester"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("sum of the losses in line"),
    eval: |v| Ok(draught_lost(v[0], v[1], v[2])),
};
