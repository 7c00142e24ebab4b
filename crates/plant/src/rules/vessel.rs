//! Rules of the vessel, its water, and its room.

use plan::Plan;
use reckoning::quantity::{KG, Length, Quantity, show};
use reckoning::{Condition, Finding, Known, Verdict};

use super::list::{FLANGE, ROOM, SHAPE, STANDS, WATER_COVERS_CROWN, WATER_LEG, WATER_LEVEL};
use super::{Held, limit, said, words};
use crate::known::{shape as off_shape, weakest};
use crate::part::NoShape;
use crate::vertical::{Built, Frame, Sizes, masses};

/// Least width of the water leg, mm.
const LEG_MM: f64 = 5.0;
/// Least cover of the crown at the lowest water, mm.
const COVER_MM: f64 = 10.0;

pub(super) fn shape((id, refused): &(String, NoShape)) -> Finding {
    said(&SHAPE, id, Verdict::NotMet, format!("No shape: {refused}."))
}

pub(super) fn findings(plan: &Plan, built: &Built) -> Vec<Finding> {
    let mut found = Vec::new();
    if let Some(frame) = &built.drawn {
        found.push(stands(frame));
        found.extend(flanges(frame));
        found.push(leg(frame));
        found.extend(levels(built, frame));
    }
    found.extend(room(plan, built));
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

fn flanges(frame: &Frame) -> Vec<Finding> {
    [
        ("tube-plate.upper", &frame.upper),
        ("tube-plate.lower", &frame.lower),
    ]
    .into_iter()
    .filter_map(|(id, plate)| {
        plate.flange?;
        let lap = plate.lap();
        let verdict = if lap > 0.0 {
            Verdict::Met
        } else {
            Verdict::NotMet
        };
        let says = format!(
            "The straight of the flange is {} high.",
            words(Length::from_mm(lap))
        );
        Some(said(&FLANGE, id, verdict, says))
    })
    .collect()
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

fn levels(built: &Built, frame: &Frame) -> Vec<Finding> {
    let Some(sizes) = &built.sizes else {
        return Vec::new();
    };
    let mut found = vec![cover(sizes, frame)];
    found.extend(working(sizes, frame));
    found
}

fn cover(sizes: &Sizes, frame: &Frame) -> Finding {
    let crown = Length::from_mm(frame.crown());
    let Some(lowest) = &sizes.lowest else {
        let says = format!(
            "The crown stands {} above the datum; the lowest level is not given.",
            words(crown)
        );
        return said(
            &WATER_COVERS_CROWN,
            "tube-plate.lower",
            Verdict::Unproved,
            says,
        );
    };
    let cover = off_shape(
        lowest.value - crown,
        "the lowest level less the height of the crown",
        frame.weakest.max(lowest.given.origin()),
    );
    Held {
        rule: &WATER_COVERS_CROWN,
        place: "tube-plate.lower",
        provided: ("h", "the lowest water above the crown", cover),
        required: ("h_min", "least cover", limit(COVER_MM)),
    }
    .judged()
}

fn working(sizes: &Sizes, frame: &Frame) -> Option<Finding> {
    let working = sizes.working.as_ref()?;
    let below = working.value.mm() < frame.upper.low;
    let verdict = match &sizes.lowest {
        Some(lowest) if lowest.value < working.value && below => Verdict::Met,
        None if below => Verdict::Unproved,
        _ => Verdict::NotMet,
    };
    let says = format!(
        "The working level is {}, the wet face of the upper tube plate {}.",
        words(working.value),
        words(Length::from_mm(frame.upper.low))
    );
    Some(said(&WATER_LEVEL, "water-level", verdict, says))
}

fn room(plan: &Plan, built: &Built) -> Vec<Finding> {
    let mut found = Vec::new();
    let held = |field: &str, meaning: &str, there: &Known<Length>, asked: Known<Length>| {
        // What is asked must not be less than what there is.
        let mut finding = Held {
            rule: &ROOM,
            place: field,
            provided: ("a", "the room allowed", asked),
            required: ("b", meaning, there.clone()),
        }
        .judged();
        if weakest(&[there]) >= reckoning::Origin::CommonPractice && finding.verdict == Verdict::Met
        {
            finding.verdict = Verdict::MetOnCondition;
            finding.conditions = super::conditions(finding.verdict, meaning, there.value);
        }
        finding
    };
    if let Some(outline) = &built.outline {
        if let (Some(there), Some(asked)) = (&outline.height, plan.room.height.known()) {
            found.push(held(
                plan.room.height.path(),
                "the height of the plant",
                there,
                asked,
            ));
        }
        if let Some(asked) = plan.room.width.known() {
            found.push(held(
                plan.room.width.path(),
                "the width of the boiler",
                &outline.width,
                asked,
            ));
        }
    }
    found.extend(mass(plan, built));
    found
}

/// Grate, chimney, lagging and fittings on the boiler are not in the sum, so a sum below the limit
/// is met only when it is weighed.
fn mass(plan: &Plan, built: &Built) -> Option<Finding> {
    let asked = plan.room.mass.value()?;
    let listed = masses(built);
    let metal: reckoning::quantity::Mass = listed.iter().map(|(_, m)| m.value).sum();
    let missing = built.parts.len() - listed.len();
    let over = metal > asked;
    let shown = |mass: reckoning::quantity::Mass| show::quantity(mass.si(), &KG, 3);
    let says = format!(
        "The metal of {} parts is {}, {missing} parts without a known metal left out; allowed are {} in steam.",
        listed.len(),
        shown(metal),
        shown(asked)
    );
    let mut finding = said(
        &ROOM,
        plan.room.mass.path(),
        if over {
            Verdict::NotMet
        } else {
            Verdict::MetOnCondition
        },
        says,
    );
    if !over {
        finding.conditions.push(Condition {
            says: format!("The plant in steam, weighed, is at most {}.", shown(asked)),
            field: None,
            bound: None,
        });
    }
    Some(finding)
}
