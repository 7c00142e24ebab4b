//! What has been published: one kernel and one card per formula, typed readers of published
//! tables, and their check values.
//!
//! A kernel is a plain function in the unit in which the source prints the law. A card beside it
//! says what it gives and takes, its limits and its source. Every family lists its cards in
//! `CARDS`; [`register`] gathers them. This crate never sees a plan.

mod located;

pub mod balance;
pub mod bed;
pub mod burner;
pub mod coil;
pub mod cutting;
pub mod draught;
pub mod engine;
pub mod flue;
pub mod fuel;
pub mod gas;
pub mod heat;
pub mod reference;
pub mod register;
pub mod relief;
pub mod sources;
pub mod spirit;
pub mod steam;
pub mod supply;
pub mod table;
pub mod thread;
pub mod trade;
pub mod vessel;

pub use located::{Fault, Wrong};
