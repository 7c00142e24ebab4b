//! The cards of water and steam: one for each property of each published equation.
//!
//! A card covers the whole range that the release gives its equation, which is wider than what
//! [`super::at_pt`] and its like serve, and refuses outside it: an equation of state has no
//! meaning there, so there is no value to carry with a breach.

mod backward;
mod domain;
mod forward;
mod mixture;
mod saturation;
mod transport;

pub use backward::*;
pub use forward::*;
pub use mixture::*;
pub use saturation::*;
pub use transport::*;

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &SATURATION_TEMPERATURE,
    &SATURATION_PRESSURE,
    &REGION1_V,
    &REGION1_H,
    &REGION1_U,
    &REGION1_S,
    &REGION1_CP,
    &REGION1_W,
    &REGION2_V,
    &REGION2_H,
    &REGION2_U,
    &REGION2_S,
    &REGION2_CP,
    &REGION2_W,
    &METASTABLE_V,
    &METASTABLE_H,
    &METASTABLE_U,
    &METASTABLE_S,
    &METASTABLE_CP,
    &METASTABLE_W,
    &REGION1_T_PH,
    &REGION2A_T_PH,
    &REGION2B_T_PH,
    &REGION2C_T_PH,
    &REGION2_BORDER_B_C,
    &REGION1_T_PS,
    &REGION2A_T_PS,
    &REGION2B_T_PS,
    &REGION2C_T_PS,
    &WET_DENSITY,
    &DRYNESS,
    &VISCOSITY,
    &CONDUCTIVITY_BACKGROUND,
    &CONDUCTIVITY_WATER,
    &CONDUCTIVITY_STEAM,
    &SURFACE_TENSION,
];
