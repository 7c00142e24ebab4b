//! `[boiler.flue]`, `[boiler.end]` and `[boiler.cross-tubes]`: a horizontal boiler inside.
//!
//! Heights of a horizontal boiler are measured upwards from the underside of the barrel, lengths
//! along it from its front, the end at which the burner stands; angles clockwise seen from the
//! front, from the top.

use reckoning::Size;
use reckoning::quantity::{Angle, Ratio};

use crate::entry::Entry;
use crate::field::within;
use crate::section::shell::{JOINT, Joint, METAL, Seam, TubePlate};
use crate::visit::{Section, Visitor};

/// `[boiler.flue]`: the tube from end to end that holds the flame.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Flue {
    /// Outside diameter, the wetted side.
    pub outside: Entry<Size>,
    /// Inside diameter, where that is what the drawing gives.
    pub bore: Entry<Size>,
    /// Wall.
    pub wall: Entry<Size>,
    /// Distance of its centre below that of the barrel.
    pub below: Entry<Size>,
    /// Reach beyond the dry face of each end.
    pub projection: Entry<Size>,
    /// Greatest less least outside diameter.
    pub ovality: Entry<Size>,
    /// Seam.
    pub seam: Entry<Seam>,
    /// Emissivity of its inside.
    pub emissivity: Entry<Ratio>,
    /// How its joints with the ends can be seen.
    pub joint: Entry<Joint>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Section for Flue {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of the flue, the wetted side",
            within("8 mm", "400 mm"),
        );
        v.size(
            &mut self.bore,
            "bore",
            "inside diameter of the flue, instead of the outside",
            within("8 mm", "400 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of the flue",
            within("0.3 mm", "25 mm"),
        );
        v.size(
            &mut self.below,
            "below",
            "distance of the centre of the flue below that of the barrel; 0 mm where they are one",
            within("0 mm", "150 mm"),
        );
        self.visit_wall(v);
    }
}

impl Flue {
    fn visit_wall(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.projection,
            "projection",
            "reach of the flue beyond the dry face of each end",
            within("0 mm", "100 mm"),
        );
        v.size(
            &mut self.ovality,
            "ovality",
            "greatest less least outside diameter: drawn is the limit asked, made the one measured",
            within("0 mm", "20 mm"),
        );
        v.choice(
            &mut self.seam,
            "seam",
            "how the flue is closed along its length",
        );
        v.number(
            &mut self.emissivity,
            "emissivity",
            "emissivity of the inside of the flue",
            within("0.05", "1"),
        );
        v.choice(&mut self.joint, "joint", JOINT);
        v.text(&mut self.metal, "metal", METAL);
    }
}

/// `[boiler.end]`: the two ends of a horizontal barrel.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ends {
    /// The end at which the burner stands.
    pub front: TubePlate,
    /// The end at the smokebox.
    pub back: TubePlate,
}

impl Section for Ends {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.table(
            "front",
            "the plate that closes the barrel where the burner stands",
            &mut self.front,
        );
        v.table(
            "back",
            "the plate that closes the barrel at the smokebox",
            &mut self.back,
        );
    }
}

/// `[boiler.cross-tubes]`: water tubes through the flue and its axis, square to it, all alike.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CrossTubes {
    /// Number of tubes.
    pub count: Entry<u32>,
    /// Outside diameter, the side of the fire.
    pub outside: Entry<Size>,
    /// Wall.
    pub wall: Entry<Size>,
    /// Distance of the first from the mouth of the flue.
    pub first: Entry<Size>,
    /// Distance from one to the next, middle to middle, along the flue.
    pub spacing: Entry<Size>,
    /// Angle of the first above the horizontal.
    pub incline: Entry<Angle>,
    /// Angle by which each is turned from the last.
    pub turn: Entry<Angle>,
    /// Reach of their ends beyond the crown of the flue's outside.
    pub projection: Entry<Size>,
    /// How their joints with the flue can be seen.
    pub joint: Entry<Joint>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Section for CrossTubes {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.count(
            &mut self.count,
            "count",
            "number of cross tubes; 0 for a plain flue",
            (0, 60),
        );
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of a cross tube, the side of the fire",
            within("2 mm", "60 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of a cross tube",
            within("0.2 mm", "6 mm"),
        );
        self.visit_places(v);
        v.choice(&mut self.joint, "joint", JOINT);
        v.text(&mut self.metal, "metal", METAL);
    }
}

impl CrossTubes {
    fn visit_places(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.first,
            "first",
            "distance of the middle of the first tube from the mouth of the flue",
            within("0 mm", "2 m"),
        );
        v.size(
            &mut self.spacing,
            "spacing",
            "distance from one tube to the next along the flue, middle to middle",
            within("2 mm", "500 mm"),
        );
        v.number(
            &mut self.incline,
            "incline",
            "angle of the first tube above the horizontal, its left end low seen from the front",
            within("0°", "180°"),
        );
        v.number(
            &mut self.turn,
            "turn",
            "angle by which each tube is turned from the last, against the clock seen from the front",
            within("0°", "180°"),
        );
        v.size(
            &mut self.projection,
            "projection",
            "reach of each end of a tube beyond the outside of the flue, on the middle of the tube",
            within("0 mm", "20 mm"),
        );
    }
}
