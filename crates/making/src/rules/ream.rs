//! A reamed hole is drilled under its size, and deep enough for the lead of the reamer.

use plant::part::{End, Feature, Form, Turned};
use reckoning::formula::Cite;
use reckoning::quantity::Length;
use reckoning::{Rule, Verdict};

use super::{Case, Seen, each_step};
use crate::card::{Facing, Place, Work};
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
    each_step(case, &RULE, seen, "nothing is reamed")
}

fn seen(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    let facing = case.card.settings[step.place.setting].facing;
    let (Work::Ream { reamer, .. }, Facing::End(end)) = (&step.operation.work, facing) else {
        return None;
    };
    let cut = step.cut.as_ref()?;
    let span = cut.form.span()?;
    let mouth = match end {
        End::High => span.to - Length::from_mm(WITHIN_MM),
        End::Low => span.from,
    };
    let row = step.number;
    let Some(hole) = step.before.inside_at(mouth) else {
        let says = format!("row {row} reams where no hole is drilled");
        let seen = Seen::new(&RULE, Verdict::NotMet, cut.id.clone(), says);
        return Some(seen.blaming([step.place]).blaming(drills(case)));
    };
    let left = reamer.diameter - hole - Length::from_mm(OVERSIZE_MM);
    let says = format!(
        "row {row} reams {} in a hole of {}: {} is left to cut",
        reamer.name,
        case.card.reads.size(hole),
        case.card.reads.error(left)
    );
    let (verdict, cure) = judge(left, reamer.diameter);
    let seen = Seen::new(&RULE, verdict, cut.id.clone(), says);
    let gauged = format!("the bore gauges to its size after row {row}");
    Some(match verdict {
        Verdict::Met => lead(case, step, (cut, reamer.lead), seen),
        Verdict::MetOnCondition => seen.on_condition(gauged).else_cured_by(cure),
        _ => seen
            .blaming([step.place])
            .blaming(drills(case))
            .else_cured_by(cure),
    })
}

/// Rows that make holes: one of them may stand too late.
fn drills<'a>(case: &'a Case<'_>) -> impl Iterator<Item = Place> + 'a {
    let makes_holes =
        |s: &&Step<'_>| matches!(s.operation.work, Work::Drill { .. } | Work::Bore(_));
    case.run.steps.iter().filter(makes_holes).map(|s| s.place)
}

/// Whether the metal left on the diameter suits a reamer, and which drill suits it better.
fn judge(left: Length, reamer: Length) -> (Verdict, &'static str) {
    let (small, large, border) = MOST_MM;
    let most = if reamer.mm() > border { large } else { small };
    if left.mm() <= 0.0 {
        (Verdict::NotMet, "drill smaller")
    } else if left.mm() < LEAST_MM {
        (Verdict::MetOnCondition, "drill smaller: the reamer rubs")
    } else if left.mm() > most {
        (Verdict::MetOnCondition, "drill larger: the reamer chatters")
    } else {
        (Verdict::Met, "")
    }
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
