//! The balance of forces: stiffness gathered, solved by sparse Cholesky, and checked.

use crate::body::{Along, Body};
use crate::element::{self, Corners};
use crate::load;
use crate::mesh::Element;
use crate::solved::{Balance, Solved};
use crate::stress::Stress;
use faer::linalg::solvers::Solve;
use faer::sparse::{SparseColMat, Triplet};
use faer::{Col, Side};
use std::collections::BTreeMap;

/// Why there is no answer.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NotSolved {
    /// A metal whose numbers are those of no solid, or that an element names and nobody gave.
    #[error("metal {0} of the body is not given, or not that of a solid")]
    Metal(usize),
    /// An element that is flat or turned inside out.
    #[error("element {0} has no volume")]
    Element(usize),
    /// A piece of the body is not held along the axis.
    #[error("a piece of the body is not held along the axis, so that it has no place")]
    NotHeld,
    /// The solution does not balance the load as it must.
    #[error("the balance is out by {0:.1e} of the load")]
    Unbalanced(f64),
}

/// What the balance may be out by, in parts of the load. The parts of a boiler come out at 1e-12;
/// in a plate that is a hundred times wider than thick the forces of its metal cancel to the
/// eighth figure.
const CLOSE: f64 = 1e-6;
/// Rounds on what the solution before leaves over, which take the rounding of a thin body out.
const ROUNDS: u32 = 3;

/// Solves a body.
///
/// # Errors
///
/// [`NotSolved`] says what is wrong with the body.
pub fn solve(body: &Body) -> Result<Solved, NotSolved> {
    looked_over(body)?;
    let stiffness: Vec<Ring> = body.mesh.elements.iter().map(|e| ring(body, e)).collect();
    let load = load::nodal(&body.mesh, &body.pressed);
    let numbers = Numbers::of(body);
    let moved = displacements(&stiffness, &load, &numbers)?;
    let force = internal(&stiffness, &moved);
    let balance = Balance::of(&load, &force, &numbers.held);
    if balance.left_over() > CLOSE {
        return Err(NotSolved::Unbalanced(balance.left_over()));
    }
    let reactions = numbers
        .held
        .iter()
        .map(|&(n, along)| ((n, along), force[at(n, along)] - load[at(n, along)]))
        .collect();
    Ok(Solved {
        stress: averaged(body, &moved),
        displaced: moved.chunks_exact(2).map(|u| [u[0], u[1]]).collect(),
        work: load.iter().zip(&moved).map(|(f, u)| f * u).sum(),
        energy: 0.5 * force.iter().zip(&moved).map(|(f, u)| f * u).sum::<f64>(),
        reactions,
        balance,
    })
}

/// The displacement of a node in the row of all.
pub(crate) fn at(node: usize, along: Along) -> usize {
    2 * node
        + match along {
            Along::Radius => 0,
            Along::Axis => 1,
        }
}

fn looked_over(body: &Body) -> Result<(), NotSolved> {
    for (i, element) in body.mesh.elements.iter().enumerate() {
        let metal = body.metals.get(element.metal);
        if !metal.is_some_and(|m| m.is_solid()) {
            return Err(NotSolved::Metal(element.metal));
        }
        let points = element::points(&body.mesh.corners(element));
        if points.iter().any(|p| p.volume.is_nan() || p.volume <= 0.0) {
            return Err(NotSolved::Element(i));
        }
    }
    if body.has_its_place() {
        Ok(())
    } else {
        Err(NotSolved::NotHeld)
    }
}

/// One element's stiffness and the rows it stands in.
struct Ring {
    k: [[f64; 16]; 16],
    rows: [usize; 16],
}

fn rows(element: &Element) -> [usize; 16] {
    std::array::from_fn(|i| 2 * element.nodes[i / 2] + i % 2)
}

fn ring(body: &Body, element: &Element) -> Ring {
    let corners: Corners = body.mesh.corners(element);
    Ring {
        k: element::stiffness(&corners, body.metals[element.metal]),
        rows: rows(element),
    }
}

/// Which displacements are free, and the number of each in the equations.
struct Numbers {
    held: Vec<(usize, Along)>,
    free: Vec<Option<usize>>,
    count: usize,
}

impl Numbers {
    fn of(body: &Body) -> Self {
        let on_axis = |n: &usize| body.mesh.nodes[*n][0] == 0.0;
        let axis = (0..body.mesh.nodes.len()).filter(on_axis);
        let mut held = body.held.clone();
        held.extend(axis.map(|n| (n, Along::Radius)));
        held.sort_unstable();
        held.dedup();
        let mut is_held = vec![false; 2 * body.mesh.nodes.len()];
        for &(node, along) in &held {
            is_held[at(node, along)] = true;
        }
        let mut count = 0;
        let free = is_held
            .iter()
            .map(|held| {
                let number = (!held).then_some(count);
                count += usize::from(!held);
                number
            })
            .collect();
        Self { held, free, count }
    }
}

/// Displacements, mm, `r` and `z` of each node by turns.
fn displacements(
    stiffness: &[Ring],
    load: &[f64],
    numbers: &Numbers,
) -> Result<Vec<f64>, NotSolved> {
    let triplets = gathered(stiffness, numbers);
    let matrix = SparseColMat::try_new_from_triplets(numbers.count, numbers.count, &triplets)
        .map_err(|_| NotSolved::NotHeld)?;
    let factors = matrix
        .sp_cholesky(Side::Lower)
        .map_err(|_| NotSolved::NotHeld)?;
    let mut moved = vec![0.0; load.len()];
    for _ in 0..=ROUNDS {
        let force = internal(stiffness, &moved);
        let mut rest = Col::<f64>::zeros(numbers.count);
        for (row, number) in numbers.free.iter().enumerate() {
            if let Some(number) = number {
                rest[*number] = load[row] - force[row];
            }
        }
        let step = factors.solve(&rest);
        for (row, number) in numbers.free.iter().enumerate() {
            if let Some(number) = number {
                moved[row] += step[*number];
            }
        }
    }
    if moved.iter().all(|u| u.is_finite()) {
        Ok(moved)
    } else {
        Err(NotSolved::NotHeld)
    }
}

/// The lower half of the stiffness of the free displacements, each cell once.
fn gathered(stiffness: &[Ring], numbers: &Numbers) -> Vec<Triplet<usize, usize, f64>> {
    let mut cells: BTreeMap<(usize, usize), f64> = BTreeMap::new();
    for ring in stiffness {
        let free = ring.rows.map(|row| numbers.free[row]);
        for (i, row) in free.iter().enumerate() {
            for (j, column) in free.iter().enumerate() {
                if let (Some(row), Some(column)) = (row, column)
                    && row >= column
                {
                    *cells.entry((*column, *row)).or_insert(0.0) += ring.k[i][j];
                }
            }
        }
    }
    cells
        .into_iter()
        .map(|((column, row), value)| Triplet::new(row, column, value))
        .collect()
}

/// The forces, N, with which the body withstands these displacements.
fn internal(stiffness: &[Ring], moved: &[f64]) -> Vec<f64> {
    let mut force = vec![0.0; moved.len()];
    for ring in stiffness {
        for (row, k) in ring.rows.iter().zip(&ring.k) {
            let sum: f64 = k.iter().zip(&ring.rows).map(|(k, r)| k * moved[*r]).sum();
            force[*row] += sum;
        }
    }
    force
}

/// Stress at the nodes of each element: the mean of what the elements of one metal say.
fn averaged(body: &Body, moved: &[f64]) -> Vec<[Stress; 8]> {
    let mut sums: BTreeMap<(usize, usize), ([f64; 4], f64)> = BTreeMap::new();
    for element in &body.mesh.elements {
        let own = rows(element).map(|row| moved[row]);
        let metal = body.metals[element.metal];
        let read = element::stress(&body.mesh.corners(element), metal, &own);
        for (node, stress) in element.nodes.iter().zip(element::to_nodes(&read)) {
            let (sum, count) = sums
                .entry((element.metal, *node))
                .or_insert(([0.0; 4], 0.0));
            *count += 1.0;
            for (sum, part) in sum.iter_mut().zip(stress) {
                *sum += part;
            }
        }
    }
    let mean = |element: &Element, node: usize| {
        let (sum, count) = sums[&(element.metal, node)];
        Stress::from_array(sum.map(|s| s / count))
    };
    let elements = body.mesh.elements.iter();
    elements
        .map(|element| element.nodes.map(|node| mean(element, node)))
        .collect()
}
