//! A row works on a side that can be reached in its setting.

use plant::part::{End, Form, Surface};
use reckoning::formula::Cite;
use reckoning::quantity::Length;
use reckoning::{Rule, Verdict};

use super::{Case, Seen, each_step, metal};
use crate::card::{Facing, Work};
use crate::simulate::{Step, WITHIN_MM};

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

/// Greatest width of a groove that a narrow tool cuts behind a shoulder, mm.
pub(crate) const GROOVE_MM: f64 = 3.0;

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    each_step(
        case,
        &RULE,
        seen,
        "each row works on a side that its setting leaves open",
    )
}

fn seen(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    let facing = case.card.settings[step.place.setting].facing;
    let (row, word) = (step.number, step.operation.work.word());
    let setting = step.place.setting + 1;
    let why = hindered(case, step, facing)?;
    let says = format!("row {row} ({word}) cannot be reached in setting {setting}: {why}");
    Some(
        Seen::new(&RULE, Verdict::NotMet, step.what(), says)
            .blaming([step.place])
            .else_cured_by("add a setting that presents that side"),
    )
}

/// What stands between the tool and its work.
fn hindered(case: &Case<'_>, step: &Step<'_>, facing: Facing) -> Option<&'static str> {
    let work = &step.operation.work;
    match (work, facing) {
        (Work::Deburr { .. }, _) | (Work::CrossDrill { .. }, Facing::Side) => None,
        (Work::CrossDrill { .. }, Facing::End(_)) => {
            Some("the side of the piece lies under no drilling machine")
        }
        (Work::Ream { .. } | Work::Tap { .. }, Facing::Side) if metal::made_before(case, step) => {
            None
        }
        (_, Facing::Side) => Some("the piece does not turn"),
        (work, Facing::End(open)) => match end_of(work) {
            Some(End::Low) if open == End::High => Some("the left end is not outward"),
            Some(End::High) if open == End::Low => Some("the right end is not outward"),
            Some(_) => None,
            None => behind(step, open).then_some("wider metal stands in front of it"),
        },
    }
}

/// Whether a cut on the outside lies behind wider metal; a groove does, and a narrow tool goes in.
fn behind(step: &Step<'_>, open: End) -> bool {
    let Some(Form::Turned {
        surface: Surface::Outside,
        span,
        from,
        to,
    }) = step.cut.as_ref().map(|f| &f.form)
    else {
        return false;
    };
    let wide = if from > to { *from } else { *to };
    let whole = step.before.span();
    let way = whole.way_out(*span, open);
    let groove = span.length().mm() <= GROOVE_MM;
    let a_little = Length::from_mm(WITHIN_MM);
    let wider = |d: Length| d > wide + a_little;
    let mut in_front = step
        .before
        .outside()
        .filter(|p| p.span.shared(way).is_some());
    !groove && in_front.any(|p| wider(p.from) || wider(p.to))
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
