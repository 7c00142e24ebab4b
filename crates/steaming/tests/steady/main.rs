//! The steady loop, its sweep and its band.

#[path = "../rl1/mod.rs"]
mod rl1;

mod independent_rl1;
