//! `[burner]`: how gas or spirit is burnt.
//!
//! Jet, throat, air holes and ports are those of a gas burner; place, mouth and the numbers of
//! the flame belong to wicks as well.

use reckoning::Size;
use reckoning::quantity::{Area, Length, MassFlow, Ratio, Temperature};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Section, Visitor};

/// `[burner]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Burner {
    /// Where it stands.
    pub place: Entry<BurnerPlace>,
    /// Jet.
    pub jet: Jet,
    /// Throat and mixing tube.
    pub throat: Throat,
    /// Holes of the primary air.
    pub air_holes: AirHoles,
    /// Ports.
    pub ports: Ports,
    /// The tube that holds the ports.
    pub poker: Poker,
    /// Opening for the secondary air.
    pub mouth: Mouth,
    /// Length over which the gas finds the rest of its air.
    pub mixing_length: Entry<Length>,
    /// Share of the heating value set free.
    pub burnt_share: Entry<Ratio>,
    /// Emissivity of soot in the flame.
    pub flame_emissivity: Entry<Ratio>,
    /// Heat to a cross tube over that of a single tube in a stream.
    pub row_factor: Entry<Ratio>,
    /// Friction and heat behind cross tubes over those of a plain flue.
    pub friction_factor: Entry<Ratio>,
    /// Loss in the smokebox.
    pub smokebox_loss: Entry<Ratio>,
}

impl Section for Burner {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.choice(&mut self.place, "place", "where the burner stands");
        v.table("jet", "the jet of the gas", &mut self.jet);
        v.table(
            "throat",
            "the throat in which gas and primary air mix",
            &mut self.throat,
        );
        v.table(
            "air-holes",
            "the holes through which the jet draws its air, all alike",
            &mut self.air_holes,
        );
        v.table("ports", "the ports, all alike", &mut self.ports);
        v.table("poker", "the tube that holds the ports", &mut self.poker);
        v.table(
            "mouth",
            "the opening through which the flame gets the rest of its air",
            &mut self.mouth,
        );
        self.visit_flame(v);
    }
}

impl Burner {
    fn visit_flame(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.mixing_length,
            "mixing-length",
            "length over which what leaves a port finds the rest of its air",
            within("2 mm", "500 mm"),
        );
        v.number(
            &mut self.burnt_share,
            "burnt-share",
            "share of the heating value that the flame sets free",
            within("50 %", "100 %"),
        );
        v.number(
            &mut self.flame_emissivity,
            "flame-emissivity",
            "emissivity that soot adds to the flame; 0 for a blue one",
            within("0", "0.5"),
        );
        v.number(
            &mut self.row_factor,
            "row-factor",
            "heat to a cross tube over that to a single tube in an even stream",
            within("0.4", "2.5"),
        );
        v.number(
            &mut self.friction_factor,
            "friction-factor",
            "friction and heat on the wall behind cross tubes over those of a plain flue",
            within("0.5", "5"),
        );
        v.number(
            &mut self.smokebox_loss,
            "smokebox-loss",
            "loss between flue and chimney, in velocity heads of the gas that leaves the flue",
            within("0", "10"),
        );
    }
}

/// Where the burner stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BurnerPlace {
    /// In the mouth of the flue, along it.
    Flue,
    /// In the firebox of a coal boiler, below the tubes.
    Firebox,
}

impl Choice for BurnerPlace {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Flue, "flue", "in the mouth of the flue, along it"),
        (
            Self::Firebox,
            "firebox",
            "on or instead of the grate of a coal boiler, under its tubes",
        ),
    ];
}

/// `[burner.jet]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Jet {
    /// Bore.
    pub bore: Entry<Size>,
    /// Gas that passes it, weighed.
    pub flow: Entry<MassFlow>,
    /// Discharge coefficient.
    pub coefficient: Entry<Ratio>,
}

impl Section for Jet {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.bore,
            "bore",
            "bore of the jet",
            within("0.05 mm", "3 mm"),
        );
        v.number(
            &mut self.flow,
            "flow",
            "gas that passes the jet at the regulated pressure, where the tank was weighed",
            within("0.02 g/min", "100 g/min"),
        );
        v.number(
            &mut self.coefficient,
            "coefficient",
            "discharge coefficient of the jet",
            within("0.3", "1"),
        );
    }
}

/// `[burner.throat]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Throat {
    /// Least bore behind the jet.
    pub bore: Entry<Size>,
    /// Bore of the tube into which it tapers.
    pub tube: Entry<Size>,
    /// Share of the velocity head that the taper gives back.
    pub diffuser_efficiency: Entry<Ratio>,
    /// Share of the momentum of the jet that the mixture keeps.
    pub momentum_share: Entry<Ratio>,
    /// Momentum of the mixture over that of an even flow.
    pub momentum_factor: Entry<Ratio>,
    /// Friction, in velocity heads of the mixture.
    pub friction: Entry<Ratio>,
    /// Temperature of the mixture at the ports.
    pub mixture_temperature: Entry<Temperature>,
}

impl Section for Throat {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.bore,
            "bore",
            "least bore of the tube in which gas and air mix",
            within("1 mm", "60 mm"),
        );
        v.size(
            &mut self.tube,
            "tube",
            "bore of the tube into which the throat tapers; left out where it is parallel",
            within("1 mm", "100 mm"),
        );
        v.number(
            &mut self.diffuser_efficiency,
            "diffuser-efficiency",
            "share of the velocity head that the taper gives back; 0 for a parallel tube",
            within("0 %", "95 %"),
        );
        self.visit_mixing(v);
    }
}

impl Throat {
    fn visit_mixing(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.momentum_share,
            "momentum-share",
            "share of the momentum of the jet that the mixture keeps",
            within("0.2", "1"),
        );
        v.number(
            &mut self.momentum_factor,
            "momentum-factor",
            "momentum of the mixture over that of the same flow spread evenly",
            within("1", "1.5"),
        );
        v.number(
            &mut self.friction,
            "friction",
            "friction of the mixing tube, as coefficient times length over bore",
            within("0", "3"),
        );
        v.number(
            &mut self.mixture_temperature,
            "mixture-temperature",
            "temperature of gas and air at the ports, when the burner is warm",
            within("0 °C", "300 °C"),
        );
    }
}

/// `[burner.air-holes]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct AirHoles {
    /// Number.
    pub count: Entry<u32>,
    /// Bore.
    pub bore: Entry<Size>,
    /// Discharge coefficient.
    pub coefficient: Entry<Ratio>,
}

impl Section for AirHoles {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.count(&mut self.count, "count", "number of air holes", (1, 40));
        v.size(
            &mut self.bore,
            "bore",
            "diameter of an air hole",
            within("0.5 mm", "30 mm"),
        );
        v.number(
            &mut self.coefficient,
            "coefficient",
            "discharge coefficient of the air holes",
            within("0.3", "1"),
        );
    }
}

/// `[burner.ports]`: slots of a width and a length, or round holes of a bore.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ports {
    /// Number.
    pub count: Entry<u32>,
    /// Bore of a round port.
    pub bore: Entry<Size>,
    /// Width of a slot.
    pub width: Entry<Size>,
    /// Length of a slot.
    pub length: Entry<Size>,
    /// Discharge coefficient.
    pub coefficient: Entry<Ratio>,
}

impl Section for Ports {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.count(&mut self.count, "count", "number of ports", (1, 2000));
        v.size(
            &mut self.bore,
            "bore",
            "diameter of a round port",
            within("0.2 mm", "30 mm"),
        );
        v.size(
            &mut self.width,
            "width",
            "width of a slot, instead of the bore",
            within("0.1 mm", "10 mm"),
        );
        v.size(
            &mut self.length,
            "length",
            "length of a slot",
            within("0.5 mm", "100 mm"),
        );
        v.number(
            &mut self.coefficient,
            "coefficient",
            "discharge coefficient of the ports",
            within("0.3", "1"),
        );
    }
}

/// `[burner.poker]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Poker {
    /// Outside diameter.
    pub outside: Entry<Size>,
    /// Length that carries ports, from the mouth of the flue.
    pub length: Entry<Size>,
}

impl Section for Poker {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of the tube that holds the ports",
            within("3 mm", "150 mm"),
        );
        v.size(
            &mut self.length,
            "length",
            "length of it that carries ports, which begins at the mouth of the flue",
            within("2 mm", "1 m"),
        );
    }
}

/// `[burner.mouth]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Mouth {
    /// Free area.
    pub area: Entry<Area>,
    /// Discharge coefficient.
    pub coefficient: Entry<Ratio>,
}

impl Section for Mouth {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.number(
            &mut self.area,
            "area",
            "free area through which secondary air reaches the flame; 0 mm2 where it is shut",
            within("0 mm2", "20000 mm2"),
        );
        v.number(
            &mut self.coefficient,
            "coefficient",
            "discharge coefficient of that opening",
            within("0.3", "1"),
        );
    }
}
