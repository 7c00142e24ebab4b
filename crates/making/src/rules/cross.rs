//! A cross hole opens fully into its bore, leaves the far wall, and its burr is cleared.

use formulas::cutting::{CROSS_DEEPEST, CROSS_TIP, cross_deepest, cross_tip};
use plant::part::{CrossDepth, CrossHole, Feature, Finish, Form, Surface};
use reckoning::formula::Cite;
use reckoning::quantity::{Length, MM};
use reckoning::{Rule, Verdict, Working};

use super::{Case, Seen, drawn, file_point, or_met};
use crate::card::{Operation, Work};
use crate::simulate::{Step, WITHIN_MM};
use crate::words::Reads;

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
struct Bore<'a> {
    id: &'a str,
    fine: bool,
}

impl<'a> Bore<'a> {
    fn of(feature: &'a Feature) -> Option<Self> {
        let inside = match &feature.form {
            Form::Drilled { .. } => true,
            Form::Turned { surface, .. } | Form::Threaded { surface, .. } => {
                *surface == Surface::Inside
            }
            Form::Face { .. } | Form::Cross(_) | Form::Flats(_) => false,
        };
        let threaded = matches!(feature.form, Form::Threaded { .. });
        inside.then_some(Self {
            id: &feature.id,
            fine: threaded || feature.finish != Finish::Cut,
        })
    }
}

/// One answer for each bore that is opened; where a fine one is, the plain ones under it are not
/// asked.
fn burrs(case: &Case<'_>, step: &Step<'_>, hole: &CrossHole, id: &str) -> Vec<Seen> {
    let features = case.piece.shape.features().iter();
    let bores: Vec<Bore<'_>> = features
        .filter(|f| f.form.span().is_some_and(|s| s.holds(hole.z)))
        .filter_map(Bore::of)
        .collect();
    let any_fine = bores.iter().any(|b| b.fine);
    bores
        .iter()
        .filter(|b| b.fine || !any_fine)
        .map(|bore| {
            let steps = case.run.steps.iter();
            let later = steps
                .filter(|s| s.place > step.place)
                .find(|s| clears(s, bore));
            match later {
                Some(s) => {
                    let row = s.number;
                    let says = format!("the burr of {id} in {} is cleared by row {row}", bore.id);
                    Seen::new(&RULE, Verdict::Met, id, says)
                }
                None => left(case, step, bore, id),
            }
        })
        .collect()
}

/// Whether a row clears a burr in a bore: a fine bore wants its own tool again.
fn clears(step: &Step<'_>, bore: &Bore<'_>) -> bool {
    let own = step.operation.makes.as_deref() == Some(bore.id);
    match &step.operation.work {
        Work::Ream { .. } | Work::Tap { .. } | Work::Bore(_) => own,
        Work::Drill { .. } => own && !bore.fine,
        Work::Deburr { feature } => feature == bore.id && !bore.fine,
        _ => false,
    }
}

fn left(case: &Case<'_>, step: &Step<'_>, bore: &Bore<'_>, id: &str) -> Seen {
    let own = |s: &&Step<'_>| s.operation.makes.as_deref() == Some(bore.id);
    let before = case.run.steps.iter().filter(|s| s.place < step.place);
    let earlier: Vec<_> = before.filter(own).collect();
    let (harm, pass) = if bore.fine {
        let again = earlier.last().map(|s| (*s.operation).clone());
        (
            "burr stands in a finished bore and tears what runs in it",
            again,
        )
    } else {
        let feature = bore.id.to_owned();
        let deburr = Operation::on_the_way(Work::Deburr { feature });
        ("burr is left where it cannot be seen", Some(deburr))
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

/// How deep a tip may go, from the finished outside.
struct Room {
    least: Length,
    most: Length,
    /// Distance from the outside to the far wall of the bore.
    far: Length,
    lines: Working,
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
    let reads = case.card.reads;
    let Some(room) = room(case, hole, id) else {
        let says = format!("{id} is larger than the bore it enters");
        return Some(Seen::new(&RULE, Verdict::Unproved, id, says));
    };
    let finished = case.piece.shape.outside_at(hole.z)? / 2.0;
    let still_on = step.before.outside_at(hole.z)? / 2.0 - finished;
    let before = if still_on.mm() > WITHIN_MM {
        format!(
            " before the outside is turned down by {}",
            reads.size(still_on)
        )
    } else {
        String::new()
    };
    let (row, depth) = (step.number, reads.size(tip));
    // What the finished outside will show of a depth set on the outside as it stands.
    let (verdict, end) = room.judge(reads, tip - still_on);
    let says = format!("row {row} drills {id} to a tip of {depth}{before}{end}");
    let cure = format!(
        "set the tip to {} from the finished outside",
        room.range(reads)
    );
    let seen = Seen::new(&RULE, verdict, id, says).with(room.lines);
    let stop = format!("the stop of row {row} is set with the dial");
    Some(match verdict {
        Verdict::Met => seen,
        Verdict::MetOnCondition => seen.on_condition(stop).else_cured_by(cure),
        _ => seen.blaming([step.place]).else_cured_by(cure),
    })
}

impl Room {
    fn range(&self, reads: Reads) -> String {
        format!("{} to {}", reads.size(self.least), reads.size(self.most))
    }

    /// What a tip so deep does.
    fn judge(&self, reads: Reads, tip: Length) -> (Verdict, String) {
        let a_little = Length::from_mm(WITHIN_MM);
        if tip + a_little < self.least {
            let by = reads.size(self.least - tip);
            let says = format!(": it opens into the bore {by} short of its full width");
            (Verdict::NotMet, says)
        } else if tip > self.far {
            let by = reads.size(tip - self.far);
            (Verdict::NotMet, format!(": it marks the far wall by {by}"))
        } else if tip > self.most + a_little {
            let by = reads.size(self.far - tip);
            (
                Verdict::MetOnCondition,
                format!(": only {by} short of the far wall"),
            )
        } else {
            (Verdict::Met, format!("; {} does it", self.range(reads)))
        }
    }
}

fn room(case: &Case<'_>, hole: &CrossHole, id: &str) -> Option<Room> {
    let outside = case.piece.shape.outside_at(hole.z)? / 2.0;
    let bore = case.piece.shape.inside_at(hole.z)? / 2.0;
    let radius = hole.diameter / 2.0;
    let size = |length| drawn(case, id, length);
    let mut lines = Working::new();
    let (l, point) = file_point(&mut lines, &size(hole.diameter))?;
    let least = cross_tip(outside.mm(), bore.mm(), radius.mm(), point.mm()).ok()?;
    let most = cross_deepest(outside.mm(), bore.mm());
    let r_0 = lines.know("R_0", "radius of the outside", &MM, &size(outside));
    let r_b = lines.know("r_b", "radius of the bore", &MM, &size(bore));
    let r = lines.know("r", "radius of the drill", &MM, &size(radius));
    lines.settled(&CROSS_TIP, &[r_0, r_b, r, l], least).ok()?;
    lines.settled(&CROSS_DEEPEST, &[r_0, r_b], most).ok()?;
    Some(Room {
        least: Length::from_mm(least),
        most: Length::from_mm(most),
        far: outside + bore,
        lines,
    })
}
