//! An entry as a visitor sees it, whatever it holds.

use std::ops::Range;

use reckoning::Typed;

use crate::entry::Entry;
use crate::place::Place;
use crate::problem::Fault;
use crate::written::Written;

/// An entry, whatever it holds, as a visitor sees it.
pub trait Slot {
    /// Takes what is written, and says what is wrong with it.
    fn accept(&mut self, written: Written, misfits: &mut Misfits);
    /// Tells the entry its path and its place.
    fn locate(&mut self, path: &str, at: Option<Place>);
    /// Its path.
    fn path(&self) -> &str;
    /// What is written, if anything.
    fn written(&self) -> Option<&Written>;
    /// Where it stands.
    fn place(&self) -> Option<Place>;
}

/// What is wrong with values, each with the bytes at fault.
#[derive(Debug, Default)]
pub struct Misfits(pub(crate) Vec<(Option<Range<usize>>, Fault)>);

impl Misfits {
    pub(crate) fn add(&mut self, at: &Written, fault: Fault) {
        self.0.push((at.span.clone(), fault));
    }

    /// The value is of another sort than the field takes.
    pub(crate) fn wrong_sort(&mut self, at: &Written, wanted: &'static str, example: &str) {
        let fault = Fault::WrongSort {
            read: at.shown(),
            sort: at.what(),
            wanted,
            example: example.to_owned(),
        };
        self.add(at, fault);
    }
}

/// An entry with the way in which its value is read.
pub(crate) struct Held<'a, T> {
    pub(crate) entry: &'a mut Entry<T>,
    pub(crate) read: &'a dyn Fn(&Written, &mut Misfits) -> Option<T>,
}

impl<T> Slot for Held<'_, T> {
    fn accept(&mut self, written: Written, misfits: &mut Misfits) {
        self.entry.value = if written.is_empty_text() {
            None
        } else {
            let text = written.shown();
            (self.read)(&written, misfits).map(|value| Typed { value, text })
        };
        self.entry.written = Some(written);
    }

    fn locate(&mut self, path: &str, at: Option<Place>) {
        path.clone_into(&mut self.entry.path);
        self.entry.at = at;
    }

    fn path(&self) -> &str {
        &self.entry.path
    }

    fn written(&self) -> Option<&Written> {
        self.entry.written.as_ref()
    }

    fn place(&self) -> Option<Place> {
        self.entry.at
    }
}
