//! The stress as a surface over the section, and the lines at one height of it.

use solid::{Element, shape};
use std::collections::{BTreeMap, BTreeSet};

use super::{Picture, chain, levels};

type Point = [f64; 2];

/// Parts into which a side of an element is cut.
const PARTS: usize = 2;

/// A triangle with the value at each corner.
type Triangle = [(Point, f64); 3];

/// The stress over what is drawn.
pub(super) struct Field<'a> {
    picture: &'a Picture<'a>,
    /// Elements in the window, by number.
    seen: Vec<usize>,
    triangles: Vec<Triangle>,
}

impl<'a> Field<'a> {
    pub(super) fn of(picture: &'a Picture<'a>) -> Self {
        let [low, high] = picture.window;
        let nodes = &picture.body.mesh.nodes;
        let inside = |n: &usize| {
            let p = nodes[*n];
            (0..2).all(|i| p[i] >= low[i] && p[i] <= high[i])
        };
        let elements = picture.body.mesh.elements.iter().enumerate();
        let seen: Vec<usize> = elements
            .filter(|(_, e)| e.nodes.iter().all(inside))
            .map(|(i, _)| i)
            .collect();
        let triangles = seen.iter().flat_map(|i| cut(picture, *i)).collect();
        Self {
            picture,
            seen,
            triangles,
        }
    }

    fn elements(&self) -> impl Iterator<Item = (usize, &Element)> {
        let elements = &self.picture.body.mesh.elements;
        self.seen.iter().map(|i| (*i, &elements[*i]))
    }

    /// Width and height of what is drawn, mm of metal.
    pub(super) fn size(&self) -> (f64, f64) {
        let [r, z] = [0, 1].map(|i| self.span(i));
        (r[1] - r[0], z[1] - z[0])
    }

    /// Distance of its left edge from the axis, mm.
    pub(super) fn off_axis(&self) -> f64 {
        self.span(0)[0]
    }

    fn span(&self, along: usize) -> [f64; 2] {
        let nodes = &self.picture.body.mesh.nodes;
        let places = self.elements().flat_map(|(_, e)| e.nodes);
        let ends = [f64::INFINITY, f64::NEG_INFINITY];
        places.fold(ends, |[low, high], n| {
            let x = nodes[n][along];
            [low.min(x), high.max(x)]
        })
    }

    /// The greatest value at a node, and its place.
    pub(super) fn greatest(&self) -> Option<(Point, f64)> {
        let corners = self.triangles.iter().flatten();
        corners.copied().max_by(|a, b| a.1.total_cmp(&b.1))
    }

    pub(super) fn levels(&self) -> Vec<f64> {
        levels::levels(self.triangles.iter().flatten().map(|(_, v)| *v).collect())
    }

    /// Lines at one level.
    pub(super) fn lines(&self, level: f64) -> Vec<Vec<Point>> {
        let stretches: Vec<[Point; 2]> = self
            .triangles
            .iter()
            .filter_map(|triangle| stretch(triangle, level))
            .collect();
        chain::chained(&stretches)
    }

    /// The edge of the metal, without the cuts of the window.
    pub(super) fn outline(&self) -> Vec<Vec<Point>> {
        let seen: BTreeSet<usize> = self.elements().flat_map(|(_, e)| e.nodes).collect();
        let inside = |edge: &[usize; 3]| edge.iter().all(|n| seen.contains(n));
        self.joined(self.picture.body.mesh.boundary().into_iter().filter(inside))
    }

    /// The edge of what is drawn, with the cuts of the window.
    pub(super) fn rim(&self) -> Vec<Vec<Point>> {
        let sides = self.sides();
        let alone = |edge: &&[usize; 3]| !sides.contains_key(&[edge[2], edge[1], edge[0]]);
        self.joined(sides.keys().filter(alone).copied())
    }

    /// The sides of what is drawn, each with the metal on its left.
    fn sides(&self) -> BTreeMap<[usize; 3], usize> {
        let sides = |element: &Element| {
            let n = element.nodes;
            let side = |i: usize| ([n[i], n[i + 4], n[(i + 1) % 4]], element.metal);
            [0, 1, 2, 3].map(side)
        };
        self.elements().flat_map(|(_, e)| sides(e)).collect()
    }

    /// Lines where one metal meets another.
    pub(super) fn joints(&self) -> Vec<Vec<Point>> {
        let sides = self.sides();
        let between = sides
            .iter()
            .filter(|([a, m, b], metal)| {
                // Each joint once: from the side of the metal with the lower number.
                sides.get(&[*b, *m, *a]).is_some_and(|other| other > metal)
            })
            .map(|(edge, _)| *edge);
        self.joined(between)
    }

    fn joined(&self, edges: impl Iterator<Item = [usize; 3]>) -> Vec<Vec<Point>> {
        let nodes = &self.picture.body.mesh.nodes;
        let stretches: Vec<[Point; 2]> = edges
            .flat_map(|[a, m, b]| [[nodes[a], nodes[m]], [nodes[m], nodes[b]]])
            .collect();
        chain::chained(&stretches)
    }
}

/// An element cut into triangles.
fn cut(picture: &Picture<'_>, number: usize) -> Vec<Triangle> {
    let element = &picture.body.mesh.elements[number];
    let values = picture.solved.stress[number].map(|s| s.of(picture.kind));
    let places = element.nodes.map(|n| picture.body.mesh.nodes[n]);
    let at = |i: usize, j: usize| -> (Point, f64) {
        let along = |k: usize| 2.0 * k as f64 / PARTS as f64 - 1.0;
        let n = shape(along(i), along(j));
        let sum = |of: &dyn Fn(usize) -> f64| -> f64 { (0..8).map(|k| n[k] * of(k)).sum() };
        let place = [sum(&|k| places[k][0]), sum(&|k| places[k][1])];
        (place, sum(&|k| values[k]))
    };
    let mut triangles = Vec::new();
    for i in 0..PARTS {
        for j in 0..PARTS {
            let [a, b, c, d] = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
            triangles.push([a, b, c]);
            triangles.push([a, c, d]);
        }
    }
    triangles
}

/// The stretch in which a triangle lies at a level; `None` where it lies wholly on one side.
fn stretch(triangle: &Triangle, level: f64) -> Option<[Point; 2]> {
    let mut ends = Vec::new();
    for i in 0..3 {
        let (mut low, mut high) = (triangle[i], triangle[(i + 1) % 3]);
        if (low.1 >= level) == (high.1 >= level) {
            continue;
        }
        // Always from the lower corner, so that both triangles of a side find the same point.
        if low.1 > high.1 {
            std::mem::swap(&mut low, &mut high);
        }
        let share = (level - low.1) / (high.1 - low.1);
        let between = |k: usize| low.0[k] + share * (high.0[k] - low.0[k]);
        ends.push([between(0), between(1)]);
    }
    match ends[..] {
        [a, b] => Some([a, b]),
        _ => None,
    }
}
