//! What a proof is told, as plain data: service, parts, stock.
//!
//! A size that is not known yet is `None` and leaves its checks unproved.

mod end;
mod form;
mod further;
mod inner;
mod mounting;
mod part;
mod pipe;
mod stock;

pub use end::{Bare, Curve, Dish, End, EndShape, Pressed};

pub use form::{Firehole, Flange, Frame, Points, Ring, Stay, StayEnds, StayRun};
pub use further::Further;
pub use inner::{Coil, CrossTubes, Feet, Girder, Standing};
pub use mounting::{
    BlowDown, FeedMeans, Fitted, FusiblePlug, Guide, Heating, Interlocks, Lift, Mountings,
    PressureGauge, SafetyValve, Spring, ValvePipe, WaterGauge, Wire,
};
pub use part::{
    Boiler, Bush, Diameter, Exposure, Field, Flue, Joint, Lap, Layout, Metal, Nest, Opening, Place,
    Seam, Shell, TubePlate,
};
pub use pipe::{Pipe, Screwed};
pub use stock::{Stock, StockSize};

use reckoning::quantity::{Absolute, Area, Gauge, HeatFlux, MassFlow, Temperature};
use reckoning::{Known, Size};

/// What the boiler is asked to bear.
#[derive(Clone, Debug, Default)]
pub struct Service {
    /// Working pressure, the set pressure of the safety valve.
    pub pressure: Option<Known<Gauge>>,
    /// How hot the coils get, by their ids.
    pub coils: Vec<CoilHeat>,
}

/// How hot a coil gets.
#[derive(Clone, Debug)]
pub struct CoilHeat {
    /// Id of the coil.
    pub coil: String,
    /// Hottest metal while steam flows through it.
    pub flowing: Option<Known<Temperature>>,
    /// Hottest metal while none flows: the gas about it.
    pub standing: Option<Known<Temperature>>,
    /// Greatest heat through its wall while steam flows.
    pub flux: Option<Known<HeatFlux>>,
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
