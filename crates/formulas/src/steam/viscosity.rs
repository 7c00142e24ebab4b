//! Dynamic viscosity of water and steam: release R12-08, the form for industrial use.
//!
//! Left out: the critical enhancement, which that form sets to one; it matters only within a few
//! kelvin of the critical point.

pub(super) const T_STAR_K: f64 = 647.096;
pub(super) const RHO_STAR: f64 = 322.0;
const MU_STAR_PA_S: f64 = 1e-6;

/// Table 1.
const DILUTE: [f64; 4] = [1.67752, 2.20462, 0.6366564, -0.241605];

/// Table 2: rows by the power of (1/T − 1), columns by that of (ρ − 1).
const DENSE: [[f64; 7]; 6] = [
    [
        5.20094e-1,
        2.22531e-1,
        -2.81378e-1,
        1.61913e-1,
        -3.25372e-2,
        0.0,
        0.0,
    ],
    [
        8.50895e-2,
        9.99115e-1,
        -9.06851e-1,
        2.57399e-1,
        0.0,
        0.0,
        0.0,
    ],
    [-1.08374, 1.88797, -7.72479e-1, 0.0, 0.0, 0.0, 0.0],
    [
        -2.89555e-1,
        1.26613,
        -4.89837e-1,
        0.0,
        6.98452e-2,
        0.0,
        -4.35673e-3,
    ],
    [0.0, 0.0, -2.57040e-1, 0.0, 0.0, 8.72102e-3, 0.0],
    [0.0, 1.20573e-1, 0.0, 0.0, 0.0, 0.0, -5.93264e-4],
];

/// Viscosity, Pa s, at a density (kg/m³) and a temperature (K); equations 10 to 12 with the
/// enhancement set to one. The bare equation; published for liquid and steam to 900 °C.
#[must_use]
pub fn viscosity(rho: f64, t_k: f64) -> f64 {
    let (t, r) = (t_k / T_STAR_K, rho / RHO_STAR);
    let exponent = r * double_polynomial(&DENSE, 1.0 / t - 1.0, r - 1.0);
    thin(t_k) * exponent.exp()
}

/// Viscosity of thin steam, Pa s, at a temperature (K); equation 11.
#[must_use]
pub fn thin(t_k: f64) -> f64 {
    let t = t_k / T_STAR_K;
    100.0 * t.sqrt() / polynomial(&DILUTE, 1.0 / t) * MU_STAR_PA_S
}

/// `c0 + c1 x + c2 x² …`
pub(super) fn polynomial(c: &[f64], x: f64) -> f64 {
    c.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

/// A polynomial in `x` whose coefficients are polynomials in `y`.
pub(super) fn double_polynomial<const M: usize>(rows: &[[f64; M]], x: f64, y: f64) -> f64 {
    rows.iter()
        .rev()
        .fold(0.0, |sum, row| sum * x + polynomial(row, y))
}
