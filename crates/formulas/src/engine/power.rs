//! What the engine gives for its steam: power at the shaft, work from a kilogram, and what an
//! engine without loss would give between the same pressures.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{
    BAR_ABSOLUTE, J_PER_KG, KG_PER_S, KJ_PER_KG, M3_PER_S, ONE, PA_GAUGE, WATT,
};
use reckoning::{Card, Cite, Refused, symbol};

use crate::sources::DERIVED;
use crate::steam::{OutOfRange, Saturated, at_ps};

/// Power at the shaft.
#[must_use]
pub fn shaft_power(eta: f64, p_i: f64) -> f64 {
    eta * p_i
}

/// Card of [`shaft_power`].
pub static SHAFT_POWER: Card = Card {
    id: "engine.shaft-power",
    law: Law::Closed("P_s = eta * P_i"),
    gives: symbol("P_s", &WATT, "power at the shaft"),
    takes: &[
        symbol("eta", &ONE, "power at the shaft over indicated power"),
        symbol("P_i", &WATT, "indicated power"),
    ],
    limits: &[Limit::within("eta", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "definition of the mechanical efficiency",
    },
    eval: |v| Ok(shaft_power(v[0], v[1])),
};

/// Work from a kilogram of steam.
#[must_use]
pub fn work_of_steam(p: f64, m: f64) -> f64 {
    p / m
}

/// Card of [`work_of_steam`].
pub static WORK_OF_STEAM: Card = Card {
    id: "engine.work-of-steam",
    law: Law::Closed("w = P / m"),
    gives: symbol("w", &J_PER_KG, "work from a kilogram of steam"),
    takes: &[
        symbol("P", &WATT, "power"),
        symbol("m", &KG_PER_S, "steam supplied to the engine"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "definition; the reciprocal of the specific steam consumption",
    },
    eval: |v| Ok(work_of_steam(v[0], v[1])),
};

/// Work of an engine without loss on dry saturated steam between two absolute pressures in Pa,
/// J/kg: the fall of enthalpy at one entropy.
///
/// # Errors
/// [`OutOfRange`] outside the range of the steam equations.
pub fn ideal_work(p_1: f64, p_2: f64) -> Result<f64, OutOfRange> {
    let start = Saturated::at_pressure(p_1)?;
    Ok(start.h_g - at_ps(p_2, start.s_g)?.h)
}

/// Card of [`ideal_work`].
pub static IDEAL_WORK: Card = Card {
    id: "engine.ideal-work",
    law: Law::Words(
        "the fall of enthalpy of dry saturated steam of p_1 that expands at its entropy to p_2",
    ),
    gives: symbol(
        "w_0",
        &KJ_PER_KG,
        "work of an engine without loss from a kilogram",
    ),
    takes: &[
        symbol("p_1", &BAR_ABSOLUTE, "pressure of the dry saturated steam"),
        symbol("p_2", &BAR_ABSOLUTE, "pressure of the exhaust"),
    ],
    limits: &[Limit::at_least("p_1 / p_2", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "isentropic expansion of steam in equilibrium",
    },
    eval: |v| {
        let work = ideal_work(BAR_ABSOLUTE.to_si(v[0]), BAR_ABSOLUTE.to_si(v[1]));
        work.map(|w| KJ_PER_KG.from_si(w)).map_err(|_| Refused {
            card: "engine.ideal-work",
            symbol: "p_1",
            value: v[0],
            why: "outside the range of the steam equations",
        })
    },
};

/// Power that a feed pump asks: volume against a pressure, at an efficiency.
#[must_use]
pub fn feed_power(v: f64, dp: f64, eta: f64) -> f64 {
    v * dp / eta
}

/// Card of [`feed_power`].
pub static FEED_POWER: Card = Card {
    id: "engine.feed-power",
    law: Law::Closed("P_f = V_f * dp / eta_f"),
    gives: symbol("P_f", &WATT, "power that the feed pump asks"),
    takes: &[
        symbol("V_f", &M3_PER_S, "water fed"),
        symbol("dp", &PA_GAUGE, "pressure against which it is fed"),
        symbol("eta_f", &ONE, "work on the water over work on the pump"),
    ],
    limits: &[Limit::within("eta_f", 0.05, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "work on water that does not yield",
    },
    eval: |v| Ok(feed_power(v[0], v[1], v[2])),
};

/// Power that must be had at the shaft.
#[must_use]
pub fn power_asked(p_w: f64, p_f: f64) -> f64 {
    p_w + p_f
}

/// Card of [`power_asked`].
pub static POWER_ASKED: Card = Card {
    id: "engine.power-asked",
    law: Law::Closed("P_s = P_w + P_f"),
    gives: symbol("P_s", &WATT, "power that must be had at the shaft"),
    takes: &[
        symbol("P_w", &WATT, "power asked beside the feed pump"),
        symbol("P_f", &WATT, "power that the feed pump asks"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "both are driven by the one shaft",
    },
    eval: |v| Ok(power_asked(v[0], v[1])),
};

/// Power at the shaft beside that of the feed pump.
#[must_use]
pub fn net_power(p_s: f64, p_f: f64) -> f64 {
    p_s - p_f
}

/// Card of [`net_power`].
pub static NET_POWER: Card = Card {
    id: "engine.net-power",
    law: Law::Closed("P_n = P_s - P_f"),
    gives: symbol("P_n", &WATT, "power at the shaft beside the feed pump"),
    takes: &[
        symbol("P_s", &WATT, "power at the shaft"),
        symbol("P_f", &WATT, "power that the feed pump asks"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "both are driven by the one shaft",
    },
    eval: |v| Ok(net_power(v[0], v[1])),
};

/// Enthalpy of the exhaust of an engine.
#[must_use]
pub fn exhaust_enthalpy(h_in: f64, p_i: f64, q: f64, m: f64) -> f64 {
    h_in - (p_i + q) / m
}

/// Card of [`exhaust_enthalpy`].
pub static EXHAUST_ENTHALPY: Card = Card {
    id: "engine.exhaust-enthalpy",
    law: Law::Closed("h_ex = h_in - (P_i + Q_s) / m"),
    gives: symbol("h_ex", &J_PER_KG, "enthalpy of the exhaust"),
    takes: &[
        symbol("h_in", &J_PER_KG, "enthalpy of the steam supplied"),
        symbol("P_i", &WATT, "indicated power"),
        symbol("Q_s", &WATT, "heat that the engine loses to the room"),
        symbol("m", &KG_PER_S, "steam supplied to the engine"),
    ],
    limits: &[Limit::at_least("m", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "first law for the engine",
    },
    eval: |v| Ok(exhaust_enthalpy(v[0], v[1], v[2], v[3])),
};
