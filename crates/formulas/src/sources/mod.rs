//! The works that are cited, one file a field of work. Citing is a reference to a constant: a
//! misspelt source does not compile.

mod draught;
mod strength;
pub mod thermal;

pub use draught::*;
pub use reckoning::source::{COMMON_PRACTICE, DERIVED};
pub use strength::*;
pub use thermal::*;
