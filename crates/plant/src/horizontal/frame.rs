//! How the parts of a horizontal boiler lie to each other, in millimetres: radii, heights above
//! the underside of the barrel, lengths from its front.

use reckoning::quantity::Length;
use reckoning::{Known, Origin};

use super::sizes::Sizes;
use crate::boiler::{Standing, length, standing};
use crate::known::weakest;

/// A horizontal boiler whose vessel is known: barrel, flue and both ends.
#[derive(Clone, Debug)]
pub(crate) struct Frame {
    /// Inside radius of the barrel.
    pub(crate) barrel: f64,
    /// Wall of the barrel.
    pub(crate) barrel_wall: f64,
    /// Length of the barrel.
    pub(crate) barrel_length: f64,
    /// Outside radius of the flue.
    pub(crate) flue: f64,
    /// Inside radius of the flue.
    pub(crate) flue_bore: f64,
    /// Distance of the axis of the flue below that of the barrel.
    pub(crate) below: f64,
    /// Reach of the flue beyond the dry faces of the ends.
    pub(crate) projection: f64,
    /// Front end; its upper face is the wet one.
    pub(crate) front: Standing,
    /// Back end; its lower face is the wet one.
    pub(crate) back: Standing,
    /// The weakest origin among the sizes.
    pub(crate) weakest: Origin,
}

impl Frame {
    /// The vessel, where every size of it is known.
    pub(crate) fn of(sizes: &Sizes) -> Option<Self> {
        let (barrel, flue) = (sizes.barrel.as_ref()?, sizes.flue.as_ref()?);
        let long = sizes.barrel_length.as_ref()?;
        let below = sizes.below.as_ref()?;
        let (front, back) = (sizes.front.as_ref()?, sizes.back.as_ref()?);
        let radius = barrel.bore.value.mm() / 2.0;
        let behind = long.value - back.set_in.value - back.thickness.value;
        let plates = front.weakest().max(back.weakest());
        let read = [
            &barrel.bore,
            &barrel.wall,
            &flue.bore,
            &flue.outside,
            long,
            below,
            &sizes.projection,
        ];
        Some(Self {
            barrel: radius,
            barrel_wall: barrel.wall.value.mm(),
            barrel_length: long.value.mm(),
            flue: flue.outside.value.mm() / 2.0,
            flue_bore: flue.bore.value.mm() / 2.0,
            below: below.value.mm(),
            projection: sizes.projection.value.mm(),
            front: standing(front, radius, front.set_in.value.mm()),
            back: standing(back, radius, behind.mm()),
            weakest: plates.max(weakest(&read)),
        })
    }

    /// Whether the parts lie clear of each other, so that there is a vessel at all: what is not so
    /// is told by the rules.
    pub(crate) fn stands(&self) -> bool {
        let plate = |p: &Standing| p.lap() >= 0.0 && p.radius > p.bend();
        self.clear() > 0.0
            && self.flue_bore > 0.0
            && self.front.extent().1 < self.back.extent().0
            && plate(&self.front)
            && plate(&self.back)
    }

    /// Height of the axis of the barrel.
    pub(crate) fn axis(&self) -> f64 {
        self.barrel + self.barrel_wall
    }

    /// Height of the axis of the flue.
    pub(crate) fn flue_axis(&self) -> f64 {
        self.axis() - self.below
    }

    /// Height of the top of the flue, the wetted side.
    pub(crate) fn crown(&self) -> f64 {
        self.flue_axis() + self.flue
    }

    /// Where the flue begins.
    pub(crate) fn mouth(&self) -> f64 {
        self.front.low - self.projection
    }

    /// Length of the flue, end to end.
    pub(crate) fn flue_length(&self) -> f64 {
        self.back.high() + self.projection - self.mouth()
    }

    /// Where the water begins at the flue: the wet face of the front end.
    pub(crate) fn wet_from(&self) -> f64 {
        self.front.high()
    }

    /// Where the water ends at the flue: the wet face of the back end.
    pub(crate) fn wet_to(&self) -> f64 {
        self.back.low
    }

    /// Length of barrel and flue between the wet faces of the ends.
    pub(crate) fn between_ends(&self) -> f64 {
        self.wet_to() - self.wet_from()
    }

    /// Least water between flue and barrel: below the flue, which lies no higher than the barrel.
    pub(crate) fn clear(&self) -> f64 {
        self.barrel - self.flue - self.below
    }

    pub(crate) fn known(&self, mm: f64, of: &str) -> Known<Length> {
        length(mm, of, self.weakest)
    }

    pub(crate) fn clear_known(&self) -> Known<Length> {
        let of = "half the bore of the barrel less half the outside of the flue and less how far it lies below";
        self.known(self.clear(), of)
    }

    pub(crate) fn crown_known(&self) -> Known<Length> {
        self.known(self.crown(), "the top of the flue, the wetted side")
    }

    pub(crate) fn between_known(&self) -> Known<Length> {
        let of = "from wet face to wet face of the ends";
        self.known(self.between_ends(), of)
    }
}
