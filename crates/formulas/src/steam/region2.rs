//! Region 2, steam: the fundamental equation of release R7-97(2012), equations 15 to 17.
//!
//! Coefficients of tables 10 and 11, and the border to region 3 (equation 5, table 1).

use super::gibbs::{Caloric, Gibbs, Point};
use super::series::{Series, Sums, Term, powers};

pub(super) const P_STAR_PA: f64 = 1e6;
pub(super) const T_STAR_K: f64 = 540.0;
/// Lowest exponent of the ideal-gas part, without its sign.
const LOW: usize = 5;

/// Table 10: J, n, with the exponent in the second place.
pub(super) const IDEAL: &[Term; 9] = &[
    (0, 0, -0.96927686500217e1),
    (0, 1, 0.10086655968018e2),
    (0, -5, -0.56087911283020e-2),
    (0, -4, 0.71452738081455e-1),
    (0, -3, -0.40710498223928),
    (0, -2, 0.14240819171444e1),
    (0, -1, -0.43839511319450e1),
    (0, 2, -0.28408632460772),
    (0, 3, 0.21268463753307e-1),
];

/// Table 11: I, J, n.
const RESIDUAL: &[Term; 43] = &[
    (1, 0, -0.17731742473213e-2),
    (1, 1, -0.17834862292358e-1),
    (1, 2, -0.45996013696365e-1),
    (1, 3, -0.57581259083432e-1),
    (1, 6, -0.50325278727930e-1),
    (2, 1, -0.33032641670203e-4),
    (2, 2, -0.18948987516315e-3),
    (2, 4, -0.39392777243355e-2),
    (2, 7, -0.43797295650573e-1),
    (2, 36, -0.26674547914087e-4),
    (3, 0, 0.20481737692309e-7),
    (3, 1, 0.43870667284435e-6),
    (3, 3, -0.32277677238570e-4),
    (3, 6, -0.15033924542148e-2),
    (3, 35, -0.40668253562649e-1),
    (4, 1, -0.78847309559367e-9),
    (4, 2, 0.12790717852285e-7),
    (4, 3, 0.48225372718507e-6),
    (5, 7, 0.22922076337661e-5),
    (6, 3, -0.16714766451061e-10),
    (6, 16, -0.21171472321355e-2),
    (6, 35, -0.23895741934104e2),
    (7, 0, -0.59059564324270e-17),
    (7, 11, -0.12621808899101e-5),
    (7, 25, -0.38946842435739e-1),
    (8, 8, 0.11256211360459e-10),
    (8, 36, -0.82311340897998e1),
    (9, 13, 0.19809712802088e-7),
    (10, 4, 0.10406965210174e-18),
    (10, 10, -0.10234747095929e-12),
    (10, 14, -0.10018179379511e-8),
    (16, 29, -0.80882908646985e-10),
    (16, 50, 0.10693031879409),
    (18, 57, -0.33662250574171),
    (20, 20, 0.89185845355421e-24),
    (20, 35, 0.30629316876232e-12),
    (20, 48, -0.42002467698208e-5),
    (21, 21, -0.59056029685639e-25),
    (22, 53, 0.37826947613457e-5),
    (23, 39, -0.12768608934681e-14),
    (24, 26, 0.73087610595061e-28),
    (24, 40, 0.55414715350778e-16),
    (24, 58, -0.94369707241210e-6),
];

static IDEAL_SERIES: Series<9> = ideal_series(IDEAL);
static RESIDUAL_SERIES: Series<43> = Series::new(RESIDUAL, (0, 0));

/// The ideal-gas part made ready.
pub(super) const fn ideal_series(terms: &[Term; 9]) -> Series<9> {
    Series::new(terms, (0, -(LOW as i32)))
}

/// Steam at an absolute pressure (Pa) and a temperature (K).
///
/// The bare equation: nothing is checked. Published for 273.15 to 1073.15 K, up to the saturation
/// pressure, above 623.15 K up to [`border_to_region3`], above 863.15 K up to 100 MPa;
/// [`super::at_pt`] refuses what lies outside.
#[must_use]
pub fn point(p_pa: f64, t_k: f64) -> Point {
    let (pi, tau) = (p_pa / P_STAR_PA, T_STAR_K / t_k);
    let y = tau - 0.5;
    let residual = RESIDUAL_SERIES.sums(&powers::<25>(pi), &powers::<59>(y));
    Point::new(
        p_pa,
        t_k,
        &joined(pi, tau, ideal(&IDEAL_SERIES, tau), &residual),
    )
}

/// Enthalpy, entropy and specific heat alone, where the rest is not needed.
pub(super) fn caloric(p_pa: f64, t_k: f64) -> Caloric {
    let (pi, tau) = (p_pa / P_STAR_PA, T_STAR_K / t_k);
    let y = tau - 0.5;
    let [j, jj, f] = RESIDUAL_SERIES.caloric(&powers::<25>(pi), &powers::<59>(y));
    let [ideal_j, ideal_jj, ideal] = ideal(&IDEAL_SERIES, tau);
    let by_y = tau / y;
    let g = pi.ln() + ideal + f;
    Caloric::new(t_k, g, ideal_j + by_y * j, ideal_jj + by_y * by_y * jj)
}

/// The sums J, J (J − 1) and plain of the ideal-gas part; its logarithm of pressure is added by
/// [`joined`].
#[inline(always)]
pub(super) fn ideal(series: &Series<9>, tau: f64) -> [f64; 3] {
    let powers = powers::<9>(tau);
    let by_low = 1.0 / powers[LOW];
    series.caloric(&[1.0], &powers).map(|sum| sum * by_low)
}

/// Ideal-gas and residual part together.
#[inline(always)]
pub(super) fn joined(
    pi: f64,
    tau: f64,
    [ideal_j, ideal_jj, ideal]: [f64; 3],
    residual: &Sums,
) -> Gibbs {
    let by_y = tau / (tau - 0.5);
    Gibbs {
        g: pi.ln() + ideal + residual.f,
        p: 1.0 + residual.i,
        pp: -1.0 + residual.ii,
        t: ideal_j + by_y * residual.j,
        tt: ideal_jj + by_y * by_y * residual.jj,
        pt: by_y * residual.ij,
    }
}

/// Pressure (Pa) of the border between regions 2 and 3 at a temperature of 623.15 to 863.15 K;
/// equation 5, table 1.
#[must_use]
pub fn border_to_region3(t_k: f64) -> f64 {
    let [n1, n2, n3] = [0.34805185628969e3, -0.11671859879975e1, 0.10192970039326e-2];
    (n1 + t_k * (n2 + t_k * n3)) * P_STAR_PA
}
