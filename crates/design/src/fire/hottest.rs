//! The greatest heat of a gas fire, for the safety valve: the hottest tank, the strongest gas that
//! can be filled, every valve before the jet open.

use formulas::balance::ROUND_AREA;
use formulas::supply::{
    CRITICAL_RATIO, HEAT_RATE, JET_FLOW, JET_FLUX, JET_RATIO, Lpg, REAL_GAS_FLOW,
};
use plan::Plan;
use plan::section::{GasAccepted, GasFuel};
use reckoning::quantity::{
    Absolute, KELVIN, Length, M, MJ_PER_KG, ONE, PA_ABSOLUTE, Quantity, Ratio, SpecificEnergy,
    Temperature,
};
use reckoning::size::Bad;
use reckoning::{Given, Known, Origin, Ref, Refused, Working};
use steaming::burner::{Hottest, greatest_heat};
use steaming::{Inputs, StrongestGas};

use super::{Taken, gas};

/// The temperature that a tank may reach where the plan names none that is higher, °C (common
/// practice, no source).
const HOTTEST_C: f64 = 50.0;

/// The strongest gas of a plan in its hottest tank.
#[derive(Clone, Debug)]
pub struct HottestDay {
    /// What passes the jet.
    pub heat: Hottest,
    /// The gas in words.
    pub gas: &'static str,
    /// Whether stronger gases are kept out by the filling valve.
    pub kept_out: bool,
    /// Temperature of the tank, K.
    pub tank_k: f64,
    /// The lines of it.
    pub working: Working,
}

impl HottestDay {
    /// What the rule on it is told.
    #[must_use]
    pub fn strongest(&self) -> StrongestGas<'_> {
        StrongestGas {
            gas: self.gas,
            tank_k: self.tank_k,
            heat_w: self.heat.heat_w,
            kept_out: self.kept_out,
        }
    }
}

/// The hottest day of a plan's gas fire; `None` where it burns no gas, or where the highest
/// temperature of the tank was entered once and taken away.
pub(crate) fn hottest_day(plan: &Plan, inputs: &Inputs) -> Option<HottestDay> {
    inputs.firing.flame()?.burner()?;
    if plan.gas.tank.hottest.is_emptied() {
        return None;
    }
    let named = plan.gas.tank.hottest.known();
    let usual = Known {
        value: Temperature::from_c(HOTTEST_C),
        given: Given::Chosen {
            between: "the temperatures of tanks in the sun".to_owned(),
            reason: "50 °C, where the plan names none that is higher".to_owned(),
            weakest: Origin::CommonPractice,
        },
    };
    let tank = named
        .filter(|known| known.value.si() > usual.value.si())
        .unwrap_or(usual);
    let tank_k = tank.value.si();
    let (liquid, gas, kept_out) = strongest(plan, tank_k)?;
    let bore = plan.burner.jet.bore.for_proof(Bad::Large)?;
    let air_pa = inputs.site.atmosphere_pa;
    let heat = greatest_heat(&liquid, bore.value.si(), tank_k, air_pa).ok()?;
    let mut working = Working::new();
    explain(&mut working, (&tank, &bore), &heat, air_pa).ok()?;
    Some(HottestDay {
        heat,
        gas,
        kept_out,
        tank_k,
        working,
    })
}

/// The gas of the highest pressure among those that can be filled.
fn strongest(plan: &Plan, tank_k: f64) -> Option<(Lpg, &'static str, bool)> {
    let planned = gas::liquid(plan, &mut Taken::default())?;
    let name = match plan.gas.fuel.value()? {
        GasFuel::Propane => "propane",
        GasFuel::NormalButane => "n-butane",
        GasFuel::Isobutane => "isobutane",
        GasFuel::Mixture => "the mixture of the plan",
    };
    let (accepted, kept_out) = match plan.gas.accepts.value() {
        Some(GasAccepted::FuelAlone) => (None, true),
        Some(GasAccepted::Butanes) => (Some((Lpg::new([0.0, 0.0, 1.0]).ok()?, "isobutane")), true),
        // Where nobody says what the filling valve keeps out, it keeps nothing out.
        Some(GasAccepted::Any) | None => {
            (Some((Lpg::new([1.0, 0.0, 0.0]).ok()?, "propane")), false)
        }
    };
    let stronger = accepted.filter(|(gas, _)| gas.pressure(tank_k) > planned.pressure(tank_k));
    let (gas, name) = stronger.unwrap_or((planned, name));
    Some((gas, name, kept_out && name != "propane"))
}

/// Files the flow through a unit of area of the open jet.
fn explain_flux(
    working: &mut Working,
    tank: &Known<Temperature>,
    heat: &Hottest,
    air_pa: f64,
) -> Result<Ref, Refused> {
    let t_0 = working.know("T_0", "temperature of the tank", &KELVIN, tank);
    let p_0 = working.know::<Absolute>(
        "p_0",
        "vapour pressure of the gas in it",
        &PA_ABSOLUTE,
        &of_gas(Absolute::from_si(heat.pressure_pa)),
    );
    let p_a = working.know::<Absolute>(
        "p_a",
        "pressure of the air",
        &PA_ABSOLUTE,
        &of_gas(Absolute::from_si(air_pa)),
    );
    let ratio = |si: f64| of_gas(Ratio::from_si(si));
    let molar = working.know::<Ratio>(
        "M_g",
        "molar mass of the gas, kg/kmol",
        &ONE,
        &ratio(heat.gas.molar_mass),
    );
    let k = working.know::<Ratio>("k", "isentropic exponent", &ONE, &ratio(heat.gas.exponent));
    let critical = working.worked(&CRITICAL_RATIO, &[k])?;
    let r = working.worked(&JET_RATIO, &[p_a, p_0, critical])?;
    working.worked(&JET_FLUX, &[p_0, t_0, molar, k, r])
}

/// The lines of it.
fn explain(
    working: &mut Working,
    (tank, bore): (&Known<Temperature>, &Known<Length>),
    heat: &Hottest,
    air_pa: f64,
) -> Result<(), Refused> {
    let flux = explain_flux(working, tank, heat, air_pa)?;
    let ratio = |si: f64| of_gas(Ratio::from_si(si));
    let bore = working.know("d_j", "bore of the jet at its largest", &M, bore);
    let area = working.worked(&ROUND_AREA, &[bore])?;
    let whole = working.know::<Ratio>(
        "C_d",
        "discharge coefficient, the edge of the jet lost",
        &ONE,
        &ratio(1.0),
    );
    let ideal = working.worked(&JET_FLOW, &[whole, area, flux])?;
    let z = working.know::<Ratio>("Z", "compressibility", &ONE, &ratio(heat.compressibility));
    let flow = working.worked(&REAL_GAS_FLOW, &[ideal, z])?;
    let value = working.know::<SpecificEnergy>(
        "H",
        "lower heating value of the gas",
        &MJ_PER_KG,
        &of_gas(SpecificEnergy::from_si(heat.gas.heating_value_j_kg)),
    );
    working.worked(&HEAT_RATE, &[flow, value])?;
    Ok(())
}

/// A number of the gas by its tables at the temperature of the tank.
fn of_gas<Q: Quantity>(value: Q) -> Known<Q> {
    Known {
        value,
        given: Given::Chosen {
            between: "the gases that can be filled".to_owned(),
            reason: "by the tables of the strongest of them, in the hottest tank".to_owned(),
            weakest: Origin::FromMemory,
        },
    }
}
