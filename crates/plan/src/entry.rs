//! What a field holds: the value, the text in which its maker wrote it, and where it stands.

use reckoning::quantity::{Length, Quantity};
use reckoning::size::Bad;
use reckoning::{Assumption, Given, Known, Size, Typed};

use crate::place::Place;
use crate::written::Written;

/// One field of a plan or a workshop.
///
/// An entry is in one of four states: absent (the file has no such key), emptied (the key stands
/// with the text `""`, so that a value once given and taken away leaves its mark), misread (text
/// that is no value, reported as a problem and kept), or filled.
#[derive(Clone, Debug)]
pub struct Entry<T> {
    pub(crate) value: Option<Typed<T>>,
    pub(crate) written: Option<Written>,
    pub(crate) at: Option<Place>,
    pub(crate) path: String,
}

impl<T> Default for Entry<T> {
    fn default() -> Self {
        Self {
            value: None,
            written: None,
            at: None,
            path: String::new(),
        }
    }
}

/// Two entries are equal when they have the same path and the same writing: where it stands in a
/// file does not matter.
impl<T: PartialEq> PartialEq for Entry<T> {
    fn eq(&self, other: &Self) -> bool {
        self.path == other.path && self.value == other.value && self.written == other.written
    }
}

impl<T> Entry<T> {
    /// The value, where one was given and could be read.
    #[must_use]
    pub fn get(&self) -> Option<&T> {
        self.value.as_ref().map(|typed| &typed.value)
    }

    /// The value with the text as typed.
    #[must_use]
    pub fn typed(&self) -> Option<&Typed<T>> {
        self.value.as_ref()
    }

    /// The name of the field, for instance `boiler.barrel.wall`. It is set whether or not the
    /// field is filled, so that a finding can name what is missing.
    #[must_use]
    pub fn path(&self) -> &str {
        &self.path
    }

    /// Where the value stands in the file.
    #[must_use]
    pub fn place(&self) -> Option<Place> {
        self.at
    }

    /// Whether the key stands in the file with an empty text: a value was taken away.
    #[must_use]
    pub fn is_emptied(&self) -> bool {
        self.written.as_ref().is_some_and(Written::is_empty_text)
    }

    /// Whether a part of a size (`made`, `tolerance`) stands in the file with an empty text: a
    /// measurement or a tolerance was taken away.
    #[must_use]
    pub fn is_part_emptied(&self, part: &str) -> bool {
        self.written.as_ref().is_some_and(|w| w.has_empty(part))
    }

    /// Whether the file has no such key.
    #[must_use]
    pub fn is_absent(&self) -> bool {
        self.written.is_none()
    }
}

impl<T: Copy> Entry<T> {
    /// A copy of the value.
    #[must_use]
    pub fn value(&self) -> Option<T> {
        self.get().copied()
    }
}

impl<Q: Quantity> Entry<Q> {
    /// The value with its origin, the plan.
    #[must_use]
    pub fn known(&self) -> Option<Known<Q>> {
        self.value
            .as_ref()
            .map(|typed| Known::from_plan(typed.value, &self.path, &typed.text))
    }

    /// The value with its origin, or the assumption that stands in for it; a misread value counts
    /// as none, and its problem says so.
    #[must_use]
    pub fn known_or(&self, assumption: &'static Assumption) -> Known<Q> {
        self.known().unwrap_or_else(|| Known::assumed(assumption))
    }
}

impl Entry<Size> {
    /// The size as it is most likely, made where measured, else drawn: for steaming and heats.
    #[must_use]
    pub fn likely(&self) -> Option<Known<Length>> {
        self.get().map(|size| self.length(size, size.likely(), ""))
    }

    /// The size that a proof uses: made where measured, else drawn at the bad end of its
    /// tolerance.
    #[must_use]
    pub fn for_proof(&self, bad: Bad) -> Option<Known<Length>> {
        let end = match bad {
            Bad::Small => ", least by its tolerance",
            Bad::Large => ", greatest by its tolerance",
        };
        self.get()
            .map(|size| self.length(size, size.for_proof(bad), end))
    }

    fn length(&self, size: &Size, value: Length, end: &str) -> Known<Length> {
        let (part, text, end) = match &size.made {
            Some(made) => (".made", made.text.as_str(), ""),
            None if size.tolerance.is_some() => ("", size.drawn.text.as_str(), end),
            None => ("", size.drawn.text.as_str(), ""),
        };
        Known {
            value,
            given: Given::Plan {
                field: format!("{}{part}", self.path),
                typed: format!("{text}{end}"),
            },
        }
    }
}
