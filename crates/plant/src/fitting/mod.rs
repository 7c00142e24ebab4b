//! The turned parts that a plan describes feature by feature.
//!
//! A part runs along its axis from 0 at the left end. Its features keep the ids of the plan; a
//! thread on a step or in a bore is called `<id>-thread`, a chamfer `<id>-chamfer`. Whether the
//! features make a good part is not judged here: what can not be drawn at all is a [`Fault`], a
//! field that is wanted and empty is a [`Gap`].

mod holes;
mod steps;
mod truth;

use formulas::thread::NotAThread;
use plan::section::Fitting;
use plan::{Entry, Row};
use reckoning::quantity::Length;
use reckoning::{Known, Size};

use crate::known::{Gap, note};
use crate::part::{Bar, Feature, NoShape, Span, Thread, Turned};
use crate::thread;

const WANTED: &str = "the shape of a turned part";

/// Which of its sizes a part is drawn with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sizes {
    /// Those of the drawing: what is still to be made is made to its drawing.
    Drawn,
    /// Made where measured, else drawn: what the part is most likely to be.
    Likely,
}

/// Why a feature of a fitting can not be drawn, or not with the others.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Fault {
    /// The name of a thread is in no table.
    #[error("{unknown}")]
    Thread {
        /// Path of the field.
        field: String,
        /// What was read, and what comes near it.
        unknown: NotAThread,
    },
    /// The features make no shape.
    #[error(transparent)]
    Shape(#[from] NoShape),
    /// A demand names fewer than two features.
    #[error("{group} names {count} feature; truth is between two")]
    Alone {
        /// Path of the list of features.
        field: String,
        /// The demand.
        group: String,
        /// How many it names.
        count: usize,
    },
    /// A demand names what is not in the part.
    #[error("there is no step or bore `{id}`")]
    Stranger {
        /// Path of the list of features.
        field: String,
        /// The name.
        id: String,
        /// The steps and bores that are there.
        known: Vec<String>,
    },
    /// A feature stands in two demands.
    #[error("`{id}` stands in {first} and in {second}")]
    Twice {
        /// Path of the list of the second demand.
        field: String,
        /// The feature.
        id: String,
        /// The first demand.
        first: String,
        /// The second demand.
        second: String,
    },
}

/// A fitting as far as it can be drawn.
#[derive(Clone, Debug)]
pub struct Fitted {
    /// The bar less its features; none where a size is missing or no shape is left.
    pub shape: Option<Turned>,
    /// The features that could be drawn.
    pub features: Vec<Feature>,
    /// Holes that the plan leaves to the tapping drill, by the field of their diameter. Until a
    /// drill is chosen they stand at the minor diameter of their thread.
    pub chosen: Vec<(String, Known<Length>)>,
    /// What can not be drawn.
    pub faults: Vec<Fault>,
    /// Fields that are wanted and empty.
    pub gaps: Vec<Gap>,
}

impl Fitted {
    /// A feature by its id.
    #[must_use]
    pub fn feature(&self, id: &str) -> Option<&Feature> {
        self.features.iter().find(|feature| feature.id == id)
    }
}

/// The shape of a fitting of the plan.
#[must_use]
pub fn fitted(fitting: &Fitting, sizes: Sizes) -> Fitted {
    let mut draft = Draft {
        sizes,
        made: Fitted {
            shape: None,
            features: Vec::new(),
            chosen: Vec::new(),
            faults: Vec::new(),
            gaps: Vec::new(),
        },
    };
    // Everything is taken before the first doubt, so that all gaps are named at once.
    let bar = draft.size(&fitting.bar);
    let length = draft.steps(fitting);
    for bore in &fitting.bores {
        draft.bore(bore, length);
    }
    for hole in &fitting.cross_holes {
        draft.cross(hole);
    }
    // A demand that wants its zone takes nothing from the shape.
    let whole = draft.made.gaps.is_empty();
    draft.demands(fitting);
    if let (Some(bar), Some(length), true) = (bar, length, whole) {
        draft.shape(bar, length);
    }
    draft.made
}

/// A fitting on the way to its shape.
struct Draft {
    sizes: Sizes,
    made: Fitted,
}

impl Draft {
    fn shape(&mut self, bar: Length, length: Length) {
        let whole = Span {
            from: zero(),
            to: length,
        };
        match Turned::finished(Bar::Round(bar), whole, &self.made.features) {
            Ok(shape) => self.made.shape = Some(shape),
            Err(none) => self.made.faults.push(Fault::Shape(none)),
        }
    }

    fn miss(&mut self, field: &str) {
        note(&mut self.made.gaps, field, WANTED);
    }

    /// A value that the plan must give.
    fn wanted<T: Copy>(&mut self, entry: &Entry<T>) -> Option<T> {
        let value = entry.value();
        if value.is_none() {
            self.miss(entry.path());
        }
        value
    }

    /// A size that the plan must give.
    fn size(&mut self, entry: &Entry<Size>) -> Option<Length> {
        let size = self.given(entry);
        if size.is_none() {
            self.miss(entry.path());
        }
        size
    }

    /// A size that the plan may leave out.
    fn given(&self, entry: &Entry<Size>) -> Option<Length> {
        match self.sizes {
            Sizes::Drawn => entry.get().map(|size| size.drawn.value),
            Sizes::Likely => entry.likely().map(|known| known.value),
        }
    }

    /// The thread that a field names; none where it is empty or, which is told, unknown.
    fn thread(&mut self, entry: &Entry<String>) -> Option<(Thread, Known<Length>)> {
        match thread::read(entry)? {
            Ok((thread, full)) => Some((thread, thread::tapping(&full))),
            Err(unknown) => {
                let field = entry.path().to_owned();
                self.made.faults.push(Fault::Thread { field, unknown });
                None
            }
        }
    }

    /// The diameter of a hole. One under a thread may be left out: a drill is chosen for it.
    fn hole(
        &mut self,
        diameter: &Entry<Size>,
        thread: &Entry<String>,
        tapping: Option<&Known<Length>>,
    ) -> Option<Length> {
        if let Some(size) = self.given(diameter) {
            return Some(size);
        }
        let Some(tapping) = tapping else {
            // A thread by a name that is in no table leaves its hole without a size.
            let unknown = thread.get().is_some();
            self.miss(if unknown {
                thread.path()
            } else {
                diameter.path()
            });
            return None;
        };
        let field = diameter.path().to_owned();
        self.made.chosen.push((field, tapping.clone()));
        Some(tapping.value)
    }

    /// Adds a feature with the tolerance of its size.
    fn push(&mut self, mut feature: Feature, size: &Entry<Size>) {
        feature.tolerance = size.get().and_then(|size| size.tolerance);
        self.made.features.push(feature);
    }
}

fn zero() -> Length {
    Length::from_mm(0.0)
}

fn thread_id(row: &impl Row) -> String {
    format!("{}-thread", row.called())
}
