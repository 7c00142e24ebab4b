//! A fuel of one molecule: its molar mass, and the shares of its elements by mass, from which
//! air and flue gas follow by the same chemistry as those of a solid fuel.

use reckoning::quantity::ONE;
use reckoning::{Card, Cite, Law, Spread, symbol};

use super::Composition;
use crate::sources::thermal;

/// Atomic weight of carbon, as the chemistry of this family has it.
const CARBON_WEIGHT: f64 = 12.011;
/// Atomic weight of hydrogen.
const HYDROGEN_WEIGHT: f64 = 1.008;
/// Atomic weight of oxygen.
const OXYGEN_WEIGHT: f64 = 15.999;

/// Atoms in a molecule of fuel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Molecule {
    /// Carbon.
    pub carbon: f64,
    /// Hydrogen.
    pub hydrogen: f64,
    /// Oxygen.
    pub oxygen: f64,
}

impl Molecule {
    /// Molar mass, kg/kmol.
    #[must_use]
    pub fn molar_mass(&self) -> f64 {
        molecule_mass(self.carbon, self.hydrogen, self.oxygen)
    }

    /// Shares of the elements by mass, for [`super::combustion_products`].
    #[must_use]
    pub fn composition(&self) -> Composition {
        let share = |atoms, weight| element_share(atoms, weight, self.molar_mass());
        Composition {
            carbon: share(self.carbon, CARBON_WEIGHT),
            hydrogen: share(self.hydrogen, HYDROGEN_WEIGHT),
            oxygen: share(self.oxygen, OXYGEN_WEIGHT),
            nitrogen: 0.0,
            sulphur: 0.0,
            ash: 0.0,
            water: 0.0,
        }
    }
}

/// Molar mass of a molecule of carbon, hydrogen and oxygen, kg/kmol; see [`MOLECULE_MASS`].
#[must_use]
pub fn molecule_mass(carbon: f64, hydrogen: f64, oxygen: f64) -> f64 {
    CARBON_WEIGHT * carbon + HYDROGEN_WEIGHT * hydrogen + OXYGEN_WEIGHT * oxygen
}

/// Molar mass of a molecule of carbon, hydrogen and oxygen.
pub static MOLECULE_MASS: Card = Card {
    id: "fuel.molecule-mass",
    law: Law::Closed("M = 12.011 * n_C + 1.008 * n_H + 15.999 * n_O"),
    gives: symbol("M", &ONE, "molar mass of the fuel, kg/kmol"),
    takes: &[
        symbol("n_C", &ONE, "atoms of carbon in the molecule"),
        symbol("n_H", &ONE, "atoms of hydrogen in the molecule"),
        symbol("n_O", &ONE, "atoms of oxygen in the molecule"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: WEIGHTS,
    eval: |v| Ok(molecule_mass(v[0], v[1], v[2])),
};

/// Share of an element in a molecule, by mass; see [`ELEMENT_SHARE`].
#[must_use]
pub fn element_share(atoms: f64, weight: f64, molar_mass: f64) -> f64 {
    atoms * weight / molar_mass
}

/// Share of an element in a molecule, by mass.
pub static ELEMENT_SHARE: Card = Card {
    id: "fuel.element-share",
    law: Law::Closed("x = n * w / M"),
    gives: symbol("x", &ONE, "share of the element, by mass"),
    takes: &[
        symbol("n", &ONE, "atoms of the element in the molecule"),
        symbol("w", &ONE, "atomic weight of the element"),
        symbol("M", &ONE, "molar mass of the fuel, kg/kmol"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: WEIGHTS,
    eval: |v| Ok(element_share(v[0], v[1], v[2])),
};

const WEIGHTS: Cite = Cite {
    source: &thermal::ATOMIC_WEIGHTS,
    place: "carbon, hydrogen, oxygen",
};
