//! Time of the whole check of the launch example, with its bands and without. Aim: 10 ms without.
//!
//! The least of many runs is printed beside their median, because other work on the machine can
//! only add to a time.

use std::hint::black_box;
use std::time::Instant;

use design::{Asked, Run, Steaming, bench, check, check_by};

const PLAN: &str = include_str!("../../../examples/launch/plan.toml");
const WORKSHOP: &str = include_str!("../../../examples/workshop.toml");
const RUNS: usize = 40;
/// Points of the sweep; as many as the check takes between a fifth of the pressure and the valve.
const POINTS: u32 = 16;

/// Least and median time of some runs, ms.
fn timed<T>(mut run: impl FnMut() -> T) -> (f64, f64) {
    let mut millis: Vec<f64> = (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            black_box(run());
            1e3 * start.elapsed().as_secs_f64()
        })
        .collect();
    millis.sort_by(f64::total_cmp);
    (millis[0], millis[RUNS / 2])
}

/// The sweep over pressure alone: no draws, no rules of the fire, no greatest evaporation.
fn sweep_alone(asked: &Asked<'_>) -> Option<Run> {
    let (inputs, working, valve) = (asked.door.inputs?, asked.working_pa?, asked.valve_pa?);
    let least = 0.2 * working;
    let at = |step: u32| least + (valve - least) * f64::from(step) / f64::from(POINTS - 1);
    let mut pressures: Vec<f64> = (0..POINTS).map(at).collect();
    pressures.push(working);
    pressures.sort_by(f64::total_cmp);
    let sweep = steaming::sweep(&inputs, &pressures).ok()?;
    Some(Run {
        outlook: sweep.outlook(working, valve),
        sweep,
        draws: None,
        band: None,
        cures: Vec::new(),
        findings: Vec::new(),
        flame: None,
    })
}

/// A fire of which nothing but the sweep is known.
#[allow(clippy::needless_pass_by_value, reason = "a check hands it over")]
fn swept(asked: Asked<'_>) -> Steaming {
    Steaming {
        run: sweep_alone(&asked),
        ..asked.unlit()
    }
}

fn main() {
    let plan = plan::read(PLAN, "plan.toml").content;
    let workshop = plan::read_workshop(WORKSHOP, "workshop.toml").content;
    let whole = timed(|| check(&plan, &workshop));
    let swept = timed(|| check_by(&plan, &workshop, swept));
    let dark = timed(|| check_by(&plan, &workshop, |asked| asked.unlit()));
    let plant = timed(|| plant::resolve(&plan));
    let making = timed(|| bench(&plan, &workshop));
    for (what, (least, median)) in [
        ("whole check, with its bands", whole),
        ("sweep, proof, plant and making", swept),
        ("proof, plant and making", dark),
        ("plant alone", plant),
        ("making alone", making),
    ] {
        println!("{what}: least {least:.2} ms, median {median:.2} ms");
    }
    println!(
        "the bands take {:.1} times the rest",
        whole.0 / swept.0 - 1.0
    );
}
