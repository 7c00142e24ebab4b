//! `[boiler.barrel]` and the other pressure parts but the fire tubes.

use reckoning::Size;
use reckoning::quantity::{HeatTransfer, Length, Ratio};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::visit::{Section, Visitor};

/// How a tube was closed along its length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seam {
    /// Drawn tube.
    Seamless,
    /// Brazed lap, filler seen on both sides.
    LapSeenBothSides,
    /// Brazed lap, filler seen on the side of feeding alone.
    LapSeenOneSide,
    /// Butt with a brazed strap.
    ButtStrap,
}

impl Choice for Seam {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Seamless, "seamless", "drawn tube"),
        (
            Self::LapSeenBothSides,
            "lap, seen both sides",
            "brazed lap, filler seen on both sides",
        ),
        (
            Self::LapSeenOneSide,
            "lap, seen one side",
            "brazed lap, filler seen where it was fed",
        ),
        (
            Self::ButtStrap,
            "butt strap",
            "edges butted under a brazed strap",
        ),
    ];
}

/// How a brazed joint could be looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Joint {
    /// Filler seen on both sides after feeding one.
    SeenBothSides,
    /// Filler seen on the side of feeding alone.
    SeenOneSide,
}

impl Choice for Joint {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::SeenBothSides,
            "seen both sides",
            "fed from one side, filler seen all round on the other",
        ),
        (
            Self::SeenOneSide,
            "seen one side",
            "filler seen on the side of feeding alone",
        ),
    ];
}

pub(super) const JOINT: &str = "how far the filler of its joint can be seen after brazing";
pub(super) const METAL: &str = "its metal, where it is not that of the boiler";

/// `[boiler.barrel]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Barrel {
    /// Outside diameter.
    pub outside: Entry<Size>,
    /// Inside diameter, where that is what the drawing gives.
    pub bore: Entry<Size>,
    /// Wall.
    pub wall: Entry<Size>,
    /// Length.
    pub length: Entry<Size>,
    /// Seam.
    pub seam: Entry<Seam>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Section for Barrel {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of the barrel",
            within("20 mm", "500 mm"),
        );
        v.size(
            &mut self.bore,
            "bore",
            "inside diameter of the barrel, instead of the outside",
            within("20 mm", "500 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of the barrel",
            within("0.3 mm", "25 mm"),
        );
        v.size(
            &mut self.length,
            "length",
            "length of the barrel, end to end",
            within("20 mm", "2 m"),
        );
        v.choice(
            &mut self.seam,
            "seam",
            "how the barrel is closed along its length",
        );
        v.text(&mut self.metal, "metal", METAL);
    }
}

/// `[boiler.firebox]`: a round firebox; its crown is the lower tube plate.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Firebox {
    /// Outside diameter, the wetted side.
    pub outside: Entry<Size>,
    /// Inside diameter, where that is what the drawing gives.
    pub bore: Entry<Size>,
    /// Wall.
    pub wall: Entry<Size>,
    /// Height of its tube.
    pub height: Entry<Size>,
    /// Greatest less least outside diameter.
    pub ovality: Entry<Size>,
    /// Seam.
    pub seam: Entry<Seam>,
    /// Effective emissivity between the fire and the wetted box.
    pub emissivity: Entry<Ratio>,
    /// Coefficient of convection inside it.
    pub convection: Entry<HeatTransfer>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Section for Firebox {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of the firebox, the wetted side",
            within("15 mm", "450 mm"),
        );
        v.size(
            &mut self.bore,
            "bore",
            "inside diameter of the firebox, instead of the outside",
            within("15 mm", "450 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of the firebox",
            within("0.3 mm", "25 mm"),
        );
        v.size(
            &mut self.height,
            "height",
            "height of the firebox tube, from the underside of the foundation ring",
            within("10 mm", "1.5 m"),
        );
        v.size(
            &mut self.ovality,
            "ovality",
            "greatest less least outside diameter: drawn is the limit asked, made the one measured",
            within("0 mm", "20 mm"),
        );
        self.visit_fire_side(v);
    }
}

impl Firebox {
    fn visit_fire_side(&mut self, v: &mut dyn Visitor) {
        v.choice(
            &mut self.seam,
            "seam",
            "how the firebox is closed along its length",
        );
        v.number(
            &mut self.emissivity,
            "emissivity",
            "effective emissivity between fire and wetted box",
            within("0.05", "1"),
        );
        v.number(
            &mut self.convection,
            "convection",
            "heat transfer coefficient of the gas moving in the firebox",
            within("0 W/(m2 K)", "200 W/(m2 K)"),
        );
        v.text(&mut self.metal, "metal", METAL);
    }
}

/// `[boiler.foundation-ring]`: fills the water leg at the bottom; its width is the leg's.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FoundationRing {
    /// Depth, along the walls: the lap of its joints.
    pub depth: Entry<Size>,
    /// Distance from the lower end of the barrel up to its underside.
    pub set_in: Entry<Size>,
    /// How its joints can be seen.
    pub joint: Entry<Joint>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Section for FoundationRing {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.depth,
            "depth",
            "depth of the ring along the walls, which is the lap of its joints",
            within("1 mm", "60 mm"),
        );
        v.size(&mut self.set_in, "set-in", "distance from the lower end of the barrel up to the underside of the ring; 0 mm where flush", within("0 mm", "200 mm"));
        v.choice(&mut self.joint, "joint", JOINT);
        v.text(&mut self.metal, "metal", METAL);
    }
}

/// `[boiler.firehole]`: a round tube through the water leg.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Firehole {
    /// Bore.
    pub bore: Entry<Size>,
    /// Outside diameter, where that is what the drawing gives.
    pub outside: Entry<Size>,
    /// Wall.
    pub wall: Entry<Size>,
    /// Height of its centre.
    pub height: Entry<Length>,
    /// How its joints can be seen.
    pub joint: Entry<Joint>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Section for Firehole {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.bore,
            "bore",
            "inside diameter of the firehole tube",
            within("8 mm", "200 mm"),
        );
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of the firehole tube, instead of the bore",
            within("8 mm", "220 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of the firehole tube",
            within("0.3 mm", "20 mm"),
        );
        v.number(
            &mut self.height,
            "height",
            "height of the middle of the firehole above the underside of the foundation ring",
            within("5 mm", "1.5 m"),
        );
        v.choice(&mut self.joint, "joint", JOINT);
        v.text(&mut self.metal, "metal", METAL);
    }
}

/// `[boiler.tube-plate]`: the two plates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TubePlates {
    /// Below the smokebox; closes the barrel.
    pub upper: TubePlate,
    /// The crown of the firebox.
    pub lower: TubePlate,
}

impl Section for TubePlates {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.table(
            "upper",
            "the plate that closes the barrel below the smokebox",
            &mut self.upper,
        );
        v.table(
            "lower",
            "the plate that is the crown of the firebox",
            &mut self.lower,
        );
    }
}

/// A flanged plate that closes the end of a tube.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TubePlate {
    /// Thickness.
    pub thickness: Entry<Size>,
    /// Height of its flange from the face the flange leaves, which is the lap of its joint.
    pub flange_height: Entry<Size>,
    /// Inside radius of the flange.
    pub inside_radius: Entry<Size>,
    /// To which side the flange points.
    pub flange: Entry<FlangeSide>,
    /// Distance from the end of the tube to the face of the plate that is away from the water.
    pub set_in: Entry<Size>,
    /// How its joint can be seen.
    pub joint: Entry<Joint>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Section for TubePlate {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.thickness,
            "thickness",
            "thickness of the plate",
            within("0.3 mm", "25 mm"),
        );
        v.size(
            &mut self.flange_height,
            "flange-height",
            "height of the flange over all, which is the lap of its joint and the radius",
            within("0 mm", "60 mm"),
        );
        v.size(
            &mut self.inside_radius,
            "inside-radius",
            "inside radius of the flange",
            within("0 mm", "40 mm"),
        );
        v.choice(
            &mut self.flange,
            "flange",
            "to which side the flange points",
        );
        v.size(&mut self.set_in, "set-in", "distance from the end of the tube it closes to the face away from the water; 0 mm where flush", within("0 mm", "200 mm"));
        v.choice(&mut self.joint, "joint", JOINT);
        v.text(&mut self.metal, "metal", METAL);
    }
}

/// To which side a flange points.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FlangeSide {
    /// Towards the water.
    Inward,
    /// Away from the water.
    Outward,
}

impl Choice for FlangeSide {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::Inward,
            "towards the water",
            "pressure presses the flange against the wall of the barrel",
        ),
        (Self::Outward, "away from the water", ""),
    ];
}
