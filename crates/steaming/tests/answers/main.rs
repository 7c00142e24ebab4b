//! Heat, water, draught, cures and the question turned round, on the plant of the independent
//! calculation and its neighbours.

mod cures;
mod water;
mod where_it_goes;

#[path = "../rl1/changed.rs"]
mod changed;
#[path = "../rl1/mod.rs"]
mod rl1;
#[path = "../rl1/unmeasured.rs"]
mod unmeasured;
