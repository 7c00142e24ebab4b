//! A plan resolved into parts with features, joints, gas path and water space: ids, geometry,
//! masses, surfaces, volumes.
//!
//! [`resolve`] gives as much of a plant as the plan allows, findings about its geometry, and the
//! fields that are still wanted. A bad plant is a finding, never an error.
//!
//! [`part`] is the vocabulary in which a part is described. A turned part is a bar less its
//! features, so that the same features, cut in any order, give the same part: the order of work
//! can be simulated on the shape itself.

mod boiler;
mod gas_path;
mod horizontal;
mod joint;
mod known;
mod metal;
mod plant;
mod rules;
mod thread;
mod vertical;
mod water_space;

pub mod fitting;
pub mod layout;
pub mod part;

pub use gas_path::{GasSection, Stretch};
pub use horizontal::{CrossTube, CrossTubes, EndField, FlueInPlace, LyingVessel};
pub use joint::{Joint, Seen};
pub use known::Gap;
pub use metal::{density, specific_heat};
pub use plant::{Outline, Plant, Resolved, Surfaces, resolve};
pub use rules::*;
pub use vertical::{Nest, StandingPlate, Vessel};
pub use water_space::WaterSpace;
