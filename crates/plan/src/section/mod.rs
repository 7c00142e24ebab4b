//! The sections of a plan, one file a table of the file.
//!
//! Heights of a vertical boiler are measured upwards from its datum, the underside of the
//! foundation ring; angles clockwise seen from above, from the middle of the firehole.

mod boiler;
mod engine;
mod fire;
mod fitting;
mod mount;
mod shell;
mod site;
mod smoke;
mod stay_bush;
mod tube;

pub use boiler::{Boiler, BoilerForm, Lagging, WaterLevel};
pub use engine::{Acting, Engine};
pub use fire::{Ash, Fire, Fuel, Grate};
pub use fitting::{
    Bore, BoreKind, Coaxial, CrossHole, CrossReach, End, Fitting, FittingKind, Step,
};
pub use mount::{
    Blowdown, Feed, FeedKind, FeedMeans, Fitted, FusiblePlug, PressureGauge, SafetyValve,
    ValveLift, WaterGauge,
};
pub use shell::{
    Barrel, Firebox, Firehole, FlangeSide, FoundationRing, Joint, Seam, TubePlate, TubePlates,
};
pub use site::{Duty, Room, Site, Water};
pub use smoke::{Blast, Blower, Chimney, Dryer, DryerPlace, Smokebox};
pub use stay_bush::{Bush, BushPurpose, BushSeat, Stay, StayEnds, StayRun};
pub use tube::{TubeLayout, TubeRing, Tubes};
