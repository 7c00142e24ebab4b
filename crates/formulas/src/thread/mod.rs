//! Screw threads: forms, series, names as makers write them, what a thread carries.

use reckoning::Card;

mod ba;
mod form;
mod metric;
mod name;
mod series;
pub mod shear;
mod strength;
mod tap;
mod whitworth;

pub use ba::*;
pub use form::{Form, FormCards, HoleLimits};
pub use metric::*;
pub use name::NotAThread;
pub use series::{Series, Thread, rows};
pub use strength::*;
pub use tap::TapLead;
pub use whitworth::*;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &METRIC_EFFECTIVE,
    &METRIC_ROOT,
    &METRIC_INTERNAL_MINOR,
    &METRIC_DEPTH_SHARE,
    &WHITWORTH_EFFECTIVE,
    &WHITWORTH_CORE,
    &WHITWORTH_DEPTH_SHARE,
    &BA_EFFECTIVE,
    &BA_CORE,
    &BA_DEPTH_SHARE,
    &STRESS_AREA,
    &ENGAGEMENT_LENGTH,
    &BLIND_DEPTH,
];
