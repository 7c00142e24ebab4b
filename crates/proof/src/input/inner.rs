//! What stands inside a boiler or in its gas: cross tubes, girders on a crown, coils.

use super::{Dimension, Joint, Metal};
use reckoning::Known;
use reckoning::quantity::{Length, Ratio, Temperature};

/// Tubes with water inside across a flue, the flame outside; all are alike. The holes that they
/// make in the flue are openings of the flue.
#[derive(Clone, Debug)]
pub struct CrossTubes {
    /// Id in the plan.
    pub id: String,
    /// Their metal.
    pub metal: Metal,
    /// Id of the flue that they cross.
    pub flue: String,
    /// How many there are.
    pub count: Option<Known<Ratio>>,
    /// Outside diameter.
    pub outside: Option<Dimension>,
    /// Wall.
    pub wall: Option<Dimension>,
    /// Length in the flame.
    pub length: Option<Known<Length>>,
    /// Their joints in the flue.
    pub joint: Joint,
    /// Greatest temperature of their metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
}

/// Girders on a firebox crown; all are alike.
#[derive(Clone, Debug)]
pub struct Girder {
    /// Id in the plan.
    pub id: String,
    /// Their metal.
    pub metal: Metal,
    /// Depth above the crown plate; the plate does not count.
    pub depth: Option<Dimension>,
    /// Thickness of all webs of one girder together.
    pub thickness: Option<Dimension>,
    /// Span between the feet.
    pub span: Option<Known<Length>>,
    /// Distance of neighbouring girders, middle to middle.
    pub pitch: Option<Known<Length>>,
    /// What it stands on.
    pub feet: Feet,
    /// Greatest temperature of its metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
}

/// What a girder stands on.
#[derive(Clone, Debug)]
pub enum Feet {
    /// The tube plate and the back plate of the firebox.
    OnPlates(Box<Standing>),
    /// Nothing: it hangs from the shell.
    Slung,
}

/// The plates under the feet of girders.
#[derive(Clone, Debug)]
pub struct Standing {
    /// Length of one foot along the girder.
    pub foot: Option<Dimension>,
    /// Thickness of the tube plate under it.
    pub plate: Option<Dimension>,
    /// Metal of that plate.
    pub metal: Metal,
    /// Level pitch of the tubes in it.
    pub pitch: Option<Known<Length>>,
    /// Diameter of the holes in it.
    pub hole: Option<Dimension>,
    /// Length of the firebox at the top.
    pub length: Option<Known<Length>>,
}

/// A coil of tube in hot gas that carries steam: a dryer or a superheater.
#[derive(Clone, Debug)]
pub struct Coil {
    /// Id in the plan.
    pub id: String,
    /// Its metal.
    pub metal: Metal,
    /// Outside diameter of its tube.
    pub outside: Option<Dimension>,
    /// Wall of its tube.
    pub wall: Option<Dimension>,
    /// Length of tube in the gas.
    pub length: Option<Known<Length>>,
    /// Mean diameter of its turns; `None` for a straight element.
    pub turn: Option<Known<Length>>,
}
