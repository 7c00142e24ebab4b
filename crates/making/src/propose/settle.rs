//! The tapped holes of a piece, drilled to the drills that the maker has.

use formulas::thread::Thread;
use plant::part::{Bar, Feature, Form, Span, Surface, Turned};
use reckoning::quantity::Length;

use super::NoCard;
use crate::piece::Piece;
use crate::tapping::{Choice, choose};
use crate::workshop::Workshop;

/// A piece whose tapped holes have the size of a drill at hand.
pub(super) struct Settled {
    pub(super) piece: Piece,
    pub(super) choices: Vec<Choice>,
}

pub(super) fn settle(piece: &Piece, workshop: &Workshop) -> Result<Settled, NoCard> {
    let drawing = &piece.shape;
    let mut features: Vec<Feature> = drawing.features().to_vec();
    let mut choices = Vec::new();
    let tapped: Vec<(Span, String)> = drawing
        .threads()
        .filter(|(_, surface, _, _)| *surface == Surface::Inside)
        .map(|(_, _, span, thread)| (span, thread.designation.clone()))
        .collect();
    for (span, designation) in tapped {
        let thread = Thread::read(&designation)?;
        let choice = choose(&thread, workshop.thread_share.value, &workshop.drills)?;
        let drill = choice.chosen.drill.diameter;
        // Where several holes lie under a thread, the widest of them carries it.
        let carries = features
            .iter_mut()
            .filter_map(|f| under(f, span, thread.major).map(|size| (size, f)))
            .max_by(|a, b| a.0.mm().total_cmp(&b.0.mm()));
        if let Some((_, feature)) = carries {
            resize(&mut feature.form, drill);
        }
        choices.push(choice);
    }
    let whole = drawing.span();
    let bar: Bar = drawing.stock();
    let shape = Turned::finished(bar, whole, &features)?;
    Ok(Settled {
        piece: Piece {
            shape,
            ..piece.clone()
        },
        choices,
    })
}

/// Diameter of a hole under an inside thread; none for a feature that is not one.
fn under(feature: &Feature, thread: Span, major: Length) -> Option<Length> {
    let covers = feature.form.span().is_some_and(|s| s.covers(thread));
    feature.form.bore().filter(|d| covers && *d < major)
}

fn resize(form: &mut Form, to_diameter: Length) {
    match form {
        Form::Drilled { diameter, .. } => *diameter = to_diameter,
        Form::Turned { from, to, .. } => {
            *from = to_diameter;
            *to = to_diameter;
        }
        _ => {}
    }
}
