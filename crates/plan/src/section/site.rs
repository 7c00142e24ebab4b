//! Where the plant works, what it has to do, and the room it may take.

use reckoning::quantity::{Absolute, Gauge, Length, Mass, MassFlow, Power, Temperature, Time};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Section, Visitor};

/// `[site]`: the air and the water.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Site {
    /// Pressure of the air.
    pub atmosphere: Entry<Absolute>,
    /// Temperature of the air.
    pub air: Entry<Temperature>,
    /// Temperature of the feed water.
    pub feed_water: Entry<Temperature>,
    /// Kind of water.
    pub water: Entry<Water>,
}

impl Section for Site {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.atmosphere,
            "atmosphere",
            "pressure of the air where the plant is run",
            within("0.6 bar", "1.1 bar"),
        );
        v.number(
            &mut self.air,
            "air",
            "temperature of the air that feeds the fire",
            within("-30 °C", "60 °C"),
        );
        v.number(
            &mut self.feed_water,
            "feed-water",
            "temperature of the water as it is fed",
            within("0 °C", "99 °C"),
        );
        v.choice(&mut self.water, "water", "kind of water that is fed");
    }
}

/// Kind of water.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Water {
    /// Distilled or deionised.
    Distilled,
    /// Clean rain water.
    Rain,
    /// Soft supply water.
    Soft,
    /// Hard supply water.
    Hard,
}

impl Choice for Water {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Distilled, "distilled", "distilled or deionised"),
        (Self::Rain, "rain", "clean rain water, filtered"),
        (Self::Soft, "soft", "soft supply water"),
        (Self::Hard, "hard", "hard supply water"),
    ];
}

/// `[duty]`: what is asked of the plant.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Duty {
    /// Working pressure.
    pub pressure: Entry<Gauge>,
    /// Time the plant runs between two fillings.
    pub run: Entry<Time>,
    /// Steam asked for: all of it where no engine is described, else beside the engine's.
    pub steam: Entry<MassFlow>,
    /// Power asked for at the shaft.
    pub power: Entry<Power>,
}

impl Section for Duty {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.pressure,
            "pressure",
            "working pressure, as the gauge shows it",
            within("0.2 bar", "20 bar"),
        );
        v.number(
            &mut self.run,
            "run",
            "time the plant must run between two fillings of water",
            within("1 min", "24 h"),
        );
        v.number(
            &mut self.steam,
            "steam",
            "steam asked for: all of it where no engine is described, else beside that of the engine",
            within("1 g/h", "200 kg/h"),
        );
        v.number(
            &mut self.power,
            "power",
            "power asked for at the shaft; with speed and cut-off given the regulator holds it, \
             else the one that is not given is found",
            within("0.1 W", "20 kW"),
        );
    }
}

/// `[room]`: the space and the mass that the plant may take.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Room {
    /// Height, chimney included.
    pub height: Entry<Length>,
    /// Width, or diameter of a vertical boiler with its lagging.
    pub width: Entry<Length>,
    /// Length.
    pub length: Entry<Length>,
    /// Mass, in steam.
    pub mass: Entry<Mass>,
}

impl Section for Room {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.height,
            "height",
            "height that the plant may take, chimney included",
            within("50 mm", "4 m"),
        );
        v.number(
            &mut self.width,
            "width",
            "width that the plant may take, lagging included",
            within("30 mm", "3 m"),
        );
        v.number(
            &mut self.length,
            "length",
            "length that the plant may take, lagging included",
            within("30 mm", "5 m"),
        );
        v.number(
            &mut self.mass,
            "mass",
            "mass that the plant may have, filled with water",
            within("0.1 kg", "2000 kg"),
        );
    }
}
