//! What is mounted on a boiler, as plain data.

use super::{Dimension, Removed, StockSize};
use reckoning::Known;
use reckoning::quantity::{Gauge, Length, Ratio, Temperature};

/// How far a safety valve lifts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Lift {
    /// A plain spring-loaded valve.
    Ordinary,
    /// An eighth of its bore or more.
    High,
    /// A quarter of its bore or more.
    Full,
}

/// A safety valve.
#[derive(Clone, Debug)]
pub struct SafetyValve {
    /// Id in the plan.
    pub id: String,
    /// Class of its lift; ordinary where none is named.
    pub lift_class: Option<Lift>,
    /// Pressure at which it opens.
    pub set: Option<Known<Gauge>>,
    /// Diameter of the line on which it seats.
    pub seat: Option<Dimension>,
    /// Least bore below the seat.
    pub bore: Option<Dimension>,
    /// Lift that its stop allows.
    pub lift: Option<Dimension>,
    /// Discharge coefficient, where this valve was measured.
    pub coefficient: Option<Known<Ratio>>,
    /// Free bore of the bush it is screwed into.
    pub inlet: Option<Dimension>,
    /// Its spring, where the maker winds it.
    pub spring: Option<Spring>,
    /// Outside and wall of a pipe between boiler and valve, where there is one.
    pub pipe: Option<ValvePipe>,
    /// Whether the bore below the seat was once entered and then taken away.
    pub bore_gone: Removed,
    /// Whether a measured coefficient was once entered and then taken away.
    pub coefficient_gone: Removed,
}

/// A pipe between boiler and valve.
#[derive(Clone, Debug)]
pub struct ValvePipe {
    /// Outside diameter.
    pub outside: Option<Dimension>,
    /// Wall.
    pub wall: Option<Dimension>,
}

/// The spring of a safety valve.
#[derive(Clone, Debug, Default)]
pub struct Spring {
    /// Wire.
    pub wire: Option<Dimension>,
    /// Mean diameter of the coil.
    pub coil: Option<Dimension>,
    /// Turns that work.
    pub turns: Option<Known<Ratio>>,
    /// Length without load.
    pub free: Option<Dimension>,
    /// What keeps it straight.
    pub guide: Option<Guide>,
    /// Metal of its wire.
    pub metal: Option<Wire>,
}

/// What keeps a spring straight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Guide {
    /// A rod through it.
    Spindle,
    /// Flat caps that cannot tilt.
    FlatEnds,
    /// Caps that may tilt.
    LooseEnds,
}

/// Metals of spring wire.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Wire {
    /// Stainless spring wire 1.4310.
    Stainless,
    /// A wire of which nothing is known here.
    Unlisted,
}

impl Wire {
    /// The wire of a standard's designation.
    #[must_use]
    pub fn named(designation: &str) -> Self {
        match designation.trim() {
            "1.4310" => Self::Stainless,
            _ => Self::Unlisted,
        }
    }
}

/// What heats a boiler.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Heating {
    /// Coal, charcoal or wood.
    Solid,
    /// Gas that burns until it is shut.
    Gas,
    /// Spirit that burns until it is spent.
    Spirit,
}

/// What puts a gas fire out by itself.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Interlocks {
    /// Where the flame fails.
    pub flame: Option<Fitted>,
    /// Where the water is low.
    pub water: Option<Fitted>,
    /// At working pressure.
    pub pressure: Option<Fitted>,
}

/// A means of feeding under pressure.
#[derive(Clone, Debug)]
pub struct FeedMeans {
    /// Id in the plan.
    pub id: String,
    /// Bore of its check valve.
    pub check_valve: Option<Dimension>,
}

/// Whether a thing is there.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fitted {
    /// It is.
    Yes,
    /// It is not.
    No,
}

/// The pressure gauge.
#[derive(Clone, Debug, Default)]
pub struct PressureGauge {
    /// End of its scale.
    pub range: Option<Known<Gauge>>,
    /// Its syphon.
    pub syphon: Option<Fitted>,
}

/// Heights of the water and of the glass, above one datum.
#[derive(Clone, Debug, Default)]
pub struct WaterGauge {
    /// Lower end of the visible glass.
    pub bottom: Option<Known<Length>>,
    /// Upper end of the visible glass.
    pub top: Option<Known<Length>>,
    /// Lowest water that is allowed.
    pub lowest: Option<Known<Length>>,
    /// Water at work.
    pub working: Option<Known<Length>>,
    /// Wet face of the firebox crown.
    pub crown: Option<Known<Length>>,
}

/// The blow-down.
#[derive(Clone, Debug, Default)]
pub struct BlowDown {
    /// Height of the middle of its bush above the datum of the water.
    pub height: Option<Known<Length>>,
    /// Diameter of its bush in the wall.
    pub outside: Option<Known<Length>>,
    /// Height of the upper face of the foundation ring above the same datum.
    pub ring_top: Option<Known<Length>>,
}

/// The fusible plug.
#[derive(Clone, Debug, Default)]
pub struct FusiblePlug {
    /// Whether the crown has one.
    pub fitted: Option<Fitted>,
    /// Melting temperature of its core.
    pub melts: Option<Known<Temperature>>,
}

/// Everything that is mounted on a boiler.
#[derive(Clone, Debug, Default)]
pub struct Mountings {
    /// Safety valves.
    pub valves: Vec<SafetyValve>,
    /// Means of feeding.
    pub feeds: Vec<FeedMeans>,
    /// Pressure gauge.
    pub gauge: PressureGauge,
    /// Water gauge.
    pub glass: WaterGauge,
    /// Blow-down.
    pub blow_down: BlowDown,
    /// Fusible plug.
    pub plug: FusiblePlug,
    /// What heats the boiler, where that is known.
    pub heating: Option<Heating>,
    /// What puts a gas fire out by itself.
    pub interlocks: Interlocks,
    /// Spring wire on hand.
    pub wires: Vec<StockSize>,
}
