//! The way of the gas, from below the grate or the mouth of the flue to the top of the chimney.

use reckoning::Known;
use reckoning::quantity::{Area, Length, Ratio};

/// Which stretch of the way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stretch {
    /// Through the openings of the grate.
    Grate,
    /// Through the bed of fuel.
    Bed,
    /// Through the firebox above the bed.
    Firebox,
    /// Through the fire tubes, all side by side.
    Tubes,
    /// Through the opening for the air that a burner does not draw itself.
    Mouth,
    /// Through the flue beside a burner that lies in it.
    Burner,
    /// Through the flue, as if no tube crossed it.
    Flue,
    /// Past the cross tubes, one after another.
    Crossings,
    /// Through the smokebox.
    Smokebox,
    /// Beside the drying coil.
    Coil,
    /// Through the choke and the parallel part of the chimney.
    Choke,
    /// Through the rest of the chimney.
    Chimney,
}

/// A stretch of the way.
#[derive(Clone, Debug)]
pub struct GasSection {
    /// Which.
    pub stretch: Stretch,
    /// How many ways lie side by side.
    pub ways: u32,
    /// Area of all of them together, for the gas.
    pub area: Known<Area>,
    /// Length along the flow, where it has one.
    pub length: Option<Known<Length>>,
    /// Four times the area over the wetted edge, of one way, where it is a plain duct.
    pub hydraulic_diameter: Option<Known<Length>>,
    /// Open share of the area, for a grate.
    pub open: Option<Known<Ratio>>,
}
