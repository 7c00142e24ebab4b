//! Meshes of a few blocks that share their edges, and their boundary.

use crate::element::{Corners, PLACES, SIDES};
use crate::stations::{Fineness, finer};
use std::collections::{BTreeMap, BTreeSet};

/// Nodes nearer than this are one, mm.
const TOGETHER: f64 = 1e-6;

/// One element.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Element {
    /// Its nodes: four corners anticlockwise, then the middles of the sides after each corner.
    pub nodes: [usize; 8],
    /// Which of the body's metals it is made of.
    pub metal: usize,
}

/// The side of an element: corner, middle, corner, with the metal on its left.
pub type Edge = [usize; 3];

/// A body of revolution cut into elements; `r` from the axis and `z` along it, mm.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Mesh {
    /// Places of the nodes.
    pub nodes: Vec<[f64; 2]>,
    /// Elements.
    pub elements: Vec<Element>,
}

/// A block of elements, laid out on two rows of stations, two at least of each.
pub enum Block {
    /// Between lines across and lines along the axis.
    Square {
        /// Distances from the axis, growing.
        r: Vec<f64>,
        /// Places along it, growing.
        z: Vec<f64>,
    },
    /// Between arcs about one centre.
    Arc {
        /// Centre.
        centre: [f64; 2],
        /// Radii, growing.
        radii: Vec<f64>,
        /// Angles from the direction of `r`, degrees, growing anticlockwise.
        degrees: Vec<f64>,
    },
}

impl Block {
    /// The same with every length cut into equal parts.
    #[must_use]
    pub fn finer(self, by: Fineness) -> Self {
        match self {
            Self::Square { r, z } => Self::Square {
                r: finer(&r, by),
                z: finer(&z, by),
            },
            Self::Arc {
                centre,
                radii,
                degrees,
            } => Self::Arc {
                centre,
                radii: finer(&radii, by),
                degrees: finer(&degrees, by),
            },
        }
    }

    fn stations(&self) -> (&[f64], &[f64]) {
        match self {
            Self::Square { r, z } => (r, z),
            Self::Arc { radii, degrees, .. } => (radii, degrees),
        }
    }

    fn place(&self, a: f64, b: f64) -> [f64; 2] {
        match self {
            Self::Square { .. } => [a, b],
            Self::Arc { centre, .. } => {
                let (s, c) = sin_cos(b);
                [centre[0] + a * c, centre[1] + a * s]
            }
        }
    }
}

/// Sine and cosine of an angle in degrees, exact at the quarters of a turn: a node that belongs
/// on the axis lies on it.
fn sin_cos(degrees: f64) -> (f64, f64) {
    let quarters = degrees / 90.0;
    if quarters.fract() == 0.0 {
        match quarters.rem_euclid(4.0) as u8 {
            0 => (0.0, 1.0),
            1 => (1.0, 0.0),
            2 => (0.0, -1.0),
            _ => (-1.0, 0.0),
        }
    } else {
        degrees.to_radians().sin_cos()
    }
}

/// Puts blocks together.
#[derive(Default)]
struct Builder {
    mesh: Mesh,
    near: BTreeMap<[i64; 2], usize>,
}

impl Builder {
    fn add(&mut self, block: &Block, metal: usize) {
        let (a, b) = block.stations();
        for along in b.windows(2) {
            for across in a.windows(2) {
                let nodes = PLACES.map(|[x, y]| {
                    let at = block.place(between(across, x), between(along, y));
                    self.node(at)
                });
                self.mesh.elements.push(Element { nodes, metal });
            }
        }
    }

    /// The node at a place: one that is there already, or a new one.
    fn node(&mut self, at: [f64; 2]) -> usize {
        let cell = at.map(|x| (x / TOGETHER).round() as i64);
        let around = (-1..=1).flat_map(|i| (-1..=1).map(move |j| [cell[0] + i, cell[1] + j]));
        let mut near = around.filter_map(|cell| self.near.get(&cell));
        if let Some(&node) = near.next() {
            return node;
        }
        self.near.insert(cell, self.mesh.nodes.len());
        self.mesh.nodes.push(at);
        self.mesh.nodes.len() - 1
    }
}

fn between(ends: &[f64], x: f64) -> f64 {
    // Written so that both ends come out exactly.
    0.5 * ((1.0 - x) * ends[0] + (1.0 + x) * ends[1])
}

impl Mesh {
    /// Blocks put together, each with the number of its metal. Two blocks are one body along the
    /// sides on which their nodes fall together.
    #[must_use]
    pub fn of(blocks: &[(Block, usize)]) -> Self {
        let mut builder = Builder::default();
        for (block, metal) in blocks {
            builder.add(block, *metal);
        }
        builder.mesh
    }

    /// Places of the nodes of an element.
    pub(crate) fn corners(&self, element: &Element) -> Corners {
        element.nodes.map(|n| self.nodes[n])
    }

    /// The node nearest to a place; `None` in an empty mesh.
    #[must_use]
    pub fn nearest(&self, [r, z]: [f64; 2]) -> Option<usize> {
        let off = |n: &usize| (self.nodes[*n][0] - r).hypot(self.nodes[*n][1] - z);
        (0..self.nodes.len()).min_by(|a, b| off(a).total_cmp(&off(b)))
    }

    /// Nodes on the straight line between two places, from the first to the second.
    #[must_use]
    pub fn on_line(&self, from: [f64; 2], to: [f64; 2]) -> Vec<usize> {
        let (x, y) = (to[0] - from[0], to[1] - from[1]);
        let long = x.hypot(y);
        let along = |n: usize| {
            let p = self.nodes[n];
            ((p[0] - from[0]) * x + (p[1] - from[1]) * y) / long
        };
        let off = |n: usize| {
            let p = self.nodes[n];
            ((p[0] - from[0]) * y - (p[1] - from[1]) * x).abs() / long
        };
        let lies = |n: &usize| {
            let at = along(*n);
            off(*n) < TOGETHER && at > -TOGETHER && at < long + TOGETHER
        };
        let mut nodes: Vec<usize> = (0..self.nodes.len()).filter(lies).collect();
        nodes.sort_by(|a, b| along(*a).total_cmp(&along(*b)));
        nodes
    }

    /// The boundary: sides that belong to one element alone, in no particular order.
    #[must_use]
    pub fn boundary(&self) -> Vec<Edge> {
        let mut seen: BTreeSet<[usize; 3]> = BTreeSet::new();
        let sides = || {
            let of = |e: &Element| SIDES.map(|side| side.map(|i| e.nodes[i]));
            self.elements.iter().flat_map(of)
        };
        // Two neighbours pass along a shared side in opposite directions.
        seen.extend(sides());
        sides()
            .filter(|[a, m, b]| !seen.contains(&[*b, *m, *a]))
            .collect()
    }

    /// The stretch of boundary from the node nearest to one place on to the node nearest to
    /// another, with the metal on the left; empty where the two do not lie on one boundary.
    #[must_use]
    pub fn between(&self, from: [f64; 2], to: [f64; 2]) -> Vec<Edge> {
        let (Some(from), Some(to)) = (self.nearest(from), self.nearest(to)) else {
            return Vec::new();
        };
        let next: BTreeMap<usize, Edge> = self.boundary().into_iter().map(|e| (e[0], e)).collect();
        let mut stretch = Vec::new();
        let mut at = from;
        while at != to && stretch.len() < next.len() {
            let Some(edge) = next.get(&at) else {
                return Vec::new();
            };
            stretch.push(*edge);
            at = edge[2];
        }
        if at == to { stretch } else { Vec::new() }
    }
}
