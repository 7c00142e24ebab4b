//! A spirit burner: what the flame evaporates from a wick or cup, what the hot burner boils off
//! besides, and how high the flame stands.
//!
//! Burning by the transfer number of a fuel in air, with a film coefficient fitted here to
//! remembered rates of small pools. Left out: burners that boil their spirit and burn it from a
//! jet, wind, the lip of a cup, and sodden or charred wicks.

mod blend;
mod evaporation;
mod flame;

pub use blend::{NoSpirit, PARTS, SPIRIT_HEATING_VALUE, Spirit, spirit_heating_value};
pub use evaporation::{
    Burning, EVAPORATION_FLUX, FLAME_FILM, SPIRIT_BURNT, TRANSFER_NUMBER, WICK_AREA,
    evaporation_flux, flame_film, spirit_burnt, transfer_number, wick_area,
};
pub use flame::{FLAME_HEIGHT, flame_height};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &SPIRIT_HEATING_VALUE,
    &TRANSFER_NUMBER,
    &FLAME_FILM,
    &EVAPORATION_FLUX,
    &WICK_AREA,
    &SPIRIT_BURNT,
    &FLAME_HEIGHT,
];
