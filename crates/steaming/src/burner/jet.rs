//! The gas jet: what passes it, and with what thrust.

use formulas::balance::round_area;
use formulas::fuel::Composition;
use formulas::supply::{
    GasDrawn, Lpg, critical_ratio, jet_flow, jet_flux, jet_mouth_pressure, jet_ratio, jet_speed,
    jet_thrust,
};

use crate::fault::NotSettled;

/// A gas as it comes to the jet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FuelGas {
    /// Shares of its elements by mass.
    pub composition: Composition,
    /// Molar mass, kg/kmol.
    pub molar_mass: f64,
    /// Isentropic exponent at its temperature.
    pub exponent: f64,
    /// Lower heating value, J/kg.
    pub heating_value_j_kg: f64,
    /// Temperature before the jet, K.
    pub gas_k: f64,
}

impl FuelGas {
    /// The vapour over a liquefied gas at this temperature (K); `None` outside the tables.
    #[must_use]
    pub fn over(liquid: &Lpg, gas_k: f64) -> Option<Self> {
        Self::of(liquid, &liquid.drawn(gas_k), gas_k)
    }

    /// A vapour that was drawn from a liquefied gas, at this temperature (K).
    pub(super) fn of(liquid: &Lpg, vapour: &GasDrawn, gas_k: f64) -> Option<Self> {
        Some(Self {
            composition: vapour.composition,
            molar_mass: vapour.molar_mass,
            exponent: liquid.exponent(vapour, gas_k)?,
            heating_value_j_kg: vapour.heating_value,
            gas_k,
        })
    }
}

/// A gas jet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GasJet {
    /// Bore, m.
    pub bore_m: f64,
    /// Discharge coefficient.
    pub coefficient: f64,
    /// Pressure before it, Pa absolute.
    pub supply_pa: f64,
}

/// A gas jet at work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GasJetState {
    /// Pressure ratio at which it chokes.
    pub critical: f64,
    /// Pressure in its mouth over that before it.
    pub ratio: f64,
    /// Mass flux in the hole, kg/(m² s).
    pub flux: f64,
    /// Gas, kg/s.
    pub gas_kg_s: f64,
    /// Speed in the mouth, m/s.
    pub speed_m_s: f64,
    /// Pressure in the mouth, Pa absolute.
    pub mouth_pa: f64,
    /// Thrust, N.
    pub thrust_n: f64,
}

impl GasJet {
    /// The jet with this gas, against air of this pressure (Pa).
    ///
    /// # Errors
    /// [`NotSettled::Plant`] where the gas does not stand above the pressure of the air.
    pub fn at_work(&self, gas: &FuelGas, air_pa: f64) -> Result<GasJetState, NotSettled> {
        if self.supply_pa.is_nan() || self.supply_pa <= air_pa {
            return Err(NotSettled::Plant {
                what: "pressure before the gas jet in Pa",
                value: self.supply_pa,
                why: "it does not stand above that of the air",
            });
        }
        let (k, area) = (gas.exponent, round_area(self.bore_m));
        let critical = critical_ratio(k);
        let ratio = jet_ratio(air_pa, self.supply_pa, critical);
        let flux = jet_flux(self.supply_pa, gas.gas_k, gas.molar_mass, k, ratio);
        let gas_kg_s = jet_flow(self.coefficient, area, flux);
        let speed_m_s = jet_speed(gas.gas_k, gas.molar_mass, k, ratio);
        let mouth_pa = jet_mouth_pressure(ratio, self.supply_pa);
        Ok(GasJetState {
            critical,
            ratio,
            flux,
            gas_kg_s,
            speed_m_s,
            mouth_pa,
            thrust_n: jet_thrust(gas_kg_s, speed_m_s, mouth_pa, air_pa, area),
        })
    }

    /// The discharge coefficient of a jet whose gas was weighed, kg/s.
    ///
    /// # Errors
    /// As [`Self::at_work`].
    pub fn weighed(&self, gas: &FuelGas, air_pa: f64, kg_s: f64) -> Result<f64, NotSettled> {
        let full = Self {
            coefficient: 1.0,
            ..*self
        };
        Ok(kg_s / full.at_work(gas, air_pa)?.gas_kg_s)
    }
}
