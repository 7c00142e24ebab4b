//! The engine by itself: what it takes, gives and leaves, against what is published of engines.

mod duty;
mod evidence;
mod missing;

#[path = "../rl1/fitted.rs"]
mod fitted;
#[path = "../rl1/mod.rs"]
mod rl1;
#[path = "../rl1/unmeasured.rs"]
mod unmeasured;

use formulas::steam::Saturated;
use reckoning::quantity::{Absolute, CELSIUS, Quantity};
use steaming::engine::{EngineState, ExhaustState, exhaust};
use steaming::{Engine, Supply, Taker};

/// An engine at a gauge pressure, Pa, on dry steam, with its exhaust let into the open air.
fn alone(engine: &Engine, gauge_pa: f64) -> ExhaustState {
    let atmosphere_pa = Absolute::standard_atmosphere().si();
    let boiler_pa = gauge_pa + atmosphere_pa;
    let supply = Supply {
        blast: None,
        boiler_pa,
        atmosphere_pa,
        room_k: CELSIUS.to_si(20.0),
        steam_j_kg: Saturated::at_pressure(boiler_pa).expect("steam").h_g,
    };
    exhaust(Taker::Engine(engine), &supply).expect("an engine that runs")
}

fn run(engine: &Engine, gauge_pa: f64) -> EngineState {
    alone(engine, gauge_pa).engine.expect("an engine")
}
