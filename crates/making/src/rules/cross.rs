//! A cross hole opens fully into its bore, leaves the far wall, and its burr is cleared.

use formulas::cutting::{CROSS_DEEPEST, CROSS_TIP, cross_deepest, cross_tip};
use plant::part::{CrossDepth, CrossHole, Finish, Form, Point, Surface, TipAt};
use reckoning::formula::Cite;
use reckoning::quantity::{Length, MM};
use reckoning::{Rule, Verdict, Working};

use super::{Case, Seen, drawn, or_met};
use crate::card::{Operation, Work};
use crate::simulate::{Step, WITHIN_MM};

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.cross-burr",
    sentence: "A cross hole opens fully, spares the far wall, and is followed by the last pass through its bore.",
    remedy: "Cross-drill before the last ream or tap, or pass it through again by hand.",
    cite: Cite {
        source: &formulas::sources::COMMON_PRACTICE,
        place: "cross holes into a finished bore",
    },
};

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let found = case.run.steps.iter().flat_map(|s| seen(case, s)).collect();
    or_met(found, &RULE, "no cross hole is drilled", case)
}

fn seen(case: &Case<'_>, step: &Step<'_>) -> Vec<Seen> {
    let (Work::CrossDrill { hole, tip }, Some(cut)) = (&step.operation.work, &step.cut) else {
        return Vec::new();
    };
    if !step.removed {
        return Vec::new();
    }
    let mut found = burrs(case, step, hole, &cut.id);
    found.extend(tip.and_then(|tip| depth(case, step, hole, (&cut.id, tip))));
    found
}

/// A bore of the drawing into which the cross hole opens.
struct Bore {
    id: String,
    fine: bool,
}

fn bores(case: &Case<'_>, hole: &CrossHole) -> Vec<Bore> {
    case.piece
        .shape
        .features()
        .iter()
        .filter(|f| f.form.span().is_some_and(|s| s.holds(hole.z)))
        .filter_map(|f| {
            let inside = match &f.form {
                Form::Drilled { .. } => true,
                Form::Turned { surface, .. } | Form::Threaded { surface, .. } => {
                    *surface == Surface::Inside
                }
                _ => false,
            };
            let fine = f.finish != Finish::Cut || matches!(f.form, Form::Threaded { .. });
            inside.then(|| Bore {
                id: f.id.clone(),
                fine,
            })
        })
        .collect()
}

fn burrs(case: &Case<'_>, step: &Step<'_>, hole: &CrossHole, id: &str) -> Vec<Seen> {
    let bores = bores(case, hole);
    let any_fine = bores.iter().any(|b| b.fine);
    bores
        .into_iter()
        .filter(|b| b.fine || !any_fine)
        .map(|bore| {
            let later = case
                .run
                .steps
                .iter()
                .find(|s| s.place > step.place && clears(s, &bore));
            match later {
                Some(s) => {
                    let says = format!(
                        "the burr of {id} in {} is cleared by row {}",
                        bore.id, s.number
                    );
                    Seen::new(&RULE, Verdict::Met, id, says)
                }
                None => left(case, step, &bore, id),
            }
        })
        .collect()
}

/// Whether a row clears a burr in a bore: a fine bore wants its own tool again.
fn clears(step: &Step<'_>, bore: &Bore) -> bool {
    let own = step.operation.makes.as_deref() == Some(bore.id.as_str());
    match &step.operation.work {
        Work::Ream { .. } | Work::Tap { .. } | Work::Bore(_) => own,
        Work::Drill { .. } => own && !bore.fine,
        Work::Deburr { feature } => *feature == bore.id && !bore.fine,
        _ => false,
    }
}

fn left(case: &Case<'_>, step: &Step<'_>, bore: &Bore, id: &str) -> Seen {
    let earlier: Vec<_> = case
        .run
        .steps
        .iter()
        .filter(|s| s.place < step.place && s.operation.makes.as_deref() == Some(bore.id.as_str()))
        .collect();
    let (harm, pass) = if bore.fine {
        let again = earlier.last().map(|s| (*s.operation).clone());
        (
            "burr stands in a finished bore and tears what runs in it",
            again,
        )
    } else {
        let work = Work::Deburr {
            feature: bore.id.clone(),
        };
        (
            "burr is left where it cannot be seen",
            Some(Operation::on_the_way(work)),
        )
    };
    let says = format!(
        "row {} drills {id} into {} and no later row passes through it: a {harm}",
        step.number, bore.id
    );
    let mut seen = Seen::new(&RULE, Verdict::NotMet, id, says)
        .blaming(earlier.iter().map(|s| s.place))
        .blaming([step.place]);
    seen.missing.extend(pass);
    seen
}

fn depth(
    case: &Case<'_>,
    step: &Step<'_>,
    hole: &CrossHole,
    (id, tip): (&str, Length),
) -> Option<Seen> {
    if hole.depth != CrossDepth::NearWall {
        return None;
    }
    let finished = &case.piece.shape;
    let reads = case.card.reads;
    let (outside, bore) = (
        finished.outside_at(hole.z)? / 2.0,
        finished.inside_at(hole.z)? / 2.0,
    );
    let stands = step.before.outside_at(hole.z)? / 2.0;
    let radius = hole.diameter / 2.0;
    let point = Point::drill().length(hole.diameter);
    // What the finished outside will show of a depth set on the outside as it stands.
    let shown = tip - (stands - outside);
    let Ok(least) = cross_tip(outside.mm(), bore.mm(), radius.mm(), point.mm()) else {
        let says = format!("{id} is larger than the bore it enters");
        return Some(Seen::new(&RULE, Verdict::Unproved, id, says));
    };
    let most = cross_deepest(outside.mm(), bore.mm());
    let mut lines = Working::new();
    let r_0 = lines.know(
        "R_0",
        "radius of the outside",
        &MM,
        &drawn(case, id, outside),
    );
    let r_b = lines.know("r_b", "radius of the bore", &MM, &drawn(case, id, bore));
    let r = lines.know("r", "radius of the drill", &MM, &drawn(case, id, radius));
    let l = lines.know("l", "length of the point", &MM, &drawn(case, id, point));
    let filed = lines.settled(&CROSS_TIP, &[r_0, r_b, r, l], least).is_ok()
        && lines.settled(&CROSS_DEEPEST, &[r_0, r_b], most).is_ok();
    if !filed {
        return None;
    }
    let before = if (stands - outside).mm() > WITHIN_MM {
        format!(
            " before the outside is turned down by {}",
            reads.size(stands - outside)
        )
    } else {
        String::new()
    };
    let range = format!(
        "{} to {}",
        reads.size(Length::from_mm(least)),
        reads.size(Length::from_mm(most))
    );
    let stood = format!(
        "row {} drills {id} to a tip of {}{before}",
        step.number,
        reads.size(tip)
    );
    let (verdict, says) = if shown.mm() < least - WITHIN_MM {
        let by = reads.size(Length::from_mm(least) - shown);
        (
            Verdict::NotMet,
            format!("{stood}: it opens into the bore {by} short of its full width"),
        )
    } else if let Some(TipAt::FarWall(_) | TipAt::Out(_)) =
        finished.tip(&sunk(hole, outside - shown))
    {
        let by = reads.size(shown - outside - bore);
        (
            Verdict::NotMet,
            format!("{stood}: it marks the far wall by {by}"),
        )
    } else if shown.mm() > most + WITHIN_MM {
        let says = format!("{stood}: less than 0.3 mm short of the far wall");
        let seen = Seen::new(&RULE, Verdict::MetOnCondition, id, says).with(lines);
        return Some(seen.on_condition(format!(
            "the stop of row {} is set to the dial",
            step.number
        )));
    } else {
        (Verdict::Met, format!("{stood}; {range} does it"))
    };
    let seen = Seen::new(&RULE, verdict, id, says)
        .with(lines)
        .blaming([step.place]);
    Some(match verdict {
        Verdict::Met => seen,
        _ => seen.else_cured_by(format!("set the tip to {range} from the finished outside")),
    })
}

/// The hole with its tip at a distance from the plane of the axis.
fn sunk(hole: &CrossHole, tip: Length) -> CrossHole {
    CrossHole {
        depth: CrossDepth::Blind {
            bottom: tip + Point::drill().length(hole.diameter),
            point: Point::drill(),
        },
        ..*hole
    }
}
