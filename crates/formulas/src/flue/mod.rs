//! A gas flue: where the gas burns, what wall and cross tubes take, and what the gas spends on
//! its way.
//!
//! Radiation of gas, friction, the change of momentum, openings and the lift of the chimney are
//! those of [`crate::heat`] and [`crate::draught`]; crossflow is that of [`crate::coil`]. Left
//! out: carbon monoxide, and the heat that leaves by the shell.

mod cross_tube;
mod mixing;
mod radiation;
mod release;
mod wall;

pub use cross_tube::{
    Meeting, Obstacle, PASSAGE_AREA, PASSAGE_REYNOLDS, TUBE_DRAG, TUBE_HEAT, TUBE_LOSS,
    TUBE_SURFACE, passage_area, passage_reynolds, tube_drag, tube_heat, tube_loss, tube_surface,
};
pub use mixing::{RADIAL_MIXING_LENGTH, radial_mixing_length};
pub use radiation::{SOOT_LEFT, SOOTY_EMISSIVITY, soot_left, sooty_emissivity};
pub use release::{BURNT_SHARE, Poker, burnt_share};
pub use wall::{
    FLUE_FLUX, GRAETZ, HYDRAULIC_DIAMETER, LOCAL_NUSSELT, OPEN_AREA, SETTLED_NUSSELT, flue_flux,
    graetz, hydraulic_diameter, local_nusselt, open_area, settled_nusselt,
};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &BURNT_SHARE,
    &RADIAL_MIXING_LENGTH,
    &OPEN_AREA,
    &HYDRAULIC_DIAMETER,
    &FLUE_FLUX,
    &SETTLED_NUSSELT,
    &GRAETZ,
    &LOCAL_NUSSELT,
    &SOOTY_EMISSIVITY,
    &SOOT_LEFT,
    &PASSAGE_AREA,
    &TUBE_SURFACE,
    &PASSAGE_REYNOLDS,
    &TUBE_HEAT,
    &TUBE_DRAG,
    &TUBE_LOSS,
];
