//! Liquefied gas of propane, n-butane and isobutane: the tables and laws of this family put
//! together for a loop. Nothing here allocates once the gas is prepared.

use super::fluid::{Fluid, Saturated, fluid};
use super::jet::isentropic_exponent;
use super::mixture::{
    mass_share, mixture_density, mixture_pressure, mole_share, vapour_share, weighted_mean,
};
use crate::fuel::{Composition, stoichiometric_air};
use crate::table::NoValue;

/// The parts, in the order of every array of this file.
pub const PARTS: [&str; 3] = ["propane", "n-butane", "isobutane"];

/// A liquefied gas of a composition by mass.
#[derive(Clone, Copy, Debug)]
pub struct Lpg {
    /// The parts in the order of [`PARTS`].
    pub fluids: [Fluid; 3],
    /// Shares of the liquid by mass.
    pub by_mass: [f64; 3],
    /// Shares of the liquid by mole.
    pub by_mole: [f64; 3],
}

/// The vapour over the liquid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GasDrawn {
    /// Shares by mole.
    pub by_mole: [f64; 3],
    /// Shares by mass.
    pub by_mass: [f64; 3],
    /// Molar mass, kg/kmol.
    pub molar_mass: f64,
    /// Lower heating value, J/kg.
    pub heating_value: f64,
    /// Dry air to burn it, kg/kg.
    pub air: f64,
    /// Shares of its elements by mass.
    pub composition: Composition,
}

impl Lpg {
    /// Prepares the gas from shares by mass in the order of [`PARTS`].
    ///
    /// # Errors
    /// [`NoValue::NoRow`] where a table lacks a part.
    pub fn new(by_mass: [f64; 3]) -> Result<Self, NoValue> {
        let [propane, n_butane, isobutane] = PARTS;
        let fluids = [fluid(propane)?, fluid(n_butane)?, fluid(isobutane)?];
        Ok(Self {
            fluids,
            by_mass,
            by_mole: moles(&fluids, by_mass),
        })
    }

    /// The same gas with another liquid, as when the light part has boiled off first.
    #[must_use]
    pub fn with_liquid(&self, by_mass: [f64; 3]) -> Self {
        Self {
            fluids: self.fluids,
            by_mass,
            by_mole: moles(&self.fluids, by_mass),
        }
    }

    /// Pressure over the liquid, bar absolute, as an ideal solution.
    #[must_use]
    pub fn pressure(&self, t_k: f64) -> f64 {
        mixture_pressure(self.by_mole, self.fluids.map(|f| f.pressure(t_k)))
    }

    /// The vapour over the liquid at `t_k`.
    #[must_use]
    pub fn drawn(&self, t_k: f64) -> GasDrawn {
        let (p, alone) = (self.pressure(t_k), self.fluids.map(|f| f.pressure(t_k)));
        let [x, y, z] = self.by_mole;
        self.of_vapour([
            vapour_share(x, alone[0], p),
            vapour_share(y, alone[1], p),
            vapour_share(z, alone[2], p),
        ])
    }

    /// Vapour of these shares by mole.
    #[must_use]
    pub fn of_vapour(&self, by_mole: [f64; 3]) -> GasDrawn {
        let molar = self.fluids.map(|f| f.molecule.molar_mass());
        let molar_mass = weighted_mean(by_mole, molar);
        let share = |i: usize| mass_share(by_mole[i], molar[i], molar_mass);
        let by_mass = [share(0), share(1), share(2)];
        let parts = self.fluids.map(|f| f.molecule.composition());
        let element = |of: fn(&Composition) -> f64| {
            weighted_mean(by_mass, [of(&parts[0]), of(&parts[1]), of(&parts[2])])
        };
        GasDrawn {
            by_mole,
            by_mass,
            molar_mass,
            heating_value: weighted_mean(by_mass, self.fluids.map(|f| f.heating_value)),
            air: weighted_mean(by_mass, parts.map(|c| stoichiometric_air(&c))),
            composition: Composition {
                carbon: element(|c| c.carbon),
                hydrogen: element(|c| c.hydrogen),
                ..parts[0]
            },
        }
    }

    /// Isentropic exponent of a vapour at `t_k`; none outside the tables.
    #[must_use]
    pub fn exponent(&self, gas: &GasDrawn, t_k: f64) -> Option<f64> {
        let [a, b, c] = &self.fluids;
        let heats = [a.molar_heat(t_k)?, b.molar_heat(t_k)?, c.molar_heat(t_k)?];
        Some(isentropic_exponent(weighted_mean(gas.by_mole, heats)))
    }

    /// Saturation at `t_k`: the latent heat is that of the vapour drawn, the liquid is the mean
    /// of the parts by mass, the compressibility that of the vapour; none outside the tables.
    #[must_use]
    pub fn saturated(&self, t_k: f64) -> Option<Saturated> {
        let [a, b, c] = &self.fluids;
        let parts = [a.saturated(t_k)?, b.saturated(t_k)?, c.saturated(t_k)?];
        Some(Saturated {
            latent: weighted_mean(self.drawn(t_k).by_mass, parts.map(|s| s.latent)),
            density: mixture_density(self.by_mass, parts.map(|s| s.density)),
            liquid_heat: weighted_mean(self.by_mass, parts.map(|s| s.liquid_heat)),
            compressibility: weighted_mean(self.by_mole, parts.map(|s| s.compressibility)),
        })
    }
}

fn moles(fluids: &[Fluid; 3], by_mass: [f64; 3]) -> [f64; 3] {
    let part = |i: usize| [by_mass[i], fluids[i].molecule.molar_mass()];
    [
        mole_share(part(0), part(1), part(2)),
        mole_share(part(1), part(0), part(2)),
        mole_share(part(2), part(0), part(1)),
    ]
}
