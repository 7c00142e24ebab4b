//! The cross tubes: where they stand in the flue, how they slope, how near they come to each
//! other, to the ends and to the barrel. Lengths in millimetres.

use std::f64::consts::{FRAC_PI_2, PI};

use reckoning::quantity::Length;
use reckoning::{Known, Origin};

use super::frame::Frame;
use super::sizes::{AcrossSizes, Sizes, TubeSizes};
use crate::known::weakest;
use crate::part::quadrature::integral;

/// Error of an area on the flue, as a share of its bore times that of the tube.
const RELATIVE_ERROR: f64 = 1e-12;

/// The cross tubes of a flue; none for a plain one.
#[derive(Clone, Debug)]
pub(crate) struct Crossing {
    pub(crate) tubes: Vec<At>,
    /// Outside radius of a tube; nought without tubes, like the sizes below.
    pub(crate) outside: f64,
    /// Inside radius.
    pub(crate) bore: f64,
    /// Half its length, from the axis of the flue to either end.
    pub(crate) half: f64,
    /// The weakest origin among their sizes and those of the vessel.
    pub(crate) weakest: Origin,
}

/// Where a tube stands.
#[derive(Clone, Copy, Debug)]
pub(crate) struct At {
    /// From the front of the barrel.
    pub(crate) along: f64,
    /// Angle of its right end above the horizontal, against the clock seen from the front.
    pub(crate) angle: f64,
}

impl At {
    /// Angle between the tube and the horizontal, from nought to a right angle.
    pub(crate) fn slope(self) -> f64 {
        let turned = self.angle.rem_euclid(PI);
        if turned > FRAC_PI_2 {
            PI - turned
        } else {
            turned
        }
    }
}

impl Crossing {
    /// The tubes that the plan describes, where it says all of them.
    pub(crate) fn of(sizes: &Sizes, frame: &Frame) -> Option<Self> {
        match sizes.tubes.as_ref()? {
            TubeSizes::Plain => Some(Self {
                tubes: Vec::new(),
                outside: 0.0,
                bore: 0.0,
                half: 0.0,
                weakest: frame.weakest,
            }),
            // A tube without a bore is told as a part without a shape.
            TubeSizes::Across(across) if across.round.bore.value.mm() > 0.0 => {
                Some(Self::across(across, frame))
            }
            TubeSizes::Across(_) => None,
        }
    }

    fn across(sizes: &AcrossSizes, frame: &Frame) -> Self {
        let mut read = vec![
            &sizes.round.bore,
            &sizes.round.outside,
            &sizes.first,
            &sizes.projection,
        ];
        read.extend(&sizes.spacing);
        let turned = sizes.turn.as_ref().map(|turn| turn.given.origin());
        let angles = turned
            .into_iter()
            .fold(sizes.incline.given.origin(), Origin::max);
        let spacing = sizes.spacing.as_ref().map(|s| s.value.mm());
        let turn = sizes.turn.as_ref().map(|t| t.value.rad());
        let nth = |i: u32, step: Option<f64>| step.map_or(0.0, |step| f64::from(i) * step);
        let at = |i: u32| At {
            along: frame.mouth() + sizes.first.value.mm() + nth(i, spacing),
            angle: sizes.incline.value.rad() + nth(i, turn),
        };
        Self {
            tubes: (0..sizes.count).map(at).collect(),
            outside: sizes.round.outside.value.mm() / 2.0,
            bore: sizes.round.bore.value.mm() / 2.0,
            half: frame.flue + sizes.projection.value.mm(),
            weakest: frame.weakest.max(weakest(&read)).max(angles),
        }
    }

    /// Area that the gas has beside one tube, on the plane of its axis.
    pub(crate) fn beside(&self, frame: &Frame) -> f64 {
        PI * frame.flue_bore * frame.flue_bore - 4.0 * self.outside * frame.flue_bore
    }

    /// Whether the tubes pass the flue and leave the gas a way.
    pub(crate) fn passes(&self, frame: &Frame) -> bool {
        self.outside < frame.flue_bore && self.beside(frame) > 0.0
    }

    /// Metal and room between neighbouring tubes, which is least on the axis of the flue.
    pub(crate) fn apart(&self) -> Option<f64> {
        let pairs = self.tubes.windows(2);
        pairs
            .map(|pair| pair[1].along - pair[0].along - 2.0 * self.outside)
            .min_by(f64::total_cmp)
    }

    /// From the side of the first tube back to the wet face of the front end, and from the side of
    /// the last on to that of the back end: the lesser.
    pub(crate) fn clear_of_ends(&self, frame: &Frame) -> Option<f64> {
        let (first, last) = (self.tubes.first()?, self.tubes.last()?);
        let front = first.along - self.outside - frame.wet_from();
        let back = frame.wet_to() - last.along - self.outside;
        Some(front.min(back))
    }

    /// Least slope, and which tube has it.
    pub(crate) fn flattest(&self) -> Option<(usize, f64)> {
        let slopes = self.tubes.iter().map(|tube| tube.slope()).enumerate();
        slopes.min_by(|a, b| a.1.total_cmp(&b.1))
    }

    /// Least distance from the rim of a tube's end to the barrel, and which tube it is.
    pub(crate) fn clear_of_barrel(&self, frame: &Frame) -> Option<(usize, f64)> {
        // The distance from the axis of the barrel is greatest at a corner of the tube's section.
        let away = |angle: f64, u: f64, v: f64| {
            let (sine, cosine) = angle.sin_cos();
            (u * cosine - v * sine).hypot(u * sine + v * cosine - frame.below)
        };
        let clear = |tube: &At| {
            let corners = [(1.0, 1.0), (1.0, -1.0), (-1.0, 1.0), (-1.0, -1.0)];
            let far = corners
                .map(|(u, v)| away(tube.angle, u * self.half, v * self.outside))
                .into_iter()
                .fold(0.0, f64::max);
            frame.barrel - far
        };
        let all = self.tubes.iter().map(clear).enumerate();
        all.min_by(|a, b| a.1.total_cmp(&b.1))
    }

    /// Height of the highest rim of a tube's end.
    pub(crate) fn highest(&self, frame: &Frame) -> Option<f64> {
        let top = |tube: &At| {
            let slope = tube.slope();
            frame.flue_axis() + self.half * slope.sin() + self.outside * slope.cos()
        };
        self.tubes.iter().map(top).max_by(f64::total_cmp)
    }

    /// Area of one tube's outside within the bore of the flue, mm².
    pub(crate) fn outside_area(&self, frame: &Frame) -> f64 {
        let (r, flue) = (self.outside, frame.flue_bore);
        let mut f = |a: f64| (flue * flue - (r * a.sin()).powi(2)).sqrt();
        let error = RELATIVE_ERROR * flue;
        // Four quarters, each of the half length on the round of the tube.
        8.0 * r * integral(&mut f, 0.0, FRAC_PI_2, error)
    }

    /// Area that one hole of a tube takes out of the inside of the flue, mm².
    pub(crate) fn hole_area(&self, frame: &Frame) -> f64 {
        let (r, flue) = (self.outside, frame.flue_bore);
        let mut f = |a: f64| {
            let across = r * a.sin();
            (r * a.cos()).powi(2) / (1.0 - (across / flue).powi(2)).sqrt()
        };
        4.0 * integral(&mut f, 0.0, FRAC_PI_2, RELATIVE_ERROR * r * r)
    }

    pub(crate) fn known(&self, mm: f64, of: &str) -> Known<Length> {
        crate::boiler::length(mm, of, self.weakest)
    }
}
