//! `[grate]`, `[fire]` and `[ash]`: the solid fuel and the bed in which it burns.

use reckoning::Size;
use reckoning::quantity::{Area, Density, Length, Ratio, SpecificEnergy, Temperature};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Section, Visitor};

/// `[grate]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Grate {
    /// Diameter.
    pub diameter: Entry<Size>,
    /// Height of its top above the datum.
    pub height: Entry<Length>,
    /// Open share of its area.
    pub free_area: Entry<Ratio>,
    /// Draught lost in bed, grate and clean ash together over that lost in the bare bed.
    pub bed_factor: Entry<Ratio>,
    /// Its metal.
    pub metal: Entry<String>,
}

impl Section for Grate {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.diameter,
            "diameter",
            "diameter of the grate",
            within("15 mm", "600 mm"),
        );
        v.number(
            &mut self.height,
            "height",
            "height of the top of the grate above the underside of the foundation ring",
            within("-200 mm", "500 mm"),
        );
        v.number(
            &mut self.free_area,
            "free-area",
            "open share of the area of the grate",
            within("5 %", "80 %"),
        );
        v.number(
            &mut self.bed_factor,
            "bed-factor",
            "draught lost in bed and grate together over that lost in the bare bed",
            within("1", "5"),
        );
        v.text(&mut self.metal, "metal", "metal of the grate");
    }
}

/// `[fire]`: the fuel and how it burns.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Fire {
    /// Fuel.
    pub fuel: Entry<Fuel>,
    /// Mean size of the lumps.
    pub lump: Entry<Length>,
    /// Density of a lump.
    pub lump_density: Entry<Density>,
    /// Sphericity of the lumps.
    pub shape: Entry<Ratio>,
    /// Empty share of the bed.
    pub voidage: Entry<Ratio>,
    /// Depth of the bed.
    pub depth: Entry<Length>,
    /// Mean temperature of the gas in the bed.
    pub bed_temperature: Entry<Temperature>,
    /// Air supplied over air needed.
    pub air_ratio: Entry<Ratio>,
    /// Air of the bed over that which its depth in lumps gives, where air comes over the fire.
    pub bed_air: Entry<Ratio>,
    /// Holes that let air in over the fire.
    pub air_holes: FireHoles,
    /// Share of the heating value set free.
    pub burnt_share: Entry<Ratio>,
    /// Lower heating value as fired.
    pub heating_value: Entry<SpecificEnergy>,
    /// Water in the fuel as fired, by mass.
    pub moisture: Entry<Ratio>,
    /// Ash in the fuel as fired, by mass.
    pub ash: Entry<Ratio>,
}

impl Section for Fire {
    fn visit(&mut self, v: &mut dyn Visitor) {
        self.visit_bed(v);
        self.visit_air(v);
        self.visit_fuel(v);
    }
}

impl Fire {
    fn visit_bed(&mut self, v: &mut dyn Visitor) {
        v.choice(&mut self.fuel, "fuel", "what is burnt");
        v.number(
            &mut self.lump,
            "lump",
            "mean size of the lumps as fired",
            within("1 mm", "80 mm"),
        );
        v.number(
            &mut self.lump_density,
            "lump-density",
            "density of a single lump, not of the heap",
            within("200 kg/m3", "2000 kg/m3"),
        );
        v.number(
            &mut self.shape,
            "shape",
            "sphericity of the lumps: surface of a ball of the same volume over their own",
            within("0.3", "1"),
        );
        v.number(
            &mut self.voidage,
            "voidage",
            "empty share of the volume of the bed",
            within("25 %", "75 %"),
        );
        v.number(
            &mut self.depth,
            "depth",
            "depth of the burning bed above the grate",
            within("5 mm", "400 mm"),
        );
        v.number(
            &mut self.bed_temperature,
            "bed-temperature",
            "mean temperature of the gas on its way through the bed",
            within("500 °C", "1600 °C"),
        );
    }

    fn visit_air(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.air_ratio,
            "air-ratio",
            "air that passes the fire over air that the fuel needs",
            within("1", "5"),
        );
        v.number(
            &mut self.bed_air,
            "bed-air",
            "air of the bed over that which its depth in lumps gives, where air comes over the fire",
            within("0.3", "3"),
        );
        v.table(
            "air-holes",
            "holes that let air in over the fire, all alike",
            &mut self.air_holes,
        );
    }

    fn visit_fuel(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.burnt_share,
            "burnt-share",
            "share of the heating value that the fire sets free",
            within("40 %", "100 %"),
        );
        v.number(
            &mut self.heating_value,
            "heating-value",
            "lower heating value of the fuel as fired",
            within("8 MJ/kg", "50 MJ/kg"),
        );
        v.number(
            &mut self.moisture,
            "moisture",
            "water in the fuel as fired, by mass",
            within("0 %", "60 %"),
        );
        v.number(
            &mut self.ash,
            "ash",
            "ash in the fuel as fired, by mass",
            within("0 %", "40 %"),
        );
    }
}

/// `[fire.air-holes]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FireHoles {
    /// Number.
    pub count: Entry<u32>,
    /// Bore.
    pub bore: Entry<Size>,
    /// Discharge coefficient.
    pub coefficient: Entry<Ratio>,
}

impl Section for FireHoles {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.count(&mut self.count, "count", "number of holes", (1, 200));
        v.size(
            &mut self.bore,
            "bore",
            "bore of a hole",
            within("0.5 mm", "50 mm"),
        );
        v.number(
            &mut self.coefficient,
            "coefficient",
            "discharge coefficient of a hole",
            within("0.5", "1"),
        );
    }
}

/// What is burnt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fuel {
    /// Anthracite.
    Anthracite,
    /// Welsh or other dry steam coal.
    SteamCoal,
    /// Charcoal.
    Charcoal,
    /// Wood, dried in air.
    Wood,
}

impl Choice for Fuel {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Anthracite, "anthracite", "hard coal with little gas"),
        (Self::SteamCoal, "steam coal", "dry steam coal"),
        (Self::Charcoal, "charcoal", ""),
        (Self::Wood, "wood", "hardwood, dried in air"),
    ];
}

/// `[ash]`: what lies on the grate below the fire.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ash {
    /// Draught lost with the ash that has built up over that lost when clean.
    pub bed_factor: Entry<Ratio>,
    /// Carbon in the refuse, by mass.
    pub carbon: Entry<Ratio>,
    /// Depth of the pan below the grate.
    pub pan_depth: Entry<Length>,
    /// Free area of its door or damper.
    pub door: Entry<Area>,
    /// Discharge coefficient of that door.
    pub door_coefficient: Entry<Ratio>,
}

impl Section for Ash {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.bed_factor,
            "bed-factor",
            "draught lost through the ash that has built up, over that lost when clean",
            within("1", "5"),
        );
        v.number(
            &mut self.carbon,
            "carbon",
            "carbon in what falls into the pan, by mass",
            within("0 %", "60 %"),
        );
        v.number(
            &mut self.pan_depth,
            "pan-depth",
            "depth of the ash pan below the grate",
            within("2 mm", "300 mm"),
        );
        v.number(
            &mut self.door,
            "door",
            "free area of the door or damper of the ash pan, as far as it stands open",
            within("1 mm2", "1 m2"),
        );
        v.number(
            &mut self.door_coefficient,
            "door-coefficient",
            "discharge coefficient of that door",
            within("0.5", "1"),
        );
    }
}
