//! What the engine gives for its steam: power at the shaft, work from a kilogram, and what an
//! engine without loss would give between the same pressures.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{BAR_ABSOLUTE, J_PER_KG, KG_PER_M3, KG_PER_S, KJ_PER_KG, ONE, PA, WATT};
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

/// Power that a feed pump asks: mass flow against a pressure, at an efficiency.
#[must_use]
pub fn feed_power(m: f64, dp: f64, rho: f64, eta: f64) -> f64 {
    m * dp / (rho * eta)
}

/// Card of [`feed_power`].
pub static FEED_POWER: Card = Card {
    id: "engine.feed-power",
    law: Law::Closed("P_f = m_f * dp / (rho_f * eta_f)"),
    gives: symbol("P_f", &WATT, "power that the feed pump asks"),
    takes: &[
        symbol("m_f", &KG_PER_S, "water fed"),
        symbol("dp", &PA, "pressure against which it is fed"),
        symbol("rho_f", &KG_PER_M3, "density of the water"),
        symbol("eta_f", &ONE, "work on the water over work on the pump"),
    ],
    limits: &[Limit::within("eta_f", 0.05, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "work on water that does not yield",
    },
    eval: |v| Ok(feed_power(v[0], v[1], v[2], v[3])),
};
