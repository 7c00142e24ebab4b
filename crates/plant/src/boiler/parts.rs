//! Parts that every form of boiler has, and the shapes of those of which each has some.

use plan::section::{DryerPlace, Stay};
use plan::{Entry, Plan};
use reckoning::quantity::Length;

use super::Builder;
use super::plate::PlateSizes;
use crate::fitting::{self, Fault, fitted};
use crate::known::Round;
use crate::part::{
    Bar, Flange, Hole, NoShape, Outline, Plate, Run, Seam, Shape, Shell, Span, Stock, Tube, Turned,
};
use crate::thread;

/// How a shell is closed.
pub(crate) fn seam(seam: Option<plan::section::Seam>) -> Seam {
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

/// The bar of a stay, cut to a length.
pub(crate) fn stay_bar(stay: &Stay, diameter: Length, length: Length) -> Result<Turned, NoShape> {
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
    Turned::bar(bar, span)
}

impl Builder<'_> {
    pub(crate) fn smokebox_shell(&mut self) {
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

    pub(crate) fn dryer(&mut self) {
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

    pub(crate) fn fittings(&mut self) {
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
pub(crate) fn rows<R>(
    rows: &[R],
    id: fn(&R) -> &Entry<String>,
) -> impl Iterator<Item = (&str, &R)> {
    rows.iter()
        .filter_map(move |row| Some((id(row).get()?.as_str(), row)))
}

pub(crate) fn shell(round: &Round, length: Length, seam: Seam) -> Shell {
    Shell {
        bore: round.bore.value,
        wall: round.wall.value,
        length,
        seam,
        holes: Vec::new(),
    }
}

pub(crate) fn stock(round: &Round) -> Option<Stock> {
    Some(Stock::Tube {
        outside: round.outside.value,
        wall: round.wall.value,
    })
}

pub(crate) fn flanged(plate: &PlateSizes, radius: f64, holes: Vec<Hole>) -> Plate {
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
