//! Plan and workshop text to values and back, with located errors and comment-preserving edits.
//!
//! A section's `visit` is the only definition of its fields. The reader, the writer, the register
//! of fields, the difference between two files and the edits are visitors. This crate opens no
//! file and knows no formula: it says what was typed, not what it is worth.

mod difference;
mod document;
mod entry;
mod field;
mod file;
mod fill;
mod load;
mod page;
mod place;
mod plan;
mod problem;
mod register;
mod size_text;
mod slot;
mod splice;
mod value_text;
mod visit;
mod write;
mod written;

pub mod section;
pub mod workshop;

pub use difference::{Change, ChangeKind, difference};
pub use document::Document;
pub use entry::Entry;
pub use field::{Choice, Field, FieldKind, Limits, Named, within};
pub use file::{File, Read, read_file};
pub use fill::{Filling, NewRow, put};
pub use page::{fields_page, holds};
pub use place::Place;
pub use plan::Plan;
pub use problem::{Fault, Problem};
pub use register::{ANY_ID, Registered, What, register};
pub use slot::{Misfits, Slot};
pub use visit::{Row, Rows, Section, Visitor};
pub use workshop::Workshop;
pub use write::write;
pub use written::Written;

/// Reads the text of a plan; `file` is its name, for the messages.
#[must_use]
pub fn read(text: &str, file: &str) -> Read<Plan> {
    read_file(text, file)
}

/// Reads the text of a workshop; `file` is its name, for the messages.
#[must_use]
pub fn read_workshop(text: &str, file: &str) -> Read<Workshop> {
    read_file(text, file)
}

/// Every table and field of a plan.
#[must_use]
pub fn fields() -> Vec<Registered> {
    register::<Plan>()
}
