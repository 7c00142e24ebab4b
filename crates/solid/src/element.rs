//! The quadrilateral of eight nodes, turned about the axis.
//!
//! Nodes 0 to 3 are the corners, anticlockwise in the plane of `r` (across) and `z` (upwards);
//! 4 to 7 stand in the middle of the sides 0-1, 1-2, 2-3, 3-0. Stiffness is gathered at two by
//! two points: full integration makes thin plates too stiff, and the one false mode that the
//! short rule leaves in a lone element is not shared by two neighbours. At the same points the
//! stress is best; elsewhere it is carried on from them as a bilinear surface.

use crate::metal::Metal;
use std::f64::consts::TAU;

/// Corner and mid-side places of the nodes in the element's own square.
pub(crate) const PLACES: [[f64; 2]; 8] = [
    [-1.0, -1.0],
    [1.0, -1.0],
    [1.0, 1.0],
    [-1.0, 1.0],
    [0.0, -1.0],
    [1.0, 0.0],
    [0.0, 1.0],
    [-1.0, 0.0],
];

/// The sides as corner, middle, corner, anticlockwise.
pub(crate) const SIDES: [[usize; 3]; 4] = [[0, 4, 1], [1, 5, 2], [2, 6, 3], [3, 7, 0]];

/// Places of the nodes of one element, mm.
pub(crate) type Corners = [[f64; 2]; 8];

/// Shape functions at a place of the square.
#[must_use]
pub fn shape(x: f64, y: f64) -> [f64; 8] {
    std::array::from_fn(|i| {
        let [a, b] = PLACES[i];
        if i < 4 {
            0.25 * (1.0 + a * x) * (1.0 + b * y) * (a * x + b * y - 1.0)
        } else if a == 0.0 {
            0.5 * (1.0 - x * x) * (1.0 + b * y)
        } else {
            0.5 * (1.0 + a * x) * (1.0 - y * y)
        }
    })
}

/// Their slopes along both sides of the square.
fn slopes(x: f64, y: f64) -> [[f64; 2]; 8] {
    std::array::from_fn(|i| {
        let [a, b] = PLACES[i];
        if i < 4 {
            [
                0.25 * a * (1.0 + b * y) * (2.0 * a * x + b * y),
                0.25 * b * (1.0 + a * x) * (a * x + 2.0 * b * y),
            ]
        } else if a == 0.0 {
            [-x * (1.0 + b * y), 0.5 * b * (1.0 - x * x)]
        } else {
            [0.5 * a * (1.0 - y * y), -y * (1.0 + a * x)]
        }
    })
}

/// Strain from displacement at a point, and the volume that the point stands for.
pub(crate) struct Point {
    /// Radial, axial, hoop and shear strain for each displacement, `r` and `z` by turns.
    pub(crate) strain: [[f64; 16]; 4],
    /// Volume, mm³; negative in an element that is turned inside out.
    pub(crate) volume: f64,
}

/// The four points at which stiffness is gathered and stress is read.
pub(crate) fn points(nodes: &Corners) -> [Point; 4] {
    let g = 1.0 / 3.0_f64.sqrt();
    [[-g, -g], [g, -g], [g, g], [-g, g]].map(|[x, y]| point(nodes, x, y))
}

fn point(nodes: &Corners, x: f64, y: f64) -> Point {
    let (n, d) = (shape(x, y), slopes(x, y));
    let mut j = [[0.0; 2]; 2];
    let mut r = 0.0;
    for i in 0..8 {
        r += n[i] * nodes[i][0];
        for (row, slope) in j.iter_mut().zip(d[i]) {
            row[0] += slope * nodes[i][0];
            row[1] += slope * nodes[i][1];
        }
    }
    let area = j[0][0] * j[1][1] - j[0][1] * j[1][0];
    let mut strain = [[0.0; 16]; 4];
    for i in 0..8 {
        let along_r = (j[1][1] * d[i][0] - j[0][1] * d[i][1]) / area;
        let along_z = (j[0][0] * d[i][1] - j[1][0] * d[i][0]) / area;
        strain[0][2 * i] = along_r;
        strain[1][2 * i + 1] = along_z;
        strain[2][2 * i] = n[i] / r;
        strain[3][2 * i] = along_z;
        strain[3][2 * i + 1] = along_r;
    }
    Point {
        strain,
        volume: TAU * r * area,
    }
}

/// Stiffness of the whole ring, N/mm.
pub(crate) fn stiffness(nodes: &Corners, metal: Metal) -> [[f64; 16]; 16] {
    let d = metal.stiffness();
    let mut k = [[0.0; 16]; 16];
    for point in points(nodes) {
        let stress = stress_rows(&d, &point.strain);
        for (a, row) in k.iter_mut().enumerate() {
            for (b, cell) in row.iter_mut().enumerate() {
                let work: f64 = (0..4).map(|s| point.strain[s][a] * stress[s][b]).sum();
                *cell += work * point.volume;
            }
        }
    }
    k
}

fn stress_rows(d: &[[f64; 4]; 4], strain: &[[f64; 16]; 4]) -> [[f64; 16]; 4] {
    std::array::from_fn(|s| std::array::from_fn(|b| (0..4).map(|t| d[s][t] * strain[t][b]).sum()))
}

/// Stress at the four points for the displacements of the nodes, MPa.
pub(crate) fn stress(nodes: &Corners, metal: Metal, moved: &[f64; 16]) -> [[f64; 4]; 4] {
    let d = metal.stiffness();
    points(nodes).map(|point| {
        let strain = point
            .strain
            .map(|row| row.iter().zip(moved).map(|(a, b)| a * b).sum::<f64>());
        d.map(|row| row.iter().zip(strain).map(|(a, b)| a * b).sum())
    })
}

/// Values at the four points carried on to the eight nodes.
pub(crate) fn to_nodes(at_points: &[[f64; 4]; 4]) -> [[f64; 4]; 8] {
    let far = 3.0_f64.sqrt();
    PLACES.map(|[a, b]| {
        let (x, y) = (a * far, b * far);
        let share = [
            0.25 * (1.0 - x) * (1.0 - y),
            0.25 * (1.0 + x) * (1.0 - y),
            0.25 * (1.0 + x) * (1.0 + y),
            0.25 * (1.0 - x) * (1.0 + y),
        ];
        std::array::from_fn(|s| (0..4).map(|p| share[p] * at_points[p][s]).sum())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn identity_shapes_add_up_to_one_and_are_one_at_their_own_node() {
        let n = shape(0.3, -0.7);
        assert!((n.iter().sum::<f64>() - 1.0).abs() < 1e-14);
        for (i, [x, y]) in PLACES.into_iter().enumerate() {
            let n = shape(x, y);
            for (j, value) in n.into_iter().enumerate() {
                assert!((value - f64::from(u8::from(i == j))).abs() < 1e-14);
            }
        }
    }

    #[test]
    fn identity_slopes_are_those_of_the_shapes() {
        let (x, y, h) = (0.31, -0.44, 1e-6);
        let d = slopes(x, y);
        let by = |a: [f64; 8], b: [f64; 8], i: usize| (a[i] - b[i]) / (2.0 * h);
        for (i, slope) in d.into_iter().enumerate() {
            let along_x = by(shape(x + h, y), shape(x - h, y), i);
            let along_y = by(shape(x, y + h), shape(x, y - h), i);
            assert!((along_x - slope[0]).abs() < 1e-8 && (along_y - slope[1]).abs() < 1e-8);
        }
    }

    #[test]
    fn identity_a_ring_moved_along_its_axis_takes_no_force() {
        let ring = PLACES.map(|[x, y]| [12.0 + 2.0 * x + 0.3 * x * y, 5.0 * y + x]);
        let metal = Metal {
            modulus_mpa: 100e3,
            poisson: 0.3,
        };
        let k = stiffness(&ring, metal);
        let size = k[0][0].abs();
        for (a, row) in k.iter().enumerate() {
            let along: f64 = row.iter().skip(1).step_by(2).sum();
            assert!(along.abs() < 1e-10 * size);
            for (b, cell) in row.iter().enumerate() {
                assert!((cell - k[b][a]).abs() < 1e-10 * size, "symmetric");
            }
        }
    }
}
