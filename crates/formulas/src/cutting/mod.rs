//! Cutting metal in a small workshop: speeds, drilled holes, what a setting costs.

use reckoning::Card;

mod drilling;
mod setting;
mod speed;

pub use drilling::*;
pub use setting::*;
pub use speed::*;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &SPINDLE_SPEED,
    &POINT,
    &THROUGH_TIP,
    &CROSS_TIP,
    &CROSS_DEEPEST,
    &COUNTERSINK,
    &OFFSET_WORST,
    &OFFSET_LIKELY,
    &BAR_LENGTH,
];
