//! The steady loop, its sweep and its band.

#[path = "../rl1/changed.rs"]
mod changed;
#[path = "../rl1/fitted.rs"]
mod fitted;
#[path = "../../../formulas/tests/kinetic_theory/mod.rs"]
mod kinetic_theory;
#[path = "../rl1/mod.rs"]
mod rl1;
#[path = "../rl1/unmeasured.rs"]
mod unmeasured;

mod balances;
mod behaviour;
mod explaining;
mod independent_rl1;
mod spread;
mod sweeping;
