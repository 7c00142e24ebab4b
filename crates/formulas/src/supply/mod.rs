//! Supply of a gas or spirit burner: the tank on its own vapour, what the vapour is made of,
//! and the jet that it leaves by.
//!
//! Pressures, latent heats and specific heats are those of reference equations of state, by fit
//! or by table; the jet is the isentropic flow of an ideal gas. Left out: regulators and hand
//! valves (the pressure before the jet is an input), and liquid in the gas pipe.

mod fluid;
mod jet;
mod lpg;
mod mixture;
mod tank;
mod vapour;

pub use fluid::{Fluid, Saturated, Vapour, fluid};
pub use jet::{
    CRITICAL_RATIO, HEAT_RATE, ISENTROPIC_EXPONENT, JET_FLOW, JET_FLUX, JET_MOUTH_PRESSURE,
    JET_RATIO, JET_SPEED, JET_THRUST, REAL_GAS_FLOW, critical_ratio, heat_rate,
    isentropic_exponent, jet_flow, jet_flux, jet_mouth_pressure, jet_ratio, jet_speed, jet_thrust,
    real_gas_flow,
};
pub use lpg::{GasDrawn, Lpg, PARTS};
pub use mixture::{
    MASS_SHARE, MIXTURE_AIR, MIXTURE_COMPRESSIBILITY, MIXTURE_DENSITY, MIXTURE_ELEMENT,
    MIXTURE_HEAT, MIXTURE_HEATING_VALUE, MIXTURE_LATENT_HEAT, MIXTURE_LIQUID_HEAT,
    MIXTURE_MOLAR_MASS, MIXTURE_PRESSURE, MOLE_SHARE, VAPOUR_SHARE, mass_share, mixture_density,
    mixture_pressure, mole_share, vapour_share, weighted_mean,
};
pub use tank::{
    Drawing, HOLDING_RATE, LIQUID_SHARE, TANK_CHANGE, TANK_HEAT, TANK_METAL, TANK_SURFACE,
    TANK_VOLUME, WARMING_AREA, WET_AREA, holding_rate, liquid_share, tank_change, tank_heat,
    tank_metal, tank_surface, tank_volume, warming_area, wet_area,
};
pub use vapour::{
    BOILING_TEMPERATURE, SPIRIT_BOILING, VAPOUR_PRESSURE, boiling_temperature, vapour_pressure,
};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &VAPOUR_PRESSURE,
    &BOILING_TEMPERATURE,
    &SPIRIT_BOILING,
    &MOLE_SHARE,
    &MIXTURE_PRESSURE,
    &VAPOUR_SHARE,
    &MASS_SHARE,
    &MIXTURE_MOLAR_MASS,
    &MIXTURE_HEAT,
    &MIXTURE_COMPRESSIBILITY,
    &MIXTURE_HEATING_VALUE,
    &MIXTURE_LATENT_HEAT,
    &MIXTURE_AIR,
    &MIXTURE_ELEMENT,
    &MIXTURE_LIQUID_HEAT,
    &MIXTURE_DENSITY,
    &ISENTROPIC_EXPONENT,
    &CRITICAL_RATIO,
    &JET_RATIO,
    &JET_FLUX,
    &JET_FLOW,
    &JET_SPEED,
    &JET_MOUTH_PRESSURE,
    &JET_THRUST,
    &HEAT_RATE,
    &REAL_GAS_FLOW,
    &TANK_VOLUME,
    &TANK_SURFACE,
    &TANK_METAL,
    &LIQUID_SHARE,
    &WET_AREA,
    &WARMING_AREA,
    &TANK_HEAT,
    &HOLDING_RATE,
    &TANK_CHANGE,
];
