//! Parting comes last in its setting, near the jaws, and leaves metal to face.

use plant::part::End;
use reckoning::formula::Cite;
use reckoning::quantity::Length;
use reckoning::{Rule, Verdict};

use super::{Case, Seen, or_met};
use crate::card::{Facing, Work};
use crate::simulate::{Step, WITHIN_MM};

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.part-last",
    sentence: "A piece is parted off when all else in its setting is done, close to the jaws, with metal left to face.",
    remedy: "Move the parting to the end of its setting.",
    cite: Cite {
        source: &formulas::sources::COMMON_PRACTICE,
        place: "parting off",
    },
};

/// Metal left on a parted face that is faced later, mm.
const TO_FACE_MM: f64 = 0.3;
/// Distance of the cut from the jaws: the diameter, and at least this, mm.
const FROM_JAWS_MM: f64 = 10.0;

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let mut found: Vec<Seen> = case
        .run
        .steps
        .iter()
        .filter_map(|s| lost(case, s))
        .collect();
    found.extend(case.run.steps.iter().filter_map(|s| parting(case, s)));
    or_met(found, &RULE, "nothing is parted off", case)
}

/// A row that comes after the piece has dropped.
fn lost(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    if step.held || matches!(step.operation.work, Work::Deburr { .. }) {
        return None;
    }
    let parted = case.run.steps.iter().find(|s| {
        s.place.setting == step.place.setting && matches!(s.operation.work, Work::Part { .. })
    })?;
    let what = step.what();
    let says = format!(
        "row {} ({}) comes after row {} has parted the piece off: nothing holds it",
        step.number,
        step.operation.work.word(),
        parted.number
    );
    Some(
        Seen::new(&RULE, Verdict::NotMet, what, says)
            .blaming([parted.place, step.place])
            .else_cured_by("hold the piece again in another setting"),
    )
}

fn parting(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    let setting = &case.card.settings[step.place.setting];
    let (Work::Part { .. }, Facing::End(end)) = (&step.operation.work, setting.facing) else {
        return None;
    };
    if !step.removed || !step.held {
        return None;
    }
    let (drawn, made) = (case.piece.shape.span(), step.after.span());
    let (left, from_jaws, cut) = match end {
        End::Low => (made.to - drawn.to, setting.grip.from - made.to, made.to),
        End::High => (
            drawn.from - made.from,
            made.from - setting.grip.to,
            made.from,
        ),
    };
    let least = Length::from_mm(FROM_JAWS_MM);
    let near = step
        .before
        .outside_at(cut)
        .filter(|d| *d > least)
        .unwrap_or(least);
    let faced = case.run.steps.iter().any(|s| {
        s.place > step.place && matches!(s.operation.work, Work::Face { end: e, .. } if e != end)
    });
    Some(judge(
        case,
        step,
        (left, from_jaws, near),
        faced.then_some(TO_FACE_MM),
    ))
}

/// Metal left on the face, distance from the jaws and the greatest that is good, and what must be
/// left where the face is faced later.
fn judge(
    case: &Case<'_>,
    step: &Step<'_>,
    (left, from_jaws, near): (Length, Length, Length),
    to_face_mm: Option<f64>,
) -> Seen {
    let row = step.number;
    let sizes = [left, left * -1.0, from_jaws, near].map(|l| case.card.reads.size(l));
    let [on, short, off, close] = &sizes;
    let new = |verdict, says: String| Seen::new(&RULE, verdict, "length", says);
    if left.mm() < -WITHIN_MM {
        let says = format!("row {row} parts the piece {short} too short");
        let seen = new(Verdict::NotMet, says).blaming([step.place]);
        seen.else_cured_by("part further from the face")
    } else if from_jaws > near {
        let says = format!("row {row} parts {off} from the jaws: the blade chatters or jams");
        let asked = format!("the cut of row {row} is at most {close} from the jaws");
        new(Verdict::MetOnCondition, says).on_condition(asked)
    } else if to_face_mm.is_some_and(|least| left.mm() < least - WITHIN_MM) {
        let seen = new(
            Verdict::MetOnCondition,
            format!("row {row} leaves {on} to face"),
        );
        seen.on_condition("the parted face comes out clean")
    } else {
        let says = format!("row {row} parts with {on} left to face, {off} from the jaws");
        new(Verdict::Met, says)
    }
}
