//! The three ways of asking: speed, power, plain steam; and the puffs of the exhaust.

use reckoning::quantity::BAR_GAUGE;
use steaming::{Engine, Load, Plain, Supply, Taker, fire};

use crate::fitted::fitted;
use crate::rl1::{bar, plant};
use crate::unmeasured::unmeasured;
use crate::{alone, run};

const STROKES: f64 = 20.0;

fn engine(load: Load) -> Engine {
    Engine {
        load,
        ..unmeasured(plant(2.2)).engine.expect("an engine")
    }
}

fn throttled(shaft_w: f64) -> Engine {
    engine(Load::Throttled {
        strokes_per_s: STROKES,
        cut_off: 0.75,
        shaft_w,
    })
}

fn same(found: f64, wanted: f64) {
    assert!((found / wanted - 1.0).abs() < 1e-12, "{found} for {wanted}");
}

fn net_w(engine: &Engine) -> f64 {
    run(engine, BAR_GAUGE.to_si(4.0)).net_w()
}

/// Whatever is free, the power that is asked comes out.
#[test]
fn identity_the_power_asked_is_the_power_given() {
    let cut_off = 0.6;
    for shaft_w in [5.0, 12.0, 20.0] {
        let strokes_per_s = STROKES;
        for load in [
            Load::Throttled {
                strokes_per_s,
                cut_off: 0.75,
                shaft_w,
            },
            Load::BySpeed { cut_off, shaft_w },
            Load::ByCutOff {
                strokes_per_s,
                shaft_w,
            },
        ] {
            let found = net_w(&engine(load));
            assert!((found / shaft_w - 1.0).abs() < 1e-9, "{load:?}: {found}");
        }
    }
}

/// With ports and a pump, in the loop against a blast.
#[test]
fn identity_the_power_asked_is_the_power_given_against_a_blast() {
    let mut inputs = fitted(plant(2.2));
    inputs.engine.iter_mut().for_each(|e| {
        e.load = Load::BySpeed {
            cut_off: 0.7,
            shaft_w: 15.0,
        };
    });
    let state = fire::settle(&inputs, bar(4.0)).expect("a balance");
    let engine = state.exhaust.and_then(|e| e.engine).expect("an engine");
    assert!(engine.pump_w > 0.0);
    assert!((engine.net_w() / 15.0 - 1.0).abs() < 1e-9);
}

/// A regulator cannot give what the boiler has not.
#[test]
fn an_open_regulator_gives_what_it_can() {
    let full = net_w(&engine(Load::Open {
        strokes_per_s: STROKES,
        cut_off: 0.75,
    }));
    same(net_w(&throttled(10.0 * full)), full);
}

/// Expansion spares steam: the same power from an early cut-off takes less than from a throttle
/// (thermodynamics of the diagram; textbooks of steam engines, from memory).
#[test]
fn an_early_cut_off_takes_less_steam_than_a_throttle() {
    let steam = |e: &Engine| run(e, BAR_GAUGE.to_si(4.0)).steam_kg_s;
    let cut = engine(Load::ByCutOff {
        strokes_per_s: STROKES,
        shaft_w: 14.0,
    });
    assert!(steam(&cut) < steam(&throttled(14.0)));
}

/// The steam of a throttled engine lies on a line over its power, and what it takes at no power is
/// 0.25 to 0.35 of that at full load in a small simple engine (Willans, from memory).
#[test]
fn published_line_of_a_throttled_engine() {
    let at = |shaft_w: f64| {
        let run = run(&throttled(shaft_w), BAR_GAUGE.to_si(4.0));
        (run.indicated_w, run.steam_kg_s)
    };
    let [(p_1, m_1), (p_2, m_2), (p_3, m_3)] = [8.0, 16.0, 23.0].map(at);
    let slope = (m_3 - m_1) / (p_3 - p_1);
    let middle = m_1 + slope * (p_2 - p_1);
    assert!(
        (m_2 / middle - 1.0).abs() < 0.02,
        "bent: {m_2} for {middle}"
    );
    let rest = (m_1 - slope * p_1) / m_3;
    assert!((0.15..0.40).contains(&rest), "{rest} of full load at rest");
}

/// Steam that is asked for without an engine is the demand, and blows the fire where it is led to
/// the nozzle.
#[test]
fn plain_steam_is_the_demand_and_blows_the_fire() {
    let mut inputs = plant(2.2);
    let of_engine = fire::settle(&inputs, bar(4.0)).expect("a balance");
    inputs.engine = None;
    inputs.plain = Some(Plain {
        steam_kg_s: of_engine.demand_kg_s,
        exhaust_dryness: 0.93,
    });
    let plain = fire::settle(&inputs, bar(4.0)).expect("a balance");
    same(plain.demand_kg_s, of_engine.demand_kg_s);
    assert!((plain.evaporation_kg_s / of_engine.evaporation_kg_s - 1.0).abs() < 1e-6);
    inputs.blast = None;
    let unblown = fire::settle(&inputs, bar(4.0));
    assert!(unblown.is_err() || unblown.is_ok_and(|s| s.evaporation_kg_s < plain.evaporation_kg_s));
}

/// Beside an engine it is asked for on top of the engine's, and does not blow the fire.
#[test]
fn plain_steam_beside_an_engine_is_asked_on_top() {
    let mut inputs = plant(2.2);
    let alone = fire::settle(&inputs, bar(4.0)).expect("a balance");
    inputs.plain = Some(Plain {
        steam_kg_s: 1e-4,
        exhaust_dryness: 1.0,
    });
    let both = fire::settle(&inputs, bar(4.0)).expect("a balance");
    assert!((both.demand_kg_s - alone.demand_kg_s - 1e-4).abs() < 1e-12);
    same(both.evaporation_kg_s, alone.evaporation_kg_s);
}

/// Slow puffs raise the mean back pressure and the loss of the bed in a puff; quick ones neither.
#[test]
fn identity_puffs_of_a_slow_engine() {
    let inputs = unmeasured(plant(2.6));
    let at = |strokes_per_s: f64| {
        let mut inputs = inputs;
        inputs.engine.iter_mut().for_each(|e| {
            e.stroke_volume_m3 *= STROKES / strokes_per_s;
            e.load = Load::Open {
                strokes_per_s,
                cut_off: 0.75,
            };
        });
        fire::settle(&inputs, bar(4.0)).expect("a balance")
    };
    let slow = at(2.0);
    let exhaust = slow.exhaust.expect("an engine");
    assert!((exhaust.puff_share - 0.68).abs() < 1e-12);
    assert!((exhaust.puffed_pa * 0.68 / exhaust.nozzle_pa - 1.0).abs() < 1e-12);
    let (puffed, mean) = (
        slow.puffed_bed().expect("a bed"),
        slow.pass.firing.bed().expect("a bed").bed,
    );
    assert!((puffed.flux_kg_m2_s * 0.68 / mean.flux_kg_m2_s - 1.0).abs() < 1e-12);
    assert!(puffed.bare_pa > mean.bare_pa / 0.68);
    let quick = at(20.0);
    let even = quick.pass.firing.bed().expect("a bed").bed;
    same(quick.puffed_bed().expect("a bed").bare_pa, even.bare_pa);
}

/// Heat: what comes with the steam goes into work, room and exhaust.
#[test]
fn identity_heat_of_the_engine_closes() {
    let state = alone(&throttled(12.0), BAR_GAUGE.to_si(4.0));
    let engine = state.engine.expect("an engine");
    let came = state.steam_kg_s * (state.supplied_j_kg - state.exhaust_j_kg);
    assert!((came / (engine.indicated_w + state.heat_lost_w) - 1.0).abs() < 1e-12);
    assert!(state.heat_lost_w > 0.0);
}

/// Steam of the independent calculation leaves with a dryness near 0.93, as that took it.
#[test]
fn independent_exhaust_is_a_little_wet() {
    let inputs = unmeasured(plant(2.2));
    let state = fire::settle(&inputs, bar(4.0)).expect("a balance");
    let exhaust = state.exhaust.expect("an engine");
    let x = 1.0 - exhaust.lacks_j_kg / 2256.5e3;
    assert!((0.91..0.96).contains(&x), "{x}");
}

/// An engine of no power takes no room in the loop: what cannot run is refused by name.
#[test]
fn an_engine_that_compression_chokes_is_refused() {
    let engine = Engine {
        compression: 0.9,
        missing: steaming::Missing::Measured(0.1),
        ..engine(Load::Open {
            strokes_per_s: STROKES,
            cut_off: 0.05,
        })
    };
    let supply = Supply {
        blast: None,
        boiler_pa: 1.5e5,
        atmosphere_pa: 1.013e5,
        room_k: 293.15,
        steam_j_kg: 2.69e6,
    };
    let refused = steaming::engine::exhaust(Taker::Engine(&engine), &supply).expect_err("no steam");
    assert!(refused.to_string().contains("compression"), "{refused}");
}
