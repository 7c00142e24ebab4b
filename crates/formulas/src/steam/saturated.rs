//! Water and steam in equilibrium, and what the drum needs of them: the slopes along the
//! saturation line.
//!
//! A mixture's volume, enthalpy and entropy are linear in the dryness; its density is not.

use super::gibbs::Point;
use super::range::{OutOfRange, served_pressure, within};
use super::state::{Phase, State};
use super::{region1, region2, saturation};

/// Saturated water (`_l`) and saturated steam (`_g`) at one pressure, all in SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Saturated {
    /// Absolute pressure, Pa.
    pub p_pa: f64,
    /// Saturation temperature, K.
    pub t_k: f64,
    /// Specific volume of the water, m³/kg.
    pub v_l: f64,
    /// Specific volume of the steam, m³/kg.
    pub v_g: f64,
    /// Density of the water, kg/m³.
    pub rho_l: f64,
    /// Density of the steam, kg/m³.
    pub rho_g: f64,
    /// Specific enthalpy of the water, J/kg.
    pub h_l: f64,
    /// Specific enthalpy of the steam, J/kg.
    pub h_g: f64,
    /// Specific entropy of the water, J/(kg K).
    pub s_l: f64,
    /// Specific entropy of the steam, J/(kg K).
    pub s_g: f64,
    /// Specific internal energy of the water, J/kg.
    pub u_l: f64,
    /// Specific internal energy of the steam, J/kg.
    pub u_g: f64,
    /// Specific heat at constant pressure of the water, J/(kg K).
    pub cp_l: f64,
    /// Specific heat at constant pressure of the steam, J/(kg K).
    pub cp_g: f64,
    /// dT/dp along the line, K/Pa.
    pub dt_dp: f64,
    /// dv/dp of the water along the line, m³/(kg Pa).
    pub dv_l_dp: f64,
    /// dv/dp of the steam along the line, m³/(kg Pa).
    pub dv_g_dp: f64,
    /// dρ/dp of the water along the line, kg/(m³ Pa).
    pub drho_l_dp: f64,
    /// dρ/dp of the steam along the line, kg/(m³ Pa).
    pub drho_g_dp: f64,
    /// dh/dp of the water along the line, m³/kg.
    pub dh_l_dp: f64,
    /// dh/dp of the steam along the line, m³/kg.
    pub dh_g_dp: f64,
}

impl Saturated {
    /// Both phases at an absolute pressure, Pa.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 611.213 Pa to 10 MPa.
    pub fn at_pressure(p_pa: f64) -> Result<Self, OutOfRange> {
        Ok(Self::on_line(served_pressure(p_pa)?))
    }

    pub(super) fn on_line(p_pa: f64) -> Self {
        let t_k = saturation::temperature(p_pa);
        let dt_dp = saturation::slope(p_pa, t_k);
        Self::of(
            &region1::point(p_pa, t_k),
            &region2::point(p_pa, t_k),
            dt_dp,
        )
    }

    pub(super) fn of(l: &Point, g: &Point, dt_dp: f64) -> Self {
        let dv_l_dp = l.dv_dp_t + l.dv_dt_p * dt_dp;
        let dv_g_dp = g.dv_dp_t + g.dv_dt_p * dt_dp;
        Self {
            p_pa: l.p_pa,
            t_k: l.t_k,
            v_l: l.v,
            v_g: g.v,
            rho_l: l.rho,
            rho_g: g.rho,
            h_l: l.h,
            h_g: g.h,
            s_l: l.s,
            s_g: g.s,
            u_l: l.u,
            u_g: g.u,
            cp_l: l.cp,
            cp_g: g.cp,
            dt_dp,
            dv_l_dp,
            dv_g_dp,
            drho_l_dp: -l.rho * l.rho * dv_l_dp,
            drho_g_dp: -g.rho * g.rho * dv_g_dp,
            dh_l_dp: l.dh_dp_t() + l.cp * dt_dp,
            dh_g_dp: g.dh_dp_t() + g.cp * dt_dp,
        }
    }

    /// Heat of evaporation, J/kg.
    #[must_use]
    pub fn h_lg(&self) -> f64 {
        self.h_g - self.h_l
    }

    /// The mixture with a dryness (mass of steam over mass of both).
    ///
    /// # Errors
    /// [`OutOfRange`] when the dryness is not 0 to 1.
    pub fn mixed(&self, x: f64) -> Result<State, OutOfRange> {
        Ok(self.mixture(within("dryness", "", x, (0.0, 1.0))?))
    }

    pub(super) fn mixture(&self, x: f64) -> State {
        let (v_lg, h_lg) = (self.v_g - self.v_l, self.h_lg());
        let v = self.v_l + x * v_lg;
        let h = self.h_l + x * h_lg;
        let rho = 1.0 / v;
        // At constant enthalpy the dryness falls as the phase enthalpies rise.
        let dx_dp_h = -(self.dh_l_dp + x * (self.dh_g_dp - self.dh_l_dp)) / h_lg;
        let dv_dp_h = self.dv_l_dp + x * (self.dv_g_dp - self.dv_l_dp) + dx_dp_h * v_lg;
        State {
            phase: Phase::Wet,
            p_pa: self.p_pa,
            t_k: self.t_k,
            rho,
            v,
            h,
            s: self.s_l + x * (self.s_g - self.s_l),
            u: h - self.p_pa * v,
            x: Some(x),
            cp: None,
            drho_dp_h: -rho * rho * dv_dp_h,
            drho_dh_p: -rho * rho * v_lg / h_lg,
        }
    }
}

/// Density, kg/m³, of wet steam from the densities of its phases and its dryness: the volumes add.
#[must_use]
pub fn wet_density(rho_l: f64, rho_g: f64, x: f64) -> f64 {
    1.0 / (1.0 / rho_l + x * (1.0 / rho_g - 1.0 / rho_l))
}

/// Dryness from the enthalpy of a mixture and those of its phases, all in one unit: the enthalpies
/// add.
#[must_use]
pub fn dryness(h: f64, h_l: f64, h_g: f64) -> f64 {
    (h - h_l) / (h_g - h_l)
}
