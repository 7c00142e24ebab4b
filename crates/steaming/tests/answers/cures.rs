//! Cures, and the greatest demand that is held.

use crate::rl1::{bar, plant};
use steaming::{
    Above, Blower, Bundle, Candidates, Cure, Holding, Inputs, Lever, Stack, cures, fire,
    greatest_speed, metric_steps, sweep,
};

fn ratio(inputs: &Inputs) -> f64 {
    let state = fire::settle(inputs, bar(4.0)).expect("a balance");
    state.steaming_ratio().expect("a demand")
}

fn only(inputs: &Inputs, candidates: &Candidates<'_>) -> Cure {
    let mut found = cures(inputs, bar(4.0), candidates).expect("a plant with a balance");
    assert_eq!(found.len(), 1);
    found.remove(0)
}

#[test]
fn drills_come_in_steps_of_five_hundredths() {
    let drills = metric_steps(2.0, 2.2, 5);
    let wanted = [2.0, 2.05, 2.1, 2.15, 2.2].map(|mm| mm * 1e-3);
    assert_eq!(drills.len(), wanted.len());
    for (found, wanted) in drills.iter().zip(wanted) {
        assert!((found - wanted).abs() < 1e-12, "{found} for {wanted}");
    }
}

/// Independent calculation: nozzles of 2.0, 2.2 and 2.4 mm steam at 1.185, 1.056 and 0.944, so
/// that 1.1 lies between 2.1 and 2.15 mm.
#[test]
fn worked_cure_by_the_nozzle() {
    let nozzle_m = metric_steps(1.0, 4.0, 5);
    let candidates = Candidates {
        nozzle_m: &nozzle_m,
        ..Candidates::default()
    };
    let cure = only(&plant(2.4), &candidates);
    let cured = cure.cured.expect("a cure");
    assert_eq!(cure.lever, Lever::Nozzle);
    assert!(
        (nozzle_m[cured.candidate] - 2.10e-3).abs() < 1e-9,
        "{}",
        cure.says
    );
    assert!(cured.ratio >= 1.1 && ratio(&plant(2.15)) < 1.1);
    assert!((cured.ratio - ratio(&plant(2.1))).abs() < 1e-9);
    assert!(cure.tried < nozzle_m.len() / 2, "{}", cure.tried);
}

/// A nozzle of 1.7 mm makes steam enough, lifts the bed and chokes the engine.
#[test]
fn a_cure_that_breaks_another_rule_is_none() {
    let candidates = Candidates {
        nozzle_m: &[1.7e-3, 3.0e-3],
        ..Candidates::default()
    };
    assert!(ratio(&plant(1.7)) > 1.1);
    let cure = only(&plant(2.4), &candidates);
    assert!(cure.cured.is_none() && cure.says.contains("none within range"));
    assert_eq!(cure.tried, 2);
}

#[test]
fn each_lever_is_pulled_alone_and_towards_more_steam() {
    let inputs = plant(2.3);
    let bundle = |count, length_m| Bundle {
        count,
        length_m,
        bore_m: inputs.firing.tubes().expect("tubes").bore_m,
    };
    let lump_m = metric_steps(3.0, 20.0, 100);
    let grate_m = metric_steps(40.0, 60.0, 100);
    let candidates = Candidates {
        nozzle_m: &[2.0e-3],
        lump_m: &lump_m,
        tubes: &[bundle(12.0, 0.10), bundle(16.0, 0.20), bundle(20.0, 0.30)],
        grate_m: &grate_m,
        stack: &[
            Stack {
                choke_m: 15e-3,
                height_m: 0.2,
            },
            Stack {
                choke_m: 9.5e-3,
                height_m: 0.2,
            },
        ],
        ..Candidates::default()
    };
    let found = cures(&inputs, bar(4.0), &candidates).expect("cures");
    let levers: Vec<Lever> = found.iter().map(|c| c.lever).collect();
    // The plant has neither holes over the fire nor a flame.
    assert_eq!(levers, Lever::ALL[..5]);
    for cure in &found {
        let Some(cured) = &cure.cured else {
            assert!(cure.says.contains("none within range"), "{}", cure.says);
            continue;
        };
        assert!(cured.ratio >= 1.1, "{}", cure.says);
        assert!(cure.says.contains("instead of"), "{}", cure.says);
    }
    let cured = |lever| found.iter().find(|c| c.lever == lever)?.cured;
    assert!(cured(Lever::Lump).is_some_and(|c| lump_m[c.candidate] > 6e-3));
    assert!(cured(Lever::Grate).is_some_and(|c| grate_m[c.candidate] > 45e-3));
    assert!(cured(Lever::Tubes).is_some_and(|c| c.candidate > 0));
}

#[test]
fn a_plant_that_steams_with_a_tenth_to_spare_is_cured_by_what_it_has() {
    let candidates = Candidates {
        nozzle_m: &[1.9e-3, 2.0e-3, 2.1e-3],
        ..Candidates::default()
    };
    let cure = only(&plant(2.0), &candidates);
    assert_eq!((cure.cured.expect("itself").candidate, cure.tried), (1, 1));
}

fn at_speed(inputs: &Inputs, share: f64) -> f64 {
    let mut inputs = *inputs;
    inputs
        .engine
        .iter_mut()
        .for_each(|e| e.load = e.load.faster(share));
    ratio(&inputs)
}

#[test]
fn the_greatest_speed_is_the_last_that_is_held() {
    let inputs = plant(2.2);
    let Holding::UpTo(held) = greatest_speed(&inputs, bar(4.0)).expect("found") else {
        panic!("a speed within the range is held");
    };
    assert_eq!(held.above, Above::Demand);
    // The plant holds its own speed with 5 % to spare.
    assert!(held.speed_share > 1.0, "{}", held.speed_share);
    assert!((at_speed(&inputs, held.speed_share) - 1.0).abs() < 1e-5);
    assert!(at_speed(&inputs, 1.02 * held.speed_share) < 1.0);
    assert!((held.steam_kg_s - held.state.evaporation_kg_s).abs() < 1e-5 * held.steam_kg_s);
}

#[test]
fn a_wide_nozzle_holds_no_speed() {
    let found = greatest_speed(&plant(4.5), bar(4.0)).expect("found");
    assert!(matches!(found, Holding::Nothing), "{found:?}");
}

#[test]
fn without_an_engine_the_steam_is_what_the_blower_leaves() {
    let mut inputs = plant(2.2);
    inputs.engine = None;
    inputs.blower = Some(Blower {
        jets: 1.0,
        bore_m: 0.4e-3,
        coefficient: 0.85,
        mixing: 0.45,
    });
    let state = fire::settle(&inputs, bar(4.0)).expect("a balance");
    let found = greatest_speed(&inputs, bar(4.0)).expect("found");
    let Holding::Plain(steam) = found else {
        panic!("a plant without an engine gives plain steam: {found:?}");
    };
    assert!((steam - (state.evaporation_kg_s - state.demand_kg_s)).abs() < 1e-12);
    assert!(steam > 0.0);
}

/// Independent calculation: the gain of the loop is 1.1 between 3 and 4 bar and more below; the
/// ratio crosses one at 2.5 bar and rises there.
#[test]
fn the_outlook_says_gain_and_slope_where_the_ratio_crosses_one() {
    let pressures: Vec<f64> = (2..=11).map(|p| bar(f64::from(p) / 2.0)).collect();
    let swept = sweep(&plant(2.2), &pressures).expect("a sweep");
    let outlook = swept.outlook(bar(4.0), bar(5.5)).expect("an outlook");
    let slopes = outlook.at_crossing.expect("a crossing");
    assert!((1.05..1.6).contains(&slopes.gain), "{}", slopes.gain);
    assert!(slopes.ratio_per_pa > 0.0);
    assert!(
        outlook.sentence.contains("gain of 1."),
        "{}",
        outlook.sentence
    );
    assert!(
        outlook.sentence.contains("the ratio rises by 0."),
        "{}",
        outlook.sentence
    );
    let weak = sweep(&plant(2.6), &pressures).expect("a sweep");
    let weak = weak.outlook(bar(4.0), bar(5.5)).expect("an outlook");
    assert!(weak.at_crossing.is_none() && !weak.sentence.contains("gain"));
}
