//! The brazed joints of a vertical boiler.

use std::f64::consts::PI;

use plan::section::{BushSeat, StayRun};
use reckoning::Known;
use reckoning::quantity::Length;

use super::bushes::seat;
use super::frame::Frame;
use super::nest::Nest;
use super::parts::rows;
use super::sizes::Sizes;
use super::{Builder, length};
use crate::joint::{Joint, Seen};

fn seen(entry: Option<plan::section::Joint>) -> Option<Seen> {
    entry.map(|joint| match joint {
        plan::section::Joint::SeenBothSides => Seen::BothSides,
        plan::section::Joint::SeenOneSide => Seen::OneSide,
    })
}

/// Once round at a radius.
fn round(radius: f64, frame: &Frame) -> Known<Length> {
    length(2.0 * PI * radius, "once round", frame.weakest)
}

impl Builder<'_> {
    pub(super) fn joints(&mut self, sizes: &Sizes, frame: &Frame, nest: Option<&Nest>) {
        self.ring_joints(sizes, frame);
        self.plate_joints(frame);
        if let Some(nest) = nest {
            self.tube_joints(frame, nest);
        }
        self.firehole_joints(sizes, frame);
        self.stay_joints(frame);
        self.bush_joints(sizes);
    }

    fn ring_joints(&mut self, sizes: &Sizes, frame: &Frame) {
        let entry = seen(self.plan.boiler.foundation_ring.joint.value());
        for (shell, radius) in [("barrel", frame.barrel), ("firebox", frame.firebox)] {
            let lap = sizes.ring_depth.clone();
            self.joint(("foundation-ring", shell), lap, round(radius, frame), entry);
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
            let path = round(standing.radius, frame);
            self.joint((plate, shell), Some(lap), path, seen(entry));
        }
    }

    fn firehole_joints(&mut self, sizes: &Sizes, frame: &Frame) {
        let Some(hole) = &sizes.firehole else { return };
        let path = round(hole.outside.value.mm() / 2.0, frame);
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

    fn bush_joints(&mut self, sizes: &Sizes) {
        let plan = self.plan;
        for (id, bush) in rows(&plan.boiler.bushes, |b| &b.id) {
            let (Some(part), Some(outside)) = (seat(bush), bush.outside.likely()) else {
                continue;
            };
            let path = length(
                PI * outside.value.mm(),
                "once round the bush",
                outside.given.origin(),
            );
            let lap = match bush.on.value() {
                Some(BushSeat::Barrel) => sizes.barrel.as_ref().map(|r| r.wall.clone()),
                Some(BushSeat::UpperTubePlate) => sizes.upper.as_ref().map(|p| p.thickness.clone()),
                Some(BushSeat::LowerTubePlate) => sizes.lower.as_ref().map(|p| p.thickness.clone()),
                Some(BushSeat::FrontEnd | BushSeat::BackEnd) | None => None,
            };
            self.joint(
                (&format!("bush.{id}"), part),
                lap,
                path,
                seen(bush.joint.value()),
            );
        }
    }

    fn joint(
        &mut self,
        (first, second): (&str, &str),
        lap: Option<Known<Length>>,
        path: Known<Length>,
        seen: Option<Seen>,
    ) {
        self.built.joints.push(Joint {
            id: format!("{first}/{second}"),
            first: first.to_owned(),
            second: second.to_owned(),
            lap,
            path,
            seen,
        });
    }
}
