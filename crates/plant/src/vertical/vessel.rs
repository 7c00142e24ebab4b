//! How the parts of the vessel stand to each other, for those who draw it.

use reckoning::quantity::Length;

use super::frame::Frame;
use crate::boiler::Standing;
use crate::part::Flange;

/// A plate in its place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StandingPlate {
    /// Diameter over the flange.
    pub outside: Length,
    /// Height of the underside of its flat part; of an end that lies, distance of its front face
    /// from the front of the barrel.
    pub underside: Length,
    /// Thickness.
    pub thickness: Length,
    /// Flange, where it has one.
    pub flange: Option<Flange>,
}

/// The vessel as drawn, whether it can be built or not: what does not stand is a finding. Heights
/// are above the underside of the foundation ring, where the firebox begins.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Vessel {
    /// Height of the lower end of the barrel; below nought where the ring is set in.
    pub barrel_low: Length,
    /// Height of the upper side of the foundation ring.
    pub ring_high: Length,
    /// Upper tube plate.
    pub upper: StandingPlate,
    /// Lower tube plate.
    pub lower: StandingPlate,
}

impl Vessel {
    pub(crate) fn of(frame: &Frame) -> Self {
        Self {
            barrel_low: Length::from_mm(frame.barrel_low),
            ring_high: Length::from_mm(frame.ring),
            upper: in_place(&frame.upper),
            lower: in_place(&frame.lower),
        }
    }
}

/// A plate in its place, for those who draw it.
pub(crate) fn in_place(standing: &Standing) -> StandingPlate {
    StandingPlate {
        outside: Length::from_mm(2.0 * standing.radius),
        underside: Length::from_mm(standing.low),
        thickness: Length::from_mm(standing.thickness),
        flange: standing
            .flange
            .map(|(stands, inside_radius, height)| Flange {
                stands,
                inside_radius: Length::from_mm(inside_radius),
                height: Length::from_mm(height),
            }),
    }
}
