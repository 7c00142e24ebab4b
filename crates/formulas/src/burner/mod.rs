//! A self-aspirating gas burner: the momentum that draws the primary air, and the ports on which
//! the flame stands.
//!
//! Mechanics throughout; one fitted law, of the gradient at which a flame blows off, with its
//! spread of a factor of two. Left out: the root of the balance, which is sought where the loop
//! is, and radiant plates.

mod flame;
mod momentum;
mod ports;

pub use flame::{FLAME_LENGTH, PORT_RICHNESS, flame_length, port_richness};
pub use momentum::{
    BEST_THROAT, JET_PUSH, MIXING_LOSS, MIXTURE_DENSITY, Mixture, PRIMARY_AIR_RATIO, Throat,
    best_throat, jet_push, mixing_loss, mixture_density, primary_air_ratio,
};
pub use ports::{
    BLOW_OFF_GRADIENT, BLOW_OFF_SHARE, BLOW_OFF_SHARES, LIGHT_BACK_GRADIENT, LIGHT_BACK_RICHNESS,
    NO_LIGHT_BACK_ABOVE, PORT_LOADING, PORT_SPEED, QUENCH_BORE_M, QUENCH_SLOT_M, RICH_RATIO,
    ROUND_GRADIENT, SLOT_GRADIENT, blow_off_gradient, blow_off_share, port_loading, port_speed,
    rich_ratio, round_gradient, slot_gradient,
};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &MIXTURE_DENSITY,
    &JET_PUSH,
    &MIXING_LOSS,
    &PRIMARY_AIR_RATIO,
    &BEST_THROAT,
    &PORT_SPEED,
    &PORT_LOADING,
    &SLOT_GRADIENT,
    &ROUND_GRADIENT,
    &RICH_RATIO,
    &BLOW_OFF_GRADIENT,
    &BLOW_OFF_SHARE,
    &PORT_RICHNESS,
    &FLAME_LENGTH,
];
