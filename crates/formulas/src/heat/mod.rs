//! Heat from the gas to the plates: radiation of gas and fire, convection and friction in tubes.
//!
//! Left out: soot, boiling on the water side (the wall stands a few kelvin above the water at
//! these fluxes), and fouling.

mod enclosure;
mod friction;
mod gas_radiation;
mod nusselt;
mod similarity;

pub(crate) use enclosure::SIGMA;
pub use enclosure::{
    BOX_BEAM, ENCLOSURE_EMISSIVITY, FIRE_EMISSIVITY, RADIANT_HEAT, TUBE_BEAM, TUBE_RADIANT_FLUX,
    box_beam, enclosure_emissivity, fire_emissivity, radiant_heat, tube_beam, tube_radiant_flux,
};
pub use friction::{
    FRICTION_FACTOR, FRICTION_LOSS, LOCAL_LOSS, MOMENTUM_CHANGE, friction_factor, friction_loss,
    local_loss, momentum_change,
};
pub use gas_radiation::{
    ABSORBING_PATH, CARBON_DIOXIDE_EMISSIVITY, GAS_ABSORPTIVITY, GAS_EMISSIVITY, GasPath, OVERLAP,
    SHORTEST_PATH_BAR_CM, WATER_VAPOUR_EMISSIVITY, absorbing_path, absorptivity,
    carbon_dioxide_emissivity, emissivity, overlap, water_vapour_emissivity,
};
pub use nusselt::{
    NUSSELT_LAMINAR, NUSSELT_TRANSITION, NUSSELT_TURBULENT, nusselt, nusselt_laminar,
    nusselt_transition, nusselt_turbulent,
};
pub use similarity::{
    FILM_COEFFICIENT, PRANDTL, REYNOLDS, TUBE_FLUX, film_coefficient, prandtl, reynolds, tube_flux,
};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &TUBE_FLUX,
    &REYNOLDS,
    &PRANDTL,
    &FILM_COEFFICIENT,
    &FRICTION_FACTOR,
    &FRICTION_LOSS,
    &LOCAL_LOSS,
    &MOMENTUM_CHANGE,
    &NUSSELT_LAMINAR,
    &NUSSELT_TURBULENT,
    &NUSSELT_TRANSITION,
    &WATER_VAPOUR_EMISSIVITY,
    &CARBON_DIOXIDE_EMISSIVITY,
    &OVERLAP,
    &GAS_EMISSIVITY,
    &ABSORBING_PATH,
    &GAS_ABSORPTIVITY,
    &BOX_BEAM,
    &TUBE_BEAM,
    &FIRE_EMISSIVITY,
    &ENCLOSURE_EMISSIVITY,
    &RADIANT_HEAT,
    &TUBE_RADIANT_FLUX,
];
