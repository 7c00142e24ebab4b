//! The works that are cited, one file a field of work. Citing is a reference to a constant: a
//! misspelt source does not compile.

mod draught;
pub mod thermal;

pub use draught::*;
pub use thermal::*;

pub use reckoning::source::{COMMON_PRACTICE, DERIVED};
