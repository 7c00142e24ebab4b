//! A tapped hole has the right drill under it and room for the lead of the tap.

mod depth;
mod engagement;
mod size;

use formulas::thread::TapLead;
use plant::part::{End, Form, Span, Surface, Turned};
use reckoning::formula::Cite;
use reckoning::quantity::Length;
use reckoning::{Rule, Verdict};

use super::{Case, Seen, or_met};
use crate::card::Work;
use crate::simulate::{Step, WITHIN_MM};

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.tap",
    sentence: "A hole is drilled for its tap, neither tight nor shallow, and deep enough for the lead and a pitch.",
    remedy: "Drill the hole first, to the size and depth that the tap asks.",
    cite: Cite {
        source: &formulas::sources::COMMON_PRACTICE,
        place: "tapping drills and blind tapped holes",
    },
};

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let found = case.run.steps.iter().flat_map(|s| seen(case, s)).collect();
    or_met(found, &RULE, "nothing is tapped", case)
}

/// A thread about to be tapped.
struct Tapping<'a> {
    id: &'a str,
    span: Span,
    thread: &'a plant::part::Thread,
    end: End,
    tap: TapLead,
}

fn seen(case: &Case<'_>, step: &Step<'_>) -> Vec<Seen> {
    let Work::Tap { end, tap, .. } = &step.operation.work else {
        return Vec::new();
    };
    let Some(cut) = &step.cut else {
        return Vec::new();
    };
    let Form::Threaded {
        surface: Surface::Inside,
        span,
        thread,
    } = &cut.form
    else {
        let says = format!("row {} taps what is not an inside thread", step.number);
        return vec![Seen::new(&RULE, Verdict::NotMet, cut.id.clone(), says).blaming([step.place])];
    };
    if !step.removed {
        return Vec::new();
    }
    let tapping = Tapping {
        id: &cut.id,
        span: *span,
        thread,
        end: *end,
        tap: *tap,
    };
    match least_bore(&step.before, *span) {
        None => vec![no_hole(case, step, &tapping)],
        Some(hole) => [size::look, depth::look, engagement::look]
            .iter()
            .filter_map(|look| look(case, step, &tapping, hole))
            .collect(),
    }
}

fn no_hole(case: &Case<'_>, step: &Step<'_>, tapping: &Tapping<'_>) -> Seen {
    let says = format!(
        "row {} taps {} where no hole is drilled over the whole of it",
        step.number, tapping.thread.designation
    );
    let drills = case
        .run
        .steps
        .iter()
        .filter(|s| matches!(s.operation.work, Work::Drill { .. } | Work::Bore(_)))
        .map(|s| s.place);
    Seen::new(&RULE, Verdict::NotMet, tapping.id, says)
        .blaming([step.place])
        .blaming(drills)
}

/// The least bore over a stretch; none where some of it is solid.
fn least_bore(shape: &Turned, span: Span) -> Option<Length> {
    let pieces: Vec<_> = shape
        .inside()
        .filter_map(|p| p.span.shared(span).map(|s| (s, p)))
        .collect();
    let covered: Length = pieces.iter().map(|(s, _)| s.length()).sum();
    if (covered - span.length()).mm().abs() > WITHIN_MM {
        return None;
    }
    let bore = pieces
        .iter()
        .flat_map(|(s, p)| {
            let at = |z: Length| p.from + (p.to - p.from) * ((z - p.span.from) / p.span.length());
            [at(s.from), at(s.to)]
        })
        .map(Length::mm)
        .fold(f64::INFINITY, f64::min);
    (bore > WITHIN_MM).then(|| Length::from_mm(bore))
}
