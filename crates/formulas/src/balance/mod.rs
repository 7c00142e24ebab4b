//! Balances and definitions that tie the laws of the other families together: each a line that
//! a reader can check by hand.
//!
//! Nothing here is published; each follows from conservation or from what a word means.

mod account;
mod fire;
mod flame;
mod jets;
mod steam;

pub use account::{
    BED_MASS, BOTH_LOSSES, FUEL_HEAT, HEAT_SHARE, REST_OF_LOSS, TIME_TO_USE, UNBURNT_HEAT,
    WHOLE_AIR_RATIO, bed_mass, both_losses, fuel_heat, heat_share, rest_of_loss, time_to_use,
    unburnt_heat, whole_air_ratio,
};
pub use fire::{
    AIR_FOR_FUEL, BED_AND_GRATE_LOSS, DRAUGHT_LOST, FLOW_FOR_FUEL, FLUX_ON_AREA, HEAT_CARRIED,
    HEAT_SET_FREE, LIFT_SHARE, TUBE_LOSS, air_for_fuel, bed_and_grate_loss, draught_lost,
    flow_for_fuel, flux_on_area, heat_carried, heat_set_free, lift_share, tube_loss,
};
pub use flame::{
    FLUE_LOSS, FRICTION_HEADS, SHARE_SET_FREE, WALL_CONVECTION, WALL_HEAT, flue_loss,
    friction_heads, share_set_free, wall_convection, wall_heat,
};
pub use jets::{
    GAS_OVER_STEAM, JET_MOMENTUM, JET_STEAM, JETS_AREA, LENGTH_RATIO, ROUND_AREA, TOTAL_AREA,
    TOTAL_FLOW, TOTAL_MOMENTUM, gas_over_steam, jet_momentum, jet_steam, jets_area, length_ratio,
    round_area, total_area, total_flow, total_momentum,
};
pub use steam::{
    ABSOLUTE_PRESSURE, BACK_PRESSURE, DEMAND, DENSITY_FROM_VOLUME, EFFICIENCY, ENTHALPY_LACKING,
    ENTHALPY_WITH_GAIN, EVAPORATION, LEAVING_SPEED, PRESSURE_SHARE, STEAMING_RATIO, USEFUL_HEAT,
    WALL_TEMPERATURE, WET_ENTHALPY, absolute_pressure, back_pressure, demand, density_from_volume,
    efficiency, enthalpy_lacking, enthalpy_with_gain, evaporation, leaving_speed, pressure_share,
    steaming_ratio, useful_heat, wall_temperature, wet_enthalpy,
};

use reckoning::{Card, Cite};

use crate::sources::DERIVED;

const fn derived(place: &'static str) -> Cite {
    Cite {
        source: &DERIVED,
        place,
    }
}

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &BOTH_LOSSES,
    &WHOLE_AIR_RATIO,
    &FUEL_HEAT,
    &UNBURNT_HEAT,
    &HEAT_SHARE,
    &BED_MASS,
    &TIME_TO_USE,
    &REST_OF_LOSS,
    &AIR_FOR_FUEL,
    &FLOW_FOR_FUEL,
    &FLUX_ON_AREA,
    &BED_AND_GRATE_LOSS,
    &LIFT_SHARE,
    &HEAT_SET_FREE,
    &HEAT_CARRIED,
    &TUBE_LOSS,
    &DRAUGHT_LOST,
    &SHARE_SET_FREE,
    &WALL_CONVECTION,
    &WALL_HEAT,
    &FLUE_LOSS,
    &FRICTION_HEADS,
    &ABSOLUTE_PRESSURE,
    &PRESSURE_SHARE,
    &BACK_PRESSURE,
    &WALL_TEMPERATURE,
    &DENSITY_FROM_VOLUME,
    &WET_ENTHALPY,
    &ENTHALPY_WITH_GAIN,
    &ENTHALPY_LACKING,
    &USEFUL_HEAT,
    &EVAPORATION,
    &DEMAND,
    &STEAMING_RATIO,
    &EFFICIENCY,
    &LEAVING_SPEED,
    &ROUND_AREA,
    &JET_STEAM,
    &JETS_AREA,
    &JET_MOMENTUM,
    &TOTAL_MOMENTUM,
    &GAS_OVER_STEAM,
    &LENGTH_RATIO,
    &TOTAL_AREA,
    &TOTAL_FLOW,
];
