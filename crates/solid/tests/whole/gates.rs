//! The gates that the solver has to pass: closed forms of rings and plates, printed coefficients,
//! and junctions of shells.
//!
//! Thick ring: *Theory of Elasticity*, thick cylinder under pressure (from memory). Plates:
//! *Roark's Formulas for Stress and Strain*, 7th edition, table 11.2 (printed coefficients read;
//! ν 0.3), and an example of *Strength of Materials, part II*, clamped circular plate, read in a
//! verification page of a structural program. Junctions: *Theory of Plates and Shells*, cylinder
//! with half sphere (from memory), and independent calculations with another solver.

use super::common::{COPPER, Plate, Rim, STEEL, ring, stress, within};
use solid::{DishedEnd, Fineness, FlatEnd, Kind, Metal, Tube, solve};

#[test]
fn published_thick_ring_under_inside_pressure() {
    let body = ring(20.0, 30.0, 1, [10.0, 0.0], STEEL);
    let solved = solve(&body).expect("an answer");
    let at = |r, kind| stress(&body, &solved, 0, [r, 0.0], kind);
    within(at(20.0, Kind::Hoop), 26.0, 0.005, "hoop at the bore");
    within(at(30.0, Kind::Hoop), 16.0, 0.005, "hoop outside");
    within(
        at(25.0, Kind::Axial),
        0.3 * 16.0,
        0.005,
        "axial of a plane strain",
    );
    let bore = body.mesh.nearest([20.0, 0.0]).expect("a node");
    within(
        solved.displaced[bore][0],
        0.002756,
        0.005,
        "growth of the bore",
    );
}

#[test]
fn published_thick_ring_under_outside_pressure() {
    let body = ring(6.0, 8.0, 1, [0.0, 1.0], STEEL);
    let solved = solve(&body).expect("an answer");
    let at = |r| stress(&body, &solved, 0, [r, 0.0], Kind::Hoop);
    within(at(6.0), -4.5714, 0.005, "hoop at the bore");
    within(at(8.0), -3.5714, 0.005, "hoop outside");
}

#[test]
fn published_clamped_plate_of_a_textbook() {
    // In inches and psi, as printed: 7200 psi at the edge, 0.0874 in at the centre, a moment of
    // 780 in·lb/in there.
    let plate = Plate {
        inner: 0.0,
        outer: 40.0,
        thickness: 1.0,
        metal: Metal {
            modulus_mpa: 30e6,
            poisson: 0.3,
        },
        pressure: 6.0,
        rims: [Rim::Free, Rim::Fixed],
    };
    let (body, solved) = plate.solved(2);
    within(
        plate.rise(&body, &solved),
        0.0874,
        0.01,
        "rise of the centre",
    );
    let edge = plate.moment(&body, &solved, 40.0).abs();
    within(6.0 * edge, 7200.0, 0.01, "bending stress at the edge");
    let centre = stress(&body, &solved, 0, [0.0, 1.0], Kind::Radial);
    within(centre / 6.0, 780.0, 0.01, "moment at the centre");
}

#[test]
fn published_clamped_and_supported_plate_of_copper() {
    // 3(1+ν)/8 and 3(3+ν)/8 of p a²/t²: 53.6 and 133.6 MPa were t/a 3/40; here t/a is 0.05.
    let plate = |rim| Plate {
        inner: 0.0,
        outer: 40.0,
        thickness: 2.0,
        metal: COPPER,
        pressure: 0.6,
        rims: [Rim::Free, rim],
    };
    let unit = 0.6 * 1600.0 / 4.0;
    for (rim, factor) in [(Rim::Fixed, 1.34), (Rim::Supported, 3.34)] {
        let plate = plate(rim);
        let (body, solved) = plate.solved(2);
        let centre = stress(&body, &solved, 0, [0.0, 2.0], Kind::Radial);
        within(centre, 0.375 * factor * unit, 0.01, "centre");
    }
}

/// Case, b/a, rims (inner, outer), printed coefficient of the rise, and of the moment at a held
/// rim with that rim.
type Printed = (&'static str, f64, [Rim; 2], f64, Option<(f64, f64)>);

#[test]
fn published_annular_plates_of_the_table() {
    let cases: [Printed; 5] = [
        (
            "2b",
            0.1,
            [Rim::Guided, Rim::Supported],
            0.0575,
            Some((0.1, 0.3003)),
        ),
        (
            "2b",
            0.5,
            [Rim::Guided, Rim::Supported],
            0.0103,
            Some((0.5, 0.1223)),
        ),
        ("2c", 0.3, [Rim::Supported, Rim::Supported], 0.0029, None),
        (
            "2d",
            0.3,
            [Rim::Fixed, Rim::Supported],
            0.0014,
            Some((0.3, 0.0939)),
        ),
        (
            "2e",
            0.3,
            [Rim::Free, Rim::Fixed],
            0.0132,
            Some((1.0, 0.1135)),
        ),
    ];
    let (a, t) = (100.0, 1.0);
    for (case, ratio, rims, rise, moment) in cases {
        let plate = Plate {
            inner: ratio * a,
            outer: a,
            thickness: t,
            metal: STEEL,
            pressure: 1e-3,
            rims,
        };
        let (body, solved) = plate.solved(2);
        let bending = 200e3 * t * t * t / (12.0 * 0.91);
        let found = plate.rise(&body, &solved) * bending / (1e-3 * a.powi(4));
        // Half a unit of the fourth decimal as printed, and one part in a hundred.
        let slack = 0.00005 + 0.01 * rise;
        assert!(
            (found - rise).abs() < slack,
            "{case}: rise {found}, printed {rise}"
        );
        if let Some((at, printed)) = moment {
            let found = plate.moment(&body, &solved, at * a).abs() / (1e-3 * a * a);
            within(found, printed, 0.01, case);
        }
    }
}

#[test]
fn independent_annulus_held_at_both_rims() {
    // Thin-plate theory, an independent calculation: stress −31.70 at the inner and −21.84 at the
    // outer rim for 0.5 MPa and 3 mm; −42.60 and −29.85 for radii of 25 and 60.
    for (b, a, inner, outer) in [(20.0, 50.0, 31.70, 21.84), (25.0, 60.0, 42.60, 29.85)] {
        let plate = Plate {
            inner: b,
            outer: a,
            thickness: 1.0,
            metal: COPPER,
            pressure: 0.5,
            rims: [Rim::Fixed, Rim::Fixed],
        };
        let (body, solved) = plate.solved(2);
        let moment = |r| plate.moment(&body, &solved, r).abs();
        within(
            moment(b),
            inner * 9.0 / 6.0,
            0.01,
            "moment at the inner rim",
        );
        within(
            moment(a),
            outer * 9.0 / 6.0,
            0.01,
            "moment at the outer rim",
        );
        let inner_rim = body.mesh.on_line([b, 0.0], [b, 1.0]);
        if b < 21.0 {
            let pull = solved.reaction(solid::Along::Axis, &inner_rim).abs();
            within(pull, 1273.0, 0.01, "what the flue would carry");
        }
    }
}

#[test]
fn independent_flat_ended_cylinders() {
    // Mean radius, wall, end, pressure; stress at the middle outside and rise of the middle, from
    // an independent solver of the same kind.
    let cases = [
        (50.0, 3.0, 5.0, 0.6, 45.56),
        (50.0, 2.0, 3.0, 0.3, 58.45),
        (75.0, 3.0, 6.0, 0.5, 63.54),
    ];
    for (radius, wall, plate_mm, pressure_mpa, known) in cases {
        let end = FlatEnd {
            shell: Tube {
                inside_radius_mm: radius - 0.5 * wall,
                wall_mm: wall,
                metal: COPPER,
            },
            plate_mm,
            plate: COPPER,
            rim: solid::Rim::Square,
            flue: None,
            length_mm: 2.0 * radius,
            pressure_mpa,
        };
        let body = end.body(Fineness(1)).expect("an end");
        let solved = solve(&body).expect("an answer");
        let centre = stress(&body, &solved, 1, [0.0, 0.0], Kind::Radial);
        within(centre, known, 0.02, "middle of the end");
    }
}

#[test]
fn published_cylinder_with_a_half_sphere() {
    let sphere = DishedEnd {
        shell: Tube {
            inside_radius_mm: 49.0,
            wall_mm: 2.0,
            metal: STEEL,
        },
        crown_mm: 49.0,
        knuckle_mm: 49.0,
        thickness_mm: 2.0,
        metal: STEEL,
        length_mm: 100.0,
        pressure_mpa: 1.0,
    };
    let body = sphere.body(Fineness(2)).expect("a dish");
    let solved = solve(&body).expect("an answer");
    let outside = body.mesh.on_line([51.0, -100.0], [51.0, 0.0]);
    let greatest = |kind| {
        let at = |n: &usize| solved.at(&body.mesh, 0, *n).expect("stress").of(kind);
        outside.iter().map(at).fold(0.0, f64::max)
    };
    // Far from the joint: p r²/(R² − r²), and twice that for the hoop.
    let far = 49.0 * 49.0 / (51.0 * 51.0 - 49.0 * 49.0);
    within(
        greatest(Kind::Axial) / far,
        1.293,
        0.01,
        "axial over far axial",
    );
    within(
        greatest(Kind::Hoop) / (2.0 * far),
        1.032,
        0.01,
        "hoop over far hoop",
    );
}
