//! How the parts of a vertical boiler stand to each other: radii and heights in millimetres, the
//! heights above the datum, which is the underside of the foundation ring.

use reckoning::quantity::Length;
use reckoning::{Known, Origin};

use super::sizes::Sizes;
use crate::boiler::{Standing, length, standing};
use crate::known::weakest;

/// A vertical boiler whose vessel is known: barrel, firebox, ring and both plates.
#[derive(Clone, Debug)]
pub(crate) struct Frame {
    /// Inside radius of the barrel.
    pub(crate) barrel: f64,
    /// Wall of the barrel.
    pub(crate) barrel_wall: f64,
    /// Lower end of the barrel.
    pub(crate) barrel_low: f64,
    /// Outside radius of the firebox.
    pub(crate) firebox: f64,
    /// Inside radius of the firebox.
    pub(crate) firebox_bore: f64,
    /// Upper end of the firebox tube.
    pub(crate) firebox_high: f64,
    /// Depth of the foundation ring.
    pub(crate) ring: f64,
    /// Upper tube plate.
    pub(crate) upper: Standing,
    /// Lower tube plate.
    pub(crate) lower: Standing,
    /// The weakest origin among the sizes.
    pub(crate) weakest: Origin,
}

impl Frame {
    /// The vessel, where every size of it is known.
    pub(crate) fn of(sizes: &Sizes) -> Option<Self> {
        let (barrel, firebox) = (sizes.barrel.as_ref()?, sizes.firebox.as_ref()?);
        let length_of = sizes.barrel_length.as_ref()?;
        let height = sizes.firebox_height.as_ref()?;
        let ring = sizes.ring_depth.as_ref()?;
        let (upper, lower) = (sizes.upper.as_ref()?, sizes.lower.as_ref()?);
        let low = -sizes.ring_set_in.value.mm();
        let high = low + length_of.value.mm();
        let (bore, box_bore) = (barrel.bore.value.mm() / 2.0, firebox.bore.value.mm() / 2.0);
        let upper_low = high - (upper.set_in.value + upper.thickness.value).mm();
        let lower_low = (height.value - lower.set_in.value).mm();
        let mut read = vec![&barrel.bore, &barrel.wall, &firebox.outside, &firebox.wall];
        read.extend([length_of, height, ring, &sizes.ring_set_in]);
        let plates = upper.weakest().max(lower.weakest());
        Some(Self {
            barrel: bore,
            barrel_wall: barrel.wall.value.mm(),
            barrel_low: low,
            firebox: firebox.outside.value.mm() / 2.0,
            firebox_bore: box_bore,
            firebox_high: height.value.mm(),
            ring: ring.value.mm(),
            upper: standing(upper, bore, upper_low),
            lower: standing(lower, box_bore, lower_low),
            weakest: plates.max(weakest(&read)),
        })
    }

    /// Length of a tube between the wet faces of the plates.
    pub(crate) fn between_plates(&self) -> f64 {
        self.upper.low - self.lower.high()
    }

    /// Whether the parts stand clear of each other, so that there is a vessel at all: what is not
    /// so is told by the rules.
    pub(crate) fn stands(&self) -> bool {
        self.barrel > self.firebox
            && self.firebox_bore > 0.0
            && self.between_plates() > 0.0
            && self.lower.low > self.ring
            && [&self.upper, &self.lower]
                .iter()
                .all(|p| p.lap() >= 0.0 && p.radius > p.bend())
    }

    /// Length of the firebox wall between foundation ring and crown.
    pub(crate) fn firebox_length(&self) -> Known<Length> {
        length(
            self.lower.low - self.ring,
            "from the top of the foundation ring to the dry face of the lower tube plate",
            self.weakest,
        )
    }

    /// Width of the water leg between firebox and barrel.
    pub(crate) fn leg_known(&self) -> Known<Length> {
        length(
            self.barrel - self.firebox,
            "half the bore of the barrel less the outside of the firebox",
            self.weakest,
        )
    }

    /// The height of the crown.
    pub(crate) fn crown_known(&self) -> Known<Length> {
        let of = "the highest point of the crown of the firebox";
        length(self.crown(), of, self.weakest)
    }

    /// The highest point of the fire's side that water must cover.
    pub(crate) fn crown(&self) -> f64 {
        let (_, plate) = self.lower.extent();
        plate.max(self.firebox_high)
    }
}
