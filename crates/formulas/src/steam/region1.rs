//! Region 1, liquid water: the fundamental equation of release R7-97(2012), equation 7.
//!
//! Coefficients of table 2. Left out: the equation's use above 623.15 K.

use super::gibbs::{Caloric, Gibbs, Point};
use super::series::{Series, Term, powers};

const P_STAR_PA: f64 = 16.53e6;
const T_STAR_K: f64 = 1386.0;
/// Lowest exponent of the second variable, without its sign.
const LOW: usize = 41;

/// Table 2: I, J, n.
const TERMS: &[Term; 34] = &[
    (0, -2, 0.14632971213167),
    (0, -1, -0.84548187169114),
    (0, 0, -0.37563603672040e1),
    (0, 1, 0.33855169168385e1),
    (0, 2, -0.95791963387872),
    (0, 3, 0.15772038513228),
    (0, 4, -0.16616417199501e-1),
    (0, 5, 0.81214629983568e-3),
    (1, -9, 0.28319080123804e-3),
    (1, -7, -0.60706301565874e-3),
    (1, -1, -0.18990068218419e-1),
    (1, 0, -0.32529748770505e-1),
    (1, 1, -0.21841717175414e-1),
    (1, 3, -0.52838357969930e-4),
    (2, -3, -0.47184321073267e-3),
    (2, 0, -0.30001780793026e-3),
    (2, 1, 0.47661393906987e-4),
    (2, 3, -0.44141845330846e-5),
    (2, 17, -0.72694996297594e-15),
    (3, -4, -0.31679644845054e-4),
    (3, 0, -0.28270797985312e-5),
    (3, 6, -0.85205128120103e-9),
    (4, -5, -0.22425281908000e-5),
    (4, -2, -0.65171222895601e-6),
    (4, 10, -0.14341729937924e-12),
    (5, -8, -0.40516996860117e-6),
    (8, -11, -0.12734301741641e-8),
    (8, -6, -0.17424871230634e-9),
    (21, -29, -0.68762131295531e-18),
    (23, -31, 0.14478307828521e-19),
    (29, -38, 0.26335781662795e-22),
    (30, -39, -0.11947622640071e-22),
    (31, -40, 0.18228094581404e-23),
    (32, -41, -0.93537087292458e-25),
];

static SERIES: Series<34> = Series::new(TERMS, (0, -(LOW as i32)));

/// Liquid water at an absolute pressure (Pa) and a temperature (K).
///
/// The bare equation: nothing is checked. Published for 273.15 to 623.15 K and from the
/// saturation pressure to 100 MPa; [`super::at_pt`] refuses what lies outside.
#[must_use]
pub fn point(p_pa: f64, t_k: f64) -> Point {
    Point::new(p_pa, t_k, &gibbs(p_pa / P_STAR_PA, T_STAR_K / t_k))
}

fn gibbs(pi: f64, tau: f64) -> Gibbs {
    let (x, y) = (7.1 - pi, tau - 1.222);
    let y_powers = powers::<59>(y);
    let a = SERIES
        .sums(&powers::<33>(x), &y_powers)
        .times(1.0 / y_powers[LOW]);
    let (by_x, by_y) = (pi / x, tau / y);
    Gibbs {
        g: a.f,
        p: -by_x * a.i,
        pp: by_x * by_x * a.ii,
        t: by_y * a.j,
        tt: by_y * by_y * a.jj,
        pt: -by_x * by_y * a.ij,
    }
}

/// Enthalpy, entropy and specific heat alone, where the rest is not needed.
pub(super) fn caloric(p_pa: f64, t_k: f64) -> Caloric {
    let (x, tau) = (7.1 - p_pa / P_STAR_PA, T_STAR_K / t_k);
    let y = tau - 1.222;
    let y_powers = powers::<59>(y);
    let [j, jj, f] = SERIES.caloric(&powers::<33>(x), &y_powers);
    let (low, by_y) = (1.0 / y_powers[LOW], tau / y);
    Caloric::new(t_k, f * low, j * low * by_y, jj * low * by_y * by_y)
}
