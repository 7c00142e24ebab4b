//! The point of a drill leaves a floor in a blind hole, and passes the end of one right through.

use formulas::cutting::{POINT, THROUGH_TIP, point, through_tip};
use plant::part::{End, Feature, Form, Turned};
use reckoning::formula::Cite;
use reckoning::quantity::{Angle, DEGREE, Length, MM};
use reckoning::{Given, Known, Origin, Rule, Verdict, Working};

use super::{Case, Seen, at_worst_high, drawn, or_met};
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

/// Angle of the point of an ordinary twist drill.
const POINT_DEG: f64 = 118.0;
/// Full diameter beyond the end of a hole right through, mm.
const PAST_MM: f64 = 0.5;
/// Floor of a hole that holds no pressure: at least so much, and this share of the drill.
const FLOOR: (f64, f64) = (1.0, 0.3);

pub(super) fn look(case: &Case<'_>) -> Vec<Seen> {
    let found: Vec<Seen> = case
        .run
        .steps
        .iter()
        .filter_map(|s| seen(case, s))
        .collect();
    or_met(found, &RULE, "nothing is drilled", case)
}

/// A hole right through, drilled before the piece is parted: its full diameter must pass the end.
fn open(case: &Case<'_>, step: &Step<'_>, cut: &Feature) -> Option<Seen> {
    let Form::Drilled {
        diameter, depth, ..
    } = &cut.form
    else {
        return None;
    };
    let whole = case.piece.shape.span().length();
    let id = step.operation.makes.as_deref()?;
    let drawn_through = through(&case.piece.shape, &case.piece.shape.feature(id)?.form);
    if !drawn_through || step.before.span().length() < whole + Length::from_mm(PAST_MM) {
        return None;
    }
    let reads = case.card.reads;
    let l = point(diameter.mm(), POINT_DEG);
    let least = Length::from_mm(through_tip(whole.mm(), PAST_MM, l));
    let tip = *depth + Length::from_mm(l) - step.proud;
    let mut lines = Working::new();
    let inputs = [
        lines.know(
            "L",
            "length of the part",
            &MM,
            &drawn(case, "length", whole),
        ),
        lines.know(
            "b",
            "full diameter beyond it",
            &MM,
            &drawn(case, id, Length::from_mm(PAST_MM)),
        ),
        lines.know(
            "l",
            "length of the point",
            &MM,
            &drawn(case, id, Length::from_mm(l)),
        ),
    ];
    lines.settled(&THROUGH_TIP, &inputs, least.mm()).ok()?;
    let says = format!(
        "row {} drills {id} right through to a tip of {}",
        step.number,
        reads.size(tip)
    );
    let wanted = reads.size(least);
    if tip.mm() + WITHIN_MM < least.mm() {
        let says = format!("{says}; {wanted} is wanted, or a cone is left in the end");
        let seen = Seen::new(&RULE, Verdict::NotMet, id, says)
            .with(lines)
            .blaming([step.place]);
        return Some(seen.else_cured_by(format!("drill {} deeper", reads.size(least - tip))));
    }
    Some(
        Seen::new(
            &RULE,
            Verdict::Met,
            id,
            format!("{says}; {wanted} is the least"),
        )
        .with(lines),
    )
}

/// Whether a hole is drawn right through.
fn through(drawing: &Turned, form: &Form) -> bool {
    let Form::Drilled { depth, .. } = form else {
        return false;
    };
    *depth + Length::from_mm(WITHIN_MM) >= drawing.span().length()
}

/// A drilled hole as it came out, from its own end inwards.
struct Hole<'a> {
    id: &'a str,
    diameter: Length,
    /// Plane of its mouth and depth of its full diameter.
    mouth: Length,
    full: Length,
    /// From the tip to the far side of the metal that the drawing leaves there.
    floor: Length,
}

fn seen(case: &Case<'_>, step: &Step<'_>) -> Option<Seen> {
    if !matches!(step.operation.work, Work::Drill { .. }) {
        return None;
    }
    let cut = step.cut.as_ref()?;
    let Some(hole) = blind(&case.piece.shape, cut) else {
        return open(case, step, cut);
    };
    let reads = case.card.reads;
    let least = least(case, &hole);
    let working = working(case, &hole);
    let tip = hole.full + Length::from_mm(point(hole.diameter.mm(), POINT_DEG));
    let depth = format!(
        "row {} drills {} to a tip of {}",
        step.number,
        reads.size(hole.diameter),
        reads.size(tip)
    );
    let (verdict, says) = if hole.floor.mm() <= 0.0 {
        let out = reads.size(hole.floor * -1.0);
        (
            Verdict::NotMet,
            format!("{depth}, which breaks out of the back by {out}"),
        )
    } else if hole.floor < least {
        let says = format!(
            "{depth}, which leaves a floor of {}; {} is wanted",
            reads.size(hole.floor),
            reads.size(least)
        );
        match case.piece.service {
            Service::Pressure => (Verdict::NotMet, says),
            Service::Open => (Verdict::MetOnCondition, says),
        }
    } else {
        (
            Verdict::Met,
            format!(
                "{depth}, with a floor of {} behind it",
                reads.size(hole.floor)
            ),
        )
    };
    let mut found = Seen::new(&RULE, verdict, hole.id, says)
        .blaming([step.place])
        .with(working);
    found.margin = Some(hole.floor / least);
    if verdict == Verdict::Met {
        return Some(found);
    }
    let deepest = hole.full - (least - hole.floor);
    let cure = if deepest.mm() > 0.0 {
        format!(
            "drill row {} no deeper than {} at full diameter",
            step.number,
            reads.size(deepest)
        )
    } else {
        format!(
            "the piece is too short for this hole by {}",
            reads.size(deepest * -1.0)
        )
    };
    let found = found.else_cured_by(cure);
    Some(if verdict == Verdict::MetOnCondition {
        found.on_condition(format!(
            "at least {} of metal is left behind {}",
            reads.size(least),
            hole.id
        ))
    } else {
        found
    })
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
        mouth: *mouth,
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
    let d = lines.know("d", "drill", &MM, &drawn(case, hole.id, hole.diameter));
    let angle = Known {
        value: Angle::from_deg(POINT_DEG),
        given: Given::Chosen {
            between: "points of twist drills".to_owned(),
            reason: "the ordinary point".to_owned(),
            weakest: Origin::CommonPractice,
        },
    };
    let a = lines.know("a", "angle of the point", &DEGREE, &angle);
    lines.know(
        "t",
        "depth of the full diameter",
        &MM,
        &drawn(case, hole.id, hole.full),
    );
    lines.know("z", "mouth", &MM, &drawn(case, hole.id, hole.mouth));
    // A drill of no size is refused by the shape before it comes here.
    if lines.worked(&POINT, &[d, a]).is_err() {
        return Working::new();
    }
    lines
}
