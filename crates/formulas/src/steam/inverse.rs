//! The state of water or steam from its pressure and its enthalpy or entropy.
//!
//! The backward equations give a first temperature; one Newton step on the forward equation takes
//! away what they lack, so that the state has no kinks that an integrator would feel.

use super::gibbs::{Caloric, Point};
use super::range::{OutOfRange, T_MAX_K, served_pressure, t_min_k, within};
use super::saturated::Saturated;
use super::state::{Phase, State};
use super::{backward_ph, backward_ps, region1, region2, saturation};

/// The state at an absolute pressure (Pa) and a specific enthalpy (J/kg).
///
/// # Errors
/// [`OutOfRange`] outside 611.213 Pa to 10 MPa, or for an enthalpy that the water has only below
/// 0 °C or the steam only above 800 °C.
pub fn at_ph(p_pa: f64, h_j_kg: f64) -> Result<State, OutOfRange> {
    at::<Enthalpy>(p_pa, h_j_kg)
}

/// The state at an absolute pressure (Pa) and a specific entropy (J/(kg K)).
///
/// # Errors
/// As [`at_ph`].
pub fn at_ps(p_pa: f64, s_j_kg_k: f64) -> Result<State, OutOfRange> {
    at::<Entropy>(p_pa, s_j_kg_k)
}

/// What fixes a state besides the pressure.
trait Second {
    const WHAT: &'static str;
    const UNIT: &'static str;
    /// Beyond these no state lies, at any pressure served; the backward equations end there.
    const COARSE: (f64, f64);
    /// No liquid lies above the first, no steam below the second, none but steam above the third,
    /// at any pressure served: most calls are spared one or both ends of the line by this.
    const BOUNDS: (f64, f64, f64);
    fn of(point: &Point) -> f64;
    /// Derivative by temperature (K) at constant pressure, from the specific heat.
    fn by_t(t_k: f64, cp: f64) -> f64;
    fn of_caloric(at: &Caloric) -> f64;
    fn first_liquid(p_pa: f64, value: f64) -> f64;
    fn first_steam(p_pa: f64, value: f64) -> f64;
}

struct Enthalpy;
impl Second for Enthalpy {
    const WHAT: &'static str = "enthalpy";
    const UNIT: &'static str = "J/kg";
    const COARSE: (f64, f64) = (-1e3, 4.2e6);
    const BOUNDS: (f64, f64, f64) = (1.408e6, 2.5e6, 2.804e6);
    fn of(point: &Point) -> f64 {
        point.h
    }
    fn by_t(_: f64, cp: f64) -> f64 {
        cp
    }
    fn of_caloric(at: &Caloric) -> f64 {
        at.h
    }
    fn first_liquid(p_pa: f64, value: f64) -> f64 {
        backward_ph::liquid(p_pa, value)
    }
    fn first_steam(p_pa: f64, value: f64) -> f64 {
        backward_ph::steam(p_pa, value)
    }
}

struct Entropy;
impl Second for Entropy {
    const WHAT: &'static str = "entropy";
    const UNIT: &'static str = "J/(kg K)";
    const COARSE: (f64, f64) = (-1e2, 1.25e4);
    const BOUNDS: (f64, f64, f64) = (3.361e3, 5.6e3, 9.156e3);
    fn of(point: &Point) -> f64 {
        point.s
    }
    fn by_t(t_k: f64, cp: f64) -> f64 {
        cp / t_k
    }
    fn of_caloric(at: &Caloric) -> f64 {
        at.s
    }
    fn first_liquid(p_pa: f64, value: f64) -> f64 {
        backward_ps::liquid(p_pa, value)
    }
    fn first_steam(p_pa: f64, value: f64) -> f64 {
        backward_ps::steam(p_pa, value)
    }
}

fn at<S: Second>(p_pa: f64, value: f64) -> Result<State, OutOfRange> {
    let p_pa = served_pressure(p_pa)?;
    let value = within(S::WHAT, S::UNIT, value, S::COARSE)?;
    let (no_liquid, no_steam, only_steam) = S::BOUNDS;
    if value > only_steam {
        return steam::<S>(p_pa, value);
    }
    let t_k = saturation::temperature(p_pa);
    let mut water = None;
    if value <= no_liquid {
        let l = region1::point(p_pa, t_k);
        if value < S::of(&l) {
            return liquid::<S>(p_pa, value);
        }
        water = Some(l);
    }
    let mut vapour = None;
    if value >= no_steam {
        let g = region2::point(p_pa, t_k);
        if value > S::of(&g) {
            return steam::<S>(p_pa, value);
        }
        vapour = Some(g);
    }
    let l = water.unwrap_or_else(|| region1::point(p_pa, t_k));
    let g = vapour.unwrap_or_else(|| region2::point(p_pa, t_k));
    let x = (value - S::of(&l)) / (S::of(&g) - S::of(&l));
    Ok(Saturated::of(&l, &g, saturation::slope(p_pa, t_k)).mixture(x))
}

fn liquid<S: Second>(p_pa: f64, value: f64) -> Result<State, OutOfRange> {
    let first_k = S::first_liquid(p_pa, value);
    let t_k = first_k + step::<S>(first_k, &region1::caloric(p_pa, first_k), value);
    settled::<S>(Phase::Liquid, &region1::point(p_pa, t_k), value)
}

fn steam<S: Second>(p_pa: f64, value: f64) -> Result<State, OutOfRange> {
    let first_k = S::first_steam(p_pa, value);
    let t_k = first_k + step::<S>(first_k, &region2::caloric(p_pa, first_k), value);
    settled::<S>(Phase::Superheated, &region2::point(p_pa, t_k), value)
}

/// The Newton step, K.
fn step<S: Second>(t_k: f64, at: &Caloric, value: f64) -> f64 {
    (value - S::of_caloric(at)) / S::by_t(t_k, at.cp)
}

/// After the step less than 10 µK is left, which is taken away to first order.
fn settled<S: Second>(phase: Phase, point: &Point, value: f64) -> Result<State, OutOfRange> {
    let left_k = (value - S::of(point)) / S::by_t(point.t_k, point.cp);
    let point = point.warmer_by(left_k);
    Ok(State::single(phase, served::<S>(&point, value)?))
}

/// Refuses a state beyond 0 or 800 °C. A state on the very limit may settle beyond it by rounding,
/// so there the given value itself is compared.
fn served<S: Second>(point: &Point, value: f64) -> Result<&Point, OutOfRange> {
    let (t_low, t_high) = (t_min_k(), T_MAX_K);
    if !(t_low <= point.t_k && point.t_k <= t_high) {
        let low = S::of(&region1::point(point.p_pa, t_low));
        let high = S::of(&region2::point(point.p_pa, t_high));
        within(S::WHAT, S::UNIT, value, (low, high))?;
    }
    Ok(point)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::steam::{P_MAX_PA, P_MIN_PA};

    fn bounds_hold<S: Second>(of: fn(&Saturated) -> (f64, f64)) {
        let (no_liquid, no_steam, only_steam) = S::BOUNDS;
        for i in 0..=2000 {
            let share = f64::from(i) / 2000.0;
            let p = (P_MIN_PA * (P_MAX_PA / P_MIN_PA).powf(share)).min(P_MAX_PA);
            let (l, g) = of(&Saturated::on_line(p));
            assert!(l < no_liquid && no_steam < g && g < only_steam, "{p}");
            let (low, high) = S::COARSE;
            assert!(low < S::of(&region1::point(p, t_min_k())), "{p}");
            assert!(S::of(&region2::point(p, T_MAX_K)) < high, "{p}");
        }
    }

    #[test]
    fn the_bounds_that_spare_calls_hold_at_every_pressure() {
        bounds_hold::<Enthalpy>(|line| (line.h_l, line.h_g));
        bounds_hold::<Entropy>(|line| (line.s_l, line.s_g));
    }
}
