//! Heat and draught: where they go.

use crate::changed::bed;
use crate::rl1::{bar, plant};
use formulas::fuel::Composition;
use steaming::draught::{DraughtSplit, carried_spark, dew, gas_path, spark_into_tubes};
use steaming::heat::HeatBalance;
use steaming::{Dryer, FireState, Inputs, Leak, fire};

fn settled(inputs: &Inputs) -> FireState {
    fire::settle(inputs, bar(4.0)).expect("a balance")
}

fn with(change: impl FnOnce(&mut Inputs)) -> FireState {
    let mut inputs = plant(2.2);
    change(&mut inputs);
    settled(&inputs)
}

#[test]
fn identity_heat_comes_to_nothing_but_what_the_solver_left() {
    let coil = Dryer {
        place: steaming::CoilPlace::Smokebox,
        bore_m: 2e-3,
        outside_m: 3e-3,
        length_m: 0.5,
        coil_m: 0.04,
        gas_area_m2: 8e-4,
    };
    let leak = Leak {
        area_m2: 1e-5,
        coefficient: 0.6,
    };
    for state in [
        with(|_| {}),
        with(|i| i.dryer = Some(coil)),
        with(|i| i.leak = Some(leak)),
        with(|i| i.site.air_j_kg = steaming::air_enthalpy(i.site.air_k)),
    ] {
        let balance = HeatBalance::of(&state);
        assert!(balance.residual().abs() < 1e-6, "{}", balance.residual());
        for share in balance.shares() {
            assert!((0.0..1.0).contains(&share.share), "{share:?}");
        }
    }
}

/// Independent calculation at a nozzle of 2.2 mm: 173.9 g/h of coal of 32.97 MJ/kg, of which
/// 0.688 comes to the water; 12 % is not burnt, and 60 W leave by the shell.
#[test]
fn worked_shares_of_the_heat() {
    let state = settled(&plant(2.2));
    let balance = HeatBalance::of(&state);
    let [water, coil, smoke, unburnt, shell] = balance.shares();
    assert!((balance.fuel_w / (173.9 / 3.6e6 * 32.97e6) - 1.0).abs() < 0.006);
    assert!((water.share - 0.688).abs() < 0.004, "{}", water.share);
    assert!((unburnt.share - 0.12).abs() < 1e-9);
    assert!((shell.heat_w - 60.0).abs() < 1e-9);
    assert!(coil.heat_w.abs() < 1e-9);
    assert!(smoke.share > 0.12, "{}", smoke.share);
}

/// A colder smoke is the whole difference that longer tubes make to the shares of the fuel.
#[test]
fn longer_tubes_move_heat_from_smoke_to_water() {
    let share = |length_m: f64| {
        let balance = HeatBalance::of(&with(|i| bed(i).tubes.length_m = length_m));
        let [water, _, smoke, ..] = balance.shares();
        (water.share, smoke.share)
    };
    let (short, long) = (share(0.15), share(0.20));
    assert!(long.0 > short.0 && long.1 < short.1);
}

/// Independent calculation at a nozzle of 2.2 mm: bed 161 Pa without the grate, tubes 4.1 Pa,
/// draught 190 Pa with 1.1 Pa of the hot column; gas at 842 and 306 °C.
#[test]
fn worked_split_of_the_draught() {
    let state = settled(&plant(2.2));
    let split = DraughtSplit::of(&state);
    let near = |found: f64, wanted: f64, reach: f64| {
        assert!((found - wanted).abs() <= reach, "{found} for {wanted}");
    };
    let spent = |place| split.spent_in(place).expect("a place");
    near(spent("bed"), 161.0, 2.5);
    near(spent("grate and ash"), 0.15 * spent("bed"), 1e-9);
    near(spent("tubes"), 4.1, 0.15);
    near(spent("turns, coil, arrester and entry"), 1.5, 1e-12);
    near(split.column_pa, 1.13, 0.03);
    near(split.raised_pa() - split.spent_pa(), 0.0, 1e-4);
    near(split.jets_pa, 190.0, 2.5);
    let [bed, entry, exit, choke] = gas_path(&state)[..] else {
        panic!("bed, both ends of the tubes and the choke");
    };
    near(entry.gas_k, 1115.0, 3.0);
    // Its gas is that of a kinetic theory, and leaves the tubes 5 K colder than ours.
    near(exit.gas_k, 579.0, 6.0);
    // Continuity through twelve tubes of 9.5 mm: 0.843 g/s of gas of 29.9 kg/kmol.
    near(entry.speed_m_s, 3.03, 0.06);
    near(
        entry.speed_m_s / exit.speed_m_s,
        entry.gas_k / exit.gas_k,
        1e-9,
    );
    // Air of 0.501 kg/(m² s) as gas of 1150 K, over the whole grate.
    near(bed.speed_m_s, 0.501 / 0.3166, 0.03);
    assert!(choke.speed_m_s > entry.speed_m_s);
}

/// Falling speeds of sparks of 700 kg/m³ in flue gas at 1000 °C (0.2858 kg/m³, 49.127 µPa s):
/// independent calculation, 1.4, 3.5, 7.4 and 10.8 m/s printed to 0.1 m/s. A grain that falls
/// as fast as the gas rises is the greatest that is carried.
#[test]
fn worked_sparks_that_the_gas_carries() {
    for (mm, printed) in [(0.5, 1.4), (1.0, 3.5), (2.0, 7.4), (3.0, 10.8)] {
        let at =
            |speed: f64| 1e3 * carried_spark((0.2858, 49.127e-6, speed), 700.0).expect("a size");
        assert!(at(printed - 0.08) < mm, "{mm}: {}", at(printed - 0.08));
        assert!(at(printed + 0.08) > mm, "{mm}: {}", at(printed + 0.08));
    }
}

#[test]
fn a_fiercer_blast_carries_greater_sparks() {
    let size = |nozzle| {
        let spark = spark_into_tubes(&settled(&plant(nozzle)), 700.0);
        spark.expect("a size").expect("a bed")
    };
    assert!(size(1.8) > size(2.2) && size(2.2) > size(2.6));
}

/// Dew point of the gas of dry steam coal at an air ratio of 1.5: 27.4 °C, independent
/// calculation printed to 0.1 K in dry air.
#[test]
fn worked_dew_point() {
    let state = with(|i| {
        bed(i).fire.fuel = Composition {
            carbon: 0.8497,
            hydrogen: 0.0426,
            oxygen: 0.0350,
            nitrogen: 0.0145,
            sulphur: 0.0042,
            ash: 0.0520,
            water: 0.0,
        };
    });
    let found = dew(&state).expect("a dew point");
    assert!((found.dew_k - 300.55).abs() < 0.3, "{}", found.dew_k);
    assert!(found.cold_metal_k < found.dew_k && found.dew_k < found.hot_metal_k);
}
