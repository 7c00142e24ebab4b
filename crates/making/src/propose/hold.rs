//! By what a piece can be held: plain stretches of the outside, clear of the cut.

use plant::part::{End, Feature, Form, Span, Surface, Turned};
use reckoning::quantity::Length;

/// Whether a feature is cut inside.
pub(super) fn is_inside(feature: &Feature) -> bool {
    match &feature.form {
        Form::Turned { surface, .. } | Form::Threaded { surface, .. } => {
            *surface == Surface::Inside
        }
        Form::Drilled { .. } => true,
        Form::Face { .. } | Form::Cross(_) | Form::Flats(_) => false,
    }
}

/// Plain unthreaded stretches of the outside with their diameters.
pub(super) fn plain(shape: &Turned) -> Vec<(Span, Length)> {
    let threads: Vec<Span> = shape
        .threads()
        .filter(|(_, surface, ..)| *surface == Surface::Outside)
        .map(|(_, _, span, _)| span)
        .collect();
    shape
        .outside()
        .filter(|p| p.from == p.to)
        .flat_map(|p| {
            without(p.span, &threads)
                .into_iter()
                .map(move |s| (s, p.from))
        })
        .collect()
}

/// What is left of a stretch.
pub(super) fn without(stretch: Span, gone: &[Span]) -> Vec<Span> {
    gone.iter().fold(vec![stretch], |left, g| {
        left.into_iter()
            .flat_map(|s| {
                let below = Span {
                    from: s.from,
                    to: if s.to < g.from { s.to } else { g.from },
                };
                let above = Span {
                    from: if s.from > g.to { s.from } else { g.to },
                    to: s.to,
                };
                [below, above]
            })
            .filter(|s| s.from < s.to)
            .collect()
    })
}

/// Whether what lies behind a grip goes into the holder.
pub(super) fn passes_jaws(shape: &Turned, grip: Span, diameter: Length, outward: End) -> bool {
    shape
        .outside()
        .filter(|p| match outward {
            End::Low => p.span.from >= grip.to,
            End::High => p.span.to <= grip.from,
        })
        .all(|p| p.from <= diameter && p.to <= diameter)
}

/// As much of a stretch as a holder grips, on the side of the outward end.
pub(super) fn nearest(stretch: Span, most: Length, outward: End) -> Span {
    if stretch.length() <= most {
        return stretch;
    }
    stretch.first(outward, most)
}
