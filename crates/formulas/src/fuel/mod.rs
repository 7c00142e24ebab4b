//! Solid fuels: heating value, air to burn them, and what leaves the fire.
//!
//! Mass fractions are of the fuel as fired, ash and water included. Air is dry; its argon is
//! counted as nitrogen, and sulphur dioxide as carbon dioxide. Left out: unburnt gas and
//! carbon (an efficiency of burning is an input of the loop), and the moisture of the air.

mod burning;
mod heating_value;

pub use burning::{
    CARBON_DIOXIDE_SHARE, FLUE_MASS, OXYGEN_SHARE, Products, STOICHIOMETRIC_AIR,
    WATER_VAPOUR_SHARE, combustion_products, flue_mass, stoichiometric_air,
};
pub use heating_value::{
    HIGHER_HEATING_VALUE, LOWER_HEATING_VALUE, higher_heating_value, lower_heating_value,
};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &HIGHER_HEATING_VALUE,
    &LOWER_HEATING_VALUE,
    &STOICHIOMETRIC_AIR,
    &FLUE_MASS,
    &CARBON_DIOXIDE_SHARE,
    &WATER_VAPOUR_SHARE,
    &OXYGEN_SHARE,
];

/// Composition of a solid fuel as fired, mass fractions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Composition {
    /// Carbon.
    pub carbon: f64,
    /// Hydrogen, that of the water not counted.
    pub hydrogen: f64,
    /// Oxygen, that of the water not counted.
    pub oxygen: f64,
    /// Nitrogen.
    pub nitrogen: f64,
    /// Sulphur.
    pub sulphur: f64,
    /// Ash.
    pub ash: f64,
    /// Water.
    pub water: f64,
}

impl Composition {
    /// The sum of the fractions, which is 1 for a whole analysis.
    #[must_use]
    pub fn sum(&self) -> f64 {
        self.carbon
            + self.hydrogen
            + self.oxygen
            + self.nitrogen
            + self.sulphur
            + self.ash
            + self.water
    }
}
