//! A reamed hole is drilled under its size, and deep enough for the lead of the reamer.

use plant::part::{End, Feature, Form, Turned};
use reckoning::formula::Cite;
use reckoning::quantity::Length;
use reckoning::{Rule, Verdict};

use super::{Case, Seen, or_met};
use crate::card::{Facing, Work};
use crate::simulate::{Step, WITHIN_MM};

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.ream",
    sentence: "A hole to be reamed is drilled a little under its size, and beyond it by the lead of the reamer.",
    remedy: "Drill first, 0.1 to 0.3 mm under the size of the reamer.",
    cite: Cite {
        source: &formulas::sources::COMMON_PRACTICE,
        place: "metal left for a reamer; a hole comes out about 0.05 mm over its drill",
    },
};

/// How much larger than its drill a hole comes out, mm.
pub(crate) const OVERSIZE_MM: f64 = 0.05;
/// Least metal on the diameter that a reamer cuts without rubbing, mm.
const LEAST_MM: f64 = 0.03;
/// Most metal on the diameter for a reamer, mm, below and above the size that divides them.
const MOST_MM: (f64, f64, f64) = (0.3, 0.5, 20.0);

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let found = case
        .run
        .steps
        .iter()
        .filter_map(|s| seen(case, s))
        .collect();
    or_met(found, &RULE, "nothing is reamed", case)
}

fn seen(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    let Work::Ream { reamer, .. } = &step.operation.work else {
        return None;
    };
    let facing = case.card.settings[step.place.setting].facing;
    if facing == Facing::Side {
        return None;
    }
    let cut = step.cut.as_ref()?;
    let span = cut.form.span()?;
    let reads = case.card.reads;
    let id = cut.id.clone();
    let mouth = match facing {
        Facing::End(End::High) => span.to - Length::from_mm(WITHIN_MM),
        _ => span.from,
    };
    let drills = case
        .run
        .steps
        .iter()
        .filter(|s| matches!(s.operation.work, Work::Drill { .. } | Work::Bore(_)))
        .map(|s| s.place);
    let Some(hole) = step.before.inside_at(mouth) else {
        let says = format!("row {} reams where no hole is drilled", step.number);
        return Some(
            Seen::new(&RULE, Verdict::NotMet, id, says)
                .blaming([step.place])
                .blaming(drills),
        );
    };
    let left = reamer.diameter - hole - Length::from_mm(OVERSIZE_MM);
    let says = format!(
        "row {} reams {} in a hole of {}: {} is left to cut",
        step.number,
        reamer.name,
        reads.size(hole),
        reads.error(left)
    );
    let most = Length::from_mm(if reamer.diameter.mm() > MOST_MM.2 {
        MOST_MM.1
    } else {
        MOST_MM.0
    });
    let (verdict, cure) = if left.mm() <= 0.0 {
        (Verdict::NotMet, "drill smaller")
    } else if left.mm() < LEAST_MM {
        (Verdict::MetOnCondition, "drill smaller: the reamer rubs")
    } else if left > most {
        (Verdict::MetOnCondition, "drill larger: the reamer chatters")
    } else {
        return Some(lead(
            case,
            step,
            (cut, reamer.lead),
            Seen::new(&RULE, Verdict::Met, id, says),
        ));
    };
    let seen = Seen::new(&RULE, verdict, id, says)
        .blaming([step.place])
        .blaming(drills)
        .else_cured_by(cure);
    Some(match verdict {
        Verdict::MetOnCondition => seen.on_condition(format!(
            "the bore gauges to its size after row {}",
            step.number
        )),
        _ => seen,
    })
}

/// Whether the hole is as deep as it is reamed, with room for the lead of the reamer beyond.
fn lead(case: &Case<'_>, step: &Step<'_>, (cut, lead): (&Feature, Length), met: Seen) -> Seen {
    let Form::Drilled { from, depth, .. } = &cut.form else {
        return met;
    };
    let reads = case.card.reads;
    let full = drilled_to(&step.before, cut);
    if full.mm() + 0.01 < depth.mm() {
        let says = format!(
            "row {} reams to {} and the hole is {} deep: the reamer bottoms {} short",
            step.number,
            reads.size(*depth),
            reads.size(full),
            reads.size(*depth - full)
        );
        let cure = format!("drill {} deeper", reads.size(*depth - full));
        return Seen::new(&RULE, Verdict::NotMet, met.place, says)
            .blaming([step.place])
            .else_cured_by(cure);
    }
    let wanted = lead + Length::from_mm(1.0);
    if open_beyond(&case.piece.shape, *from, *depth) {
        return met;
    }
    let short = if wanted < *depth { wanted } else { *depth };
    let full = *depth - short;
    let says = format!(
        "{}; its lead of {} leaves the last {} of {} under size",
        met.says,
        reads.size(lead),
        reads.size(short),
        reads.size(*depth)
    );
    Seen::new(&RULE, Verdict::MetOnCondition, met.place, says)
        .blaming([step.place])
        .on_condition(format!(
            "{} of full size is enough, or the last of it is finished with a short-lead reamer or a half-round bit",
            reads.size(full)
        ))
        .else_cured_by(format!("drill {} beyond the reamed length", reads.size(wanted)))
}

/// How deep a hole is at its full diameter, from its mouth.
fn drilled_to(shape: &Turned, cut: &Feature) -> Length {
    let Form::Drilled { from, mouth, .. } = &cut.form else {
        return Length::from_mm(0.0);
    };
    let inwards = |z: Length| match from {
        End::Low => (z - *mouth).mm(),
        End::High => (*mouth - z).mm(),
    };
    let plain = shape
        .inside()
        .filter(|p| (p.from - p.to).mm().abs() < WITHIN_MM);
    let deepest = plain
        .map(|p| inwards(p.span.from).max(inwards(p.span.to)))
        .fold(0.0, f64::max);
    Length::from_mm(deepest)
}

/// Whether the drawing is open at the far end of a hole: a blind hole has the depth drawn and no
/// more for the lead of a reamer.
fn open_beyond(drawing: &Turned, from: End, depth: Length) -> bool {
    let whole = drawing.span();
    let far = match from {
        End::Low => whole.to - Length::from_mm(WITHIN_MM),
        End::High => whole.from,
    };
    depth >= whole.length() || drawing.inside_at(far).is_some()
}
