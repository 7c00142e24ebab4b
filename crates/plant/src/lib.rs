//! A plan resolved into parts with features, joints, gas path and water space: ids, geometry,
//! masses, surfaces, volumes.
//!
//! [`part`] is the vocabulary in which a part is described. A turned part is a bar less its
//! features, so that the same features, cut in any order, give the same part: the order of work
//! can be simulated on the shape itself.

pub mod part;
