//! What is solved: a mesh, its metals, what presses on it and what holds it.

use crate::mesh::{Edge, Mesh};
use crate::metal::Metal;
use std::collections::BTreeSet;

/// Which way a node is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Along {
    /// Across the axis.
    Radius,
    /// Along the axis.
    Axis,
}

/// A pressure on a stretch of boundary.
#[derive(Clone, Debug, PartialEq)]
pub struct Pressed {
    /// The boundary.
    pub edges: Vec<Edge>,
    /// Pressure on it, MPa; below nought it pulls.
    pub pressure_mpa: f64,
}

/// A body of revolution with its load.
#[derive(Clone, Debug, PartialEq)]
pub struct Body {
    /// Elements.
    pub mesh: Mesh,
    /// Metals, as the elements name them.
    pub metals: Vec<Metal>,
    /// Pressures.
    pub pressed: Vec<Pressed>,
    /// Nodes that cannot move in one direction. A node on the axis is held across it without
    /// being named.
    pub held: Vec<(usize, Along)>,
}

impl Body {
    /// Holds every node of a stretch of boundary in one direction.
    pub fn hold(&mut self, edges: &[Edge], along: Along) {
        let nodes = edges.iter().flatten().map(|n| (*n, along));
        self.held.extend(nodes);
        self.held.sort_unstable();
        self.held.dedup();
    }

    /// Whether every piece of the body is held along the axis: the one way in which a ring can go
    /// off as a whole.
    pub(crate) fn has_its_place(&self) -> bool {
        let mut piece: Vec<usize> = (0..self.mesh.nodes.len()).collect();
        // Each node takes the least name among its neighbours until none changes.
        let mut changed = true;
        while changed {
            changed = false;
            for element in &self.mesh.elements {
                let names = element.nodes.map(|n| piece[n]);
                let least = names.into_iter().fold(usize::MAX, usize::min);
                for node in element.nodes {
                    changed |= piece[node] != least;
                    piece[node] = least;
                }
            }
        }
        let held: BTreeSet<usize> = self
            .held
            .iter()
            .filter(|(_, along)| *along == Along::Axis)
            .map(|(node, _)| piece[*node])
            .collect();
        !piece.is_empty() && piece.iter().all(|name| held.contains(name))
    }
}
