//! The tests that a set asks again.

use reckoning::Origin;

/// Tests that come again.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Inspection {
    /// Water test at repeats, over working pressure.
    pub repeat: f64,
    /// Years between water tests of a copper boiler.
    pub water_years: u32,
    /// Years between steam tests.
    pub steam_years: u32,
    /// How well founded they are.
    pub origin: Origin,
}

impl Inspection {
    /// The practice of clubs, which stands where a set says nothing of its own.
    pub const CLUBS: Self = Self {
        repeat: 1.5,
        water_years: 4,
        steam_years: 1,
        origin: Origin::FromMemory,
    };
}
