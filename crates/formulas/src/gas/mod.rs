//! Flue gas and air as mixtures of carbon dioxide, water vapour, oxygen and nitrogen.
//!
//! Heat capacity and enthalpy by the NASA polynomials, viscosity and conductivity of the pure
//! gases by their reference equations, mixed by the published rules. Pressure near one atmosphere: the gas
//! is ideal. Left out: dissociation, carbon monoxide, soot; argon is counted as nitrogen.

mod cards;
mod mixture;
mod pure;
mod thermo;
mod transport;

pub use cards::{
    CONDUCTIVITY, DENSITY, ENTHALPY, MOLAR_MASS, PARTIAL_PRESSURE, SPECIFIC_HEAT, VISCOSITY,
    partial_pressure,
};
pub use mixture::{FlueGas, MoleFractions, density};
pub use pure::{
    CARBON_DIOXIDE_CONDUCTIVITY, CARBON_DIOXIDE_VISCOSITY, NITROGEN_CONDUCTIVITY,
    NITROGEN_VISCOSITY, OXYGEN_CONDUCTIVITY, OXYGEN_VISCOSITY, carbon_dioxide_conductivity,
    carbon_dioxide_viscosity, nitrogen_conductivity, nitrogen_viscosity, oxygen_conductivity,
    oxygen_viscosity,
};
pub use thermo::REFERENCE_TEMPERATURE_K;
pub(crate) use thermo::UNIVERSAL_GAS_CONSTANT;
pub use transport::{PureLaw, REFERENCE_LAWS, Transport};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &MOLAR_MASS,
    &DENSITY,
    &PARTIAL_PRESSURE,
    &SPECIFIC_HEAT,
    &ENTHALPY,
    &CARBON_DIOXIDE_VISCOSITY,
    &OXYGEN_VISCOSITY,
    &NITROGEN_VISCOSITY,
    &VISCOSITY,
    &CARBON_DIOXIDE_CONDUCTIVITY,
    &OXYGEN_CONDUCTIVITY,
    &NITROGEN_CONDUCTIVITY,
    &CONDUCTIVITY,
];
