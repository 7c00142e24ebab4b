//! Thermal conductivity of water and steam: release R15-11, with the critical enhancement in the
//! form for industrial use.
//!
//! The enhancement needs the specific heats, the compressibility and the viscosity, which the
//! caller has from the equations of regions 1 and 2.

use super::gibbs::Point;
use super::viscosity::{RHO_STAR, T_STAR_K, double_polynomial, polynomial};

const P_STAR_PA: f64 = 22.064e6;
const LAMBDA_STAR: f64 = 1e-3;
const MU_STAR_PA_S: f64 = 1e-6;
/// Gas constant to which the release reduces the specific heat, J/(kg K).
const R_STAR: f64 = 0.46151805e3;

/// Table 1.
const DILUTE: [f64; 5] = [
    2.443221e-3,
    1.323095e-2,
    6.770357e-3,
    -3.454586e-3,
    4.096266e-4,
];

/// Table 2: rows by the power of (1/T − 1), columns by that of (ρ − 1).
const DENSE: [[f64; 6]; 5] = [
    [
        1.60397357,
        -0.646013523,
        0.111443906,
        0.102997357,
        -0.0504123634,
        0.00609859258,
    ],
    [
        2.33771842,
        -2.78843778,
        1.53616167,
        -0.463045512,
        0.0832827019,
        -0.00719201245,
    ],
    [
        2.19650529,
        -4.54580785,
        3.55777244,
        -1.40944978,
        0.275418278,
        -0.0205938816,
    ],
    [
        -1.21051378,
        1.60812989,
        -0.621178141,
        0.0716373224,
        0.0,
        0.0,
    ],
    [
        -2.7203370,
        4.57586331,
        -3.18369245,
        1.1168348,
        -0.19268305,
        0.012913842,
    ],
];

/// Table 3.
const AMPLITUDE: f64 = 177.8514;
const CUTOFF_NM: f64 = 0.40;
const NU: f64 = 0.630;
const GAMMA: f64 = 1.239;
const XI_0_NM: f64 = 0.13;
const GAMMA_0: f64 = 0.06;
const T_REFERENCE: f64 = 1.5;

/// Table 6: the reference compressibility, one row a range of density that ends at the value
/// given beside it.
const REFERENCE: [(f64, [f64; 6]); 5] = [
    (
        0.310559006,
        [
            6.53786807199516,
            -5.61149954923348,
            3.39624167361325,
            -2.27492629730878,
            10.2631854662709,
            1.97815050331519,
        ],
    ),
    (
        0.776397516,
        [
            6.52717759281799,
            -6.30816983387575,
            8.08379285492595,
            -9.82240510197603,
            12.1358413791395,
            -5.54349664571295,
        ],
    ),
    (
        1.242236025,
        [
            5.35500529896124,
            -3.96415689925446,
            8.91990208918795,
            -12.0338729505790,
            9.19494865194302,
            -2.16866274479712,
        ],
    ),
    (
        1.863354037,
        [
            1.55225959906681,
            0.464621290821181,
            8.93237374861479,
            -11.0321960061126,
            6.16780999933360,
            -0.965458722086812,
        ],
    ),
    (
        f64::INFINITY,
        [
            1.11999926419994,
            0.595748562571649,
            9.88952565078920,
            -10.3255051147040,
            4.66861294457414,
            -0.503243546373828,
        ],
    ),
];

/// What the critical enhancement depends on, in SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Enhancing {
    /// Density, kg/m³.
    pub rho: f64,
    /// Temperature, K.
    pub t_k: f64,
    /// Specific heat at constant pressure, J/(kg K).
    pub cp: f64,
    /// Specific heat at constant volume, J/(kg K).
    pub cv: f64,
    /// (∂ρ/∂p) at constant temperature, kg/(m³ Pa).
    pub drho_dp_t: f64,
    /// Viscosity, Pa s.
    pub mu: f64,
}

/// Conductivity without the critical enhancement, W/(m K), at a density (kg/m³) and a
/// temperature (K); equations 16 and 17. The bare equation.
#[must_use]
pub fn background(rho: f64, t_k: f64) -> f64 {
    let (t, r) = (t_k / T_STAR_K, rho / RHO_STAR);
    let exponent = r * double_polynomial(&DENSE, 1.0 / t - 1.0, r - 1.0);
    thin(t_k) * exponent.exp()
}

/// Conductivity of thin steam, W/(m K), at a temperature (K); equation 16.
#[must_use]
pub fn thin(t_k: f64) -> f64 {
    let t = t_k / T_STAR_K;
    t.sqrt() / polynomial(&DILUTE, 1.0 / t) * LAMBDA_STAR
}

/// The critical enhancement of the conductivity, W/(m K); equations 18 to 26.
#[must_use]
pub fn enhancement(at: &Enhancing) -> f64 {
    let (t, r) = (at.t_k / T_STAR_K, at.rho / RHO_STAR);
    let zeta = at.drho_dp_t * P_STAR_PA / RHO_STAR;
    let excess = r * (zeta - reference_compressibility(r) * T_REFERENCE / t);
    // The release sets the correlation length to zero where the excess is not positive.
    if excess <= 0.0 {
        return 0.0;
    }
    let xi_nm = XI_0_NM * (excess / GAMMA_0).powf(NU / GAMMA);
    let crossover = crossover(xi_nm / CUTOFF_NM, at.cp / at.cv, r);
    AMPLITUDE * r * (at.cp / R_STAR) * t / (at.mu / MU_STAR_PA_S) * crossover * LAMBDA_STAR
}

/// Conductivity, W/(m K), of one phase whose viscosity (Pa s) is known, with its enhancement.
#[must_use]
pub fn conductivity(point: &Point, mu: f64) -> f64 {
    background(point.rho, point.t_k)
        + enhancement(&Enhancing {
            rho: point.rho,
            t_k: point.t_k,
            cp: point.cp,
            cv: point.cv(),
            drho_dp_t: -point.rho * point.rho * point.dv_dp_t,
            mu,
        })
}

/// Reduced (∂ρ/∂p) along the reference isotherm; equation 25.
fn reference_compressibility(r: f64) -> f64 {
    let (mut low, mut found) = (f64::NEG_INFINITY, f64::NAN);
    for (high, row) in &REFERENCE {
        if low < r && r <= *high {
            found = 1.0 / polynomial(row, r);
        }
        low = *high;
    }
    found
}

/// Z of equation 19, `y` being the correlation length over the cutoff.
fn crossover(y: f64, kappa: f64, r: f64) -> f64 {
    // Below this the release sets it to zero, to spare a difference of equal numbers.
    if y < 1.2e-7 {
        return 0.0;
    }
    let share = 1.0 / kappa;
    let first = (1.0 - share) * y.atan() + share * y;
    let second = 1.0 - (-1.0 / (1.0 / y + y * y / (3.0 * r * r))).exp();
    2.0 / (std::f64::consts::PI * y) * (first - second)
}
