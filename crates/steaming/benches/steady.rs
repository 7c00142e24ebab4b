//! Time of one settling of the steady loop. Budget: 100 µs on one core; 1 ms for a flame in a flue.
//!
//! The least of many short batches is printed beside their median, because other work on the
//! machine can only add to a time.

#[path = "../tests/rl1/fitted.rs"]
mod fitted;
#[path = "../tests/gf1/mod.rs"]
mod gf1;
#[path = "../tests/rl1/mod.rs"]
mod rl1;
#[path = "../tests/rl1/unmeasured.rs"]
mod unmeasured;

use std::hint::black_box;
use std::time::Instant;

use fitted::fitted;
use rl1::{bar, plant};
use steaming::{Candidates, Dryer, Inputs, cures, fire, metric_steps};
use unmeasured::unmeasured;

const BATCHES: usize = 100;
const EACH: u32 = 20;

/// The cures of a plant that makes too little steam, by nozzle and by lump.
fn cure() {
    let (nozzle_m, lump_m) = (metric_steps(1.0, 4.0, 5), metric_steps(3.0, 20.0, 100));
    let candidates = Candidates {
        nozzle_m: &nozzle_m,
        lump_m: &lump_m,
        ..Candidates::default()
    };
    let start = Instant::now();
    let found = cures(&plant(2.4), bar(4.0), &candidates);
    let millis = 1e3 * start.elapsed().as_secs_f64();
    match found {
        Ok(found) => {
            let tried: usize = found.iter().map(|c| c.tried).sum();
            println!("cures: {tried} candidates in {millis:.2} ms");
        }
        Err(e) => println!("no cures: {e}"),
    }
}

/// A plant with a coil, and an engine whose steam depends on its back pressure.
fn dried() -> Inputs {
    let mut inputs = plant(2.2);
    inputs.engine.iter_mut().for_each(|e| e.closing_pa = None);
    inputs.dryer = Some(Dryer {
        place: steaming::CoilPlace::Smokebox,
        bore_m: 3.6e-3,
        outside_m: 5e-3,
        length_m: 0.4,
        coil_m: 0.06,
        gas_area_m2: 5e-3,
    });
    inputs
}

fn settle(name: &str, inputs: &Inputs) {
    let mut micros: Vec<f64> = (0..BATCHES)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..EACH {
                black_box(fire::settle(black_box(inputs), bar(4.0)).is_ok());
            }
            1e6 * start.elapsed().as_secs_f64() / f64::from(EACH)
        })
        .collect();
    micros.sort_by(f64::total_cmp);
    println!(
        "settle {name}: least {:.1} µs, median {:.1} µs",
        micros[0],
        micros[BATCHES / 2]
    );
    match fire::settle(inputs, bar(4.0)) {
        Ok(state) => println!("draught balance {name}: {} rounds", state.balance.rounds),
        Err(e) => println!("no balance {name}: {e}"),
    }
}

fn main() {
    settle("without a coil", &plant(2.2));
    settle("of an engine not measured", &unmeasured(plant(2.2)));
    settle(
        "of an engine with ports, pipe and pump",
        &fitted(plant(2.2)),
    );
    settle("with a coil that stays wet", &dried());
    let mut long = dried();
    long.dryer.iter_mut().for_each(|d| d.length_m = 2.0);
    settle("with a coil that superheats", &long);
    settle("of a gas fire in a flue", &gf1::gas_plant());
    settle("of a gas fire in a firebox", &gf1::in_firebox());
    settle("of spirit in a flue", &gf1::spirit_plant());
    settle("that superheats an engine not measured", &unmeasured(long));
    cure();
}
