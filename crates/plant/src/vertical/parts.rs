//! The parts of a vertical boiler.

use plan::section::{Stay, StayRun};
use reckoning::quantity::Length;

use super::frame::Frame;
use super::nest::Nest;
use super::sizes::Sizes;
use crate::boiler::{Builder, flanged, rows, seam, shell, stay_bar, stock};
use crate::part::{NoShape, Outline, Plate, Run, Shape, Shell, Stock, Tube, Turned};

impl Builder<'_> {
    pub(super) fn shells(&mut self, sizes: &Sizes) {
        let b = &self.plan.boiler;
        if let (Some(round), Some(length)) = (&sizes.barrel, &sizes.barrel_length) {
            let shell = Shell {
                holes: self.barrel_holes(sizes),
                ..shell(round, length.value, seam(b.barrel.seam.value()))
            };
            self.part(
                "barrel",
                "barrel",
                &b.barrel.metal,
                Shape::Shell(shell),
                stock(round),
            );
        }
        if let (Some(round), Some(length)) = (&sizes.firebox, &sizes.firebox_height) {
            let shell = Shell {
                holes: self.firebox_holes(sizes),
                ..shell(round, length.value, seam(b.firebox.seam.value()))
            };
            self.part(
                "firebox",
                "firebox",
                &b.firebox.metal,
                Shape::Shell(shell),
                stock(round),
            );
        }
    }

    pub(super) fn ring(&mut self, frame: &Frame) {
        let plate = Plate {
            outline: Outline::Ring {
                outside: Length::from_mm(2.0 * frame.barrel),
                inside: Length::from_mm(2.0 * frame.firebox),
            },
            thickness: Length::from_mm(frame.ring),
            flange: None,
            holes: Vec::new(),
        };
        let metal = &self.plan.boiler.foundation_ring.metal;
        self.part(
            "foundation-ring",
            "foundation ring",
            metal,
            Shape::Plate(plate),
            None,
        );
    }

    pub(super) fn plates(&mut self, sizes: &Sizes, frame: &Frame, nest: Option<&Nest>) {
        let pair = &self.plan.boiler.tube_plate;
        let both = [
            (
                "tube-plate.upper",
                "upper tube plate",
                &sizes.upper,
                frame.barrel,
                &pair.upper.metal,
            ),
            (
                "tube-plate.lower",
                "lower tube plate",
                &sizes.lower,
                frame.firebox_bore,
                &pair.lower.metal,
            ),
        ];
        for (id, name, plate, radius, metal) in both {
            let Some(plate) = plate else { continue };
            let holes = self.plate_holes(id, nest);
            let shape = Shape::Plate(flanged(plate, radius, holes));
            let sheet = Some(Stock::Sheet(plate.thickness.value));
            self.part(id, name, metal, shape, sheet);
        }
    }

    pub(super) fn tubes(&mut self, nest: &Nest, sizes: &Sizes) {
        let (Some(length), Some(round)) = (&nest.length, &sizes.tube) else {
            return;
        };
        let tube = Tube {
            outside: nest.outside.value,
            wall: round.wall.value,
            run: Run::Straight {
                length: length.value,
            },
        };
        for i in 1..=nest.tubes.len() {
            let metal = &self.plan.boiler.tubes.metal;
            self.part(
                format!("tube.{i}"),
                "fire tube",
                metal,
                Shape::Tube(tube),
                stock(round),
            );
        }
    }

    pub(super) fn firehole(&mut self, sizes: &Sizes, frame: &Frame) {
        let Some(round) = &sizes.firehole else { return };
        let tube = Tube {
            outside: round.outside.value,
            wall: round.wall.value,
            // From the bore of the firebox to the outside of the barrel, on the centre line.
            run: Run::Straight {
                length: Length::from_mm(frame.barrel + frame.barrel_wall - frame.firebox_bore),
            },
        };
        let metal = &self.plan.boiler.firehole.metal;
        self.part(
            "firehole",
            "firehole tube",
            metal,
            Shape::Tube(tube),
            stock(round),
        );
    }

    pub(super) fn stays(&mut self, frame: &Frame) {
        for (id, stay) in rows(&self.plan.boiler.stays, |s| &s.id) {
            let Some(shape) = self.stay(stay, frame) else {
                continue;
            };
            self.turned(format!("stay.{id}"), "stay", &stay.metal, shape);
        }
    }

    fn stay(&mut self, stay: &Stay, frame: &Frame) -> Option<Result<Turned, NoShape>> {
        self.reading.want(&stay.run, "a stay");
        let diameter = self.reading.size(&stay.diameter, "a stay")?.value;
        let length = Length::from_mm(match stay.run.value()? {
            StayRun::PlateToPlate => frame.upper.high() - frame.lower.low,
            StayRun::FireboxToBarrel => frame.barrel + frame.barrel_wall - frame.firebox_bore,
        });
        Some(stay_bar(stay, diameter, length))
    }
}
