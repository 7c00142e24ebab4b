//! The horizontal boiler with centre flue and cross tubes: section along its axis, section across
//! it, and its ends.
//!
//! It takes sizes that have been resolved; heights are above the underside of the barrel, lengths
//! from its front. Along the axis, cross tubes and bushes are turned into the plane; across it the
//! first cross tube is cut, the others are seen behind it, and bushes of the barrel stand at their
//! angles, whatever their place.

mod across;
mod along;
mod dimensions;
mod door;
mod sizes;
mod typed;

use plant::part::{Hole, Plate};
use reckoning::quantity::Length;

use crate::boiler::round_plate;
use crate::layout::Callout;
use crate::lettering::figure;
use crate::sheet::{At, Sheet, at};

pub use across::across;
pub use along::along;
pub use door::of_plant;
pub use sizes::{Bush, Chimney, CrossTube, CrossTubes, LyingBoiler, Over, Pipe, Poker};

/// A sheet being drawn.
struct View {
    sheet: Sheet,
    scale: f64,
}

impl View {
    fn paper(&self, length: Length) -> f64 {
        length.mm() * self.scale
    }
}

/// An end as seen from the front, the top of the boiler upwards; none for a plate that is not
/// round.
#[must_use]
pub fn end(name: &str, plate: &Plate) -> Option<Sheet> {
    // Places on a plate are given towards the beginning of the angles, here the top.
    let turned = |hole: &Hole| Hole {
        x: hole.y * -1.0,
        y: hole.x,
        ..hole.clone()
    };
    let turned = Plate {
        holes: plate.holes.iter().map(turned).collect(),
        ..plate.clone()
    };
    let flue = turned.holes.iter().find(|hole| hole.id == "flue").cloned();
    let more = |scale: f64| {
        let below = flue.iter().filter(|hole| hole.y.mm() < 0.0);
        below.map(|hole| below_the_middle(hole, scale)).collect()
    };
    round_plate(name, &turned, ("seen from the front", &more))
}

/// How far the hole of the flue lies below the middle, told of its own axis.
fn below_the_middle(hole: &Hole, scale: f64) -> Callout {
    let r = hole.diameter.mm() / 2.0;
    Callout {
        name: "flue below the middle".to_owned(),
        says: format!(
            "hole of the flue, {} below the middle",
            figure(hole.y * -1.0)
        ),
        tip: at((hole.x.mm() + r) * scale, hole.y.mm() * scale),
    }
}

/// A straight band about an axis through `middle`: from `u.0` to `u.1` along a direction, half as
/// wide as twice `half`.
fn band(middle: At, angle: f64, u: (f64, f64), half: f64) -> Vec<At> {
    let (sine, cosine) = angle.sin_cos();
    let place = |u: f64, v: f64| middle.moved(u * cosine - v * sine, u * sine + v * cosine);
    vec![
        place(u.0, -half),
        place(u.1, -half),
        place(u.1, half),
        place(u.0, half),
    ]
}

/// A circle as a loop of short chords.
fn round(middle: At, radius: f64) -> Vec<At> {
    (0..120)
        .map(|i| {
            let (sine, cosine) = (f64::from(i) * 3.0_f64.to_radians()).sin_cos();
            at(middle.x + radius * cosine, middle.y + radius * sine)
        })
        .collect()
}
