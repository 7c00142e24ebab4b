//! Finer meshes: each halving changes the answer by less than the one before.

use super::common::{COPPER, stress};
use solid::{BushInPlate, DishedEnd, Fineness, FlatEnd, Kind, NoShape, Points, Rim, Tube, solve};

fn shell() -> Tube {
    Tube {
        inside_radius_mm: 48.5,
        wall_mm: 3.0,
        metal: COPPER,
    }
}

fn end(rim: Rim, flue: Option<Tube>) -> FlatEnd {
    FlatEnd {
        shell: shell(),
        plate_mm: 5.0,
        plate: COPPER,
        rim,
        flue,
        length_mm: 100.0,
        pressure_mpa: 0.6,
    }
}

const FLUE: Tube = Tube {
    inside_radius_mm: 18.0,
    wall_mm: 2.0,
    metal: COPPER,
};

fn flanged(points: Points) -> Rim {
    Rim::Flanged {
        inside_radius_mm: 8.0,
        height_mm: 22.0,
        points,
    }
}

/// Values on meshes of one, two and four parts.
fn three(value: impl Fn(Fineness) -> f64) -> [f64; 3] {
    [1, 2, 4].map(|parts| value(Fineness(parts)))
}

fn settles(name: &str, values: [f64; 3]) {
    let [a, b, c] = values;
    let changes = [(b - a).abs() / c.abs(), (c - b).abs() / c.abs()];
    println!("{name}: {values:?}, changes {changes:?}");
    // Below a ten-thousandth there is nothing left to settle.
    assert!(
        changes[1] < changes[0] || changes[1] < 1e-4,
        "{name}: {values:?}"
    );
    assert!(changes[1] < 0.01, "{name}: {values:?}");
}

#[test]
fn halving_settles_the_middle_of_a_flat_end() {
    for (name, rim) in [
        ("square", Rim::Square),
        ("flanged towards the water", flanged(Points::TowardsWater)),
        ("flanged away from it", flanged(Points::AwayFromWater)),
    ] {
        let values = three(|fineness| {
            let body = end(rim, None).body(fineness).expect("an end");
            let solved = solve(&body).expect("an answer");
            stress(&body, &solved, 1, [0.0, 0.0], Kind::Radial)
        });
        settles(name, values);
    }
}

#[test]
fn halving_settles_an_annular_end_beside_its_flue_and_in_its_middle() {
    for (name, rim) in [
        ("square", Rim::Square),
        (
            "flanged away from the water",
            flanged(Points::AwayFromWater),
        ),
    ] {
        let end = end(rim, Some(FLUE));
        let beside_the_flue = three(|fineness| {
            let body = end.body(fineness).expect("an end");
            let solved = solve(&body).expect("an answer");
            let across = ([20.0, 0.0], [20.0, 5.0]);
            let split = solved.across(&body, (1, Kind::Radial), across.0, across.1);
            split.expect("a line of the mesh").bending
        });
        settles(&format!("{name}, bending beside the flue"), beside_the_flue);
        let middle = 0.5 * (20.0 + end.flat_to_mm());
        let between = three(|fineness| {
            let body = end.body(fineness).expect("an end");
            let solved = solve(&body).expect("an answer");
            stress(&body, &solved, 1, [middle, 0.0], Kind::Radial)
        });
        settles(&format!("{name}, middle of the strip"), between);
    }
}

#[test]
fn halving_settles_a_dished_end_and_a_bush() {
    let dished = DishedEnd {
        shell: shell(),
        crown_mm: 97.0,
        knuckle_mm: 10.0,
        thickness_mm: 3.0,
        metal: COPPER,
        length_mm: 80.0,
        pressure_mpa: 0.6,
    };
    let knuckle = |fineness| {
        let body = dished.body(fineness).expect("a dish");
        let solved = solve(&body).expect("an answer");
        solved
            .peak(&body.mesh, Kind::Intensity)
            .expect("a peak")
            .mpa
    };
    settles("dished", three(knuckle));
    let bush = BushInPlate {
        plate_mm: 2.5,
        plate: COPPER,
        rim_radius_mm: 60.0,
        hole_radius_mm: 7.0,
        bore_radius_mm: 5.0,
        below_mm: 3.0,
        above_mm: 6.0,
        bush: COPPER,
        pull_mpa: 10.0,
    };
    let bore = |fineness| {
        let body = bush.body(fineness).expect("a bush");
        let solved = solve(&body).expect("an answer");
        stress(&body, &solved, 1, [5.0, 1.25], Kind::Hoop)
    };
    settles("bush", three(bore));
}

#[test]
fn sizes_that_make_no_part_are_refused_with_their_reason() {
    let none = |end: FlatEnd| end.body(Fineness(1)).expect_err("no shape");
    let thin = FlatEnd {
        plate_mm: 0.0,
        ..end(Rim::Square, None)
    };
    assert!(matches!(none(thin), NoShape::Size { mm: 0.0, .. }));
    let wide = Tube {
        inside_radius_mm: 48.0,
        ..FLUE
    };
    assert!(matches!(
        none(end(Rim::Square, Some(wide))),
        NoShape::Unfit(_)
    ));
    let short = FlatEnd {
        length_mm: 4.0,
        ..end(Rim::Square, None)
    };
    assert!(matches!(none(short), NoShape::Unfit(_)));
    let stub = Rim::Flanged {
        inside_radius_mm: 8.0,
        height_mm: 12.0,
        points: Points::TowardsWater,
    };
    assert!(matches!(none(end(stub, None)), NoShape::Unfit(_)));
}
