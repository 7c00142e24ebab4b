//! The loop against the independent calculation GF-1, made for this purpose with other property
//! libraries. It is a calculation and no measurement: it proves the arithmetic, not the fire.
//!
//! On the gas data of the calculation itself, kinetic theory, numbers agree within 1 % and half a
//! unit of the last printed figure; a temperature within 1 % of what the gas has above the air.
//! Its radiation was worked at 1 bar and not at the pressure of the air, which is 1.3 % of path.

use crate::changed::boiler_pa;
use crate::gf1::{gas_plant, mm};
use crate::kinetic_theory::KINETIC_THEORY;
use formulas::gas::{PureLaw, REFERENCE_LAWS};
use formulas::supply::heat_rate;
use reckoning::quantity::{CELSIUS, G_PER_S};
use steaming::{FireState, FlameInFlueState, Inputs, fire, flue};

pub(crate) fn settled(inputs: &Inputs) -> FireState {
    fire::settle_on(inputs, &KINETIC_THEORY, boiler_pa()).expect("a balance")
}

pub(crate) fn flue_of(state: &FireState) -> &FlameInFlueState {
    state.pass.firing.flue().expect("a flue")
}

/// Heat to wall and tubes over the heat of the gas, without the loss of the outside.
pub(crate) fn efficiency(state: &FireState) -> f64 {
    let heat = state.pass.firing.to_water();
    let gas = heat_rate(state.pass.fuel_kg_s, state.burning.heating_value_j_kg);
    (heat.wall_w + heat.tubes_w) / gas
}

/// A name, what was found, what is printed, and half a unit of its last figure.
type Line = (&'static str, f64, f64, f64);

fn missed(lines: &[Line], share: impl Fn(&str) -> f64) -> Vec<String> {
    lines
        .iter()
        .filter(|(name, found, wanted, half)| {
            (found - wanted).abs() > share(name) * wanted.abs() + half
        })
        .map(|(name, found, wanted, _)| format!("{name}: {found:.5} for {wanted}"))
        .collect()
}

pub(crate) fn agree(lines: &[Line], share: f64) {
    let missed = missed(lines, |_| share);
    assert!(missed.is_empty(), "\n{}", missed.join("\n"));
}

/// Temperature of the gas above that of the air, K: what 1 % is reckoned of.
pub(crate) fn above_air(gas_k: f64) -> f64 {
    CELSIUS.from_si(gas_k) - 15.0
}

fn table(laws: &[PureLaw; 4], share: impl Fn(&str) -> f64) {
    let state = fire::settle_on(&gas_plant(), laws, boiler_pa()).expect("a balance");
    let at = flue_of(&state);
    let burner = at.flame.burner().expect("a burner");
    let (jet, primary, ports) = (&burner.jet, &burner.primary, &burner.ports);
    let march = &at.flue;
    let heat_w = heat_rate(jet.gas_kg_s, state.burning.heating_value_j_kg);
    let out_pa = march.exit_pa - state.pass.jets.net_pa;
    let after = march.friction_pa + march.cross_pa;
    let lines = [
        ("gas, mg/s", 1e6 * jet.gas_kg_s, 14.00, 0.005),
        ("heat, W", heat_w, 648.0, 0.5),
        ("speed of the jet", jet.speed_m_s, 240.0, 0.5),
        ("thrust, mN", 1e3 * jet.thrust_n, 4.419, 5e-4),
        ("push", primary.push_pa, 103.35, 5e-3),
        ("mixing and friction", primary.mixing_pa, 14.33 + 2.39, 0.01),
        ("ports", primary.ports_pa, 0.56, 5e-3),
        ("air holes", primary.holes_pa, 86.19, 5e-3),
        (
            "primary air, g/s",
            G_PER_S.from_si(primary.air_kg_s),
            0.1367,
            5e-5,
        ),
        ("primary ratio", primary.ratio, 0.623, 5e-4),
        ("port speed", ports.speed_m_s, 0.698, 5e-4),
        ("loading, W/mm2", 1e-6 * ports.loading_w_m2, 3.38, 5e-3),
        ("gradient", ports.gradient_per_s, 5238.0, 0.5),
        ("blow-off", ports.blow_off_per_s, 7050.0, 0.5),
        ("share of blow-off", ports.blow_off_share, 0.74, 5e-3),
        (
            "secondary air, g/s",
            G_PER_S.from_si(at.flame.secondary_kg_s),
            0.1297,
            5e-5,
        ),
        ("air ratio", at.flame.air_ratio, 1.214, 5e-4),
        (
            "flue gas, g/s",
            G_PER_S.from_si(state.pass.gas_kg_s),
            0.280,
            5e-4,
        ),
        ("wall", march.wall_w, 312.0, 0.5),
        ("cross tubes", march.cross_w, 163.0, 0.5),
        ("radiated", march.radiant_w, 98.0, 0.5),
        ("efficiency", efficiency(&state), 0.731, 5e-4),
        (
            "exit above the air",
            above_air(march.outlet.gas_k),
            503.0,
            0.5,
        ),
        (
            "hottest above the air",
            above_air(march.hottest_k),
            1280.0,
            0.5,
        ),
        ("draught", state.pass.lift_pa, 1.151, 5e-4),
        ("mouth", at.flame.mouth_pa, 0.120, 5e-4),
        ("flue and tubes", after, 0.635, 5e-4),
        ("acceleration", march.momentum_pa, 0.089, 5e-4),
        ("smokebox and chimney", out_pa, 0.307, 5e-4),
    ];
    let missed = missed(&lines, share);
    assert!(missed.is_empty(), "\n{}", missed.join("\n"));
}

#[test]
fn independent_gf1_table_on_its_own_gas_data() {
    table(&KINETIC_THEORY, |_| 0.01);
}

/// On the reference equations of the pure gases, whose conductivity in the mixture lies up to 7 %
/// below that of kinetic theory in hot gas rich in vapour. The gas stays 15 K hotter for it, and
/// radiates the more, by the fourth power; the suction of the mouth goes with the square of the
/// secondary air.
#[test]
fn independent_gf1_table_on_published_gas_data() {
    table(&REFERENCE_LAWS, |name| match name {
        "radiated" => 0.05,
        "mouth" => 0.03,
        // One part in a hundred of the heat is 14 K of the gas that leaves.
        "exit above the air" => 0.03,
        _ => 0.02,
    });
}

/// Place mm, gas °C, share burnt, Reynolds and Nusselt number, convection, emissivity, flux to
/// the wall kW/m², speed.
const MARCH: [[f64; 9]; 7] = [
    [20.0, 416.0, 0.201, 225.0, 6.42, 13.0, 0.0497, 3.9, 0.55],
    [40.0, 799.0, 0.440, 165.0, 5.19, 15.7, 0.0379, 12.6, 0.85],
    [60.0, 1127.0, 0.698, 137.0, 4.79, 18.3, 0.0264, 23.0, 1.11],
    [80.0, 1231.0, 0.891, 172.0, 8.53, 23.8, 0.0303, 33.5, 1.08],
    [120.0, 870.0, 0.971, 208.0, 5.24, 11.5, 0.0451, 12.1, 0.82],
    [160.0, 681.0, 0.992, 235.0, 4.69, 8.8, 0.0529, 6.8, 0.68],
    [200.0, 518.0, 0.998, 268.0, 4.48, 7.0, 0.0590, 3.7, 0.57],
];

/// Place mm, gas °C, Reynolds and Nusselt number, convection, heat W.
const TUBES: [[f64; 6]; 8] = [
    [90.0, 1193.0, 46.8, 3.63, 42.5, 35.4],
    [104.5, 1056.0, 49.4, 3.72, 40.6, 29.2],
    [119.0, 939.0, 51.8, 3.80, 39.0, 24.2],
    [133.5, 838.0, 54.2, 3.88, 37.6, 20.2],
    [148.0, 751.0, 56.5, 3.96, 36.4, 16.9],
    [162.5, 677.0, 58.7, 4.03, 35.3, 14.3],
    [177.0, 613.0, 60.7, 4.09, 34.4, 12.1],
    [191.5, 558.0, 62.7, 4.15, 33.6, 10.3],
];

fn profile() -> (Vec<flue::Section>, Vec<flue::Crossed>) {
    let inputs = gas_plant();
    let state = settled(&inputs);
    let at = flue_of(&state);
    let fired = inputs.firing.flue().expect("a flue");
    let places = MARCH.map(|row| mm(row[0]));
    let way = (&fired.flue, &at.release);
    flue::profile(way, &at.stream, &state.burning.gas, &places).expect("a march")
}

/// The emissivity, and the flux of which it is a part, carry the 1.3 % of path besides.
#[test]
fn independent_gf1_march() {
    let (sections, _) = profile();
    for (at, row) in sections.iter().zip(MARCH) {
        let [place, t, burnt, re, nu, h, eps, flux, speed] = row;
        agree(
            &[
                ("place, mm", 1e3 * at.place_m, place, 0.0),
                ("above the air", above_air(at.gas_k), t - 15.0, 0.5),
                ("burnt", at.burnt, burnt, 5e-4),
                ("Reynolds", at.reynolds, re, 0.5),
                ("Nusselt", at.nusselt, nu, 5e-3),
                ("convection", at.convection, h, 0.05),
                ("speed", at.speed_m_s, speed, 5e-3),
            ],
            0.01,
        );
        agree(
            &[
                ("emissivity", at.emissivity, eps, 5e-5),
                ("flux, kW/m2", 1e-3 * at.wall_flux, flux, 0.05),
            ],
            0.02,
        );
    }
}

#[test]
fn independent_gf1_cross_tubes() {
    let (_, tubes) = profile();
    assert_eq!(tubes.len(), TUBES.len());
    for (at, row) in tubes.iter().zip(TUBES) {
        let [place, t, re, nu, h, heat] = row;
        agree(
            &[
                ("place, mm", 1e3 * at.place_m, place, 1e-9),
                ("above the air", above_air(at.gas_k), t - 15.0, 0.5),
                ("Reynolds", at.reynolds, re, 0.05),
                ("Nusselt", at.nusselt, nu, 5e-3),
                ("convection", at.convection, h, 0.05),
                ("heat", at.heat_w, heat, 0.05),
            ],
            0.01,
        );
    }
}
