//! Air to burn a fuel, and the gas that comes of it.

use reckoning::quantity::ONE;
use reckoning::{Card, Cite, Law, Refused, Spread, Symbol, symbol};

use super::Composition;
use crate::gas::MoleFractions;
use crate::sources::thermal;

/// Oxygen that a kilogram of fuel asks of the air, kmol.
pub(super) fn oxygen_demand(x: &Composition) -> f64 {
    x.carbon / 12.011 + x.hydrogen / 4.032 + x.sulphur / 32.06 - x.oxygen / 31.998
}

/// Dry air to burn a kilogram of fuel, kg/kg; see [`STOICHIOMETRIC_AIR`].
#[must_use]
pub fn stoichiometric_air(x: &Composition) -> f64 {
    oxygen_demand(x) * 31.998 / 0.2314
}

/// Dry air that a kilogram of fuel needs.
pub static STOICHIOMETRIC_AIR: Card = Card {
    id: "fuel.stoichiometric-air",
    law: Law::Closed(
        "n = C / 12.011 + H / 4.032 + S / 32.06 - O / 31.998; AF = n * 31.998 / 0.2314",
    ),
    gives: symbol("AF", &ONE, "dry air to burn a kilogram of fuel, kg/kg"),
    takes: &[CARBON, HYDROGEN, OXYGEN, SULPHUR],
    limits: &[],
    spread: Spread::Exact,
    cite: CHEMISTRY,
    eval: |v| {
        Ok(stoichiometric_air(&Composition {
            carbon: v[0],
            hydrogen: v[1],
            oxygen: v[2],
            sulphur: v[3],
            nitrogen: 0.0,
            ash: 0.0,
            water: 0.0,
        }))
    },
};

/// Flue gas from a kilogram of fuel as fired, kg/kg; see [`FLUE_MASS`].
#[must_use]
pub fn flue_mass(air_ratio: f64, air: f64, ash: f64) -> f64 {
    air_ratio * air + 1.0 - ash
}

/// Flue gas from a kilogram of fuel: what goes in, less the ash.
pub static FLUE_MASS: Card = Card {
    id: "fuel.flue-mass",
    law: Law::Closed("g = lambda * AF + 1 - A"),
    gives: symbol(
        "g",
        &ONE,
        "flue gas from a kilogram of fuel as fired, kg/kg",
    ),
    takes: &[
        LAMBDA,
        symbol("AF", &ONE, "dry air to burn a kilogram of fuel, kg/kg"),
        symbol("A", &ONE, "ash, mass fraction as fired"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &crate::sources::DERIVED,
        place: "balance of mass; all the fuel but its ash is gasified",
    },
    eval: |v| Ok(flue_mass(v[0], v[1], v[2])),
};

/// What comes of a kilogram of fuel burnt to the end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Products {
    /// Carbon dioxide, kmol per kg of fuel.
    pub co2: f64,
    /// Sulphur dioxide, kmol per kg of fuel.
    pub so2: f64,
    /// Water vapour, kmol per kg of fuel.
    pub h2o: f64,
    /// Oxygen left over, kmol per kg of fuel.
    pub o2: f64,
    /// Nitrogen with the argon of the air, kmol per kg of fuel.
    pub n2: f64,
}

impl Products {
    /// Shares by volume, sulphur dioxide counted as carbon dioxide.
    #[must_use]
    pub fn fractions(&self) -> MoleFractions {
        let all = self.co2 + self.so2 + self.h2o + self.o2 + self.n2;
        MoleFractions {
            co2: (self.co2 + self.so2) / all,
            h2o: self.h2o / all,
            o2: self.o2 / all,
            n2: self.n2 / all,
        }
    }
}

/// The products of complete burning with `air_ratio` times the air needed.
///
/// # Errors
/// [`Refused`] for an air ratio below 1: carbon monoxide is not reckoned here.
pub fn combustion_products(x: &Composition, air_ratio: f64) -> Result<Products, Refused> {
    if air_ratio.is_nan() || air_ratio < 1.0 {
        return Err(Refused {
            card: "fuel.carbon-dioxide-share",
            symbol: "lambda",
            value: air_ratio,
            why: "with less air than the fuel needs it does not burn to the end",
        });
    }
    let oxygen = oxygen_demand(x);
    Ok(Products {
        co2: x.carbon / 12.011,
        so2: x.sulphur / 32.06,
        h2o: x.hydrogen / 2.016 + x.water / 18.015,
        o2: (air_ratio - 1.0) * oxygen,
        n2: 3.773 * air_ratio * oxygen + x.nitrogen / 28.014,
    })
}

const CHEMISTRY: Cite = Cite {
    source: &thermal::ATOMIC_WEIGHTS,
    place: "with dry air of 0.2314 oxygen by mass, 3.773 nitrogen and argon to oxygen by volume",
};

const CARBON: Symbol = symbol("C", &ONE, "carbon, mass fraction as fired");
const HYDROGEN: Symbol = symbol("H", &ONE, "hydrogen, mass fraction as fired");
const OXYGEN: Symbol = symbol("O", &ONE, "oxygen, mass fraction as fired");
const SULPHUR: Symbol = symbol("S", &ONE, "sulphur, mass fraction as fired");
const NITROGEN: Symbol = symbol("N", &ONE, "nitrogen, mass fraction as fired");
const WATER: Symbol = symbol("W", &ONE, "water, mass fraction as fired");
const LAMBDA: Symbol = symbol("lambda", &ONE, "air ratio");

const TAKES: &[Symbol] = &[CARBON, HYDROGEN, OXYGEN, SULPHUR, NITROGEN, WATER, LAMBDA];

/// The shares at the values of a card, in the order of [`TAKES`].
fn shares(v: &[f64]) -> Result<MoleFractions, Refused> {
    let fuel = Composition {
        carbon: v[0],
        hydrogen: v[1],
        oxygen: v[2],
        sulphur: v[3],
        nitrogen: v[4],
        ash: 0.0,
        water: v[5],
    };
    Ok(combustion_products(&fuel, v[6])?.fractions())
}

/// Share of carbon dioxide in the flue gas.
pub static CARBON_DIOXIDE_SHARE: Card = Card {
    id: "fuel.carbon-dioxide-share",
    law: Law::Closed(
        "n = C / 12.011 + H / 4.032 + S / 32.06 - O / 31.998; \
         n_c = C / 12.011 + S / 32.06; n_w = H / 2.016 + W / 18.015; \
         n_o = (lambda - 1) * n; n_n = 3.773 * lambda * n + N / 28.014; \
         x_co2 = n_c / (n_c + n_w + n_o + n_n)",
    ),
    gives: symbol("x_co2", &ONE, "carbon dioxide in the flue gas, by volume"),
    takes: TAKES,
    limits: &[],
    spread: Spread::Exact,
    cite: CHEMISTRY,
    eval: |v| Ok(shares(v)?.co2),
};

/// Share of water vapour in the flue gas.
pub static WATER_VAPOUR_SHARE: Card = Card {
    id: "fuel.water-vapour-share",
    law: Law::Closed(
        "n = C / 12.011 + H / 4.032 + S / 32.06 - O / 31.998; \
         n_c = C / 12.011 + S / 32.06; n_w = H / 2.016 + W / 18.015; \
         n_o = (lambda - 1) * n; n_n = 3.773 * lambda * n + N / 28.014; \
         x_h2o = n_w / (n_c + n_w + n_o + n_n)",
    ),
    gives: symbol("x_h2o", &ONE, "water vapour in the flue gas, by volume"),
    takes: TAKES,
    limits: &[],
    spread: Spread::Exact,
    cite: CHEMISTRY,
    eval: |v| Ok(shares(v)?.h2o),
};

/// Share of oxygen in the flue gas.
pub static OXYGEN_SHARE: Card = Card {
    id: "fuel.oxygen-share",
    law: Law::Closed(
        "n = C / 12.011 + H / 4.032 + S / 32.06 - O / 31.998; \
         n_c = C / 12.011 + S / 32.06; n_w = H / 2.016 + W / 18.015; \
         n_o = (lambda - 1) * n; n_n = 3.773 * lambda * n + N / 28.014; \
         x_o2 = n_o / (n_c + n_w + n_o + n_n)",
    ),
    gives: symbol("x_o2", &ONE, "oxygen in the flue gas, by volume"),
    takes: TAKES,
    limits: &[],
    spread: Spread::Exact,
    cite: CHEMISTRY,
    eval: |v| Ok(shares(v)?.o2),
};
