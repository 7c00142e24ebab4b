//! The works that are cited, one file a field of work. Citing is a reference to a constant: a
//! misspelt source does not compile.
//!
//! Each field file begins with `SOURCES`, its own list, and one line below gathers it; a test
//! finds a source that is in no list.

mod draught;
pub mod gas_fire;
mod making;
mod steam;
mod strength;
pub mod thermal;
mod trial;

pub use draught::*;
pub use gas_fire::*;
pub use making::*;
pub use reckoning::quantity::drill::{BIRMINGHAM_GAUGE, BS_3737_1964, NUMBER_AND_LETTER_DRILLS};
pub use reckoning::source::{COMMON_PRACTICE, DERIVED, Source};
pub use steam::*;
pub use strength::*;
pub use thermal::*;
pub use trial::*;

/// The lists of all fields.
pub static FIELDS: &[&[&Source]] = &[
    COMMON,
    draught::SOURCES,
    gas_fire::SOURCES,
    making::SOURCES,
    steam::SOURCES,
    strength::SOURCES,
    thermal::SOURCES,
    trial::SOURCES,
];

/// What every field may cite.
static COMMON: &[&Source] = &[
    &COMMON_PRACTICE,
    &DERIVED,
    &BS_3737_1964,
    &BIRMINGHAM_GAUGE,
    &NUMBER_AND_LETTER_DRILLS,
];

/// Every listed source.
pub fn all() -> impl Iterator<Item = &'static Source> {
    FIELDS.iter().flat_map(|field| field.iter().copied())
}

/// The source with this key.
#[must_use]
pub fn find(key: &str) -> Option<&'static Source> {
    all().find(|source| source.key == key)
}
