//! Fuels: heating value, air to burn them, and what leaves the fire.
//!
//! Mass fractions are of the fuel as fired, ash and water included. Air is dry; its argon is
//! counted as nitrogen, and sulphur dioxide as carbon dioxide. Left out: unburnt gas and
//! carbon (an efficiency of burning is an input of the loop), and the moisture of the air.

mod as_fired;
mod burning;
mod heating_value;
mod molecule;
mod oxygen;
mod solid;

pub use as_fired::{SHARE_AS_FIRED, share_as_fired};
pub use burning::{
    CARBON_DIOXIDE_SHARE, FLUE_MASS, OXYGEN_SHARE, Products, STOICHIOMETRIC_AIR,
    WATER_VAPOUR_SHARE, combustion_products, flue_mass, stoichiometric_air,
};
pub use heating_value::{
    HIGHER_HEATING_VALUE, LOWER_HEATING_VALUE, higher_heating_value, lower_heating_value,
};
pub use molecule::{ELEMENT_SHARE, MOLECULE_MASS, Molecule, element_share, molecule_mass};
pub use oxygen::{
    AIR_BY_VOLUME, AIR_RATIO_FROM_OXYGEN, DRY_SHARE, OXYGEN_NEEDED, air_by_volume,
    air_ratio_from_oxygen, dry_share, oxygen_needed,
};
pub use solid::{SolidFuel, solid_fuel};

use reckoning::Card;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &SHARE_AS_FIRED,
    &HIGHER_HEATING_VALUE,
    &LOWER_HEATING_VALUE,
    &STOICHIOMETRIC_AIR,
    &FLUE_MASS,
    &CARBON_DIOXIDE_SHARE,
    &WATER_VAPOUR_SHARE,
    &OXYGEN_SHARE,
    &MOLECULE_MASS,
    &ELEMENT_SHARE,
    &OXYGEN_NEEDED,
    &AIR_BY_VOLUME,
    &DRY_SHARE,
    &AIR_RATIO_FROM_OXYGEN,
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

    /// The same fuel with other shares of water and ash, as it lies in the hopper.
    #[must_use]
    pub fn with_water_and_ash(&self, water: f64, ash: f64) -> Self {
        let burnable = 1.0 - self.water - self.ash;
        let share = |x| share_as_fired(x, burnable, water, ash);
        Self {
            carbon: share(self.carbon),
            hydrogen: share(self.hydrogen),
            oxygen: share(self.oxygen),
            nitrogen: share(self.nitrogen),
            sulphur: share(self.sulphur),
            ash,
            water,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn drying_a_fuel_keeps_what_burns_in_proportion() {
        let fuel = solid_fuel("wood").expect("a row").composition;
        let dry = fuel.with_water_and_ash(0.0, fuel.ash);
        assert!((dry.sum() - 1.0).abs() < 2e-4);
        assert!((dry.hydrogen / dry.carbon - fuel.hydrogen / fuel.carbon).abs() < 1e-12);
        let back = dry.with_water_and_ash(fuel.water, fuel.ash);
        assert!((back.carbon - fuel.carbon).abs() < 1e-12);
    }
}
