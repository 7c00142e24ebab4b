//! Rule sets: one struct of data and one function a kind of part.

mod asme_viii;
mod closed;
mod european;
mod filler;
mod inspection;
pub(crate) mod ours;
pub(crate) mod served;
mod shell_boiler;
mod ship;
mod state;
mod taking;
mod trade;
mod unworked;
mod water_test;

pub use asme_viii::ASME_VIII;
pub use european::EN_13445;
pub use inspection::Inspection;
pub use ours::OURS;
pub use shell_boiler::EN_12953;
pub use ship::SHIP_REGISTER;
pub use state::IBR;
pub use trade::TRADE;
pub use water_test::WaterTest;

use crate::input::Joint;
use crate::input::{Boiler, Flue, Seam, Service, Shell, Stock, TubePlate};
use crate::metal::chosen;
use crate::sum::{Head, Sum};
use reckoning::quantity::{ONE, Ratio};
use reckoning::{Finding, Origin, Ref, Rule, Seen};

/// Every rule set.
pub static SETS: &[&RuleSet] = &[
    &OURS,
    &ASME_VIII,
    &EN_13445,
    &EN_12953,
    &SHIP_REGISTER,
    &IBR,
    &TRADE,
];

/// The set with this key.
#[must_use]
pub fn find_set(key: &str) -> Option<&'static RuleSet> {
    SETS.iter().copied().find(|set| set.key == key)
}

/// Joint efficiencies of a set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Joints {
    /// Filler seen on both sides.
    pub both_sides: f64,
    /// A lapped seam along a shell, filler seen on both sides.
    pub lap_along: f64,
    /// A strapped seam along a shell.
    pub strap_along: f64,
    /// A joint that cannot be seen on both sides.
    pub blind: f64,
    /// How well founded the efficiencies below 1 are.
    pub below_one: Origin,
}

impl Joints {
    /// Of a set that speaks of seamless shells alone: its check of any other seam is not worked.
    pub(crate) const SEAMLESS: Self = Self {
        both_sides: 1.0,
        lap_along: 1.0,
        strap_along: 1.0,
        blind: 1.0,
        below_one: Origin::Read,
    };

    /// The efficiency of a seam along a shell.
    #[must_use]
    pub fn seam(&self, seam: Seam) -> f64 {
        match seam {
            Seam::Seamless => 1.0,
            Seam::LapSeenBothSides => self.lap_along,
            Seam::ButtStrap => self.strap_along,
            Seam::LapBlind => self.blind,
        }
    }

    /// The efficiency of any other joint.
    #[must_use]
    pub fn joint(&self, joint: Joint) -> f64 {
        match joint {
            Joint::SeenBothSides => self.both_sides,
            Joint::Blind => self.blind,
        }
    }
}

/// How a set finds its water test pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Test {
    /// So many times the working pressure.
    Times(f64),
    /// 1.3 times the working pressure, and the ratio of cold to hot allowable stress.
    ByStress,
    /// 1.43 times the working pressure, or 1.25 times with the ratio of the design stresses cold
    /// and hot, whichever is more.
    European,
}

/// What a set was made for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scope {
    /// Greatest working pressure, bar gauge; infinite where none is stated.
    pub pressure_bar: f64,
    /// Greatest temperature of brazed metal, °C.
    pub metal_c: f64,
    /// Least wall of shells, mm.
    pub shell_mm: f64,
    /// Least wall of tubes with pressure outside, mm.
    pub flue_mm: f64,
    /// Least thickness of stayed plates, mm.
    pub plate_mm: f64,
}

/// What is asked of the parts, and what can be had for a cure.
#[derive(Clone, Copy, Debug)]
pub struct Asked<'a> {
    /// The service.
    pub service: &'a Service,
    /// Stock.
    pub stock: &'a Stock,
}

/// A rule set.
#[derive(Debug)]
pub struct RuleSet {
    /// Short key, as a plan names it.
    pub key: &'static str,
    /// Title.
    pub title: &'static str,
    /// Edition.
    pub edition: &'static str,
    /// How well it was read, by its weakest part.
    pub seen: Seen,
    /// What of it was read and what is from memory, in words.
    pub how_read: &'static str,
    /// Where its design stress comes from, in words.
    pub stress_basis: &'static str,
    /// Joint efficiencies.
    pub joints: Joints,
    /// Water test.
    pub test: Test,
    /// Tests that it asks again, where it has any.
    pub inspection: Option<Inspection>,
    /// What it was made for.
    pub scope: Scope,
    /// Where it departs from what it cites, and why.
    pub departures: &'static [&'static str],
    /// Checks of the boiler as a whole.
    pub whole: fn(&Boiler, &Asked<'_>) -> Vec<Finding>,
    /// Checks of a shell and its openings.
    pub shell: fn(&Shell, &Asked<'_>) -> Vec<Finding>,
    /// Checks of a tube plate.
    pub plate: fn(&TubePlate, &Asked<'_>) -> Vec<Finding>,
    /// Checks of a tube with pressure outside.
    pub flue: fn(&Flue, &Asked<'_>) -> Vec<Finding>,
}

impl RuleSet {
    pub(crate) fn head(&self, rule: &'static Rule, place: &str) -> Head {
        Head {
            rule,
            set: self.key,
            place: place.to_owned(),
        }
    }

    /// Notes a wall that is thinner than the set was made for.
    pub(crate) fn keep_wall(&self, sum: &mut Sum, what: &str, wall_mm: f64, least_mm: f64) {
        if wall_mm < least_mm {
            sum.outside(format!(
                "{} begins at {least_mm} mm, and the {what} has {wall_mm:.2} mm",
                self.title
            ));
        }
    }

    /// Notes service that the set was not made for.
    pub(crate) fn keep_service(&self, sum: &mut Sum, bar: f64, metal_c: f64) {
        let scope = &self.scope;
        if bar > scope.pressure_bar {
            sum.outside(format!(
                "{} ends at {} bar, and {bar:.2} bar is asked",
                self.title, scope.pressure_bar
            ));
        }
        if metal_c > scope.metal_c {
            sum.outside(format!(
                "{} ends at {} °C for brazed metal, and this is at {metal_c:.0} °C",
                self.title, scope.metal_c
            ));
        }
    }

    /// Files a joint efficiency.
    pub(crate) fn file_joint(&self, sum: &mut Sum, symbol: &str, value: f64) -> Ref {
        let between = if self.joints == Joints::SEAMLESS {
            "seamless: this set knows no brazed seam".to_owned()
        } else {
            format!(
                "{} seen on both sides, {} lapped along, {} strapped along, {} blind",
                self.joints.both_sides,
                self.joints.lap_along,
                self.joints.strap_along,
                self.joints.blind
            )
        };
        let known = chosen(
            Ratio::from_number(value),
            &between,
            "how the joint is made and seen",
            if value < 1.0 {
                self.joints.below_one.max(Origin::from(self.seen))
            } else {
                Origin::from(self.seen)
            },
        );
        sum.know(symbol, "joint efficiency", &ONE, &known)
    }
}
