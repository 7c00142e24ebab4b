//! Which feature is made from which side, for a given first end.

use plant::part::{End, Feature, Form, Span, Surface, Turned};
use reckoning::quantity::Length;

use super::NoCard;
use crate::rules::GROOVE_MM;
use crate::simulate::WITHIN_MM;

/// The features of a piece by the setting in which they are made.
#[derive(Clone, Debug)]
pub(super) struct Sorted<'a> {
    /// The end that is outward first.
    pub(super) first: End,
    /// Made in the first setting.
    pub(super) bar: Vec<&'a Feature>,
    /// Made after the piece is turned round.
    pub(super) reversed: Vec<&'a Feature>,
    /// Cross holes.
    pub(super) across: Vec<&'a Feature>,
}

/// The other end.
pub(super) fn other(end: End) -> End {
    match end {
        End::Low => End::High,
        End::High => End::Low,
    }
}

/// The face of an end.
pub(super) fn face(shape: &Turned, end: End) -> Length {
    match end {
        End::Low => shape.span().from,
        End::High => shape.span().to,
    }
}

/// Sorts the features of a drawing.
pub(super) fn sort(drawing: &Turned, first: End) -> Result<Sorted<'_>, NoCard> {
    let mut sorted = Sorted {
        first,
        bar: Vec::new(),
        reversed: Vec::new(),
        across: Vec::new(),
    };
    for feature in drawing.features() {
        match &feature.form {
            Form::Face { .. } => {}
            Form::Cross(_) => sorted.across.push(feature),
            Form::Flats(_) => {
                return Err(NoCard::Feature {
                    feature: feature.id.clone(),
                    why: "flats want milling, which is not yet ordered here",
                });
            }
            _ => match side(drawing, feature, first)? {
                End::Low if first == End::Low => sorted.bar.push(feature),
                End::High if first == End::High => sorted.bar.push(feature),
                _ => sorted.reversed.push(feature),
            },
        }
    }
    Ok(sorted)
}

/// From which end a feature is made: the first if it is open to it.
fn side(drawing: &Turned, feature: &Feature, first: End) -> Result<End, NoCard> {
    let last = other(first);
    let open = |end: End| match &feature.form {
        Form::Drilled { from, .. } => *from == end || through(drawing, &feature.form),
        Form::Turned { surface, span, .. } | Form::Threaded { surface, span, .. } => {
            open_to(drawing, *surface, (*span, sizes(&feature.form)), end)
        }
        Form::Face { .. } | Form::Cross(_) | Form::Flats(_) => false,
    };
    if open(first) {
        return Ok(first);
    }
    if open(last) {
        return Ok(last);
    }
    match &feature.form {
        Form::Turned {
            surface: Surface::Outside,
            span,
            ..
        } if span.length().mm() <= GROOVE_MM => Ok(first),
        _ => Err(NoCard::Feature {
            feature: feature.id.clone(),
            why: "it lies between two shoulders and is open to neither end",
        }),
    }
}

/// Whether a drilled hole goes right through the piece.
pub(super) fn through(drawing: &Turned, form: &Form) -> bool {
    let Form::Drilled {
        mouth, depth, from, ..
    } = form
    else {
        return false;
    };
    let whole = drawing.span();
    let far = match from {
        End::Low => *mouth + *depth - whole.to,
        End::High => whole.from - (*mouth - *depth),
    };
    far.mm() >= -WITHIN_MM
}

/// Least and greatest diameter of a turned form, and the major diameter and hole of a thread.
fn sizes(form: &Form) -> (Length, Length) {
    match form {
        Form::Turned { from, to, .. } if from < to => (*from, *to),
        Form::Turned { from, to, .. } => (*to, *from),
        Form::Threaded { thread, .. } => (thread.core, thread.major),
        _ => (Length::from_mm(0.0), Length::from_mm(f64::INFINITY)),
    }
}

/// Whether nothing of the drawing stands between a stretch and an end.
pub(super) fn open_to(
    drawing: &Turned,
    surface: Surface,
    (span, sizes): (Span, (Length, Length)),
    end: End,
) -> bool {
    let whole = drawing.span();
    let way = whole.way_out(span, end);
    if way.length().mm() <= WITHIN_MM {
        return true;
    }
    let a_little = Length::from_mm(WITHIN_MM);
    match surface {
        Surface::Outside => drawing
            .outside()
            .filter(|p| p.span.shared(way).is_some())
            .all(|p| p.from <= sizes.1 + a_little && p.to <= sizes.1 + a_little),
        Surface::Inside => {
            let pieces: Vec<_> = drawing
                .inside()
                .filter_map(|p| p.span.shared(way).map(|s| (s, p)))
                .collect();
            let covered: Length = pieces.iter().map(|(s, _)| s.length()).sum();
            (covered - way.length()).mm().abs() <= WITHIN_MM
                && pieces
                    .iter()
                    .all(|(_, p)| p.from + a_little >= sizes.0 && p.to + a_little >= sizes.0)
        }
    }
}
