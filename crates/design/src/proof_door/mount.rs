//! What is mounted on the boiler, for the proof.

use plan::section::{Bush, Fitted as Planned, ValveLift};
use plan::{Entry, Plan};
use plant::Plant;
use proof::{
    BlowDown, FeedMeans, Fitted, FusiblePlug, Heating, Interlocks, Lift, Mountings, PressureGauge,
    Raising, Removed, SafetyValve, StockSize, WaterGauge,
};
use reckoning::quantity::{Length, MassFlow};
use reckoning::{Given, Known, Origin};

use super::{dimension, thread_bore};

/// The mountings that a plan names.
#[must_use]
pub fn mountings(plan: &Plan, plant: &Plant, wires: Vec<StockSize>) -> Mountings {
    Mountings {
        valves: plan.safety_valves.iter().map(|v| valve(plan, v)).collect(),
        feeds: plan
            .feed
            .means
            .iter()
            .map(|means| FeedMeans {
                id: named("feed.means", &means.id),
                check_valve: dimension(&means.check_valve),
            })
            .collect(),
        gauge: PressureGauge {
            range: plan.pressure_gauge.range.known(),
            syphon: fitted(&plan.pressure_gauge.syphon),
        },
        glass: WaterGauge {
            bottom: plan.water_gauge.bottom.known(),
            top: plan.water_gauge.top.known(),
            lowest: plan.boiler.water_level.lowest.known(),
            working: plan.boiler.water_level.working.known(),
            crown: plant.water.as_ref().map(|water| water.crown.clone()),
        },
        blow_down: blow_down(plan, plant),
        plug: FusiblePlug {
            fitted: fitted(&plan.fusible_plug.plug),
            melts: plan.fusible_plug.melts.known(),
        },
        heating: heating(plan),
        interlocks: Interlocks {
            flame: fitted(&plan.interlock.flame_failure),
            water: fitted(&plan.interlock.low_water),
            pressure: fitted(&plan.interlock.pressure),
        },
        wires,
    }
}

/// What heats the boiler, by the section of the plan that names its fuel.
fn heating(plan: &Plan) -> Option<Heating> {
    let gas = !plan.gas.fuel.is_absent() || !plan.gas.tank.fill.is_absent();
    let spirit = !plan.spirit.mixture.is_absent();
    match (gas, spirit, plan.fire.fuel.is_absent()) {
        (true, _, _) => Some(Heating::Gas),
        (false, true, _) => Some(Heating::Spirit),
        (false, false, false) => Some(Heating::Solid),
        (false, false, true) => None,
    }
}

/// What raises the pressure: the fire at its greatest, and the surfaces it heats.
#[must_use]
pub fn raising(plan: &Plan, plant: &Plant, greatest: Option<Known<MassFlow>>) -> Raising {
    let surfaces = &plant.surfaces;
    Raising {
        pressure: plan.boiler.design_pressure.known(),
        atmosphere: Some(crate::fire::atmosphere(plan)),
        greatest_evaporation: greatest,
        swept_surface: surfaces
            .tubes_inside
            .clone()
            .or_else(|| surfaces.cross_tubes.clone()),
        radiant_surface: surfaces.firebox().or_else(|| surfaces.flue.clone()),
    }
}

fn valve(plan: &Plan, valve: &plan::section::SafetyValve) -> SafetyValve {
    let bush = bush(plan, &valve.bush);
    SafetyValve {
        id: named("safety-valve", &valve.id),
        lift_class: valve.lift_class.value().map(|lift| match lift {
            ValveLift::Ordinary => Lift::Ordinary,
            ValveLift::High => Lift::High,
            ValveLift::Full => Lift::Full,
        }),
        set: valve.set.known(),
        seat: dimension(&valve.seat),
        bore: dimension(&valve.bore),
        lift: dimension(&valve.lift),
        coefficient: valve.coefficient.known(),
        // The valve stands in the thread of its bush; the way to it is the bore behind, or the
        // thread itself where the bush is tapped right through.
        inlet: bush.and_then(|bush| dimension(&bush.bore).or_else(|| thread_bore(bush))),
        spring: super::spring::spring(&valve.spring),
        pipe: super::spring::pipe(&valve.pipe),
        bore_gone: gone(&valve.bore),
        coefficient_gone: gone(&valve.coefficient),
    }
}

/// Whether a value was once entered and then taken away.
fn gone<T>(entry: &Entry<T>) -> Removed {
    if entry.is_emptied() {
        Removed::Measurement
    } else {
        Removed::Nothing
    }
}

fn blow_down(plan: &Plan, plant: &Plant) -> BlowDown {
    let bush = bush(plan, &plan.blow_down.bush);
    if plant.lying.is_some() {
        return BlowDown {
            height: bush.and_then(|bush| above_the_lowest(plan, bush)),
            outside: bush.and_then(|bush| bush.outside.likely()),
            ring_top: Some(Known {
                value: Length::from_mm(0.0),
                given: off_shape("the lowest line of the barrel"),
            }),
        };
    }
    BlowDown {
        height: bush.and_then(|bush| bush.height.known()),
        outside: bush.and_then(|bush| bush.outside.likely()),
        // The ring stands on the datum, so that its top is as high as it is deep.
        ring_top: plan.boiler.foundation_ring.depth.likely(),
    }
}

/// Height of a bush of a lying barrel above its lowest line.
fn above_the_lowest(plan: &Plan, bush: &Bush) -> Option<Known<Length>> {
    let radius = plan.boiler.barrel.outside.likely()?.value * 0.5;
    let from_top = bush.angle.known()?.value.rad();
    Some(Known {
        value: radius * (1.0 + from_top.cos()),
        given: off_shape("outside of the barrel, and the angle at which the bush stands"),
    })
}

fn off_shape(of: &str) -> Given {
    Given::Shape {
        of: of.to_owned(),
        weakest: Origin::Read,
    }
}

fn bush<'a>(plan: &'a Plan, name: &Entry<String>) -> Option<&'a Bush> {
    let name = name.get()?;
    plan.boiler
        .bushes
        .iter()
        .find(|bush| bush.id.get() == Some(name))
}

fn fitted(entry: &Entry<Planned>) -> Option<Fitted> {
    entry.value().map(|fitted| match fitted {
        Planned::Fitted => Fitted::Yes,
        Planned::None => Fitted::No,
    })
}

pub(super) fn named(list: &str, id: &Entry<String>) -> String {
    id.get()
        .map_or_else(|| id.path().to_owned(), |id| format!("{list}.{id}"))
}
