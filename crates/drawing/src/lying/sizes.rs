//! What the sections of a horizontal boiler need to know: sizes that have been resolved.

use std::collections::BTreeMap;

use plant::part::Turned;
use reckoning::quantity::{Angle, Length};

use crate::boiler::TubePlate;

/// A tube along the boiler.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pipe {
    /// Outside diameter.
    pub outside: Length,
    /// Wall.
    pub wall: Length,
    /// Where it begins.
    pub from: Length,
    /// Where it ends.
    pub to: Length,
    /// Height of its axis.
    pub axis: Length,
}

impl Pipe {
    /// Its bore.
    #[must_use]
    pub fn bore(&self) -> Length {
        self.outside - self.wall * 2.0
    }
}

/// The cross tubes, all alike.
#[derive(Clone, Debug, PartialEq)]
pub struct CrossTubes {
    /// Where each stands.
    pub tubes: Vec<CrossTube>,
    /// Outside diameter.
    pub outside: Length,
    /// Wall.
    pub wall: Length,
    /// Length, end to end.
    pub length: Length,
}

/// A cross tube.
#[derive(Clone, Debug, PartialEq)]
pub struct CrossTube {
    /// Id in the plan.
    pub id: String,
    /// From the front of the barrel.
    pub along: Length,
    /// Angle of its right end above the horizontal, against the clock seen from the front.
    pub angle: Angle,
}

/// On which side of the barrel a bush is drawn in the section along the axis.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Over {
    /// On top.
    Top,
    /// Below.
    Bottom,
}

/// A bush in the barrel.
#[derive(Clone, Debug, PartialEq)]
pub struct Bush {
    /// Id in the plan.
    pub id: String,
    /// Where its axis stands, from the front of the barrel.
    pub along: Length,
    /// Angle of its axis clockwise from the top, seen from the front.
    pub angle: Angle,
    /// Side on which it is drawn in the section along the axis.
    pub over: Over,
    /// Diameter of its hole in the barrel.
    pub hole: Length,
    /// How far it reaches in beyond the inside of the barrel.
    pub inward: Length,
    /// Its shape, along its axis from its inner end.
    pub part: Turned,
}

/// The burner in the mouth of the flue, by the tube that holds the ports.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Poker {
    /// Outside diameter.
    pub outside: Length,
    /// Length that carries ports, from the mouth of the flue.
    pub length: Length,
}

/// The chimney by its bore, on the middle of the smokebox: of its metal nothing is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chimney {
    /// Where its axis stands, from the front of the barrel.
    pub along: Length,
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

/// Resolved sizes of a horizontal boiler.
#[derive(Clone, Debug, PartialEq)]
pub struct LyingBoiler {
    /// Name of the plant.
    pub name: String,
    /// Barrel.
    pub barrel: Pipe,
    /// Flue.
    pub flue: Pipe,
    /// Front end; its underside is the face at lesser lengths, as in the next.
    pub front: TubePlate,
    /// Back end.
    pub back: TubePlate,
    /// Cross tubes, where they are known.
    pub tubes: Option<CrossTubes>,
    /// Bushes in the barrel.
    pub bushes: Vec<Bush>,
    /// Smokebox.
    pub smokebox: Option<Pipe>,
    /// Chimney.
    pub chimney: Option<Chimney>,
    /// Burner in the flue.
    pub poker: Option<Poker>,
    /// Height of the working water level.
    pub water_level: Option<Length>,
    /// Height of the lowest water level.
    pub lowest: Option<Length>,
    /// What the maker wrote for a dimension, by the name of the dimension; the others are written
    /// in millimetres and degrees.
    pub typed: BTreeMap<String, String>,
    /// What the reader must know of the pictures.
    pub notes: Vec<String>,
}
