//! What is assumed of a flame, its band and its cures.

use crate::changed::{boiler_pa, burner_of};
use crate::gf1::{gas_plant, in_firebox, mm, spirit_plant};
use steaming::burner::ThroatShape;
use steaming::{
    ASSUMPTIONS, Admission, Candidates, Engine, Entering, Exhausts, FireState, Lever, Load,
    Missing, cures, draws,
};

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

/// An engine of 18 by 18 mm on the gas fire: a smaller jet makes less steam than is asked, and a
/// jet in hundredths of a millimetre cures it.
#[test]
fn a_gas_fire_is_cured_by_a_larger_jet() {
    let mut inputs = gas_plant();
    inputs.chimney.height_m = mm(250.0);
    inputs.chimney.parallel_m = mm(250.0);
    inputs.engine = Some(engine());
    let burner = burner_of(&mut inputs);
    burner.jet.bore_m = mm(0.15);
    let small = steaming::fire::settle(&inputs, boiler_pa()).expect("a balance");
    let ratio = small.steaming_ratio().expect("a demand");
    assert!((0.6..1.0).contains(&ratio), "{ratio}");
    let jet_m = steaming::metric_steps(0.12, 0.22, 1);
    let candidates = Candidates {
        jet_m: &jet_m,
        mouth_m2: &[3e-4, 5e-4],
        ..Candidates::default()
    };
    let found = cures(&inputs, boiler_pa(), &candidates).expect("cures");
    let levers: Vec<Lever> = found.iter().map(|c| c.lever).collect();
    assert_eq!(levers, [Lever::GasJet, Lever::Mouth]);
    let cured = found[0].cured.as_ref().expect("a jet");
    let bore = jet_m[cured.candidate];
    assert!(bore > mm(0.15) && cured.ratio >= 1.1, "{}", found[0].says);
    assert!(
        found[0].says.contains("a gas jet of 0.1"),
        "{}",
        found[0].says
    );
}

fn engine() -> Engine {
    let bore = mm(18.0);
    Engine {
        cylinders: 1.0,
        strokes_per_turn: 2.0,
        bore_m: bore,
        stroke_m: bore,
        stroke_volume_m3: std::f64::consts::FRAC_PI_4 * bore * bore * bore,
        load: Load::Open {
            strokes_per_s: 8.0,
            cut_off: 0.75,
        },
        clearance: 0.10,
        compression: 0.10,
        chest_share: 0.92,
        admission: Admission::Share(1.0),
        diagram_factor: 0.9,
        mechanical_efficiency: 0.65,
        missing: Missing::Measured(0.60),
        exhausts: Exhausts::Dryness(0.93),
        closing_pa: Some(1.1e5),
        puff_share: 0.6,
        pipe: None,
        pump: None,
    }
}
