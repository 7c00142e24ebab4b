//! A second opinion on a round part by finite elements, beside what the rule sets found.
//!
//! It is asked on demand and never decides: no verdict reads it. It says what of the part it
//! stands for and what it leaves out, gives every value on three meshes so that anyone can see
//! whether it has settled, and quotes the formulas next to it.

mod bush;
mod dished;
mod flat;
mod read;
mod sizes;
mod told;

pub use read::{Told, Unit};
pub use sizes::{MetalTaken, SizeTaken};
pub use told::{Beside, PeakTold, SecondOpinion};

use plan::{Plan, Workshop};
use proof::{Boiler, End, EndShape, Opening, Proof, Shell};
use solid::{Body, BushInPlate, DishedEnd, Fineness, FlatEnd, NoShape, NotSolved, Tube};

use crate::proof_door;

/// Why there is no second opinion.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NoOpinion {
    /// No part of this name can be asked.
    #[error("no part that can be asked is called `{asked}`")]
    Unknown {
        /// The name.
        asked: String,
        /// The names that can be asked.
        has: Vec<String>,
    },
    /// The part is not a body of revolution, or its load is not even all round.
    #[error("`{part}` is not round about an axis: {why}")]
    NotRound {
        /// The part.
        part: String,
        /// What is not.
        why: String,
    },
    /// Sizes or metals are missing.
    #[error("`{part}` lacks what the sum needs")]
    Wanted {
        /// The part.
        part: String,
        /// What is missing, in words.
        lacks: Vec<String>,
    },
    /// The sizes make no shape.
    #[error("`{part}`: {why}")]
    Shape {
        /// The part.
        part: String,
        /// Why not.
        why: NoShape,
    },
    /// The balance was not found.
    #[error("`{part}`: {why}")]
    NotSolved {
        /// The part.
        part: String,
        /// Why not.
        why: NotSolved,
    },
}

/// The shape that stands for a part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Shape {
    /// A shell with a flat end, whole or with a flue through its middle.
    Flat(FlatEnd),
    /// A shell with a dished end.
    Dished(DishedEnd),
    /// A bush in a plate that is pulled evenly.
    Bush(BushInPlate),
}

impl Shape {
    fn body(&self, fineness: Fineness) -> Result<Body, NoShape> {
        match self {
            Self::Flat(end) => end.body(fineness),
            Self::Dished(end) => end.body(fineness),
            Self::Bush(bush) => bush.body(fineness),
        }
    }

    /// The stretch worth looking at, from the lower left to the upper right, mm: the part and as
    /// much beside it as its edge is felt.
    #[must_use]
    pub fn window(&self) -> [[f64; 2]; 2] {
        let felt = |tube: &Tube| NEAR * (tube.outside_radius_mm() * tube.wall_mm).sqrt();
        match self {
            Self::Flat(end) => [
                [0.0, f64::NEG_INFINITY],
                [f64::INFINITY, end.plate_mm + felt(&end.shell)],
            ],
            Self::Dished(end) => [[0.0, -felt(&end.shell)], [f64::INFINITY, f64::INFINITY]],
            Self::Bush(bush) => [
                [0.0, f64::NEG_INFINITY],
                [BESIDE * bush.hole_radius_mm, f64::INFINITY],
            ],
        }
    }
}

/// Lengths √(R t) of a shell that are looked at beside its end.
const NEAR: f64 = 2.0;
/// Radii of a hole that are looked at round it.
const BESIDE: f64 = 2.5;

/// A part as it is to be solved.
struct Case {
    /// What it is, in words.
    what: String,
    shape: Shape,
    taken: sizes::Taken,
    /// Part of the name of the rule whose formula is quoted first.
    formula: &'static str,
    reads: Vec<read::Read>,
    stands_for: Vec<String>,
    leaves_out: Vec<String>,
}

/// The second opinion on a part of a plan, by its id.
///
/// # Errors
///
/// [`NoOpinion`] says why there is none.
pub fn second_opinion(
    plan: &Plan,
    workshop: &Workshop,
    part: &str,
) -> Result<SecondOpinion, NoOpinion> {
    let plant = plant::resolve(plan).plant;
    let boiler = proof_door::boiler(plan, &plant);
    let named = plan.tester_set.get().and_then(|key| proof::find_set(key));
    // The fire has no say in these parts: a coil is not among them.
    let (service, stock) = (proof_door::service(plan, None), proof_door::stock(workshop));
    let proof = proof::prove(&boiler, &service, &stock, named);
    let pressure_mpa = plan.boiler.design_pressure.value().map(|p| p.mpa());
    of_boiler(&boiler, pressure_mpa, &proof, part)
}

/// The second opinion on a part of a boiler, beside its proof.
///
/// # Errors
///
/// [`NoOpinion`] says why there is none.
pub fn of_boiler(
    boiler: &Boiler,
    pressure_mpa: Option<f64>,
    proof: &Proof,
    part: &str,
) -> Result<SecondOpinion, NoOpinion> {
    told::told(part, case(boiler, pressure_mpa, part)?, proof)
}

/// The parts of a boiler that can be asked.
#[must_use]
pub fn askable(boiler: &Boiler) -> Vec<String> {
    let ring = boiler.frame.iter().map(|frame| frame.ring.id.clone());
    let ends = boiler.ends.iter().map(|end| end.id.clone());
    let bushes = boiler
        .shells
        .iter()
        .flat_map(|shell| &shell.openings)
        .filter(|opening| opening.bush.is_some())
        .map(|opening| opening.id.clone());
    ring.chain(ends).chain(bushes).collect()
}

fn case(boiler: &Boiler, pressure_mpa: Option<f64>, part: &str) -> Result<Case, NoOpinion> {
    if let Some(frame) = boiler.frame.as_ref().filter(|frame| frame.ring.id == part) {
        return flat::ring(boiler, frame, pressure_mpa);
    }
    if let Some(end) = boiler.ends.iter().find(|end| end.id == part) {
        return of_end(boiler, end, pressure_mpa);
    }
    if let Some((shell, opening)) = bush_called(boiler, part) {
        return bush::case(shell, opening, pressure_mpa);
    }
    if boiler.plates.iter().any(|plate| plate.id == part) || part.starts_with("tube-plate.") {
        return Err(NoOpinion::NotRound {
            part: part.to_owned(),
            why: "its tubes stand in rows, and hold it where they stand; the rule sets take the \
                  plate by its pitch and its margin"
                .to_owned(),
        });
    }
    Err(NoOpinion::Unknown {
        asked: part.to_owned(),
        has: askable(boiler),
    })
}

fn of_end(boiler: &Boiler, end: &End, pressure_mpa: Option<f64>) -> Result<Case, NoOpinion> {
    if end.stayed.is_some() {
        return Err(NoOpinion::NotRound {
            part: end.id.clone(),
            why: "stays hold it where they stand".to_owned(),
        });
    }
    match &end.shape {
        EndShape::Flat => flat::end(boiler, end, None, pressure_mpa),
        EndShape::Annular { flue, off, .. } => {
            flat::end(boiler, end, Some((flue, off.as_ref())), pressure_mpa)
        }
        EndShape::Dished(dish) => dished::case(boiler, end, dish, pressure_mpa),
    }
}

fn bush_called<'a>(boiler: &'a Boiler, part: &str) -> Option<(&'a Shell, &'a Opening)> {
    let shells = boiler.shells.iter();
    let openings = shells.flat_map(|shell| shell.openings.iter().map(move |o| (shell, o)));
    openings
        .into_iter()
        .find(|(_, opening)| opening.id == part && opening.bush.is_some())
}
