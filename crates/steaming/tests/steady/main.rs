//! The steady loop, its sweep and its band.

#[path = "../rl1/mod.rs"]
mod rl1;

mod balances;
mod behaviour;
mod independent_rl1;
mod spread;
mod sweeping;
