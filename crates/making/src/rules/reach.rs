//! A row works on a side that can be reached in its setting.

use plant::part::End;
use reckoning::formula::Cite;
use reckoning::{Rule, Verdict};

use super::{Case, Seen, metal, or_met};
use crate::card::{Facing, Work};
use crate::simulate::Step;

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.reach",
    sentence: "Each row works on a side that its setting leaves open.",
    remedy: "Move the row to the setting that presents that side.",
    cite: Cite {
        source: &formulas::sources::COMMON_PRACTICE,
        place: "what a tool can reach",
    },
};

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let found = case
        .run
        .steps
        .iter()
        .filter_map(|s| seen(case, s))
        .collect();
    or_met(
        found,
        &RULE,
        "each row works on a side that its setting leaves open",
        case,
    )
}

fn seen(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    let facing = case.card.settings[step.place.setting].facing;
    let reached = match (&step.operation.work, facing) {
        (Work::Deburr { .. }, _) | (Work::CrossDrill { .. }, Facing::Side) => true,
        (Work::CrossDrill { .. }, Facing::End(_)) => false,
        (Work::Ream { .. } | Work::Tap { .. }, Facing::Side) => metal::made_before(case, step),
        (_, Facing::Side) => false,
        (work, Facing::End(open)) => end_of(work).is_none_or(|end| end == open),
    };
    if reached {
        return None;
    }
    let side = match (&step.operation.work, end_of(&step.operation.work)) {
        (Work::CrossDrill { .. }, _) => "the side of the piece lies in no drilling machine",
        (_, Some(End::Low)) => "the left end is not outward",
        (_, Some(End::High)) => "the right end is not outward",
        (_, None) => "the piece does not turn",
    };
    let what = step
        .operation
        .makes
        .clone()
        .unwrap_or_else(|| step.operation.work.word().to_owned());
    let says = format!(
        "row {} ({}) cannot be reached in setting {}: {side}",
        step.number,
        step.operation.work.word(),
        step.place.setting + 1
    );
    Some(
        Seen::new(&RULE, Verdict::NotMet, what, says)
            .blaming([step.place])
            .else_cured_by("add a setting that presents that side"),
    )
}

/// The end from which an operation works, where it must be one of them.
fn end_of(work: &Work) -> Option<End> {
    match work {
        Work::Face { end, .. }
        | Work::CentreDrill { end, .. }
        | Work::Drill { end, .. }
        | Work::Tap { end, .. } => Some(*end),
        _ => None,
    }
}
