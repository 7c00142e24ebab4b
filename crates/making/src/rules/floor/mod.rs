//! The point of a drill leaves a floor in a blind hole, and passes the end of one right through.

mod open;

use formulas::cutting::point;
use plant::part::{End, Feature, Form, Point, Turned};
use reckoning::formula::Cite;
use reckoning::quantity::{Length, MM};
use reckoning::{Rule, Verdict, Working};

use super::{Case, Seen, at_worst_high, drawn, file_point, or_met};
use crate::card::Work;
use crate::piece::Service;
use crate::simulate::{Step, WITHIN_MM};

/// The rule.
pub(super) static RULE: Rule = Rule {
    id: "making.floor",
    sentence: "A blind hole keeps a floor of 1 mm or 0.3 of the drill, and the least wall under pressure; a hole right through passes the end at full diameter.",
    remedy: "Drill less deep, or leave more metal behind the hole.",
    cite: Cite {
        source: &formulas::sources::COMMON_PRACTICE,
        place: "floor of blind holes",
    },
};

/// Floor of a hole that holds no pressure: at least so much, and this share of the drill.
const FLOOR: (f64, f64) = (1.0, 0.3);

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let drilled = |s: &&Step<'_>| matches!(s.operation.work, Work::Drill { .. });
    let steps = case.run.steps.iter().filter(drilled);
    let found = steps.filter_map(|s| seen(case, s)).collect();
    or_met(found, &RULE, "nothing is drilled", case)
}

/// A drilled hole as it came out, from its own end inwards.
struct Hole<'a> {
    id: &'a str,
    diameter: Length,
    /// Depth of its full diameter.
    full: Length,
    /// From the tip to the far side of the metal that the drawing leaves there.
    floor: Length,
}

fn seen(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    let cut = step.cut.as_ref()?;
    let Some(hole) = blind(&case.piece.shape, cut) else {
        return open::look(case, step, cut);
    };
    let (floor, least) = (hole.floor, least(case, &hole));
    let (verdict, end) = judge(case, floor, least);
    let tip = hole.full + Length::from_mm(point(hole.diameter.mm(), Point::DRILL_DEG));
    let sizes = [hole.diameter, tip, least].map(|l| case.card.reads.size(l));
    let [drill, tip, wanted] = &sizes;
    let says = format!(
        "row {} drills {drill} to a tip of {tip}, {end}",
        step.number
    );
    let mut found = Seen::new(&RULE, verdict, hole.id, says).with(working(case, &hole));
    found.margin = Some(floor / least);
    let left = format!("at least {wanted} of metal is left behind {}", hole.id);
    let cure = shallower(case, step, hole.full - (least - floor));
    Some(match verdict {
        Verdict::Met => found,
        Verdict::MetOnCondition => found.on_condition(left).else_cured_by(cure),
        _ => found.blaming([step.place]).else_cured_by(cure),
    })
}

fn judge(case: &Case<'_>, floor: Length, least: Length) -> (Verdict, String) {
    let sizes = [floor, floor * -1.0, least].map(|l| case.card.reads.size(l));
    let [left, out, wanted] = &sizes;
    let thin = match case.piece.service {
        Service::Pressure => Verdict::NotMet,
        Service::Open => Verdict::MetOnCondition,
    };
    if floor.mm() <= 0.0 {
        let says = format!("which breaks out of the back by {out}");
        (Verdict::NotMet, says)
    } else if floor < least {
        (
            thin,
            format!("which leaves a floor of {left}; {wanted} is wanted"),
        )
    } else {
        (Verdict::Met, format!("with a floor of {left} behind it"))
    }
}

/// The cure by the greatest depth that leaves the floor.
fn shallower(case: &Case<'_>, step: &Step<'_>, deepest: Length) -> String {
    let (row, reads) = (step.number, case.card.reads);
    if deepest.mm() > 0.0 {
        format!(
            "drill row {row} no deeper than {} at full diameter",
            reads.size(deepest)
        )
    } else {
        format!(
            "the piece is too short for this hole by {}",
            reads.size(deepest * -1.0)
        )
    }
}

/// The hole that a cut drilled, if the drawing has solid metal on the axis inwards of its mouth.
fn blind<'a>(drawing: &Turned, cut: &'a Feature) -> Option<Hole<'a>> {
    let Form::Drilled {
        from,
        mouth,
        diameter,
        depth,
        point: end,
    } = &cut.form
    else {
        return None;
    };
    let inwards = |z: Length| match from {
        End::Low => z - *mouth,
        End::High => *mouth - z,
    };
    let far = last_solid(drawing, *from)?;
    let tip = *depth + end.length(*diameter);
    Some(Hole {
        id: &cut.id,
        diameter: *diameter,
        full: *depth,
        floor: inwards(far) - tip,
    })
}

/// The far side of the first solid stretch on the axis, coming from an end; none for a piece that
/// is open right through.
fn last_solid(drawing: &Turned, from: End) -> Option<Length> {
    let whole = drawing.span();
    let mut holes: Vec<(f64, f64)> = drawing
        .inside()
        .map(|p| (p.span.from.mm(), p.span.to.mm()))
        .collect();
    holes.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut solid = Vec::new();
    let mut at = whole.from.mm();
    for (low, high) in holes {
        if low > at + WITHIN_MM {
            solid.push((at, low));
        }
        at = at.max(high);
    }
    if whole.to.mm() > at + WITHIN_MM {
        solid.push((at, whole.to.mm()));
    }
    match from {
        End::Low => solid.first().map(|s| Length::from_mm(s.1)),
        End::High => solid.last().map(|s| Length::from_mm(s.0)),
    }
}

fn least(case: &Case<'_>, hole: &Hole<'_>) -> Length {
    let trade = Length::from_mm(FLOOR.0.max(FLOOR.1 * hole.diameter.mm()));
    let wall = at_worst_high(&case.piece.least_wall);
    match case.piece.service {
        Service::Pressure if wall > trade => wall,
        _ => trade,
    }
}

fn working(case: &Case<'_>, hole: &Hole<'_>) -> Working {
    let mut lines = Working::new();
    let size = |length| drawn(case, hole.id, length);
    lines.know("t", "depth of the full diameter", &MM, &size(hole.full));
    // A drill of no size is refused by the shape before it comes here.
    match file_point(&mut lines, &size(hole.diameter)) {
        Some(_) => lines,
        None => Working::new(),
    }
}
