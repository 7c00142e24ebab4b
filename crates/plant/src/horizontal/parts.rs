//! The parts of a horizontal boiler.

use std::f64::consts::{FRAC_PI_2, PI};

use plan::section::{BushSeat, Stay, StayRun};
use reckoning::quantity::{Angle, Length};

use super::Yard;
use super::frame::Frame;
use crate::boiler::{flanged, hole, rows, seam, shell, stay_bar, stock};
use crate::layout::At;
use crate::part::{Hole, NoShape, Run, Shape, Shell, ShellHole, Stock, Tube, Turned};

impl Yard<'_> {
    pub(super) fn parts(&mut self, frame: Option<&Frame>) {
        let walls = self.sizes.walls();
        self.barrel();
        if let Some(frame) = frame {
            self.flue(frame);
            self.ends(frame);
            self.tubes();
            self.stays(frame);
            self.joints(frame);
        }
        self.builder.bushes(&walls);
        self.builder.smokebox_shell();
        self.builder.dryer();
        self.builder.fittings();
    }

    fn barrel(&mut self) {
        let (Some(round), Some(length)) = (&self.sizes.barrel, &self.sizes.barrel_length) else {
            return;
        };
        let plan = self.builder.plan;
        let b = &plan.boiler.barrel;
        let shape = Shape::Shell(Shell {
            holes: self.barrel_holes(),
            ..shell(round, length.value, seam(b.seam.value()))
        });
        let stock = stock(round);
        self.builder
            .part("barrel", "barrel", &b.metal, shape, stock);
    }

    fn barrel_holes(&mut self) -> Vec<ShellHole> {
        let plan = self.builder.plan;
        let mut holes = Vec::new();
        for (id, bush) in rows(&plan.boiler.bushes, |b| &b.id) {
            if bush.on.value() != Some(BushSeat::Barrel) {
                continue;
            }
            let along = self.builder.reading.number(&bush.along, "a bush");
            let outside = self.builder.reading.size(&bush.outside, "a bush");
            if let (Some(along), Some(outside)) = (along, outside) {
                holes.push(ShellHole {
                    id: format!("bush.{id}"),
                    z: along.value,
                    azimuth: self.builder.angle(&bush.angle, "where a bush stands"),
                    diameter: outside.value,
                });
            }
        }
        holes
    }

    /// Holes of the flue are measured from its mouth, their angles like those of bushes.
    fn flue(&mut self, frame: &Frame) {
        let Some(round) = &self.sizes.flue else {
            return;
        };
        let plan = self.builder.plan;
        let f = &plan.boiler.flue;
        let crossing = self.crossing.filter(|tubes| tubes.passes(frame));
        let holes = crossing.iter().flat_map(|crossing| {
            let tubes = crossing.tubes.iter().zip(1..);
            tubes.flat_map(|(tube, i)| {
                [0.0, PI].map(|turn| ShellHole {
                    id: format!("cross-tube.{i}"),
                    z: Length::from_mm(tube.along - frame.mouth()),
                    azimuth: Angle::from_rad(FRAC_PI_2 - tube.angle + turn),
                    diameter: Length::from_mm(2.0 * crossing.outside),
                })
            })
        });
        let shape = Shape::Shell(Shell {
            holes: holes.collect(),
            ..shell(
                round,
                Length::from_mm(frame.flue_length()),
                seam(f.seam.value()),
            )
        });
        let stock = stock(round);
        self.builder.part("flue", "flue", &f.metal, shape, stock);
    }

    fn ends(&mut self, frame: &Frame) {
        let plan = self.builder.plan;
        let end = &plan.boiler.end;
        let both = [
            ("end.front", "front end", &self.sizes.front, &end.front),
            ("end.back", "back end", &self.sizes.back, &end.back),
        ];
        for (id, name, sizes, section) in both {
            let Some(sizes) = sizes else { continue };
            let mut holes = vec![flue_hole(frame)];
            holes.extend(self.builder.holes_through(id));
            let shape = Shape::Plate(flanged(sizes, frame.barrel, holes));
            let sheet = Some(Stock::Sheet(sizes.thickness.value));
            self.builder.part(id, name, &section.metal, shape, sheet);
        }
    }

    fn tubes(&mut self) {
        let (Some(across), Some(crossing)) = (self.sizes.across(), self.crossing) else {
            return;
        };
        let plan = self.builder.plan;
        let tube = Tube {
            outside: across.round.outside.value,
            wall: across.round.wall.value,
            run: Run::Straight {
                length: Length::from_mm(2.0 * crossing.half),
            },
        };
        for i in 1..=crossing.tubes.len() {
            self.builder.part(
                format!("cross-tube.{i}"),
                "cross tube",
                &plan.boiler.cross_tubes.metal,
                Shape::Tube(tube),
                stock(&across.round),
            );
        }
    }

    fn stays(&mut self, frame: &Frame) {
        let plan = self.builder.plan;
        for (id, stay) in rows(&plan.boiler.stays, |s| &s.id) {
            if let Some(shape) = self.stay(stay, frame) {
                self.builder
                    .turned(format!("stay.{id}"), "stay", &stay.metal, shape);
            }
        }
    }

    fn stay(&mut self, stay: &Stay, frame: &Frame) -> Option<Result<Turned, NoShape>> {
        let reading = &mut *self.builder.reading;
        reading.want(&stay.run, "a stay");
        let diameter = reading.size(&stay.diameter, "a stay")?.value;
        if stay.run.value()? != StayRun::PlateToPlate {
            reading.miss(
                stay.run.path(),
                "a stay between parts of this form of boiler",
            );
            return None;
        }
        let length = Length::from_mm(frame.back.high() - frame.front.low);
        Some(stay_bar(stay, diameter, length))
    }
}

/// The hole of the flue: as wide as it is, below the middle of the end.
fn flue_hole(frame: &Frame) -> Hole {
    let at = At {
        x: Length::from_mm(-frame.below),
        y: Length::from_mm(0.0),
    };
    hole("flue".to_owned(), at, Length::from_mm(2.0 * frame.flue))
}
