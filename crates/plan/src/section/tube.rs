//! `[boiler.tubes]`: the fire tubes.

use reckoning::Size;
use reckoning::quantity::{Angle, Fouling, Ratio};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::section::shell::Joint;
use crate::visit::{Row, Section, Visitor};

/// `[boiler.tubes]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Tubes {
    /// Number of tubes.
    pub count: Entry<u32>,
    /// Outside diameter.
    pub outside: Entry<Size>,
    /// Wall.
    pub wall: Entry<Size>,
    /// Diameter of the holes in the plates.
    pub hole: Entry<Size>,
    /// Pattern of the holes.
    pub layout: Entry<TubeLayout>,
    /// Distance from middle to middle.
    pub pitch: Entry<Size>,
    /// Least distance from an outer tube to the wall round the plate.
    pub margin: Entry<Size>,
    /// Reach beyond the dry face of each plate.
    pub projection: Entry<Size>,
    /// Fouling inside the tubes.
    pub fouling: Entry<Fouling>,
    /// Emissivity inside the tubes.
    pub emissivity: Entry<Ratio>,
    /// How their joints can be seen.
    pub joint: Entry<Joint>,
    /// Metal.
    pub metal: Entry<String>,
    /// Circles of tubes, for the layout in rings.
    pub rings: Vec<TubeRing>,
}

impl Section for Tubes {
    fn visit(&mut self, v: &mut dyn Visitor) {
        self.visit_sizes(v);
        self.visit_layout(v);
        v.number(
            &mut self.fouling,
            "fouling",
            "resistance of soot to heat, inside the tubes",
            within("0 m2 K/W", "0.05 m2 K/W"),
        );
        v.number(
            &mut self.emissivity,
            "emissivity",
            "emissivity of the inside of the tubes",
            within("0.05", "1"),
        );
        v.choice(
            &mut self.joint,
            "joint",
            "how far the filler of their joints can be seen after brazing",
        );
        v.text(
            &mut self.metal,
            "metal",
            "their metal, where it is not that of the boiler",
        );
        v.rows(
            "ring",
            "a circle of tubes, for the layout in rings",
            &mut self.rings,
        );
    }
}

impl Tubes {
    fn visit_sizes(&mut self, v: &mut dyn Visitor) {
        v.count(&mut self.count, "count", "number of fire tubes", (1, 400));
        v.size(
            &mut self.outside,
            "outside",
            "outside diameter of a fire tube",
            within("3 mm", "80 mm"),
        );
        v.size(
            &mut self.wall,
            "wall",
            "wall of a fire tube",
            within("0.2 mm", "6 mm"),
        );
        v.size(
            &mut self.hole,
            "hole",
            "diameter of the holes in the plates, before brazing",
            within("3 mm", "81 mm"),
        );
    }

    fn visit_layout(&mut self, v: &mut dyn Visitor) {
        v.choice(
            &mut self.layout,
            "layout",
            "pattern of the holes in the plates",
        );
        v.size(
            &mut self.pitch,
            "pitch",
            "distance between neighbouring tubes, middle to middle",
            within("3 mm", "150 mm"),
        );
        v.size(
            &mut self.margin,
            "margin",
            "least distance from the outside of a tube to the wall round the plate",
            within("0 mm", "150 mm"),
        );
        v.size(
            &mut self.projection,
            "projection",
            "reach of a tube beyond the dry face of each plate",
            within("0 mm", "30 mm"),
        );
    }
}

/// Pattern of the holes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TubeLayout {
    /// Equal triangles.
    Triangular,
    /// Squares.
    Square,
    /// Circles, given one by one.
    Rings,
}

impl Choice for TubeLayout {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::Triangular,
            "triangular",
            "neighbours in equal triangles of the pitch",
        ),
        (Self::Square, "square", "neighbours in squares of the pitch"),
        (Self::Rings, "rings", "on the circles listed"),
    ];
}

/// `[[boiler.tubes.ring]]`: tubes evenly spaced on a circle.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TubeRing {
    /// Id.
    pub id: Entry<String>,
    /// Number of tubes on it.
    pub count: Entry<u32>,
    /// Diameter of the circle through their middles.
    pub circle: Entry<Size>,
    /// Angle of the first tube.
    pub start: Entry<Angle>,
}

impl Row for TubeRing {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for TubeRing {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the circle");
        v.count(
            &mut self.count,
            "count",
            "number of tubes on the circle, evenly spaced",
            (1, 100),
        );
        v.size(
            &mut self.circle,
            "circle",
            "diameter of the circle through the middles of the tubes; 0 mm for one in the middle",
            within("0 mm", "450 mm"),
        );
        v.number(
            &mut self.start,
            "start",
            "angle of the first tube, clockwise seen from above, from the middle of the firehole",
            within("0°", "360°"),
        );
    }
}
