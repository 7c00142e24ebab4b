//! Where ends and rings lap a wall, and the length of thread that a bush offers.

use plan::Plan;
use plan::section::Bush;
use plant::part::Stands;
use plant::{StandingPlate, Vessel};
use proof::{Lap, Screwed};
use reckoning::quantity::Length;
use reckoning::{Given, Known, Origin};

use super::{Fire, metal, metal_temperature, thread};

fn placed(value: Length, of: &str) -> Known<Length> {
    Known {
        value,
        given: Given::Shape {
            of: of.to_owned(),
            weakest: Origin::Read,
        },
    }
}

fn lap(of: &str, from: Length, to: Length) -> Lap {
    Lap {
        of: of.to_owned(),
        from: placed(from, of),
        to: placed(to, of),
    }
}

/// The stretch of wall that a plate and its flange lap.
pub(super) fn of_plate(id: &str, plate: &StandingPlate) -> Lap {
    let (low, high) = (plate.underside, plate.underside + plate.thickness);
    match plate.flange {
        None => lap(id, low, high),
        Some(flange) if flange.stands == Stands::Up => lap(id, low, low + flange.height),
        Some(flange) => lap(id, high - flange.height, high),
    }
}

/// The laps of the barrel of a vertical boiler: its upper plate and its ring.
pub(super) fn of_barrel(vessel: &Vessel) -> Vec<Lap> {
    vec![
        of_plate("tube-plate.upper", &vessel.upper),
        lap("foundation-ring", vessel.barrel_low, vessel.ring_high),
    ]
}

/// The laps of the firebox of a vertical boiler: its crown and its ring.
pub(super) fn of_firebox(vessel: &Vessel) -> Vec<Lap> {
    vec![
        of_plate("tube-plate.lower", &vessel.lower),
        lap("foundation-ring", Length::from_m(0.0), vessel.ring_high),
    ]
}

/// What is screwed into the bushes that have a thread, or had one.
pub(super) fn screwed(plan: &Plan) -> Vec<Screwed> {
    let bushes = plan.boiler.bushes.iter();
    let threaded = bushes.filter(|bush| !bush.thread.is_absent());
    threaded
        .map(|bush| {
            let own = metal(&bush.metal, plan);
            Screwed {
                id: super::bush_id(bush),
                thread: thread(bush),
                bush: own,
                screw: own,
                engaged: room(bush),
                metal_temperature: metal_temperature(plan, Fire::Touches),
            }
        })
        .collect()
}

/// Length of bush that a thread can have: what stands out and in of its wall. The wall itself is
/// left out, for the worse.
fn room(bush: &Bush) -> Option<Known<Length>> {
    let (out, inwards) = (bush.length_out.likely()?, bush.length_in.likely()?);
    let of = "reach of the bush out of and into its wall";
    Some(placed(out.value + inwards.value, of))
}
