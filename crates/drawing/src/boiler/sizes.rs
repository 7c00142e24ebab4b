//! What the section of the boiler needs to know: sizes that have been resolved.

use std::collections::BTreeMap;

use plant::part::{Flange, Turned};
use reckoning::quantity::Length;

/// A cylinder standing on the axis of the boiler.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cylinder {
    /// Outside diameter.
    pub outside: Length,
    /// Wall.
    pub wall: Length,
    /// Height of its lower edge.
    pub bottom: Length,
    /// Height of its upper edge.
    pub top: Length,
}

/// A tube plate, flat or flanged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TubePlate {
    /// Diameter over the flange.
    pub outside: Length,
    /// Thickness.
    pub thickness: Length,
    /// Height of the underside of its flat part.
    pub underside: Length,
    /// Flange, where it has one.
    pub flange: Option<Flange>,
}

/// A fire tube drawn in the plane of section.
#[derive(Clone, Debug, PartialEq)]
pub struct FireTube {
    /// Id in the plan.
    pub id: String,
    /// Distance of its axis to the right of the axis of the boiler.
    pub x: Length,
    /// Outside diameter.
    pub outside: Length,
    /// Wall.
    pub wall: Length,
    /// Height of its lower end.
    pub bottom: Length,
    /// Height of its upper end.
    pub top: Length,
}

/// On which side of the axis something is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hand {
    /// Left.
    Left,
    /// Right.
    Right,
}

impl Hand {
    /// The other side.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

/// A bush in the barrel, its axis level.
#[derive(Clone, Debug, PartialEq)]
pub struct Bush {
    /// Id in the plan.
    pub id: String,
    /// Side on which it is drawn.
    pub hand: Hand,
    /// Height of its axis.
    pub height: Length,
    /// Diameter of its hole in the barrel.
    pub hole: Length,
    /// How far it reaches in beyond the inside of the barrel.
    pub inward: Length,
    /// Its shape, along its axis from its inner end.
    pub part: Turned,
}

/// The hole for firing: a ring between barrel and firebox, on the right.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Firehole {
    /// Height of its axis.
    pub height: Length,
    /// Clear opening.
    pub opening: Length,
    /// Wall of the ring.
    pub wall: Length,
}

/// The grate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grate {
    /// Height of its upper side.
    pub top: Length,
    /// Thickness, where it is known.
    pub thickness: Option<Length>,
    /// Diameter.
    pub diameter: Length,
}

/// The blast nozzle, upright on the axis: of its metal nothing is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nozzle {
    /// Bore at the tip.
    pub bore: Length,
    /// Height of the tip.
    pub tip: Length,
}

/// The chimney by its bore: of its metal nothing is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chimney {
    /// Least bore, which begins at the bottom.
    pub choke: Length,
    /// Bore at the top.
    pub mouth: Length,
    /// Height of the choke.
    pub bottom: Length,
    /// Height at which the parallel part ends.
    pub taper: Length,
    /// Height of the top.
    pub top: Length,
}

/// Resolved sizes of the boiler.
#[derive(Clone, Debug, PartialEq)]
pub struct VerticalBoiler {
    /// Name of the plant.
    pub name: String,
    /// Barrel. Heights are above the underside of the foundation ring.
    pub barrel: Cylinder,
    /// Shell of the firebox.
    pub firebox: Cylinder,
    /// Plate that closes the barrel.
    pub upper_plate: TubePlate,
    /// Plate over the fire.
    pub lower_plate: TubePlate,
    /// Fire tubes drawn as cut by the plane of section.
    pub tubes: Vec<FireTube>,
    /// Height of the upper side of the foundation ring, which fills the space between firebox
    /// and barrel from the bottom of the firebox.
    pub ring_top: Length,
    /// Hole for firing.
    pub firehole: Option<Firehole>,
    /// Smokebox.
    pub smokebox: Option<Cylinder>,
    /// Chimney.
    pub chimney: Option<Chimney>,
    /// Blast nozzle.
    pub nozzle: Option<Nozzle>,
    /// Grate.
    pub grate: Option<Grate>,
    /// Height of the working water level.
    pub water_level: Option<Length>,
    /// Bushes in the barrel.
    pub bushes: Vec<Bush>,
    /// What the maker wrote for a dimension, by the name of the dimension; the others are written
    /// in millimetres.
    pub typed: BTreeMap<String, String>,
    /// What the reader must know of the picture: parts turned into the plane, parts left out.
    pub notes: Vec<String>,
}
