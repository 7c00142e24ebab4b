//! The brazed joints of a vertical boiler.

use std::f64::consts::PI;

use plan::section::StayRun;

use super::frame::Frame;
use super::nest::Nest;
use super::sizes::Sizes;
use crate::boiler::{Builder, length, round, rows, seen};

impl Builder<'_> {
    pub(super) fn joints(&mut self, sizes: &Sizes, frame: &Frame, nest: Option<&Nest>) {
        self.ring_joints(sizes, frame);
        self.plate_joints(frame);
        if let Some(nest) = nest {
            self.tube_joints(frame, nest);
        }
        self.firehole_joints(sizes, frame);
        self.stay_joints(frame);
        self.bush_joints(&sizes.walls());
    }

    fn ring_joints(&mut self, sizes: &Sizes, frame: &Frame) {
        let entry = seen(self.plan.boiler.foundation_ring.joint.value());
        for (shell, radius) in [("barrel", frame.barrel), ("firebox", frame.firebox)] {
            let lap = sizes.ring_depth.clone();
            self.joint(
                ("foundation-ring", shell),
                lap,
                round(radius, frame.weakest),
                entry,
            );
        }
    }

    fn plate_joints(&mut self, frame: &Frame) {
        let pair = &self.plan.boiler.tube_plate;
        let plates = [
            (
                "tube-plate.upper",
                "barrel",
                &frame.upper,
                pair.upper.joint.value(),
            ),
            (
                "tube-plate.lower",
                "firebox",
                &frame.lower,
                pair.lower.joint.value(),
            ),
        ];
        for (plate, shell, standing, entry) in plates {
            let of = "the straight of the flange, or the thickness of a flat plate";
            let lap = length(standing.lap(), of, frame.weakest);
            let path = round(standing.radius, frame.weakest);
            self.joint((plate, shell), Some(lap), path, seen(entry));
        }
    }

    fn firehole_joints(&mut self, sizes: &Sizes, frame: &Frame) {
        let Some(hole) = &sizes.firehole else { return };
        let path = round(hole.outside.value.mm() / 2.0, frame.weakest);
        let entry = seen(self.plan.boiler.firehole.joint.value());
        for (shell, wall) in [("barrel", &sizes.barrel), ("firebox", &sizes.firebox)] {
            let lap = wall.as_ref().map(|w| w.wall.clone());
            self.joint(("firehole", shell), lap, path.clone(), entry);
        }
    }

    fn tube_joints(&mut self, frame: &Frame, nest: &Nest) {
        let entry = seen(self.plan.boiler.tubes.joint.value());
        let path = length(
            PI * nest.outside.value.mm(),
            "once round a tube",
            frame.weakest,
        );
        for i in 1..=nest.tubes.len() {
            for (plate, thickness) in [
                ("tube-plate.lower", &frame.lower),
                ("tube-plate.upper", &frame.upper),
            ] {
                let lap = length(
                    thickness.thickness,
                    "the thickness of the plate",
                    frame.weakest,
                );
                self.joint(
                    (&format!("tube.{i}"), plate),
                    Some(lap),
                    path.clone(),
                    entry,
                );
            }
        }
    }

    fn stay_joints(&mut self, frame: &Frame) {
        let plan = self.plan;
        for (id, stay) in rows(&plan.boiler.stays, |s| &s.id) {
            let (Some(run), Some(diameter)) = (stay.run.value(), stay.diameter.likely()) else {
                continue;
            };
            let path = length(
                PI * diameter.value.mm(),
                "once round the stay",
                diameter.given.origin(),
            );
            let ends: [(&str, f64); 2] = match run {
                StayRun::PlateToPlate => [
                    ("tube-plate.lower", frame.lower.thickness),
                    ("tube-plate.upper", frame.upper.thickness),
                ],
                StayRun::FireboxToBarrel => [
                    ("firebox", frame.firebox - frame.firebox_bore),
                    ("barrel", frame.barrel_wall),
                ],
            };
            for (part, thick) in ends {
                let lap = length(thick, "the thickness of the wall", frame.weakest);
                self.joint((&format!("stay.{id}"), part), Some(lap), path.clone(), None);
            }
        }
    }
}
