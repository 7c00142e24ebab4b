//! Rules of the vessel of a vertical boiler and its water.

use reckoning::quantity::Length;
use reckoning::{Finding, Verdict};

use super::list::{STANDS, WATER_LEG};
use super::{Held, limit, plate, room, said, words};
use crate::vertical::{Frame, Sizes, Upright};

/// Least width of the water leg, mm.
const LEG_MM: f64 = 5.0;

pub(super) fn findings(upright: &Upright) -> Vec<Finding> {
    let mut found = Vec::new();
    if let Some(frame) = &upright.drawn {
        found.push(stands(frame));
        let plates = [
            ("tube-plate.upper", &frame.upper),
            ("tube-plate.lower", &frame.lower),
        ];
        found.extend(plates.into_iter().filter_map(plate::flange));
        found.push(leg(frame));
        found.push(cover(&upright.sizes, frame));
        found.extend(working(&upright.sizes, frame));
    }
    found
}

fn stands(frame: &Frame) -> Finding {
    let mm = |v: f64| words(Length::from_mm(v));
    let (ring, crown, upper) = (frame.ring, frame.lower.low, frame.upper.low);
    let good = ring < crown && frame.lower.high() < upper;
    let says = format!(
        "Above the datum: top of the foundation ring {}, dry face of the lower tube plate {}, wet face of the upper tube plate {}.",
        mm(ring),
        mm(crown),
        mm(upper)
    );
    said(
        &STANDS,
        "barrel",
        if good { Verdict::Met } else { Verdict::NotMet },
        says,
    )
}

fn leg(frame: &Frame) -> Finding {
    Held {
        rule: &WATER_LEG,
        place: "firebox",
        provided: ("w", "the width of the water leg", frame.leg_known()),
        required: ("w_min", "least width", limit(LEG_MM)),
    }
    .judged()
}

fn cover(sizes: &Sizes, frame: &Frame) -> Finding {
    room::cover(
        "tube-plate.lower",
        &frame.crown_known(),
        sizes.lowest.as_ref(),
    )
}

fn working(sizes: &Sizes, frame: &Frame) -> Option<Finding> {
    let top = ("the wet face of the upper tube plate", frame.upper.low);
    let working = sizes.working.as_ref()?;
    Some(room::level(working, sizes.lowest.as_ref(), top))
}
