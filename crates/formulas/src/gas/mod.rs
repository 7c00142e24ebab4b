//! Flue gas and air as mixtures of carbon dioxide, water vapour, oxygen and nitrogen.
//!
//! Heat capacity and enthalpy by the NASA polynomials, viscosity and conductivity of the pure
//! gases by the NASA fits, mixed by the published rules. Pressure near one atmosphere: the gas
//! is ideal. Left out: dissociation, carbon monoxide, soot; argon is counted as nitrogen.

mod cards;
mod mixture;
mod thermo;
mod transport;

pub use cards::{
    CONDUCTIVITY, DENSITY, ENTHALPY, MOLAR_MASS, PARTIAL_PRESSURE, SPECIFIC_HEAT, VISCOSITY,
    partial_pressure,
};
pub use mixture::{FlueGas, MoleFractions, density};
pub use thermo::REFERENCE_TEMPERATURE_K;
pub use transport::{Fit, NASA_FITS, PureFits, Transport};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &MOLAR_MASS,
    &DENSITY,
    &PARTIAL_PRESSURE,
    &SPECIFIC_HEAT,
    &ENTHALPY,
    &VISCOSITY,
    &CONDUCTIVITY,
];
