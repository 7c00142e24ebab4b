//! Heating value of a fuel from its composition.

use reckoning::quantity::{MJ_PER_KG, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use super::Composition;
use crate::sources::thermal;

/// Higher heating value in MJ/kg; see [`HIGHER_HEATING_VALUE`].
#[must_use]
pub fn higher_heating_value(x: &Composition) -> f64 {
    34.91 * x.carbon + 117.83 * x.hydrogen + 10.05 * x.sulphur
        - 10.34 * x.oxygen
        - 1.51 * x.nitrogen
        - 2.11 * x.ash
}

/// The higher heating value of a fuel from its elements.
pub static HIGHER_HEATING_VALUE: Card = Card {
    id: "fuel.higher-heating-value",
    law: Law::Closed("HHV = 34.91 * C + 117.83 * H + 10.05 * S - 10.34 * O - 1.51 * N - 2.11 * A"),
    gives: symbol("HHV", &MJ_PER_KG, "higher heating value as fired"),
    takes: &[
        symbol("C", &ONE, "carbon, mass fraction as fired"),
        symbol("H", &ONE, "hydrogen, mass fraction as fired"),
        symbol("O", &ONE, "oxygen, mass fraction as fired"),
        symbol("N", &ONE, "nitrogen, mass fraction as fired"),
        symbol("S", &ONE, "sulphur, mass fraction as fired"),
        symbol("A", &ONE, "ash, mass fraction as fired"),
    ],
    limits: &[
        Limit::at_most("C", 0.9225),
        Limit::within("H", 0.0043, 0.2515),
        Limit::at_most("O", 0.5),
        Limit::at_most("N", 0.056),
        Limit::at_most("S", 0.9408),
        Limit::at_most("A", 0.714),
    ],
    spread: Spread::Percent(1.5),
    cite: Cite {
        source: &thermal::FUEL_81_HHV,
        place: "the unified correlation",
    },
    eval: |v| {
        Ok(higher_heating_value(&Composition {
            carbon: v[0],
            hydrogen: v[1],
            oxygen: v[2],
            nitrogen: v[3],
            sulphur: v[4],
            ash: v[5],
            water: 0.0,
        }))
    },
};

/// Lower heating value in MJ/kg from the higher one; see [`LOWER_HEATING_VALUE`].
#[must_use]
pub fn lower_heating_value(hhv_mj_kg: f64, hydrogen: f64, water: f64) -> f64 {
    hhv_mj_kg - 2.442 * (8.936 * hydrogen + water)
}

/// The lower heating value: the water of the flue gas leaves as vapour.
pub static LOWER_HEATING_VALUE: Card = Card {
    id: "fuel.lower-heating-value",
    law: Law::Closed("LHV = HHV - 2.442 * (8.936 * H + W)"),
    gives: symbol("LHV", &MJ_PER_KG, "lower heating value as fired"),
    takes: &[
        symbol("HHV", &MJ_PER_KG, "higher heating value as fired"),
        symbol("H", &ONE, "hydrogen, mass fraction as fired"),
        symbol("W", &ONE, "water, mass fraction as fired"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &thermal::ISO_1928,
        place: "net calorific value; latent heat of water at 25 °C",
    },
    eval: |v| Ok(lower_heating_value(v[0], v[1], v[2])),
};
