//! Whether the features of a fitting make one piece.

use plan::section::{Fitting, Step};
use plant::part::{Form, Span, Surface, Thread, Turned};
use reckoning::Finding;
use reckoning::quantity::{Length, show};

use super::rules::{SHAPE, THREAD, against};
use super::workshop::name;

/// Sizes nearer than this are one, mm.
const SAME_MM: f64 = 1e-6;
/// A blank for a die may be so much under or over the major diameter, mm (common practice: 0.05
/// to 0.10 under).
const BLANK_MM: f64 = 0.15;

fn size(length: Length) -> String {
    show::quantity(length.m(), &reckoning::quantity::MM, 4)
}

/// A step wider than its bar.
pub(super) fn wider(step: &Step, diameter: Length, bar: Length) -> Option<Finding> {
    let says = format!(
        "{} is {} and the bar is {}",
        name(&step.id),
        size(diameter),
        size(bar)
    );
    let remedy = format!("take a bar of {} or more", size(diameter));
    Some(against(&SHAPE, step.diameter.path(), says, remedy))
}

/// A thread that is longer than its step, or of another size.
pub(super) fn thread_on(
    step: &Step,
    (span, diameter): (Span, Length),
    (thread, full): (&Thread, Length),
) -> Vec<Finding> {
    let mut found = Vec::new();
    if (thread.major - diameter).mm().abs() > BLANK_MM {
        let says = format!(
            "{} is cut on a step of {}; its major diameter is {}",
            thread.designation,
            size(diameter),
            size(thread.major)
        );
        let remedy = format!("turn the step to {}", size(thread.major));
        found.push(against(&THREAD, step.thread.path(), says, remedy));
    }
    if full.mm() > span.length().mm() + SAME_MM {
        let says = format!(
            "{} of full thread are asked on a step of {}",
            size(full),
            size(span.length())
        );
        let remedy = "make the step longer or the thread shorter";
        found.push(against(&SHAPE, step.thread_length.path(), says, remedy));
    }
    found
}

/// A chamfer that takes the whole step.
pub(super) fn chamfer(
    step: &Step,
    (span, diameter): (Span, Length),
    chamfer: Length,
) -> Option<Finding> {
    let most = if span.length() < diameter / 2.0 {
        span.length()
    } else {
        diameter / 2.0
    };
    (chamfer >= most).then(|| {
        let says = format!("a chamfer of {} takes the whole step", size(chamfer));
        let remedy = format!("make it less than {}", size(most));
        against(&SHAPE, step.chamfer.path(), says, remedy)
    })
}

/// What is wrong with the whole.
pub(super) fn faults(fitting: &Fitting, made: &Turned) -> Vec<Finding> {
    let place = format!("fitting.{}", name(&fitting.id));
    let mut found = Vec::new();
    let whole: Length = fitting
        .steps
        .iter()
        .filter_map(|s| s.length.get())
        .map(|size| size.drawn.value)
        .sum();
    let short = (whole - made.span().length()).mm().abs() > SAME_MM;
    if short || made.bodies().len() != 1 {
        let says = "a bore is as wide as the outside: the piece falls apart";
        let remedy = "make the bore smaller or the outside larger";
        found.push(against(&SHAPE, &place, says, remedy));
    }
    for bore in &fitting.bores {
        let depth = bore.depth.get().map(|size| size.drawn.value);
        if let Some(depth) = depth.filter(|d| d.mm() > whole.mm() + SAME_MM) {
            let says = format!("{} deep in a part of {}", size(depth), size(whole));
            let remedy = "leave the depth out of a bore right through";
            found.push(against(&SHAPE, bore.depth.path(), says, remedy));
        }
        found.extend(thread_in(bore, made));
    }
    for row in &fitting.cross_holes {
        found.extend(crossing(row, made));
    }
    found
}

/// A thread inside that is longer than its hole, or whose hole is as wide as it.
fn thread_in(bore: &plan::section::Bore, made: &Turned) -> Option<Finding> {
    let id = format!("{}-thread", name(&bore.id));
    let feature = made.feature(&id)?;
    let Form::Threaded { thread, span, .. } = &feature.form else {
        return None;
    };
    let hole = made.feature(&name(&bore.id))?;
    let diameter = match &hole.form {
        Form::Drilled { diameter, .. } => *diameter,
        Form::Turned {
            surface: Surface::Inside,
            from,
            ..
        } => *from,
        _ => return None,
    };
    if diameter >= thread.major {
        let says = format!(
            "{} is cut in a hole of {}, as wide as itself",
            thread.designation,
            size(diameter)
        );
        let remedy = "leave the diameter out: the tapping drill is chosen";
        return Some(against(&THREAD, bore.diameter.path(), says, remedy));
    }
    let inside = hole.form.span().is_some_and(|h| h.covers(*span));
    (!inside).then(|| {
        let says = format!(
            "{} of full thread do not lie in its hole",
            size(span.length())
        );
        let remedy = "drill the hole deeper or make the thread shorter";
        against(&SHAPE, bore.thread_length.path(), says, remedy)
    })
}

/// A cross hole beside the part, or into a bore that is not there.
fn crossing(row: &plan::section::CrossHole, made: &Turned) -> Option<Finding> {
    let at = row.at.get()?.drawn.value;
    let Some(outside) = made.outside_at(at) else {
        let says = format!("{} lies outside the part", size(at));
        let remedy = "measure from the left end of the part";
        return Some(against(&SHAPE, row.at.path(), says, remedy));
    };
    let (diameter, offset) = (
        row.diameter.get()?.drawn.value,
        row.offset.value().unwrap_or(Length::from_mm(0.0)),
    );
    if offset.mm() + diameter.mm() / 2.0 >= outside.mm() / 2.0 {
        let says = format!(
            "a hole of {} breaks out of the side of {}",
            size(diameter),
            size(outside)
        );
        let remedy = "make the hole smaller or bring it nearer to the axis";
        return Some(against(&SHAPE, row.diameter.path(), says, remedy));
    }
    let into = row.reach.value() == Some(plan::section::CrossReach::IntoBore);
    (into && made.inside_at(at).is_none()).then(|| {
        let says = format!("there is no bore at {} from the left end", size(at));
        let remedy = "move the hole to the bore, or make the bore deeper";
        against(&SHAPE, row.reach.path(), says, remedy)
    })
}
