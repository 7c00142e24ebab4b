//! Tube plates and the height of the firebox that the lower one closes.

use reckoning::Origin;

use super::At;
use super::grate::firehole_top;
use crate::propose::choice::{Choice, mm, text};
use crate::propose::draft::{length_mm, size_mm};

/// Lap of a flange in thicknesses of the thinner wall: three are asked, of the walls at their
/// thickest.
const LAP: f64 = 3.5;
/// Straight wall between firehole and flange, mm.
const BESIDE_MM: f64 = 8.0;

pub(super) fn choice(at: &At<'_>) -> Option<Choice> {
    let boiler = &at.plan.boiler;
    let flange = |thickness: f64, wall: f64| {
        let thinner = if thickness < wall { thickness } else { wall };
        (2.0 * (2.0 * thickness + LAP * thinner)).ceil() / 2.0
    };
    let (upper, lower) = (at.sizes.upper, at.sizes.lower);
    let (barrel, firebox) = (
        size_mm(&boiler.barrel.wall)?,
        size_mm(&boiler.firebox.wall)?,
    );
    let mut choice = Choice::of("tube plates");
    for (which, thickness, wall) in [("upper", upper, barrel), ("lower", lower, firebox)] {
        let path = |key: &str| format!("boiler.tube-plate.{which}.{key}");
        choice = choice
            .set(path("thickness"), mm(thickness))
            .set(path("flange-height"), mm(flange(thickness, wall)))
            .set(path("inside-radius"), mm(thickness))
            .set(path("flange"), text("away from the water"));
    }
    Some(choice.between("sheets on hand, then listed").because(
        "the thinnest at which every rule of the plates is met; a flange is bent over \
                 its own thickness, laps three walls, and points where its joint can be fed and \
                 seen",
        Origin::CommonPractice,
    ))
}

pub(super) fn firebox_height(at: &At<'_>) -> Option<Choice> {
    let plate = &at.plan.boiler.tube_plate.lower;
    let over = size_mm(&plate.flange_height)? - size_mm(&plate.thickness)?;
    let clear = firehole_top(at)? + BESIDE_MM + over;
    let depth = length_mm(&at.plan.fire.depth)?;
    let flame = length_mm(&at.plan.grate.height)? + 2.0 * depth;
    let height = if clear > flame { clear } else { flame }.ceil();
    Some(
        Choice::of("firebox height")
            .set("boiler.firebox.height", mm(height))
            .between("heights that leave the firehole clear of the flange above it")
            .because(
                "the least that also leaves as much room above the fire as the fire is deep",
                Origin::CommonPractice,
            ),
    )
}
