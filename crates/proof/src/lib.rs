//! Every pressure part against rule sets, given the service (pressure and metal temperatures) as
//! plain data.
//!
//! A rule set is one struct of data and one function a kind of part; adding a set is one file in
//! `set/`. Sets are never mixed inside a check. A missing size is unproved, an assumed one enters
//! at the worse end of its range and makes a hold point. Nothing here says that a boiler may be
//! lit: the club's boiler tester, the insurer and the local code have the word.

mod agreement;
mod elastic;
mod empty_circle;
mod external;
mod external_solve;
mod field;
mod input;
mod lead;
mod metal;
mod mounting;
mod opening;
mod remedy;
mod rules;
mod set;
mod stay_field;
mod stress;
mod sum;
mod taken;

pub use agreement::{Agreement, Hearing, Partner, agreements};
pub use elastic::elastic;
pub use empty_circle::{Support, empty_circle};
pub use external::{Allowed, External, Governs, Held, Limits, Tube};
pub use external_solve::{greatest_ovality, least_wall};
pub use field::{Widest, widest_field};
pub use input::{
    Bare, BlowDown, Boiler, Bush, Coil, CoilHeat, CrossTubes, Curve, Diameter, Dimension, Dish,
    End, EndShape, Exposure, FeedMeans, Feet, Field, Firehole, Fitted, Flange, Flue, Frame,
    Further, FusiblePlug, Girder, Guide, Heating, Interlocks, Joint, Lap, Layout, Lift, Metal,
    Mountings, Nest, Opening, Pipe, Place, Points, Pressed, PressureGauge, Raising, Removed, Ring,
    SafetyValve, Screwed, Seam, Service, Shell, Spring, Standing, Stay, StayEnds, StayRun, Stock,
    StockSize, TubePlate, ValvePipe, WaterGauge, Wire,
};
pub use lead::{Proof, SetProof, prove};
pub use metal::ASSUMPTIONS;
pub use mounting::mountings;
pub use rules::RULES;
pub use set::{
    ASME_VIII, Asked, EN_12953, EN_13445, IBR, Inspection, Joints, OURS, RuleSet, SETS,
    SHIP_REGISTER, Scope, TRADE, Test, WaterTest, find_set,
};
pub use stay_field::{stay_field, stay_field_within};
pub use sum::Stop;
