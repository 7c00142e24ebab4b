//! The greatest heat of a gas fire, which a safety valve must bear: the tank as hot as it may ever
//! get, filled with the strongest gas that it takes, regulator and hand valve passed by.

use formulas::balance::round_area;
use formulas::supply::{
    Lpg, critical_ratio, heat_rate, jet_flow, jet_flux, jet_ratio, real_gas_flow,
};
use reckoning::quantity::BAR_ABSOLUTE;

use super::FuelGas;
use crate::fault::NotSettled;

/// Share of the heat of the gas that comes to the water at the most: above that of any flue that
/// was worked (chosen here).
pub const GREATEST_SHARE: f64 = 0.85;

/// A jet on the vapour of a tank as hot as it may get.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hottest {
    /// The gas.
    pub gas: FuelGas,
    /// Pressure in the tank, Pa absolute.
    pub pressure_pa: f64,
    /// Gas through the jet by the law of an ideal gas, kg/s.
    pub ideal_kg_s: f64,
    /// Compressibility of the vapour.
    pub compressibility: f64,
    /// Gas through the jet, kg/s.
    pub gas_kg_s: f64,
    /// Its heat by the lower heating value, W.
    pub heat_w: f64,
    /// The most of it that comes to the water, W.
    pub to_water_w: f64,
}

/// The greatest heat of a jet of this bore (m), its edge lost, on the vapour of this liquid at
/// this temperature (K), against air of this pressure (Pa).
///
/// # Errors
/// [`NotSettled::Plant`] where the temperature lies outside the tables of the gas.
pub fn greatest_heat(
    liquid: &Lpg,
    bore_m: f64,
    tank_k: f64,
    air_pa: f64,
) -> Result<Hottest, NotSettled> {
    let worked = FuelGas::over(liquid, tank_k).zip(liquid.saturated(tank_k));
    let (gas, saturated) = worked.ok_or(NotSettled::Plant {
        what: "highest temperature of the gas tank in K",
        value: tank_k,
        why: "it lies outside the tables of the gas",
    })?;
    let pressure_pa = BAR_ABSOLUTE.to_si(liquid.pressure(tank_k));
    let ratio = jet_ratio(air_pa, pressure_pa, critical_ratio(gas.exponent));
    let flux = jet_flux(pressure_pa, tank_k, gas.molar_mass, gas.exponent, ratio);
    let ideal_kg_s = jet_flow(1.0, round_area(bore_m), flux);
    let gas_kg_s = real_gas_flow(ideal_kg_s, saturated.compressibility);
    let heat_w = heat_rate(gas_kg_s, gas.heating_value_j_kg);
    Ok(Hottest {
        gas,
        pressure_pa,
        ideal_kg_s,
        compressibility: saturated.compressibility,
        gas_kg_s,
        heat_w,
        to_water_w: GREATEST_SHARE * heat_w,
    })
}
