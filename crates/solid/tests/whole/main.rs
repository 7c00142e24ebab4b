//! The solver against closed forms, print and another solver; what must hold in any body; finer
//! meshes.

mod common;
mod gates;
mod identities;
mod refining;
