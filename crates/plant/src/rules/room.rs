//! Rules that every form of boiler is held to: shapes, levels of the water, room.

use plan::{Entry, Plan};
use reckoning::quantity::{KG, Length, Quantity, show};
use reckoning::{Condition, Finding, Known, Verdict};

use super::list::{ROOM, SHAPE, WATER_COVERS_CROWN, WATER_LEVEL};
use super::{Held, limit, said, words};
use crate::boiler::{Built, masses};
use crate::known::{shape as off_shape, weakest};
use crate::part::NoShape;

/// Least cover of the crown at the lowest water, mm.
const COVER_MM: f64 = 10.0;

pub(super) fn shape((id, refused): &(String, NoShape)) -> Finding {
    said(&SHAPE, id, Verdict::NotMet, format!("No shape: {refused}."))
}

/// The lowest water over the crown of the fire.
pub(super) fn cover(place: &str, crown: &Known<Length>, lowest: Option<&Known<Length>>) -> Finding {
    let Some(lowest) = lowest else {
        let says = format!(
            "The crown stands {} above the datum; the lowest level is not given.",
            words(crown.value)
        );
        return said(&WATER_COVERS_CROWN, place, Verdict::Unproved, says);
    };
    let cover = off_shape(
        lowest.value - crown.value,
        "the lowest level less the height of the crown",
        weakest(&[crown, lowest]),
    );
    Held {
        rule: &WATER_COVERS_CROWN,
        place,
        provided: ("h", "the lowest water above the crown", cover),
        required: ("h_min", "least cover", limit(COVER_MM)),
    }
    .judged()
}

/// The working level, between the lowest and what stands at `top` above the water.
pub(super) fn level(
    working: &Known<Length>,
    lowest: Option<&Known<Length>>,
    (what, top): (&str, f64),
) -> Finding {
    let below = working.value.mm() < top;
    let verdict = match lowest {
        Some(lowest) if lowest.value < working.value && below => Verdict::Met,
        None if below => Verdict::Unproved,
        _ => Verdict::NotMet,
    };
    let says = format!(
        "The working level is {}, {what} {}.",
        words(working.value),
        words(Length::from_mm(top))
    );
    said(&WATER_LEVEL, "water-level", verdict, says)
}

pub(super) fn findings(plan: &Plan, built: &Built) -> Vec<Finding> {
    let mut found = Vec::new();
    if let Some(outline) = &built.outline {
        let room = &plan.room;
        let sizes = [
            (
                &room.height,
                "the height of the plant",
                outline.height.as_ref(),
            ),
            (
                &room.length,
                "the length of the plant",
                outline.length.as_ref(),
            ),
            (&room.width, "the width of the boiler", Some(&outline.width)),
        ];
        found.extend(sizes.into_iter().filter_map(|(entry, meaning, there)| {
            let (there, asked) = (there?, entry.known()?);
            Some(fits(entry.path(), meaning, (there, asked)))
        }));
    }
    let room = &plan.room;
    let gone = [
        limit_gone(&room.height),
        limit_gone(&room.length),
        limit_gone(&room.width),
        limit_gone(&room.mass),
    ];
    found.extend(gone.into_iter().flatten());
    found.extend(mass(plan, built));
    found
}

/// A limit that was entered once and taken away: whether the plant keeps it cannot be said.
fn limit_gone<Q: Quantity>(entry: &Entry<Q>) -> Option<Finding> {
    entry.is_emptied().then(|| {
        let says = "A limit was given here once and taken away; it is not known what it was.";
        said(&ROOM, entry.path(), Verdict::Unproved, says.to_owned())
    })
}

/// What is asked must not be less than what there is.
fn fits(field: &str, meaning: &str, (there, asked): (&Known<Length>, Known<Length>)) -> Finding {
    let mut finding = Held {
        rule: &ROOM,
        place: field,
        provided: ("a", "the room allowed", asked),
        required: ("b", meaning, there.clone()),
    }
    .judged();
    if weakest(&[there]) >= reckoning::Origin::CommonPractice && finding.verdict == Verdict::Met {
        finding.verdict = Verdict::MetOnCondition;
        finding.conditions = super::conditions(finding.verdict, meaning, there.value);
    }
    finding
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
