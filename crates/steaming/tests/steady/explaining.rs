//! The cards, worked again beside a settled state, agree with it.

use crate::changed::bed;
use crate::fitted::fitted;
use crate::rl1::{bar, plant};
use crate::unmeasured::unmeasured;
use reckoning::working::Basis;
use reckoning::{Given, Working};
use steaming::{
    Beyond, Blower, CARRIED, Dryer, ExhaustWater, Inputs, Leak, Load, Plain, explain, fire,
};

fn filed(inputs: &Inputs) -> Working {
    let state = fire::settle(inputs, bar(4.0)).expect("a balance");
    let mut working = Working::new();
    let origins = |field: &'static str| match steaming::assumption(field) {
        Some(entering) => Given::Assumed {
            assumption: entering.assumption,
        },
        None => Given::Plan {
            field: field.to_owned(),
            typed: String::new(),
        },
    };
    let lines = explain(&state, &origins, &mut working).expect("an explanation");
    assert!(
        (working.si(lines.evaporation) / state.evaporation_kg_s - 1.0).abs() < 1e-12,
        "evaporation"
    );
    working
}

fn far(working: &Working) -> Vec<String> {
    working
        .lines()
        .iter()
        .filter_map(|line| match &line.basis {
            Basis::Worked {
                card,
                settled: Some(s),
                ..
            } if (s - line.value).abs() > 1e-12 * line.value.abs() => {
                Some(format!("{}: {} settled, {} worked", card.id, s, line.value))
            }
            _ => None,
        })
        .collect()
}

#[test]
fn the_cards_agree_with_the_state_in_every_kind_of_plant() {
    let mut plants = vec![("nozzle", plant(2.2))];
    let mut with = |name, change: fn(&mut Inputs)| {
        let mut inputs = plant(2.2);
        change(&mut inputs);
        plants.push((name, inputs));
    };
    with("free closing", |i| {
        i.engine.iter_mut().for_each(|e| e.closing_pa = None);
    });
    with("blower", |i| i.blower = Some(jets()));
    with("blower alone", |i| {
        i.blower = Some(jets());
        i.engine = None;
    });
    with("leak", |i| {
        i.leak = Some(Leak {
            area_m2: 1e-5,
            coefficient: 0.6,
        });
    });
    with("wet mixing", |i| i.exhaust_water = ExhaustWater::DriesInGas);
    with("coil", |i| {
        i.dryer = Some(Dryer {
            place: steaming::CoilPlace::Smokebox,
            bore_m: 2e-3,
            outside_m: 3e-3,
            length_m: 0.5,
            coil_m: 0.04,
            gas_area_m2: 8e-4,
        });
    });
    with("air over the fire", |i| {
        let fired = bed(i);
        fired.bed.door = Some(steaming::Opening {
            area_m2: 2e-4,
            coefficient: 0.6,
        });
        fired.fire.air = steaming::FireAir::WithHoles {
            bed_factor: 0.9,
            holes: steaming::Opening {
                area_m2: 2.5e-5,
                coefficient: 0.62,
            },
        };
    });
    with("coil over the fire", |i| {
        i.dryer = Some(Dryer {
            place: steaming::CoilPlace::Firebox {
                emissivity: 0.8,
                view: 0.7,
            },
            bore_m: 2e-3,
            outside_m: 3e-3,
            length_m: 0.3,
            coil_m: 0.035,
            gas_area_m2: 1.5e-3,
        });
    });
    with("laws with a factor", |i| {
        bed(i).tubes.beyond = Beyond {
            radiation: 0.0,
            conductivity: 1.05,
            viscosity: 0.95,
        };
        bed(i).bed.viscosity_factor = 0.95;
    });
    plants.extend(engines());
    for (name, inputs) in plants {
        let working = filed(&inputs);
        let far = far(&working);
        assert!(far.is_empty(), "{name}:\n{}", far.join("\n"));
        assert!(working.lines().len() > 60, "{name}");
    }
}

/// Plants that differ in what is known of the engine and in what it holds.
fn engines() -> Vec<(&'static str, Inputs)> {
    let loaded = |load: Load| {
        let mut inputs = fitted(plant(2.2));
        inputs.engine.iter_mut().for_each(|e| e.load = load);
        inputs
    };
    let mut plants = vec![
        ("unmeasured engine", unmeasured(plant(2.2))),
        ("fitted engine", fitted(plant(2.2))),
    ];
    let (strokes_per_s, cut_off) = (20.0, 0.75);
    for shaft_w in [12.0, 60.0] {
        plants.push((
            "throttled",
            loaded(Load::Throttled {
                strokes_per_s,
                cut_off,
                shaft_w,
            }),
        ));
    }
    plants.push((
        "by speed",
        loaded(Load::BySpeed {
            cut_off,
            shaft_w: 16.0,
        }),
    ));
    plants.push((
        "by cut-off",
        loaded(Load::ByCutOff {
            strokes_per_s,
            shaft_w: 14.0,
        }),
    ));
    let mut hot = fitted(plant(2.2));
    hot.dryer = Some(Dryer {
        place: steaming::CoilPlace::Smokebox,
        bore_m: 3.6e-3,
        outside_m: 5e-3,
        length_m: 1.5,
        coil_m: 0.06,
        gas_area_m2: 2e-3,
    });
    plants.push(("superheated", hot));
    let mut plain = unmeasured(plant(2.2));
    plain.plain = Some(Plain {
        steam_kg_s: 1e-4,
        exhaust_dryness: 0.93,
    });
    plants.push(("beside the engine", plain));
    plain.engine = None;
    plain.plain.iter_mut().for_each(|p| p.steam_kg_s = 4e-4);
    plants.push(("plain steam", plain));
    plants
}

fn jets() -> Blower {
    Blower {
        jets: 4.0,
        bore_m: 0.4e-3,
        coefficient: 0.85,
        mixing: 0.45,
    }
}

/// The plant of the calculation leaves the range of two laws, and an assumption carries each.
#[test]
fn limits_are_evaluated_on_the_settled_state() {
    let calm = filed(&plant(2.2));
    let mut broken: Vec<&str> = calm.breaches().map(|b| b.card).collect();
    broken.sort_unstable();
    broken.dedup();
    let carried: Vec<&str> = CARRIED.iter().flat_map(|c| c.cards).copied().collect();
    assert!(broken.contains(&"gas.conductivity"), "{broken:?}");
    assert!(
        broken.contains(&"heat.emissivity-carbon-dioxide"),
        "{broken:?}"
    );
    assert!(
        broken.iter().all(|card| carried.contains(card)),
        "{broken:?}"
    );
    let fierce = filed(&plant(1.6));
    assert!(
        fierce
            .breaches()
            .any(|b| b.card == "draught.blast-back-pressure")
    );
}
