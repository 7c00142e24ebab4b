//! Engine, fire, heat, draught, coil and drum.
//!
//! Each stage is a function from a plain struct of what it needs to a plain struct of every
//! value a reader may ask for. Nothing here knows a card inside a loop.

pub mod firebox;
pub mod tubes;
