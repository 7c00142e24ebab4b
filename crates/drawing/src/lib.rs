//! Drawings of parts and sections: a display list in millimetres on paper, and its writers.
//!
//! Habits follow the standards for technical drawings: lines ISO 128, dimensions ISO 129-1,
//! threads ISO 6410-1, scales ISO 5455 (all from memory). Nothing here does engineering
//! arithmetic: a drawing places what the plant has resolved.

pub mod boiler;
pub mod clash;
mod clip;
pub mod contour;
pub mod dimension;
pub mod hatch;
mod layout;
mod lettering;
pub mod lying;
pub mod sheet;
mod svg;
pub mod turned;

pub use lettering::{DIAMETER, TYPE, diameter, figure, width};
pub use sheet::Sheet;
pub use svg::svg;
