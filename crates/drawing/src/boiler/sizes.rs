//! What the section of the boiler needs to know: sizes that have been resolved.

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

/// Which way the flange of a plate stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stands {
    /// Upwards.
    Up,
    /// Downwards.
    Down,
}

/// A flanged tube plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TubePlate {
    /// Diameter over the flange.
    pub outside: Length,
    /// Thickness.
    pub thickness: Length,
    /// Height of the underside of its flat part.
    pub underside: Length,
    /// Height of the flange over all, the thickness of the plate included.
    pub flange: Length,
    /// Which way the flange stands.
    pub stands: Stands,
    /// Radius inside the bend.
    pub inside_radius: Length,
}

/// A fire tube in the plane of section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FireTube {
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

/// A bush in the barrel, its axis level.
#[derive(Clone, Debug, PartialEq)]
pub struct Bush {
    /// Id in the plan.
    pub id: String,
    /// Side on which it is drawn.
    pub hand: Hand,
    /// Height of its axis.
    pub height: Length,
    /// Outside diameter.
    pub outside: Length,
    /// Bore.
    pub bore: Length,
    /// Length; its inner end is flush with the inside of the barrel.
    pub length: Length,
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
    /// Thickness.
    pub thickness: Length,
    /// Diameter.
    pub diameter: Length,
}

/// The blast nozzle, upright on the axis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nozzle {
    /// Outside diameter of the pipe.
    pub outside: Length,
    /// Bore at the tip.
    pub bore: Length,
    /// Height of the lower end that is drawn.
    pub bottom: Length,
    /// Height of the tip.
    pub tip: Length,
}

/// Resolved sizes of the boiler.
#[derive(Clone, Debug, PartialEq)]
pub struct VerticalBoiler {
    /// Name of the plant.
    pub name: String,
    /// Barrel; its bottom is the datum, height 0.
    pub barrel: Cylinder,
    /// Shell of the firebox.
    pub firebox: Cylinder,
    /// Plate that closes the barrel.
    pub upper_plate: TubePlate,
    /// Plate over the fire.
    pub lower_plate: TubePlate,
    /// Fire tubes cut by the plane of section.
    pub tubes: Vec<FireTube>,
    /// Height of the upper side of the foundation ring, which fills the space between firebox
    /// and barrel from the bottom of the firebox.
    pub ring_top: Length,
    /// Hole for firing.
    pub firehole: Option<Firehole>,
    /// Smokebox.
    pub smokebox: Option<Cylinder>,
    /// Chimney.
    pub chimney: Option<Cylinder>,
    /// Blast nozzle.
    pub nozzle: Option<Nozzle>,
    /// Grate.
    pub grate: Option<Grate>,
    /// Height of the working water level.
    pub water_level: Option<Length>,
    /// Bushes.
    pub bushes: Vec<Bush>,
}
