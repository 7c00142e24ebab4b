//! Where one part is brazed to another.

use reckoning::Known;
use reckoning::quantity::{Area, Length};

/// How far the filler of a joint can be seen after brazing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Seen {
    /// On both sides.
    BothSides,
    /// On the side of feeding alone.
    OneSide,
}

/// A brazed joint.
#[derive(Clone, Debug)]
pub struct Joint {
    /// Id: the two parts (`tube.3/tube-plate.upper`), and which end of a part that is held twice
    /// (`cross-tube.3/flue.left`).
    pub id: String,
    /// Id of one part.
    pub first: String,
    /// Id of the other.
    pub second: String,
    /// Length over which they lie on each other, across the path of the filler.
    pub lap: Option<Known<Length>>,
    /// Length of the path of the filler.
    pub path: Known<Length>,
    /// How far it can be seen; none where the plan does not say.
    pub seen: Option<Seen>,
}

impl Joint {
    /// Area of the braze.
    #[must_use]
    pub fn area(&self) -> Option<Area> {
        self.lap.as_ref().map(|lap| lap.value * self.path.value)
    }
}
