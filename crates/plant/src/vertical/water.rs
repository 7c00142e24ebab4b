//! The water and steam inside the barrel, by their section at any height. Lengths in millimetres.

use std::f64::consts::PI;

use super::frame::Frame;
use crate::part::CrossHole;
use crate::part::cross::{Body, Metal};
use crate::part::profile::{Piece, Profile};
use crate::part::quadrature::integral;

/// Error of a volume of water, as a share of the barrel.
const RELATIVE_ERROR: f64 = 1e-10;

/// Upright things in the water, all alike: tubes, stays, bushes in the plates.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Upright {
    /// How many.
    pub(crate) count: f64,
    /// Area that one takes of the water, mm².
    pub(crate) area: f64,
    /// Lower end.
    pub(crate) low: f64,
    /// Upper end.
    pub(crate) high: f64,
}

/// Things that stand out from a wall, square to the axis.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Radial {
    /// The body, as a hole that it would fill.
    pub(crate) hole: CrossHole,
    /// Whether it takes room or gives it: the bore of a bush is water again.
    pub(crate) sign: f64,
    /// Inside radius of the ring of water in which it stands; zero where it ends by itself.
    pub(crate) inside: f64,
}

/// The room for water and steam.
#[derive(Clone, Debug)]
pub(crate) struct Room {
    pub(crate) frame: Frame,
    pub(crate) uprights: Vec<Upright>,
    pub(crate) radials: Vec<Radial>,
}

impl Room {
    /// Lowest point that water reaches.
    pub(crate) fn low(&self) -> f64 {
        self.frame.ring
    }

    /// Highest point that steam reaches: into the groove round a bend that rises from the water.
    pub(crate) fn high(&self) -> f64 {
        let upper = &self.frame.upper;
        match upper.flange {
            Some((crate::part::Stands::Up, ..)) => upper.low + upper.bend(),
            _ => upper.low,
        }
    }

    /// Area open to water at a height, but for what stands out from the walls, mm².
    fn open(&self, z: f64) -> f64 {
        let f = &self.frame;
        let mut area = disc(f.barrel);
        // The upper plate takes what lies above it and, with its flange down, the ring of the lip.
        if let Some(hollow) = self.upper_takes(z) {
            area -= hollow;
        }
        area -= self.firebox_takes(z);
        let uprights: f64 = self
            .uprights
            .iter()
            .filter(|u| u.low <= z && z < u.high)
            .map(|u| u.count * u.area)
            .sum();
        area - uprights
    }

    /// Area that the upper plate takes from the barrel at a height.
    fn upper_takes(&self, z: f64) -> Option<f64> {
        let upper = &self.frame.upper;
        let over = upper.outer(z)?;
        match upper.flange {
            // The flange hangs in the steam: water reaches into its hollow.
            Some((crate::part::Stands::Down, ..)) => {
                Some(disc(self.frame.barrel) - disc(upper.hollow(z)?))
            }
            // The flange rises from the water: steam reaches round its bend.
            _ => Some(disc(over)),
        }
    }

    /// Area that the firebox, its crown and the gas inside them take at a height.
    fn firebox_takes(&self, z: f64) -> f64 {
        let f = &self.frame;
        let wall = if z < f.firebox_high {
            disc(f.firebox) - disc(f.firebox_bore)
        } else {
            0.0
        };
        let lower = &f.lower;
        let inside = match (lower.outer(z), lower.hollow(z), lower.flange) {
            // The flange stands up in the water: water in its hollow, gas below its bend.
            (Some(over), Some(hollow), Some((crate::part::Stands::Up, ..))) => {
                let gas_and_plate = if z < f.firebox_high {
                    disc(f.firebox_bore)
                } else {
                    disc(over)
                };
                gas_and_plate - disc(hollow)
            }
            (Some(over), ..) => disc(over),
            // Below the plate there is gas, above it water.
            _ if z < lower.low => disc(f.firebox_bore),
            _ => 0.0,
        };
        wall + inside
    }

    /// Volume of water filled to a height, mm³.
    pub(crate) fn below(&self, level: f64) -> f64 {
        let (low, high) = (self.low(), level.min(self.high()));
        if high <= low {
            return 0.0;
        }
        let mut marks = vec![low, high, self.frame.firebox_high];
        marks.extend(self.frame.upper.marks());
        marks.extend(self.frame.lower.marks());
        marks.extend(self.uprights.iter().flat_map(|u| [u.low, u.high]));
        marks.retain(|z| (low..=high).contains(z));
        marks.sort_by(f64::total_cmp);
        marks.dedup();
        let error = RELATIVE_ERROR * disc(self.frame.barrel) * (self.high() - low);
        let open = |z: f64| self.open(z);
        let upright: f64 = marks
            .windows(2)
            .map(|m| {
                // The bend rises steeply where it leaves the flat: sin takes that out.
                let (middle, half) = (0.5 * (m[0] + m[1]), 0.5 * (m[1] - m[0]));
                let mut f = |t: f64| half * t.cos() * open(middle + half * t.sin());
                integral(&mut f, -PI / 2.0, PI / 2.0, error)
            })
            .sum();
        let radial: f64 = self.radials.iter().map(|r| self.radial(r, high)).sum();
        upright - radial
    }

    /// Volume that a radial thing takes below a height.
    fn radial(&self, radial: &Radial, level: f64) -> f64 {
        let piece = |r: f64| {
            Profile::of(Piece {
                z0: self.low(),
                z1: level,
                r0: r,
                r1: r,
                owner: None,
            })
        };
        let ring = Metal {
            outer: &piece(self.frame.barrel),
            inner: &if radial.inside > 0.0 {
                piece(radial.inside)
            } else {
                Profile::default()
            },
            flats: &[],
        };
        radial.sign * ring.removed(&[Body::of(&radial.hole)])
    }

    /// Area of the surface of the water at a height, mm².
    pub(crate) fn surface(&self, level: f64) -> f64 {
        let ring = |inside: f64| (self.frame.barrel, (inside > 0.0).then_some(inside));
        let radial: f64 = self
            .radials
            .iter()
            .map(|r| r.sign * Body::of(&r.hole).section(level, ring(r.inside)))
            .sum();
        self.open(level) - radial
    }
}

fn disc(r: f64) -> f64 {
    PI * r * r
}
