//! The steam engine: mean pressure of the diagram, steam taken by a stroke, power, and what the
//! exhaust carries away.
//!
//! The diagram is hyperbolic, its clearance and compression counted. Wire-drawing is worked from
//! the ports where they are known; condensation on the walls and leakage make up the missing
//! quantity. Left out: lead and release before the end of the stroke, jackets, compounding; the
//! diagram factor carries the rounding of corners.

mod diagram;
mod exhaust;
mod missing;
mod pipe;
mod ports;
mod power;
mod steam;
mod wall;

pub use diagram::{
    COMPRESSION_PRESSURE, Diagram, INDICATED_POWER, MEAN_EFFECTIVE_PRESSURE, compression_pressure,
    indicated_power, mean_effective_pressure,
};
pub use exhaust::{
    PUFF_FLUX, PUFF_SHARE, PUFFED_BACK_PRESSURE, SURFACE_HEAT, cylinder_surface, puff_flux,
    puff_share, puffed_back_pressure, surface_heat,
};
pub use missing::{
    CONDENSED, ENTHALPY_AFTER_LOSS, LEAK, LEAK_AREA, Lost, MISSING_QUANTITY, condensed,
    enthalpy_after_loss, leak, leak_area, missing_quantity,
};
pub use pipe::{
    FREE_NUSSELT, LAGGING_HEAT, PIPE_HEAT, RAYLEIGH, StillAir, Surface, free_nusselt, lagging_heat,
    pipe_heat, rayleigh,
};
pub use ports::{
    MEAN_PRESSURE_FOR, PORT_SPEED, THROTTLED_ADMISSION, WIRE_DRAWN, mean_pressure_for, port_speed,
    throttled_admission, wire_drawn,
};
pub use power::{
    EXHAUST_ENTHALPY, FEED_POWER, IDEAL_WORK, NET_POWER, POWER_ASKED, SHAFT_POWER, WORK_OF_STEAM,
    exhaust_enthalpy, feed_power, ideal_work, net_power, power_asked, shaft_power, work_of_steam,
};
pub use steam::{
    Charge, HEAT_LOST, STEAM_FLOW, STEAM_PER_STROKE, heat_lost, steam_flow, steam_per_stroke,
};
pub use wall::{
    SUPERHEAT_RELIEF, SwungWall, WALL_AREA, WALL_HEAT, WALL_SHARE, WALL_STEAM, superheat_relief,
    wall_area, wall_heat, wall_share, wall_steam,
};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &MEAN_EFFECTIVE_PRESSURE,
    &COMPRESSION_PRESSURE,
    &PORT_SPEED,
    &WIRE_DRAWN,
    &MEAN_PRESSURE_FOR,
    &THROTTLED_ADMISSION,
    &STEAM_PER_STROKE,
    &WALL_SHARE,
    &WALL_AREA,
    &WALL_HEAT,
    &SUPERHEAT_RELIEF,
    &WALL_STEAM,
    &LEAK_AREA,
    &LEAK,
    &MISSING_QUANTITY,
    &STEAM_FLOW,
    &INDICATED_POWER,
    &SHAFT_POWER,
    &WORK_OF_STEAM,
    &IDEAL_WORK,
    &HEAT_LOST,
    &SURFACE_HEAT,
    &CONDENSED,
    &ENTHALPY_AFTER_LOSS,
    &RAYLEIGH,
    &FREE_NUSSELT,
    &PIPE_HEAT,
    &LAGGING_HEAT,
    &PUFF_SHARE,
    &PUFFED_BACK_PRESSURE,
    &PUFF_FLUX,
    &FEED_POWER,
    &POWER_ASKED,
    &NET_POWER,
    &EXHAUST_ENTHALPY,
];
