//! Whether the features of a fitting make one piece, and are asked what they can do.

use plan::Row;
use plan::section::{Bore, CrossHole, CrossReach, Fitting, Step};
use plant::fitting::{Fault, Fitted};
use plant::part::{self, Form, Span, Turned};
use reckoning::Finding;
use reckoning::quantity::{Length, show};

use super::rules::{REFERS, SHAPE, THREAD, against};

/// Sizes nearer than this are one, mm.
const SAME_MM: f64 = 1e-6;
/// A blank for a die may be so much under or over the major diameter, mm (common practice: 0.05
/// to 0.10 under).
const BLANK_MM: f64 = 0.15;

fn size(length: Length) -> String {
    show::quantity(length.m(), &reckoning::quantity::MM, 4)
}

fn place(fitting: &Fitting) -> String {
    format!("fitting.{}", fitting.called())
}

/// What is wrong with the drawing of a fitting.
pub(super) fn findings(fitting: &Fitting, made: &Fitted) -> Vec<Finding> {
    let mut found: Vec<Finding> = made.faults.iter().map(|f| fault(fitting, f)).collect();
    for step in &fitting.steps {
        found.extend(on_step(fitting, step, made));
    }
    // Of a part with a gap it is not known yet whether it falls apart.
    if let Some(shape) = made.shape.as_ref().filter(|_| made.gaps.is_empty()) {
        found.extend(whole(fitting, shape));
    }
    found
}

/// What could not be drawn.
fn fault(fitting: &Fitting, fault: &Fault) -> Finding {
    let says = fault.to_string();
    match fault {
        Fault::Shape(_) => against(&SHAPE, &place(fitting), says, SHAPE.remedy),
        Fault::Thread { field, .. } => against(&THREAD, field, says, THREAD.remedy),
        Fault::Alone { field, .. } => against(&REFERS, field, says, REFERS.remedy),
        Fault::Stranger { field, known, .. } => {
            let remedy = format!("name one of {}", known.join(", "));
            against(&REFERS, field, says, remedy)
        }
        Fault::Twice { field, .. } => {
            let remedy = "put all that must run true with it into one demand";
            against(&REFERS, field, says, remedy)
        }
    }
}

/// What is wrong with a step and what is cut on it.
fn on_step(fitting: &Fitting, step: &Step, made: &Fitted) -> Vec<Finding> {
    let id = step.called();
    let Some(Form::Turned { span, from, .. }) = made.feature(&id).map(|f| &f.form) else {
        return Vec::new();
    };
    let cylinder = (*span, *from);
    let mut found = Vec::new();
    found.extend(wider(fitting, step, *from));
    let thread = made.feature(&format!("{id}-thread"));
    if let Some(Form::Threaded { span, thread, .. }) = thread.map(|f| &f.form) {
        found.extend(thread_on(step, cylinder, (thread, span.length())));
    }
    if let Some(chamfered) = step.chamfer.get() {
        found.extend(chamfer(step, cylinder, chamfered.drawn.value));
    }
    found
}

/// A step wider than its bar.
fn wider(fitting: &Fitting, step: &Step, diameter: Length) -> Option<Finding> {
    let bar = fitting.bar.get()?.drawn.value;
    (bar < diameter).then(|| {
        let says = format!(
            "{} is {} and the bar is {}",
            step.called(),
            size(diameter),
            size(bar)
        );
        let remedy = format!("take a bar of {} or more", size(diameter));
        against(&SHAPE, step.diameter.path(), says, remedy)
    })
}

/// A thread that is longer than its step, or of another size.
fn thread_on(
    step: &Step,
    (span, diameter): (Span, Length),
    (thread, full): (&part::Thread, Length),
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
fn chamfer(step: &Step, (span, diameter): (Span, Length), chamfer: Length) -> Option<Finding> {
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
fn whole(fitting: &Fitting, made: &Turned) -> Vec<Finding> {
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
        found.push(against(&SHAPE, &place(fitting), says, remedy));
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
fn thread_in(bore: &Bore, made: &Turned) -> Option<Finding> {
    let id = format!("{}-thread", bore.called());
    let feature = made.feature(&id)?;
    let Form::Threaded { thread, span, .. } = &feature.form else {
        return None;
    };
    let hole = made.feature(&bore.called())?;
    let diameter = hole.form.bore()?;
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
fn crossing(row: &CrossHole, made: &Turned) -> Option<Finding> {
    let Form::Cross(hole) = &made.feature(&row.called())?.form else {
        return None;
    };
    let part::CrossHole {
        z: at,
        diameter,
        offset,
        ..
    } = *hole;
    let Some(outside) = made.outside_at(at) else {
        let says = format!("{} lies outside the part", size(at));
        let remedy = "measure from the left end of the part";
        return Some(against(&SHAPE, row.at.path(), says, remedy));
    };
    if offset.mm() + diameter.mm() / 2.0 >= outside.mm() / 2.0 {
        let says = format!(
            "a hole of {} breaks out of the side of {}",
            size(diameter),
            size(outside)
        );
        let remedy = "make the hole smaller or bring it nearer to the axis";
        return Some(against(&SHAPE, row.diameter.path(), says, remedy));
    }
    let into = row.reach.value() == Some(CrossReach::IntoBore);
    (into && made.inside_at(at).is_none()).then(|| {
        let says = format!("there is no bore at {} from the left end", size(at));
        let remedy = "move the hole to the bore, or make the bore deeper";
        against(&SHAPE, row.reach.path(), says, remedy)
    })
}
