//! What the plan says of a horizontal boiler, read once, with what is missing noted.

use plan::Plan;
use plan::section::BushSeat;
use reckoning::Known;
use reckoning::quantity::{Angle, Length};

use crate::boiler::{End, PlateSizes, Walls, or_flush, plate};
use crate::known::{Reading, Round, shape};

/// The sizes of the pressure parts. What is `None` is missing from the plan.
#[derive(Clone, Debug)]
pub(crate) struct Sizes {
    pub(crate) barrel: Option<Round>,
    pub(crate) barrel_length: Option<Known<Length>>,
    pub(crate) flue: Option<Round>,
    pub(crate) below: Option<Known<Length>>,
    pub(crate) projection: Known<Length>,
    pub(crate) front: Option<PlateSizes>,
    pub(crate) back: Option<PlateSizes>,
    pub(crate) tubes: Option<TubeSizes>,
    pub(crate) working: Option<Known<Length>>,
    pub(crate) lowest: Option<Known<Length>>,
}

/// The cross tubes, where all of it is known; a count of nought wants nothing else.
#[derive(Clone, Debug)]
pub(crate) enum TubeSizes {
    /// A plain flue.
    Plain,
    /// Tubes.
    Across(Box<AcrossSizes>),
}

/// Cross tubes, all alike.
#[derive(Clone, Debug)]
pub(crate) struct AcrossSizes {
    pub(crate) count: u32,
    pub(crate) round: Round,
    pub(crate) first: Known<Length>,
    /// From one to the next; none where there is but one.
    pub(crate) spacing: Option<Known<Length>>,
    pub(crate) incline: Known<Angle>,
    /// Turned from the last; none where there is but one.
    pub(crate) turn: Option<Known<Angle>>,
    pub(crate) projection: Known<Length>,
}

impl Sizes {
    pub(crate) fn read(plan: &Plan, reading: &mut Reading) -> Self {
        let b = &plan.boiler;
        let barrel = (&b.barrel.outside, &b.barrel.bore, &b.barrel.wall);
        let flue = (&b.flue.outside, &b.flue.bore, &b.flue.wall);
        Self {
            barrel: Round::read(reading, barrel, "the barrel"),
            barrel_length: reading.size(&b.barrel.length, "the barrel"),
            flue: Round::read(reading, flue, "the flue")
                .filter(|_| !reading.taken_away(&b.flue.projection, "the flue")),
            below: reading.size(&b.flue.below, "the flue"),
            projection: or_flush(b.flue.projection.likely(), "the flue"),
            front: plate(reading, &b.end.front, End::Front),
            back: plate(reading, &b.end.back, End::Back),
            tubes: tubes(plan, reading),
            working: reading.number(&b.water_level.working, "the water space"),
            lowest: reading.number(&b.water_level.lowest, "the lowest water"),
        }
    }

    /// The walls in which bushes may stand.
    pub(crate) fn walls(&self) -> Walls {
        let plate = |plate: &Option<PlateSizes>| plate.as_ref().map(|p| p.thickness.clone());
        let barrel = self.barrel.as_ref().map(|r| r.wall.clone());
        vec![
            (BushSeat::Barrel, barrel),
            (BushSeat::FrontEnd, plate(&self.front)),
            (BushSeat::BackEnd, plate(&self.back)),
        ]
    }

    /// The cross tubes, where there are any and they are known.
    pub(crate) fn across(&self) -> Option<&AcrossSizes> {
        match &self.tubes {
            Some(TubeSizes::Across(across)) => Some(across),
            Some(TubeSizes::Plain) | None => None,
        }
    }
}

fn tubes(plan: &Plan, reading: &mut Reading) -> Option<TubeSizes> {
    let t = &plan.boiler.cross_tubes;
    let wanted = "the cross tubes";
    reading.want(&t.count, wanted);
    let count = t.count.value()?;
    if count == 0 {
        return Some(TubeSizes::Plain);
    }
    let round = (
        reading.size(&t.outside, wanted),
        reading.size(&t.wall, wanted),
    );
    let first = reading.size(&t.first, wanted);
    let incline = reading.number(&t.incline, wanted);
    let several = count > 1;
    let spacing = several.then(|| reading.size(&t.spacing, wanted));
    let turn = several.then(|| reading.number(&t.turn, wanted));
    if reading.taken_away(&t.projection, wanted) {
        return None;
    }
    let (outside, wall) = (round.0?, round.1?);
    let weakest = crate::known::weakest(&[&outside, &wall]);
    let of = format!("{} less twice {}", t.outside.path(), t.wall.path());
    let round = Round {
        bore: shape(outside.value - wall.value * 2.0, of, weakest),
        outside,
        wall,
    };
    Some(TubeSizes::Across(Box::new(AcrossSizes {
        count,
        round,
        first: first?,
        // Several tubes of which the spacing is missing are not known.
        spacing: known_where_asked(spacing)?,
        incline: incline?,
        turn: known_where_asked(turn)?,
        projection: or_flush(t.projection.likely(), "the ends of the cross tubes"),
    })))
}

/// What was not asked is no gap; what was asked and is missing is one.
fn known_where_asked<T>(asked: Option<Option<T>>) -> Option<Option<T>> {
    match asked {
        None => Some(None),
        Some(None) => None,
        Some(found) => Some(found),
    }
}
