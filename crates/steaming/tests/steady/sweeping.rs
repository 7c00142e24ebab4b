//! The sweep over pressure against the independent calculation RL-1, with its verdict.

use crate::changed::bed;
use crate::rl1::{bar, plant};
use steaming::{ExhaustWater, Inputs, Leak, Stability, Word, fire, sweep};

fn ratio(inputs: &Inputs) -> f64 {
    fire::settle(inputs, bar(4.0))
        .expect("a balance")
        .steaming_ratio()
        .expect("a demand")
}

#[test]
fn independent_rl1_steaming_over_pressure() {
    let pressures: Vec<f64> = (1..=6).map(|p| bar(f64::from(p))).collect();
    let found = sweep(&plant(2.2), &pressures).expect("a sweep");
    for (p, s, w) in [
        (1.0, 0.728, 1.46),
        (2.0, 0.946, 1.82),
        (3.0, 1.028, 2.01),
        (4.0, 1.056, 2.13),
        (5.0, 1.058, 2.20),
    ] {
        let state = found.state_at(bar(p)).expect("a state");
        let ratio = state.steaming_ratio().expect("a demand");
        assert!((ratio / s - 1.0).abs() < 0.02, "{p} bar: {ratio} for {s}");
        let over = state.pass.jets.mixing.gas_over_steam.expect("steam");
        assert!((over / w - 1.0).abs() < 0.02, "{p} bar: {over} for {w}");
    }
    for (step, gain) in [(0, 1.6), (2, 1.1), (3, 1.0), (4, 0.94)] {
        let found = found.steps[step].gain;
        assert!(
            (found - gain).abs() < 0.06,
            "step {step}: {found} for {gain}"
        );
    }
}

#[test]
fn independent_rl1_crossings_and_their_stability() {
    let pressures: Vec<f64> = (2..=22).map(|p| bar(f64::from(p) / 2.0)).collect();
    let found = sweep(&plant(2.2), &pressures).expect("a sweep");
    let seen: Vec<(f64, Stability)> = found
        .crossings
        .iter()
        .map(|c| (c.gauge_pa / 1e5, c.stability))
        .collect();
    assert_eq!(seen.len(), 2, "{seen:?}");
    assert_eq!(seen[0].1, Stability::Unstable);
    assert!((seen[0].0 - 2.5).abs() < 0.2, "{seen:?}");
    assert_eq!(seen[1].1, Stability::Stable);
    assert!((7.0..9.5).contains(&seen[1].0), "{seen:?}");
    for crossing in &found.crossings {
        let ratio = crossing.state.steaming_ratio().expect("a demand");
        assert!((ratio - 1.0).abs() < 1e-5, "{ratio}");
    }
    let low_valve = found.outlook(bar(4.0), bar(5.5)).expect("an outlook");
    assert_eq!(low_valve.word, Word::BlowsOff);
    assert!(low_valve.runs_down_below_pa.is_some());
    let high_valve = found.outlook(bar(4.0), bar(10.0)).expect("an outlook");
    assert_eq!(high_valve.word, Word::Holds);
    let weak = sweep(&plant(2.6), &pressures).expect("a sweep");
    let weak = weak.outlook(bar(4.0), bar(5.5)).expect("an outlook");
    assert_eq!(weak.word, Word::WillNotHold);
}

/// One change each, as a share of the base; the calculation used the gas of steam coal.
#[test]
fn independent_rl1_sensitivities() {
    let base = ratio(&plant(2.2));
    let with = |change: fn(&mut Inputs)| {
        let mut inputs = plant(2.2);
        change(&mut inputs);
        ratio(&inputs) / base
    };
    let leak = |area_m2: f64| {
        let mut inputs = plant(2.2);
        inputs.leak = Some(Leak {
            area_m2,
            coefficient: 0.6,
        });
        ratio(&inputs) / base
    };
    let mut missed = Vec::new();
    for (what, found, wanted) in [
        (
            "gas flux in the bed",
            with(|i| bed(i).bed.grate_m2 *= 16.5 / 17.46),
            1.013,
        ),
        (
            "emissivity 0.3",
            with(|i| bed(i).firebox.emissivity = 0.3),
            1.025,
        ),
        ("nozzle 3.2 mm", ratio(&plant(3.2)) / base, 0.618),
        ("bore 7.5 mm", with(|i| bed(i).tubes.bore_m = 7.5e-3), 1.033),
        ("16 tubes", with(|i| bed(i).tubes.count = 16.0), 1.100),
        (
            "choke 9 mm",
            with(|i| (i.chimney.choke_m, i.chimney.top_m) = (9e-3, 9e-3)),
            1.108,
        ),
        (
            "choke 15 mm",
            with(|i| (i.chimney.choke_m, i.chimney.top_m) = (15e-3, 15e-3)),
            0.892,
        ),
        ("tubes 200 mm", with(|i| bed(i).tubes.length_m = 0.2), 1.094),
        (
            "wet mixing",
            with(|i| i.exhaust_water = ExhaustWater::DriesInGas),
            1.069,
        ),
        ("leak of 5 mm2", leak(5e-6), 1.037),
        ("leak of 10 mm2", leak(1e-5), 1.023),
        ("leak of 20 mm2", leak(2e-5), 0.996),
    ] {
        let wanted = wanted / 1.051;
        if (found - wanted).abs() > 0.01 {
            missed.push(format!("{what}: {found:.4} for {wanted:.4}"));
        }
    }
    assert!(missed.is_empty(), "{}", missed.join("\n"));
}
