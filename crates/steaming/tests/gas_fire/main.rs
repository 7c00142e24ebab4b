//! A gas fire in a centre flue.

#[path = "../gf1/changed.rs"]
mod changed;
#[path = "../gf1/mod.rs"]
mod gf1;
#[path = "../../../formulas/tests/kinetic_theory/mod.rs"]
mod kinetic_theory;

mod burner;
mod explaining;
mod independent_gf1;
mod march;
mod rules_flame;
mod signs;
mod spread;
mod tank;
mod variants;
