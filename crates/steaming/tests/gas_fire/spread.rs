//! What is assumed of a flame, its band and its cures.

use crate::changed::{boiler_pa, burner_of};
use crate::gf1::{gas_plant, in_firebox, mm, spirit_plant};
use steaming::burner::ThroatShape;
use steaming::{ASSUMPTIONS, Entering, FireState, draws};

/// Every assumption of a flame reads back what it sets in some plant, but for the two of the tank,
/// which stands beside the loop.
#[test]
fn every_assumption_of_a_flame_reads_back_what_it_sets() {
    let mut tapered = gas_plant();
    burner_of(&mut tapered).throat.shape = ThroatShape::Taper {
        tube_m: mm(12.0),
        given_back: 0.6,
    };
    let plants = [tapered, in_firebox(), spirit_plant()];
    let of_a_flame = [
        "burner.",
        "spirit.",
        "gas.",
        "boiler.flue",
        "boiler.firebox.conv",
    ];
    for entering in ASSUMPTIONS {
        let a = entering.assumption;
        if !of_a_flame.iter().any(|start| a.id.starts_with(start)) {
            continue;
        }
        assert!(a.low < a.value && a.value < a.high, "{}", a.id);
        let si = a.unit.to_si(a.high);
        let mut found = 0;
        for plant in &plants {
            let mut inputs = *plant;
            if (entering.get)(&inputs).is_some() {
                (entering.set)(&mut inputs, si);
                assert_eq!((entering.get)(&inputs), Some(si), "{}", a.id);
                found += 1;
            }
        }
        assert_eq!(found == 0, a.id.starts_with("gas.tank"), "{}", a.id);
    }
}

fn all(inputs: &steaming::Inputs) -> Vec<&'static Entering> {
    ASSUMPTIONS
        .iter()
        .filter(|e| (e.get)(inputs).is_some())
        .collect()
}

/// The length over which the gas finds its air is the largest unknown of a flame with air enough
/// (independent calculation); points that starve are counted.
#[test]
fn a_flame_has_a_band_and_names_what_to_measure() {
    let mut inputs = gas_plant();
    inputs.chimney.height_m = mm(250.0);
    inputs.chimney.parallel_m = mm(250.0);
    let draws = draws(&inputs, boiler_pa(), &all(&inputs)).expect("draws");
    let band = draws
        .band(|s: &FireState| Some(s.efficiency))
        .expect("a band");
    assert!(band.low < band.value && band.value < band.high, "{band:?}");
    assert!(band.without_balance < 64, "{}", band.without_balance);
    let first: Vec<&str> = band
        .shares
        .iter()
        .take(3)
        .map(|s| s.entering.assumption.id)
        .collect();
    assert!(first.contains(&"burner.mixing-length for gas"), "{first:?}");
}
