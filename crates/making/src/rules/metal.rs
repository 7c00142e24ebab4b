//! A row takes metal that is there.

use reckoning::formula::Cite;
use reckoning::{Rule, Verdict};

use super::{Case, Seen, or_met};
use crate::card::{Facing, Work};
use crate::simulate::Step;

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.metal",
    sentence: "Each row takes away metal that is still there.",
    remedy: "Strike the row out, or put it before the row that took its metal.",
    cite: Cite {
        source: &formulas::sources::DERIVED,
        place: "the shape before and after the row",
    },
};

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let found = case
        .run
        .steps
        .iter()
        .filter(|s| !s.removed && !may_cut_air(case, s))
        .map(|s| seen(s))
        .collect();
    or_met(found, &RULE, "each row takes metal", case)
}

/// Deburring, and passing a reamer or tap by hand through a hole again, take only burrs.
fn may_cut_air(case: &Case<'_>, step: &Step<'_>) -> bool {
    let by_hand = case.card.settings[step.place.setting].facing == Facing::Side;
    match step.operation.work {
        Work::Deburr { .. } => true,
        Work::Ream { .. } | Work::Tap { .. } => by_hand && made_before(case, step),
        _ => false,
    }
}

/// Whether an earlier row has made the same feature.
pub(super) fn made_before(case: &Case<'_>, step: &Step<'_>) -> bool {
    case.run
        .steps
        .iter()
        .take_while(|s| s.place < step.place)
        .any(|s| {
            s.removed && s.operation.makes.is_some() && s.operation.makes == step.operation.makes
        })
}

fn seen(step: &Step<'_>) -> Seen {
    let what = step.what();
    let why = step
        .refused
        .as_ref()
        .map_or_else(|| "the metal is not there".to_owned(), ToString::to_string);
    let says = format!(
        "row {} ({}) cuts nothing: {why}",
        step.number,
        step.operation.work.word()
    );
    let mut seen = Seen::new(&RULE, Verdict::NotMet, what, says)
        .blaming([step.place])
        .else_cured_by(format!("strike row {} out", step.number));
    seen.idle = true;
    seen
}
