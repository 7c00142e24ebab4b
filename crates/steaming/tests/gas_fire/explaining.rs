//! The cards, worked again beside a settled flame, agree with it.

use crate::changed::{boiler_pa, burner_of, tubes_of};
use crate::gf1::{fired, gas_plant, in_firebox, mm, spirit_plant};
use reckoning::working::Basis;
use reckoning::{Given, Working};
use steaming::burner::{Mouth, PortShape, ThroatShape};
use steaming::flue::Lie;
use steaming::{Beyond, Blower, CARRIED, Inputs, explain, fire};

fn filed(inputs: &Inputs) -> Working {
    let state = fire::settle(inputs, boiler_pa()).expect("a balance");
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
    let flame = lines.flame.expect("a flame");
    for (line, value) in [
        (lines.evaporation, state.evaporation_kg_s),
        (lines.smoke_temperature, state.pass.firing.behind_k()),
        (lines.draught_lost, state.pass.loss_pa),
        (flame.air_ratio, state.balance.x),
    ] {
        assert!((working.si(line) / value - 1.0).abs() < 1e-12, "{value}");
    }
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
fn the_cards_agree_with_the_state_of_every_kind_of_flame() {
    let mut plants = vec![
        ("flue", gas_plant()),
        ("firebox", in_firebox()),
        ("wicks", spirit_plant()),
    ];
    let mut with = |name, change: fn(&mut Inputs)| {
        let mut inputs = gas_plant();
        change(&mut inputs);
        plants.push((name, inputs));
    };
    with("no cross tubes", |i| fired(i).flue.cross = None);
    with("upright and sooty", |i| {
        fired(i).flue.lie = Lie::Upright;
        fired(i).flame.soot = 0.1;
    });
    with("stirred, with a factor on its rows", |i| {
        tubes_of(i).stirring = 1.3;
        tubes_of(i).row_factor = 0.9;
    });
    with("shut mouth", |i| {
        fired(i).flame.mouth = Mouth::Shut;
        burner_of(i).holes_m2 *= 2.7;
    });
    with("round ports behind a taper", |i| {
        burner_of(i).ports.shape = PortShape::Round { bore_m: mm(3.2) };
        burner_of(i).throat.shape = ThroatShape::Taper {
            tube_m: mm(12.0),
            given_back: 0.6,
        };
    });
    with("laws with a factor", |i| {
        fired(i).flue.beyond = Beyond {
            radiation: 0.5,
            conductivity: 1.05,
            viscosity: 0.95,
        };
    });
    with("a blower left on", |i| {
        i.blower = Some(Blower {
            jets: 1.0,
            bore_m: mm(0.2),
            coefficient: 0.85,
            mixing: 0.45,
        });
    });
    for (name, inputs) in plants {
        let working = filed(&inputs);
        let far = far(&working);
        assert!(far.is_empty(), "{name}:\n{}", far.join("\n"));
        assert!(working.lines().len() > 80, "{name}");
    }
}

/// Wicks of 10 mm are smaller than those to which the law of their flames was fitted.
#[test]
fn an_assumption_carries_each_limit_that_is_broken() {
    for (inputs, beyond) in [
        (gas_plant(), None),
        (in_firebox(), None),
        (spirit_plant(), Some("spirit.flame-height")),
    ] {
        let carried: Vec<&str> = CARRIED.iter().flat_map(|c| c.cards).copied().collect();
        for breach in filed(&inputs).breaches() {
            let known = carried.contains(&breach.card) || beyond == Some(breach.card);
            assert!(known, "{breach}");
        }
    }
}
