//! Pictures of stress: labels that nothing runs into, every line in its place. All sizes are
//! invented.

use drawing::Sheet;
use drawing::clash::clashes;
use drawing::contour::{Picture, Upwards, section};
use drawing::sheet::{Layer, Mark};
use proptest::prelude::*;
use solid::{
    Body, BushInPlate, DishedEnd, Fineness, FlatEnd, Kind, Metal, Points, Rim, Solved, Tube, solve,
};

const COPPER: Metal = Metal {
    modulus_mpa: 110e3,
    poisson: 0.34,
};

fn tube(inside_radius_mm: f64, wall_mm: f64) -> Tube {
    Tube {
        inside_radius_mm,
        wall_mm,
        metal: COPPER,
    }
}

fn flat(plate_mm: f64, rim: Rim, flue: Option<Tube>) -> FlatEnd {
    FlatEnd {
        shell: tube(45.0, 2.5),
        plate_mm,
        plate: COPPER,
        rim,
        flue,
        length_mm: 90.0,
        pressure_mpa: 0.6,
    }
}

fn drawn(body: &Body, solved: &Solved, kind: Kind, window: [[f64; 2]; 2]) -> Sheet {
    section(&Picture {
        title: "part",
        body,
        solved,
        kind,
        window,
        upwards: Upwards::Against,
        peak: "greatest",
    })
}

const ALL: [[f64; 2]; 2] = [[0.0, -1e9], [1e9, 1e9]];
const KINDS: [Kind; 6] = [
    Kind::Radial,
    Kind::Axial,
    Kind::Hoop,
    Kind::Shear,
    Kind::VonMises,
    Kind::Intensity,
];

fn bodies() -> Vec<Body> {
    let flanged = Rim::Flanged {
        inside_radius_mm: 6.0,
        height_mm: 18.0,
        points: Points::AwayFromWater,
    };
    let dished = DishedEnd {
        shell: tube(45.0, 2.5),
        crown_mm: 90.0,
        knuckle_mm: 9.0,
        thickness_mm: 2.5,
        metal: COPPER,
        length_mm: 50.0,
        pressure_mpa: 0.6,
    };
    let bush = BushInPlate {
        plate_mm: 2.5,
        plate: COPPER,
        rim_radius_mm: 50.0,
        hole_radius_mm: 7.0,
        bore_radius_mm: 5.0,
        below_mm: 3.0,
        above_mm: 6.0,
        bush: COPPER,
        pull_mpa: 11.0,
    };
    let flue = Some(tube(15.0, 1.5));
    vec![
        flat(5.0, Rim::Square, None)
            .body(Fineness(1))
            .expect("an end"),
        flat(4.0, Rim::Square, flue)
            .body(Fineness(1))
            .expect("an end"),
        flat(3.0, flanged, flue).body(Fineness(1)).expect("an end"),
        dished.body(Fineness(1)).expect("a dish"),
        bush.body(Fineness(1)).expect("a bush"),
    ]
}

#[test]
fn no_label_of_a_line_is_run_into() {
    for body in bodies() {
        let solved = solve(&body).expect("an answer");
        for kind in KINDS {
            let sheet = drawn(&body, &solved, kind, ALL);
            assert_eq!(clashes(&sheet), [], "{kind:?}");
            let mut names: Vec<&str> = sheet.dimensions().map(|d| d.measures.as_str()).collect();
            let all = names.len();
            names.sort_unstable();
            names.dedup();
            assert_eq!(names.len(), all, "{kind:?}");
        }
    }
}

#[test]
fn lines_are_labelled_and_the_greatest_is_marked() {
    for body in bodies() {
        let solved = solve(&body).expect("an answer");
        let sheet = drawn(&body, &solved, Kind::Intensity, ALL);
        let lines = sheet
            .items
            .iter()
            .filter(|i| i.layer == Layer::Thin)
            .count();
        let labels: Vec<&str> = sheet.dimensions().map(|d| d.text.says.as_str()).collect();
        assert!(lines >= 4, "{lines} lines");
        assert!(
            labels.len() >= 3 && labels.contains(&"greatest"),
            "{labels:?}"
        );
    }
}

#[test]
fn identity_lines_of_a_ring_are_circles_at_the_radius_of_the_closed_form() {
    // Hoop stress of a thick ring, a + b/r²: its line of 20 MPa stands at r = √(b/(20 − a)).
    let block = solid::Block::Square {
        r: (0..=16).map(|i| 20.0 + 0.625 * f64::from(i)).collect(),
        z: vec![0.0, 4.0, 8.0],
    };
    let mesh = solid::Mesh::of(&[(block, 0)]);
    let pressed = solid::Pressed {
        edges: mesh.between([20.0, 8.0], [20.0, 0.0]),
        pressure_mpa: 10.0,
    };
    let ends = mesh.between([20.0, 0.0], [30.0, 0.0]);
    let mut body = Body {
        mesh,
        metals: vec![COPPER],
        pressed: vec![pressed],
        held: Vec::new(),
    };
    body.hold(&ends, solid::Along::Axis);
    let solved = solve(&body).expect("an answer");
    let sheet = drawn(&body, &solved, Kind::Hoop, ALL);
    let (a, b) = (8.0, 7200.0);
    let known = (b / (20.0_f64 - a)).sqrt() * sheet.scale;
    let near = sheet.items.iter().any(|item| match &item.mark {
        Mark::Open(points) if item.layer == Layer::Thin => points
            .iter()
            .all(|p| (p.x - known).abs() < 0.05 * sheet.scale),
        _ => false,
    });
    assert!(near, "no line at {known}");
}

#[test]
fn a_picture_is_well_formed_and_the_same_each_time() {
    for body in bodies() {
        let solved = solve(&body).expect("an answer");
        let once = drawing::svg(&drawn(&body, &solved, Kind::Intensity, ALL));
        let again = drawing::svg(&drawn(&body, &solved, Kind::Intensity, ALL));
        assert_eq!(once, again);
        assert!(roxmltree::Document::parse(&once).is_ok());
        assert!(!once.contains("NaN") && !once.contains("inf"));
    }
}

#[test]
fn a_window_without_metal_gives_a_sheet_without_lines() {
    let body = flat(4.0, Rim::Square, None)
        .body(Fineness(1))
        .expect("an end");
    let solved = solve(&body).expect("an answer");
    let sheet = drawn(&body, &solved, Kind::Hoop, [[500.0, 0.0], [501.0, 1.0]]);
    assert_eq!(sheet.dimensions().count(), 0);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(16) })]
    #[test]
    fn no_label_of_an_end_is_run_into(
        plate in 2.0..8.0_f64,
        flue in 8.0..30.0_f64,
        far in 8.0..60.0_f64,
    ) {
        let end = flat(plate, Rim::Square, Some(tube(flue, 1.5)));
        let body = end.body(Fineness(1)).expect("an end");
        let solved = solve(&body).expect("an answer");
        let window = [[0.0, -1.0], [1e9, plate + far]];
        prop_assert_eq!(clashes(&drawn(&body, &solved, Kind::Intensity, window)), []);
    }
}
