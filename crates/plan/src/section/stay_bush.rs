//! `[[boiler.stay]]` and `[[boiler.bush]]`: what is let into the pressure parts.

use reckoning::Size;
use reckoning::quantity::{Angle, Length};

use crate::entry::Entry;
use crate::field::{Choice, within};
use crate::section::shell::{JOINT, Joint, METAL};
use crate::visit::{Row, Section, Visitor};

const ANGLE: &str = "angle clockwise: seen from above, from the middle of the firehole; of a \
                     horizontal boiler, seen from the front, from the top";

/// `[[boiler.stay]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Stay {
    /// Id.
    pub id: Entry<String>,
    /// What it ties.
    pub run: Entry<StayRun>,
    /// Diameter.
    pub diameter: Entry<Size>,
    /// Bore of a hollow stay.
    pub bore: Entry<Size>,
    /// How its ends are held.
    pub ends: Entry<StayEnds>,
    /// Distance from the axis of the boiler, for a stay from plate to plate.
    pub radius: Entry<Length>,
    /// Height, for a stay across the water leg.
    pub height: Entry<Length>,
    /// Angle.
    pub angle: Entry<Angle>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Row for Stay {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Stay {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the stay");
        v.choice(&mut self.run, "run", "what the stay ties");
        v.size(
            &mut self.diameter,
            "diameter",
            "diameter of the stay",
            within("1 mm", "40 mm"),
        );
        v.size(
            &mut self.bore,
            "bore",
            "bore of a hollow stay",
            within("0.5 mm", "35 mm"),
        );
        v.choice(
            &mut self.ends,
            "ends",
            "how the ends are held in the plates",
        );
        v.number(
            &mut self.radius,
            "radius",
            "distance of a stay from plate to plate from the axis of the barrel",
            within("0 mm", "250 mm"),
        );
        v.number(
            &mut self.height,
            "height",
            "height of a stay across the water leg above the underside of the foundation ring",
            within("0 mm", "2 m"),
        );
        v.number(&mut self.angle, "angle", ANGLE, within("0°", "360°"));
        v.text(&mut self.metal, "metal", METAL);
    }
}

/// What a stay ties.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StayRun {
    /// From tube plate to tube plate, or from end to end.
    PlateToPlate,
    /// From the firebox to the barrel, across the water leg.
    FireboxToBarrel,
}

impl Choice for StayRun {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (
            Self::PlateToPlate,
            "plate to plate",
            "between the tube plates, or the ends of a horizontal boiler",
        ),
        (
            Self::FireboxToBarrel,
            "firebox to barrel",
            "across the water leg",
        ),
    ];
}

/// How the ends of a stay are held.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StayEnds {
    /// Brazed in plain holes.
    Brazed,
    /// Headed or nutted, and brazed.
    HeadedAndBrazed,
}

impl Choice for StayEnds {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Brazed, "brazed", "brazed in plain holes"),
        (
            Self::HeadedAndBrazed,
            "headed and brazed",
            "head or nut on the far side, and brazed",
        ),
    ];
}

/// `[[boiler.bush]]`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Bush {
    /// Id.
    pub id: Entry<String>,
    /// What it serves.
    pub purpose: Entry<BushPurpose>,
    /// The part it stands in.
    pub on: Entry<BushSeat>,
    /// Height of its middle, on an upright wall.
    pub height: Entry<Length>,
    /// Distance of its middle from the front, on a horizontal barrel.
    pub along: Entry<Length>,
    /// Distance from the axis of the boiler, on a plate.
    pub radius: Entry<Length>,
    /// Angle.
    pub angle: Entry<Angle>,
    /// Thread inside it.
    pub thread: Entry<String>,
    /// Free bore behind the thread.
    pub bore: Entry<Size>,
    /// Diameter in the hole of the part.
    pub outside: Entry<Size>,
    /// Diameter of its flange.
    pub flange: Entry<Size>,
    /// Thickness of its flange.
    pub flange_thickness: Entry<Size>,
    /// Reach outside the part.
    pub length_out: Entry<Size>,
    /// Reach inside the part.
    pub length_in: Entry<Size>,
    /// How its joint can be seen.
    pub joint: Entry<Joint>,
    /// Metal.
    pub metal: Entry<String>,
}

impl Row for Bush {
    fn id(&self) -> &Entry<String> {
        &self.id
    }
}

impl Section for Bush {
    fn visit(&mut self, v: &mut dyn Visitor) {
        v.id(&mut self.id, "name of the bush");
        v.choice(&mut self.purpose, "purpose", "what the bush serves");
        v.choice(&mut self.on, "on", "the part in which the bush stands");
        v.number(
            &mut self.height,
            "height",
            "height of its middle above the underside of the foundation ring, on an upright wall",
            within("0 mm", "2 m"),
        );
        v.number(
            &mut self.along,
            "along",
            "distance of its middle from the front end of a horizontal barrel",
            within("0 mm", "2 m"),
        );
        v.number(
            &mut self.radius,
            "radius",
            "distance of its middle from the axis of the barrel, on a plate",
            within("0 mm", "250 mm"),
        );
        v.number(&mut self.angle, "angle", ANGLE, within("0°", "360°"));
        v.text(
            &mut self.thread,
            "thread",
            "thread inside the bush, by its standard name",
        );
        self.visit_sizes(v);
        v.choice(&mut self.joint, "joint", JOINT);
        v.text(&mut self.metal, "metal", METAL);
    }
}

impl Bush {
    fn visit_sizes(&mut self, v: &mut dyn Visitor) {
        v.size(
            &mut self.bore,
            "bore",
            "free bore behind the thread",
            within("0.5 mm", "80 mm"),
        );
        v.size(
            &mut self.outside,
            "outside",
            "diameter in the hole of the part",
            within("2 mm", "120 mm"),
        );
        v.size(
            &mut self.flange,
            "flange",
            "diameter of its flange",
            within("2 mm", "150 mm"),
        );
        v.size(
            &mut self.flange_thickness,
            "flange-thickness",
            "thickness of its flange",
            within("0.3 mm", "20 mm"),
        );
        v.size(
            &mut self.length_out,
            "length-out",
            "reach outside the part, flange included",
            within("0 mm", "60 mm"),
        );
        v.size(
            &mut self.length_in,
            "length-in",
            "reach inside the part",
            within("0 mm", "60 mm"),
        );
    }
}

/// What a bush serves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the table of names below says what each is")]
pub enum BushPurpose {
    SafetyValve,
    SteamOutlet,
    Blower,
    PressureGauge,
    WaterGaugeTop,
    WaterGaugeBottom,
    Feed,
    Blowdown,
    Filling,
    FusiblePlug,
    Washout,
}

impl Choice for BushPurpose {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::SafetyValve, "safety valve", ""),
        (Self::SteamOutlet, "steam outlet", "regulator or stop valve"),
        (Self::Blower, "blower", ""),
        (Self::PressureGauge, "pressure gauge", ""),
        (Self::WaterGaugeTop, "water gauge, top", ""),
        (Self::WaterGaugeBottom, "water gauge, bottom", ""),
        (Self::Feed, "feed", "check valve of a means of feed"),
        (Self::Blowdown, "blow-down", ""),
        (Self::Filling, "filling", "filler plug"),
        (Self::FusiblePlug, "fusible plug", ""),
        (Self::Washout, "washout", "washout plug"),
    ];
}

/// The part in which a bush stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BushSeat {
    /// The wall of the barrel.
    Barrel,
    /// The upper tube plate.
    UpperTubePlate,
    /// The lower tube plate, the firebox crown.
    LowerTubePlate,
    /// The front end of a horizontal boiler.
    FrontEnd,
    /// The back end of a horizontal boiler.
    BackEnd,
}

impl Choice for BushSeat {
    const NAMES: &'static [(Self, &'static str, &'static str)] = &[
        (Self::Barrel, "barrel", "the wall of the barrel"),
        (Self::UpperTubePlate, "upper tube plate", ""),
        (
            Self::LowerTubePlate,
            "lower tube plate",
            "the crown of the firebox",
        ),
        (Self::FrontEnd, "front end", "of a horizontal boiler"),
        (Self::BackEnd, "back end", "of a horizontal boiler"),
    ];
}
