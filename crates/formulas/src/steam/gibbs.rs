//! From a dimensionless Gibbs function to the properties of one phase.
//!
//! Regions 1 and 2 and the metastable vapour differ only in the function; what follows from it is
//! the same (release R7-97, tables 3 and 12). Each derivative is held multiplied by the powers of
//! its own variables, so that the properties need no division by them.

/// Specific gas constant of ordinary water, J/(kg K); release R7-97, equation 1.
pub(super) const R: f64 = 461.526;

/// The function and its derivatives at reduced pressure `pi` and inverse reduced temperature `tau`.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Gibbs {
    /// γ
    pub(super) g: f64,
    /// π γ_π
    pub(super) p: f64,
    /// π² γ_ππ
    pub(super) pp: f64,
    /// τ γ_τ
    pub(super) t: f64,
    /// τ² γ_ττ
    pub(super) tt: f64,
    /// π τ γ_πτ
    pub(super) pt: f64,
}

/// The properties of one phase at a pressure and a temperature, all in SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Absolute pressure, Pa.
    pub p_pa: f64,
    /// Temperature, K.
    pub t_k: f64,
    /// Specific volume, m³/kg.
    pub v: f64,
    /// Density, kg/m³.
    pub rho: f64,
    /// Specific enthalpy, J/kg.
    pub h: f64,
    /// Specific internal energy, J/kg.
    pub u: f64,
    /// Specific entropy, J/(kg K).
    pub s: f64,
    /// Specific heat at constant pressure, J/(kg K).
    pub cp: f64,
    /// (∂v/∂T) at constant pressure, m³/(kg K).
    pub dv_dt_p: f64,
    /// (∂v/∂p) at constant temperature, m³/(kg Pa).
    pub dv_dp_t: f64,
}

impl Point {
    pub(super) fn new(p_pa: f64, t_k: f64, gibbs: &Gibbs) -> Self {
        let Gibbs {
            g,
            p,
            pp,
            t,
            tt,
            pt,
        } = *gibbs;
        let rt = R * t_k;
        let v = rt / p_pa * p;
        // (π γ_π − π τ γ_πτ) is p (∂v/∂T)_p / R.
        let expansion = p - pt;
        Self {
            p_pa,
            t_k,
            v,
            rho: 1.0 / v,
            h: rt * t,
            u: rt * (t - p),
            s: R * (t - g),
            cp: -R * tt,
            dv_dt_p: R / p_pa * expansion,
            dv_dp_t: rt / (p_pa * p_pa) * pp,
        }
    }

    /// The point at the same pressure and a temperature higher by so little that the second
    /// derivatives do not matter: what is left of it after a Newton step.
    pub(super) fn warmer_by(&self, little_k: f64) -> Self {
        let v = self.v + self.dv_dt_p * little_k;
        let h = self.h + self.cp * little_k;
        Self {
            t_k: self.t_k + little_k,
            v,
            rho: 1.0 / v,
            h,
            u: h - self.p_pa * v,
            s: self.s + self.cp / self.t_k * little_k,
            ..*self
        }
    }

    /// Specific heat at constant volume, J/(kg K).
    #[must_use]
    pub fn cv(&self) -> f64 {
        self.cp + self.t_k * self.dv_dt_p * self.dv_dt_p / self.dv_dp_t
    }

    /// Speed of sound, m/s.
    #[must_use]
    pub fn w(&self) -> f64 {
        self.v * (-self.cp / (self.cv() * self.dv_dp_t)).sqrt()
    }

    /// (∂ρ/∂h) at constant pressure, kg²/(m³ J).
    #[must_use]
    pub fn drho_dh_p(&self) -> f64 {
        -self.rho * self.rho * self.dv_dt_p / self.cp
    }

    /// (∂ρ/∂p) at constant enthalpy, kg/(m³ Pa).
    #[must_use]
    pub fn drho_dp_h(&self) -> f64 {
        let dt_dp_h = -self.dh_dp_t() / self.cp;
        -self.rho * self.rho * (self.dv_dp_t + self.dv_dt_p * dt_dp_h)
    }

    /// (∂h/∂p) at constant temperature, m³/kg.
    #[must_use]
    pub fn dh_dp_t(&self) -> f64 {
        self.v - self.t_k * self.dv_dt_p
    }
}

/// What the first step of an inverse needs: enthalpy, entropy and specific heat, in SI.
#[derive(Clone, Copy, Debug)]
pub(super) struct Caloric {
    pub(super) h: f64,
    pub(super) s: f64,
    pub(super) cp: f64,
}

impl Caloric {
    /// From γ, τ γ_τ and τ² γ_ττ.
    #[inline(always)]
    pub(super) fn new(t_k: f64, g: f64, t: f64, tt: f64) -> Self {
        Self {
            h: R * t_k * t,
            s: R * (t - g),
            cp: -R * tt,
        }
    }
}
