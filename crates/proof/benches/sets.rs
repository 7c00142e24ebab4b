//! Time of the proof of the sample boiler by all rule sets and by each. Aim: 2 ms for all.
//!
//! The least of many runs is printed beside their median, because other work on the machine can
//! only add to a time.

#[path = "../tests/sample/mod.rs"]
mod sample;

use std::hint::black_box;
use std::time::Instant;

use proof::{Asked, Boiler, RuleSet, SETS, prove};
use sample::further::furnished;

const RUNS: usize = 200;

/// Least and median time of some runs, µs.
fn timed<T>(mut run: impl FnMut() -> T) -> (f64, f64) {
    let mut micros: Vec<f64> = (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            black_box(run());
            1e6 * start.elapsed().as_secs_f64()
        })
        .collect();
    micros.sort_by(f64::total_cmp);
    (micros[0], micros[RUNS / 2])
}

/// How many findings a set makes of a boiler.
fn by(set: &RuleSet, boiler: &Boiler, asked: &Asked<'_>) -> usize {
    let shells = boiler.shells.iter().map(|s| (set.shell)(s, asked).len());
    let plates = boiler.plates.iter().map(|p| (set.plate)(p, asked).len());
    let flues = boiler.flues.iter().map(|f| (set.flue)(f, asked).len());
    let parts: usize = shells.chain(plates).chain(flues).sum();
    parts + (set.whole)(boiler, asked).len()
}

fn main() {
    let boiler = furnished(sample::boiler());
    let (service, stock) = (sample::service(0.5), sample::stock());
    let asked = Asked {
        service: &service,
        stock: &stock,
    };
    let (least, median) = timed(|| prove(&boiler, &service, &stock, None));
    println!("all sets: least {least:.0} us, median {median:.0} us");
    for set in SETS {
        let found = by(set, &boiler, &asked);
        let (least, median) = timed(|| by(set, &boiler, &asked));
        println!(
            "{}: {found} findings, least {least:.0} us, median {median:.0} us",
            set.key
        );
    }
}
