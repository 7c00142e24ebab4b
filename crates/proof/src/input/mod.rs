//! What a proof is told, as plain data: service, parts, stock.
//!
//! A size that is not known yet is `None` and leaves its checks unproved.

mod form;
mod mounting;
mod part;
mod stock;

pub use form::{Firehole, Flange, Frame, Points, Ring, Stay, StayRun};
pub use mounting::{
    BlowDown, FeedMeans, Fitted, FusiblePlug, Lift, Mountings, PressureGauge, SafetyValve,
    WaterGauge,
};
pub use part::{
    Boiler, Bush, Diameter, Exposure, Field, Flue, Joint, Layout, Metal, Nest, Opening, Place,
    Seam, Shell, TubePlate,
};
pub use stock::{Stock, StockSize};

use reckoning::quantity::{Absolute, Area, Gauge, MassFlow};
use reckoning::{Known, Size};

/// What the boiler is asked to bear.
#[derive(Clone, Debug, Default)]
pub struct Service {
    /// Working pressure, the set pressure of the safety valve.
    pub pressure: Option<Known<Gauge>>,
}

/// What the boiler raises and at which pressure, for what is mounted on it.
#[derive(Clone, Debug, Default)]
pub struct Raising {
    /// Design pressure.
    pub pressure: Option<Known<Gauge>>,
    /// Pressure of the air.
    pub atmosphere: Option<Known<Absolute>>,
    /// Steam that the greatest fire raises with the feed shut, at a tenth above the set pressure.
    pub greatest_evaporation: Option<Known<MassFlow>>,
    /// Heating surface that gas sweeps.
    pub swept_surface: Option<Known<Area>>,
    /// Heating surface in sight of the fire.
    pub radiant_surface: Option<Known<Area>>,
}

/// A size with the plan field from which it comes.
#[derive(Clone, Debug)]
pub struct Dimension {
    /// Path of the field (`barrel.wall`).
    pub field: String,
    /// As drawn, its tolerance, as made.
    pub size: Size,
    /// Whether a part of it was once entered and then taken away.
    pub removed: Removed,
}

/// What the plan remembers of a number that is no longer there.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Removed {
    /// Nothing was taken away.
    #[default]
    Nothing,
    /// A measurement or a tolerance was entered once and then taken away: the check stays open
    /// until the size is measured.
    Measurement,
}
