//! Where the fire tubes stand in their plates.

mod margin;
mod pattern;

pub use margin::widest_margin;
pub use pattern::{Centre, Circle, Pattern, places};

use reckoning::quantity::Length;

/// The middle of a tube, from the middle of the plate, seen from above: `x` towards the firehole,
/// `y` a quarter turn against the clock from it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct At {
    /// Towards the firehole.
    pub x: Length,
    /// A quarter turn against the clock from it.
    pub y: Length,
}

impl At {
    /// The place at a radius and an angle clockwise from the firehole, as plans give angles.
    #[must_use]
    pub fn polar(radius: Length, clockwise: reckoning::quantity::Angle) -> Self {
        let (sine, cosine) = clockwise.rad().sin_cos();
        Self {
            x: radius * cosine,
            y: radius * -sine,
        }
    }

    /// Distance from the middle of the plate.
    #[must_use]
    pub fn radius(self) -> Length {
        Length::from_mm(self.x.mm().hypot(self.y.mm()))
    }

    /// Distance from another place.
    #[must_use]
    pub fn from(self, other: Self) -> Length {
        Length::from_mm((self.x - other.x).mm().hypot((self.y - other.y).mm()))
    }
}
