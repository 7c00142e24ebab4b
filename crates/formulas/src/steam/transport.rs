//! Viscosity, conductivity and Prandtl number over the phases that are served, and the surface
//! tension. One family a file: [`super::viscosity`], [`super::conductivity`],
//! [`super::surface_tension`].

use super::conductivity::conductivity;
use super::gibbs::Point;
use super::range::{OutOfRange, served_pressure};
use super::state::point_at;
use super::viscosity::viscosity;
use super::{region1, region2, saturation};

/// What carries momentum and heat in one phase, in SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Transport {
    /// Dynamic viscosity, Pa s.
    pub mu: f64,
    /// Thermal conductivity, W/(m K).
    pub lambda: f64,
    /// Prandtl number.
    pub pr: f64,
}

/// Of one phase whose properties are known.
#[must_use]
pub fn of(point: &Point) -> Transport {
    let mu = viscosity(point.rho, point.t_k);
    let lambda = conductivity(point, mu);
    Transport {
        mu,
        lambda,
        pr: mu * point.cp / lambda,
    }
}

/// Of liquid or steam at an absolute pressure (Pa) and a temperature (K).
///
/// # Errors
/// As [`super::at_pt`].
pub fn at_pt(p_pa: f64, t_k: f64) -> Result<Transport, OutOfRange> {
    let (_, point) = point_at(p_pa, t_k)?;
    Ok(of(&point))
}

/// Of saturated water and of saturated steam at an absolute pressure (Pa), in this order.
///
/// # Errors
/// [`OutOfRange`] outside 611.213 Pa to 10 MPa.
pub fn saturated(p_pa: f64) -> Result<(Transport, Transport), OutOfRange> {
    let p_pa = served_pressure(p_pa)?;
    let t_k = saturation::temperature(p_pa);
    Ok((
        of(&region1::point(p_pa, t_k)),
        of(&region2::point(p_pa, t_k)),
    ))
}

/// Surface tension, N/m, at a temperature (K).
///
/// # Errors
/// [`OutOfRange`] outside 0 °C to 647.096 K.
pub fn surface_tension(t_k: f64) -> Result<f64, OutOfRange> {
    saturation::p_sat(t_k)?;
    Ok(super::surface_tension::surface_tension(t_k))
}
