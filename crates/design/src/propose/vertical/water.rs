//! Water levels and the glass that shows them.

use reckoning::Origin;

use super::At;
use crate::propose::choice::{Choice, mm};
use crate::propose::draft::{length_mm, size_mm};

/// Water over the crown at the lowest level, mm: half as much again as the rule asks.
const COVER_MM: f64 = 15.0;
/// Height of the working level between the lowest and the upper plate.
const BETWEEN: f64 = 0.45;
/// How far the glass begins above the crown, mm.
const GLASS_MM: f64 = 8.0;

/// The wet face of the upper plate above the datum, mm.
pub(super) fn upper_face(at: &At<'_>) -> Option<f64> {
    let boiler = &at.plan.boiler;
    let low = -size_mm(&boiler.foundation_ring.set_in).unwrap_or(0.0);
    let end = low + size_mm(&boiler.barrel.length)?;
    let plate = &boiler.tube_plate.upper;
    let set_in = size_mm(&plate.set_in)
        .or_else(|| Some(size_mm(&plate.flange_height)? - size_mm(&plate.thickness)?))?;
    Some(end - set_in - size_mm(&plate.thickness)?)
}

/// The crown above the datum, mm.
pub(super) fn crown(at: &At<'_>) -> Option<f64> {
    let boiler = &at.plan.boiler;
    Some(size_mm(&boiler.firebox.height)? + size_mm(&boiler.tube_plate.lower.thickness)?)
}

pub(super) fn choice(at: &At<'_>) -> Option<Choice> {
    let (crown, face) = (crown(at)?, upper_face(at)?);
    let lowest = length_mm(&at.plan.boiler.water_level.lowest).unwrap_or((crown + COVER_MM).ceil());
    let working = (lowest + BETWEEN * (face - lowest)).round();
    Some(
        Choice::of("water")
            .set("boiler.water-level.lowest", mm(lowest))
            .set("boiler.water-level.working", mm(working))
            .between("levels between the crown and the upper tube plate")
            .because(
                "the lowest covers the crown by half as much again as is asked; the working \
                 level leaves more than half of the height above it to the steam",
                Origin::CommonPractice,
            ),
    )
}

pub(super) fn glass(at: &At<'_>) -> Option<Choice> {
    let (crown, face) = (crown(at)?, upper_face(at)?);
    let working = length_mm(&at.plan.boiler.water_level.working)?;
    let top = (working + 0.5 * (face - working)).floor();
    Some(
        Choice::of("water gauge")
            .set("water-gauge.bottom", mm((crown + GLASS_MM).ceil()))
            .set("water-gauge.top", mm(top))
            .between("glasses that begin above the crown")
            .because(
                "it shows the lowest level and the working level, and half way on to the plate",
                Origin::CommonPractice,
            ),
    )
}
