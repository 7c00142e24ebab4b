//! The steam engine: mean pressure of the diagram, steam taken by a stroke, power, and what the
//! exhaust carries away.
//!
//! The diagram is hyperbolic, its clearance and compression counted; the diagram factor and the
//! missing quantity carry what the diagram leaves out: wire-drawing, condensation on the walls
//! and leakage of the valve.

mod diagram;
mod steam;

pub use diagram::{
    COMPRESSION_PRESSURE, Diagram, INDICATED_POWER, MEAN_EFFECTIVE_PRESSURE, compression_pressure,
    indicated_power, mean_effective_pressure,
};
pub use steam::{
    Charge, HEAT_LOST, STEAM_FLOW, STEAM_PER_STROKE, heat_lost, steam_flow, steam_per_stroke,
};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &MEAN_EFFECTIVE_PRESSURE,
    &COMPRESSION_PRESSURE,
    &STEAM_PER_STROKE,
    &STEAM_FLOW,
    &INDICATED_POWER,
    &HEAT_LOST,
];
