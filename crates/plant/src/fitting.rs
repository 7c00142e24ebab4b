//! The turned parts that a plan describes feature by feature.
//!
//! A part runs along its axis from 0 at the left end. Its features keep the ids of the plan; a
//! thread on a step or in a bore is called `<id>-thread`, a chamfer `<id>-chamfer`.

use plan::Entry;
use plan::section::{Bore, BoreKind, Coaxial, CrossHole, CrossReach, End, Fitting, Step};
use reckoning::quantity::{Angle, Length};
use reckoning::{Size, Tolerance};

use crate::known::Reading;
use crate::part::{
    self, Bar, CrossDepth, Feature, Finish, Form, NoShape, Point, Span, Surface, Turned,
};
use crate::thread;

const WANTED: &str = "the shape of a turned part";

/// The shape of a fitting; none where a size of it is missing, which is noted.
pub(crate) fn turned(fitting: &Fitting, reading: &mut Reading) -> Option<Result<Turned, NoShape>> {
    let bar = reading.size(&fitting.bar, WANTED)?.value;
    let (mut features, length) = steps(&fitting.steps, reading)?;
    for bore in &fitting.bores {
        features.extend(inside(bore, length, reading)?);
    }
    for hole in &fitting.cross_holes {
        features.push(across(hole, reading)?);
    }
    for group in &fitting.coaxial {
        run_true(group, &mut features);
    }
    let whole = Span {
        from: Length::from_mm(0.0),
        to: length,
    };
    Some(Turned::finished(Bar::Round(bar), whole, &features))
}

/// The features of the outside, and the length of all steps together.
fn steps(steps: &[Step], reading: &mut Reading) -> Option<(Vec<Feature>, Length)> {
    if steps.is_empty() {
        reading.miss("fitting.step", WANTED);
    }
    let sizes: Option<Vec<(Length, Length)>> = steps
        .iter()
        .map(|s| {
            let diameter = reading.size(&s.diameter, WANTED)?.value;
            Some((diameter, reading.size(&s.length, WANTED)?.value))
        })
        .collect();
    let sizes = sizes.filter(|sizes| !sizes.is_empty())?;
    let mut features = Vec::new();
    let mut reached = Length::from_mm(0.0);
    for (i, step) in steps.iter().enumerate() {
        let span = Span {
            from: reached,
            to: reached + sizes[i].1,
        };
        features.extend(outside(
            step,
            span,
            free_end(&sizes, i),
            sizes[i].0,
            reading,
        )?);
        reached = span.to;
    }
    Some((features, reached))
}

/// The end of a step at which no larger step stands.
fn free_end(sizes: &[(Length, Length)], i: usize) -> part::End {
    let larger = |j: Option<usize>| {
        j.and_then(|j| sizes.get(j))
            .is_some_and(|s| s.0 > sizes[i].0)
    };
    let first = i == 0;
    let last = i + 1 == sizes.len();
    if first && (!last || larger(Some(i + 1))) {
        part::End::Low
    } else if last || larger(i.checked_sub(1)) {
        part::End::High
    } else {
        part::End::Low
    }
}

fn id(entry: &Entry<String>, reading: &mut Reading) -> Option<String> {
    reading.want(entry, WANTED);
    entry.get().cloned()
}

fn outside(
    step: &Step,
    span: Span,
    free: part::End,
    diameter: Length,
    reading: &mut Reading,
) -> Option<Vec<Feature>> {
    let id = id(&step.id, reading)?;
    let cylinder = Form::cylinder(Surface::Outside, span, diameter);
    let mut features = vec![toleranced(Feature::new(&id, cylinder), &step.diameter)];
    if let Some((thread, _)) = thread::named(&step.thread, reading) {
        let length = reading.size(&step.thread_length, WANTED)?.value;
        let form = Form::Threaded {
            surface: Surface::Outside,
            span: from_end(span, free, length),
            thread,
        };
        features.push(Feature::new(format!("{id}-thread"), form));
    }
    if let Some(chamfer) = step.chamfer.likely().filter(|c| c.value.mm() > 0.0) {
        let small = diameter - chamfer.value * 2.0;
        let (from, to) = match free {
            part::End::Low => (small, diameter),
            part::End::High => (diameter, small),
        };
        let form = Form::Turned {
            surface: Surface::Outside,
            span: from_end(span, free, chamfer.value),
            from,
            to,
        };
        features.push(Feature::new(format!("{id}-chamfer"), form));
    }
    Some(features)
}

fn inside(bore: &Bore, length: Length, reading: &mut Reading) -> Option<Vec<Feature>> {
    let id = id(&bore.id, reading)?;
    reading.want(&bore.from, WANTED);
    reading.want(&bore.kind, WANTED);
    let (from, kind) = (bore.from.value()?, bore.kind.value()?);
    let diameter = reading.size(&bore.diameter, WANTED)?.value;
    let zero = Length::from_mm(0.0);
    let (end, mouth) = match from {
        End::Left => (part::End::Low, zero),
        End::Right => (part::End::High, length),
    };
    // A depth that is left out means right through.
    let depth = bore.depth.likely().map_or(length, |d| d.value);
    let form = Form::Drilled {
        from: end,
        mouth,
        diameter,
        depth,
        point: match kind {
            BoreKind::Bored => Point::Flat,
            // A reamer leaves the point of the drill before it.
            BoreKind::Drilled | BoreKind::Reamed | BoreKind::Tapped => Point::drill(),
        },
    };
    let finish = match kind {
        BoreKind::Reamed => Finish::Reamed,
        BoreKind::Drilled | BoreKind::Bored | BoreKind::Tapped => Finish::Cut,
    };
    let mut features = vec![toleranced(Feature::new(&id, form), &bore.diameter).finished(finish)];
    if let Some((thread, _)) = thread::named(&bore.thread, reading) {
        let whole = Span {
            from: zero,
            to: length,
        };
        let full = reading.size(&bore.thread_length, WANTED)?.value;
        let form = Form::Threaded {
            surface: Surface::Inside,
            span: from_end(whole, end, full),
            thread,
        };
        features.push(Feature::new(format!("{id}-thread"), form));
    }
    Some(features)
}

fn across(hole: &CrossHole, reading: &mut Reading) -> Option<Feature> {
    let id = id(&hole.id, reading)?;
    reading.want(&hole.reach, WANTED);
    let z = reading.size(&hole.at, WANTED)?.value;
    let diameter = reading.size(&hole.diameter, WANTED)?.value;
    let form = Form::Cross(part::CrossHole {
        z,
        // Where no angle or offset is given the hole is drilled from the front, on the axis.
        azimuth: hole.angle.value().unwrap_or(Angle::from_rad(0.0)),
        offset: hole.offset.value().unwrap_or(Length::from_mm(0.0)),
        diameter,
        depth: match hole.reach.value()? {
            CrossReach::IntoBore => CrossDepth::NearWall,
            CrossReach::Through => CrossDepth::Through,
        },
    });
    Some(toleranced(Feature::new(id, form), &hole.diameter))
}

fn from_end(span: Span, end: part::End, length: Length) -> Span {
    match end {
        part::End::Low => Span {
            from: span.from,
            to: span.from + length,
        },
        part::End::High => Span {
            from: span.to - length,
            to: span.to,
        },
    }
}

fn toleranced(feature: Feature, entry: &Entry<Size>) -> Feature {
    match entry.get().and_then(|size| size.tolerance) {
        Some(Tolerance { lower, upper }) => feature.within(Tolerance { lower, upper }),
        None => feature,
    }
}

fn run_true(group: &Coaxial, features: &mut [Feature]) {
    let (Some(name), Some(of), Some(zone)) = (group.id.get(), group.of.get(), group.within.value())
    else {
        return;
    };
    for feature in features.iter_mut().filter(|f| of.contains(&f.id)) {
        *feature = feature.clone().true_to(name, zone);
    }
}
