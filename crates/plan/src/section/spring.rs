//! `[safety-valve.spring]`, `[safety-valve.pipe]` and `[interlock]`: what holds a safety valve shut,
//! what leads to it, and what puts a gas fire out by itself.

use reckoning::Size;
use reckoning::quantity::Ratio;

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::section::mount::Fitted;
use crate::visit::{Section, Visitor};

/// `[safety-valve.spring]`: a spring wound by the maker.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Spring {
    /// Diameter of its wire.
    pub wire: Entry<Size>,
    /// Mean diameter of its coil.
    pub coil: Entry<Size>,
    /// Turns that work.
    pub turns: Entry<Ratio>,
    /// Length without load.
    pub free_length: Entry<Size>,
    /// How it is kept straight.
    pub guide: Entry<SpringGuide>,
    /// Metal of its wire.
    pub metal: Entry<String>,
}

impl Section for Spring {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.wire,
            "wire",
            "diameter of the wire of the spring",
            within("0.2 mm", "5 mm"),
        );
        v.size(
            &mut self.coil,
            "coil",
            "mean diameter of its coil, from middle to middle of the wire",
            within("1 mm", "60 mm"),
        );
        v.number(
            &mut self.turns,
            "turns",
            "turns that work, the closed end turns not counted",
            within("2", "40"),
        );
        v.size(
            &mut self.free_length,
            "free-length",
            "length of the spring without load",
            within("3 mm", "200 mm"),
        );
        v.choice(&mut self.guide, "guide", "what keeps the spring straight");
        v.text(
            &mut self.metal,
            "metal",
            "metal of the wire, by its standard name",
        );
    }
}

/// What keeps a spring straight.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SpringGuide {
    /// A rod through it.
    Spindle,
    /// Its ends alone, between flat caps that cannot tilt.
    FlatEnds,
    /// Its ends alone, free to tilt.
    LooseEnds,
}

impl Choice for SpringGuide {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Spindle, "spindle", "a rod through the spring"),
        (
            Self::FlatEnds,
            "flat ends",
            "ground ends between flat caps that cannot tilt",
        ),
        (Self::LooseEnds, "loose ends", "caps that may tilt"),
    ];
}

/// `[safety-valve.pipe]`: a pipe between boiler and valve.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ValvePipe {
    /// Outside diameter.
    pub outside: Entry<Size>,
    /// Wall.
    pub wall: Entry<Size>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Section for ValvePipe {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of a pipe between boiler and valve; leave empty where there is none",
            within("2 mm", "60 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of that pipe",
            within("0.2 mm", "6 mm"),
        );
        v.text(&mut self.metal, "metal", "metal of that pipe");
    }
}

/// `[interlock]`: what puts a gas fire out by itself.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Interlock {
    /// Shuts the gas where the flame fails.
    pub flame_failure: Entry<Fitted>,
    /// Shuts the gas where the water is low.
    pub low_water: Entry<Fitted>,
    /// Turns the gas down or off at working pressure.
    pub pressure: Entry<Fitted>,
}

impl Section for Interlock {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.choice(
            &mut self.flame_failure,
            "flame-failure",
            "whether the gas is shut by itself where the flame fails",
        );
        v.choice(
            &mut self.low_water,
            "low-water",
            "whether the gas is shut by itself where the water is low",
        );
        v.choice(
            &mut self.pressure,
            "pressure",
            "whether the gas is turned down by itself at working pressure",
        );
    }
}
