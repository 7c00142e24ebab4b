//! The cards of the mixture. Nitrogen is the rest of the shares.

use reckoning::quantity::{
    BAR_ABSOLUTE, J_PER_KG, J_PER_KG_K, KELVIN, KG_PER_M3, ONE, PA_ABSOLUTE, PA_S, W_PER_M_K,
};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, Symbol, symbol};

use super::{FlueGas, MoleFractions, density};
use crate::sources::{DERIVED, thermal};

const T: Symbol = symbol("T", &KELVIN, "temperature of the gas");
const X_CO2: Symbol = symbol("x_co2", &ONE, "carbon dioxide, by volume");
const X_H2O: Symbol = symbol("x_h2o", &ONE, "water vapour, by volume");
const X_O2: Symbol = symbol("x_o2", &ONE, "oxygen, by volume");

/// The gas of a card's shares.
fn gas(card: &'static str, shares: &[f64]) -> Result<FlueGas, Refused> {
    let n2 = 1.0 - shares[0] - shares[1] - shares[2];
    let negative = |x: &f64| x.is_nan() || *x < 0.0;
    if let Some(i) = shares.iter().position(negative) {
        return Err(Refused {
            card,
            symbol: [X_CO2, X_H2O, X_O2][i].name,
            value: shares[i],
            why: "a share is not negative",
        });
    }
    if negative(&n2) {
        return Err(Refused {
            card,
            symbol: "x_co2",
            value: shares[0],
            why: "the shares come to more than the whole",
        });
    }
    Ok(FlueGas::new(&MoleFractions {
        co2: shares[0],
        h2o: shares[1],
        o2: shares[2],
        n2,
    }))
}

/// Molar mass of the mixture.
pub static MOLAR_MASS: Card = Card {
    id: "gas.molar-mass",
    law: Law::Closed(
        "M = 44.0095 * x_co2 + 18.01528 * x_h2o + 31.9988 * x_o2 \
         + 28.0134 * (1 - x_co2 - x_h2o - x_o2)",
    ),
    gives: symbol("M", &ONE, "molar mass of the gas, kg/kmol"),
    takes: &[X_CO2, X_H2O, X_O2],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &thermal::NASA_TP_2002_211556,
        place: "molar masses; argon of the air taken as nitrogen",
    },
    eval: |v| Ok(gas("gas.molar-mass", v)?.molar_mass()),
};

/// Density of the gas.
pub static DENSITY: Card = Card {
    id: "gas.density",
    law: Law::Closed("rho = p * M / (8314.46261815324 * T)"),
    gives: symbol("rho", &KG_PER_M3, "density of the gas"),
    takes: &[
        symbol("M", &ONE, "molar mass of the gas, kg/kmol"),
        T,
        symbol("p", &PA_ABSOLUTE, "pressure of the gas"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &thermal::CODATA_2018,
        place: "molar gas constant, in the law of ideal gases",
    },
    eval: |v| Ok(density(v[0], v[1], v[2])),
};

/// Partial pressure of one gas of a mixture, bar; see [`PARTIAL_PRESSURE`].
#[must_use]
pub fn partial_pressure(share: f64, p_bar: f64) -> f64 {
    share * p_bar
}

/// Partial pressure of one gas of a mixture; its dew point is the boiling point there.
pub static PARTIAL_PRESSURE: Card = Card {
    id: "gas.partial-pressure",
    law: Law::Closed("p_a = x * p"),
    gives: symbol("p_a", &BAR_ABSOLUTE, "partial pressure"),
    takes: &[
        symbol("x", &ONE, "share of the gas, by volume"),
        symbol("p", &BAR_ABSOLUTE, "pressure of the mixture"),
    ],
    limits: &[Limit::within("x", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "law of ideal mixtures",
    },
    eval: |v| Ok(partial_pressure(v[0], v[1])),
};

/// Specific heat of the gas.
pub static SPECIFIC_HEAT: Card = Card {
    id: "gas.specific-heat",
    law: Law::Words(
        "sum of x_i R / M times the polynomial a1 T^-2 + a2 T^-1 + a3 + a4 T + a5 T^2 + a6 T^3 \
         + a7 T^4 of each gas",
    ),
    gives: symbol("c_p", &J_PER_KG_K, "specific heat at constant pressure"),
    takes: &[T, X_CO2, X_H2O, X_O2],
    limits: &[Limit::within("T", 200.0, 6000.0)],
    spread: Spread::Unstated,
    cite: POLYNOMIALS,
    eval: |v| Ok(gas("gas.specific-heat", &v[1..])?.specific_heat(v[0])),
};

/// Enthalpy of the gas above 298.15 K.
pub static ENTHALPY: Card = Card {
    id: "gas.enthalpy",
    law: Law::Words(
        "integral of the specific heat from 298.15 K, by the integrated polynomials of each gas",
    ),
    gives: symbol("h", &J_PER_KG, "enthalpy above 298.15 K"),
    takes: &[T, X_CO2, X_H2O, X_O2],
    limits: &[Limit::within("T", 200.0, 6000.0)],
    spread: Spread::Unstated,
    cite: POLYNOMIALS,
    eval: |v| Ok(gas("gas.enthalpy", &v[1..])?.enthalpy(v[0])),
};

/// A mixture is published as far as the least of its gases: water vapour begins at its triple
/// point, its viscosity ends at 900 °C, and the conductivity of carbon dioxide at 1100 K. A test
/// holds these to the cards of the gases.
const COLDEST_K: f64 = 273.16;
const VISCOSITY_HOTTEST_K: f64 = 1173.15;
const CONDUCTIVITY_HOTTEST_K: f64 = 1100.0;

/// Viscosity of the gas.
pub static VISCOSITY: Card = Card {
    id: "gas.viscosity",
    law: Law::Words(
        "sum of x_i mu_i / (sum over j of x_j phi_ij), \
         phi_ij = (1 + (mu_i / mu_j)^(1/2) (M_j / M_i)^(1/4))^2 / (8 (1 + M_i / M_j))^(1/2), \
         with mu_i of each gas by its reference equation",
    ),
    gives: symbol("mu", &PA_S, "dynamic viscosity"),
    takes: &[T, X_CO2, X_H2O, X_O2],
    limits: &[Limit::within("T", COLDEST_K, VISCOSITY_HOTTEST_K)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::JCP_18_VISCOSITY,
        place: "mixing rule, on the reference equations of the pure gases",
    },
    eval: |v| Ok(gas("gas.viscosity", &v[1..])?.transport(v[0]).viscosity),
};

/// Conductivity of the gas.
pub static CONDUCTIVITY: Card = Card {
    id: "gas.conductivity",
    law: Law::Words(
        "half of (sum of x_i k_i + 1 / (sum of x_i / k_i)), \
         with k_i of each gas by its reference equation",
    ),
    gives: symbol("k", &W_PER_M_K, "thermal conductivity"),
    takes: &[T, X_CO2, X_H2O, X_O2],
    limits: &[Limit::within("T", COLDEST_K, CONDUCTIVITY_HOTTEST_K)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::MOLPHYS_12_CONDUCTIVITY,
        place: "mixing rule, on the reference equations of the pure gases",
    },
    eval: |v| {
        Ok(gas("gas.conductivity", &v[1..])?
            .transport(v[0])
            .conductivity)
    },
};

const POLYNOMIALS: Cite = Cite {
    source: &thermal::NASA_TP_2002_211556,
    place: "equations 1 and 2; records CO2, H2O, O2, N2",
};
