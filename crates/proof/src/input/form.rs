//! How the parts of a boiler hang together: flanges, the frame of a wet firebox, stays.

use super::{Dimension, Joint, Metal};
use reckoning::Known;
use reckoning::quantity::{Area, Length, Temperature};

/// To which side a flange points.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Points {
    /// Pressure presses it against the wall.
    TowardsWater,
    /// The root of the bend meets the water.
    AwayFromWater,
}

/// The flange of an end plate and its joint.
#[derive(Clone, Debug)]
pub struct Flange {
    /// Id of the shell or flue that the plate closes.
    pub closes: String,
    /// Height over all: the lap, the bend and the plate.
    pub height: Option<Dimension>,
    /// Inside radius of the bend.
    pub inside_radius: Option<Dimension>,
    /// To which side it points.
    pub points: Option<Points>,
    /// Its joint.
    pub joint: Joint,
}

/// The ring that closes a water leg at the bottom.
#[derive(Clone, Debug)]
pub struct Ring {
    /// Id in the plan.
    pub id: String,
    /// Its metal.
    pub metal: Metal,
    /// Depth along the walls, which is the lap of its joints.
    pub depth: Option<Dimension>,
    /// Its joints.
    pub joint: Joint,
    /// Greatest temperature of its metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
}

/// The tube through a water leg to the fire, as a tie of the two walls.
#[derive(Clone, Debug)]
pub struct Firehole {
    /// Id in the plan.
    pub id: String,
    /// Its joints.
    pub joint: Joint,
}

/// A firebox that stands in a shell with water round it, by the ids of its parts.
#[derive(Clone, Debug)]
pub struct Frame {
    /// Id of the shell.
    pub shell: String,
    /// Id of the firebox, a flue.
    pub firebox: String,
    /// Id of the plate that is its crown.
    pub crown: String,
    /// Id of the plate at the other end of the tubes.
    pub upper: String,
    /// The ring at the bottom of the water leg.
    pub ring: Ring,
    /// The firehole, where there is one.
    pub firehole: Option<Firehole>,
}

/// What a stay ties.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StayRun {
    /// Two plates, upright.
    PlateToPlate,
    /// Firebox and shell, across the water leg.
    AcrossLeg,
    /// The two ends of a shell, from one to the other.
    EndToEnd,
}

/// How the ends of a stay are held.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StayEnds {
    /// Brazed in plain holes.
    Brazed,
    /// Headed or nutted on the far side, and brazed.
    Headed,
}

/// A stay that is brazed at both ends.
#[derive(Clone, Debug)]
pub struct Stay {
    /// Id in the plan.
    pub id: String,
    /// Its metal.
    pub metal: Metal,
    /// What it ties.
    pub run: StayRun,
    /// Diameter.
    pub diameter: Option<Dimension>,
    /// Bore of a hollow stay.
    pub bore: Option<Dimension>,
    /// Plate that hangs on it: half way to its neighbours and to the edge.
    pub field: Option<Known<Area>>,
    /// Thickness of the thinner of the two walls it ties.
    pub plate: Option<Dimension>,
    /// How its ends are held.
    pub ends: StayEnds,
    /// Its joints.
    pub joint: Joint,
    /// Section of the shell that grows beside it, of a stay from end to end.
    pub beside: Option<Known<Area>>,
    /// Free length; of a stay across a leg, the width of the leg.
    pub length: Option<Known<Length>>,
    /// Height above the foundation ring, of a stay across a leg.
    pub height: Option<Known<Length>>,
    /// Greatest temperature of its metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
}
