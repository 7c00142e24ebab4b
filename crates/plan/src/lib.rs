//! Plan and workshop text to values and back, with located errors and comment-preserving edits.
//!
//! A section's `visit` is the only definition of its fields. The reader, the writer, the register
//! of fields, the difference between two files and the edits are visitors. This crate opens no
//! file and knows no formula: it says what was typed, not what it is worth.

mod entry;
mod field;
mod file;
mod load;
mod place;
mod plan;
mod problem;
mod size_text;
mod slot;
mod value_text;
mod visit;
mod write;
mod written;

pub mod section;

pub use entry::Entry;
pub use field::{Choice, Field, FieldKind, Limits, Named, within};
pub use file::{File, Read, read_file};
pub use place::Place;
pub use plan::Plan;
pub use problem::{Fault, Problem};
pub use slot::{Misfits, Slot};
pub use visit::{Row, Rows, Section, Visitor};
pub use write::write;
pub use written::Written;

/// Reads the text of a plan; `file` is its name, for the messages.
#[must_use]
pub fn read(text: &str, file: &str) -> Read<Plan> {
    read_file(text, file)
}
