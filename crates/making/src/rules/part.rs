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
    let what = step
        .operation
        .makes
        .clone()
        .unwrap_or_else(|| step.operation.work.word().to_owned());
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
    let (Work::Part { at, .. }, Facing::End(end)) = (
        &step.operation.work,
        case.card.settings[step.place.setting].facing,
    ) else {
        return None;
    };
    if !step.removed || !step.held {
        return None;
    }
    let reads = case.card.reads;
    let drawn = case.piece.shape.span();
    let grip = case.card.settings[step.place.setting].grip;
    let (left, from_jaws) = match end {
        End::Low => (*at - drawn.to, grip.from - *at),
        End::High => (drawn.from - *at, *at - grip.to),
    };
    let number = step.number;
    let new =
        |verdict, says: String| Seen::new(&RULE, verdict, "length", says).blaming([step.place]);
    if left.mm() < -WITHIN_MM {
        let says = format!(
            "row {number} parts the piece {} too short",
            reads.size(left * -1.0)
        );
        return Some(new(Verdict::NotMet, says).else_cured_by("part further from the face"));
    }
    let far = Length::from_mm(FROM_JAWS_MM);
    let widest = step
        .before
        .outside_at(*at)
        .filter(|d| *d > far)
        .unwrap_or(far);
    if from_jaws > widest {
        let says = format!(
            "row {number} parts {} from the jaws: the blade chatters or jams",
            reads.size(from_jaws)
        );
        return Some(new(Verdict::MetOnCondition, says).on_condition(format!(
            "the cut of row {number} is at most {} from the jaws",
            reads.size(widest)
        )));
    }
    let faced = case.run.steps.iter().any(|s| {
        s.place > step.place && matches!(s.operation.work, Work::Face { end: e, .. } if e != end)
    });
    if faced && left.mm() < TO_FACE_MM - WITHIN_MM {
        let says = format!("row {number} leaves {} to face", reads.size(left));
        return Some(
            new(Verdict::MetOnCondition, says)
                .on_condition("the parted face comes out clean".to_owned()),
        );
    }
    let says = format!(
        "row {number} parts with {} left to face, {} from the jaws",
        reads.size(left),
        reads.size(from_jaws)
    );
    Some(new(Verdict::Met, says))
}
