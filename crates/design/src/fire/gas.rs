//! The gas of a plan as it comes to the jet, and the jet.

use formulas::supply::Lpg;
use plan::Plan;
use plan::section::{Fitted, GasFuel};
use reckoning::quantity::{Absolute, Gauge, PERCENT, Quantity, Ratio, Temperature, show};
use reckoning::{Given, Known, Origin};
use steaming::burner::{FuelGas, GasJet};

use super::Taken;

/// Liquefied gas and how it comes to the jet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Supply {
    /// The vapour over the liquid of the tank.
    pub(crate) gas: FuelGas,
    /// Pressure before the jet, Pa absolute.
    pub(crate) supply_pa: f64,
}

/// The gas as it comes to the jet when the burner is lit.
pub(crate) fn supply(plan: &Plan, air_pa: Option<f64>, taken: &mut Taken) -> Option<Supply> {
    let liquid = liquid(plan, taken);
    let tank_k = taken.wanted(&plan.gas.tank.temperature);
    let set_pa = held(plan, taken);
    let (liquid, tank_k) = (liquid?, tank_k?);
    let Some(gas) = FuelGas::over(&liquid, tank_k) else {
        taken.gaps.push(format!(
            "{}: the tables of the gas do not reach it",
            plan.gas.tank.temperature.path()
        ));
        return None;
    };
    let own_pa = Absolute::from_bar(liquid.pressure(tank_k)).si() - air_pa?;
    let gauge_pa = match set_pa? {
        Some(set_pa) if set_pa <= own_pa => set_pa,
        held => {
            let reason = match held {
                Some(_) => "the tank is too cold for the regulator, which stands open",
                None => "no regulator: the pressure over the liquid",
            };
            let path = plan.gas.pressure.path();
            // What the regulator holds is no longer what the jet sees.
            taken.numbers.retain(|n| n.field != path);
            taken.keep(path, Some(vapour(own_pa, tank_k, reason)))?
        }
    };
    Some(Supply {
        gas,
        supply_pa: gauge_pa + air_pa?,
    })
}

fn vapour(pa: f64, tank_k: f64, reason: &str) -> Known<Gauge> {
    Known {
        value: Gauge::from_si(pa),
        given: Given::Chosen {
            between: "the regulator and the vapour pressure of the tank".to_owned(),
            reason: format!(
                "{reason}, at {} °C",
                show::figures(Temperature::from_si(tank_k).c(), 3)
            ),
            weakest: Origin::Read,
        },
    }
}

/// Pressure that a regulator holds, Pa gauge; `Some(None)` without one, `None` where it is a gap.
fn held(plan: &Plan, taken: &mut Taken) -> Option<Option<f64>> {
    match plan.gas.regulator.value() {
        Some(Fitted::Fitted) => taken.wanted(&plan.gas.pressure).map(Some),
        Some(Fitted::None) => Some(None),
        None => {
            taken.gaps.push(plan.gas.regulator.path().to_owned());
            None
        }
    }
}

/// The liquid that is filled.
pub(crate) fn liquid(plan: &Plan, taken: &mut Taken) -> Option<Lpg> {
    let by_mass = match plan.gas.fuel.value() {
        Some(GasFuel::Propane) => [1.0, 0.0, 0.0],
        Some(GasFuel::NormalButane) => [0.0, 1.0, 0.0],
        Some(GasFuel::Isobutane) => [0.0, 0.0, 1.0],
        Some(GasFuel::Mixture) => mixture(plan, taken)?,
        None => {
            taken.gaps.push(plan.gas.fuel.path().to_owned());
            return None;
        }
    };
    Lpg::new(by_mass).ok()
}

/// How far the shares of a mixture may lie from a whole.
const WHOLE: f64 = 1e-3;

fn mixture(plan: &Plan, taken: &mut Taken) -> Option<[f64; 3]> {
    let m = &plan.gas.mixture;
    let parts = [&m.propane, &m.normal_butane, &m.isobutane];
    for part in parts {
        taken.not_taken_away(part);
    }
    // A part that is not named is not in the mixture: the others then make a whole, or a gap.
    let shares = parts.map(|part| part.value().map_or(0.0, Quantity::si));
    let whole: f64 = shares.iter().sum();
    if (whole - 1.0).abs() > WHOLE {
        taken.gaps.push(format!(
            "gas.mixture: its shares make {} %",
            show::figures(PERCENT.from_si(whole), 3)
        ));
        return None;
    }
    for part in parts.into_iter().filter(|part| part.value().is_some()) {
        taken.wanted(part);
    }
    Some(shares)
}

/// The jet; its coefficient is that of the gas that was weighed, where it was.
pub(crate) fn jet(
    plan: &Plan,
    supply: Option<&Supply>,
    air_pa: Option<f64>,
    taken: &mut Taken,
) -> Option<GasJet> {
    let j = &plan.burner.jet;
    let bore = taken.size(&j.bore);
    taken.not_taken_away(&j.flow);
    let Some(flow) = j.flow.typed() else {
        let coefficient = taken.number(&j.coefficient);
        return Some(GasJet {
            bore_m: bore?,
            coefficient: coefficient?,
            supply_pa: supply?.supply_pa,
        });
    };
    let (supply, bore_m) = (supply?, bore?);
    let jet = GasJet {
        bore_m,
        coefficient: 1.0,
        supply_pa: supply.supply_pa,
    };
    let weighed = jet.weighed(&supply.gas, air_pa?, flow.value.si()).ok();
    let coefficient = weighed.map(|c| Known {
        value: Ratio::from_si(c),
        given: Given::Chosen {
            between: "the coefficients of the trade and the gas that was weighed".to_owned(),
            reason: format!("{} passed this jet ({})", flow.text, j.flow.path()),
            weakest: Origin::Read,
        },
    });
    Some(GasJet {
        coefficient: taken.keep(j.coefficient.path(), coefficient)?,
        ..jet
    })
}
