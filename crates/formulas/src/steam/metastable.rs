//! Metastable vapour: steam that has been expanded below its saturation temperature and has not
//! yet condensed. Release R7-97(2012), equations 18 and 19, table 16.
//!
//! The ideal-gas part is that of region 2 but for two coefficients. Published from the saturated
//! vapour line to the 5 % equilibrium moisture line, up to 10 MPa.

use super::gibbs::Point;
use super::region2::{self, P_STAR_PA, T_STAR_K, ideal, ideal_series, joined};
use super::series::{Series, Term, powers};

/// Table 10 with the first two coefficients as given below it.
const IDEAL: &[Term; 9] = &{
    let mut terms = *region2::IDEAL;
    terms[0].2 = -0.96937268393049e1;
    terms[1].2 = 0.10087275970006e2;
    terms
};

/// Table 16: I, J, n.
const RESIDUAL: &[Term; 13] = &[
    (1, 0, -0.73362260186506e-2),
    (1, 2, -0.88223831943146e-1),
    (1, 5, -0.72334555213245e-1),
    (1, 11, -0.40813178534455e-2),
    (2, 1, 0.20097803380207e-2),
    (2, 7, -0.53045921898642e-1),
    (2, 16, -0.76190409086970e-2),
    (3, 4, -0.63498037657313e-2),
    (3, 16, -0.86043093028588e-1),
    (4, 7, 0.75321581522770e-2),
    (4, 10, -0.79238375446139e-2),
    (5, 9, -0.22888160778447e-3),
    (5, 10, -0.26456501482810e-2),
];

static IDEAL_SERIES: Series<9> = ideal_series(IDEAL);
static RESIDUAL_SERIES: Series<13> = Series::new(RESIDUAL, (0, 0));

/// Metastable vapour at an absolute pressure (Pa) and a temperature (K).
///
/// The bare equation: nothing is checked.
#[must_use]
pub fn point(p_pa: f64, t_k: f64) -> Point {
    let (pi, tau) = (p_pa / P_STAR_PA, T_STAR_K / t_k);
    let residual = RESIDUAL_SERIES.sums(&powers::<6>(pi), &powers::<17>(tau - 0.5));
    Point::new(
        p_pa,
        t_k,
        &joined(pi, tau, ideal(&IDEAL_SERIES, tau), &residual),
    )
}
