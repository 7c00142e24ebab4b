//! A flanged plate in section, and the plan of a round one: holes with their centre lines, outside
//! diameter, least pitch.

use plant::part::{Hole, Outline, Plate, Stands};
use reckoning::quantity::Length;

use crate::layout::{self, Callout, Measure, Side, about_axis, callouts_right, title_line};
use crate::lettering::{diameter, figure};
use crate::sheet::{At, Layer, Mark, Sheet, at};

use super::{TubePlate, rectangle};

/// Room on the paper that the plate itself may fill, mm.
const FRAME: (f64, f64) = (110.0, 110.0);
/// How far a centre line runs past its hole, mm.
const PAST: f64 = 2.0;
/// Pitches closer than this are the same, mm.
const SAME: f64 = 1e-6;

/// The plan of a round plate with its holes; none for a rectangle, which has no such plan.
#[must_use]
pub fn tube_plate(name: &str, plate: &Plate) -> Option<Sheet> {
    round_plate(name, plate, ("plan", &|_| Vec::new()))
}

/// What else a view of a plate calls out, at its scale.
type More<'a> = &'a dyn Fn(f64) -> Vec<Callout>;

/// A round plate with its holes as seen in a view.
pub(crate) fn round_plate(name: &str, plate: &Plate, (view, more): (&str, More)) -> Option<Sheet> {
    let outside = match plate.outline {
        Outline::Disc { diameter } => diameter,
        Outline::Ring { outside, .. } => outside,
        Outline::Rectangle { .. } => return None,
    };
    let scale = layout::scale_for(outside.mm(), outside.mm(), FRAME);
    let mut sheet = Sheet::new(name, scale);
    let paper = |l: Length| l.mm() * scale;
    let r = paper(outside / 2.0);
    circle(&mut sheet, Layer::Outline, (0.0, 0.0), r);
    if let Outline::Ring { inside, .. } = plate.outline {
        circle(&mut sheet, Layer::Outline, (0.0, 0.0), paper(inside / 2.0));
    }
    if plate.flange.is_some() {
        // The inner face of the flange is seen from the open side.
        circle(
            &mut sheet,
            Layer::Outline,
            (0.0, 0.0),
            r - paper(plate.thickness),
        );
    }
    let past = r + 4.0;
    sheet.draw(Layer::Axis, Mark::Line(at(-past, 0.0), at(past, 0.0)));
    sheet.draw(Layer::Axis, Mark::Line(at(0.0, -past), at(0.0, past)));
    holes(&mut sheet, plate, scale);
    let over = Measure {
        name: "outside diameter".to_owned(),
        says: diameter(outside),
        points: [at(-r, 0.0), at(r, 0.0)],
    };
    about_axis(&mut sheet, Side::Below, -past, &[over]);
    let mut callouts = callouts(plate, scale);
    callouts.extend(pitch_line(&mut sheet, plate, scale));
    callouts.extend(more(scale));
    callouts_right(&mut sheet, at(r + 10.0, -r), &callouts);
    title_line(&mut sheet, view);
    Some(sheet)
}

/// Outline of a flanged plate in section, from left to right and back, the bends as short chords.
pub(crate) fn flanged(plate: &TubePlate, scale: f64) -> Vec<At> {
    let paper = |length: Length| length.mm() * scale;
    let r = paper(plate.outside / 2.0);
    let t = paper(plate.thickness);
    let Some(flange) = plate.flange else {
        let low = paper(plate.underside);
        return rectangle(-r, low, r, low + t);
    };
    let (h, bend) = (paper(flange.height), paper(flange.inside_radius));
    let up = match flange.stands {
        Stands::Up => 1.0,
        Stands::Down => -1.0,
    };
    // Reckoned with the flange upwards from the outer face; turned over at the end.
    let centre = (r - t - bend, t + bend);
    let arc = |radius: f64, from: i32, to: i32| {
        let steps = (to - from).abs();
        (0..=steps).map(move |i| {
            let angle = f64::from(from + i * (to - from).signum()) * 7.5_f64.to_radians();
            at(
                centre.0 + radius * angle.cos(),
                centre.1 + radius * angle.sin(),
            )
        })
    };
    let mut half: Vec<At> = arc(bend + t, -12, 0).collect();
    half.extend([at(r, h), at(r - t, h)]);
    half.extend(arc(bend, 0, -12));
    let outer_face = match flange.stands {
        Stands::Up => paper(plate.underside),
        Stands::Down => paper(plate.underside + plate.thickness),
    };
    let left: Vec<At> = half.iter().rev().map(|p| at(-p.x, p.y)).collect();
    // Right half from the middle of the outer face round the flange to the inner face, then
    // the left half back.
    half.into_iter()
        .chain(left)
        .map(|p| at(p.x, outer_face + up * p.y))
        .collect()
}

/// Holes, each with its centre lines.
fn holes(sheet: &mut Sheet, plate: &Plate, scale: f64) {
    let paper = |l: Length| l.mm() * scale;
    for hole in &plate.holes {
        let (x, y, r) = (paper(hole.x), paper(hole.y), paper(hole.diameter / 2.0));
        let edge = Mark::Circle {
            centre: at(x, y),
            radius: r,
        };
        sheet.draw_of(&hole.id, Layer::Outline, edge);
        let arm = r + PAST;
        // A hole on a main axis has that axis for its centre line already.
        if y.abs() > 0.01 {
            let level = Mark::Line(at(x - arm, y), at(x + arm, y));
            sheet.draw_of(&hole.id, Layer::Axis, level);
        }
        if x.abs() > 0.01 {
            let upright = Mark::Line(at(x, y - arm), at(x, y + arm));
            sheet.draw_of(&hole.id, Layer::Axis, upright);
        }
    }
}

fn circle(sheet: &mut Sheet, layer: Layer, centre: (f64, f64), radius: f64) {
    let centre = at(centre.0, centre.1);
    sheet.draw(layer, Mark::Circle { centre, radius });
}

/// One call-out for each size of hole, one for the least pitch, one for the thickness.
fn callouts(plate: &Plate, scale: f64) -> Vec<Callout> {
    let mut sizes: Vec<(String, Vec<&Hole>)> = Vec::new();
    for hole in &plate.holes {
        let says = diameter(hole.diameter);
        match sizes.iter_mut().find(|(s, _)| *s == says) {
            Some((_, holes)) => holes.push(hole),
            None => sizes.push((says, vec![hole])),
        }
    }
    let rim = |hole: &Hole| {
        let turn = std::f64::consts::FRAC_1_SQRT_2;
        let r = hole.diameter.mm() / 2.0 * turn;
        at((hole.x.mm() + r) * scale, (hole.y.mm() + r) * scale)
    };
    let mut callouts = Vec::new();
    for (says, holes) in sizes {
        let highest = |a: &&&Hole, b: &&&Hole| (a.x + a.y).mm().total_cmp(&(b.x + b.y).mm());
        if let Some(hole) = holes.iter().max_by(highest) {
            callouts.push(Callout {
                name: format!("holes {says}"),
                says: if holes.len() == 1 {
                    says.clone()
                } else {
                    format!("{} holes {says}", holes.len())
                },
                tip: rim(hole),
            });
        }
    }
    callouts
}

/// Draws the line between the two nearest holes and gives the call-out of its length.
fn pitch_line(sheet: &mut Sheet, plate: &Plate, scale: f64) -> Option<Callout> {
    let (a, b, pitch) = least_pitch(plate)?;
    let place = |hole: &Hole| at(hole.x.mm() * scale, hole.y.mm() * scale);
    let (a, b) = (place(a), place(b));
    sheet.draw(Layer::Axis, Mark::Line(a, b));
    Some(Callout {
        name: "least pitch".to_owned(),
        says: format!("least pitch {}", figure(pitch)),
        tip: at((a.x + b.x) / 2.0, (a.y + b.y) / 2.0),
    })
}

/// The two holes whose centres are nearest to each other, and how far these are apart.
fn least_pitch(plate: &Plate) -> Option<(&Hole, &Hole, Length)> {
    let mut least: Option<(&Hole, &Hole, f64)> = None;
    for (i, a) in plate.holes.iter().enumerate() {
        for b in &plate.holes[i + 1..] {
            let pitch = (a.x - b.x).mm().hypot((a.y - b.y).mm());
            // Among equal pitches the one farthest right has the shortest leader.
            let better = least.is_none_or(|(c, d, p)| {
                let farther = (a.x + b.x).mm() > (c.x + d.x).mm() + SAME;
                pitch < p - SAME || (pitch < p + SAME && farther)
            });
            if better {
                least = Some((a, b, pitch));
            }
        }
    }
    least.map(|(a, b, pitch)| (a, b, Length::from_mm(pitch)))
}
