//! Pressure of a liquid fuel over its own vapour, and the temperature at which it boils.
//!
//! The coefficients are fits to reference equations of state and stand in a table of this
//! crate. Left out: dissolved air and the heavier residue of fuel gas, which raise or lower the
//! pressure by what the maker of the gas allows.

use reckoning::quantity::{BAR_ABSOLUTE, KELVIN, KELVIN_RISE, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use crate::sources::gas_fire::REFERENCE_EQUATIONS;

/// Vapour pressure, bar absolute, at `t` kelvin; see [`VAPOUR_PRESSURE`].
#[must_use]
pub fn vapour_pressure(a: f64, b: f64, c: f64, t: f64) -> f64 {
    (a - b / (t + c)).exp()
}

/// Boiling temperature, K, at `p` bar absolute; see [`BOILING_TEMPERATURE`].
#[must_use]
pub fn boiling_temperature(a: f64, b: f64, c: f64, p: f64) -> f64 {
    b / (a - p.ln()) - c
}

const A: Symbol = symbol("A", &ONE, "first coefficient of the fuel");
const B: Symbol = symbol("B", &KELVIN_RISE, "second coefficient of the fuel");
const C: Symbol = symbol("C", &KELVIN_RISE, "third coefficient of the fuel");
const T: Symbol = symbol("T", &KELVIN, "temperature of the liquid");
const P: Symbol = symbol("p", &BAR_ABSOLUTE, "vapour pressure");

const BOILING_LAW: Law = Law::Closed("T = B / (A - ln(p)) - C");

const GAS_FIT: Cite = Cite {
    source: &REFERENCE_EQUATIONS,
    place: "saturation of propane, n-butane and isobutane, fitted from 253 to 343 K",
};

const SPIRIT_FIT: Cite = Cite {
    source: &REFERENCE_EQUATIONS,
    place: "saturation of ethanol and methanol, fitted from 323 to 413 K",
};

const GAS_RANGE: &[Limit] = &[Limit::within("T", 253.0, 343.2)];
const SPIRIT_RANGE: &[Limit] = &[Limit::within("T", 323.0, 413.2)];

/// Vapour pressure of propane, n-butane or isobutane.
pub static VAPOUR_PRESSURE: Card = Card {
    id: "supply.vapour-pressure",
    law: Law::Closed("p = exp(A - B / (T + C))"),
    gives: P,
    takes: &[A, B, C, T],
    limits: GAS_RANGE,
    spread: Spread::Percent(0.3),
    cite: GAS_FIT,
    eval: |v| Ok(vapour_pressure(v[0], v[1], v[2], v[3])),
};

/// Boiling temperature of propane, n-butane or isobutane.
pub static BOILING_TEMPERATURE: Card = Card {
    id: "supply.boiling-temperature",
    law: BOILING_LAW,
    gives: T,
    takes: &[A, B, C, P],
    limits: GAS_RANGE,
    spread: Spread::Percent(0.1),
    cite: GAS_FIT,
    eval: |v| Ok(boiling_temperature(v[0], v[1], v[2], v[3])),
};

/// Boiling temperature of ethanol or methanol.
pub static SPIRIT_BOILING: Card = Card {
    id: "supply.spirit-boiling",
    law: BOILING_LAW,
    gives: T,
    takes: &[A, B, C, P],
    limits: SPIRIT_RANGE,
    spread: Spread::Percent(0.1),
    cite: SPIRIT_FIT,
    eval: |v| Ok(boiling_temperature(v[0], v[1], v[2], v[3])),
};
