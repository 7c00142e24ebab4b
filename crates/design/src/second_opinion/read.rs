//! What is read off a solved part, on three meshes.

use solid::{Along, Body, Kind, Solved};

/// What a value is measured in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// Stress.
    Mpa,
    /// Length.
    Mm,
    /// Force.
    Newton,
}

impl Unit {
    /// As printed.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Mpa => "MPa",
            Self::Mm => "mm",
            Self::Newton => "N",
        }
    }
}

/// A value on three meshes, each twice as fine as the one before.
#[derive(Clone, Debug, PartialEq)]
pub struct Told {
    /// What it is.
    pub what: String,
    /// The values, the coarsest first.
    pub values: [f64; 3],
    /// Their unit.
    pub unit: Unit,
}

impl Told {
    /// The value on the finest mesh.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.values[2]
    }

    /// By how much the last halving changed it, in parts of the last value.
    #[must_use]
    pub fn change(&self) -> f64 {
        (self.values[2] - self.values[1]).abs() / self.values[2].abs()
    }
}

/// Where a value is read.
#[derive(Clone, Copy)]
pub(super) enum Place {
    /// Stress at a node of one metal.
    At {
        metal: usize,
        at: [f64; 2],
        kind: Kind,
    },
    /// Bending part of a stress across a wall, at the end of the line.
    Bending(Line),
    /// Even part of a stress across a wall.
    Even(Line),
    /// How far a node moves along the axis against the pressure.
    Moves([f64; 2]),
    /// What the nodes of a cut are held with along the axis.
    Pull([[f64; 2]; 2]),
}

/// A line across a wall in one metal.
#[derive(Clone, Copy)]
pub(super) struct Line {
    pub(super) metal: usize,
    pub(super) kind: Kind,
    pub(super) from: [f64; 2],
    pub(super) to: [f64; 2],
}

/// A value that is asked for.
#[derive(Clone)]
pub(super) struct Read {
    pub(super) what: String,
    pub(super) place: Place,
}

impl Read {
    pub(super) fn new(what: impl Into<String>, place: Place) -> Self {
        Self {
            what: what.into(),
            place,
        }
    }

    pub(super) fn unit(&self) -> Unit {
        match self.place {
            Place::At { .. } | Place::Bending(_) | Place::Even(_) => Unit::Mpa,
            Place::Moves(_) => Unit::Mm,
            Place::Pull(_) => Unit::Newton,
        }
    }

    /// The value; `None` where the mesh has no such place.
    pub(super) fn of(&self, body: &Body, solved: &Solved) -> Option<f64> {
        match self.place {
            Place::At { metal, at, kind } => {
                let node = body.mesh.nearest(at)?;
                Some(solved.at(&body.mesh, metal, node)?.of(kind))
            }
            Place::Bending(line) => Some(line.of(body, solved)?.bending),
            Place::Even(line) => Some(line.of(body, solved)?.membrane),
            Place::Moves(at) => Some(solved.displaced[body.mesh.nearest(at)?][1].abs()),
            Place::Pull([from, to]) => {
                let nodes = body.mesh.on_line(from, to);
                Some(solved.reaction(Along::Axis, &nodes))
            }
        }
    }
}

impl Line {
    fn of(self, body: &Body, solved: &Solved) -> Option<solid::Across> {
        solved.across(body, (self.metal, self.kind), self.from, self.to)
    }
}
