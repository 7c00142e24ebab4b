//! `[boiler]`: what belongs to the whole of it, and the tables of its parts.

use reckoning::Size;
use reckoning::quantity::{
    Conductivity, Gauge, Length, Power, Ratio, Temperature, TemperatureRise,
};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::section::flue::{CrossTubes, Ends, Flue};
use crate::section::shell::{Barrel, Firebox, Firehole, FoundationRing, TubePlates};
use crate::section::stay_bush::{Bush, Stay};
use crate::section::tube::Tubes;
use crate::visit::{Section, Visitor};

/// The form of the boiler.
///
/// A form that comes later adds its own tables beside those here; tables that do not belong to
/// the form named are a matter of the plant, which knows what it can build.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BoilerForm {
    /// Vertical, with a water-jacketed firebox and vertical fire tubes to the smokebox.
    VerticalFireTubes,
    /// Horizontal, with one flue from end to end and water tubes across it.
    HorizontalCentreFlue,
}

impl Choice for BoilerForm {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::VerticalFireTubes,
            "vertical, wet firebox, fire tubes",
            "vertical, with water round the firebox and fire tubes up to the smokebox",
        ),
        (
            Self::HorizontalCentreFlue,
            "horizontal, centre flue, cross tubes",
            "horizontal, with one flue from end to end that holds the flame and water tubes across it",
        ),
    ];
    const NOT_YET: &'static [(&'static str, &'static str)] = &[
        ("vertical, centre flue, cross tubes", ""),
        ("locomotive", ""),
        ("return tube", ""),
        ("pot, water tubes", "externally fired pot with water tubes"),
    ];
}

/// `[boiler]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Boiler {
    /// Pressure for which it is proved.
    pub design_pressure: Entry<Gauge>,
    /// Metal temperature for which it is proved, where it is not worked out.
    pub design_temperature: Entry<Temperature>,
    /// Metal of the pressure parts that name none themselves.
    pub metal: Entry<String>,
    /// Filler of the joints.
    pub filler: Entry<String>,
    /// Dryness of the steam as it leaves the water.
    pub dryness: Entry<Ratio>,
    /// Rise of the wetted metal over the saturation temperature.
    pub wall_rise: Entry<TemperatureRise>,
    /// Heat lost by the outside of the boiler.
    pub shell_loss: Entry<Power>,
    /// Water levels.
    pub water_level: WaterLevel,
    /// Lagging.
    pub lagging: Lagging,
    /// Barrel.
    pub barrel: Barrel,
    /// Firebox.
    pub firebox: Firebox,
    /// Foundation ring.
    pub foundation_ring: FoundationRing,
    /// Firehole.
    pub firehole: Firehole,
    /// Tube plates.
    pub tube_plate: TubePlates,
    /// Fire tubes.
    pub tubes: Tubes,
    /// Flue.
    pub flue: Flue,
    /// Ends of a horizontal barrel.
    pub end: Ends,
    /// Cross tubes.
    pub cross_tubes: CrossTubes,
    /// Stays.
    pub stays: Vec<Stay>,
    /// Bushes.
    pub bushes: Vec<Bush>,
}

impl Section for Boiler {
    fn visit(&mut self, v: &mut dyn Visitor) {
        self.visit_service(v);
        self.visit_heat(v);
        self.visit_parts(v);
    }
}

impl Boiler {
    fn visit_service(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.design_pressure,
            "design-pressure",
            "gauge pressure for which every pressure part is proved",
            within("0.2 bar", "20 bar"),
        );
        v.number(
            &mut self.design_temperature,
            "design-temperature",
            "metal temperature for which it is proved, where it is known from elsewhere",
            within("20 °C", "400 °C"),
        );
        v.text(
            &mut self.metal,
            "metal",
            "metal of every pressure part that names none itself, by its standard name",
        );
        v.text(
            &mut self.filler,
            "filler",
            "filler metal of the pressure joints, by its standard name",
        );
    }

    fn visit_heat(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.dryness,
            "dryness",
            "steam share by mass of what leaves the boiler",
            within("60 %", "100 %"),
        );
        v.number(
            &mut self.wall_rise,
            "wall-rise",
            "rise of the wetted metal over the temperature of the boiling water",
            within("0 K", "100 K"),
        );
        v.number(
            &mut self.shell_loss,
            "shell-loss",
            "heat that the outside of the boiler loses at working pressure",
            within("0 W", "5 kW"),
        );
    }

    fn visit_parts(&mut self, v: &mut dyn Visitor) {
        self.visit_shells(v);
        v.table(
            "tube-plate",
            "the plates that hold the fire tubes",
            &mut self.tube_plate,
        );
        v.table("tubes", "the fire tubes, all alike", &mut self.tubes);
        v.table(
            "flue",
            "the tube from end to end of a horizontal boiler that holds the flame",
            &mut self.flue,
        );
        v.table("end", "the ends of a horizontal barrel", &mut self.end);
        v.table(
            "cross-tubes",
            "the water tubes across the flue, all alike",
            &mut self.cross_tubes,
        );
        v.rows("stay", "a stay", &mut self.stays);
        v.rows("bush", "a bush in a pressure part", &mut self.bushes);
    }

    fn visit_shells(&mut self, v: &mut dyn Visitor) {
        v.table(
            "water-level",
            "heights of the water above the datum",
            &mut self.water_level,
        );
        v.table("lagging", "what the boiler wears", &mut self.lagging);
        v.table("barrel", "the shell that holds the water", &mut self.barrel);
        v.table(
            "firebox",
            "the tube round the fire, with water outside it",
            &mut self.firebox,
        );
        v.table(
            "foundation-ring",
            "the ring that closes the water leg at the bottom",
            &mut self.foundation_ring,
        );
        v.table(
            "firehole",
            "the tube through the water leg to the fire",
            &mut self.firehole,
        );
    }
}

/// `[boiler.water-level]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct WaterLevel {
    /// Working level.
    pub working: Entry<Length>,
    /// Lowest level allowed.
    pub lowest: Entry<Length>,
}

impl Section for WaterLevel {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.working,
            "working",
            "height of the water in steam above the datum: the underside of the foundation ring, or of a horizontal barrel",
            within("5 mm", "2 m"),
        );
        v.number(
            &mut self.lowest,
            "lowest",
            "lowest height of the water that is allowed, above the same datum",
            within("5 mm", "2 m"),
        );
    }
}

/// `[boiler.lagging]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Lagging {
    /// What it is.
    pub material: Entry<String>,
    /// Thickness.
    pub thickness: Entry<Size>,
    /// Conductivity.
    pub conductivity: Entry<Conductivity>,
    /// Emissivity of its outside.
    pub emissivity: Entry<Ratio>,
}

impl Section for Lagging {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.text(
            &mut self.material,
            "material",
            "what the lagging is made of",
        );
        v.size(
            &mut self.thickness,
            "thickness",
            "thickness of the lagging, cladding left out; 0 mm for a bare boiler",
            within("0 mm", "100 mm"),
        );
        v.number(
            &mut self.conductivity,
            "conductivity",
            "conductivity of the lagging when warm",
            within("0.01 W/(m K)", "2 W/(m K)"),
        );
        v.number(
            &mut self.emissivity,
            "emissivity",
            "emissivity of the outside, cladding or bare metal",
            within("0.02", "1"),
        );
    }
}
