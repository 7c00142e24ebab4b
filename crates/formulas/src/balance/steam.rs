//! Balances of the steam: states from pressures, heat to steam, steam against demand.

use reckoning::formula::{Law, Spread};
use reckoning::quantity::{
    BAR_ABSOLUTE, BAR_GAUGE, J_PER_KG, KELVIN, KELVIN_RISE, KG_PER_M3, KG_PER_S, M_PER_S, M2,
    M3_PER_KG, ONE, PA, PA_ABSOLUTE, WATT,
};
use reckoning::{Card, symbol};

use super::derived;

/// Absolute pressure from that of the gauge.
#[must_use]
pub fn absolute_pressure(p_g: f64, p_a: f64) -> f64 {
    p_g + p_a
}

/// Card of [`absolute_pressure`].
pub static ABSOLUTE_PRESSURE: Card = Card {
    id: "balance.absolute-pressure",
    law: Law::Closed("p = p_g + p_a"),
    gives: symbol("p", &BAR_ABSOLUTE, "absolute pressure"),
    takes: &[
        symbol("p_g", &BAR_GAUGE, "gauge pressure"),
        symbol("p_a", &BAR_ABSOLUTE, "pressure of the air"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of gauge pressure"),
    eval: |v| Ok(absolute_pressure(v[0], v[1])),
};

/// Pressure at admission.
#[must_use]
pub fn pressure_share(s: f64, p: f64) -> f64 {
    s * p
}

/// Card of [`pressure_share`].
pub static PRESSURE_SHARE: Card = Card {
    id: "balance.pressure-share",
    law: Law::Closed("p_1 = s * p"),
    gives: symbol("p_1", &BAR_ABSOLUTE, "pressure at admission"),
    takes: &[
        symbol("s", &ONE, "pressure at admission over that in the boiler"),
        symbol("p", &BAR_ABSOLUTE, "pressure in the boiler"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the share"),
    eval: |v| Ok(pressure_share(v[0], v[1])),
};

/// Back pressure on the engine.
#[must_use]
pub fn back_pressure(p_a: f64, dp: f64) -> f64 {
    p_a + dp
}

/// Card of [`back_pressure`].
pub static BACK_PRESSURE: Card = Card {
    id: "balance.back-pressure",
    law: Law::Closed("p_b = p_a + dp"),
    gives: symbol("p_b", &PA_ABSOLUTE, "back pressure"),
    takes: &[
        symbol("p_a", &PA_ABSOLUTE, "pressure of the air"),
        symbol("dp", &PA, "back pressure of the blast nozzle"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("sum of pressures"),
    eval: |v| Ok(back_pressure(v[0], v[1])),
};

/// Temperature of the wetted metal.
#[must_use]
pub fn wall_temperature(t_s: f64, dt: f64) -> f64 {
    t_s + dt
}

/// Card of [`wall_temperature`].
pub static WALL_TEMPERATURE: Card = Card {
    id: "balance.wall-temperature",
    law: Law::Closed("T_w = T_s + dT"),
    gives: symbol("T_w", &KELVIN, "temperature of the wetted metal"),
    takes: &[
        symbol("T_s", &KELVIN, "saturation temperature"),
        symbol("dT", &KELVIN_RISE, "rise of the wetted metal over it"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the rise"),
    eval: |v| Ok(wall_temperature(v[0], v[1])),
};

/// Density from the specific volume.
#[must_use]
pub fn density_from_volume(v: f64) -> f64 {
    1.0 / v
}

/// Card of [`density_from_volume`].
pub static DENSITY_FROM_VOLUME: Card = Card {
    id: "balance.density",
    law: Law::Closed("rho = 1 / v"),
    gives: symbol("rho", &KG_PER_M3, "density"),
    takes: &[symbol("v", &M3_PER_KG, "specific volume")],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of density"),
    eval: |v| Ok(density_from_volume(v[0])),
};

/// Enthalpy of wet steam.
#[must_use]
pub fn wet_enthalpy(h_l: f64, h_g: f64, x: f64) -> f64 {
    h_l + x * (h_g - h_l)
}

/// Card of [`wet_enthalpy`].
pub static WET_ENTHALPY: Card = Card {
    id: "balance.wet-enthalpy",
    law: Law::Closed("h = h_l + x * (h_g - h_l)"),
    gives: symbol("h", &J_PER_KG, "enthalpy of wet steam"),
    takes: &[
        symbol("h_l", &J_PER_KG, "enthalpy of saturated water"),
        symbol("h_g", &J_PER_KG, "enthalpy of saturated steam"),
        symbol("x", &ONE, "dryness"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("the enthalpies of the phases add"),
    eval: |v| Ok(wet_enthalpy(v[0], v[1], v[2])),
};

/// Enthalpy of steam once a coil has added to it.
#[must_use]
pub fn enthalpy_with_gain(h_1: f64, dh: f64) -> f64 {
    h_1 + dh
}

/// Card of [`enthalpy_with_gain`].
pub static ENTHALPY_WITH_GAIN: Card = Card {
    id: "balance.enthalpy-with-gain",
    law: Law::Closed("h = h_1 + dh"),
    gives: symbol("h", &J_PER_KG, "enthalpy with what the coil added"),
    takes: &[
        symbol("h_1", &J_PER_KG, "enthalpy without the coil"),
        symbol("dh", &J_PER_KG, "enthalpy that the coil adds"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("first law for the coil; the engine is taken to lose what it lost without it"),
    eval: |v| Ok(enthalpy_with_gain(v[0], v[1])),
};

/// Enthalpy that steam lacks of dry.
#[must_use]
pub fn enthalpy_lacking(h_g: f64, h: f64) -> f64 {
    h_g - h
}

/// Card of [`enthalpy_lacking`].
pub static ENTHALPY_LACKING: Card = Card {
    id: "balance.enthalpy-lacking",
    law: Law::Closed("dh = h_g - h"),
    gives: symbol("dh", &J_PER_KG, "enthalpy that the steam lacks of dry"),
    takes: &[
        symbol("h_g", &J_PER_KG, "enthalpy of saturated steam"),
        symbol("h", &J_PER_KG, "enthalpy of the steam"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition"),
    eval: |v| Ok(enthalpy_lacking(v[0], v[1])),
};

/// Heat that is left to make steam.
#[must_use]
pub fn useful_heat(q_r: f64, q_t: f64, q_l: f64) -> f64 {
    q_r + q_t - q_l
}

/// Card of [`useful_heat`].
pub static USEFUL_HEAT: Card = Card {
    id: "balance.useful-heat",
    law: Law::Closed("Q_u = Q_r + Q_t - Q_l"),
    gives: symbol("Q_u", &WATT, "heat that makes steam"),
    takes: &[
        symbol("Q_r", &WATT, "heat to the wall round the fire"),
        symbol("Q_t", &WATT, "heat to the tubes"),
        symbol("Q_l", &WATT, "heat lost by the outside"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("first law for the boiler"),
    eval: |v| Ok(useful_heat(v[0], v[1], v[2])),
};

/// Steam made at a steady level.
#[must_use]
pub fn evaporation(q_u: f64, h_s: f64, h_f: f64) -> f64 {
    q_u / (h_s - h_f)
}

/// Card of [`evaporation`].
pub static EVAPORATION: Card = Card {
    id: "balance.evaporation",
    law: Law::Closed("m = Q_u / (h_s - h_f)"),
    gives: symbol("m", &KG_PER_S, "steam made"),
    takes: &[
        symbol("Q_u", &WATT, "heat that makes steam"),
        symbol(
            "h_s",
            &J_PER_KG,
            "enthalpy of the steam as it leaves the water",
        ),
        symbol("h_f", &J_PER_KG, "enthalpy of the feed"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("first law at a steady level"),
    eval: |v| Ok(evaporation(v[0], v[1], v[2])),
};

/// Steam asked for.
#[must_use]
pub fn demand(m_e: f64, m_b: f64) -> f64 {
    m_e + m_b
}

/// Card of [`demand`].
pub static DEMAND: Card = Card {
    id: "balance.demand",
    law: Law::Closed("m_d = m_e + m_b"),
    gives: symbol("m_d", &KG_PER_S, "steam asked for"),
    takes: &[
        symbol("m_e", &KG_PER_S, "steam taken by the engine"),
        symbol("m_b", &KG_PER_S, "steam taken by the blower"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("balance of mass"),
    eval: |v| Ok(demand(v[0], v[1])),
};

/// Steam made over steam asked for.
#[must_use]
pub fn steaming_ratio(m: f64, m_d: f64) -> f64 {
    m / m_d
}

/// Card of [`steaming_ratio`].
pub static STEAMING_RATIO: Card = Card {
    id: "balance.steaming-ratio",
    law: Law::Closed("S = m / m_d"),
    gives: symbol("S", &ONE, "steam made over steam asked for"),
    takes: &[
        symbol("m", &KG_PER_S, "steam made"),
        symbol("m_d", &KG_PER_S, "steam asked for"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the steaming ratio"),
    eval: |v| Ok(steaming_ratio(v[0], v[1])),
};

/// Efficiency on the lower heating value.
#[must_use]
pub fn efficiency(q_u: f64, m_f: f64, h: f64) -> f64 {
    q_u / (m_f * h)
}

/// Card of [`efficiency`].
pub static EFFICIENCY: Card = Card {
    id: "balance.efficiency",
    law: Law::Closed("eta = Q_u / (m_f * H)"),
    gives: symbol(
        "eta",
        &ONE,
        "heat that makes steam over the heating value burnt",
    ),
    takes: &[
        symbol("Q_u", &WATT, "heat that makes steam"),
        symbol("m_f", &KG_PER_S, "fuel burnt"),
        symbol("H", &J_PER_KG, "lower heating value"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the efficiency"),
    eval: |v| Ok(efficiency(v[0], v[1], v[2])),
};

/// Speed of steam through the water surface.
#[must_use]
pub fn leaving_speed(m: f64, rho: f64, a: f64) -> f64 {
    m / (rho * a)
}

/// Card of [`leaving_speed`].
pub static LEAVING_SPEED: Card = Card {
    id: "balance.leaving-speed",
    law: Law::Closed("j = m / (rho * A)"),
    gives: symbol("j", &M_PER_S, "speed of steam through the water surface"),
    takes: &[
        symbol("m", &KG_PER_S, "steam made"),
        symbol("rho", &KG_PER_M3, "density of the steam"),
        symbol("A", &M2, "water surface"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("continuity"),
    eval: |v| Ok(leaving_speed(v[0], v[1], v[2])),
};
