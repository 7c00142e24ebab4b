//! What the plan says of a vertical boiler, read once, with what is missing noted.

use plan::Plan;
use plan::section::BushSeat;
use reckoning::Known;
use reckoning::quantity::Length;

use crate::boiler::{End, PlateSizes, Walls, or_flush, plate};
use crate::known::{Reading, Round};

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
            upper: plate(reading, &b.tube_plate.upper, End::Upper),
            lower: plate(reading, &b.tube_plate.lower, End::Lower),
            tube: tube(plan, reading)
                .filter(|_| !reading.taken_away(&b.tubes.projection, "the tubes")),
            projection: or_flush(b.tubes.projection.likely(), "the tubes"),
            working: reading.number(&b.water_level.working, "the water space"),
            lowest: reading.number(&b.water_level.lowest, "the lowest water"),
        }
    }
}

impl Sizes {
    /// The walls in which bushes may stand.
    pub(crate) fn walls(&self) -> Walls {
        let plate = |plate: &Option<PlateSizes>| plate.as_ref().map(|p| p.thickness.clone());
        vec![
            (
                BushSeat::Barrel,
                self.barrel.as_ref().map(|r| r.wall.clone()),
            ),
            (BushSeat::UpperTubePlate, plate(&self.upper)),
            (BushSeat::LowerTubePlate, plate(&self.lower)),
        ]
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
