//! Spirit wicks: what their own flames evaporate.
//!
//! Left out: what a hot burner boils off besides, wind, and the lip of a cup.

use formulas::balance::round_area;
use formulas::spirit::{
    Spirit, evaporation_flux, flame_film, flame_height, spirit_burnt, transfer_number, wick_area,
};
use reckoning::quantity::KILOWATT;
use std::f64::consts::PI;

/// Spirit wicks or cups, all alike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wicks {
    /// The spirit.
    pub spirit: Spirit,
    /// Temperature at which it comes to the wick, K.
    pub feed_k: f64,
    /// How many.
    pub count: f64,
    /// Diameter of one, m.
    pub diameter_m: f64,
    /// Height that stands out of its tube, m.
    pub exposed_m: f64,
    /// Share of the side that stands out which burns as the top does.
    pub side_share: f64,
    /// Rate of burning over that of the law.
    pub rate_factor: f64,
}

/// Wicks at work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WickState {
    /// Transfer number of the spirit.
    pub transfer: f64,
    /// Film coefficient over a wick, W/(m² K).
    pub film: f64,
    /// Spirit evaporated, kg/(m² s).
    pub flux: f64,
    /// Area of one wick from which spirit burns, m².
    pub area_m2: f64,
    /// Spirit burnt by all, kg/s.
    pub fuel_kg_s: f64,
    /// Height of the flame of one, m; for wicks below 30 mm the law is carried on.
    pub flame_m: f64,
}

impl Wicks {
    /// The top of one wick, and its side that stands out, m².
    #[must_use]
    pub fn surfaces(&self) -> (f64, f64) {
        let side = PI * self.diameter_m * self.exposed_m;
        (round_area(self.diameter_m), side)
    }

    /// The wicks at work.
    #[must_use]
    pub fn at_work(&self) -> WickState {
        let transfer = transfer_number(&self.spirit.burning(self.feed_k));
        let film = flame_film(self.diameter_m);
        let flux = evaporation_flux(film, transfer);
        let (top, side) = self.surfaces();
        let area_m2 = wick_area(top, side, self.side_share);
        let fuel_kg_s = spirit_burnt(self.rate_factor, flux, self.count, area_m2);
        let one_w = fuel_kg_s / self.count * self.spirit.heating_value;
        WickState {
            transfer,
            film,
            flux,
            area_m2,
            fuel_kg_s,
            flame_m: flame_height(KILOWATT.from_si(one_w), self.diameter_m),
        }
    }

    /// The rate factor of wicks whose spirit was weighed, kg/s.
    #[must_use]
    pub fn weighed(&self, kg_s: f64) -> f64 {
        let by_law = Self {
            rate_factor: 1.0,
            ..*self
        };
        kg_s / by_law.at_work().fuel_kg_s
    }
}
