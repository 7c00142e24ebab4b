//! A mixture of fixed composition, prepared once and read many times.

use super::thermo::{
    self, BREAK_K, CARBON_DIOXIDE, NITROGEN, OXYGEN, PureGas, REFERENCE_TEMPERATURE_K, Range,
    UNIVERSAL_GAS_CONSTANT, WATER_VAPOUR,
};
use super::transport::{Mixing, PureLaw, REFERENCE_LAWS, Transport};

/// Shares by volume of the gases that are reckoned with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MoleFractions {
    /// Carbon dioxide.
    pub co2: f64,
    /// Water vapour.
    pub h2o: f64,
    /// Oxygen.
    pub o2: f64,
    /// Nitrogen, with argon.
    pub n2: f64,
}

impl MoleFractions {
    /// Dry air, with its argon as nitrogen.
    pub const DRY_AIR: Self = Self {
        co2: 0.0,
        h2o: 0.0,
        o2: 1.0 / 4.773,
        n2: 3.773 / 4.773,
    };

    /// The sum of the shares, which is 1.
    #[must_use]
    pub fn sum(&self) -> f64 {
        self.co2 + self.h2o + self.o2 + self.n2
    }

    fn in_order(&self) -> [f64; 4] {
        [self.co2, self.h2o, self.o2, self.n2]
    }
}

const GASES: [&PureGas; 4] = [&CARBON_DIOXIDE, &WATER_VAPOUR, &OXYGEN, &NITROGEN];

/// A gas of one composition, ready for a loop: nothing here allocates.
#[derive(Clone, Copy, Debug)]
pub struct FlueGas {
    fractions: MoleFractions,
    molar_mass: f64,
    gas_constant: f64,
    ranges: [Range; 2],
    enthalpy_at_reference: f64,
    mixing: Mixing,
}

impl FlueGas {
    /// Prepares the gas with the reference equations for viscosity and conductivity.
    #[must_use]
    pub fn new(fractions: &MoleFractions) -> Self {
        Self::with_laws(fractions, &REFERENCE_LAWS)
    }

    /// Prepares the gas with other laws of the pure gases, in the order carbon dioxide, water
    /// vapour, oxygen, nitrogen: so that a sum done elsewhere on other data can be repeated.
    #[must_use]
    pub fn with_laws(fractions: &MoleFractions, laws: &[PureLaw; 4]) -> Self {
        debug_assert!(
            (fractions.sum() - 1.0).abs() < 1e-9,
            "the shares of a gas add up to one"
        );
        let shares = fractions.in_order();
        let molar_masses = GASES.map(|g| g.molar_mass);
        let mut molar_mass = 0.0;
        let mut ranges = [[0.0; 8]; 2];
        for (share, gas) in shares.iter().zip(GASES) {
            molar_mass += share * gas.molar_mass;
            for (sum, range) in ranges.iter_mut().zip(&gas.ranges) {
                for (s, a) in sum.iter_mut().zip(range) {
                    *s += share * a;
                }
            }
        }
        Self {
            fractions: *fractions,
            molar_mass,
            gas_constant: UNIVERSAL_GAS_CONSTANT / molar_mass,
            ranges,
            enthalpy_at_reference: thermo::enthalpy(&ranges[0], REFERENCE_TEMPERATURE_K),
            mixing: Mixing::new(shares, molar_masses, laws),
        }
    }

    /// The composition.
    #[must_use]
    pub fn fractions(&self) -> &MoleFractions {
        &self.fractions
    }

    /// Molar mass, kg/kmol.
    #[must_use]
    pub fn molar_mass(&self) -> f64 {
        self.molar_mass
    }

    /// Density, kg/m³, at `t_k` kelvin and `p_pa` pascal absolute.
    #[must_use]
    pub fn density(&self, t_k: f64, p_pa: f64) -> f64 {
        density(self.molar_mass, t_k, p_pa)
    }

    fn range(&self, t_k: f64) -> &Range {
        &self.ranges[usize::from(t_k >= BREAK_K)]
    }

    /// Specific heat at constant pressure, J/(kg K), for 200 to 6000 K.
    #[must_use]
    pub fn specific_heat(&self, t_k: f64) -> f64 {
        self.gas_constant * thermo::heat_capacity(self.range(t_k), t_k)
    }

    /// Enthalpy above [`REFERENCE_TEMPERATURE_K`], J/kg, for 200 to 6000 K.
    #[must_use]
    pub fn enthalpy(&self, t_k: f64) -> f64 {
        self.gas_constant * (thermo::enthalpy(self.range(t_k), t_k) - self.enthalpy_at_reference)
    }

    /// Viscosity and conductivity; beyond the range of [`super::VISCOSITY`] and
    /// [`super::CONDUCTIVITY`] the equations are carried on smoothly.
    #[must_use]
    pub fn transport(&self, t_k: f64) -> Transport {
        self.mixing.at(t_k)
    }
}

/// Density of an ideal gas, kg/m³; see [`super::DENSITY`].
#[must_use]
pub fn density(molar_mass: f64, t_k: f64, p_pa: f64) -> f64 {
    p_pa * molar_mass / (UNIVERSAL_GAS_CONSTANT * t_k)
}
