//! How the outer edge of an end plate meets its shell.

use super::THROUGH;
use super::flat_end::FlatEnd;
use crate::mesh::Block;
use crate::stations::{even, from_both, from_high, from_low, joined};

/// Which way a flange points.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Points {
    /// Towards the water: pressure is on the hollow of the bend.
    TowardsWater,
    /// Away from it: pressure is on the outside of the bend.
    AwayFromWater,
}

/// How the outer edge of an end plate meets its shell. Joints are taken as whole metal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rim {
    /// The plate stands within the shell or lies over its end, its dry face flush with the end:
    /// with whole joints these are one body. The inside corner is sharp.
    Square,
    /// The plate is flanged and its lip stands within the shell, the end of which is flush with
    /// the lip where that points away from the water, else with the plate.
    Flanged {
        /// Radius inside the bend, mm.
        inside_radius_mm: f64,
        /// Height over all, the plate included, mm.
        height_mm: f64,
        /// Which way the lip points.
        points: Points,
    },
}

/// Numbers of the metals.
pub(super) const SHELL: usize = 0;
pub(super) const PLATE: usize = 1;

/// The outer part of an end: the shell, and the bend and lip of a flange, each with the number of
/// its metal.
pub(super) fn outer(end: &FlatEnd) -> Vec<(Block, usize)> {
    let inside = end.shell.inside_radius_mm;
    let r = even(inside, end.shell.outside_radius_mm(), THROUGH);
    let up = |from| end.up_the_shell(from);
    let shell = |z| (Block::Square { r: r.clone(), z }, SHELL);
    match end.rim {
        Rim::Square => {
            let through = even(0.0, end.plate_mm, THROUGH);
            vec![shell(joined(through, up(end.plate_mm)))]
        }
        Rim::Flanged {
            inside_radius_mm,
            height_mm,
            points,
        } => {
            let (bend, lip, below) = flange(end, (inside_radius_mm, height_mm), points);
            let to = lip[lip.len() - 1];
            let wall = joined(joined(below, lip.clone()), up(to));
            let lips = even(inside - end.plate_mm, inside, THROUGH);
            let lip = Block::Square { r: lips, z: lip };
            vec![shell(wall), (bend, PLATE), (lip, PLATE)]
        }
    }
}

/// The bend; the stations of the lip; those of the shell below the lip.
fn flange(
    end: &FlatEnd,
    (radius, height): (f64, f64),
    points: Points,
) -> (Block, Vec<f64>, Vec<f64>) {
    let t = end.plate_mm;
    let outside = radius + t;
    let across = end.shell.inside_radius_mm - outside;
    let first = 0.25 * t.min(end.shell.wall_mm);
    let radii = even(radius, outside, THROUGH);
    let arc = |z, from: f64| Block::Arc {
        centre: [across, z],
        radii: radii.clone(),
        degrees: even(from, from + 90.0, 4 * THROUGH),
    };
    match points {
        Points::AwayFromWater => {
            let (low, high) = (t - height, -radius);
            let lip = from_both(low, high, first, t);
            (arc(-radius, 0.0), lip, vec![low])
        }
        Points::TowardsWater => {
            let lip = from_both(outside, height, first, t);
            let below = joined(
                from_low(0.0, 0.5 * outside, t, t),
                from_high(0.5 * outside, outside, first, t),
            );
            (arc(outside, 270.0), lip, below)
        }
    }
}
