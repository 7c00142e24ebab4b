//! What cross holes remove, by the length of metal along the drill.
//!
//! A hole is a convex body, so a line meets it in one stretch. Along each line parallel to a hole,
//! the metal is what the outside, the bore, the flats and the holes before it leave; integrating
//! that length over the disc of the hole gives its volume, whatever meets whatever. Lengths are
//! in millimetres. The stated error is [`RELATIVE_ERROR`] of the volume of the hole.

use super::feature::{CrossDepth, CrossHole, Flats, Point};
use super::profile::{Piece, Profile};
use super::quadrature::integral;

/// Error of the volume that a cross hole removes, as a share of hole area times part diameter.
pub const RELATIVE_ERROR: f64 = 1e-10;

/// Where the body of a hole ends, on the line of its own axis.
#[derive(Clone, Copy, Debug)]
enum Tip {
    /// It does not.
    Open,
    /// Square across at this distance from the axis of the part.
    Flat(f64),
    /// Full diameter ends at `full`; beyond it a cone with `slope` of length over radius.
    Cone { full: f64, slope: f64 },
}

/// The body of a hole in plain numbers.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Body {
    z: f64,
    azimuth: f64,
    offset: f64,
    radius: f64,
    tip: Tip,
}

impl Body {
    pub(crate) fn of(hole: &CrossHole) -> Self {
        let radius = hole.diameter.mm() / 2.0;
        let tip = match hole.depth {
            CrossDepth::Through => Tip::Open,
            CrossDepth::NearWall => Tip::Flat(0.0),
            CrossDepth::Blind {
                bottom,
                point: Point::Flat,
            } => Tip::Flat(bottom.mm()),
            CrossDepth::Blind {
                bottom,
                point: Point::Cone(included),
            } => Tip::Cone {
                full: bottom.mm(),
                slope: 1.0 / (included.rad() / 2.0).tan(),
            },
        };
        Self {
            z: hole.z.mm(),
            azimuth: hole.azimuth.rad(),
            offset: hole.offset.mm(),
            radius,
            tip,
        }
    }

    /// Area that the body takes at height `z` of a ring between `outside` and `inside` radii.
    pub(crate) fn section(&self, z: f64, (outside, inside): (f64, Option<f64>)) -> f64 {
        let square = self.radius * self.radius - (z - self.z) * (z - self.z);
        if square <= 0.0 {
            return 0.0;
        }
        let piece = |r: f64| {
            Profile::of(Piece {
                z0: z - self.radius,
                z1: z + self.radius,
                r0: r,
                r1: r,
                owner: None,
            })
        };
        let ring = Metal {
            outer: &piece(outside),
            inner: &inside.map_or_else(Profile::default, piece),
            flats: &[],
        };
        let error = RELATIVE_ERROR * self.radius * outside;
        ring.slice(self, &[], (z, square.sqrt()), error)
    }

    /// The stretch which the body takes of the line `(x, y)` at height `z`, where the line's own
    /// frame is turned by `turn` from the frame of this hole.
    fn along(&self, y: f64, z: f64, turn: f64) -> Option<(f64, f64)> {
        let height = z - self.z;
        let half = self.radius * self.radius - height * height;
        if half <= 0.0 {
            return None;
        }
        let (sine, cosine) = turn.sin_cos();
        // In the frame of this hole the line is (x cos − y sin, x sin + y cos).
        let side = Linear {
            slope: sine,
            at_zero: y * cosine - self.offset,
        };
        let reach = Linear {
            slope: cosine,
            at_zero: -y * sine,
        };
        let within = side.between(-half.sqrt(), half.sqrt())?;
        let beyond = self.beyond_tip(side, reach, height)?;
        overlap(within, beyond)
    }

    /// The stretch that lies on the open side of the tip.
    fn beyond_tip(&self, side: Linear, reach: Linear, height: f64) -> Option<(f64, f64)> {
        match self.tip {
            Tip::Open => Some((f64::NEG_INFINITY, f64::INFINITY)),
            Tip::Flat(at) => reach.between(at, f64::INFINITY),
            Tip::Cone { full, slope } => {
                let depth = Linear {
                    slope: reach.slope / slope,
                    at_zero: (reach.at_zero - full) / slope + self.radius,
                };
                within_cone(side, height, depth)
            }
        }
    }
}

/// A function `slope · x + at_zero` along a line.
#[derive(Clone, Copy, Debug)]
struct Linear {
    slope: f64,
    at_zero: f64,
}

impl Linear {
    fn at(self, x: f64) -> f64 {
        self.slope * x + self.at_zero
    }

    /// Where it lies between two values.
    fn between(self, low: f64, high: f64) -> Option<(f64, f64)> {
        if self.slope.abs() < 1e-12 {
            let inside = low <= self.at_zero && self.at_zero <= high;
            return inside.then_some((f64::NEG_INFINITY, f64::INFINITY));
        }
        let (a, b) = (
            (low - self.at_zero) / self.slope,
            (high - self.at_zero) / self.slope,
        );
        Some((a.min(b), a.max(b)))
    }
}

/// Where `√(side² + height²) <= depth`: one nappe of a cone, which is convex.
fn within_cone(side: Linear, height: f64, depth: Linear) -> Option<(f64, f64)> {
    // side² + height² − depth² as a x² + 2 b x + c.
    let a = side.slope * side.slope - depth.slope * depth.slope;
    let b = side.slope * side.at_zero - depth.slope * depth.at_zero;
    let c = side.at_zero * side.at_zero + height * height - depth.at_zero * depth.at_zero;
    let (mut first, mut second) = (f64::NEG_INFINITY, f64::INFINITY);
    if a.abs() < 1e-14 {
        if b.abs() > 1e-14 {
            first = -c / (2.0 * b);
        }
    } else if b * b > a * c {
        let root = (b * b - a * c).sqrt();
        let roots = ((-b - root) / a, (-b + root) / a);
        (first, second) = (roots.0.min(roots.1), roots.0.max(roots.1));
    }
    let marks = [f64::NEG_INFINITY, first, second, f64::INFINITY];
    let inside = |x: f64| side.at(x).hypot(height) <= depth.at(x);
    let mut kept: Option<(f64, f64)> = None;
    for pair in marks.windows(2) {
        let (low, high) = (pair[0], pair[1]);
        if low >= high {
            continue;
        }
        let middle = match (low.is_finite(), high.is_finite()) {
            (true, true) => 0.5 * (low + high),
            (true, false) => low + 1.0,
            (false, true) => high - 1.0,
            (false, false) => 0.0,
        };
        if inside(middle) {
            kept = Some(kept.map_or((low, high), |(first, _)| (first, high)));
        }
    }
    kept
}

fn overlap(a: (f64, f64), b: (f64, f64)) -> Option<(f64, f64)> {
    let shared = (a.0.max(b.0), a.1.min(b.1));
    (shared.0 < shared.1).then_some(shared)
}

/// Stretches of a line, kept apart.
#[derive(Clone, Debug, Default)]
struct Stretches(Vec<(f64, f64)>);

impl Stretches {
    fn keep(&mut self, only: (f64, f64)) {
        self.0.retain_mut(|s| match overlap(*s, only) {
            Some(kept) => {
                *s = kept;
                true
            }
            None => false,
        });
    }

    fn remove(&mut self, gone: (f64, f64)) {
        for i in 0..self.0.len() {
            let whole = self.0[i];
            let below = overlap(whole, (f64::NEG_INFINITY, gone.0));
            let above = overlap(whole, (gone.1, f64::INFINITY));
            // A stretch that is wholly gone is left without length.
            self.0[i] = below.or(above).unwrap_or((whole.0, whole.0));
            if let (Some(_), Some(above)) = (below, above) {
                self.0.push(above);
            }
        }
    }

    fn length(&self) -> f64 {
        self.0.iter().map(|(a, b)| b - a).sum()
    }
}

/// The metal in which holes are drilled.
pub(crate) struct Metal<'a> {
    pub(crate) outer: &'a Profile,
    pub(crate) inner: &'a Profile,
    pub(crate) flats: &'a [Flats],
}

impl Metal<'_> {
    /// Volume that `holes` remove together, mm³.
    pub(crate) fn removed(&self, holes: &[Body]) -> f64 {
        (0..holes.len())
            .map(|i| self.removed_by(&holes[i], &holes[..i]))
            .sum()
    }

    /// Volume that `hole` removes of what `before` has left, mm³.
    pub(crate) fn removed_by(&self, hole: &Body, before: &[Body]) -> f64 {
        let widest = self
            .outer
            .pieces()
            .iter()
            .fold(0.0_f64, |w, p| w.max(p.r0).max(p.r1));
        let scale = hole.radius * widest;
        let mut total = 0.0;
        for (low, high) in self.stretches_of_z(hole) {
            // z = centre + radius · sin(t) takes the infinite slope out of the ends.
            let mut slice = |t: f64| {
                let z = hole.z + hole.radius * t.sin();
                let half = hole.radius * t.cos();
                half * self.slice(hole, before, (z, half), 0.01 * RELATIVE_ERROR * scale)
            };
            let error = RELATIVE_ERROR * scale * hole.radius;
            total += integral(&mut slice, low.asin(), high.asin(), error);
        }
        total
    }

    /// The heights between which the outside, the bore and the flats are each of one form, from
    /// the centre of the hole in radii of the hole: from −1 to 1.
    fn stretches_of_z(&self, hole: &Body) -> Vec<(f64, f64)> {
        let share = |z: f64| (z - hole.z) / hole.radius;
        let mut marks = vec![-1.0, 0.0, 1.0];
        for piece in self.outer.pieces().iter().chain(self.inner.pieces()) {
            marks.extend([share(piece.z0), share(piece.z1)]);
        }
        for flats in self.flats {
            marks.extend([share(flats.span.from.mm()), share(flats.span.to.mm())]);
        }
        marks.retain(|u| (-1.0..=1.0).contains(u));
        marks.sort_by(f64::total_cmp);
        marks.dedup();
        marks.windows(2).map(|m| (m[0], m[1])).collect()
    }

    /// Area of metal that the hole takes at height `z`, where it is `2 half` wide.
    fn slice(&self, hole: &Body, before: &[Body], (z, half): (f64, f64), error: f64) -> f64 {
        let Some(outside) = self.outer.radius(z) else {
            return 0.0;
        };
        let bore = self.inner.radius(z);
        let mut line = Stretches::default();
        let mut length = |y: f64| {
            line.0.clear();
            self.metal(hole.azimuth, (y, z), (outside, bore), &mut line);
            match hole.along(y, z, 0.0) {
                Some(own) => line.keep(own),
                None => return 0.0,
            }
            for other in before {
                if let Some(gone) = other.along(y, z, hole.azimuth - other.azimuth) {
                    line.remove(gone);
                }
            }
            line.length()
        };
        let marks = self.kinks(hole, before, (z, half), (outside, bore));
        marks
            .windows(2)
            .map(|m| {
                // y = middle + reach · sin(t): the chord has an infinite slope where it vanishes.
                let (middle, reach) = (0.5 * (m[0] + m[1]), 0.5 * (m[1] - m[0]));
                let mut f = |t: f64| reach * t.cos() * length(middle + reach * t.sin());
                let quarter = std::f64::consts::FRAC_PI_2;
                integral(&mut f, -quarter, quarter, error)
            })
            .sum()
    }

    /// The metal along a line before any cross hole.
    fn metal(
        &self,
        azimuth: f64,
        (y, z): (f64, f64),
        (outside, bore): (f64, Option<f64>),
        line: &mut Stretches,
    ) {
        let chord = outside * outside - y * y;
        if chord <= 0.0 {
            return;
        }
        line.0.push((-chord.sqrt(), chord.sqrt()));
        if let Some(gap) = bore.map(|r| r * r - y * y).filter(|gap| *gap > 0.0) {
            line.remove((-gap.sqrt(), gap.sqrt()));
        }
        for flats in self.flats {
            if !(flats.span.from.mm() <= z && z < flats.span.to.mm()) {
                continue;
            }
            for i in 0..flats.count {
                let turn = flats.azimuth.rad() - azimuth
                    + std::f64::consts::TAU * f64::from(i) / f64::from(flats.count);
                let (sine, cosine) = turn.sin_cos();
                let outward = Linear {
                    slope: cosine,
                    at_zero: y * sine,
                };
                match outward.between(f64::NEG_INFINITY, flats.from_axis.mm()) {
                    Some(kept) => line.keep(kept),
                    None => line.0.clear(),
                }
            }
        }
    }

    /// Where, across the hole, the length of metal bends, jumps or vanishes. Where it bends at
    /// the edge of a hole that is not parallel, halving finds the place.
    fn kinks(
        &self,
        hole: &Body,
        before: &[Body],
        (z, half): (f64, f64),
        (outside, bore): (f64, Option<f64>),
    ) -> Vec<f64> {
        let (low, high) = (hole.offset - half, hole.offset + half);
        let mut marks = vec![low, hole.offset, high];
        for r in std::iter::once(outside).chain(bore) {
            marks.extend([-r, r]);
            if let Tip::Flat(at) = hole.tip {
                let chord = r * r - at * at;
                if chord > 0.0 {
                    marks.extend([-chord.sqrt(), chord.sqrt()]);
                }
            }
        }
        for flats in self.flats {
            marks.extend([-flats.from_axis.mm(), flats.from_axis.mm()]);
        }
        for other in before {
            let (sine, cosine) = (hole.azimuth - other.azimuth).sin_cos();
            let wide = other.radius * other.radius - (z - other.z) * (z - other.z);
            if sine.abs() < 1e-9 && wide > 0.0 {
                let edges = [other.offset - wide.sqrt(), other.offset + wide.sqrt()];
                marks.extend(edges.map(|y| y * cosine.signum()));
            }
        }
        marks.retain(|y| low <= *y && *y <= high);
        marks.sort_by(f64::total_cmp);
        marks.dedup();
        marks
    }
}
