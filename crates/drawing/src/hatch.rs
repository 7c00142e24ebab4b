//! Hatching of cut metal (ISO 128-3): narrow lines at 45°, spaced and turned so that touching
//! parts differ.

use crate::clip;
use crate::sheet::{At, at};

/// Gaps narrower than this are rounding, mm.
const SEAM: f64 = 1e-6;

/// Which way the lines rise.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leans {
    /// 45° up to the right.
    Right,
    /// 45° up to the left.
    Left,
}

/// An area of cut metal.
#[derive(Clone, Debug, PartialEq)]
pub struct Hatch {
    /// Closed loops; a point is metal where an odd number of them go round it.
    pub loops: Vec<Vec<At>>,
    /// Convex areas within which there is no metal after all: cross holes.
    pub voids: Vec<Vec<At>>,
    /// Which way the lines rise.
    pub leans: Leans,
    /// Distance between lines, mm.
    pub spacing: f64,
}

impl Hatch {
    /// Its lines. They stand on one grid for the whole sheet, so that two areas of one part match.
    #[must_use]
    pub fn lines(&self) -> Vec<(At, At)> {
        // On the line y = lean·x + c, c is constant; neighbours differ by spacing·√2.
        let lean = match self.leans {
            Leans::Right => 1.0,
            Leans::Left => -1.0,
        };
        let step = self.spacing * std::f64::consts::SQRT_2;
        let heights = || self.loops.iter().flatten().map(|p| p.y - lean * p.x);
        let (low, high) = heights().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), c| {
            (l.min(c), h.max(c))
        });
        let mut lines = Vec::new();
        if !(low.is_finite() && step > 0.0) {
            return lines;
        }
        // Half a step off the grid of whole numbers, so that a line seldom falls on a corner.
        let mut k = (low / step - 0.5).ceil();
        while (k + 0.5) * step < high {
            let c = (k + 0.5) * step;
            for (a, b) in self.stretches(lean, c) {
                let place = |x: f64| at(x, lean * x + c);
                let line = (place(a), place(b));
                lines.extend(clip::outside_all(line, &self.voids));
            }
            k += 1.0;
        }
        lines
    }

    /// Stretches of x inside the loops on the line y = lean·x + c.
    fn stretches(&self, lean: f64, c: f64) -> Vec<(f64, f64)> {
        let off = |p: At| p.y - lean * p.x - c;
        let mut cuts: Vec<f64> = Vec::new();
        for points in &self.loops {
            for (i, a) in points.iter().enumerate() {
                let b = points[(i + 1) % points.len()];
                let (da, db) = (off(*a), off(b));
                if (da < 0.0) != (db < 0.0) {
                    cuts.push(a.x + (b.x - a.x) * da / (da - db));
                }
            }
        }
        cuts.sort_by(f64::total_cmp);
        let mut found: Vec<(f64, f64)> = Vec::new();
        for pair in cuts.chunks_exact(2) {
            match found.last_mut() {
                // Loops side by side are one piece of metal: the line does not break at the seam.
                Some(last) if pair[0] - last.1 < SEAM => last.1 = pair[1],
                _ => found.push((pair[0], pair[1])),
            }
        }
        found
    }
}
