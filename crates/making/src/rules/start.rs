//! A drill has a start on a faced end.

use plant::part::{End, Turned};
use reckoning::formula::Cite;
use reckoning::quantity::Length;
use reckoning::{Rule, Verdict};

use super::{Case, Seen, each_step};
use crate::card::{Operation, Work};
use crate::simulate::{Step, WITHIN_MM};

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.start",
    sentence: "A twist drill over 1 mm starts in a centre or a hole, on an end that is faced.",
    remedy: "Face, then centre-drill, then drill.",
    cite: Cite {
        source: &formulas::sources::COMMON_PRACTICE,
        place: "start of drilled holes; a drill without one wanders 0.01 to 0.02 mm in each millimetre",
    },
};

/// Drills up to this size start themselves, mm.
const STARTS_ITSELF_MM: f64 = 1.0;
/// Wander of a drill without a start, least and most, per depth.
const WANDER: (f64, f64) = (0.01, 0.02);
/// Mouth of the centre over the drill that follows: wider than its chisel, narrower than its lips.
pub(crate) const CENTRE_SHARE: f64 = 0.5;

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    each_step(
        case,
        &RULE,
        seen,
        "each drill starts in a centre on a faced end",
    )
}

fn seen(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    let Work::Drill { end, drill, .. } = &step.operation.work else {
        return None;
    };
    if drill.diameter.mm() <= STARTS_ITSELF_MM {
        None
    } else if !started(&step.before, *end) {
        Some(no_start(case, step)?)
    } else if step.proud.mm() > WITHIN_MM {
        Some(not_faced(case, step))
    } else {
        None
    }
}

fn no_start(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    let Work::Drill { end, drill, depth } = &step.operation.work else {
        return None;
    };
    let reads = case.card.reads;
    let says = format!(
        "row {} drills {} with no start: at {} deep it may lie {} to {} off the axis",
        step.number,
        drill.name,
        reads.size(*depth),
        reads.error(*depth * WANDER.0),
        reads.error(*depth * WANDER.1)
    );
    let centre = Operation::on_the_way(Work::CentreDrill {
        end: *end,
        mouth: drill.diameter * CENTRE_SHARE,
    });
    let seen = Seen::new(&RULE, Verdict::NotMet, step.what(), says).blaming([step.place]);
    Some(seen.blaming(centres(case, *end)).missing(centre))
}

fn not_faced(case: &Case<'_>, step: &Step<'_>) -> Seen {
    let (row, proud) = (step.number, case.card.reads.size(step.proud));
    let says =
        format!("row {row} drills into an end that is not faced: {proud} still stands proud");
    let flat =
        format!("the end is flat within 0.1 mm before row {row} and the depth allows for {proud}");
    Seen::new(&RULE, Verdict::MetOnCondition, step.what(), says).on_condition(flat)
}

/// Rows that centre-drill this end: they may stand too late.
fn centres<'a>(case: &'a Case<'_>, end: End) -> impl Iterator<Item = crate::card::Place> + 'a {
    case.run
        .steps
        .iter()
        .filter_map(move |s| match &s.operation.work {
            Work::CentreDrill { end: e, .. } if *e == end => Some(s.place),
            _ => None,
        })
}

/// Whether there is a hollow on the axis of an end.
fn started(shape: &Turned, end: End) -> bool {
    let a_little = Length::from_mm(WITHIN_MM);
    let at = match end {
        End::Low => shape.span().from,
        End::High => shape.span().to - a_little,
    };
    shape.inside_at(at).is_some_and(|d| d > a_little)
}
