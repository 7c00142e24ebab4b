//! The parts of a vertical boiler.

use plan::Entry;
use plan::Plan;
use plan::section::{Bush, BushSeat, DryerPlace, Stay, StayRun};
use reckoning::quantity::Length;

use super::Builder;
use super::frame::Frame;
use super::nest::Nest;
use super::plate::PlateSizes;
use super::sizes::Sizes;
use crate::known::Round;
use crate::part::{
    Bar, End, Feature, Flange, Form, Hole, Outline, Plate, Point, Run, Seam, Shape, Shell, Span,
    Stock, Surface, Tube, Turned,
};
use crate::thread;

/// Which part a bush stands in.
pub(crate) fn seat(bush: &Bush) -> Option<&'static str> {
    Some(match bush.on.value()? {
        BushSeat::Barrel => "barrel",
        BushSeat::UpperTubePlate => "tube-plate.upper",
        BushSeat::LowerTubePlate => "tube-plate.lower",
    })
}

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
        self.reading
            .miss(stay.run.value().is_none(), stay.run.path(), "a stay");
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

    pub(super) fn bushes(&mut self, sizes: &Sizes) {
        for (id, bush) in rows(&self.plan.boiler.bushes, |b| &b.id) {
            self.reading
                .miss(bush.on.value().is_none(), bush.on.path(), "a bush");
            let wall = match bush.on.value() {
                Some(BushSeat::Barrel) => sizes.barrel.as_ref().map(|r| r.wall.value),
                Some(BushSeat::UpperTubePlate) => sizes.upper.as_ref().map(|p| p.thickness.value),
                Some(BushSeat::LowerTubePlate) => sizes.lower.as_ref().map(|p| p.thickness.value),
                None => None,
            };
            let Some(shape) = wall.and_then(|wall| self.bush(bush, wall)) else {
                continue;
            };
            self.turned(format!("bush.{id}"), "bush", &bush.metal, shape);
        }
    }

    /// A bush along its axis from its inner end.
    fn bush(&mut self, bush: &Bush, wall: Length) -> Option<Result<Turned, crate::part::NoShape>> {
        let wanted = "a bush";
        let outside = self.reading.size(&bush.outside, wanted)?.value;
        let out = self.reading.size(&bush.length_out, wanted)?.value;
        // A bush that does not say how far it reaches in ends flush with the wall.
        let inner = bush
            .length_in
            .likely()
            .map_or(Length::from_mm(0.0), |l| l.value);
        let (seat, end) = (inner + wall, inner + wall + out);
        let span = |from: Length, to: Length| Span { from, to };
        let zero = Length::from_mm(0.0);
        let mut features = Vec::new();
        let flange = bush.flange.likely().zip(bush.flange_thickness.likely());
        let bar =
            flange.as_ref().map_or(
                outside,
                |(d, _)| if d.value > outside { d.value } else { outside },
            );
        if let Some((diameter, thickness)) = flange {
            let neck = seat + thickness.value;
            features.push(Feature::new(
                "seat",
                Form::cylinder(Surface::Outside, span(zero, seat), outside),
            ));
            features.push(Feature::new(
                "flange",
                Form::cylinder(Surface::Outside, span(seat, neck), diameter.value),
            ));
            if neck < end {
                features.push(Feature::new(
                    "neck",
                    Form::cylinder(Surface::Outside, span(neck, end), outside),
                ));
            }
        } else {
            features.push(Feature::new(
                "seat",
                Form::cylinder(Surface::Outside, span(zero, end), outside),
            ));
        }
        let thread = thread::named(&bush.thread, self.reading);
        let free = bush.bore.likely().map(|b| b.value);
        let tapping = thread.as_ref().map(|(_, full)| full.internal_minor());
        if let Some(diameter) = free.or(tapping) {
            let form = Form::Drilled {
                from: End::High,
                mouth: end,
                diameter,
                depth: end,
                point: Point::drill(),
            };
            features.push(Feature::new("bore", form));
        }
        if let (Some((thread, _)), Some(diameter)) = (thread, tapping) {
            // A free bore narrower than the thread is left below it, as far as the bush reaches in.
            let from = if free.is_some_and(|f| f < diameter) {
                inner
            } else {
                zero
            };
            features.push(Feature::new(
                "tapping",
                Form::cylinder(Surface::Inside, span(from, end), diameter),
            ));
            let form = Form::Threaded {
                surface: Surface::Inside,
                span: span(from, end),
                thread,
            };
            features.push(Feature::new("thread", form));
        }
        Some(Turned::finished(
            Bar::Round(bar),
            span(zero, end),
            &features,
        ))
    }

    /// Smokebox and drying coil.
    pub(super) fn smoke(&mut self) {
        let s = &self.plan.smokebox;
        if let (Some(outside), Some(wall), Some(height)) =
            (s.outside.likely(), s.wall.likely(), s.height.likely())
        {
            let shell = Shell {
                bore: outside.value - wall.value * 2.0,
                wall: wall.value,
                length: height.value,
                seam: Seam::Unsaid,
                holes: Vec::new(),
            };
            self.part("smokebox", "smokebox", &s.metal, Shape::Shell(shell), None);
        }
        let d = &self.plan.dryer;
        if d.place.value().is_none() {
            return;
        }
        let wanted = match d.place.value() {
            Some(DryerPlace::Firebox) => "the coil in the firebox",
            _ => "the coil in the smokebox",
        };
        let outside = self.reading.size(&d.outside, wanted);
        let wall = self.reading.size(&d.wall, wanted);
        let length = self.reading.size(&d.length, wanted);
        let coil = self.reading.size(&d.coil, wanted);
        if let (Some(outside), Some(wall), Some(length), Some(coil)) = (outside, wall, length, coil)
        {
            let tube = Tube {
                outside: outside.value,
                wall: wall.value,
                run: Run::Wound {
                    mean_diameter: coil.value,
                    length: length.value,
                },
            };
            let stock = Stock::Tube {
                outside: outside.value,
                wall: wall.value,
            };
            self.part(
                "dryer",
                "drying coil",
                &d.metal,
                Shape::Tube(tube),
                Some(stock),
            );
        }
    }

    pub(super) fn fittings(&mut self) {
        let plan: &Plan = self.plan;
        for (id, fitting) in rows(&plan.fittings, |f| &f.id) {
            let Some(shape) = crate::fitting::turned(fitting, self.reading) else {
                continue;
            };
            let name = fitting.name.get().map_or("turned part", String::as_str);
            self.turned(format!("fitting.{id}"), name, &fitting.metal, shape);
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
