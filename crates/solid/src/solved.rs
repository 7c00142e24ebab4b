//! The answer: displacements, stresses, reactions, and how well they balance.

use crate::body::{Along, Body};
use crate::mesh::Mesh;
use crate::solve::at;
use crate::stress::{Kind, Stress};

/// Whether forces add up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Balance {
    /// Sum of the loads along the axis, N.
    pub applied: f64,
    /// Sum of the reactions along the axis, N.
    pub held: f64,
    /// Sum of the sizes of all forces of the load, N.
    pub whole: f64,
    /// Greatest force that a free node is left with, N.
    pub worst_node: f64,
}

impl Balance {
    pub(crate) fn of(load: &[f64], force: &[f64], held: &[(usize, Along)]) -> Self {
        let mut free = vec![true; load.len()];
        for &(node, along) in held {
            free[at(node, along)] = false;
        }
        let axial = held.iter().filter(|(_, along)| *along == Along::Axis);
        let left = load.iter().zip(force).zip(&free).filter(|(_, free)| **free);
        Self {
            applied: load.iter().skip(1).step_by(2).sum(),
            held: axial
                .map(|&(n, along)| force[at(n, along)] - load[at(n, along)])
                .sum(),
            whole: load.iter().map(|f| f.abs()).sum(),
            worst_node: left.map(|((f, g), _)| (f - g).abs()).fold(0.0, f64::max),
        }
    }

    /// What is left over, in parts of the load.
    #[must_use]
    pub fn left_over(&self) -> f64 {
        let out = (self.applied + self.held).abs().max(self.worst_node);
        if self.whole > 0.0 {
            out / self.whole
        } else {
            out
        }
    }
}

/// Membrane and bending part of a stress across a wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Across {
    /// The even part, MPa.
    pub membrane: f64,
    /// The straight part at the end of the line, MPa; at its start the same with the other sign.
    pub bending: f64,
}

/// A solved body.
#[derive(Clone, Debug, PartialEq)]
pub struct Solved {
    /// How far each node went, across and along the axis, mm.
    pub displaced: Vec<[f64; 2]>,
    /// Stress at the nodes of each element, averaged within a metal, MPa.
    pub stress: Vec<[Stress; 8]>,
    /// Forces of what holds the body, over the whole ring of a node, N.
    pub reactions: Vec<((usize, Along), f64)>,
    /// Whether forces add up.
    pub balance: Balance,
    /// Sum of loads times displacements, N·mm.
    pub work: f64,
    /// Energy in the metal, N·mm: half of that.
    pub energy: f64,
}

/// Where a stress is greatest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Peak {
    /// Its node.
    pub node: usize,
    /// The stress, MPa.
    pub mpa: f64,
}

impl Solved {
    /// Stress at a node in one metal; `None` where the metal does not touch the node.
    #[must_use]
    pub fn at(&self, mesh: &Mesh, metal: usize, node: usize) -> Option<Stress> {
        mesh.elements
            .iter()
            .zip(&self.stress)
            .filter(|(element, _)| element.metal == metal)
            .find_map(|(element, stress)| {
                let i = element.nodes.iter().position(|n| *n == node)?;
                Some(stress[i])
            })
    }

    /// The greatest stress of a kind; `None` in an empty mesh.
    #[must_use]
    pub fn peak(&self, mesh: &Mesh, kind: Kind) -> Option<Peak> {
        let elements = mesh.elements.iter().zip(&self.stress);
        let all = elements.flat_map(|(element, stress)| element.nodes.iter().zip(stress));
        all.map(|(node, stress)| Peak {
            node: *node,
            mpa: stress.of(kind),
        })
        .max_by(|a, b| a.mpa.total_cmp(&b.mpa))
    }

    /// A kind of stress across a wall, split into its even and its straight part. The line runs
    /// from node to node along a line of the mesh in one metal; `None` where there are no whole
    /// elements along it.
    #[must_use]
    pub fn across(
        &self,
        body: &Body,
        (metal, kind): (usize, Kind),
        from: [f64; 2],
        to: [f64; 2],
    ) -> Option<Across> {
        let nodes = body.mesh.on_line(from, to);
        if nodes.len() < 3 || nodes.len().is_multiple_of(2) {
            return None;
        }
        let long = (to[0] - from[0]).hypot(to[1] - from[1]);
        let value = |n: usize| -> Option<(f64, f64)> {
            let p = body.mesh.nodes[n];
            let share = (p[0] - from[0]).hypot(p[1] - from[1]) / long;
            Some((share, self.at(&body.mesh, metal, n)?.of(kind)))
        };
        let (mut even, mut moment) = (0.0, 0.0);
        for three in nodes.windows(3).step_by(2) {
            let [a, m, b] = [value(three[0])?, value(three[1])?, value(three[2])?];
            let step = (b.0 - a.0) / 6.0;
            let sum = |f: fn((f64, f64)) -> f64| step * (f(a) + 4.0 * f(m) + f(b));
            even += sum(|(_, s)| s);
            moment += sum(|(x, s)| s * (x - 0.5));
        }
        Some(Across {
            membrane: even,
            bending: 6.0 * moment,
        })
    }

    /// Sum of the reactions in one direction over some nodes, N.
    #[must_use]
    pub fn reaction(&self, along: Along, nodes: &[usize]) -> f64 {
        let here = |(n, a): (usize, Along)| a == along && nodes.contains(&n);
        let kept = self.reactions.iter().filter(|(place, _)| here(*place));
        kept.map(|(_, force)| force).sum()
    }
}
