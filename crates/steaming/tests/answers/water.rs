//! Coal and water: how long they last.

use crate::rl1::{bar, plant};
use crate::unmeasured::unmeasured;
use reckoning::{Finding, Verdict, Working};
use steaming::consumption::{FeedMeans, WaterAsked, consumption};
use steaming::{Judging, draws, fire, sweep, water_findings};

const HALF_HOUR: f64 = 1800.0;

fn asked<'a>(litres: f64, means: &'a [FeedMeans<'a>]) -> WaterAsked<'a> {
    WaterAsked {
        above_lowest_m3: litres * 1e-3,
        run_s: Some(HALF_HOUR),
        means,
        tank_kg: None,
    }
}

fn pump(kg_h: f64) -> [FeedMeans<'static>; 1] {
    [FeedMeans {
        id: "pump",
        feeds_kg_s: kg_h / 3600.0,
    }]
}

/// The findings at 4 bar, where the independent calculation asks 1.424 kg of steam an hour.
fn found(water: &WaterAsked<'_>) -> Vec<Finding> {
    let sweep = sweep(&plant(2.0), &[bar(4.0)]).expect("a sweep");
    water_findings(
        &Judging {
            sweep: &sweep,
            working_pa: bar(4.0),
            valve_pa: bar(5.5),
            draws: None,
            working: &Working::new(),
        },
        water,
    )
}

fn verdict(water: &WaterAsked<'_>, rule: &str) -> Option<(Verdict, bool)> {
    let found = found(water);
    let finding = found.iter().find(|f| f.rule.id == rule)?;
    Some((finding.verdict, finding.tight))
}

/// A bed of 45 mm and 30 mm depth holds 41 g of anthracite of 850 kg/m³ in the heap, which last
/// 14 min at 174 g/h: independent calculation. Its heap is 2 % lighter than lumps of 1500 kg/m³
/// with 42 % between them.
#[test]
fn worked_life_of_the_bed() {
    let state = fire::settle(&plant(2.2), bar(4.0)).expect("a balance");
    let used = consumption(&state, &asked(0.3, &[])).expect("worked");
    let (bed_kg, life_s) = used.bed_kg.zip(used.bed_life_s).expect("a bed");
    assert!((bed_kg / 0.041 - 1.0).abs() < 0.04, "{bed_kg}");
    assert!((life_s / 60.0 - 14.3).abs() < 0.4);
}

/// Water at 4 bar above the air has 915.3 kg/m³ (steam tables, from memory): 0.3 litre are
/// 274.6 g, and last 11.6 min at 1.424 kg/h.
#[test]
fn worked_time_to_the_lowest_level() {
    let state = fire::settle(&plant(2.2), bar(4.0)).expect("a balance");
    let used = consumption(&state, &asked(0.3, &[])).expect("worked");
    assert!((used.water_kg - 0.2746).abs() < 1e-3, "{}", used.water_kg);
    let minutes = used.without_feed_s.expect("a demand") / 60.0;
    assert!((minutes - 11.57).abs() < 0.06, "{minutes}");
}

#[test]
fn steaming_water_lasts_fires_without_feed() {
    let found = verdict(&asked(0.3, &[]), "steaming.water-lasts");
    assert_eq!(found, Some((Verdict::NotMet, false)));
}

#[test]
fn steaming_water_lasts_fires_when_the_tank_runs_dry() {
    let means = pump(3.0);
    let dry = WaterAsked {
        tank_kg: Some(0.2),
        ..asked(0.3, &means)
    };
    let found = verdict(&dry, "steaming.water-lasts");
    assert_eq!(found, Some((Verdict::NotMet, false)));
}

#[test]
fn steaming_water_lasts_silent_with_water_enough_or_a_pump() {
    for water in [asked(0.9, &[]), asked(0.3, &pump(3.0))] {
        let found = verdict(&water, "steaming.water-lasts");
        assert_eq!(found, Some((Verdict::Met, false)));
    }
    // 0.712 kg are taken; 0.82 litre are 0.75 kg.
    let found = verdict(&asked(0.82, &[]), "steaming.water-lasts");
    assert_eq!(found, Some((Verdict::Met, true)));
}

#[test]
fn steaming_feed_keeps_up_fires_on_a_small_pump() {
    let means = pump(2.0);
    let found = found(&asked(0.3, &means));
    let finding = found
        .iter()
        .find(|f| f.rule.id == "steaming.feed-keeps-up")
        .expect("raised");
    assert_eq!(finding.verdict, Verdict::NotMet);
    assert_eq!(finding.place, "pump");
}

#[test]
fn steaming_feed_keeps_up_silent_on_a_larger_one() {
    let found = verdict(&asked(0.3, &pump(2.4)), "steaming.feed-keeps-up");
    assert_eq!(found, Some((Verdict::Met, false)));
}

#[test]
fn nothing_is_raised_where_nothing_is_asked() {
    let idle = WaterAsked {
        run_s: None,
        ..asked(0.3, &[])
    };
    assert!(found(&idle).is_empty());
}

/// What the engine misses is assumed: the water that it takes is then no more than a band.
#[test]
fn an_assumed_demand_never_makes_the_water_last() {
    let inputs = unmeasured(plant(2.0));
    let sweep = sweep(&inputs, &[bar(4.0)]).expect("a sweep");
    let assumed = [steaming::assumption("engine.missing").expect("an assumption")];
    let draws = draws(&inputs, bar(4.0), &assumed).expect("draws");
    let judge = |litres: f64| {
        let judging = Judging {
            sweep: &sweep,
            working_pa: bar(4.0),
            valve_pa: bar(5.5),
            draws: Some(&draws),
            working: &Working::new(),
        };
        water_findings(&judging, &asked(litres, &[]))[0].verdict
    };
    assert_eq!(judge(0.82), Verdict::Unproved);
    assert_eq!(judge(1.2), Verdict::MetOnCondition);
}
