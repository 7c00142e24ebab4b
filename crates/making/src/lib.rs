//! Parts to ordered operations.
//!
//! A route card is a list of settings, each a way of holding and the rows of work done in it.
//! [`simulate`] runs a card on the shape of the bar, one row after another; [`check`] holds what
//! was seen against the rules of order in [`RULES`], and names for each fault the nearest order
//! that avoids it; [`propose`] writes a card for a turned part from the maker's own workshop.
//!
//! Left out as yet: sheet and tube work, bending, setting-out, milling. A part that needs them is
//! refused by [`propose`] with the feature named, never passed over.

pub mod card;
mod check;
mod piece;
mod propose;
mod rules;
mod sentence;
mod simulate;
pub mod tapping;
mod words;
pub mod workshop;

pub use card::{Operation, RouteCard, Row, Setting, Work};
pub use check::{Checked, check};
pub use piece::{Piece, Service};
pub use propose::{NoCard, Proposal, propose};
pub use rules::RULES;
pub use sentence::{RowText, SettingText, sentences};
pub use simulate::{Simulated, Step, simulate};
pub use words::Reads;
pub use workshop::Workshop;
