//! What the plan says of a vertical boiler, read once, with what is missing noted.

use plan::Plan;
use plan::section::{FlangeSide, TubePlate};
use reckoning::Known;
use reckoning::quantity::Length;

use super::plate::{FlangeSizes, PlateSizes};
use crate::known::{Reading, Round, chosen};
use crate::part::Stands;

/// Which of the two tube plates.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Which {
    Upper,
    Lower,
}

/// The sizes of the pressure parts. What is `None` is missing from the plan.
#[derive(Clone, Debug)]
pub(crate) struct Sizes {
    pub(crate) barrel: Option<Round>,
    pub(crate) barrel_length: Option<Known<Length>>,
    pub(crate) firebox: Option<Round>,
    pub(crate) firebox_height: Option<Known<Length>>,
    pub(crate) ring_depth: Option<Known<Length>>,
    pub(crate) ring_set_in: Known<Length>,
    pub(crate) firehole: Option<Round>,
    pub(crate) firehole_height: Option<Known<Length>>,
    pub(crate) upper: Option<PlateSizes>,
    pub(crate) lower: Option<PlateSizes>,
    pub(crate) tube: Option<Round>,
    pub(crate) projection: Known<Length>,
    pub(crate) working: Option<Known<Length>>,
    pub(crate) lowest: Option<Known<Length>>,
}

impl Sizes {
    pub(crate) fn read(plan: &Plan, reading: &mut Reading) -> Self {
        let b = &plan.boiler;
        let barrel = (&b.barrel.outside, &b.barrel.bore, &b.barrel.wall);
        let firebox = (&b.firebox.outside, &b.firebox.bore, &b.firebox.wall);
        // A boiler may do without a firehole; nothing of it is wanted until it is named.
        let hole = &b.firehole;
        let named = hole.bore.get().is_some() || hole.outside.get().is_some();
        Self {
            barrel: Round::read(reading, barrel, "the barrel"),
            barrel_length: reading.size(&b.barrel.length, "the barrel"),
            firebox: Round::read(reading, firebox, "the firebox"),
            firebox_height: reading.size(&b.firebox.height, "the firebox"),
            ring_depth: reading.size(&b.foundation_ring.depth, "the foundation ring"),
            ring_set_in: or_flush(b.foundation_ring.set_in.likely(), "the foundation ring"),
            firehole: named
                .then(|| {
                    Round::read(
                        reading,
                        (&hole.outside, &hole.bore, &hole.wall),
                        "the firehole",
                    )
                })
                .flatten(),
            firehole_height: named
                .then(|| reading.number(&hole.height, "the firehole"))
                .flatten(),
            upper: plate(reading, &b.tube_plate.upper, Which::Upper),
            lower: plate(reading, &b.tube_plate.lower, Which::Lower),
            tube: tube(plan, reading),
            projection: or_flush(b.tubes.projection.likely(), "the tubes"),
            working: reading.number(&b.water_level.working, "the water space"),
            lowest: reading.number(&b.water_level.lowest, "the lowest water"),
        }
    }
}

fn tube(plan: &Plan, reading: &mut Reading) -> Option<Round> {
    let t = &plan.boiler.tubes;
    let outside = reading.size(&t.outside, "the fire tubes")?;
    let wall = reading.size(&t.wall, "the fire tubes")?;
    let weakest = crate::known::weakest(&[&outside, &wall]);
    let of = format!("{} less twice {}", t.outside.path(), t.wall.path());
    Some(Round {
        bore: crate::known::shape(outside.value - wall.value * 2.0, of, weakest),
        outside,
        wall,
    })
}

fn or_flush(given: Option<Known<Length>>, what: &'static str) -> Known<Length> {
    given.unwrap_or_else(|| {
        chosen(
            Length::from_mm(0.0),
            "how far it is set in or reaches out",
            format!("nothing is said: {what} taken as flush"),
        )
    })
}

fn plate(reading: &mut Reading, plate: &TubePlate, which: Which) -> Option<PlateSizes> {
    let wanted = match which {
        Which::Upper => "the upper tube plate",
        Which::Lower => "the lower tube plate",
    };
    let thickness = reading.size(&plate.thickness, wanted)?;
    let height = reading.size(&plate.flange_height, wanted)?;
    let flange = if height.value.mm() > 0.0 {
        let inside_radius = reading.size(&plate.inside_radius, wanted)?;
        Some(FlangeSizes {
            stands: side(reading, plate, which, wanted),
            inside_radius,
            height,
        })
    } else {
        None
    };
    let set_in = plate
        .set_in
        .likely()
        .unwrap_or_else(|| set_in(which, &thickness, flange.as_ref()));
    Some(PlateSizes {
        thickness,
        flange,
        set_in,
    })
}

/// Which way the flange stands; where nothing is said, away from the water, where its joint can be
/// fed and seen.
fn side(
    reading: &mut Reading,
    plate: &TubePlate,
    which: Which,
    wanted: &'static str,
) -> Known<Stands> {
    let entry = &plate.flange;
    reading.want(entry, wanted);
    match entry.typed() {
        Some(typed) => Known {
            value: stands(which, typed.value),
            given: reckoning::Given::Plan {
                field: entry.path().to_owned(),
                typed: typed.text.clone(),
            },
        },
        None => chosen(
            stands(which, FlangeSide::Outward),
            "the side of the flange",
            "nothing is said: away from the water, where its joint can be fed and seen",
        ),
    }
}

/// The upper plate has the water below it, the lower plate above.
fn stands(which: Which, side: FlangeSide) -> Stands {
    match (which, side) {
        (Which::Upper, FlangeSide::Inward) | (Which::Lower, FlangeSide::Outward) => Stands::Down,
        (Which::Upper, FlangeSide::Outward) | (Which::Lower, FlangeSide::Inward) => Stands::Up,
    }
}

/// Where nothing is said, the plate stands so that neither it nor its flange comes out of the end
/// of the tube more than its own thickness: a flange that points into the tube leaves the dry face
/// flush, one that points out of it ends flush.
fn set_in(which: Which, thickness: &Known<Length>, flange: Option<&FlangeSizes>) -> Known<Length> {
    // Both tubes end upwards.
    match flange.filter(|f| f.stands.value == Stands::Up) {
        Some(f) => chosen(
            match which {
                // The dry face of the upper plate is the one from which its flange rises.
                Which::Upper => f.height.value - thickness.value,
                Which::Lower => f.height.value,
            },
            "how far the plate is set in",
            "nothing is said: the end of its flange taken as flush with the end of the tube",
        ),
        None => chosen(
            Length::from_mm(0.0),
            "how far the plate is set in",
            "nothing is said: its dry face taken as flush with the end of the tube",
        ),
    }
}
