//! Stress in bodies of revolution by finite elements: a second opinion beside the formulas of the
//! rule sets.
//!
//! Metal is linear and the same in every direction; displacements are small; load and shape are
//! even all round the axis. Nothing here knows a plan, a rule or a limit: lengths in mm, pressure
//! and stress in MPa, forces in N over the whole circle.
//!
//! ```
//! use solid::{Along, Block, Body, Kind, Mesh, Metal, Pressed, solve};
//! // A ring, bore of 20 mm radius, outside 30 mm, 10 MPa within, held from growing along its axis.
//! let wall = Block::Square {
//!     r: vec![20.0, 22.5, 25.0, 27.5, 30.0],
//!     z: vec![0.0, 2.0],
//! };
//! let mesh = Mesh::of(&[(wall, 0)]);
//! let bore = mesh.between([20.0, 2.0], [20.0, 0.0]);
//! let ends = [mesh.between([20.0, 0.0], [30.0, 0.0]), mesh.between([30.0, 2.0], [20.0, 2.0])];
//! let mut body = Body {
//!     mesh,
//!     metals: vec![Metal { modulus_mpa: 200e3, poisson: 0.3 }],
//!     pressed: vec![Pressed { edges: bore, pressure_mpa: 10.0 }],
//!     held: Vec::new(),
//! };
//! body.hold(&ends.concat(), Along::Axis);
//! let solved = solve(&body).expect("an answer");
//! let node = body.mesh.nearest([20.0, 0.0]).expect("a node");
//! let hoop = solved.at(&body.mesh, 0, node).expect("stress").of(Kind::Hoop);
//! assert!((hoop / 26.0 - 1.0).abs() < 0.005);
//! ```

mod body;
mod case;
mod element;
mod load;
mod mesh;
mod metal;
mod solve;
mod solved;
mod stations;
mod stress;

pub use body::{Along, Body, Pressed};
pub use case::{BushInPlate, DishedEnd, FlatEnd, NoShape, Points, Rim, Tube};
pub use element::shape;
pub use mesh::{Block, Edge, Element, Mesh};
pub use metal::Metal;
pub use solve::{NotSolved, solve};
pub use solved::{Across, Balance, Peak, Solved};
pub use stations::Fineness;
pub use stress::{Kind, Stress};
