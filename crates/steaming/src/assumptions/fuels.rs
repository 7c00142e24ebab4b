//! What is assumed of a fuel, each fuel with its own range.
//!
//! The share set free is that of full-size hand firing less what a small firebox leaves unburnt
//! of the gases: nearly nothing for anthracite and charcoal, most for wood.

use reckoning::Assumption;
use reckoning::quantity::KG_PER_M3;

use super::numbers::{TRADE, ratio};

const LUMP: &str = "density of a lump";
const BURNT: &str = "share of the heating value set free";

const fn lump(id: &'static str, [value, low, high]: [f64; 3]) -> Assumption {
    Assumption {
        id,
        meaning: LUMP,
        unit: &KG_PER_M3,
        value,
        low,
        high,
        variable: "fire.lump-density",
        cite: TRADE,
    }
}

const fn burnt(id: &'static str, range: [f64; 3]) -> Assumption {
    Assumption {
        variable: "fire.burnt-share",
        ..ratio(id, BURNT, range, TRADE)
    }
}

pub(super) static LUMP_ANTHRACITE: Assumption =
    lump("fire.lump-density for anthracite", [1500.0, 1400.0, 1600.0]);
pub(super) static LUMP_STEAM_COAL: Assumption =
    lump("fire.lump-density for steam coal", [1300.0, 1250.0, 1350.0]);
pub(super) static LUMP_CHARCOAL: Assumption =
    lump("fire.lump-density for charcoal", [350.0, 250.0, 450.0]);
pub(super) static LUMP_WOOD: Assumption = lump("fire.lump-density for wood", [675.0, 600.0, 750.0]);

pub(super) static BURNT_ANTHRACITE: Assumption =
    burnt("fire.burnt-share for anthracite", [0.88, 0.82, 0.93]);
pub(super) static BURNT_STEAM_COAL: Assumption =
    burnt("fire.burnt-share for steam coal", [0.88, 0.80, 0.93]);
pub(super) static BURNT_CHARCOAL: Assumption =
    burnt("fire.burnt-share for charcoal", [0.88, 0.80, 0.93]);
pub(super) static BURNT_WOOD: Assumption = burnt("fire.burnt-share for wood", [0.80, 0.70, 0.87]);
