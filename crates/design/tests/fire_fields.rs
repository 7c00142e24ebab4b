//! The working of a fire names fields that a plan has, or assumptions that are listed.

use std::cell::RefCell;
use std::collections::BTreeSet;

use reckoning::{Given, Origin, Working};
use steaming::{Blower, Dryer, Inputs};

fn example() -> Inputs {
    let text = include_str!("../../../examples/launch/plan.toml");
    let plan = plan::read(text, "plan.toml").content;
    let workshop = plan::read_workshop("format = 1\n", "workshop.toml").content;
    let steaming = design::check(&plan, &workshop).steaming;
    steaming.inputs.expect("an example with whole inputs")
}

#[test]
fn a_working_asks_only_for_fields_and_assumptions_that_there_are() {
    let mut inputs = example();
    inputs.blower = Some(Blower {
        jets: 1.0,
        bore_m: 3e-4,
        coefficient: 0.85,
        mixing: 0.45,
    });
    inputs.dryer = Some(Dryer {
        place: steaming::CoilPlace::Smokebox,
        bore_m: 2e-3,
        outside_m: 3e-3,
        length_m: 0.5,
        coil_m: 0.04,
        gas_area_m2: 8e-4,
    });
    let asked = RefCell::new(BTreeSet::new());
    let origins = |field: &'static str| {
        asked.borrow_mut().insert(field);
        Given::Chosen {
            between: String::new(),
            reason: String::new(),
            weakest: Origin::Read,
        }
    };
    let pressure_pa = 3.5e5;
    let state = steaming::fire::settle(&inputs, pressure_pa).expect("a balance");
    steaming::explain(&state, &origins, &mut Working::new()).expect("an explanation");
    let fields: BTreeSet<String> = plan::fields().into_iter().map(|f| f.path).collect();
    let unknown: Vec<&str> = asked
        .borrow()
        .iter()
        .copied()
        .filter(|field| !fields.contains(*field) && steaming::assumption(field).is_none())
        .collect();
    assert!(unknown.is_empty(), "{unknown:?}");
    assert!(asked.borrow().len() > 40);
}

/// Every assumption but those about a law is the name of a field that replaces it.
#[test]
fn each_assumption_is_replaced_by_a_field_of_its_name() {
    let fields: BTreeSet<String> = plan::fields().into_iter().map(|f| f.path).collect();
    let standing: BTreeSet<&str> = steaming::standing().map(|e| e.assumption.id).collect();
    for entering in steaming::ASSUMPTIONS {
        let id = entering.assumption.field();
        assert_eq!(fields.contains(id), !standing.contains(id), "{id}");
    }
}
