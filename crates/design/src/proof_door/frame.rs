//! How the parts hang together, for the proof: flanges, the frame of the wet firebox, stays.

use plan::Plan;
use plan::section::{FlangeSide, Stay as Planned, StayRun as Run, TubePlate as Plate};
use proof::{Firehole, Flange, Frame, Points, Ring, Stay, StayRun};
use reckoning::quantity::{Area, Ratio};
use reckoning::size::Bad;
use reckoning::{Given, Known, Origin};

use super::{Dimension, Fire, PlateGeometry, dimension, hung, joint, metal, metal_temperature};

/// The flange of an end plate that closes the part `closes`.
pub(crate) fn flange(plate: &Plate, closes: &str) -> Option<Flange> {
    let named = !(plate.flange_height.is_absent() && plate.flange.is_absent());
    named.then(|| Flange {
        closes: closes.to_owned(),
        height: dimension(&plate.flange_height),
        inside_radius: dimension(&plate.inside_radius),
        points: plate.flange.value().map(|side| match side {
            FlangeSide::Inward => Points::TowardsWater,
            FlangeSide::Outward => Points::AwayFromWater,
        }),
        joint: joint(&plate.joint),
    })
}

/// The frame of the wet firebox.
pub(super) fn frame(plan: &Plan) -> Frame {
    let boiler = &plan.boiler;
    let ring = &boiler.foundation_ring;
    let hole = &boiler.firehole;
    let has_firehole = !(hole.bore.is_absent() && hole.outside.is_absent());
    Frame {
        shell: "barrel".to_owned(),
        firebox: "firebox".to_owned(),
        crown: "tube-plate.lower".to_owned(),
        upper: "tube-plate.upper".to_owned(),
        ring: Ring {
            id: "foundation-ring".to_owned(),
            metal: metal(&ring.metal, plan),
            depth: dimension(&ring.depth),
            joint: joint(&ring.joint),
            metal_temperature: metal_temperature(plan, Fire::Touches),
        },
        firehole: has_firehole.then(|| Firehole {
            id: "firehole".to_owned(),
            joint: joint(&hole.joint),
        }),
    }
}

/// The stays of the plan, each with the plate that hangs on it.
pub(super) fn stays(plan: &Plan, geometry: Option<&PlateGeometry>) -> Vec<Stay> {
    plan.boiler
        .stays
        .iter()
        .map(|stay| one(stay, plan, geometry))
        .collect()
}

fn one(stay: &Planned, plan: &Plan, geometry: Option<&PlateGeometry>) -> Stay {
    let id = stay.id.get().map_or_else(|| stay.id.path(), String::as_str);
    let across = stay.run.value() == Some(Run::FireboxToBarrel);
    let boiler = &plan.boiler;
    let walls = if across {
        [&boiler.barrel.wall, &boiler.firebox.wall]
    } else {
        [
            &boiler.tube_plate.upper.thickness,
            &boiler.tube_plate.lower.thickness,
        ]
    };
    Stay {
        id: format!("stay.{id}"),
        metal: metal(&stay.metal, plan),
        run: if across {
            StayRun::AcrossLeg
        } else {
            StayRun::PlateToPlate
        },
        diameter: dimension(&stay.diameter),
        bore: dimension(&stay.bore),
        field: field(stay, plan, geometry),
        plate: thinner(walls.map(dimension)),
        // The plan does not say how far the filler of a stay can be seen: the worse is taken.
        ends: stay_ends(stay),
        joint: proof::Joint::Blind,
        beside: None,
        length: geometry.and_then(|g| {
            if across {
                g.leg.clone()
            } else {
                g.tube_length.clone()
            }
        }),
        height: stay.height.known(),
        metal_temperature: metal_temperature(plan, Fire::Touches),
    }
}

/// The plate or wall that hangs on a stay.
fn field(stay: &Planned, plan: &Plan, geometry: Option<&PlateGeometry>) -> Option<Known<Area>> {
    let geometry = geometry?;
    let b = &plan.boiler.barrel;
    let bore = match b.bore.likely() {
        Some(bore) => bore.value,
        None => b.outside.likely()?.value - b.wall.likely()?.value * 2.0,
    };
    if hung::between_plates(stay) {
        return hung::among(stay, plan, &geometry.at_mm, bore / 2.0);
    }
    let vessel = geometry.vessel.as_ref()?;
    let leg = (vessel.ring_high, vessel.lower.underside);
    hung::across(stay, plan, bore / 2.0, leg)
}

/// How the ends of a stay are held.
pub(super) fn stay_ends(stay: &Planned) -> proof::StayEnds {
    match stay.ends.value() {
        Some(plan::section::StayEnds::HeadedAndBrazed) => proof::StayEnds::Headed,
        // Ends of which nothing is said are taken as the worse.
        Some(plan::section::StayEnds::Brazed) | None => proof::StayEnds::Brazed,
    }
}

pub(super) fn thinner(walls: [Option<Dimension>; 2]) -> Option<Dimension> {
    let [a, b] = walls;
    let (a, b) = (a?, b?);
    let least = |d: &Dimension| d.size.for_proof(Bad::Small);
    Some(if least(&a) < least(&b) { a } else { b })
}

/// How many fire tubes there are.
pub(super) fn tube_count(geometry: &PlateGeometry) -> Known<Ratio> {
    Known {
        value: Ratio::from_number(geometry.tubes as f64),
        given: Given::Shape {
            of: "the tubes that stand in the plates".to_owned(),
            weakest: Origin::Read,
        },
    }
}
