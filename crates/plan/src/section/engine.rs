//! `[engine]`: what the steam drives.

use reckoning::Size;
use reckoning::quantity::{Absolute, Area, Conductivity, HeatTransfer, Ratio, Rotation};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Section, Visitor};

/// `[engine]`: a simple expansion engine with one or more equal cylinders.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Engine {
    /// Number of cylinders.
    pub cylinders: Entry<u32>,
    /// On how many sides of the piston steam acts.
    pub acting: Entry<Acting>,
    /// Bore of a cylinder.
    pub bore: Entry<Size>,
    /// Stroke.
    pub stroke: Entry<Size>,
    /// Diameter of the piston rod.
    pub rod: Entry<Size>,
    /// Speed of the crankshaft.
    pub speed: Entry<Rotation>,
    /// Cut-off, share of the stroke.
    pub cut_off: Entry<Ratio>,
    /// Clearance volume, share of the stroke volume.
    pub clearance: Entry<Ratio>,
    /// Part of the return stroke left when the exhaust closes.
    pub compression: Entry<Ratio>,
    /// Steam supplied beyond what the diagram shows, share of the indicated steam.
    pub missing: Entry<Ratio>,
    /// Absolute pressure in the chest over absolute pressure in the boiler.
    pub chest_pressure: Entry<Ratio>,
    /// Absolute pressure at admission over that in the chest, where the ports are not given.
    pub admission_pressure: Entry<Ratio>,
    /// Area of the steam port of one end.
    pub port_area: Entry<Area>,
    /// Pressure that a port takes, in density times the square of its mean speed.
    pub port_loss: Entry<Ratio>,
    /// Mean pressure of the real diagram over that of the drawn one.
    pub diagram_factor: Entry<Ratio>,
    /// Power at the shaft over indicated power.
    pub mechanical_efficiency: Entry<Ratio>,
    /// Dryness of the exhaust steam.
    pub exhaust_dryness: Entry<Ratio>,
    /// Heat lost on a square metre of bores and covers for a kelvin over the room.
    pub heat_loss: Entry<HeatTransfer>,
    /// Share of the time in which the exhaust of a slow engine flows.
    pub puff_share: Entry<Ratio>,
    /// Work on the water over work on the feed pump that the engine drives.
    pub pump_efficiency: Entry<Ratio>,
    /// Pressure in the cylinder when the exhaust closes.
    pub exhaust_pressure_at_compression: Entry<Absolute>,
    /// The steam pipe from the boiler.
    pub pipe: SteamPipe,
}

impl Section for Engine {
    fn visit(&mut self, v: &mut dyn Visitor) {
        self.visit_sizes(v);
        self.visit_diagram(v);
        self.visit_steam(v);
        self.visit_power(v);
        self.visit_exhaust(v);
        v.table(
            "pipe",
            "the steam pipe from the boiler to the engine",
            &mut self.pipe,
        );
    }
}

impl Engine {
    fn visit_sizes(&mut self, v: &mut dyn Visitor) {
        v.count(
            &mut self.cylinders,
            "cylinders",
            "number of cylinders, all alike",
            (1, 8),
        );
        v.choice(
            &mut self.acting,
            "acting",
            "on how many sides of the piston the steam acts",
        );
        v.size(
            &mut self.bore,
            "bore",
            "bore of a cylinder",
            within("3 mm", "200 mm"),
        );
        v.size(
            &mut self.stroke,
            "stroke",
            "stroke of a piston",
            within("3 mm", "300 mm"),
        );
        v.size(
            &mut self.rod,
            "rod",
            "diameter of a piston rod",
            within("0.5 mm", "60 mm"),
        );
    }

    fn visit_diagram(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.speed,
            "speed",
            "speed of the crankshaft at the duty; where a power is asked and no speed given, it is found",
            within("20 rpm", "6000 rpm"),
        );
        v.number(
            &mut self.cut_off,
            "cut-off",
            "part of the stroke after which the admission closes; where a power is asked and no cut-off given, it is found",
            within("2 %", "100 %"),
        );
        v.number(
            &mut self.clearance,
            "clearance",
            "volume of port and clearance at one end, share of the stroke volume",
            within("0.5 %", "60 %"),
        );
        v.number(
            &mut self.compression,
            "compression",
            "part of the return stroke that is left when the exhaust closes",
            within("0 %", "80 %"),
        );
    }

    fn visit_steam(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.missing,
            "missing",
            "steam supplied beyond what the diagram shows, share of the indicated steam",
            within("0", "5"),
        );
        v.number(
            &mut self.chest_pressure,
            "chest-pressure",
            "pressure in the steam chest as a share of that in the boiler, both absolute",
            within("30 %", "100 %"),
        );
        v.number(
            &mut self.admission_pressure,
            "admission-pressure",
            "pressure in the cylinder up to cut-off as a share of that in the chest, both absolute; \
             not asked where port-area is given",
            within("30 %", "100 %"),
        );
        v.number(
            &mut self.port_area,
            "port-area",
            "area of the steam port of one end of a cylinder",
            within("0.1 mm²", "50 cm²"),
        );
        v.number(
            &mut self.port_loss,
            "port-loss",
            "pressure that a port takes over density times the square of its mean speed",
            within("0.5", "20"),
        );
    }

    fn visit_power(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.diagram_factor,
            "diagram-factor",
            "mean pressure of the real diagram over that of the drawn one",
            within("30 %", "100 %"),
        );
        v.number(
            &mut self.mechanical_efficiency,
            "mechanical-efficiency",
            "power at the shaft over power in the cylinder",
            within("5 %", "98 %"),
        );
    }

    fn visit_exhaust(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.exhaust_dryness,
            "exhaust-dryness",
            "steam share by mass of what leaves the cylinder",
            within("50 %", "100 %"),
        );
        v.number(
            &mut self.exhaust_pressure_at_compression,
            "exhaust-pressure-at-compression",
            "pressure in the cylinder when the exhaust closes, absolute",
            within("0.6 bar absolute", "6 bar absolute"),
        );
        v.number(
            &mut self.heat_loss,
            "heat-loss",
            "heat that the engine loses on a square metre of bores and covers for a kelvin",
            within("1 W/(m² K)", "1000 W/(m² K)"),
        );
        v.number(
            &mut self.puff_share,
            "puff-share",
            "share of the time in which the exhaust of a slow engine flows",
            within("20 %", "100 %"),
        );
        v.number(
            &mut self.pump_efficiency,
            "pump-efficiency",
            "work on the water over work on the feed pump that the engine drives",
            within("5 %", "95 %"),
        );
    }
}

/// `[engine.pipe]`: the steam pipe.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SteamPipe {
    /// Outside diameter.
    pub outside: Entry<Size>,
    /// Length in the open.
    pub length: Entry<Size>,
    /// Thickness of the lagging; none where it is bare.
    pub lagging: Entry<Size>,
    /// Conductivity of the lagging.
    pub conductivity: Entry<Conductivity>,
    /// Emissivity of the surface.
    pub emissivity: Entry<Ratio>,
}

impl Section for SteamPipe {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of the pipe",
            within("1 mm", "60 mm"),
        );
        v.size(
            &mut self.length,
            "length",
            "length of pipe in the open",
            within("5 mm", "20 m"),
        );
        v.size(
            &mut self.lagging,
            "lagging",
            "thickness of its lagging; a pipe without is bare",
            within("0.5 mm", "60 mm"),
        );
        v.number(
            &mut self.conductivity,
            "conductivity",
            "conductivity of the lagging",
            within("0.02 W/(m K)", "1 W/(m K)"),
        );
        v.number(
            &mut self.emissivity,
            "emissivity",
            "emissivity of the surface, lagged or bare",
            within("2 %", "100 %"),
        );
    }
}

/// On how many sides of the piston the steam acts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Acting {
    /// One side.
    Single,
    /// Both sides.
    Double,
}

impl Choice for Acting {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Single, "single", "one working stroke a turn"),
        (Self::Double, "double", "two working strokes a turn"),
    ];
}
