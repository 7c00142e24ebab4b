//! Draught: the lift of a hot column, flow through holes, steam nozzles, and the jet pump that
//! a blast pipe and its chimney make.
//!
//! The laws are mechanics: hydrostatics, isentropic expansion and the momentum of a control
//! volume, with published coefficients where a coefficient is needed. Left out: the pulsing of
//! the exhaust, wind, and the proportions of full-size front ends, which have no fuel bed in
//! them.

mod expansion;
mod jet_pump;
mod nozzle;
mod openings;

pub use expansion::{
    Expansion, STEAM_FLUX, STEAM_JET_DENSITY, STEAM_SPEED, STEAM_THROAT_PRESSURE, expansion,
};
pub use jet_pump::{
    CAUGHT_SHARE, DRAWN_SHARE, ENTRAINMENT_SHARE, GAS_INLET_SPEED, JET_PUMP, JOINT_MIXING, JetPump,
    MIXED_DENSITY, MIXED_SPEED, MIXED_TEMPERATURE, Mixing, NET_BLAST, caught_share, drawn_share,
    entrainment_share, gas_inlet_speed, jet_pump, joint_mixing, mixed_density, mixed_speed,
    mixed_temperature, net_blast,
};
pub use nozzle::{BLAST_BACK_PRESSURE, BLAST_SPEED, blast_back_pressure, blast_speed};
pub use openings::{BUOYANCY, OPENING_LOSS, ORIFICE_FLOW, buoyancy, opening_loss, orifice_flow};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &BUOYANCY,
    &ORIFICE_FLOW,
    &OPENING_LOSS,
    &BLAST_SPEED,
    &BLAST_BACK_PRESSURE,
    &GAS_INLET_SPEED,
    &MIXED_TEMPERATURE,
    &MIXED_DENSITY,
    &MIXED_SPEED,
    &JET_PUMP,
    &ENTRAINMENT_SHARE,
    &CAUGHT_SHARE,
    &DRAWN_SHARE,
    &JOINT_MIXING,
    &NET_BLAST,
    &STEAM_FLUX,
    &STEAM_THROAT_PRESSURE,
    &STEAM_SPEED,
    &STEAM_JET_DENSITY,
];
