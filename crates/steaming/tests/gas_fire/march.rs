//! What must hold of the march through any flue.

use crate::gf1::{gas_plant, mm};
use crate::kinetic_theory::KINETIC_THEORY;
use formulas::fuel::{Composition, combustion_products};
use formulas::gas::FlueGas;
use proptest::prelude::*;
use steaming::flue::{CrossTubes, Flue, Lie, March, Release, STEP, Stream, march_in};
use steaming::{Beyond, air_enthalpy};

const PROPANE: Composition = Composition {
    carbon: 0.817,
    hydrogen: 0.183,
    oxygen: 0.0,
    nitrogen: 0.0,
    sulphur: 0.0,
    ash: 0.0,
    water: 0.0,
};

fn gas(air_ratio: f64) -> FlueGas {
    let products = combustion_products(&PROPANE, air_ratio).expect("burns");
    FlueGas::new(&products.fractions())
}

/// Gas of so much heat (W) with so much air, into a wall of 150 °C.
fn stream(heat_w: f64, air_ratio: f64) -> Stream {
    let fuel = heat_w / 46.33e6;
    Stream {
        gas_kg_s: fuel * (1.0 + 15.68 * air_ratio),
        heat_w: 0.98 * heat_w,
        inlet_j_kg: air_enthalpy(288.15),
        wall_k: 423.15,
        pressure_pa: gas_plant().site.atmosphere_pa,
        outside_kg_m3: 1.22,
    }
}

fn marched(flue: &Flue, release: &Release, stream: &Stream, ratio: f64, step: f64) -> March {
    march_in((flue, release), stream, &gas(ratio), step).expect("a march")
}

/// A plain flue of 50 by 250 mm, a kilowatt of propane with 1.3 of its air burnt from one place
/// over 40 mm, wall at 160 °C. Independent calculation, printed to 1 K and 1 W of 1000; it took
/// the gas as warm as 25 °C. Good to 2 %. (With tubes across it let none of the gas's radiation
/// come to them, and is no witness of ours.)
#[test]
fn independent_plain_flue_of_a_kilowatt() {
    let flue = Flue {
        bore_m: mm(50.0),
        length_m: mm(250.0),
        lie: Lie::Level,
        wall_emissivity: 0.8,
        cross: None,
        exit_heads: 1.0,
        beyond: Beyond::AS_PRINTED,
    };
    let release = Release {
        ported_m: mm(0.1),
        core_m: 0.0,
        primary_ratio: 0.0,
        mixing_m: mm(40.0),
        soot: 0.0,
    };
    let stream = Stream {
        wall_k: 433.15,
        inlet_j_kg: 0.0,
        ..stream(1000.0, 1.3)
    };
    let kinetic = FlueGas::with_laws(gas(1.3).fractions(), &KINETIC_THEORY);
    let found = march_in((&flue, &release), &stream, &kinetic, STEP).expect("a march");
    let near = |what: &str, found: f64, wanted: f64, reach: f64| {
        assert!(
            (found - wanted).abs() <= reach,
            "{what}: {found} for {wanted}"
        );
    };
    near("wall", found.wall_w, 549.0, 0.02 * 549.0);
    near("out", found.outlet.gas_k - 273.15, 818.0, 0.02 * 818.0);
    near("hottest", found.hottest_k - 273.15, 1217.0, 0.02 * 1217.0);
}

prop_compose! {
    fn any_flue()(
        bore in 20.0..90.0_f64,
        length in 2.0..8.0_f64,
        count in 0_u32..10,
        outside in 0.1..0.3_f64,
        mixing in 10.0..100.0_f64,
        ported in 0.2..0.6_f64,
        primary in 0.0..1.2_f64,
        soot in 0.0..0.2_f64,
    ) -> (Flue, Release) {
        let (bore_m, length_m) = (mm(bore), mm(bore * length));
        let ported_m = ported * length_m;
        let spacing_m = 0.9 * (length_m - ported_m) / f64::from(count.max(1));
        let cross = CrossTubes {
            count,
            outside_m: outside * bore_m,
            first_m: ported_m + 0.5 * spacing_m,
            spacing_m,
            row_factor: 1.0,
            stirring: 1.0,
        };
        let flue = Flue {
            bore_m,
            length_m,
            lie: Lie::Level,
            wall_emissivity: 0.8,
            cross: (count > 0).then_some(cross),
            exit_heads: 1.0,
            beyond: Beyond::AS_PRINTED,
        };
        let release = Release {
            ported_m,
            core_m: 0.3 * bore_m,
            primary_ratio: primary,
            mixing_m: mm(mixing),
            soot,
        };
        (flue, release)
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// The marched heat is that of steps of an eighth within a thousandth; the gas loses what the
    /// wall and the tubes get; more wall takes more heat.
    #[test]
    fn identity_of_any_flue(
        (flue, release) in any_flue(),
        loading in 250.0..900.0_f64,
        ratio in 1.0..2.5_f64,
    ) {
        // So much heat on a bore of 38 mm.
        let stream = stream(loading * (flue.bore_m / 0.038).powi(2), ratio);
        let found = marched(&flue, &release, &stream, ratio, STEP);
        let fine = marched(&flue, &release, &stream, ratio, STEP / 8.0);
        let (heat, finer) = (found.wall_w + found.cross_w, fine.wall_w + fine.cross_w);
        prop_assert!((heat / finer - 1.0).abs() < 1e-3, "{heat} for {finer}");
        prop_assert!((found.loss_pa() / fine.loss_pa() - 1.0).abs() < 0.01);
        let out = stream.gas_kg_s * gas(ratio).enthalpy(found.outlet.gas_k);
        let brought = stream.heat_w * found.outlet.burnt + stream.gas_kg_s * stream.inlet_j_kg;
        prop_assert!((brought - heat - out).abs() < 1e-6 * brought);
        prop_assert!(found.radiant_w > 0.0 && found.radiant_w < heat);
        prop_assert!(found.hottest_k >= found.outlet.gas_k - 1e-6);
        let longer = Flue { length_m: 1.2 * flue.length_m, ..flue };
        let further = marched(&longer, &release, &stream, ratio, STEP);
        prop_assert!(further.wall_w + further.cross_w > heat);
    }
}
