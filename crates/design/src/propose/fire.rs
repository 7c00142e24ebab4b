//! The fire of a plan on trial: the same loop that answers a check, at working pressure.

use plan::Plan;
use plant::Plant;
use reckoning::quantity::{Length, Quantity};
use steaming::{Blower, FireState, Inputs};

use crate::fire::{Door, door};

/// The door of a plan on trial.
pub(super) fn door_of(plan: &Plan, plant: &Plant) -> Door {
    door(plan, crate::geometry::of_fire(plan, plant).as_ref())
}

/// The state of the fire at working pressure; `None` where the plan does not go so far or the
/// fire has no balance.
pub(super) fn state(plan: &Plan, plant: &Plant) -> Option<FireState> {
    let working_pa = plan.duty.pressure.value()?.si();
    steaming::fire::settle(&door_of(plan, plant).inputs?, working_pa).ok()
}

/// Steam made over steam asked for at working pressure.
pub(super) fn ratio(plan: &Plan, plant: &Plant) -> Option<f64> {
    state(plan, plant)?.steaming_ratio()
}

/// Fuel on a square metre of grate, kg/(m² s), with the engine stopped and jets of the plan's
/// number and this bore blowing.
pub(super) fn blown(plan: &Plan, plant: &Plant, bore: Length) -> Option<f64> {
    let door = door_of(plan, plant);
    let working_pa = plan.duty.pressure.value()?.si();
    let blower = Blower {
        bore_m: bore.si(),
        ..door.blower?
    };
    let stopped = Inputs {
        engine: None,
        plain: None,
        blower: Some(blower),
        ..door.inputs?
    };
    let state = steaming::fire::settle(&stopped, working_pa).ok()?;
    Some(state.pass.firing.bed()?.bed.rate_kg_m2_s)
}
