//! Pressure on edges as forces at nodes.

use crate::body::Pressed;
use crate::mesh::{Edge, Mesh};
use std::f64::consts::TAU;

/// Forces on the whole ring of each node, N, `r` and `z` by turns.
pub(crate) fn nodal(mesh: &Mesh, pressed: &[Pressed]) -> Vec<f64> {
    let mut load = vec![0.0; 2 * mesh.nodes.len()];
    for part in pressed {
        for edge in &part.edges {
            let forces = forces(mesh, edge, part.pressure_mpa);
            for (node, force) in edge.iter().zip(forces) {
                load[2 * node] += force[0];
                load[2 * node + 1] += force[1];
            }
        }
    }
    load
}

/// Forces of a pressure on one edge. The product under the integral is of the fifth degree, so
/// that three points give it exactly.
fn forces(mesh: &Mesh, edge: &Edge, pressure: f64) -> [[f64; 2]; 3] {
    let far = 0.6_f64.sqrt();
    let places = edge.map(|n| mesh.nodes[n]);
    let mut forces = [[0.0; 2]; 3];
    for (s, weight) in [(-far, 5.0 / 9.0), (0.0, 8.0 / 9.0), (far, 5.0 / 9.0)] {
        let n = [0.5 * s * (s - 1.0), 1.0 - s * s, 0.5 * s * (s + 1.0)];
        let d = [s - 0.5, -2.0 * s, s + 0.5];
        let sum = |by: [f64; 3], i: usize| -> f64 { (0..3).map(|k| by[k] * places[k][i]).sum() };
        let (r, along_r, along_z) = (sum(n, 0), sum(d, 0), sum(d, 1));
        let ring = weight * pressure * TAU * r;
        for (force, n) in forces.iter_mut().zip(n) {
            // The metal is on the left: pressure pushes to the left.
            force[0] -= n * ring * along_z;
            force[1] += n * ring * along_r;
        }
    }
    forces
}
