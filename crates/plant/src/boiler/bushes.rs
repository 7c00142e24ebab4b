//! The bushes of a boiler: each a turned part, along its axis from its inner end.

use plan::section::{Bush, BushSeat};
use reckoning::Known;
use reckoning::quantity::Length;

use super::Builder;
use super::parts::rows;
use crate::part::{Bar, End, Feature, Form, NoShape, Point, Span, Surface, Turned};
use crate::thread;

const WANTED: &str = "a bush";
/// Told of a bush in a part that another form of boiler has.
const ELSEWHERE: &str = "a bush in a part of this form of boiler";

/// Which part a bush stands in.
pub(crate) fn seat(bush: &Bush) -> Option<&'static str> {
    Some(match bush.on.value()? {
        BushSeat::Barrel => "barrel",
        BushSeat::UpperTubePlate => "tube-plate.upper",
        BushSeat::LowerTubePlate => "tube-plate.lower",
        BushSeat::FrontEnd => "end.front",
        BushSeat::BackEnd => "end.back",
    })
}

/// The lengths of a bush along its axis.
struct Along {
    /// Where its inner end stands out of the wall, from the end.
    inner: Length,
    /// Where the outer face of the wall lies.
    seat: Length,
    /// Its whole length.
    end: Length,
}

fn span(from: Length, to: Length) -> Span {
    Span { from, to }
}

fn zero() -> Length {
    Length::from_mm(0.0)
}

/// The parts of a form of boiler in which bushes may stand, each with its wall where it is known.
pub(crate) type Walls = Vec<(BushSeat, Option<Known<Length>>)>;

impl Builder<'_> {
    pub(crate) fn bushes(&mut self, walls: &Walls) {
        for (id, bush) in rows(&self.plan.boiler.bushes, |b| &b.id) {
            let Some(wall) = self.wall_of(bush, walls) else {
                continue;
            };
            if let Some(shape) = wall.and_then(|wall| self.bush(bush, wall.value)) {
                self.turned(format!("bush.{id}"), "bush", &bush.metal, shape);
            }
        }
    }

    /// The wall in which a bush stands, where it is known; none for a part that this form of
    /// boiler does not have.
    fn wall_of(&mut self, bush: &Bush, walls: &Walls) -> Option<Option<Known<Length>>> {
        self.reading.want(&bush.on, WANTED);
        let seat = bush.on.value()?;
        let found = walls.iter().find(|(part, _)| *part == seat);
        if found.is_none() {
            self.reading.miss(bush.on.path(), ELSEWHERE);
        }
        found.map(|(_, wall)| wall.clone())
    }

    fn bush(&mut self, bush: &Bush, wall: Length) -> Option<Result<Turned, NoShape>> {
        let outside = self.reading.size(&bush.outside, WANTED)?.value;
        let out = self.reading.size(&bush.length_out, WANTED)?.value;
        // A bush that does not say how far it reaches in ends flush with the wall.
        let inner = bush.length_in.likely().map_or(zero(), |l| l.value);
        let along = Along {
            inner,
            seat: inner + wall,
            end: inner + wall + out,
        };
        let (bar, mut features) = outside_of(bush, outside, &along);
        features.extend(self.inside_of(bush, &along));
        Some(Turned::finished(
            Bar::Round(bar),
            span(zero(), along.end),
            &features,
        ))
    }

    fn inside_of(&mut self, bush: &Bush, along: &Along) -> Vec<Feature> {
        let thread = thread::named(&bush.thread, self.reading);
        let free = bush.bore.likely().map(|b| b.value);
        let tapping = thread.as_ref().map(|(_, full)| thread::tapping(full).value);
        let mut features = Vec::new();
        if let Some(diameter) = free.or(tapping) {
            let form = Form::Drilled {
                from: End::High,
                mouth: along.end,
                diameter,
                depth: along.end,
                point: Point::drill(),
            };
            features.push(Feature::new("bore", form));
        }
        if let (Some((thread, _)), Some(diameter)) = (thread, tapping) {
            // A free bore narrower than the thread is left as far as the bush reaches in.
            let narrow = free.is_some_and(|f| f < diameter);
            let threaded = span(if narrow { along.inner } else { zero() }, along.end);
            let tapping = Form::cylinder(Surface::Inside, threaded, diameter);
            features.push(Feature::new("tapping", tapping));
            let form = Form::Threaded {
                surface: Surface::Inside,
                span: threaded,
                thread,
            };
            features.push(Feature::new("thread", form));
        }
        features
    }
}

/// The bar that a bush needs, and the features of its outside.
fn outside_of(bush: &Bush, outside: Length, along: &Along) -> (Length, Vec<Feature>) {
    let cylinder = |id: &str, from: Length, to: Length, diameter: Length| {
        Feature::new(
            id,
            Form::cylinder(Surface::Outside, span(from, to), diameter),
        )
    };
    let flange = bush.flange.likely().zip(bush.flange_thickness.likely());
    let Some((diameter, thickness)) = flange else {
        return (outside, vec![cylinder("seat", zero(), along.end, outside)]);
    };
    let neck = along.seat + thickness.value;
    let mut features = vec![
        cylinder("seat", zero(), along.seat, outside),
        cylinder("flange", along.seat, neck, diameter.value),
    ];
    if neck < along.end {
        features.push(cylinder("neck", neck, along.end, outside));
    }
    let wider = diameter.value > outside;
    (if wider { diameter.value } else { outside }, features)
}
