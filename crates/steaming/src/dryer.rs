//! The coil: the steam's enthalpy is marched along the tube, and its temperature stays that of
//! saturation until it is dry.
//!
//! Smokebox and firebox are taken as stirred: in the smokebox the coil meets the gas at the
//! temperature at which it goes to the chimney, in the firebox at that at which it goes to the
//! tubes, and there it sees the fire besides. Left out: the mist that outlives dryness, the
//! shelter of neighbouring turns, and in the smokebox radiation, which is small beside convection
//! at its temperatures.

use std::convert::Infallible;

use formulas::balance::{length_ratio, round_area};
use formulas::coil::{
    critical_reynolds, crossflow_nusselt, laminar_friction, laminar_nusselt, radiation_coefficient,
    turbulent_friction, turbulent_nusselt, whole_coefficient,
};
use formulas::gas::FlueGas;
use formulas::heat::{film_coefficient, friction_loss, prandtl, reynolds};
use formulas::steam::transport::{self, Transport};
use formulas::steam::{Saturated, State, at_ph, at_pt, point_at};
use reckoning::quantity::CELSIUS;

use crate::curve::Curve;
use crate::fault::NotSettled;
use crate::inputs::{CoilPlace, Dryer};
use crate::seek::seek;

/// Steam and gas that meet at the coil.
#[derive(Clone, Copy, Debug)]
pub struct Meeting<'a> {
    /// Steam through the coil, kg/s.
    pub steam_kg_s: f64,
    /// Pressure of the steam, Pa.
    pub steam_pa: f64,
    /// Enthalpy of the steam where it enters, J/kg.
    pub inlet_j_kg: f64,
    /// Gas, kg/s.
    pub gas_kg_s: f64,
    /// Temperature of the gas before the coil, K.
    pub gas_k: f64,
    /// The gas.
    pub gas: &'a FlueGas,
}

/// The settled coil.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DryerState {
    /// Heat taken up, W.
    pub heat_w: f64,
    /// Enthalpy added to the steam, J/kg.
    pub gain_j_kg: f64,
    /// Steam where it leaves.
    pub outlet: State,
    /// Temperature of the gas behind the coil, K.
    pub gas_k: f64,
    /// Temperature of the film outside the inlet end, K.
    pub film_k: f64,
    /// Reynolds number of the gas across the tube.
    pub outside_reynolds: f64,
    /// Prandtl number of the film.
    pub outside_prandtl: f64,
    /// Nusselt number outside.
    pub outside_nusselt: f64,
    /// Coefficient of convection outside, W/(m² K).
    pub convection_w_m2_k: f64,
    /// Coefficient of radiation, W/(m² K); `None` out of sight of the fire.
    pub radiation_w_m2_k: Option<f64>,
    /// Coefficient outside, W/(m² K).
    pub outside_w_m2_k: f64,
    /// Reynolds number of saturated steam inside.
    pub inside_reynolds: f64,
    /// Prandtl number of saturated steam.
    pub inside_prandtl: f64,
    /// Bore of the tube over mean diameter of the coil.
    pub ratio: f64,
    /// Nusselt number of saturated steam inside.
    pub inside_nusselt: f64,
    /// Coefficient inside at the inlet end, W/(m² K).
    pub inside_w_m2_k: f64,
    /// Length in which the steam dries, m; the whole length where it does not.
    pub drying_m: f64,
    /// Speed of the steam where it leaves, m/s.
    pub outlet_m_s: f64,
    /// Friction factor of the steam, Darcy form.
    pub friction: f64,
    /// Pressure lost by friction at the mean density, Pa.
    pub loss_pa: f64,
}

/// Slices of the superheating part; a test shows that twice as many agree within 0.1 %.
pub const SLICES: usize = 4;

/// Finds the temperature of the stirred smokebox at which the coil takes up what the gas gives.
///
/// # Errors
/// [`NotSettled`] where the gas is not hotter than the steam, or a state lies outside the steam
/// equations.
pub fn settle(dryer: &Dryer, meeting: &Meeting<'_>) -> Result<DryerState, NotSettled> {
    settle_in(dryer, meeting, SLICES)
}

/// As [`settle`], in so many slices of the superheating part.
///
/// # Errors
/// As [`settle`].
pub fn settle_in(
    dryer: &Dryer,
    meeting: &Meeting<'_>,
    slices: usize,
) -> Result<DryerState, NotSettled> {
    let line = Line::new(meeting.steam_pa)?;
    let film = Film::new(dryer, meeting, &line);
    let coil = Coil {
        slices,
        ..Coil::new(dryer, meeting, (&line, &film))
    };
    coil.settled()
}

/// Points of the curves of steam from saturation to the end of its equations, and of the film
/// outside from the coldest to the hottest it can be.
const STEAM_POINTS: usize = 12;
const FILM_POINTS: usize = 6;

/// Steam in the coil, prepared once for a pressure.
pub(crate) struct Line {
    pa: f64,
    saturated: Saturated,
    steam: Transport,
    /// Viscosity, conductivity, specific heat and enthalpy by the reciprocal of temperature, 1/K.
    curves: [Curve<STEAM_POINTS>; 4],
}

impl Line {
    pub(crate) fn new(pa: f64) -> Result<Self, NotSettled> {
        let saturated = Saturated::at_pressure(pa)?;
        // In the reciprocal of temperature, in which the laws bend least.
        let span = (1.0 / CELSIUS.to_si(800.0), 1.0 / saturated.t_k);
        let curves = Curve::of(span, |reciprocal| {
            let (_, point) = point_at(pa, 1.0 / reciprocal)?;
            let carry = transport::of(&point);
            Ok::<_, NotSettled>([carry.mu, carry.lambda, point.cp, point.h])
        })?;
        Ok(Self {
            pa,
            saturated,
            steam: transport::saturated(pa)?.1,
            curves,
        })
    }

    /// Transport properties and specific heat of steam at a temperature, K.
    fn at(&self, t_k: f64) -> Result<(Transport, f64), NotSettled> {
        if !self.curves[0].holds(1.0 / t_k) {
            let (_, point) = point_at(self.pa, t_k)?;
            return Ok((transport::of(&point), point.cp));
        }
        let [mu, lambda, cp] = [0, 1, 2].map(|law: usize| self.curves[law].at(1.0 / t_k));
        let pr = mu * cp / lambda;
        Ok((Transport { mu, lambda, pr }, cp))
    }

    /// Enthalpy of steam at a temperature (K), J/kg.
    fn enthalpy(&self, t_k: f64) -> Result<f64, NotSettled> {
        if self.curves[3].holds(1.0 / t_k) {
            return Ok(self.curves[3].at(1.0 / t_k));
        }
        Ok(at_pt(self.pa, t_k)?.h)
    }
}

/// Coefficient of convection outside by the temperature of the film, prepared once for a flow of
/// gas.
pub(crate) struct Film(Curve<FILM_POINTS>);

impl Film {
    pub(crate) fn new(dryer: &Dryer, meeting: &Meeting<'_>, line: &Line) -> Self {
        let span = (line.saturated.t_k, meeting.gas_k);
        let law = |t| Ok::<_, Infallible>([Outside::of(dryer, meeting, t).w_m2_k]);
        let Ok([curve]) = Curve::of(span, law);
        Self(curve)
    }
}

/// Coefficient of radiation to a coil from a fire, both in K; `None` out of its sight.
fn radiation(dryer: &Dryer, gas_k: f64, tube_k: f64) -> Option<f64> {
    match dryer.place {
        CoilPlace::Smokebox => None,
        CoilPlace::Firebox { emissivity, view } => {
            Some(radiation_coefficient(emissivity, view, gas_k, tube_k))
        }
    }
}

/// What does not depend on the temperature of the gas.
pub(crate) struct Coil<'a> {
    dryer: &'a Dryer,
    meeting: &'a Meeting<'a>,
    slices: usize,
    line: &'a Line,
    film: &'a Film,
    flux: f64,
    ratio: f64,
    wet: Inside,
}

/// Heat transfer inside.
#[derive(Clone, Copy)]
struct Inside {
    reynolds: f64,
    prandtl: f64,
    nusselt: f64,
    w_m2_k: f64,
}

/// The wall outside.
#[derive(Clone, Copy)]
struct Outside {
    film_k: f64,
    reynolds: f64,
    prandtl: f64,
    nusselt: f64,
    w_m2_k: f64,
}

impl<'a> Coil<'a> {
    pub(crate) fn new(
        dryer: &'a Dryer,
        meeting: &'a Meeting<'a>,
        (line, film): (&'a Line, &'a Film),
    ) -> Self {
        let flux = meeting.steam_kg_s / round_area(dryer.bore_m);
        let ratio = length_ratio(dryer.bore_m, dryer.coil_m);
        Self {
            dryer,
            meeting,
            slices: SLICES,
            line,
            film,
            flux,
            ratio,
            wet: Inside::of(&line.steam, flux, dryer.bore_m, ratio),
        }
    }

    /// Temperature of the stirred smokebox at which the coil takes up what the gas gives, K.
    fn stirred(&self) -> Result<f64, NotSettled> {
        let m = self.meeting;
        let brought = m.gas.enthalpy(m.gas_k);
        let bracket = (self.line.saturated.t_k, m.gas_k);
        let solved = seek("heat of gas and coil in the smokebox", bracket, 1e-7, |t| {
            let given_w = m.gas_kg_s * (brought - m.gas.enthalpy(t));
            let (h, _) = self.heated(t)?;
            Ok(given_w - m.steam_kg_s * (h - m.inlet_j_kg))
        })?;
        Ok(solved.x)
    }

    /// Enthalpy added to the steam, J/kg.
    pub(crate) fn gain(&self) -> Result<f64, NotSettled> {
        let m = self.meeting;
        let given_j_kg = m.gas.enthalpy(m.gas_k) - m.gas.enthalpy(self.stirred()?);
        Ok(m.gas_kg_s * given_j_kg / m.steam_kg_s)
    }

    pub(crate) fn settled(&self) -> Result<DryerState, NotSettled> {
        self.march(self.stirred()?)
    }

    /// Enthalpy added to the steam in gas of the temperature before the coil, which another
    /// balance has found, J/kg.
    pub(crate) fn gain_there(&self) -> Result<f64, NotSettled> {
        Ok(self.heated(self.meeting.gas_k)?.0 - self.meeting.inlet_j_kg)
    }

    /// As [`Self::settled`], in gas of the temperature before the coil.
    pub(crate) fn settled_there(&self) -> Result<DryerState, NotSettled> {
        self.march(self.meeting.gas_k)
    }

    /// Coefficient outside between gas and steam, W/(m² K).
    fn outside(&self, gas_k: f64, steam_k: f64) -> f64 {
        let convection = self.film.0.at(f64::midpoint(gas_k, steam_k));
        match radiation(self.dryer, gas_k, steam_k) {
            Some(radiation) => whole_coefficient(convection, radiation),
            None => convection,
        }
    }

    /// Heat taken up by a metre of tube, W/m.
    fn per_metre(&self, outside_w_m2_k: f64, inside: &Inside, excess_k: f64) -> f64 {
        let d = self.dryer;
        let resistance = 1.0 / outside_w_m2_k + d.outside_m / d.bore_m / inside.w_m2_k;
        std::f64::consts::PI * d.outside_m * excess_k / resistance
    }

    fn march(&self, gas_k: f64) -> Result<DryerState, NotSettled> {
        let m = self.meeting;
        let film_k = f64::midpoint(gas_k, self.line.saturated.t_k);
        let first = Outside::of(self.dryer, m, film_k);
        let radiation = radiation(self.dryer, gas_k, self.line.saturated.t_k);
        let (h, drying_m) = self.heated(gas_k)?;
        let (inlet, outlet) = (at_ph(m.steam_pa, m.inlet_j_kg)?, at_ph(m.steam_pa, h)?);
        let friction = friction(self.wet.reynolds, self.ratio);
        let bores = self.dryer.length_m / self.dryer.bore_m;
        let mean_kg_m3 = 2.0 / (inlet.v + outlet.v);
        Ok(DryerState {
            heat_w: m.steam_kg_s * (h - m.inlet_j_kg),
            gain_j_kg: h - m.inlet_j_kg,
            outlet,
            gas_k,
            film_k: first.film_k,
            outside_reynolds: first.reynolds,
            outside_prandtl: first.prandtl,
            outside_nusselt: first.nusselt,
            convection_w_m2_k: first.w_m2_k,
            radiation_w_m2_k: radiation,
            outside_w_m2_k: radiation.map_or(first.w_m2_k, |r| whole_coefficient(first.w_m2_k, r)),
            inside_reynolds: self.wet.reynolds,
            inside_prandtl: self.wet.prandtl,
            ratio: self.ratio,
            inside_nusselt: self.wet.nusselt,
            inside_w_m2_k: self.wet.w_m2_k,
            drying_m,
            outlet_m_s: self.flux / outlet.rho,
            friction,
            loss_pa: friction_loss(friction, bores, self.flux, mean_kg_m3),
        })
    }

    /// Enthalpy of the steam at the end, and the length in which it dries.
    fn heated(&self, gas_k: f64) -> Result<(f64, f64), NotSettled> {
        let (m, length_m) = (self.meeting, self.dryer.length_m);
        let steam_k = self.line.saturated.t_k;
        let wet_w_m = self.per_metre(self.outside(gas_k, steam_k), &self.wet, gas_k - steam_k);
        let lacks_w = m.steam_kg_s * (self.line.saturated.h_g - m.inlet_j_kg);
        if wet_w_m * length_m <= lacks_w {
            return Ok((m.inlet_j_kg + wet_w_m * length_m / m.steam_kg_s, length_m));
        }
        let drying_m = lacks_w / wet_w_m;
        let h = self.superheat(gas_k, length_m - drying_m)?;
        Ok((h, drying_m))
    }

    /// Enthalpy after a length of superheating: each slice is an exchanger with gas at one
    /// temperature and the properties of the steam at its middle.
    fn superheat(&self, gas_k: f64, length_m: f64) -> Result<f64, NotSettled> {
        let slice_m = length_m / self.slices as f64;
        let mut steam_k = self.line.saturated.t_k;
        for _ in 0..self.slices {
            let excess = gas_k - steam_k;
            let half =
                gas_k - excess * (-self.units_per_metre(gas_k, steam_k)? * slice_m / 2.0).exp();
            steam_k = gas_k - excess * (-self.units_per_metre(gas_k, half)? * slice_m).exp();
        }
        self.line.enthalpy(steam_k)
    }

    /// Transfer units of a metre of tube with single-phase steam, 1/m.
    fn units_per_metre(&self, gas_k: f64, steam_k: f64) -> Result<f64, NotSettled> {
        let m = self.meeting;
        let (carry, cp) = self.line.at(steam_k)?;
        let inside = Inside::of(&carry, self.flux, self.dryer.bore_m, self.ratio);
        let outside = self.outside(gas_k, steam_k);
        Ok(self.per_metre(outside, &inside, 1.0) / (m.steam_kg_s * cp))
    }
}

impl Outside {
    fn of(dryer: &Dryer, meeting: &Meeting<'_>, film_k: f64) -> Self {
        let gas = meeting.gas;
        let carry = gas.transport(film_k);
        let flux = meeting.gas_kg_s / dryer.gas_area_m2;
        let reynolds = reynolds(flux, dryer.outside_m, carry.viscosity);
        let prandtl = prandtl(
            carry.viscosity,
            gas.specific_heat(film_k),
            carry.conductivity,
        );
        let nusselt = crossflow_nusselt(reynolds, prandtl);
        Self {
            film_k,
            reynolds,
            prandtl,
            nusselt,
            w_m2_k: film_coefficient(nusselt, carry.conductivity, dryer.outside_m),
        }
    }
}

impl Inside {
    fn of(steam: &Transport, flux: f64, bore_m: f64, ratio: f64) -> Self {
        let reynolds = reynolds(flux, bore_m, steam.mu);
        let nusselt = inside_nusselt(reynolds, steam.pr, ratio);
        Self {
            reynolds,
            prandtl: steam.pr,
            nusselt,
            w_m2_k: film_coefficient(nusselt, steam.lambda, bore_m),
        }
    }
}

/// Reynolds number above which flow in a coil is wholly turbulent.
pub(crate) const TURBULENT_FROM: f64 = 2.2e4;

/// Nusselt number inside: laminar to the critical Reynolds number, turbulent from 22 000, a
/// straight line between them.
#[must_use]
pub fn inside_nusselt(re: f64, pr: f64, ratio: f64) -> f64 {
    between(
        re,
        ratio,
        |re| laminar_nusselt(re, pr, ratio),
        |re| turbulent_nusselt(re, pr, ratio),
    )
}

fn friction(re: f64, ratio: f64) -> f64 {
    between(
        re,
        ratio,
        |re| laminar_friction(re, ratio),
        |re| turbulent_friction(re, ratio),
    )
}

fn between(
    re: f64,
    ratio: f64,
    laminar: impl Fn(f64) -> f64,
    turbulent: impl Fn(f64) -> f64,
) -> f64 {
    let critical = critical_reynolds(ratio);
    if re <= critical {
        laminar(re)
    } else if re >= TURBULENT_FROM {
        turbulent(re)
    } else {
        let share = (re - critical) / (TURBULENT_FROM - critical);
        laminar(critical) + share * (turbulent(TURBULENT_FROM) - laminar(critical))
    }
}

#[cfg(test)]
mod tests;
