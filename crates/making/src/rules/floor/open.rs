//! A hole right through, drilled before the piece is parted.

use formulas::cutting::{THROUGH_TIP, point, through_tip};
use plant::part::{Feature, Form, Point};
use reckoning::quantity::{Length, MM};
use reckoning::{Verdict, Working};

use super::RULE;
use crate::rules::{Case, Seen, drawn, file_point, of_the_trade};
use crate::simulate::{Step, WITHIN_MM};

/// Full diameter beyond the end of the piece, mm.
const PAST_MM: f64 = 0.5;

pub(super) fn look(case: &Case<'_>, step: &Step<'_>, cut: &Feature) -> Option<Seen> {
    let id = step.operation.makes.as_deref()?;
    let whole = case.piece.shape.span().length();
    let (
        Form::Drilled { depth: asked, .. },
        Form::Drilled {
            diameter, depth, ..
        },
    ) = (&case.piece.shape.feature(id)?.form, &cut.form)
    else {
        return None;
    };
    let through = asked.mm() + WITHIN_MM >= whole.mm();
    let in_the_bar = step.before.span().length() >= whole + Length::from_mm(PAST_MM);
    if !through || !in_the_bar {
        return None;
    }
    let l = Length::from_mm(point(diameter.mm(), Point::DRILL_DEG));
    let (least, lines) = least(case, id, (whole, *diameter))?;
    let tip = *depth + l - step.proud;
    let reads = case.card.reads;
    let [shown, wanted, short] = [tip, least, least - tip].map(|l| reads.size(l));
    let says = format!(
        "row {} drills {id} right through to a tip of {shown}; {wanted} is",
        step.number
    );
    if tip.mm() + WITHIN_MM < least.mm() {
        let says = format!("{says} wanted, or a cone is left in the end");
        let seen = Seen::new(&RULE, Verdict::NotMet, id, says).with(lines);
        return Some(
            seen.blaming([step.place])
                .else_cured_by(format!("drill {short} deeper")),
        );
    }
    Some(Seen::new(&RULE, Verdict::Met, id, format!("{says} the least")).with(lines))
}

/// The least depth of the tip, with its sum.
fn least(case: &Case<'_>, id: &str, (whole, d): (Length, Length)) -> Option<(Length, Working)> {
    let past = Length::from_mm(PAST_MM);
    let past = of_the_trade(
        past,
        "full diameter beyond the end",
        "no cone is left in it",
    );
    let mut lines = Working::new();
    let (l_line, l) = file_point(&mut lines, &drawn(case, id, d))?;
    let least = through_tip(whole.mm(), PAST_MM, l.mm());
    let long = lines.know(
        "L",
        "length of the part",
        &MM,
        &drawn(case, "length", whole),
    );
    let beyond = lines.know("b", "full diameter beyond it", &MM, &past);
    lines
        .settled(&THROUGH_TIP, &[long, beyond, l_line], least)
        .ok()?;
    Some((Length::from_mm(least), lines))
}
