//! Values taken from the plan and from the shape of what it describes, with their origin.

use plan::Entry;
use reckoning::quantity::{Length, Quantity};
use reckoning::{Given, Known, Origin, Size};

/// A field that would let more be worked out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Gap {
    /// Path of the field (`boiler.barrel.wall`).
    pub field: String,
    /// What it is wanted for.
    pub wanted_for: &'static str,
}

/// Reads fields and remembers those that were wanted and not there.
#[derive(Debug, Default)]
pub(crate) struct Reading {
    pub(crate) gaps: Vec<Gap>,
}

impl Reading {
    /// The likely size of a field.
    pub(crate) fn size(
        &mut self,
        entry: &Entry<Size>,
        wanted_for: &'static str,
    ) -> Option<Known<Length>> {
        self.want(entry, wanted_for);
        entry.likely()
    }

    /// The number of a field.
    pub(crate) fn number<Q: Quantity>(
        &mut self,
        entry: &Entry<Q>,
        wanted_for: &'static str,
    ) -> Option<Known<Q>> {
        self.want(entry, wanted_for);
        entry.known()
    }

    /// Notes a field as missing where it has no value.
    pub(crate) fn want<T>(&mut self, entry: &Entry<T>, wanted_for: &'static str) {
        if entry.typed().is_none() {
            self.miss(entry.path(), wanted_for);
        }
    }

    /// Notes a field that was given and taken away again, where one that was never there means the
    /// usual thing: the maker had found that the usual does not hold.
    pub(crate) fn taken_away<T>(&mut self, entry: &Entry<T>, wanted_for: &'static str) -> bool {
        if entry.is_emptied() {
            self.miss(entry.path(), wanted_for);
        }
        entry.is_emptied()
    }

    /// Notes a field as missing, once.
    pub(crate) fn miss(&mut self, field: &str, wanted_for: &'static str) {
        note(&mut self.gaps, field, wanted_for);
    }
}

/// Notes a field among the gaps, once.
pub(crate) fn note(gaps: &mut Vec<Gap>, field: &str, wanted_for: &'static str) {
    if !gaps.iter().any(|gap| gap.field == field) {
        gaps.push(Gap {
            field: field.to_owned(),
            wanted_for,
        });
    }
}

/// A value taken off the shape.
pub(crate) fn shape<Q>(value: Q, of: impl Into<String>, weakest: Origin) -> Known<Q> {
    Known {
        value,
        given: Given::Shape {
            of: of.into(),
            weakest,
        },
    }
}

/// A value that was chosen.
pub(crate) fn chosen<Q>(
    value: Q,
    between: impl Into<String>,
    reason: impl Into<String>,
) -> Known<Q> {
    Known {
        value,
        given: Given::Chosen {
            between: between.into(),
            reason: reason.into(),
            weakest: Origin::CommonPractice,
        },
    }
}

/// The weakest origin of some lengths.
pub(crate) fn weakest(of: &[&Known<Length>]) -> Origin {
    of.iter()
        .map(|k| k.given.origin())
        .max()
        .unwrap_or(Origin::Read)
}

/// A cylinder wall: two of outside, bore and wall give the third.
#[derive(Clone, Debug)]
pub(crate) struct Round {
    pub(crate) outside: Known<Length>,
    pub(crate) bore: Known<Length>,
    pub(crate) wall: Known<Length>,
}

impl Round {
    /// From the wall with the outside, or else with the bore.
    pub(crate) fn read(
        reading: &mut Reading,
        (outside, bore, wall): (&Entry<Size>, &Entry<Size>, &Entry<Size>),
        wanted_for: &'static str,
    ) -> Option<Self> {
        let thick = reading.size(wall, wanted_for);
        let (out, inn) = (outside.likely(), bore.likely());
        if out.is_none() && inn.is_none() {
            reading.miss(outside.path(), wanted_for);
        }
        let wall_known = thick?;
        let origin = |k: &Known<Length>| weakest(&[k, &wall_known]);
        match (out, inn) {
            (Some(out), _) => {
                let of = format!("{} less twice {}", outside.path(), wall.path());
                let inside = shape(out.value - wall_known.value * 2.0, of, origin(&out));
                Some(Self {
                    outside: out,
                    bore: inside,
                    wall: wall_known,
                })
            }
            (None, Some(inn)) => {
                let of = format!("{} and twice {}", bore.path(), wall.path());
                let over = shape(inn.value + wall_known.value * 2.0, of, origin(&inn));
                Some(Self {
                    outside: over,
                    bore: inn,
                    wall: wall_known,
                })
            }
            (None, None) => None,
        }
    }
}
