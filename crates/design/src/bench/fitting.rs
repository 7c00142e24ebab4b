//! The door from a fitting of the plan to a piece to be made.
//!
//! Every fitting is taken as holding pressure, which asks the more of it. Sizes are those of the
//! drawing: a piece is made to its drawing, whatever an earlier one measured. A field that is
//! wanted and empty is a gap; a drawing that makes no piece is a finding.

use formulas::cutting::CuttingMetal;
use making::{Piece, Service};
use plan::section::Fitting;
use plan::{Choice, Row};
use plant::fitting::{Sizes, fitted};
use reckoning::Finding;

use super::{metal, shape};

/// A fitting as drawn.
#[derive(Clone, Debug)]
pub(super) struct Drawing {
    /// The piece; `None` where a gap or a fault stands against it.
    pub(super) piece: Option<Piece>,
    /// What is wrong with the drawing.
    pub(super) findings: Vec<Finding>,
    /// Fields that are wanted and empty.
    pub(super) gaps: Vec<String>,
    /// Features that no card is written for yet.
    pub(super) not_ordered: Vec<String>,
}

/// The piece that a fitting describes.
pub(super) fn drawing(fitting: &Fitting) -> Drawing {
    let mut gaps = Vec::new();
    if fitting.kind.get().is_none() {
        gaps.push(fitting.kind.path().to_owned());
    }
    let metal = cuts(fitting, &mut gaps);
    let least_wall = fitting.least_wall.known();
    if least_wall.is_none() {
        gaps.push(fitting.least_wall.path().to_owned());
    }
    let mut made = fitted(fitting, Sizes::Drawn);
    gaps.extend(made.gaps.iter().map(|gap| gap.field.clone()));
    let findings = shape::findings(fitting, &made);
    let whole = gaps.is_empty() && findings.is_empty();
    let piece = made
        .shape
        .take()
        .zip(metal)
        .zip(least_wall)
        .filter(|_| whole);
    Drawing {
        piece: piece.map(|((shape, metal), least_wall)| Piece {
            id: fitting.called(),
            shape,
            metal,
            least_wall,
            service: Service::Pressure,
        }),
        findings,
        gaps,
        not_ordered: tapped_across(fitting),
    }
}

/// How the metal of a fitting cuts.
fn cuts(fitting: &Fitting, gaps: &mut Vec<String>) -> Option<CuttingMetal> {
    let entry = &fitting.metal;
    let Some(designation) = entry.get() else {
        gaps.push(entry.path().to_owned());
        return None;
    };
    let cuts = metal::cutting(designation);
    if cuts.is_none() {
        gaps.push(format!(
            "{}: it is not known how {designation} cuts",
            entry.path()
        ));
    }
    cuts
}

fn tapped_across(fitting: &Fitting) -> Vec<String> {
    let holes = fitting.cross_holes.iter();
    holes
        .filter(|hole| hole.thread.get().is_some())
        .map(Row::called)
        .collect()
}

/// What sort of part it is, in the words of the plan.
pub(super) fn kind_words(fitting: &Fitting) -> Option<&'static str> {
    fitting.kind.value().map(Choice::name)
}
