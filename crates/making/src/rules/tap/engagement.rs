//! Whether the thread is long enough to carry what its screw carries.

use formulas::thread::{ENGAGEMENT_LENGTH, STRESS_AREA, Thread, engagement_length, stress_area};
use reckoning::quantity::{Length, MM, ONE, Ratio};
use reckoning::{Given, Known, Origin, Verdict, Working};

use super::{RULE, Tapping};
use crate::piece::Service;
use crate::rules::{Case, Seen, drawn};
use crate::simulate::Step;

/// Full threads that a fitting under pressure holds by, at least.
const PITCHES: f64 = 4.0;

/// The length at which thread and screw of one metal are equally strong, with its sum.
struct Equal {
    length: Length,
    lines: Working,
}

/// A thread that is not known is told by the size of its hole, not here.
pub(super) fn look(
    case: &Case<'_>,
    step: &Step<'_>,
    tapping: &Tapping<'_>,
    hole: Length,
) -> Option<Seen> {
    let named = Thread::read(&tapping.thread.designation).ok()?;
    let equal = equal(case, tapping, &named, hole)?;
    let (length, reads) = (tapping.span.length(), case.card.reads);
    let threads = named.pitch * PITCHES;
    let least = if equal.length > threads {
        equal.length
    } else {
        threads
    };
    let says = format!(
        "row {} leaves {} of full thread: {} carries as much as a screw of the same metal, {} is \
         four threads",
        step.number,
        reads.size(length),
        reads.size(equal.length),
        reads.size(threads)
    );
    let verdict = match case.piece.service {
        _ if length >= least => Verdict::Met,
        Service::Pressure => Verdict::NotMet,
        Service::Open => Verdict::MetOnCondition,
    };
    let mut found = Seen::new(&RULE, verdict, tapping.id, says).with(equal.lines);
    found.margin = Some(length / least);
    let longer = format!("draw the thread {} longer", reads.size(least - length));
    let unloaded = format!("{} is not asked to hold what its screw holds", tapping.id);
    Some(match verdict {
        Verdict::Met => found,
        Verdict::MetOnCondition => found.on_condition(unloaded).else_cured_by(longer),
        _ => found.else_cured_by(longer),
    })
}

fn equal(case: &Case<'_>, tapping: &Tapping<'_>, named: &Thread, hole: Length) -> Option<Equal> {
    let form = named.series.form();
    let (d, p) = (named.major.mm(), named.pitch.mm());
    let (d_e, d_r) = (form.effective(d, p), form.root(d, p));
    let area = stress_area(d_e, d_r);
    let tangent = form.half_angle_tangent();
    let length = engagement_length(area, d_e, hole.mm(), p, tangent).ok()?;
    let half_angle = Known {
        value: Ratio::from_number(tangent),
        given: Given::Chosen {
            between: "forms of thread".to_owned(),
            reason: named.name.clone(),
            weakest: Origin::FromMemory,
        },
    };
    let mut lines = Working::new();
    let size = |length| drawn(case, tapping.id, length);
    let major = lines.know("D", "major diameter", &MM, &size(named.major));
    let pitch = lines.know("P", "pitch", &MM, &size(named.pitch));
    let bore = lines.know("K", "bore of the tapped hole", &MM, &size(hole));
    let half = lines.know("t", "tangent of half the thread angle", &ONE, &half_angle);
    let cards = form.cards();
    let effective = lines.settled(cards.effective, &[major, pitch], d_e).ok()?;
    let root = lines.settled(cards.root, &[major, pitch], d_r).ok()?;
    let screw = lines.settled(&STRESS_AREA, &[effective, root], area).ok()?;
    let inputs = [screw, effective, bore, pitch, half];
    lines.settled(&ENGAGEMENT_LENGTH, &inputs, length).ok()?;
    Some(Equal {
        length: Length::from_mm(length),
        lines,
    })
}
