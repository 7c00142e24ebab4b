//! The parts of a vertical boiler.

use plan::Entry;
use plan::Plan;
use plan::section::{DryerPlace, Stay, StayRun};
use reckoning::quantity::Length;

use super::Builder;
use super::frame::Frame;
use super::nest::Nest;
use super::plate::PlateSizes;
use super::sizes::Sizes;
use crate::fitting::{self, Fault, fitted};
use crate::known::Round;
use crate::part::{
    Bar, Flange, Hole, Outline, Plate, Run, Seam, Shape, Shell, Span, Stock, Tube, Turned,
};
use crate::thread;

fn seam(seam: Option<plan::section::Seam>) -> Seam {
    match seam {
        Some(
            plan::section::Seam::ButtStrap
            | plan::section::Seam::LapSeenBothSides
            | plan::section::Seam::LapSeenOneSide,
        ) => Seam::Brazed,
        Some(plan::section::Seam::Seamless) => Seam::Drawn,
        None => Seam::Unsaid,
    }
}

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

    fn stay(&mut self, stay: &Stay, frame: &Frame) -> Option<Result<Turned, crate::part::NoShape>> {
        self.reading.want(&stay.run, "a stay");
        let diameter = self.reading.size(&stay.diameter, "a stay")?.value;
        let length = Length::from_mm(match stay.run.value()? {
            StayRun::PlateToPlate => frame.upper.high() - frame.lower.low,
            StayRun::FireboxToBarrel => frame.barrel + frame.barrel_wall - frame.firebox_bore,
        });
        let bar = stay
            .bore
            .likely()
            .map_or(Bar::Round(diameter), |bore| Bar::Hollow {
                outside: diameter,
                bore: bore.value,
            });
        let span = Span {
            from: Length::from_mm(0.0),
            to: length,
        };
        Some(Turned::bar(bar, span))
    }

    pub(super) fn smokebox_shell(&mut self) {
        let s = &self.plan.smokebox;
        let sizes = (s.outside.likely(), s.wall.likely(), s.height.likely());
        let (Some(outside), Some(wall), Some(height)) = sizes else {
            return;
        };
        let shell = Shell {
            bore: outside.value - wall.value * 2.0,
            wall: wall.value,
            length: height.value,
            seam: Seam::Unsaid,
            holes: Vec::new(),
        };
        self.part("smokebox", "smokebox", &s.metal, Shape::Shell(shell), None);
    }

    pub(super) fn dryer(&mut self) {
        let d = &self.plan.dryer;
        let wanted = match d.place.value() {
            Some(DryerPlace::Firebox) => "the coil in the firebox",
            Some(DryerPlace::Smokebox) => "the coil in the smokebox",
            None => return,
        };
        let outside = self.reading.size(&d.outside, wanted);
        let wall = self.reading.size(&d.wall, wanted);
        let length = self.reading.size(&d.length, wanted);
        let coil = self.reading.size(&d.coil, wanted);
        let (Some(outside), Some(wall), Some(length), Some(coil)) = (outside, wall, length, coil)
        else {
            return;
        };
        let (outside, wall) = (outside.value, wall.value);
        let run = Run::Wound {
            mean_diameter: coil.value,
            length: length.value,
        };
        let shape = Shape::Tube(Tube { outside, wall, run });
        let stock = Some(Stock::Tube { outside, wall });
        self.part("dryer", "drying coil", &d.metal, shape, stock);
    }

    pub(super) fn fittings(&mut self) {
        let plan: &Plan = self.plan;
        for (id, fitting) in rows(&plan.fittings, |f| &f.id) {
            let name = fitting.name.get().map_or("turned part", String::as_str);
            let id = format!("fitting.{id}");
            let fitted = fitted(fitting, fitting::Sizes::Likely);
            for gap in &fitted.gaps {
                self.reading.miss(&gap.field, gap.wanted_for);
            }
            let chosen = fitted.chosen.into_iter();
            self.built
                .chosen
                .extend(chosen.map(|(_, size)| (id.clone(), size)));
            if let Some(turned) = fitted.shape {
                self.turned(id.clone(), name, &fitting.metal, Ok(turned));
            }
            self.faults(&id, fitted.faults);
        }
    }

    /// What takes from the geometry of the plant; the bench judges the drawing as a whole.
    fn faults(&mut self, id: &str, faults: Vec<Fault>) {
        for fault in faults {
            match fault {
                Fault::Shape(refused) => self.built.refused.push((id.to_owned(), refused)),
                Fault::Thread { field, .. } => self.reading.miss(&field, thread::BY_NAME),
                Fault::Alone { .. } | Fault::Stranger { .. } | Fault::Twice { .. } => {}
            }
        }
    }
}

/// Rows that have an id.
pub(super) fn rows<R>(
    rows: &[R],
    id: fn(&R) -> &Entry<String>,
) -> impl Iterator<Item = (&str, &R)> {
    rows.iter()
        .filter_map(move |row| Some((id(row).get()?.as_str(), row)))
}

fn shell(round: &Round, length: Length, seam: Seam) -> Shell {
    Shell {
        bore: round.bore.value,
        wall: round.wall.value,
        length,
        seam,
        holes: Vec::new(),
    }
}

fn stock(round: &Round) -> Option<Stock> {
    Some(Stock::Tube {
        outside: round.outside.value,
        wall: round.wall.value,
    })
}

fn flanged(plate: &PlateSizes, radius: f64, holes: Vec<Hole>) -> Plate {
    Plate {
        outline: Outline::Disc {
            diameter: Length::from_mm(2.0 * radius),
        },
        thickness: plate.thickness.value,
        flange: plate.flange.as_ref().map(|f| Flange {
            stands: f.stands.value,
            inside_radius: f.inside_radius.value,
            height: f.height.value,
        }),
        holes,
    }
}
