//! A flame in a flue: heat to its wall and to the tubes across it, and draught spent.
//!
//! The heat is set free along the burner as its gas finds air; the gas is marched through the
//! flue with a wall at one temperature. Convection by the local law of laminar flow, begun anew
//! behind the burner; radiation of gas and soot on a path across the bore; each cross tube takes
//! its heat at its place. Left out: the warmth of the burner's body, heat along the metal, free
//! convection beside the flow, and carbon monoxide.

mod cross;
mod march;
mod section;

pub use march::{March, STEP, Stream, march, march_in, profile};
pub use section::{Crossed, Section};

use crate::tubes::Beyond;

/// A flue from its mouth to the smokebox.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flue {
    /// Bore, m.
    pub bore_m: f64,
    /// Length, m.
    pub length_m: f64,
    /// How it lies.
    pub lie: Lie,
    /// Emissivity of its wall and of the tubes across it.
    pub wall_emissivity: f64,
    /// The tubes across it; `None` where it is plain.
    pub cross: Option<CrossTubes>,
    /// Velocity heads of the gas lost where it leaves.
    pub exit_heads: f64,
    /// Factors on laws that are carried beyond what they were published for.
    pub beyond: Beyond,
}

/// How a flue lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lie {
    /// Level: its hot gas neither lifts nor holds back.
    Level,
    /// Upright, the mouth below: its hot gas lifts.
    Upright,
}

/// Water tubes across a flue, all alike, one behind the other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossTubes {
    /// How many.
    pub count: u32,
    /// Outside diameter, m.
    pub outside_m: f64,
    /// Place of the first behind the mouth, m.
    pub first_m: f64,
    /// Distance from one to the next, m.
    pub spacing_m: f64,
    /// Heat to a tube over that of a single tube in an even stream.
    pub row_factor: f64,
    /// Friction and convection on the wall behind the first over those of a plain flue.
    pub stirring: f64,
}

impl CrossTubes {
    /// The places of the tubes behind the mouth, m.
    pub fn places(&self) -> impl Iterator<Item = f64> + use<> {
        let (first_m, spacing_m) = (self.first_m, self.spacing_m);
        (0..self.count).map(move |tube| first_m + f64::from(tube) * spacing_m)
    }
}

/// Where along the flue the heat is set free.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Release {
    /// Length over which fuel leaves the burner, from the mouth, m.
    pub ported_m: f64,
    /// Outside diameter of the burner in the flue, m; 0 where it leaves the bore open.
    pub core_m: f64,
    /// Primary air over the air that the fuel needs.
    pub primary_ratio: f64,
    /// Length over which the rest of the fuel finds its air, m.
    pub mixing_m: f64,
    /// Emissivity of the soot in the flame.
    pub soot: f64,
}
