//! Parts of a small boiler as meshes with their loads.

mod bush;
mod dished;
mod flat_end;
mod rim;

pub use bush::BushInPlate;
pub use dished::DishedEnd;
pub use flat_end::FlatEnd;
pub use rim::{Points, Rim};

use crate::metal::Metal;

/// Elements through a wall in the usual mesh.
const THROUGH: u32 = 2;

/// A round tube, concentric with the part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tube {
    /// Inside radius, mm.
    pub inside_radius_mm: f64,
    /// Wall, mm.
    pub wall_mm: f64,
    /// Its metal.
    pub metal: Metal,
}

impl Tube {
    /// Outside radius, mm.
    #[must_use]
    pub fn outside_radius_mm(&self) -> f64 {
        self.inside_radius_mm + self.wall_mm
    }

    /// The length over which a disturbance of its wall runs, √(R t) of the mean radius, mm.
    fn reach(&self) -> f64 {
        ((self.inside_radius_mm + 0.5 * self.wall_mm) * self.wall_mm).sqrt()
    }
}

/// Why sizes make no shape.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NoShape {
    /// A size that must be greater than nought.
    #[error("{what} is {mm} mm")]
    Size {
        /// Which.
        what: &'static str,
        /// What it is.
        mm: f64,
    },
    /// Sizes that do not go together.
    #[error("{0}")]
    Unfit(&'static str),
}

/// Refuses sizes that are not greater than nought.
fn positive(sizes: &[(&'static str, f64)]) -> Result<(), NoShape> {
    match sizes.iter().find(|(_, mm)| !(mm.is_finite() && *mm > 0.0)) {
        Some(&(what, mm)) => Err(NoShape::Size { what, mm }),
        None => Ok(()),
    }
}

/// Refuses what does not go together.
fn fits(fit: &[(bool, &'static str)]) -> Result<(), NoShape> {
    match fit.iter().find(|(fits, _)| !fits) {
        Some((_, why)) => Err(NoShape::Unfit(why)),
        None => Ok(()),
    }
}
