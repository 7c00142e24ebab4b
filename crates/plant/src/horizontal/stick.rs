//! A round stick square to the axis of the barrel, cut off by a level: what it takes of the water,
//! or gives back. Lengths in millimetres.
//!
//! Across the stick, at a distance `v` from its middle plane, it is a strip as wide as its chord
//! and as long as its two ends allow; the level cuts that strip in one place.

use std::f64::consts::FRAC_PI_2;

use crate::part::quadrature::integral;

/// Error of a volume, as a share of the section of the stick times its reach.
const RELATIVE_ERROR: f64 = 1e-10;
/// A stick that rises less than this over its length lies level.
const LEVEL: f64 = 1e-12;

/// Where a stick ends, on its own axis.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Bound {
    /// Square across.
    At(f64),
    /// On a cylinder about the axis from which the stick is measured, on the side of this sign.
    Wall { radius: f64, side: f64 },
}

impl Bound {
    fn at(self, v: f64) -> f64 {
        match self {
            Self::At(u) => u,
            Self::Wall { radius, side } => side * (radius * radius - v * v).sqrt(),
        }
    }
}

/// A stick.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Stick {
    /// Height of the point from which its axis is measured.
    pub(crate) height: f64,
    /// Angle of its axis above the horizontal.
    pub(crate) angle: f64,
    /// Radius.
    pub(crate) radius: f64,
    /// Lower end on its axis.
    pub(crate) from: Bound,
    /// Upper end on its axis.
    pub(crate) to: Bound,
    /// Whether it takes room from the water, −1, or gives it, 1.
    pub(crate) sign: f64,
}

impl Stick {
    /// Volume that it adds to the water below a height, mm³.
    pub(crate) fn below(&self, level: f64) -> f64 {
        let (sine, cosine) = self.angle.sin_cos();
        let over = level - self.height;
        let long = |v: f64| {
            let (from, to) = (self.from.at(v), self.to.at(v));
            if sine.abs() < LEVEL {
                return if v * cosine <= over { to - from } else { 0.0 };
            }
            let cut = (over - v * cosine) / sine;
            if sine > 0.0 {
                (to.min(cut) - from).max(0.0)
            } else {
                (to - from.max(cut)).max(0.0)
            }
        };
        self.sign * self.across(&long)
    }

    /// Area that it adds to the surface of the water at a height, mm².
    pub(crate) fn surface(&self, level: f64) -> f64 {
        let (sine, cosine) = self.angle.sin_cos();
        let over = level - self.height;
        if sine.abs() < LEVEL {
            let v = over * cosine.signum();
            if v.abs() >= self.radius {
                return 0.0;
            }
            let wide = 2.0 * (self.radius * self.radius - v * v).sqrt();
            return self.sign * wide * (self.to.at(v) - self.from.at(v));
        }
        let cut = |v: f64| {
            let u = (over - v * cosine) / sine;
            let inside = self.from.at(v) <= u && u <= self.to.at(v);
            if inside { 1.0 / sine.abs() } else { 0.0 }
        };
        self.sign * self.across(&cut)
    }

    /// The integral over the section of the stick of what depends on the distance from its middle
    /// plane alone.
    fn across(&self, of: &dyn Fn(f64) -> f64) -> f64 {
        let r = self.radius;
        let mut f = |t: f64| 2.0 * (r * t.cos()).powi(2) * of(r * t.sin());
        // A stick that ends on the wall it stands on has no length on its middle plane.
        let reach = |v: f64| (self.to.at(v) - self.from.at(v)).abs();
        let longest = reach(0.0).max(reach(r));
        integral(
            &mut f,
            -FRAC_PI_2,
            FRAC_PI_2,
            RELATIVE_ERROR * r * r * longest,
        )
    }
}
