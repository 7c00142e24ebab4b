//! The ends of a horizontal boiler and the flue between them.

use plan::Plan;
use plan::section::TubePlate as Plate;
use plant::LyingVessel;
use proof::{Boiler, End, EndShape, Exposure, Flue};

use crate::proof_door::{self, Fire, diameter, dimension, flange, joint, metal, metal_temperature};

const FLUE: &str = "flue";

/// Barrel, flue and ends, as far as the plan names them.
pub(super) fn boiler(plan: &Plan, vessel: Option<&LyingVessel>) -> Boiler {
    let ends = &plan.boiler.end;
    Boiler {
        shells: proof_door::boiler(plan, None).shells,
        flues: vec![flue(plan, vessel)],
        ends: vec![
            end(plan, "end.front", &ends.front),
            end(plan, "end.back", &ends.back),
        ],
        ..Boiler::default()
    }
}

fn flue(plan: &Plan, vessel: Option<&LyingVessel>) -> Flue {
    let flue = &plan.boiler.flue;
    Flue {
        id: FLUE.to_owned(),
        metal: metal(&flue.metal, plan),
        diameter: diameter(&flue.outside, &flue.bore),
        wall: dimension(&flue.wall),
        length: vessel.map(|vessel| vessel.between_ends.clone()),
        ovality: dimension(&flue.ovality),
        exposure: Exposure::FlameSwept,
        metal_temperature: metal_temperature(plan, Fire::Touches),
        openings: Vec::new(),
        laps: Vec::new(),
    }
}

fn end(plan: &Plan, id: &str, plate: &Plate) -> End {
    End {
        id: id.to_owned(),
        metal: metal(&plate.metal, plan),
        thickness: dimension(&plate.thickness),
        closes: "barrel".to_owned(),
        flange: flange(plate, "barrel"),
        shape: EndShape::Annular {
            flue: FLUE.to_owned(),
            off: dimension(&plan.boiler.flue.below),
            joint: joint(&plan.boiler.flue.joint),
        },
        stayed: None,
        openings: Vec::new(),
        metal_temperature: metal_temperature(plan, Fire::Away),
    }
}
