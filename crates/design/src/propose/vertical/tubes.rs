//! Fire tubes and the length of the barrel that holds them.

use reckoning::Origin;

use super::At;
use crate::propose::choice::{Choice, mm, plain, text};
use crate::propose::draft::size_mm;

/// Least metal between brazed holes, mm: half a millimetre over what is asked, so that steam gets
/// up between the tubes.
const BETWEEN_MM: f64 = 3.0;
/// Strip at the edge of the nest, mm; the bend of the flange usually asks more.
const EDGE_MM: f64 = 2.5;

pub(super) fn choice(at: &At<'_>) -> Option<Choice> {
    let pair = &at.plan.boiler.tube_plate;
    let tube = &at.sizes.tube;
    let outside = size_mm(&at.plan.boiler.tubes.outside).unwrap_or(tube.outside);
    let plates = [&pair.upper.thickness, &pair.lower.thickness];
    let thickest = plates
        .into_iter()
        .filter_map(size_mm)
        .fold(BETWEEN_MM, f64::max);
    // The proof takes plate and hole a hundredth thicker and wider than they are drawn.
    let pitch = ((1.02 * (outside + thickest) + 0.05) * 10.0).ceil() / 10.0;
    Some(
        Choice::of("tubes")
            .set("boiler.tubes.outside", mm(tube.outside))
            .set("boiler.tubes.wall", mm(tube.wall))
            .set("boiler.tubes.layout", text("triangular"))
            .set("boiler.tubes.pitch", mm(pitch))
            .set("boiler.tubes.margin", mm(EDGE_MM))
            .set("boiler.tubes.joint", text("seen both sides"))
            .between("tubes of 8 to 22 mm and walls from 0.8 mm, packed in triangles on the plates")
            .because(
                format!(
                    "{}: the widest, and so the fewest to braze, within three hundredths of the \
                     most steam, that leave the water its surface; the metal between two holes is as wide as the thicker plate, and 3 mm",
                    tube.words()
                ),
                Origin::FromMemory,
            ),
    )
}

pub(super) fn length(at: &At<'_>) -> Option<Choice> {
    let pair = &at.plan.boiler.tube_plate;
    let below = size_mm(&at.plan.boiler.firebox.height)? + size_mm(&pair.lower.thickness)?;
    let barrel = (below + at.sizes.length + size_mm(&pair.upper.flange_height)?).ceil();
    let room = at.plan.room.height.typed();
    let within = room.map_or(String::new(), |room| {
        format!(
            " that leave room for smokebox and chimney in a height of {}",
            room.text
        )
    });
    Some(
        Choice::of("barrel length")
            .set("boiler.barrel.length", mm(barrel))
            .between(format!("tubes from 60 mm in steps of 20 mm{within}"))
            .because(
                format!(
                    "tubes of {} mm between the plates: the next step would bring less than two \
                     hundredths more steam, or has no room",
                    plain(at.sizes.length)
                ),
                Origin::Assumed,
            ),
    )
}
