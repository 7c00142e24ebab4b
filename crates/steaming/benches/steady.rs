//! Time of one settling of the steady loop. Budget: 100 µs on one core.

#[path = "../tests/rl1/mod.rs"]
mod rl1;

use std::hint::black_box;
use std::time::Instant;

use rl1::{bar, plant};
use steaming::fire;

fn main() {
    let inputs = plant(2.2);
    let rounds = 500_u32;
    for _ in 0..rounds {
        black_box(fire::settle(black_box(&inputs), bar(4.0)).is_ok());
    }
    let start = Instant::now();
    for _ in 0..rounds {
        black_box(fire::settle(black_box(&inputs), bar(4.0)).is_ok());
    }
    let each = start.elapsed() / rounds;
    println!("settle: {:.1} µs", each.as_secs_f64() * 1e6);
    match fire::settle(&inputs, bar(4.0)) {
        Ok(state) => println!("draught balance: {} rounds", state.balance.rounds),
        Err(e) => println!("no balance: {e}"),
    }
}
