//! The kinds of pressure part.

use super::{Coil, CrossTubes, Dimension, End, Flange, Frame, Girder, Pipe, Screwed, Stay};
use reckoning::Known;
use reckoning::quantity::{Angle, Length, Ratio, Temperature};

/// Metals of pressure parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Metal {
    /// Phosphorus-deoxidised copper, annealed by the brazing.
    Copper,
    /// Phosphor bronze rod.
    PhosphorBronze,
    /// Cast gunmetal.
    Gunmetal,
    /// Any brass: refused for wetted brazed parts.
    Brass,
    /// Any steel: refused beside copper in water.
    Steel,
    /// Stainless steel 316 or 316H, for what stands in hot gas; refused beside copper in water.
    Stainless,
    /// The same low in carbon, 316L, of which no strength is listed when red hot.
    StainlessLow,
    /// A metal for which no strength is known here, or none was named.
    Unlisted,
}

impl Metal {
    /// The metal of a standard's designation, or [`Metal::Unlisted`].
    #[must_use]
    pub fn named(designation: &str) -> Self {
        match designation.trim() {
            "CW024A" | "C12200" => Self::Copper,
            "CW451K" | "CW452K" => Self::PhosphorBronze,
            "CC491K" | "C83600" => Self::Gunmetal,
            "CW614N" | "CW617N" | "CW508L" | "CW712R" => Self::Brass,
            "1.4401" | "1.4919" | "S31600" | "S31609" => Self::Stainless,
            "1.4404" | "S31603" => Self::StainlessLow,
            "P235GH" | "P265GH" | "S235JR" | "S275JR" | "1.4301" => Self::Steel,
            _ => Self::Unlisted,
        }
    }

    /// The metal in words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Copper => "deoxidised copper",
            Self::PhosphorBronze => "phosphor bronze",
            Self::Gunmetal => "gunmetal",
            Self::Brass => "brass",
            Self::Steel => "steel",
            Self::Stainless => "stainless steel",
            Self::StainlessLow => "stainless steel low in carbon",
            Self::Unlisted => "a metal that is not listed",
        }
    }
}

/// How a brazed joint can be inspected.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Joint {
    /// Filler fed from one side shows on the other.
    SeenBothSides,
    /// One side cannot be seen.
    Blind,
}

/// The seam along a shell.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Seam {
    /// Drawn tube.
    Seamless,
    /// A brazed lap, filler seen on both sides.
    LapSeenBothSides,
    /// A brazed lap that cannot be seen on both sides.
    LapBlind,
    /// A butt with a brazed strap.
    ButtStrap,
}

/// A diameter, as it is known.
#[derive(Clone, Debug)]
pub enum Diameter {
    /// Outside, as tube is sold.
    Outside(Dimension),
    /// Inside, as a rolled shell is drawn.
    Inside(Dimension),
}

/// Where an opening lies on a shell.
#[derive(Clone, Debug)]
pub struct Place {
    /// Distance along the axis.
    pub along: Known<Length>,
    /// Angle round the axis.
    pub around: Known<Angle>,
}

/// A bush brazed into an opening.
#[derive(Clone, Debug)]
pub struct Bush {
    /// Its metal.
    pub metal: Metal,
    /// Bore over the threads.
    pub bore: Option<Dimension>,
    /// How far it stands out of the shell.
    pub stands_out: Option<Dimension>,
    /// How far it stands into the vessel.
    pub stands_in: Option<Dimension>,
    /// Its joint.
    pub joint: Joint,
}

/// A hole in a shell or flue.
#[derive(Clone, Debug)]
pub struct Opening {
    /// Id in the plan.
    pub id: String,
    /// Hole cut in the shell.
    pub hole: Option<Dimension>,
    /// Bush in it, if there is one.
    pub bush: Option<Bush>,
    /// Where it lies.
    pub place: Option<Place>,
}

/// A stretch of a wall that the flange of an end or a ring laps.
#[derive(Clone, Debug)]
pub struct Lap {
    /// Id of the end or ring.
    pub of: String,
    /// Where it begins, along the axis.
    pub from: Known<Length>,
    /// Where it ends.
    pub to: Known<Length>,
}

/// A cylindrical shell with pressure inside.
#[derive(Clone, Debug)]
pub struct Shell {
    /// Id in the plan.
    pub id: String,
    /// Its metal.
    pub metal: Metal,
    /// Diameter.
    pub diameter: Option<Diameter>,
    /// Wall.
    pub wall: Option<Dimension>,
    /// Seam along it.
    pub seam: Seam,
    /// Joints round its ends.
    pub ends: Joint,
    /// Greatest temperature of its metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
    /// Its openings.
    pub openings: Vec<Opening>,
    /// Stretches that ends lap.
    pub laps: Vec<Lap>,
}

/// What passes through a flue.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Exposure {
    /// The fire itself: a firebox or a fired centre flue.
    FlameSwept,
    /// Gas that has left the fire.
    Gas,
}

/// A tube with pressure outside: a firebox, a centre flue, or the fire tubes (one stands for
/// all that are alike).
#[derive(Clone, Debug)]
pub struct Flue {
    /// Id in the plan.
    pub id: String,
    /// Its metal.
    pub metal: Metal,
    /// Diameter.
    pub diameter: Option<Diameter>,
    /// Wall.
    pub wall: Option<Dimension>,
    /// Length between the plates or rings that hold it round.
    pub length: Option<Known<Length>>,
    /// Ovality, greatest less least diameter: drawn is what is allowed, made what was measured.
    pub ovality: Option<Dimension>,
    /// What passes through it.
    pub exposure: Exposure,
    /// Greatest temperature of its metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
    /// Its openings: a firehole, cross tubes.
    pub openings: Vec<Opening>,
    /// Stretches that ends or rings lap.
    pub laps: Vec<Lap>,
}

/// How the tubes of a nest stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Layout {
    /// Even triangles.
    Triangle,
    /// Squares.
    Square,
}

/// Whether a nest is whole.
#[derive(Clone, Debug)]
pub enum Field {
    /// Every place is filled.
    Even,
    /// Places are left out: the widest bare field, from [`crate::widest_field`].
    Gapped {
        /// Largest circle through three supports that holds none.
        circle: Known<Length>,
        /// Middle side of the triangle of these three.
        side: Known<Length>,
    },
}

/// The tubes that hold a tube plate.
#[derive(Clone, Debug)]
pub struct Nest {
    /// How they stand.
    pub layout: Layout,
    /// Whether places are left out.
    pub field: Field,
    /// How many there are.
    pub count: Option<Known<Ratio>>,
    /// Pitch.
    pub pitch: Option<Known<Length>>,
    /// Outside diameter of the tubes.
    pub outside: Option<Dimension>,
    /// Holes in the plate before the tubes are brazed in.
    pub hole: Option<Dimension>,
    /// Wall of the tubes.
    pub wall: Option<Dimension>,
    /// The joint of tube and plate.
    pub joint: Joint,
}

/// A flat plate held by the tubes that pass through it.
#[derive(Clone, Debug)]
pub struct TubePlate {
    /// Id in the plan.
    pub id: String,
    /// Its metal.
    pub metal: Metal,
    /// Thickness.
    pub thickness: Option<Dimension>,
    /// Its tubes.
    pub nest: Nest,
    /// Its flange, where it has one.
    pub flange: Option<Flange>,
    /// Openings in it that are not tubes.
    pub openings: Vec<Opening>,
    /// Widest strip of bare plate from an outer tube to the wall or the root of the flange.
    pub margin: Option<Known<Length>>,
    /// Greatest temperature of its metal at work.
    pub metal_temperature: Option<Known<Temperature>>,
}

/// The pressure parts of one boiler.
#[derive(Clone, Debug, Default)]
pub struct Boiler {
    /// Shells with pressure inside.
    pub shells: Vec<Shell>,
    /// Tube plates.
    pub plates: Vec<TubePlate>,
    /// Fireboxes, flues and fire tubes.
    pub flues: Vec<Flue>,
    /// The frame of a wet firebox, where the boiler has one.
    pub frame: Option<Frame>,
    /// Stays.
    pub stays: Vec<Stay>,
    /// Ends that no nest of tubes holds.
    pub ends: Vec<End>,
    /// Cross tubes.
    pub cross_tubes: Vec<CrossTubes>,
    /// Girders on a crown.
    pub girders: Vec<Girder>,
    /// Coils in hot gas.
    pub coils: Vec<Coil>,
    /// Pipes under boiler pressure.
    pub pipes: Vec<Pipe>,
    /// What is screwed into bushes.
    pub screwed: Vec<Screwed>,
    /// Filler of the pressure joints, by its standard's name.
    pub filler: Option<String>,
}
