//! The water and steam inside a horizontal barrel, below any height. Lengths in millimetres.
//!
//! Barrel, flue and stays are cylinders along one axis: a level cuts a segment from each. Round the
//! bends of the ends the segment changes from section to section; what stands across the axis is a
//! [`Stick`].

use std::f64::consts::{FRAC_PI_2, PI};

use super::frame::Frame;
use super::stick::Stick;
use crate::boiler::Standing;
use crate::part::Stands;
use crate::part::quadrature::integral;

/// Error of the volume round a bend, as a share of the section of the barrel times the depth of the
/// bend.
const RELATIVE_ERROR: f64 = 1e-11;

/// A round thing along the barrel: a stay, or the end of a bush in an end plate.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Along {
    /// Height of its axis.
    pub(crate) height: f64,
    /// Radius.
    pub(crate) radius: f64,
    /// Length in the water.
    pub(crate) length: f64,
    /// Whether it takes room from the water, −1, or gives it, 1.
    pub(crate) sign: f64,
}

/// The room for water and steam.
#[derive(Clone, Debug)]
pub(crate) struct Room {
    pub(crate) frame: Frame,
    pub(crate) alongs: Vec<Along>,
    pub(crate) sticks: Vec<Stick>,
}

impl Room {
    /// Lowest point that water reaches.
    pub(crate) fn low(&self) -> f64 {
        self.frame.barrel_wall
    }

    /// Highest point that steam reaches.
    pub(crate) fn high(&self) -> f64 {
        self.frame.barrel_wall + 2.0 * self.frame.barrel
    }

    /// Volume of water filled to a height, mm³.
    pub(crate) fn below(&self, level: f64) -> f64 {
        let sticks: f64 = self.sticks.iter().map(|s| s.below(level)).sum();
        self.lengthwise(level, segment) + sticks
    }

    /// Area of the surface of the water at a height, mm².
    pub(crate) fn surface(&self, level: f64) -> f64 {
        let sticks: f64 = self.sticks.iter().map(|s| s.surface(level)).sum();
        self.lengthwise(level, chord) + sticks
    }

    /// What a level cuts from barrel, ends, flue and alongs, where it cuts `of` from a circle.
    fn lengthwise(&self, level: f64, of: fn(f64, f64) -> f64) -> f64 {
        let f = &self.frame;
        let over = level - f.axis();
        let (front, back) = (Wet::front(f), Wet::back(f));
        let whole = (back.plain - front.plain) * of(f.barrel, over);
        let ends = front.bend(f, over, of) + back.bend(f, over, of);
        let flue = f.between_ends() * of(f.flue, level - f.flue_axis());
        let alongs: f64 = self
            .alongs
            .iter()
            .map(|a| a.sign * a.length * of(a.radius, level - a.height))
            .sum();
        whole + ends - flue + alongs
    }
}

/// An end as the water meets it.
struct Wet<'a> {
    end: &'a Standing,
    /// Where the whole section of the barrel begins to be water.
    plain: f64,
    /// From there to the deepest place that water reaches.
    deepest: f64,
    /// Whether water lies inside the flange or round its bend.
    hollow: bool,
}

impl<'a> Wet<'a> {
    fn front(frame: &'a Frame) -> Self {
        let end = &frame.front;
        match end.flange {
            Some((Stands::Up, ..)) => Self::new(end, end.extent().1, end.high(), true),
            Some((Stands::Down, ..)) => Self::new(end, end.high(), end.high() - end.bend(), false),
            None => Self::new(end, end.high(), end.high(), false),
        }
    }

    fn back(frame: &'a Frame) -> Self {
        let end = &frame.back;
        match end.flange {
            Some((Stands::Down, ..)) => Self::new(end, end.extent().0, end.low, true),
            Some((Stands::Up, ..)) => Self::new(end, end.low, end.low + end.bend(), false),
            None => Self::new(end, end.low, end.low, false),
        }
    }

    fn new(end: &'a Standing, plain: f64, deepest: f64, hollow: bool) -> Self {
        Self {
            end,
            plain,
            deepest,
            hollow,
        }
    }

    /// What the level cuts from the water within the flange or round the bend.
    fn bend(&self, frame: &Frame, over: f64, of: fn(f64, f64) -> f64) -> f64 {
        let section = |z: f64| {
            if self.hollow {
                self.end.hollow(z).map_or(0.0, |r| of(r, over))
            } else {
                let metal = self.end.outer(z);
                metal.map_or(0.0, |r| of(frame.barrel, over) - of(r, over))
            }
        };
        let error = RELATIVE_ERROR * of(frame.barrel, frame.barrel).max(frame.barrel);
        let mut marks = [self.plain, self.deepest, self.straight()];
        marks.sort_by(f64::total_cmp);
        let pieces = marks.windows(2).filter(|m| m[1] > m[0]);
        pieces
            .map(|m| {
                // The bend rises steeply where it leaves the flat: sin takes that out.
                let (middle, half) = (0.5 * (m[0] + m[1]), 0.5 * (m[1] - m[0]));
                let mut f = |t: f64| half * t.cos() * section(middle + half * t.sin());
                integral(&mut f, -FRAC_PI_2, FRAC_PI_2, error * half)
            })
            .sum()
    }

    /// Where the bend becomes the straight of the flange.
    fn straight(&self) -> f64 {
        match self.end.flange {
            Some((Stands::Up, ..)) => self.end.low + self.end.bend(),
            Some((Stands::Down, ..)) => self.end.high() - self.end.bend(),
            None => self.plain,
        }
    }
}

/// Area of a circle of radius `r` below a chord at `over` its middle.
fn segment(r: f64, over: f64) -> f64 {
    if over <= -r {
        0.0
    } else if over >= r {
        PI * r * r
    } else {
        r * r * (-over / r).acos() + over * (r * r - over * over).sqrt()
    }
}

/// Length of that chord.
fn chord(r: f64, over: f64) -> f64 {
    if over.abs() >= r {
        0.0
    } else {
        2.0 * (r * r - over * over).sqrt()
    }
}
