//! `[smokebox]`, `[chimney]`, `[blast]`, `[blower]` and `[dryer]`: from the tubes to the air.

use reckoning::Size;
use reckoning::quantity::{Area, PressureDrop, Ratio};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Section, Visitor};

/// `[smokebox]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Smokebox {
    /// Outside diameter.
    pub outside: Entry<Size>,
    /// Wall.
    pub wall: Entry<Size>,
    /// Height inside; length, where it lies behind a horizontal boiler.
    pub height: Entry<Size>,
    /// Area of all leaks.
    pub leak: Entry<Area>,
    /// Discharge coefficient of the leaks.
    pub leak_coefficient: Entry<Ratio>,
    /// Draught lost in turns, arrester and entry.
    pub loss: Entry<PressureDrop>,
    /// Its metal.
    pub metal: Entry<String>,
}

impl Section for Smokebox {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of the smokebox",
            within("20 mm", "800 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of the smokebox",
            within("0.3 mm", "12 mm"),
        );
        v.size(
            &mut self.height,
            "height",
            "height of the smokebox inside, from the upper tube plate; its length, from the back end of a horizontal boiler",
            within("10 mm", "800 mm"),
        );
        v.number(
            &mut self.leak,
            "leak",
            "area of all the leaks into the smokebox together",
            within("0 mm2", "20000 mm2"),
        );
        v.number(
            &mut self.leak_coefficient,
            "leak-coefficient",
            "discharge coefficient of the leaks",
            within("0.3", "1"),
        );
        v.number(
            &mut self.loss,
            "loss",
            "draught lost in turns and arrester between tubes and choke",
            within("0 Pa", "1 kPa"),
        );
        v.text(&mut self.metal, "metal", "metal of the smokebox");
    }
}

/// `[chimney]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Chimney {
    /// Least bore.
    pub choke: Entry<Size>,
    /// Length of the parallel part that begins at the choke.
    pub parallel: Entry<Size>,
    /// Bore at the top.
    pub top: Entry<Size>,
    /// Height from the choke to the top.
    pub height: Entry<Size>,
    /// Loss of the gas at the bell, in velocity heads of the gas beside the jet.
    pub inlet_loss: Entry<Ratio>,
    /// Friction of the mixing length, in velocity heads of the mixture.
    pub friction: Entry<Ratio>,
    /// Momentum of the mixture over that of an even flow.
    pub momentum_factor: Entry<Ratio>,
    /// Share of the velocity head that a taper gives back.
    pub diffuser_efficiency: Entry<Ratio>,
    /// Its metal.
    pub metal: Entry<String>,
}

impl Section for Chimney {
    fn visit(&mut self, v: &mut dyn Visitor) {
        self.visit_sizes(v);
        v.number(
            &mut self.inlet_loss,
            "inlet-loss",
            "loss of the gas at the bell, in velocity heads of the gas beside the jet",
            within("0", "2"),
        );
        v.number(
            &mut self.friction,
            "friction",
            "friction of the mixing length, in velocity heads of the mixture",
            within("0", "2"),
        );
        v.number(
            &mut self.momentum_factor,
            "momentum-factor",
            "momentum of the mixture over that of the same flow spread evenly",
            within("1", "1.5"),
        );
        v.number(
            &mut self.diffuser_efficiency,
            "diffuser-efficiency",
            "share of the velocity head that the taper gives back; 0 for a parallel chimney",
            within("0 %", "95 %"),
        );
        v.text(&mut self.metal, "metal", "metal of the chimney");
    }
}

impl Chimney {
    fn visit_sizes(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.choke,
            "choke",
            "least bore of the chimney",
            within("4 mm", "200 mm"),
        );
        v.size(
            &mut self.parallel,
            "parallel",
            "length of the parallel part, from the choke upwards",
            within("0 mm", "3 m"),
        );
        v.size(
            &mut self.top,
            "top",
            "bore at the top of the chimney",
            within("4 mm", "300 mm"),
        );
        v.size(
            &mut self.height,
            "height",
            "height of the chimney from the choke to the top",
            within("20 mm", "4 m"),
        );
    }
}

/// `[blast]`: the exhaust nozzle under the chimney.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Blast {
    /// Bore of the nozzle.
    pub nozzle: Entry<Size>,
    /// Distance from the tip of the nozzle up to the choke; less than nought in the chimney.
    pub below_choke: Entry<Size>,
    /// Discharge coefficient of the nozzle.
    pub coefficient: Entry<Ratio>,
    /// Draught found over draught of perfect mixing.
    pub mixing: Entry<Ratio>,
}

impl Section for Blast {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.nozzle,
            "nozzle",
            "bore of the blast nozzle",
            within("0.5 mm", "60 mm"),
        );
        v.size(
            &mut self.below_choke,
            "below-choke",
            "distance from the tip of the nozzle up to the choke; less than nought where the tip \
             stands within the chimney",
            within("-1 m", "500 mm"),
        );
        v.number(
            &mut self.coefficient,
            "coefficient",
            "discharge coefficient of the nozzle",
            within("0.5", "1"),
        );
        v.number(
            &mut self.mixing,
            "mixing",
            "net draught found over that of full mixing and true alignment",
            within("0.1", "1"),
        );
    }
}

/// `[blower]`: live steam jets under the chimney.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Blower {
    /// Number of jets.
    pub jets: Entry<u32>,
    /// Bore of a jet.
    pub bore: Entry<Size>,
    /// Discharge coefficient of a jet.
    pub coefficient: Entry<Ratio>,
    /// Draught found over draught of perfect mixing.
    pub mixing: Entry<Ratio>,
}

impl Section for Blower {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.count(&mut self.jets, "jets", "number of blower jets", (1, 24));
        v.size(
            &mut self.bore,
            "bore",
            "bore of a blower jet",
            within("0.2 mm", "6 mm"),
        );
        v.number(
            &mut self.coefficient,
            "coefficient",
            "discharge coefficient of a jet",
            within("0.4", "1"),
        );
        v.number(
            &mut self.mixing,
            "mixing",
            "net draught found over that of full mixing and true alignment",
            within("0.1", "1"),
        );
    }
}

/// `[dryer]`: the coil that dries or superheats the steam.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Dryer {
    /// Where it lies.
    pub place: Entry<DryerPlace>,
    /// Outside diameter of its tube.
    pub outside: Entry<Size>,
    /// Wall of its tube.
    pub wall: Entry<Size>,
    /// Length of tube in the gas.
    pub length: Entry<Size>,
    /// Mean diameter of the coil.
    pub coil: Entry<Size>,
    /// Emissivity of its surface.
    pub emissivity: Entry<Ratio>,
    /// Share of its surface that sees the fire.
    pub view: Entry<Ratio>,
    /// Its metal.
    pub metal: Entry<String>,
}

impl Section for Dryer {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.choice(&mut self.place, "place", "where the coil lies");
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of the tube of the coil",
            within("1.5 mm", "30 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of the tube of the coil",
            within("0.2 mm", "5 mm"),
        );
        v.size(
            &mut self.length,
            "length",
            "length of tube that lies in the gas",
            within("50 mm", "20 m"),
        );
        v.size(
            &mut self.coil,
            "coil",
            "mean diameter of the turns of the coil",
            within("10 mm", "600 mm"),
        );
        v.number(
            &mut self.emissivity,
            "emissivity",
            "emissivity of the outside of the coil",
            within("0.05", "1"),
        );
        v.number(
            &mut self.view,
            "view",
            "share of the outside of the coil that sees the fire",
            within("0", "1"),
        );
        v.text(&mut self.metal, "metal", "metal of the coil");
    }
}

/// Where the coil lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DryerPlace {
    /// In the smokebox.
    Smokebox,
    /// In the firebox.
    Firebox,
}

impl Choice for DryerPlace {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::Smokebox,
            "smokebox",
            "in the gas that has left the tubes",
        ),
        (Self::Firebox, "firebox", "over the fire, in its radiation"),
    ];
}
