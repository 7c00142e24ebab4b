//! Nanoseconds a call of what the solvers ask of steam most, and the ratio to the same question
//! put to the crate `seuif97`, which answers one property at a time.
//!
//! `cargo bench -p formulas --bench steam`. The clock of the standard library is enough: a figure
//! is the least of many rounds, which is what the machine can do when nothing else runs.

use formulas::steam::{self, Saturated, saturation, transport};
use std::hint::black_box;
use std::time::Instant;

const CALLS: usize = 10_000;
const ROUNDS: usize = 40;

/// Least time of a call, ns, over inputs from 0.5 to 30 bar.
fn least<T>(call: impl Fn(f64) -> T) -> f64 {
    (0..ROUNDS)
        .map(|_| {
            let start = Instant::now();
            for i in 0..CALLS {
                let share = i as f64 / CALLS as f64;
                black_box(call(black_box(0.05 + 2.95 * share)));
            }
            start.elapsed().as_secs_f64() / CALLS as f64 * 1e9
        })
        .fold(f64::INFINITY, f64::min)
}

fn line(what: &str, ours: f64, theirs: f64, their_question: &str) {
    let ratio = ours / theirs;
    println!("{what:<44} {ours:>6.0} ns   {ratio:>5.2} of {their_question} ({theirs:.0} ns)");
}

fn main() {
    use seuif97::{OH, OT, OV, OX, ph, ps, px};
    // Pressure in MPa; the enthalpies are steam at some 100 K of superheat, wet, and warm water.
    line(
        "saturation::t_sat",
        least(|p| saturation::t_sat(p * 1e6)),
        least(|p| px(p, 0.0, OT)),
        "T of (p, x)",
    );
    line(
        "Saturated::at_pressure, all 20 properties",
        least(|p| Saturated::at_pressure(p * 1e6)),
        least(|p| px(p, 1.0, OH)),
        "h of (p, x)",
    );
    line(
        "at_ph, superheated, whole state",
        least(|p| steam::at_ph(p * 1e6, 3.05e6)),
        least(|p| ph(p, 3050.0, OT)),
        "T of (p, h)",
    );
    line(
        "at_ph, superheated, whole state",
        least(|p| steam::at_ph(p * 1e6, 3.05e6)),
        least(|p| ph(p, 3050.0, OV)),
        "v of (p, h)",
    );
    line(
        "at_ph, liquid, whole state",
        least(|p| steam::at_ph(p * 1e6, 0.25e6)),
        least(|p| ph(p, 250.0, OV)),
        "v of (p, h)",
    );
    line(
        "at_ph, wet, whole state",
        least(|p| steam::at_ph(p * 1e6, 1.8e6)),
        least(|p| ph(p, 1800.0, OX)),
        "x of (p, h)",
    );
    line(
        "at_ps, wet, whole state",
        least(|p| steam::at_ps(p * 1e6, 5.0e3)),
        least(|p| ps(p, 5.0, OX)),
        "x of (p, s)",
    );
    line(
        "transport::at_pt, steam at 400 °C",
        least(|p| transport::at_pt(p * 1e6, 673.0)),
        least(|p| seuif97::pt(p, 400.0, seuif97::OTC)),
        "conductivity of (p, T)",
    );
}
