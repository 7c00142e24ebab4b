//! How the parts of a horizontal boiler lie to each other, for those who draw it and prove it.

use reckoning::Known;
use reckoning::quantity::{Angle, Length};

use super::Lying;
use super::cross::Crossing;
use super::frame::Frame;
use crate::boiler::Standing;
use crate::vertical::{StandingPlate, in_place};

/// The vessel as drawn, whether it can be built or not: what does not stand is a finding. Heights
/// are above the underside of the barrel, lengths from its front.
#[derive(Clone, Debug)]
pub struct LyingVessel {
    /// Height of the axis of the barrel.
    pub axis: Length,
    /// Front end; its underside is its dry face.
    pub front: StandingPlate,
    /// Back end; its underside is its wet face.
    pub back: StandingPlate,
    /// Flue.
    pub flue: FlueInPlace,
    /// Cross tubes; none where the plan does not say all of them.
    pub cross_tubes: Option<CrossTubes>,
    /// Length of barrel and flue between the wet faces of the ends: what nothing holds between.
    pub between_ends: Known<Length>,
    /// Least water between flue and barrel.
    pub flue_to_barrel: Known<Length>,
    /// The flat of the front end between flue and barrel.
    pub front_field: EndField,
    /// The same of the back end.
    pub back_field: EndField,
}

/// The flue in its place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlueInPlace {
    /// Outside diameter, the wetted side.
    pub outside: Length,
    /// Bore.
    pub bore: Length,
    /// Where it begins; below nought where it stands out of the barrel.
    pub mouth: Length,
    /// Length, end to end.
    pub length: Length,
    /// Distance of its axis below that of the barrel.
    pub below: Length,
}

/// The cross tubes in their places.
#[derive(Clone, Debug, PartialEq)]
pub struct CrossTubes {
    /// Where each stands, `cross-tube.1` first.
    pub tubes: Vec<CrossTube>,
    /// Outside diameter.
    pub outside: Length,
    /// Bore.
    pub bore: Length,
    /// Length, end to end.
    pub length: Length,
}

/// A cross tube in its place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossTube {
    /// From the front of the barrel.
    pub along: Length,
    /// Angle of its right end above the horizontal, against the clock seen from the front.
    pub angle: Angle,
    /// Angle between tube and horizontal, up to a right angle.
    pub slope: Angle,
}

/// The ring of an end between the flue and the barrel.
#[derive(Clone, Debug)]
pub struct EndField {
    /// Inside diameter of the barrel, which holds its outer edge.
    pub outer: Known<Length>,
    /// Diameter of its flat, to the start of the bend; the whole of a flat plate.
    pub flat: Known<Length>,
    /// Outside diameter of the flue, which holds its inner edge.
    pub inner: Known<Length>,
    /// Distance between the middles of the two edges.
    pub aside: Known<Length>,
    /// Widest span from flue to barrel: above a flue that lies below the middle.
    pub widest: Known<Length>,
    /// Least span from flue to barrel.
    pub least: Known<Length>,
}

impl LyingVessel {
    pub(crate) fn of(lying: &Lying) -> Option<Self> {
        let frame = lying.drawn.as_ref()?;
        Some(Self {
            axis: Length::from_mm(frame.axis()),
            front: in_place(&frame.front),
            back: in_place(&frame.back),
            flue: FlueInPlace {
                outside: Length::from_mm(2.0 * frame.flue),
                bore: Length::from_mm(2.0 * frame.flue_bore),
                mouth: Length::from_mm(frame.mouth()),
                length: Length::from_mm(frame.flue_length()),
                below: Length::from_mm(frame.below),
            },
            cross_tubes: lying.crossing.as_ref().map(tubes),
            between_ends: frame.between_known(),
            flue_to_barrel: frame.clear_known(),
            front_field: field(frame, &frame.front),
            back_field: field(frame, &frame.back),
        })
    }
}

fn tubes(crossing: &Crossing) -> CrossTubes {
    let at = |tube: &super::cross::At| CrossTube {
        along: Length::from_mm(tube.along),
        angle: Angle::from_rad(tube.angle),
        slope: Angle::from_rad(tube.slope()),
    };
    CrossTubes {
        tubes: crossing.tubes.iter().map(at).collect(),
        outside: Length::from_mm(2.0 * crossing.outside),
        bore: Length::from_mm(2.0 * crossing.bore),
        length: Length::from_mm(2.0 * crossing.half),
    }
}

fn field(frame: &Frame, end: &Standing) -> EndField {
    let span = frame.barrel - frame.flue;
    EndField {
        outer: frame.known(2.0 * frame.barrel, "the bore of the barrel"),
        flat: frame.known(
            2.0 * (end.radius - end.bend()),
            "the end within the bend of its flange",
        ),
        inner: frame.known(2.0 * frame.flue, "the outside of the flue"),
        aside: frame.known(frame.below, "the flue below the middle of the barrel"),
        widest: frame.known(span + frame.below, "from the flue up to the barrel"),
        least: frame.known(span - frame.below, "from the flue down to the barrel"),
    }
}
