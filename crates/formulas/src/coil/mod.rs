//! A steam coil in the gas: friction and heat transfer inside a helical tube, and heat transfer
//! to its outside from gas that crosses it.
//!
//! Left out: the mist that real steam carries above a dryness of about 0.95, and two-phase
//! friction beyond the homogeneous density, so that the last of the drying reads hopeful.

mod inside;
mod outside;

pub use inside::{
    CRITICAL_REYNOLDS, LAMINAR_FRICTION, LAMINAR_NUSSELT, TURBULENT_FRICTION, TURBULENT_NUSSELT,
    critical_reynolds, laminar_friction, laminar_nusselt, turbulent_friction, turbulent_nusselt,
};
pub use outside::{
    CROSSFLOW_NUSSELT, RADIATION_COEFFICIENT, WHOLE_COEFFICIENT, crossflow_nusselt,
    radiation_coefficient, whole_coefficient,
};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &CRITICAL_REYNOLDS,
    &LAMINAR_FRICTION,
    &TURBULENT_FRICTION,
    &LAMINAR_NUSSELT,
    &TURBULENT_NUSSELT,
    &CROSSFLOW_NUSSELT,
    &RADIATION_COEFFICIENT,
    &WHOLE_COEFFICIENT,
];
