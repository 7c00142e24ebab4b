//! What every fireman knows: which way the steaming goes when one thing is changed.

use crate::changed::bed;
use crate::rl1::{bar, plant};
use reckoning::quantity::MM;
use steaming::{Blower, CoilPlace, Dryer, Exhausts, FireAir, Inputs, NotSettled, Opening, fire};

fn ratio(inputs: &Inputs) -> f64 {
    let state = fire::settle(inputs, bar(4.0)).expect("a balance");
    state.steaming_ratio().expect("a demand")
}

fn with(change: impl FnOnce(&mut Inputs)) -> f64 {
    let mut inputs = plant(2.2);
    change(&mut inputs);
    ratio(&inputs)
}

#[test]
fn finer_lumps_lower_the_steaming() {
    assert!(with(|i| bed(i).bed.packing.lump_m = 5e-3) < 0.97 * ratio(&plant(2.2)));
}

#[test]
fn ash_lowers_the_steaming_on_the_grate_and_in_the_coal() {
    let base = ratio(&plant(2.2));
    assert!(with(|i| bed(i).bed.ash_factor = 2.0) < 0.9 * base);
    let dirty = with(|i| {
        let fire = &mut bed(i).fire;
        let carbon = fire.fuel.carbon;
        fire.fuel.carbon = carbon - 0.10;
        fire.fuel.ash += 0.10;
        fire.heating_value_j_kg *= (carbon - 0.10) / carbon;
    });
    assert!(dirty < base);
}

#[test]
fn wetter_exhaust_lowers_the_steaming() {
    let wetter = with(|i| {
        i.engine
            .iter_mut()
            .for_each(|e| e.exhausts = Exhausts::Dryness(0.85));
    });
    assert!(wetter < ratio(&plant(2.2)));
}

#[test]
fn a_larger_nozzle_lowers_the_steaming_by_a_rule() {
    let found: Vec<f64> = [1.8, 2.0, 2.2, 2.4, 2.6, 3.2]
        .map(|d| ratio(&plant(d)))
        .to_vec();
    assert!(found.windows(2).all(|p| p[1] < p[0]), "{found:?}");
}

/// In laminar tubes the bore drops out; only number and length count.
#[test]
fn the_bore_of_the_tubes_hardly_matters() {
    let narrow = with(|i| bed(i).tubes.bore_m = 7.5e-3) / ratio(&plant(2.2));
    assert!((0.96..=0.99).contains(&narrow), "{narrow}");
}

#[test]
fn a_blower_draws_the_fire_that_the_chimney_alone_cannot() {
    let mut inputs = plant(2.2);
    inputs.engine = None;
    // A chimney of 0.2 m lifts 1 Pa: not enough for 30 mm of 6 mm lumps.
    assert!(fire::settle(&inputs, bar(4.0)).is_err());
    inputs.blower = Some(Blower {
        jets: 4.0,
        bore_m: 0.4e-3,
        coefficient: 0.85,
        mixing: 0.45,
    });
    let blown = fire::settle(&inputs, bar(4.0)).expect("a balance");
    assert!(blown.pass.jets.net_pa > 50.0);
    // 4 jets of 0.4 mm at about 750 kg/(m2 s) through 0.85.
    let steam = 0.85 * 4.0 * std::f64::consts::FRAC_PI_4 * 0.16e-6 * 750.0;
    assert!((blown.demand_kg_s / steam - 1.0).abs() < 0.05);
}

/// Rule of the trade, common practice, no source: a coil in the smokebox dries and no more.
#[test]
fn a_coil_in_the_smokebox_dries_the_steam_and_cools_the_smoke() {
    let mut inputs = plant(2.2);
    inputs.dryer = Some(Dryer {
        place: CoilPlace::Smokebox,
        bore_m: 2e-3,
        outside_m: 3e-3,
        length_m: 0.5,
        coil_m: 0.04,
        gas_area_m2: 8e-4,
    });
    let state = fire::settle(&inputs, bar(4.0)).expect("a balance");
    let coil = state.pass.dryer.expect("a coil");
    assert!((10.0..60.0).contains(&coil.heat_w), "{} W", coil.heat_w);
    let given = state.pass.gas_kg_s
        * (state.burning.gas.enthalpy(state.pass.firing.behind_k())
            - state.burning.gas.enthalpy(coil.gas_k));
    assert!((given / coil.heat_w - 1.0).abs() < 1e-6);
    let exhaust = state.exhaust.expect("an engine");
    assert!((exhaust.supplied_j_kg - state.water.steam_j_kg - coil.gain_j_kg).abs() < 0.1);
}

#[test]
fn a_fire_that_cannot_live_is_refused_and_says_why() {
    let mut inputs = plant(2.2);
    bed(&mut inputs).bed.packing.lump_m = 0.2e-3;
    inputs.blast = None;
    let refused = fire::settle(&inputs, bar(4.0)).expect_err("no draught");
    assert!(matches!(refused, NotSettled::Balance { .. }));
    assert!(refused.to_string().contains("draught"), "{refused}");
}

/// Source: a jet needs some ten bores of length to take in the gas (law of entrainment of a round
/// jet, from memory); a tip that stands at the top of the chimney draws nothing, common practice,
/// no source.
#[test]
fn a_tip_raised_towards_the_top_kills_the_draught() {
    let drawn = |below_mm: f64| {
        let mut plant = plant(2.2);
        let blast = plant.blast.as_mut().expect("a nozzle");
        blast.below_choke_m = MM.to_si(below_mm);
        steaming::fire::settle(&plant, bar(4.0)).map_or(0.0, |s| s.pass.jets.net_pa)
    };
    let (below, at_choke, near_top, at_top) =
        (drawn(15.0), drawn(0.0), drawn(-190.0), drawn(-200.0));
    assert!(
        (at_choke / below - 1.0).abs() < 0.01,
        "a tip at the choke is no switch: {at_choke}"
    );
    assert!(near_top < 0.8 * below, "{near_top} for {below}");
    assert!(at_top < 0.05 * below, "{at_top} for {below}");
}

/// Source: a free jet widens by some 12 degrees to each side, common practice, no source.
#[test]
fn a_tip_far_below_the_choke_misses_it() {
    let ratio = |below_mm: f64| {
        let mut plant = plant(2.2);
        plant.blast.as_mut().expect("a nozzle").below_choke_m = MM.to_si(below_mm);
        let state = steaming::fire::settle(&plant, bar(4.0)).expect("a balance");
        state.steaming_ratio().expect("a demand")
    };
    assert!(
        ratio(40.0) < 0.9 * ratio(20.0),
        "{} {}",
        ratio(40.0),
        ratio(20.0)
    );
}

/// The plant with a coil of 6 by 4.6 mm, 0.2 m long, over its fire.
fn coil_over_fire(inputs: &mut Inputs) {
    inputs.dryer = Some(Dryer {
        place: CoilPlace::Firebox {
            emissivity: 0.8,
            view: 0.7,
        },
        bore_m: MM.to_si(4.6),
        outside_m: MM.to_si(6.0),
        length_m: 0.2,
        coil_m: MM.to_si(38.0),
        gas_area_m2: std::f64::consts::FRAC_PI_4 * 0.05 * 0.05
            - std::f64::consts::PI * 0.038 * 0.006,
    });
}

/// Source: conservation of energy; 60 to 120 W/(m² K) for a coil in a firebox, common practice, no
/// source.
#[test]
fn a_coil_over_the_fire_superheats_and_its_heat_is_accounted_for() {
    let mut inputs = plant(2.2);
    coil_over_fire(&mut inputs);
    let state = fire::settle(&inputs, bar(4.0)).expect("a balance");
    let coil = state.pass.dryer.expect("a coil");
    let heat = steaming::heat::HeatBalance::of(&state);
    assert!(heat.residual().abs() < 1e-6, "{}", heat.residual());
    assert!(
        coil.outlet.t_k > state.water.saturation_k + 50.0,
        "{}",
        coil.outlet.t_k
    );
    assert!(
        (60.0..=150.0).contains(&coil.outside_w_m2_k),
        "{}",
        coil.outside_w_m2_k
    );
    let plain = fire::settle_at(&plant(2.2), bar(4.0), state.pass.fuel_kg_s).expect("a state");
    let hot = |s: &steaming::FireState| s.pass.firing.hottest_k();
    assert!(
        hot(&state) < hot(&plain),
        "of the same fuel the coil leaves a cooler box"
    );
}

/// Out of sight of the fire and in slow gas the coil takes less; with nothing in sight of it only
/// convection is left.
#[test]
fn a_coil_takes_more_in_sight_of_the_fire() {
    let taken = |seen: f64| {
        let mut inputs = plant(2.2);
        coil_over_fire(&mut inputs);
        let place = &mut inputs.dryer.as_mut().expect("a coil").place;
        if let CoilPlace::Firebox { view, .. } = place {
            *view = seen;
        }
        let state = fire::settle(&inputs, bar(4.0)).expect("a balance");
        let coil = state.pass.dryer.expect("a coil");
        (coil.heat_w, coil.outside_w_m2_k - coil.convection_w_m2_k)
    };
    let (none, half, all) = (taken(0.0), taken(0.5), taken(1.0));
    assert!(none.1.abs() < 1e-9, "{none:?}");
    assert!(
        none.0 < half.0 && half.0 < all.0,
        "{none:?} {half:?} {all:?}"
    );
}

/// Holes over the fire of the plant, with a bed of this depth in mm.
fn with_holes(depth_mm: f64, holes: f64) -> Inputs {
    let mut inputs = plant(2.2);
    let fired = bed(&mut inputs);
    fired.bed.depth_m = MM.to_si(depth_mm);
    fired.fire.air = FireAir::WithHoles {
        bed_factor: 1.0,
        holes: Opening {
            area_m2: holes * std::f64::consts::FRAC_PI_4 * MM.to_si(2.0).powi(2),
            coefficient: 0.62,
        },
    };
    inputs
}

/// Source: a bed some eight lumps deep gives off gas that wants air over it (deep test beds of
/// 1916, from memory).
#[test]
fn a_thick_bed_is_smothered_without_holes_over_it() {
    match fire::settle(&with_holes(60.0, 0.1), bar(4.0)) {
        Err(NotSettled::Smothered { ratio }) => assert!(ratio < 1.0, "{ratio}"),
        other => panic!("{other:?}"),
    }
    let state = fire::settle(&with_holes(60.0, 8.0), bar(4.0)).expect("a balance");
    let fired = state.pass.firing.bed().expect("a bed");
    assert!(
        fired.bed.bed_ratio < 0.75 && fired.bed.air_ratio > 1.0,
        "{:?}",
        fired.bed
    );
    assert!(steaming::heat::HeatBalance::of(&state).residual().abs() < 1e-6);
}

#[test]
fn more_holes_over_the_fire_bring_more_air() {
    let ratios: Vec<f64> = [2.0, 4.0, 8.0, 16.0]
        .map(|n| {
            let state = fire::settle(&with_holes(30.0, n), bar(4.0)).expect("a balance");
            state.pass.firing.bed().expect("a bed").bed.air_ratio
        })
        .to_vec();
    assert!(ratios.windows(2).all(|p| p[1] > p[0]), "{ratios:?}");
}

/// Every driver's damper: the less its door is open the less burns.
#[test]
fn a_door_of_the_ash_pan_damps_the_fire() {
    let fuel = |mm2: f64| {
        let mut inputs = plant(2.2);
        bed(&mut inputs).bed.door = Some(Opening {
            area_m2: mm2 * 1e-6,
            coefficient: 0.6,
        });
        let state = fire::settle(&inputs, bar(4.0)).expect("a balance");
        let split = steaming::draught::DraughtSplit::of(&state);
        assert!((split.raised_pa() / split.spent_pa() - 1.0).abs() < 1e-6);
        state.pass.fuel_kg_s
    };
    let (wide, half, nearly_shut) = (fuel(2000.0), fuel(80.0), fuel(30.0));
    assert!(
        nearly_shut < 0.8 * wide && half < wide,
        "{nearly_shut} {half} {wide}"
    );
}
