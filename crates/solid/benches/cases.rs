//! Time of each kind of part, mesh and answer together. Aim: half a second.
//!
//! The least of many runs is printed beside their median, because other work on the machine can
//! only add to a time.

use std::hint::black_box;
use std::time::Instant;

use solid::{
    Body, BushInPlate, DishedEnd, Fineness, FlatEnd, Metal, Points, Rim, Solved, Tube, solve,
};

const RUNS: usize = 20;
const COPPER: Metal = Metal {
    modulus_mpa: 110e3,
    poisson: 0.34,
};

/// Least and median time of some runs, ms.
fn timed(mut run: impl FnMut() -> Solved) -> (f64, f64) {
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

fn tube(inside_radius_mm: f64, wall_mm: f64) -> Tube {
    Tube {
        inside_radius_mm,
        wall_mm,
        metal: COPPER,
    }
}

fn flat(rim: Rim, flue: Option<Tube>) -> FlatEnd {
    FlatEnd {
        shell: tube(50.0, 2.5),
        plate_mm: 4.0,
        plate: COPPER,
        rim,
        flue,
        length_mm: 120.0,
        pressure_mpa: 0.6,
    }
}

fn dished() -> DishedEnd {
    DishedEnd {
        shell: tube(50.0, 2.5),
        crown_mm: 100.0,
        knuckle_mm: 10.0,
        thickness_mm: 2.5,
        metal: COPPER,
        length_mm: 80.0,
        pressure_mpa: 0.6,
    }
}

fn bush() -> BushInPlate {
    BushInPlate {
        plate_mm: 2.5,
        plate: COPPER,
        rim_radius_mm: 60.0,
        hole_radius_mm: 7.0,
        bore_radius_mm: 5.0,
        below_mm: 3.0,
        above_mm: 6.0,
        bush: COPPER,
        pull_mpa: 12.0,
    }
}

fn main() {
    let flanged = Rim::Flanged {
        inside_radius_mm: 7.0,
        height_mm: 20.0,
        points: Points::AwayFromWater,
    };
    let flue = Some(tube(18.0, 2.0));
    type Case = (&'static str, Box<dyn Fn(Fineness) -> Body>);
    let cases: [Case; 5] = [
        (
            "flat end",
            Box::new(|by| flat(Rim::Square, None).body(by).expect("an end")),
        ),
        (
            "annular end",
            Box::new(move |by| flat(Rim::Square, flue).body(by).expect("an end")),
        ),
        (
            "annular end, flanged",
            Box::new(move |by| flat(flanged, flue).body(by).expect("an end")),
        ),
        (
            "dished end",
            Box::new(|by| dished().body(by).expect("a dish")),
        ),
        ("bush", Box::new(|by| bush().body(by).expect("a bush"))),
    ];
    for (what, case) in &cases {
        for parts in [1, 2, 4] {
            let nodes = case(Fineness(parts)).mesh.nodes.len();
            let run = || solve(&case(Fineness(parts))).expect("an answer");
            let (least, median) = timed(run);
            println!("{what}, {nodes} nodes: least {least:.1} ms, median {median:.1} ms");
        }
    }
}
