//! What is mounted on the boiler: safety valves, feed, gauges, blow-down, fusible plug.

use reckoning::Size;
use reckoning::quantity::{Gauge, Length, Ratio, Rotation, Temperature, Volume, VolumeFlow};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::section::spring::{Spring, ValvePipe};
use crate::visit::{Row, Section, Visitor};

const BUSH: &str = "id of the bush it is screwed into";

/// `[[safety-valve]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SafetyValve {
    /// Id.
    pub id: Entry<String>,
    /// Id of its bush.
    pub bush: Entry<String>,
    /// Class of its lift.
    pub lift_class: Entry<ValveLift>,
    /// Pressure at which it is set to open.
    pub set: Entry<Gauge>,
    /// Diameter of the line on which it seats.
    pub seat: Entry<Size>,
    /// Bore below the seat.
    pub bore: Entry<Size>,
    /// Lift that its stop allows.
    pub lift: Entry<Size>,
    /// Measured coefficient of discharge.
    pub coefficient: Entry<Ratio>,
    /// Its spring, where the maker winds it.
    pub spring: Spring,
    /// A pipe that leads to it.
    pub pipe: ValvePipe,
}

impl Row for SafetyValve {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for SafetyValve {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the safety valve");
        v.text(&mut self.bush, "bush", BUSH);
        v.choice(
            &mut self.lift_class,
            "lift-class",
            "class of the lift that the valve is known to reach",
        );
        v.number(
            &mut self.set,
            "set",
            "gauge pressure at which the valve is set to open",
            within("0.2 bar", "20 bar"),
        );
        v.size(
            &mut self.seat,
            "seat",
            "diameter of the line on which the valve seats",
            within("1 mm", "60 mm"),
        );
        self.visit_inside(v);
    }
}

impl SafetyValve {
    fn visit_inside(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.bore,
            "bore",
            "least bore below the seat",
            within("1 mm", "60 mm"),
        );
        v.size(
            &mut self.lift,
            "lift",
            "lift that the stop of the valve allows",
            within("0.05 mm", "20 mm"),
        );
        v.number(
            &mut self.coefficient,
            "coefficient",
            "discharge coefficient, only where this valve was measured",
            within("0.01", "1"),
        );
        v.table(
            "spring",
            "its spring, where the maker winds it",
            &mut self.spring,
        );
        v.table("pipe", "a pipe between boiler and valve", &mut self.pipe);
    }
}

/// Class of the lift of a safety valve.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ValveLift {
    /// A plain spring-loaded valve.
    Ordinary,
    /// A high-lift valve.
    High,
    /// A full-lift valve.
    Full,
}

impl Choice for ValveLift {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::Ordinary,
            "ordinary",
            "a plain spring-loaded ball, cone or wing valve",
        ),
        (
            Self::High,
            "high",
            "lifts an eighth of its bore or more when it blows",
        ),
        (
            Self::Full,
            "full",
            "lifts a quarter of its bore or more when it blows",
        ),
    ];
}

/// `[feed]`: the water carried and the means of feeding it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Feed {
    /// Water carried outside the boiler.
    pub tank: Entry<Volume>,
    /// Means of feeding.
    pub means: Vec<FeedMeans>,
}

impl Section for Feed {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.tank,
            "tank",
            "water carried outside the boiler",
            within("0 ml", "200 l"),
        );
        v.rows(
            "means",
            "a means of feeding the boiler under pressure",
            &mut self.means,
        );
    }
}

/// `[[feed.means]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FeedMeans {
    /// Id.
    pub id: Entry<String>,
    /// What it is.
    pub kind: Entry<FeedKind>,
    /// Id of the bush of its check valve.
    pub bush: Entry<String>,
    /// Diameter of its plunger.
    pub plunger: Entry<Size>,
    /// Stroke.
    pub stroke: Entry<Size>,
    /// Strokes in a time.
    pub strokes: Entry<Rotation>,
    /// Volume delivered over volume swept.
    pub efficiency: Entry<Ratio>,
    /// Volume delivered, where it was measured.
    pub rate: Entry<VolumeFlow>,
    /// Bore of its check valve.
    pub check_valve: Entry<Size>,
}

impl Row for FeedMeans {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for FeedMeans {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the means of feed");
        v.choice(&mut self.kind, "kind", "what feeds the boiler");
        v.text(&mut self.bush, "bush", "id of the bush of its check valve");
        self.visit_pump(v);
    }
}

impl FeedMeans {
    fn visit_pump(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.plunger,
            "plunger",
            "diameter of the plunger",
            within("1 mm", "60 mm"),
        );
        v.size(
            &mut self.stroke,
            "stroke",
            "stroke of the plunger",
            within("1 mm", "150 mm"),
        );
        v.number(
            &mut self.strokes,
            "strokes",
            "delivering strokes in a time, as it is worked",
            within("1 rpm", "3000 rpm"),
        );
        v.number(
            &mut self.efficiency,
            "efficiency",
            "volume delivered over volume swept",
            within("5 %", "100 %"),
        );
        v.number(
            &mut self.rate,
            "rate",
            "volume delivered against working pressure, where it was measured",
            within("0.1 ml/min", "20 l/min"),
        );
        v.size(
            &mut self.check_valve,
            "check-valve",
            "bore of the check valve",
            within("0.5 mm", "40 mm"),
        );
    }
}

/// What feeds the boiler.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FeedKind {
    /// A hand pump.
    HandPump,
    /// A pump driven by the engine.
    EnginePump,
}

impl Choice for FeedKind {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::HandPump, "hand pump", ""),
        (Self::EnginePump, "engine pump", "driven by the engine"),
    ];
    const NOT_YET: &'static [(&'static str, &'static str)] = &[("injector", "")];
}

/// Whether a thing is there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fitted {
    /// It is there.
    Fitted,
    /// It is not.
    None,
}

impl Choice for Fitted {
    const NAMES: &'static [(Self, &'static str, &'static str)] =
        &[(Self::Fitted, "fitted", ""), (Self::None, "none", "")];
}

/// `[pressure-gauge]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PressureGauge {
    /// End of its scale.
    pub range: Entry<Gauge>,
    /// Whether a syphon keeps steam out of it.
    pub syphon: Entry<Fitted>,
    /// Id of its bush.
    pub bush: Entry<String>,
}

impl Section for PressureGauge {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.range,
            "range",
            "end of the scale of the gauge",
            within("0.5 bar", "60 bar"),
        );
        v.choice(
            &mut self.syphon,
            "syphon",
            "whether a syphon keeps steam out of the gauge",
        );
        v.text(&mut self.bush, "bush", BUSH);
    }
}

/// `[water-gauge]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct WaterGauge {
    /// Height of the lower end of the visible glass.
    pub bottom: Entry<Length>,
    /// Height of the upper end of the visible glass.
    pub top: Entry<Length>,
    /// Least bore of its passages.
    pub bore: Entry<Size>,
    /// Outside diameter of its glass.
    pub glass: Entry<Size>,
}

impl Section for WaterGauge {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(&mut self.bottom, "bottom", "height of the lower end of the visible glass above the underside of the foundation ring, or of a horizontal barrel", within("0 mm", "2 m"));
        v.number(
            &mut self.top,
            "top",
            "height of the upper end of the visible glass above the same datum",
            within("0 mm", "2 m"),
        );
        v.size(
            &mut self.bore,
            "bore",
            "least bore of the passages to the glass",
            within("0.5 mm", "15 mm"),
        );
        v.size(
            &mut self.glass,
            "glass",
            "outside diameter of the glass",
            within("2 mm", "20 mm"),
        );
    }
}

/// `[blow-down]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Blowdown {
    /// Bore of the valve.
    pub bore: Entry<Size>,
    /// Id of its bush.
    pub bush: Entry<String>,
}

impl Section for Blowdown {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.bore,
            "bore",
            "bore of the blow-down valve",
            within("0.5 mm", "40 mm"),
        );
        v.text(&mut self.bush, "bush", BUSH);
    }
}

/// `[fusible-plug]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FusiblePlug {
    /// Whether there is one.
    pub plug: Entry<Fitted>,
    /// Melting temperature of its core.
    pub melts: Entry<Temperature>,
    /// Id of its bush.
    pub bush: Entry<String>,
}

impl Section for FusiblePlug {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.choice(
            &mut self.plug,
            "plug",
            "whether the crown of the firebox or flue has a fusible plug",
        );
        v.number(
            &mut self.melts,
            "melts",
            "melting temperature of the core of the plug",
            within("100 °C", "400 °C"),
        );
        v.text(&mut self.bush, "bush", BUSH);
    }
}
