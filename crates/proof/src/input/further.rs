//! What a boiler has beside shells, tube plates and flues: every set has to speak of it.

use super::{Boiler, EndShape};

/// A kind of thing that is no shell, tube plate or flue.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Further {
    /// The flange of a tube plate.
    Flange,
    /// The ring that closes a water leg.
    FoundationRing,
    /// The way of a firebox crown's load to the shell.
    CrownChain,
    /// A stay.
    Stay,
    /// A flat end.
    FlatEnd,
    /// A flat end with a flue through it.
    AnnularEnd,
    /// A dished end.
    DishedEnd,
    /// Cross tubes.
    CrossTubes,
    /// A girder.
    Girder,
    /// A coil.
    Coil,
    /// A pipe.
    Pipe,
    /// A thread.
    Thread,
}

impl Further {
    /// The kind in words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Flange => "a flange",
            Self::FoundationRing => "a foundation ring",
            Self::CrownChain => "the way of a crown's load to the shell",
            Self::Stay => "a brazed stay",
            Self::FlatEnd => "a flat end",
            Self::AnnularEnd => "a flat end with a flue through it",
            Self::DishedEnd => "a dished end",
            Self::CrossTubes => "cross tubes in the flame",
            Self::Girder => "a girder",
            Self::Coil => "a coil in hot gas",
            Self::Pipe => "a pipe",
            Self::Thread => "a thread under pressure",
        }
    }
}

impl EndShape {
    /// What an end of this shape is.
    #[must_use]
    pub fn kind(&self) -> Further {
        match self {
            Self::Flat => Further::FlatEnd,
            Self::Annular { .. } => Further::AnnularEnd,
            Self::Dished(_) => Further::DishedEnd,
        }
    }
}

impl Boiler {
    /// Every thing that is no shell, tube plate or flue, by its id and its kind: what a set that
    /// is not worked for it has to speak of.
    #[must_use]
    pub fn further(&self) -> Vec<(&str, Further)> {
        let flanged = self.plates.iter().filter(|p| p.flange.is_some());
        let mut all: Vec<(&str, Further)> = flanged.map(|p| (&*p.id, Further::Flange)).collect();
        if let Some(frame) = &self.frame {
            all.push((&frame.ring.id, Further::FoundationRing));
            all.push((&frame.crown, Further::CrownChain));
        }
        all.extend(self.stays.iter().map(|s| (&*s.id, Further::Stay)));
        all.extend(self.ends.iter().map(|e| (&*e.id, e.shape.kind())));
        let crossing = self.cross_tubes.iter();
        all.extend(crossing.map(|t| (&*t.id, Further::CrossTubes)));
        all.extend(self.girders.iter().map(|g| (&*g.id, Further::Girder)));
        all.extend(self.coils.iter().map(|c| (&*c.id, Further::Coil)));
        all.extend(self.pipes.iter().map(|p| (&*p.id, Further::Pipe)));
        all.extend(self.screwed.iter().map(|s| (&*s.id, Further::Thread)));
        all
    }
}
