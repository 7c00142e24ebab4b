//! The gas jet and its primary air, alone.

use crate::gf1::{burner, gas_plant, mm, propane, supply};
use formulas::supply::Lpg;
use reckoning::quantity::CELSIUS;
use steaming::burner::{Burner, FuelGas, GasJet, PortShape, in_open_air};

fn near(what: &str, found: f64, wanted: f64, reach: f64) {
    assert!(
        (found - wanted).abs() <= reach,
        "{what}: {found} for {wanted}"
    );
}

fn n_butane() -> FuelGas {
    let liquid = Lpg::new([0.0, 1.0, 0.0]).expect("a fuel of the tables");
    FuelGas::over(&liquid, CELSIUS.to_si(15.0)).expect("a temperature of the tables")
}

/// Jets of 0.200 mm and a coefficient of 0.85 at 15 °C, independent calculation printed to three
/// or four figures: gas mg/s, speed m/s, thrust mN.
#[test]
fn independent_jets() {
    for (gas, bar, [flow, speed, thrust]) in [
        (propane(15.0), 0.5, [10.77, 206.4, 2.222]),
        (propane(15.0), 1.0, [14.64, 240.2, 3.991]),
        (propane(15.0), 2.0, [21.92, 240.2, 7.554]),
        (n_butane(), 0.5, [12.25, 180.3, 2.209]),
    ] {
        let jet = GasJet {
            bore_m: mm(0.2),
            coefficient: 0.85,
            supply_pa: supply(bar),
        };
        let air_pa = gas_plant().site.atmosphere_pa;
        let found = jet.at_work(&gas, air_pa).expect("gas");
        near("gas", 1e6 * found.gas_kg_s, flow, 0.005 + 1e-3 * flow);
        near("speed", found.speed_m_s, speed, 0.05 + 1e-3 * speed);
        near("thrust", 1e3 * found.thrust_n, thrust, 5e-4 + 1e-3 * thrust);
        let weighed = jet.weighed(&gas, air_pa, found.gas_kg_s).expect("gas");
        near("coefficient of a weighed jet", weighed, 0.85, 1e-12);
    }
}

#[test]
fn a_jet_without_pressure_is_refused() {
    let air_pa = gas_plant().site.atmosphere_pa;
    let jet = GasJet {
        supply_pa: air_pa,
        ..burner().jet
    };
    assert!(jet.at_work(&propane(15.0), air_pa).is_err());
}

/// Burners with open air holes: jet mm and bar above the air, throat mm, ports mm², heat W, primary
/// ratio. Independent calculation, printed to three figures.
#[test]
fn independent_primary_air_with_open_holes() {
    for ([jet, bar, throat, ports], [heat, ratio]) in [
        ([0.5, 0.037, 9.0, 192.0], [903.0, 0.726]),
        ([0.5, 0.037, 9.0, 300.0], [903.0, 0.746]),
        ([0.3, 0.30, 8.0, 192.0], [891.0, 1.104]),
        ([0.2, 1.0, 7.0, 192.0], [678.0, 1.448]),
    ] {
        let mut open: Burner = burner();
        open.jet.bore_m = mm(jet);
        open.jet.supply_pa = supply(bar);
        open.throat.bore_m = mm(throat);
        // So wide that nothing is lost in them.
        open.holes_m2 = 1.0;
        open.ports.count = ports / 8.0;
        open.ports.shape = PortShape::Slot {
            width_m: mm(0.8),
            length_m: mm(10.0),
        };
        let found = in_open_air(&open, &gas_plant().site).expect("a balance");
        let watt = found.jet.gas_kg_s * open.gas.heating_value_j_kg;
        near("heat", watt, heat, 0.5 + 2e-3 * heat);
        near(
            "primary ratio",
            found.primary.ratio,
            ratio,
            5e-4 + 5e-3 * ratio,
        );
    }
}

/// At 1000 and 2000 m the same gauge pressure passes less gas, which draws less air yet.
/// Pressure of the air by the standard atmosphere (from memory), at 15 °C; independent calculation.
#[test]
fn independent_burner_at_height() {
    for (air_pa, gas, ratio) in [
        (101_325.0, 14.00, 0.623),
        (89_875.0, 13.36, 0.612),
        (79_495.0, 12.78, 0.599),
    ] {
        let mut site = gas_plant().site;
        site.atmosphere_pa = air_pa;
        let mut high = burner();
        high.jet.supply_pa = 1.5e5 + air_pa;
        let found = in_open_air(&high, &site).expect("a balance");
        near("gas", 1e6 * found.jet.gas_kg_s, gas, 0.005 + 1e-3 * gas);
        near(
            "primary ratio",
            found.primary.ratio,
            ratio,
            5e-4 + 5e-3 * ratio,
        );
    }
}
