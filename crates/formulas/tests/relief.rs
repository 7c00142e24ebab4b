//! What an ideal nozzle passes by its three published descriptions: the choked flow of steam in
//! equilibrium, the function of an isentropic exponent, and the old rule of thumb.

use formulas::relief::valve;
use formulas::steam::{Saturated, State};

/// Independent calculation on IAPWS-IF97, per square millimetre of nozzle, at 1.1 times the set
/// pressure and 1.01325 bar of air: pressure in bar, volume in m³/kg, flow in equilibrium in kg/h.
const NOZZLE: [(f64, f64, f64); 5] = [
    (3.2133, 0.567_99, 1.7238),
    (4.3133, 0.430_74, 2.2940),
    (6.5133, 0.292_02, 3.4240),
    (8.7133, 0.221_60, 4.5451),
    (12.0132, 0.163_08, 6.2174),
];

/// Greatest mass flux down the isentrope from dry saturated steam, kg/h and square millimetre.
fn equilibrium(p_pa: f64) -> f64 {
    let from = Saturated::at_pressure(p_pa).expect("steam");
    let flux = |ratio: f64| {
        let throat = Saturated::at_pressure(p_pa * ratio).expect("steam");
        let x = (from.s_g - throat.s_l) / (throat.s_g - throat.s_l);
        let at: State = throat.mixed(x).expect("wet steam");
        (2.0 * (from.h_g - at.h)).sqrt() * at.rho
    };
    (500..650)
        .map(|i| flux(f64::from(i) / 1000.0))
        .fold(0.0, f64::max)
        * 3600.0
        / 1e6
}

#[test]
fn independent_flow_of_steam_in_equilibrium() {
    for (bar, volume, flow) in NOZZLE {
        let found = equilibrium(bar * 1e5);
        assert!((found / flow - 1.0).abs() < 1e-4, "{bar}: {found}");
        let v = Saturated::at_pressure(bar * 1e5).expect("steam").v_g;
        assert!((v / volume - 1.0).abs() < 3e-5, "{bar}: {v}");
    }
}

/// The three agree within 3 %, and a plain valve is counted at a tenth of them.
#[test]
fn identity_the_descriptions_agree_and_a_plain_valve_passes_a_tenth() {
    for (bar, volume, flow) in NOZZLE {
        let c = valve::flow_function(1.135);
        let by_exponent = valve::measured(c, 1.0, 1.0, bar, volume);
        assert!((by_exponent / flow - 1.0).abs() < 0.003, "{bar}");
        let plain = valve::by_lift(0.05, 1.0, bar);
        assert!(
            (plain / flow - 0.095).abs() < 0.003,
            "{bar}: {}",
            plain / flow
        );
    }
}
