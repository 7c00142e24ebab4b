//! What a flame shows, and steam jets left on above it.

use crate::gf1::{fired, gas_plant, in_firebox, mm, spirit_plant};
use crate::independent_gf1::settled;
use steaming::signs::{BURNT_AT_END, BURNT_AT_FIRST, FLAME_ROOM_M, LEAST_AIR_RATIO, MOST_ADDED_PA};
use steaming::{Blower, Inputs};

/// Independent calculation: 0.92 of the gas has burnt at the first tube at 90 mm, 0.998 at the
/// end; a flame of 27 W with 0.622 of its air is 6.4 mm long, and 13 mm of room is there.
#[test]
fn independent_signs_of_gf1() {
    let signs = settled(&gas_plant()).flame_signs().expect("a flame");
    let near = |found: f64, wanted: f64, reach: f64| {
        assert!((found - wanted).abs() <= reach, "{found} for {wanted}");
    };
    near(signs.burnt_at_first.expect("a tube"), 0.92, 0.005);
    near(signs.burnt_at_end.expect("a flue"), 0.998, 5e-4);
    // Ports of 50 °C shorten it by 323 over 288; 2 % for the temperature of its volumes.
    let cold_m = signs.flame_m.expect("a flame") * 323.15 / 288.15;
    near(cold_m, 6.4e-3, 0.02 * 6.4e-3 + 5e-5);
    near(signs.gap_m, mm(13.0), 1e-12);
    near(signs.air_ratio, 1.214, 0.013);
    assert!(signs.added_pa == 0.0);
    assert!(signs.air_ratio > LEAST_AIR_RATIO && signs.burnt_at_first < Some(BURNT_AT_FIRST));
    assert!(signs.burnt_at_end > Some(BURNT_AT_END));
    assert!(
        signs
            .flame_m
            .is_some_and(|m| m + FLAME_ROOM_M < signs.gap_m)
    );
}

/// Independent calculation: 197 mm of mixing at 1.6 m/s in a bore of 38 mm.
#[test]
fn independent_mixing_across_the_flue() {
    let state = settled(&gas_plant());
    let speed = state
        .pass
        .firing
        .flue()
        .expect("a flue")
        .flue
        .behind_burner
        .speed_m_s;
    let mixing = state
        .flame_signs()
        .and_then(|s| s.mixing_m)
        .expect("a flue");
    assert!(
        (mixing / speed / (0.197 / 1.6) - 1.0).abs() < 0.01,
        "{mixing}"
    );
}

fn with_blower(mut inputs: Inputs, bore_mm: f64) -> Inputs {
    inputs.blower = Some(Blower {
        jets: 1.0,
        bore_m: mm(bore_mm),
        coefficient: 0.85,
        mixing: 0.45,
    });
    inputs
}

/// Any steam jet adds more than a small flame bears, in the flue and in a firebox, and cools it.
#[test]
fn a_blower_left_on_draws_cold_air() {
    for inputs in [gas_plant(), in_firebox()] {
        let calm = settled(&inputs);
        let drawn = settled(&with_blower(inputs, 0.15));
        let signs = drawn.flame_signs().expect("a flame");
        assert!(signs.added_pa > MOST_ADDED_PA, "{}", signs.added_pa);
        let ratio = |s: &steaming::FireState| s.flame_signs().expect("a flame").air_ratio;
        assert!(ratio(&drawn) > 1.2 * ratio(&calm));
        assert!(drawn.efficiency < calm.efficiency);
        let jets = drawn.pass.jets.net_pa - signs.added_pa;
        // What is left is the chimney alone: half a head at its mouth, one at its top, friction.
        assert!(jets < 0.0, "{jets}");
    }
}

#[test]
fn identity_heat_and_draught_of_a_flame_close() {
    let mut sooty = spirit_plant();
    fired(&mut sooty).flame.soot = 0.1;
    for inputs in [gas_plant(), in_firebox(), spirit_plant(), sooty] {
        let state = settled(&inputs);
        let pass = &state.pass;
        let heat = pass.firing.to_water();
        let smoke = pass.gas_kg_s * state.burning.gas.enthalpy(pass.firing.behind_k());
        let left = pass.heat_w - heat.wall_w - heat.tubes_w - smoke;
        assert!(left.abs() < 1e-6 * pass.heat_w, "{left} W");
        let draught = pass.jets.net_pa + pass.lift_pa - pass.loss_pa;
        assert!(draught.abs() < 1e-6, "{draught} Pa");
        let mass = pass.air_kg_s + pass.fuel_kg_s - pass.gas_kg_s;
        assert!(mass.abs() < 1e-12, "{mass} kg/s");
        let balance = steaming::heat::HeatBalance::of(&state);
        assert!(balance.residual().abs() < 1e-6, "{}", balance.residual());
        let split = steaming::draught::DraughtSplit::of(&state);
        assert!((split.raised_pa() - split.spent_pa()).abs() < 1e-6);
    }
}

/// Independent calculation: a wick of 10 mm burns 28.4 g/(m2 s) of methylated spirit, 711 kW/m2.
#[test]
fn independent_wicks() {
    let inputs = spirit_plant();
    let state = settled(&inputs);
    let flame = state.pass.firing.flame().expect("a flame");
    let wicks = flame.wicks().expect("wicks");
    assert!(
        (1e3 * wicks.flux / 28.4 - 1.0).abs() < 0.005,
        "{}",
        wicks.flux
    );
    let area = 4.0 * (78.54e-6 + 0.6 * 157.08e-6);
    let heat = wicks.fuel_kg_s * state.burning.heating_value_j_kg;
    assert!((heat / (711e3 * area) - 1.0).abs() < 0.005, "{heat} W");
    let given = inputs
        .firing
        .flame()
        .and_then(|f| f.wicks().copied())
        .expect("wicks");
    let weighed = given.weighed(1.3 * wicks.fuel_kg_s);
    assert!((weighed - 1.3).abs() < 1e-12, "{weighed}");
    // All the air is secondary.
    assert!(flame.primary_ratio == 0.0 && flame.air_ratio > 1.0);
}

#[test]
fn wicks_behind_a_shut_mouth_are_refused() {
    let mut inputs = spirit_plant();
    fired(&mut inputs).flame.mouth = steaming::burner::Mouth::Shut;
    let refused = steaming::fire::settle(&inputs, crate::changed::boiler_pa());
    assert!(refused.is_err_and(|e| e.to_string().contains("wicks")));
}
