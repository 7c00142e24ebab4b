//! The sections of a plan, one file a table of the file.
//!
//! Heights are measured upwards from the datum: the underside of the foundation ring of a vertical
//! boiler, of the barrel of a horizontal one. Angles of a vertical boiler run clockwise seen from
//! above, from the middle of the firehole; of a horizontal one, seen from the front, from the top.

mod boiler;
mod burner;
mod engine;
mod fire;
mod fitting;
mod flue;
mod gas;
mod mount;
mod shell;
mod site;
mod smoke;
mod spring;
mod stay_bush;
mod tube;

pub use boiler::{Boiler, BoilerForm, Lagging, WaterLevel};
pub use burner::{AirHoles, Burner, BurnerPlace, Jet, Mouth, Poker, Ports, Throat};
pub use engine::{Acting, Engine, SteamPipe};
pub use fire::{Ash, Fire, FireHoles, Fuel, Grate};
pub use fitting::{
    Bore, BoreKind, Coaxial, CrossHole, CrossReach, End, Fitting, FittingKind, Step,
};
pub use flue::{CrossTubes, Ends, Flue};
pub use gas::{Gas, GasAccepted, GasFuel, GasMixture, GasTank, Spirit, SpiritFuel, Wicks};
pub use mount::{
    Blowdown, Feed, FeedKind, FeedMeans, Fitted, FusiblePlug, PressureGauge, SafetyValve,
    ValveLift, WaterGauge,
};
pub use shell::{
    Barrel, Firebox, Firehole, FlangeSide, FoundationRing, Joint, Seam, TubePlate, TubePlates,
};
pub use site::{Duty, Room, Site, Water};
pub use smoke::{Blast, Blower, Chimney, Dryer, DryerPlace, Smokebox};
pub use spring::{Interlock, Spring, SpringGuide, ValvePipe};
pub use stay_bush::{Bush, BushPurpose, BushSeat, Stay, StayEnds, StayRun};
pub use tube::{TubeLayout, TubeRing, Tubes};
