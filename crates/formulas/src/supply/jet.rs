//! A gas jet: flow, speed and thrust of an ideal gas through a small hole, choked or not, and
//! the correction for saturated vapour that is far from ideal.
//!
//! Left out: the loss of speed in the hole, which the coefficient carries in the flow alone, and
//! condensation in the jet.

use reckoning::quantity::{
    J_PER_KG, KELVIN, KG_PER_M2_S, KG_PER_S, M_PER_S, M2, NEWTON, ONE, PA_ABSOLUTE, WATT,
};
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use crate::gas::UNIVERSAL_GAS_CONSTANT;
use crate::sources::DERIVED;

const NOZZLE: Cite = Cite {
    source: &DERIVED,
    place: "isentropic flow of an ideal gas of one specific heat",
};

const K: Symbol = symbol("k", &ONE, "isentropic exponent");
const R: Symbol = symbol(
    "r",
    &ONE,
    "pressure in the mouth of the jet over that before it",
);
const T_0: Symbol = symbol("T_0", &KELVIN, "temperature of the gas before the jet");
const M: Symbol = symbol("M", &ONE, "molar mass of the gas, kg/kmol");
const P_0: Symbol = symbol("p_0", &PA_ABSOLUTE, "pressure before the jet");
const P_A: Symbol = symbol("p_a", &PA_ABSOLUTE, "pressure of the air outside");
const AREA: Symbol = symbol("A", &M2, "area of the hole");

/// Isentropic exponent of an ideal gas of molar heat `c` over the gas constant.
#[must_use]
pub fn isentropic_exponent(c: f64) -> f64 {
    c / (c - 1.0)
}

/// Card of [`isentropic_exponent`].
pub static ISENTROPIC_EXPONENT: Card = Card {
    id: "supply.isentropic-exponent",
    law: Law::Closed("k = c / (c - 1)"),
    gives: K,
    takes: &[symbol(
        "c",
        &ONE,
        "molar heat of the gas over the gas constant",
    )],
    limits: &[Limit::at_least("c", 2.5)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "specific heats of an ideal gas",
    },
    eval: |v| Ok(isentropic_exponent(v[0])),
};

/// Pressure ratio below which a jet chokes.
#[must_use]
pub fn critical_ratio(k: f64) -> f64 {
    (2.0 / (k + 1.0)).powf(k / (k - 1.0))
}

/// Card of [`critical_ratio`].
pub static CRITICAL_RATIO: Card = Card {
    id: "supply.critical-ratio",
    law: Law::Closed("r_c = (2 / (k + 1))^(k / (k - 1))"),
    gives: symbol("r_c", &ONE, "pressure ratio at which the jet chokes"),
    takes: &[K],
    limits: &[Limit::within("k", 1.01, 1.7)],
    spread: Spread::Exact,
    cite: NOZZLE,
    eval: |v| Ok(critical_ratio(v[0])),
};

/// Pressure in the mouth of the jet over that before it: that of the air, or the critical one.
#[must_use]
pub fn jet_ratio(p_a: f64, p_0: f64, r_c: f64) -> f64 {
    let free = p_a / p_0;
    if free < r_c { r_c } else { free }
}

/// Card of [`jet_ratio`].
pub static JET_RATIO: Card = Card {
    id: "supply.jet-ratio",
    law: Law::Closed("r = cases(p_a / p_0 < r_c, r_c, p_a / p_0)"),
    gives: R,
    takes: &[
        P_A,
        P_0,
        symbol("r_c", &ONE, "pressure ratio at which the jet chokes"),
    ],
    limits: &[Limit::at_most("p_a / p_0", 1.0)],
    spread: Spread::Exact,
    cite: NOZZLE,
    eval: |v| Ok(jet_ratio(v[0], v[1], v[2])),
};

/// Mass flux of the ideal gas in the hole, kg/(m² s).
#[must_use]
pub fn jet_flux(p_0: f64, t_0: f64, molar_mass: f64, k: f64, r: f64) -> f64 {
    let heat = 2.0 * k / (k - 1.0) * molar_mass / (UNIVERSAL_GAS_CONSTANT * t_0);
    p_0 * (heat * (r.powf(2.0 / k) - r.powf((k + 1.0) / k))).sqrt()
}

/// Card of [`jet_flux`].
pub static JET_FLUX: Card = Card {
    id: "supply.jet-flux",
    law: Law::Closed(
        "G = p_0 * sqrt(2 * k / (k - 1) * M / (8314.46261815324 * T_0) \
         * (r^(2 / k) - r^((k + 1) / k)))",
    ),
    gives: symbol("G", &KG_PER_M2_S, "mass flux in the hole"),
    takes: &[P_0, T_0, M, K, R],
    limits: &[Limit::within("r", 0.4, 1.0), Limit::within("k", 1.01, 1.7)],
    spread: Spread::Percent(3.0),
    cite: NOZZLE,
    eval: |v| Ok(jet_flux(v[0], v[1], v[2], v[3], v[4])),
};

/// Gas through the hole, kg/s.
#[must_use]
pub fn jet_flow(c_d: f64, area: f64, flux: f64) -> f64 {
    c_d * area * flux
}

/// Card of [`jet_flow`].
pub static JET_FLOW: Card = Card {
    id: "supply.jet-flow",
    law: Law::Closed("m = C_d * A * G"),
    gives: symbol("m", &KG_PER_S, "gas through the jet"),
    takes: &[
        symbol("C_d", &ONE, "discharge coefficient of the jet"),
        AREA,
        symbol("G", &KG_PER_M2_S, "mass flux in the hole"),
    ],
    limits: &[Limit::within("C_d", 0.6, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "definition of the discharge coefficient",
    },
    eval: |v| Ok(jet_flow(v[0], v[1], v[2])),
};

/// Speed of the gas in the mouth of the jet, m/s.
#[must_use]
pub fn jet_speed(t_0: f64, molar_mass: f64, k: f64, r: f64) -> f64 {
    let head = 2.0 * k / (k - 1.0) * UNIVERSAL_GAS_CONSTANT / molar_mass * t_0;
    (head * (1.0 - r.powf((k - 1.0) / k))).sqrt()
}

/// Card of [`jet_speed`].
pub static JET_SPEED: Card = Card {
    id: "supply.jet-speed",
    law: Law::Closed(
        "u = sqrt(2 * k / (k - 1) * 8314.46261815324 / M * T_0 * (1 - r^((k - 1) / k)))",
    ),
    gives: symbol("u", &M_PER_S, "speed of the gas in the mouth of the jet"),
    takes: &[T_0, M, K, R],
    limits: &[Limit::within("r", 0.4, 1.0), Limit::within("k", 1.01, 1.7)],
    spread: Spread::Percent(3.0),
    cite: NOZZLE,
    eval: |v| Ok(jet_speed(v[0], v[1], v[2], v[3])),
};

/// Thrust of the jet, N: momentum, and what pressure is left in its mouth.
#[must_use]
pub fn jet_thrust(m: f64, u: f64, r_p_0: f64, p_a: f64, area: f64) -> f64 {
    m * u + (r_p_0 - p_a) * area
}

/// Card of [`jet_thrust`].
pub static JET_THRUST: Card = Card {
    id: "supply.jet-thrust",
    law: Law::Closed("J = m * u + (p_e - p_a) * A"),
    gives: symbol("J", &NEWTON, "thrust of the jet"),
    takes: &[
        symbol("m", &KG_PER_S, "gas through the jet"),
        symbol("u", &M_PER_S, "speed of the gas in the mouth of the jet"),
        symbol("p_e", &PA_ABSOLUTE, "pressure in the mouth of the jet"),
        P_A,
        AREA,
    ],
    limits: &[Limit::at_least("p_e / p_a", 0.9999)],
    spread: Spread::Percent(10.0),
    cite: Cite {
        source: &DERIVED,
        place: "momentum of the control volume round the mouth",
    },
    eval: |v| Ok(jet_thrust(v[0], v[1], v[2], v[3], v[4])),
};

/// Pressure in the mouth of the jet, Pa absolute.
#[must_use]
pub fn jet_mouth_pressure(r: f64, p_0: f64) -> f64 {
    r * p_0
}

/// Card of [`jet_mouth_pressure`].
pub static JET_MOUTH_PRESSURE: Card = Card {
    id: "supply.jet-mouth-pressure",
    law: Law::Closed("p_e = r * p_0"),
    gives: symbol("p_e", &PA_ABSOLUTE, "pressure in the mouth of the jet"),
    takes: &[R, P_0],
    limits: &[],
    spread: Spread::Exact,
    cite: NOZZLE,
    eval: |v| Ok(jet_mouth_pressure(v[0], v[1])),
};

/// Heat of the gas, W, by its lower heating value.
#[must_use]
pub fn heat_rate(m: f64, lhv: f64) -> f64 {
    m * lhv
}

/// Card of [`heat_rate`].
pub static HEAT_RATE: Card = Card {
    id: "supply.heat-rate",
    law: Law::Closed("Q = m * LHV"),
    gives: symbol("Q", &WATT, "heat of the gas burnt to the end"),
    takes: &[
        symbol("m", &KG_PER_S, "gas"),
        symbol("LHV", &J_PER_KG, "lower heating value of the gas"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "definition of the heating value",
    },
    eval: |v| Ok(heat_rate(v[0], v[1])),
};

/// Flow of saturated vapour that is not ideal, from that of the ideal gas.
#[must_use]
pub fn real_gas_flow(m_i: f64, z: f64) -> f64 {
    m_i * z.powf(-1.0 / 3.0)
}

/// Card of [`real_gas_flow`].
pub static REAL_GAS_FLOW: Card = Card {
    id: "supply.real-gas-flow",
    law: Law::Closed("m = m_i * Z^(-1 / 3)"),
    gives: symbol("m", &KG_PER_S, "saturated vapour through the jet"),
    takes: &[
        symbol("m_i", &KG_PER_S, "flow of the ideal gas"),
        symbol("Z", &ONE, "compressibility of the vapour before the jet"),
    ],
    limits: &[Limit::within("Z", 0.65, 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "chosen here; nought to one percent above an equilibrium nozzle worked with \
                reference equations of state",
    },
    eval: |v| Ok(real_gas_flow(v[0], v[1])),
};
