//! The saturation line: release R7-97(2012), equations 29 to 31, coefficients of table 34.
//!
//! The relation is quadratic in the fourth root of the pressure and in a transformed temperature,
//! so both directions and the slope are closed forms that agree with each other exactly.

use super::range::{OutOfRange, P_MIN_PA, t_min_k, within};

const P_STAR_PA: f64 = 1e6;
/// The critical point, where the line ends; release R7-97, section 2.
pub(super) const T_CRITICAL_K: f64 = 647.096;
pub(super) const P_CRITICAL_PA: f64 = 22.064e6;

const N1: f64 = 0.11670521452767e4;
const N2: f64 = -0.72421316703206e6;
const N3: f64 = -0.17073846940092e2;
const N4: f64 = 0.12020824702470e5;
const N5: f64 = -0.32325550322333e7;
const N6: f64 = 0.14915108613530e2;
const N7: f64 = -0.48232657361591e4;
const N8: f64 = 0.40511340542057e6;
const N9: f64 = -0.23855557567849;
const N10: f64 = 0.65017534844798e3;

/// Saturation pressure (Pa) at a temperature (K); equation 30. The bare equation.
#[must_use]
pub fn pressure(t_k: f64) -> f64 {
    let theta = t_k + N9 / (t_k - N10);
    let a = (theta + N1) * theta + N2;
    let b = (N3 * theta + N4) * theta + N5;
    let c = (N6 * theta + N7) * theta + N8;
    let root = 2.0 * c / (-b + (b * b - 4.0 * a * c).sqrt());
    let square = root * root;
    square * square * P_STAR_PA
}

/// Saturation temperature (K) at a pressure (Pa); equation 31. The bare equation.
#[must_use]
pub fn temperature(p_pa: f64) -> f64 {
    let beta = (p_pa / P_STAR_PA).sqrt().sqrt();
    let e = (beta + N3) * beta + N6;
    let f = (N1 * beta + N4) * beta + N7;
    let g = (N2 * beta + N5) * beta + N8;
    let d = 2.0 * g / (-f - (f * f - 4.0 * e * g).sqrt());
    let sum = N10 + d;
    0.5 * (sum - (sum * sum - 4.0 * (N9 + N10 * d)).sqrt())
}

/// Slope dT/dp of the saturation line, K/Pa, at a point (Pa, K) of it; from equation 29.
#[must_use]
pub fn slope(p_pa: f64, t_k: f64) -> f64 {
    let beta = (p_pa / P_STAR_PA).sqrt().sqrt();
    let away = t_k - N10;
    let theta = t_k + N9 / away;
    let by_beta = 2.0 * beta * ((theta + N1) * theta + N2) + (N3 * theta + N4) * theta + N5;
    let by_theta =
        (2.0 * theta + N1) * beta * beta + (2.0 * N3 * theta + N4) * beta + 2.0 * N6 * theta + N7;
    let theta_by_t = 1.0 - N9 / (away * away);
    -by_beta / by_theta / theta_by_t * beta / (4.0 * p_pa)
}

/// Saturation temperature, K, at an absolute pressure, Pa.
///
/// # Errors
/// [`OutOfRange`] outside 611.213 Pa to 22.064 MPa.
pub fn t_sat(p_pa: f64) -> Result<f64, OutOfRange> {
    let line = (P_MIN_PA, P_CRITICAL_PA);
    Ok(temperature(within(
        "saturation pressure",
        "Pa",
        p_pa,
        line,
    )?))
}

/// Saturation pressure, Pa absolute, at a temperature, K.
///
/// # Errors
/// [`OutOfRange`] outside 0 °C to 647.096 K.
pub fn p_sat(t_k: f64) -> Result<f64, OutOfRange> {
    let line = (t_min_k(), T_CRITICAL_K);
    Ok(pressure(within("saturation temperature", "K", t_k, line)?))
}
