//! Time of one settling of the steady loop. Budget: 100 µs on one core.
//!
//! The least of many short batches is printed beside their median, because other work on the
//! machine can only add to a time.

#[path = "../tests/rl1/mod.rs"]
mod rl1;

use std::hint::black_box;
use std::time::Instant;

use rl1::{bar, plant};
use steaming::{Candidates, cures, fire, metric_steps};

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

fn main() {
    let inputs = plant(2.2);
    let mut micros: Vec<f64> = (0..BATCHES)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..EACH {
                black_box(fire::settle(black_box(&inputs), bar(4.0)).is_ok());
            }
            1e6 * start.elapsed().as_secs_f64() / f64::from(EACH)
        })
        .collect();
    micros.sort_by(f64::total_cmp);
    println!(
        "settle: least {:.1} µs, median {:.1} µs",
        micros[0],
        micros[BATCHES / 2]
    );
    cure();
    match fire::settle(&inputs, bar(4.0)) {
        Ok(state) => println!("draught balance: {} rounds", state.balance.rounds),
        Err(e) => println!("no balance: {e}"),
    }
}
