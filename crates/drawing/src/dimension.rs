//! Dimensions after ISO 129-1: narrow line, filled arrow heads, text above the line.

use crate::sheet::{At, Layer, Mark, Text, at};

/// Length of an arrow head, mm.
pub const ARROW: f64 = 2.5;
/// Half its width, mm.
const ARROW_HALF: f64 = 0.42;
/// How far an extension line stays clear of the outline, and runs past the dimension line, mm.
const CLEAR: f64 = 1.0;

/// One dimension or call-out.
#[derive(Clone, Debug, PartialEq)]
pub struct Dimension {
    /// What it measures, in words; once on a sheet.
    pub measures: String,
    /// Its lines.
    pub lines: Lines,
    /// Its lettering.
    pub text: Text,
}

/// Where the arrow heads of a dimension line stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Arrows {
    /// Between the extension lines, pointing outwards.
    Within,
    /// Outside them, pointing inwards.
    Outside,
}

/// The lines of a dimension.
#[derive(Clone, Debug, PartialEq)]
pub enum Lines {
    /// Between two extension lines.
    Span {
        /// The points measured.
        points: [At; 2],
        /// The ends of the dimension line, opposite those points.
        ends: [At; 2],
        /// Arrow heads.
        arrows: Arrows,
        /// How far the dimension line runs on beyond its first and its second end, mm.
        beyond: [f64; 2],
    },
    /// A leader: an arrow on an edge, then straight lines to the text.
    Leader(Vec<At>),
}

impl Dimension {
    /// The simple marks of it.
    #[must_use]
    pub fn marks(&self) -> Vec<(Layer, Mark)> {
        let mut marks = match &self.lines {
            Lines::Span {
                points,
                ends,
                arrows,
                beyond,
            } => span(*points, *ends, *arrows, *beyond),
            Lines::Leader(points) => leader(points),
        };
        marks.push((Layer::Text, Mark::Text(self.text.clone())));
        marks
    }
}

fn span(points: [At; 2], ends: [At; 2], arrows: Arrows, beyond: [f64; 2]) -> Vec<(Layer, Mark)> {
    let mut marks = Vec::new();
    for (point, end) in points.into_iter().zip(ends) {
        let long = far(point, end);
        if long > CLEAR {
            let from = towards(point, end, CLEAR);
            let to = towards(point, end, long + CLEAR);
            marks.push((Layer::Dimension, Mark::Line(from, to)));
        }
    }
    let long = far(ends[0], ends[1]);
    let from = towards(ends[0], ends[1], -beyond[0]);
    let to = towards(ends[0], ends[1], long + beyond[1]);
    marks.push((Layer::Dimension, Mark::Line(from, to)));
    let back = match arrows {
        Arrows::Within => ARROW,
        Arrows::Outside => -ARROW,
    };
    marks.push(head(ends[0], towards(ends[0], ends[1], back)));
    marks.push(head(ends[1], towards(ends[1], ends[0], back)));
    marks
}

fn leader(points: &[At]) -> Vec<(Layer, Mark)> {
    let mut marks = vec![(Layer::Dimension, Mark::Open(points.to_vec()))];
    if let [tip, next, ..] = points {
        marks.push(head(*tip, towards(*tip, *next, ARROW)));
    }
    marks
}

/// An arrow head from its tip to the middle of its back.
fn head(tip: At, back: At) -> (Layer, Mark) {
    let long = far(tip, back);
    let (x, y) = ((back.x - tip.x) / long, (back.y - tip.y) / long);
    let corner = |side: f64| back.moved(-y * side, x * side);
    let points = vec![tip, corner(ARROW_HALF), corner(-ARROW_HALF)];
    (Layer::Dimension, Mark::Filled(points))
}

fn far(a: At, b: At) -> f64 {
    (a.x - b.x).hypot(a.y - b.y)
}

/// The point `by` from `a` in the direction of `b`, which lies elsewhere.
fn towards(a: At, b: At, by: f64) -> At {
    let share = by / far(a, b);
    at(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share)
}
