//! Grate, bed and firehole.

use reckoning::Origin;

use super::At;
use crate::propose::choice::{Choice, mm, plain, text};
use crate::propose::draft::{length_mm, size_mm};

/// Room on each side of the grate, so that it can be dropped, mm.
const ROUND_GRATE_MM: f64 = 1.0;
/// Height of the grate above the foundation ring, so that water stands behind the fire, mm.
const ABOVE_RING_MM: f64 = 4.0;
/// Lumps as coal is sorted, mm.
const LUMPS_MM: [f64; 9] = [4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0];
/// Lumps across a grate, at least.
const ACROSS: f64 = 8.0;
/// Lumps on top of each other: above three or four the oxygen of the air is used up.
const DEEP: f64 = 4.0;
/// Bore of the firehole in lumps, at least.
const THROUGH: f64 = 2.5;
/// Least straight wall beside the firehole, mm.
const BESIDE_MM: f64 = 6.0;

pub(super) fn choice(at: &At<'_>) -> Option<Choice> {
    let bore = at.firebox_bore()?;
    let ring = size_mm(&at.plan.boiler.foundation_ring.depth)?;
    Some(
        Choice::of("grate")
            .set("grate.diameter", mm((bore - 2.0 * ROUND_GRATE_MM).floor()))
            .set("grate.height", mm(ring + ABOVE_RING_MM))
            .set("grate.free-area", text("40 %"))
            .between("grates that drop through the firebox")
            .because(
                "the widest: the less draught a kilogram of coal asks, the wider the nozzle may \
                 be; its top stands above the ring, so that water is behind the fire",
                Origin::CommonPractice,
            ),
    )
}

pub(super) fn bed(at: &At<'_>) -> Option<Choice> {
    let grate = size_mm(&at.plan.grate.diameter)?;
    let fits = |lump: &&f64| **lump * ACROSS <= grate;
    let lump = LUMPS_MM.iter().rev().find(fits).unwrap_or(&LUMPS_MM[0]);
    let lump = length_mm(&at.plan.fire.lump).unwrap_or(*lump);
    Some(
        Choice::of("bed")
            .set("fire.lump", mm(lump))
            .set("fire.depth", mm(DEEP * lump))
            .between("coal sorted to 4, 5, 6, 8, 10, 12, 15, 20 and 25 mm")
            .because(
                "the largest of which eight lie across the grate: large lumps ask little \
                 draught and lie heavy; four lie on each other, where the air has given its \
                 oxygen",
                Origin::CommonPractice,
            ),
    )
}

pub(super) fn firehole(at: &At<'_>) -> Option<Choice> {
    let lump = length_mm(&at.plan.fire.lump)?;
    let top = length_mm(&at.plan.grate.height)? + length_mm(&at.plan.fire.depth)?;
    let ring = size_mm(&at.plan.boiler.foundation_ring.depth)?;
    let wall = at.sizes.firehole_wall;
    let bore = (THROUGH * lump).ceil();
    let lowest = ring + bore / 2.0 + wall + BESIDE_MM;
    let height = if top > lowest { top } else { lowest }.ceil();
    Some(
        Choice::of("firehole")
            .set("boiler.firehole.bore", mm(bore))
            .set("boiler.firehole.wall", mm(wall))
            .set("boiler.firehole.height", mm(height))
            .between("rings turned from bar or cut from tube")
            .because(
                format!(
                    "two and a half lumps of {} mm go through; its middle stands at the top of \
                     the bed and {BESIDE_MM} mm of straight wall below it; the least wall, from \
                     2 mm, that the proof lets pass",
                    plain(lump)
                ),
                Origin::CommonPractice,
            ),
    )
}

/// The top of the firehole's tube above the datum, mm.
pub(super) fn firehole_top(at: &At<'_>) -> Option<f64> {
    let hole = &at.plan.boiler.firehole;
    let outside = size_mm(&hole.outside)
        .or_else(|| Some(size_mm(&hole.bore)? + 2.0 * size_mm(&hole.wall)?))?;
    Some(length_mm(&hole.height)? + outside / 2.0)
}
