//! Barrel and firebox: a tube within a tube.

use reckoning::Origin;

use super::At;
use crate::propose::choice::{Choice, mm, plain, text};
use crate::propose::stock::{Source, TubeSize};

/// Share of the outside of the firebox that may be out of round, as asked of the maker.
const OVALITY: f64 = 0.005;

pub(super) fn choice(at: &At<'_>) -> Option<Choice> {
    let (tube, room) = (&at.sizes.barrel, at.plan.room.width.typed());
    let between = room.map_or("tubes on hand and listed".to_owned(), |room| {
        format!(
            "tubes on hand and listed that go into the width of {} with their lagging",
            room.text
        )
    });
    Some(
        Choice::of("barrel")
            .set("boiler.barrel.outside", mm(tube.outside))
            .set("boiler.barrel.wall", mm(tube.wall))
            .set("boiler.barrel.seam", text("seamless"))
            .between(between)
            .because(
                format!(
                    "{}: the first, those on hand tried before the others and small before \
                     large, whose boiler makes the steam",
                    tube.words()
                ),
                origin(tube),
            ),
    )
}

pub(super) fn firebox(at: &At<'_>) -> Option<Choice> {
    let tube = &at.sizes.firebox;
    let ovality = (OVALITY * tube.outside * 10.0).ceil() / 10.0;
    Some(
        Choice::of("firebox")
            .set("boiler.firebox.outside", mm(tube.outside))
            .set("boiler.firebox.wall", mm(tube.wall))
            .set("boiler.firebox.ovality", mm(ovality))
            .set("boiler.firebox.seam", text("seamless"))
            .between("tubes that leave a water leg inside the barrel")
            .because(
                format!(
                    "{}: the widest of them that bears the pressure, for the grate is as wide; \
                     {} mm out of round is what the maker keeps it to",
                    tube.words(),
                    plain(ovality)
                ),
                origin(tube),
            ),
    )
}

/// A piece that lies there is as its owner measured it; a listed size is from memory.
fn origin(tube: &TubeSize) -> Origin {
    match tube.source {
        Source::OnHand(_) => Origin::Read,
        Source::Listed => Origin::FromMemory,
        Source::ToOrder => Origin::CommonPractice,
    }
}

pub(super) fn ring(at: &At<'_>) -> Option<Choice> {
    Some(
        Choice::of("foundation ring")
            .set("boiler.foundation-ring.depth", mm(at.sizes.ring))
            .between("depths of 8 to 20 mm")
            .because(
                "the least whose joints and whose bending are met",
                Origin::CommonPractice,
            ),
    )
}
