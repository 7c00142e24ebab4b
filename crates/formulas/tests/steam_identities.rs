//! What must hold of water and steam whatever the coefficients: the laws of thermodynamics, the
//! analytic slopes against differences, the borders between the equations, monotony, refusals.

use formulas::steam::{
    self, P_MAX_PA, P_MIN_PA, Phase, Point, Saturated, T_MAX_K, backward_ph, backward_ps,
    metastable, region1, region2, saturation, t_min_k, transport, wet_density,
};
use proptest::prelude::*;
use reckoning::quantity::{CELSIUS, KJ_PER_KG};

/// Pressures from the least to the greatest served, evenly in their logarithm.
fn pressures(count: usize) -> impl Iterator<Item = f64> {
    let ratio = P_MAX_PA / P_MIN_PA;
    (0..count).map(move |i| {
        let share = i as f64 / (count - 1) as f64;
        (P_MIN_PA * ratio.powf(share)).clamp(P_MIN_PA, P_MAX_PA)
    })
}

/// The derivative of `f` at `x` by a central difference of the fourth order over a share of `x`.
fn slope(x: f64, share: f64, f: impl Fn(f64) -> f64) -> f64 {
    let d = x * share;
    let near = f(x + d) - f(x - d);
    let far = f(x + 2.0 * d) - f(x - 2.0 * d);
    (8.0 * near - far) / (12.0 * d)
}

/// The two agree to `relative` of the one that is wanted.
fn close(found: f64, wanted: f64, relative: f64) -> Result<(), TestCaseError> {
    prop_assert!(
        (found - wanted).abs() <= relative * wanted.abs(),
        "{found} against {wanted}"
    );
    Ok(())
}

/// A pressure and the bare equation that holds there, with a temperature well inside it.
fn one_phase() -> impl Strategy<Value = (fn(f64, f64) -> Point, f64, f64)> {
    (0.0_f64..1.0, 0.01_f64..0.99, any::<bool>()).prop_map(|(share, at, water)| {
        let p = P_MIN_PA * 1.5 * (P_MAX_PA * 0.9 / (P_MIN_PA * 1.5)).powf(share);
        let boiling = saturation::temperature(p);
        let low = t_min_k();
        if water {
            let t = low + 0.5 + at * (boiling - low - 1.0);
            (region1::point as fn(f64, f64) -> Point, p, t)
        } else {
            (
                region2::point as _,
                p,
                boiling + 0.5 + at * (T_MAX_K - boiling - 1.0),
            )
        }
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn identity_one_phase_obeys_the_laws((point, p, t) in one_phase()) {
        let at = point(p, t);
        prop_assert!((at.h - at.u - p * at.v).abs() <= 1e-9 * (at.u.abs() + p * at.v));
        prop_assert!(at.cp >= at.cv() && at.cv() > 0.0);
        prop_assert!(at.dv_dp_t < 0.0);
        // The speed of sound follows from the slope of pressure by density without loss of entropy,
        // here by differences: 1e-3 of the pressure up and down along a line of one entropy.
        let rho = |p: f64| steam::at_ps(p, at.s).expect("in range").rho;
        if at.v > 0.01 && p > 1e3 && p < 8e6 {
            close(at.w() * at.w(), 1.0 / slope(p, 1e-3, rho), 1e-5)?;
        }
    }

    /// Differences over 1e-4 of a variable: their own error is far below one in a million.
    #[test]
    fn identity_one_phase_slopes_are_those_of_differences((point, p, t) in one_phase()) {
        let at = point(p, t);
        let by_t = |f: fn(&Point) -> f64| slope(t, 1e-4, |t| f(&point(p, t)));
        let by_p = |f: fn(&Point) -> f64| slope(p, 1e-4, |p| f(&point(p, t)));
        close(by_t(|s| s.h), at.cp, 1e-6)?;
        close(by_t(|s| s.s), at.cp / t, 1e-6)?;
        // Water has its greatest density at 4 °C, where the slope passes through zero.
        let dv_dt = by_t(|s| s.v);
        prop_assert!((dv_dt - at.dv_dt_p).abs() <= 1e-6 * (at.dv_dt_p.abs() + 1e-3 * at.v / t));
        // Water is so stiff that a difference over 1e-4 of a small pressure is lost in rounding.
        let stiff = |p: f64, t: f64| slope(p.max(1e5), 1e-2, |p| point(p, t).v);
        let dv_dp = if at.v < 0.01 { stiff(p, t) } else { by_p(|s| s.v) };
        let dv_dp_there = point(if at.v < 0.01 { p.max(1e5) } else { p }, t).dv_dp_t;
        close(dv_dp, dv_dp_there, 1e-5)?;
        // A relation of Maxwell: (ds/dp) = -(dv/dT).
        let ds_dp = slope(p, 1e-2, |p| point(p, t).s);
        prop_assert!((ds_dp + at.dv_dt_p).abs() <= 1e-5 * at.dv_dt_p.abs() + 1e-9 / p);
    }

    #[test]
    fn identity_slopes_of_density_in_one_phase((point, p, t) in one_phase()) {
        prop_assume!(p > 2e4);
        let at = point(p, t);
        let state = steam::at_ph(p, at.h).expect("in range");
        prop_assert_ne!(state.phase, Phase::Wet);
        let rho = |p: f64, h: f64| steam::at_ph(p, h).expect("in range").rho;
        // Steps that stay within the phase and rise above the rounding of the density.
        let by_h = slope(at.h, 2e4 / at.h * 1e-2, |h| rho(p, h));
        prop_assert!((by_h - state.drho_dh_p).abs() <= 1e-5 * (state.drho_dh_p.abs() + 1e-6 * at.rho / 1e3));
        let by_p = slope(p, 1e-3, |p| rho(p, at.h));
        prop_assert!((by_p - state.drho_dp_h).abs() <= 1e-4 * (state.drho_dp_h.abs() + 1e-8 * at.rho / p));
    }

    #[test]
    fn identity_slopes_of_density_in_the_wet((share, x) in (0.02_f64..0.98, 0.02_f64..0.98)) {
        let p = P_MIN_PA * (P_MAX_PA / P_MIN_PA).powf(share);
        let state = steam::wet(p, x).expect("in range");
        let rho = |p: f64, h: f64| steam::at_ph(p, h).expect("in range").rho;
        close(slope(state.h, 1e-4, |h| rho(p, h)), state.drho_dh_p, 1e-6)?;
        close(slope(p, 1e-4, |p| rho(p, state.h)), state.drho_dp_h, 1e-6)?;
    }

    #[test]
    fn identity_slopes_along_the_saturation_line(share in 0.01_f64..0.99) {
        let p = P_MIN_PA * (P_MAX_PA / P_MIN_PA).powf(share);
        let line = Saturated::at_pressure(p).expect("in range");
        let along = |f: fn(&Saturated) -> f64| {
            slope(p, 1e-4, |p| f(&Saturated::at_pressure(p).expect("in range")))
        };
        close(along(|s| s.t_k), line.dt_dp, 1e-7)?;
        close(along(|s| s.v_l), line.dv_l_dp, 1e-5)?;
        close(along(|s| s.v_g), line.dv_g_dp, 1e-7)?;
        close(along(|s| s.rho_l), line.drho_l_dp, 1e-5)?;
        close(along(|s| s.rho_g), line.drho_g_dp, 1e-7)?;
        close(along(|s| s.h_l), line.dh_l_dp, 1e-6)?;
        close(along(|s| s.h_g), line.dh_g_dp, 1e-5)?;
        // T ds = dh - v dp for each phase.
        close(line.t_k * along(|s| s.s_l) + line.v_l, line.dh_l_dp, 1e-5)?;
    }

    /// After the polish the temperature returns to a ten-millionth of a kelvin, the dryness to
    /// rounding; the backward equations alone lie up to 25 mK off.
    #[test]
    fn identity_enthalpy_and_entropy_return_the_state((point, p, t) in one_phase()) {
        let at = point(p, t);
        for state in [steam::at_ph(p, at.h), steam::at_ps(p, at.s)] {
            let state = state.expect("in range");
            prop_assert!((state.t_k - t).abs() < 1e-7, "{} against {t}", state.t_k);
            close(state.rho, at.rho, 1e-9)?;
        }
    }

    #[test]
    fn identity_wet_states_return((share, x) in (0.0_f64..1.0, 0.0_f64..=1.0)) {
        let p = (P_MIN_PA * (P_MAX_PA / P_MIN_PA).powf(share)).min(P_MAX_PA);
        let wet = steam::wet(p, x).expect("in range");
        let line = Saturated::at_pressure(p).expect("in range");
        close(wet.rho, wet_density(line.rho_l, line.rho_g, x), 1e-12)?;
        close(wet.u, line.u_l + x * (line.u_g - line.u_l), 1e-9)?;
        prop_assume!(0.001 < x && x < 0.999);
        for state in [steam::at_ph(p, wet.h), steam::at_ps(p, wet.s)] {
            let state = state.expect("in range");
            prop_assert_eq!(state.phase, Phase::Wet);
            prop_assert!((state.x.expect("wet") - x).abs() < 1e-12);
        }
    }
}

/// The phases in equilibrium have one Gibbs energy. R7-97, table 44, from memory: the equations
/// of regions 1, 2 and 4 agree to 0.012 kJ/kg at worst along the line to 350 °C.
#[test]
fn published_consistency_of_the_saturation_line() {
    for p in pressures(400) {
        let line = Saturated::at_pressure(p).expect("in range");
        let water = line.h_l - line.t_k * line.s_l;
        let steam = line.h_g - line.t_k * line.s_g;
        let off = KJ_PER_KG.from_si((water - steam).abs());
        assert!(off <= 0.0125, "{off} kJ/kg at {p} Pa");
    }
}

/// The slope of the saturation equation against the law of Clausius and Clapeyron. The equations
/// of the regions are fitted one by one, so the law holds as nearly as their heat of evaporation
/// and volume are right: 2.2e-4 and 1.2e-4 (see the grid test).
#[test]
fn identity_slope_of_the_saturation_line_follows_from_the_phases() {
    for p in pressures(400) {
        let line = Saturated::at_pressure(p).expect("in range");
        let clapeyron = line.t_k * (line.v_g - line.v_l) / line.h_lg();
        assert!((line.dt_dp / clapeyron - 1.0).abs() <= 3.4e-4, "at {p} Pa");
    }
}

/// R7-97, section 6.2, read in a reproduction of its text: along the saturated vapour line the
/// metastable equation departs from that of region 2 by at most 0.014 % in v, 0.043 kJ/kg in h,
/// 0.78 % in c_p, 0.082 J/(kg K) in s and 0.051 % in w.
#[test]
fn published_consistency_of_the_metastable_vapour() {
    for p in pressures(400) {
        let t = saturation::temperature(p);
        let (stable, other) = (region2::point(p, t), metastable::point(p, t));
        assert!((other.v / stable.v - 1.0).abs() <= 1.45e-4, "v at {p}");
        assert!((other.h - stable.h).abs() <= 43.5, "h at {p}");
        assert!((other.cp / stable.cp - 1.0).abs() <= 7.85e-3, "cp at {p}");
        assert!((other.s - stable.s).abs() <= 0.0825, "s at {p}");
        assert!((other.w() / stable.w() - 1.0).abs() <= 5.15e-4, "w at {p}");
    }
}

/// Where the parts of the backward equations meet they differ by no more than both may be off:
/// 25 mK (R7-97, tables 23 and 28, from memory) on either side.
#[test]
fn published_consistency_of_the_backward_parts() {
    let p = 4e6;
    for i in 0..=100 {
        let t = saturation::temperature(p) + 1.0 + f64::from(i) * 5.0;
        let at = region2::point(p, t);
        let by_h = backward_ph::steam_a(p, at.h) - backward_ph::steam_b(p, at.h);
        let by_s = backward_ps::steam_a(p, at.s) - backward_ps::steam_b(p, at.s);
        assert!(
            by_h.abs() <= 0.05 && by_s.abs() <= 0.05,
            "{by_h}, {by_s} at {t} K"
        );
    }
    // The border b/c meets the saturation line at 6.5467 MPa (R7-97, section 6.3, from memory).
    let h = Saturated::at_pressure(6.5467e6).expect("in range").h_g;
    let border = backward_ph::border_b_c(h);
    assert!((border / 6.5467e6 - 1.0).abs() < 1e-3, "{border}");
}

#[test]
fn identity_saturation_equations_invert_each_other() {
    for p in pressures(200) {
        let back = saturation::pressure(saturation::temperature(p));
        assert!((back / p - 1.0).abs() < 1e-11, "{back} against {p}");
    }
}

#[test]
fn what_rises_in_nature_rises_here() {
    let mut before: Option<Saturated> = None;
    for p in pressures(300) {
        let line = Saturated::at_pressure(p).expect("in range");
        if let Some(b) = before {
            assert!(line.t_k > b.t_k && line.h_l > b.h_l && line.s_l > b.s_l);
            assert!(line.rho_g > b.rho_g && line.s_g < b.s_g && line.h_lg() < b.h_lg());
        }
        before = Some(line);
    }
}

/// At one pressure, from water of 4 °C to steam of 700 °C.
#[test]
fn more_enthalpy_is_never_colder_nor_denser_nor_of_less_entropy() {
    for p in pressures(100) {
        let t_densest = CELSIUS.to_si(4.0).min(saturation::temperature(p));
        let low = region1::point(p, t_densest).h;
        let high = region2::point(p, CELSIUS.to_si(700.0)).h;
        let mut last: Option<steam::State> = None;
        for i in 1..200 {
            let h = low + (high - low) * f64::from(i) / 200.0;
            let state = steam::at_ph(p, h).expect("in range");
            if let Some(l) = last {
                let rises = state.t_k >= l.t_k && state.rho < l.rho && state.s > l.s;
                assert!(rises, "at {p} Pa, {h} J/kg");
            }
            last = Some(state);
        }
    }
}

/// Passing a saturation line by 2 mJ/kg, the volume changes by what the slopes give and no more.
#[test]
fn the_phases_join_without_a_step() {
    for p in pressures(100).skip(1) {
        let line = Saturated::at_pressure(p).expect("in range");
        for h in [line.h_l, line.h_g] {
            let (below, above) = (
                steam::at_ph(p, h - 1e-3).expect("in range"),
                steam::at_ph(p, h + 1e-3).expect("in range"),
            );
            assert_ne!(below.phase, above.phase, "{p}");
            assert!(
                (below.t_k - above.t_k).abs() < 1e-6,
                "{p}: {} {}",
                below.t_k,
                above.t_k
            );
            let by_h = |s: steam::State| -s.v * s.v * s.drho_dh_p;
            let step = above.v - below.v - 1e-3 * (by_h(below) + by_h(above));
            assert!(step.abs() < 1e-9 * line.v_g, "{p}: {step}");
        }
    }
}

#[test]
fn outside_the_range_the_value_and_its_limits_are_named() {
    let refused = steam::at_pt(20e6, 400.0).expect_err("too high");
    assert_eq!((refused.value, refused.high), (20e6, P_MAX_PA));
    assert_eq!(
        refused.to_string(),
        "steam and water: pressure 20000000 Pa lies outside 611.213 to 10000000 Pa"
    );
    for p in [f64::NAN, 0.0, -1e5, 600.0, f64::INFINITY] {
        assert!(Saturated::at_pressure(p).is_err());
        assert!(steam::at_ph(p, 2.7e6).is_err());
        assert!(steam::at_ps(p, 7e3).is_err());
    }
    for t in [f64::NAN, 270.0, 1100.0] {
        assert!(steam::at_pt(1e5, t).is_err());
        assert!(transport::at_pt(1e5, t).is_err());
    }
    for h in [f64::NAN, -500.0, -1e9, 4.17e6, 1e9] {
        assert!(steam::at_ph(1e5, h).is_err(), "{h}");
    }
    for s in [f64::NAN, -10.0, -1e5, 9.6e3, 1e9] {
        assert!(steam::at_ps(1e5, s).is_err(), "{s}");
    }
    for x in [f64::NAN, -0.01, 1.01] {
        assert!(steam::wet(1e5, x).is_err());
    }
    assert!(saturation::t_sat(23e6).is_err() && saturation::p_sat(650.0).is_err());
    assert!(transport::surface_tension(650.0).is_err());
}

#[test]
fn the_very_limits_are_served() {
    for p in [P_MIN_PA, 1e5, P_MAX_PA] {
        for t in [t_min_k(), T_MAX_K] {
            let state = steam::at_pt(p, t).expect("on the limit");
            assert!((steam::at_ph(p, state.h).expect("h").t_k - t).abs() < 1e-6);
            assert!((steam::at_ps(p, state.s).expect("s").t_k - t).abs() < 1e-6);
        }
    }
}

/// The metastable vapour is served between the saturation line and 5 % moisture.
#[test]
fn metastable_vapour_ends_at_five_percent_moisture() {
    let p = 5e5;
    let line = Saturated::at_pressure(p).expect("in range");
    let at = |below: f64| steam::metastable_at_pt(p, line.t_k - below);
    assert!(at(0.0).is_ok() && at(20.0).is_ok());
    assert!(at(-1.0).is_err(), "above the line it is not metastable");
    assert!(at(60.0).is_err(), "beyond the line of 5 % moisture");
}
