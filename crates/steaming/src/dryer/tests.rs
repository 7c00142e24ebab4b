//! The curves keep to the laws from which they were drawn.

use formulas::gas::MoleFractions;
use formulas::steam::Phase;

use super::*;

fn near(curve: f64, law: f64, what: &str) {
    assert!((curve / law - 1.0).abs() < 5e-4, "{what}: {curve}, {law}");
}

fn between(low: f64, high: f64) -> impl Iterator<Item = f64> {
    (0..=400).map(move |i| low + (high - low) * f64::from(i) / 400.0)
}

#[test]
fn identity_the_curves_of_steam_keep_to_its_equations() {
    for pa in [1.2e5, 2e5, 4.5e5, 8e5, 1.1e6] {
        let line = Line::new(pa).expect("a pressure of steam");
        for t in between(line.saturated.t_k, CELSIUS.to_si(800.0)) {
            let Ok((Phase::Superheated, point)) = point_at(pa, t) else {
                continue;
            };
            let law = transport::of(&point);
            let (curve, cp) = line.at(t).expect("steam");
            near(curve.mu, law.mu, "viscosity");
            near(curve.lambda, law.lambda, "conductivity");
            near(curve.pr, law.pr, "Prandtl number");
            near(cp, point.cp, "specific heat");
            // An error of enthalpy counts against what the steam takes up.
            let h = line.enthalpy(t).expect("steam");
            assert!((h - point.h).abs() < 20.0, "enthalpy: {h}, {}", point.h);
        }
    }
}

#[test]
fn identity_the_curve_of_the_film_keeps_to_its_law() {
    let line = Line::new(4.5e5).expect("a pressure of steam");
    let dryer = Dryer {
        place: CoilPlace::Smokebox,
        bore_m: 3.6e-3,
        outside_m: 5e-3,
        length_m: 0.4,
        coil_m: 0.06,
        gas_area_m2: 5e-3,
    };
    let gas = FlueGas::new(&MoleFractions::DRY_AIR);
    for (gas_kg_s, gas_k) in [(1e-4, 450.0), (1e-3, 700.0), (1e-2, 1100.0), (1e-2, 1500.0)] {
        let meeting = Meeting {
            steam_kg_s: 2e-4,
            steam_pa: line.pa,
            inlet_j_kg: line.saturated.h_g,
            gas_kg_s,
            gas_k,
            gas: &gas,
        };
        let film = Film::new(&dryer, &meeting, &line);
        for t in between(line.saturated.t_k, gas_k) {
            let law = Outside::of(&dryer, &meeting, t).w_m2_k;
            near(film.0.at(t), law, "coefficient outside");
        }
    }
}
