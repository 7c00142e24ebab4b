//! The state of water or steam: from pressure and temperature, pressure and dryness, and vapour
//! that has not condensed yet. From enthalpy or entropy: [`super::at_ph`], [`super::at_ps`].

use super::gibbs::Point;
use super::range::{OutOfRange, served_pressure, served_temperature, t_min_k, within};
use super::saturated::Saturated;
use super::{metastable, region1, region2, saturation};

/// In which phase a state lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Phase {
    /// Water below its saturation temperature.
    Liquid,
    /// Water and steam in equilibrium, the saturation lines included.
    Wet,
    /// Steam above its saturation temperature.
    Superheated,
}

/// A state of water or steam, all in SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct State {
    /// Phase.
    pub phase: Phase,
    /// Absolute pressure, Pa.
    pub p_pa: f64,
    /// Temperature, K.
    pub t_k: f64,
    /// Density, kg/m³.
    pub rho: f64,
    /// Specific volume, m³/kg.
    pub v: f64,
    /// Specific enthalpy, J/kg.
    pub h: f64,
    /// Specific entropy, J/(kg K).
    pub s: f64,
    /// Specific internal energy, J/kg.
    pub u: f64,
    /// Dryness, where there are two phases.
    pub x: Option<f64>,
    /// Specific heat at constant pressure, J/(kg K); a mixture has none.
    pub cp: Option<f64>,
    /// (∂ρ/∂p) at constant enthalpy, kg/(m³ Pa).
    pub drho_dp_h: f64,
    /// (∂ρ/∂h) at constant pressure, kg²/(m³ J).
    pub drho_dh_p: f64,
}

impl State {
    pub(super) fn single(phase: Phase, point: &Point) -> Self {
        Self {
            phase,
            p_pa: point.p_pa,
            t_k: point.t_k,
            rho: point.rho,
            v: point.v,
            h: point.h,
            s: point.s,
            u: point.u,
            x: None,
            cp: Some(point.cp),
            drho_dp_h: point.drho_dp_h(),
            drho_dh_p: point.drho_dh_p(),
        }
    }
}

/// Liquid or steam at an absolute pressure (Pa) and a temperature (K).
///
/// On the saturation line a pressure and a temperature do not fix the state; there, and above,
/// steam is given. Use [`wet`] for states between the phases.
///
/// # Errors
/// [`OutOfRange`] outside 611.213 Pa to 10 MPa or 0 to 800 °C.
pub fn at_pt(p_pa: f64, t_k: f64) -> Result<State, OutOfRange> {
    let (phase, point) = point_at(p_pa, t_k)?;
    Ok(State::single(phase, &point))
}

/// As [`at_pt`], with everything one phase has.
///
/// # Errors
/// As [`at_pt`].
pub fn point_at(p_pa: f64, t_k: f64) -> Result<(Phase, Point), OutOfRange> {
    let (p_pa, t_k) = (served_pressure(p_pa)?, served_temperature(t_k)?);
    Ok(if t_k < saturation::temperature(p_pa) {
        (Phase::Liquid, region1::point(p_pa, t_k))
    } else {
        (Phase::Superheated, region2::point(p_pa, t_k))
    })
}

/// Wet steam at an absolute pressure (Pa) and a dryness (0 to 1).
///
/// # Errors
/// [`OutOfRange`] outside 611.213 Pa to 10 MPa or when the dryness is not 0 to 1.
pub fn wet(p_pa: f64, x: f64) -> Result<State, OutOfRange> {
    Saturated::at_pressure(p_pa)?.mixed(x)
}

/// Vapour that has been cooled or expanded below its saturation temperature without condensing.
///
/// # Errors
/// [`OutOfRange`] outside 611.213 Pa to 10 MPa, above the saturation temperature, or beyond the
/// line of 5 % equilibrium moisture, at which the equation ends.
pub fn metastable_at_pt(p_pa: f64, t_k: f64) -> Result<Point, OutOfRange> {
    let line = Saturated::at_pressure(p_pa)?;
    let t_k = within("temperature", "K", t_k, (t_min_k(), line.t_k))?;
    let point = metastable::point(p_pa, t_k);
    let driest = metastable::point(p_pa, line.t_k).h;
    let moist = line.h_g - 0.05 * line.h_lg();
    within("metastable enthalpy", "J/kg", point.h, (moist, driest))?;
    Ok(point)
}
