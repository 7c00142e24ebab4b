//! Whole checks beside sums worked by hand or apart from this code.

mod sample;

use proof::{Diameter, Held, Metal, Seam, Tube, greatest_ovality, least_wall};
use reckoning::finding::Verdict;
use reckoning::quantity::{Gauge, Temperature};
use reckoning::{Finding, Known};
use sample::{boiler, celsius, exact, first, length, made, proof_at};

fn line(f: &Finding, symbol: &str) -> f64 {
    let found = f.working.lines().iter().rev().find(|l| l.symbol == symbol);
    found
        .unwrap_or_else(|| panic!("no line {symbol} in {}", f.rule.id))
        .value
}

fn close(found: f64, wanted: f64, within: f64) {
    assert!((found - wanted).abs() <= within, "{found} for {wanted}");
}

/// By hand: 7 bar, bore 150 mm, 26 MPa, seamless: EN 0.7·150/(52 − 0.7) = 2.0468 mm, and UG-27
/// with the code's own stress S: 0.7·75/(S − 0.42).
#[test]
fn worked_barrel_of_150_mm_at_7_bar() {
    let mut b = boiler();
    b.shells[0].diameter = Some(Diameter::Inside(exact("barrel.bore", 150.0)));
    b.shells[0].metal_temperature = celsius(165.0);
    let proof = proof_at(&b, 0.7);
    let ours = first(&proof, "ours.shell-wall");
    close(line(ours, "f"), 26.0, 1e-12);
    close(line(ours, "e"), 0.7 * 150.0 / (2.0 * 26.0 - 0.7), 1e-12);
    close(line(ours, "e"), 2.0468, 5e-5);
    close(ours.margin.expect("a margin"), 2.5 / 2.046_784, 1e-5);
    assert_eq!(ours.verdict, Verdict::Met);
    let code = first(&proof, "asme-viii.shell-wall");
    let s = line(code, "S");
    // The pipe code's stress at 165.0 °C is 29.6 MPa, interpolated by hand.
    close(s, 29.6, 0.05);
    let hoop = code
        .working
        .lines()
        .iter()
        .find(|l| l.symbol == "t" && l.meaning.starts_with("least wall, "));
    close(hoop.expect("a wall").value, 0.7 * 75.0 / (s - 0.42), 1e-9);
}

/// The same wall seen from its outside diameter: 0.7·154.0936/(52 + 0.7).
#[test]
fn worked_barrel_from_its_outside_diameter() {
    let mut b = boiler();
    b.shells[0].diameter = Some(Diameter::Outside(exact("barrel.outside", 154.093_57)));
    let proof = proof_at(&b, 0.7);
    close(line(first(&proof, "ours.shell-wall"), "e"), 2.046_784, 1e-6);
}

/// A strapped seam counts 0.8: 0.6797 MPa is the most that 2.5 mm of 150 mm bore holds (UG-27,
/// independent calculation); the EN form used here gives 0.6·150/(2·26·0.8 − 0.6) at 6 bar.
#[test]
fn worked_strapped_seam() {
    let mut b = boiler();
    b.shells[0].diameter = Some(Diameter::Inside(exact("barrel.bore", 150.0)));
    b.shells[0].seam = Seam::ButtStrap;
    let proof = proof_at(&b, 0.6);
    let found = first(&proof, "ours.shell-wall");
    close(line(found, "e"), 90.0 / (2.0 * 26.0 * 0.8 - 0.6), 1e-12);
}

/// Independent calculation: f at the saturation temperatures of 6 and 10 bar gauge. At 6 bar the
/// tables give 30.2, 29.2 and 29.6 MPa and 26 counts; at 10 bar 24.3, 23.1 and 25.7.
#[test]
fn worked_design_stress_by_temperature() {
    for (celsius_at, wanted) in [(165.0, 26.0), (184.1, 23.1)] {
        let mut b = boiler();
        b.shells[0].metal_temperature = celsius(celsius_at);
        let proof = proof_at(&b, 0.5);
        close(line(first(&proof, "ours.shell-wall"), "f"), wanted, 0.06);
    }
}

/// Independent calculation: bore 100, wall 2.5, 0.6 MPa, 26 MPa, bush 14 in 20 mm, 6 out and 3
/// in. Asked 16.38 mm², there 18.62 + 34.73 + 18.0 (the bronze bush needs 0.6·7/(40 − 0.36) =
/// 0.106 mm of its 3 mm); pressure area 1.387 MPa; braze 5.42 MPa.
#[test]
fn worked_bush_in_a_barrel_of_100_mm() {
    let proof = proof_at(&boiler(), 0.6);
    let area = first(&proof, "ours.opening-area");
    close(line(area, "A"), 16.38, 0.005);
    close(line(area, "A_1"), 18.62, 0.005);
    close(line(area, "A_2"), 34.73, 0.005);
    close(line(area, "A_3"), 18.0, 1e-9);
    let round = first(&proof, "ours.opening-pressure-area");
    close(line(round, "l_so"), 16.008, 0.000_5);
    close(line(round, "l_bo"), 7.141, 0.000_5);
    close(line(round, "A_fb"), 34.5, 1e-9);
    close(line(round, "A_ps"), 1300.4, 0.05);
    close(line(round, "A_pb"), 59.5, 1e-9);
    close(round.margin.expect("a margin"), 1.387 / 0.6, 0.001);
    close(
        line(first(&proof, "ours.opening-braze"), "tau"),
        5.42,
        0.005,
    );
}

/// Independent calculation: the same 20 mm hole without a bush is asked 23.40 and has 26.60 mm².
#[test]
fn worked_bare_hole() {
    let mut b = boiler();
    b.shells[0].openings[0].bush = None;
    let proof = proof_at(&b, 0.6);
    let found = first(&proof, "ours.opening-area");
    close(line(found, "A"), 23.40, 0.005);
    close(line(found, "A_1"), 26.60, 0.005);
    assert_eq!(found.verdict, Verdict::Met);
}

/// Independent calculation: a flue of 75 × 2.5 × 250 mm at 0.6 MPa needs 1.523 mm by collapse, hot
/// and at the test; a 12 mm hole is asked 9.14 and has 11.72 mm².
#[test]
fn worked_hole_in_a_flue() {
    let proof = proof_at(&boiler(), 0.6);
    let found = first(&proof, "ours.flue-opening");
    close(line(found, "t_r"), 1.523, 0.000_5);
    close(line(found, "A"), 9.14, 0.005);
    close(line(found, "A_1"), 11.72, 0.005);
    close(found.margin.expect("a margin"), 11.72 / 9.14, 0.001);
}

/// Independent calculation by bisection: 75 × 250 mm, ovality 0.5 mm, at 0.9 MPa needs 2.15822 mm
/// by all five limits; 75 × 2.0 × 250 mm at 0.7 MPa bears an ovality of 0.73722 mm, and needs
/// 2.00761 mm at 0.75 mm.
#[test]
fn independent_wall_and_ovality_turned_round() {
    let tube = |wall_mm: f64, delta_mm: f64| Tube {
        held: Held::Outside,
        d_o_mm: 75.0,
        wall_mm,
        l_mm: 250.0,
        delta_mm,
        e_mpa: 110e3,
        nu: 0.34,
        hot_mpa: 35.0,
        cold_mpa: 45.0,
        f_mpa: 26.0,
        test_factor: 2.0,
    };
    let wall = |t: Tube, p: f64| least_wall(t, p, proof::Limits::All).expect("a wall").x;
    close(wall(tube(2.5, 0.5), 0.9), 2.158_221_44, 1e-7);
    close(wall(tube(2.0, 0.75), 0.7), 2.007_611_63, 1e-7);
    close(
        greatest_ovality(tube(2.0, 0.75), 0.7).expect("an ovality"),
        0.737_223_81,
        1e-7,
    );
    close(
        greatest_ovality(tube(2.5, 0.75), 0.9).expect("an ovality"),
        0.75,
        1e-12,
    );
    assert_eq!(greatest_ovality(tube(1.0, 0.75), 0.9), None);
}

/// A firebox that is 2.0 mm thick and nobody has measured: not met at 7 bar, and the cure names
/// the next wall and the ovality that would do, both as above.
#[test]
fn worked_cure_of_a_thin_firebox() {
    let mut b = boiler();
    b.flues[0].wall = Some(exact("firebox.wall", 2.0));
    b.flues[0].ovality = None;
    let proof = proof_at(&b, 0.7);
    let found = first(&proof, "ours.flue-pressure");
    assert_eq!(found.verdict, Verdict::NotMet);
    let remedy = found.remedy.as_deref().expect("a remedy");
    assert_eq!(
        remedy,
        "a wall of 2.5 mm (2.01 mm or more is asked); \
         or firebox trued to an ovality of at most 0.73 mm"
    );
    b.flues[0].ovality = Some(made("firebox.ovality", 0.73));
    let proof = proof_at(&b, 0.7);
    assert_eq!(first(&proof, "ours.flue-pressure").verdict, Verdict::Met);
}

/// By hand: tubes of 10 × 0.9 mm at 16 mm in a 3 mm plate at 6 bar pull 85.9 N, 3.3 MPa in the
/// tube and 0.91 MPa in the braze; a margin of 20 mm is bent to 20.0 MPa of 30.4 allowed.
#[test]
fn worked_tube_plate() {
    let mut b = boiler();
    b.plates[0].margin = Some(length("plate.margin", 20.0));
    let proof = proof_at(&b, 0.6);
    let pull = first(&proof, "ours.tube-pull");
    close(line(pull, "F"), 85.9, 0.05);
    close(line(pull, "sigma"), 3.3, 0.05);
    close(line(first(&proof, "ours.tube-braze"), "tau"), 0.91, 0.005);
    let strip = first(&proof, "ours.plate-margin");
    close(line(strip, "sigma_b"), 30.375, 1e-9);
    close(strip.margin.expect("a margin"), 30.375 / 20.0, 1e-9);
    let between = first(&proof, "ours.plate-between");
    close(line(between, "d_f"), 8.475, 0.000_5);
    close(between.margin.expect("a margin"), 30.375 / 1.499_4, 0.001);
    let stayed = first(&proof, "ours.plate-stayed");
    close(
        stayed.margin.expect("a margin"),
        3.0 / (16.0 * (0.6_f64 / 54.6).sqrt()),
        1e-9,
    );
}

/// By hand: 2 × 6 bar; and 1.3 × 10 bar × 41.4/25.7 = 20.9 bar.
#[test]
fn worked_water_tests() {
    let test = |set: &str, bar: f64, at: f64| {
        let p = Known::from_plan(Gauge::from_bar(bar), "boiler.pressure", "");
        let set = proof::find_set(set).expect("a set");
        let test = set.water_test(&p, Metal::Copper, Temperature::from_c(at));
        test.expect("a test").pressure.bar()
    };
    close(test("ours", 6.0, 165.0), 12.0, 1e-9);
    close(test("asme-viii", 10.0, 184.1), 13.0 * 41.4 / 25.7, 0.05);
}
