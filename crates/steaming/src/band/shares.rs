//! First-order shares of the variance, from the points that are there already.
//!
//! The prediction is fitted by least squares with a sum of one straight and one curved term of
//! each deviate (Hermite polynomials of degree 1 and 2, which are orthonormal under the normal
//! law). The share of a variable is the sum of its two squared coefficients over the variance of
//! the prediction. All variables are fitted at once, so that the noise of one does not pass into
//! another. Terms of higher degree and what two variables do only together are in no share.

/// The share of each variable in the variance of `found`, one for each column of `at`; zeros
/// where the predictions do not vary.
#[must_use]
pub fn first_order_shares(at: &[&[f64]], found: &[f64]) -> Vec<f64> {
    let variables = at.first().map_or(0, |z| z.len());
    let count = found.len() as f64;
    let mean = found.iter().sum::<f64>() / count;
    let variance = found.iter().map(|y| (y - mean).powi(2)).sum::<f64>() / (count - 1.0);
    if variables == 0 || variance.is_nan() || variance <= 0.0 {
        return vec![0.0; variables];
    }
    let coefficients = fitted(at, found);
    (0..variables)
        .map(|v| {
            let (straight, curved) = (coefficients[1 + 2 * v], coefficients[2 + 2 * v]);
            (straight * straight + curved * curved) / variance
        })
        .collect()
}

/// The terms of a point: one, then z and (z² − 1)/√2 of each variable.
fn terms(deviates: &[f64]) -> Vec<f64> {
    let mut terms = Vec::with_capacity(1 + 2 * deviates.len());
    terms.push(1.0);
    for z in deviates {
        terms.push(*z);
        terms.push((z * z - 1.0) / std::f64::consts::SQRT_2);
    }
    terms
}

/// Least squares by the normal equations, which the near orthogonality of the terms keeps well
/// conditioned.
fn fitted(at: &[&[f64]], found: &[f64]) -> Vec<f64> {
    let size = 1 + 2 * at.first().map_or(0, |z| z.len());
    let mut matrix = vec![vec![0.0; size + 1]; size];
    for (deviates, y) in at.iter().zip(found) {
        let terms = terms(deviates);
        for (row, a) in matrix.iter_mut().zip(&terms) {
            for (cell, b) in row.iter_mut().zip(&terms) {
                *cell += a * b;
            }
            row[size] += a * y;
        }
    }
    eliminated(matrix)
}

/// Solves a symmetric positive system, written with its right side as the last column.
fn eliminated(mut matrix: Vec<Vec<f64>>) -> Vec<f64> {
    let size = matrix.len();
    for pivot in 0..size {
        let (done, rest) = matrix.split_at_mut(pivot + 1);
        let row = &done[pivot];
        for below in rest {
            let factor = below[pivot] / row[pivot];
            for (cell, above) in below[pivot..].iter_mut().zip(&row[pivot..]) {
                *cell -= factor * above;
            }
        }
    }
    let mut x = vec![0.0; size];
    for pivot in (0..size).rev() {
        let row = &matrix[pivot];
        let known: f64 = (pivot + 1..size).map(|k| row[k] * x[k]).sum();
        x[pivot] = (row[size] - known) / row[pivot];
    }
    x
}
