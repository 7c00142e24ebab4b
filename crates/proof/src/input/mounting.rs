//! What is mounted on a boiler, as plain data.

use super::Dimension;
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
}
