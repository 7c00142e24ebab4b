//! What must hold in any body: patches, reciprocity, energy, balance, volume.

use super::common::{COPPER, STEEL, even, ring, stress, within};
use proptest::prelude::*;
use solid::{
    Along, Block, Body, BushInPlate, DishedEnd, Edge, Fineness, FlatEnd, Kind, Mesh, NotSolved,
    Points, Pressed, Rim, Solved, Tube, solve,
};
use std::f64::consts::{PI, TAU};

const KINDS: [Kind; 4] = [Kind::Radial, Kind::Axial, Kind::Hoop, Kind::Shear];

/// Three by three squares with their inner corners moved, all sides straight.
fn skewed() -> Mesh {
    let block = Block::Square {
        r: even(10.0, 16.0, 3),
        z: even(0.0, 6.0, 3),
    };
    let mut mesh = Mesh::of(&[(block, 0)]);
    let moves = [[12.0, 2.0], [14.0, 2.0], [14.0, 4.0], [12.0, 4.0]];
    let by = [[0.5, 0.3], [-0.4, 0.6], [0.3, -0.5], [-0.2, 0.4]];
    for (at, by) in moves.into_iter().zip(by) {
        let n = mesh.nearest(at).expect("a node");
        mesh.nodes[n][0] += by[0];
        mesh.nodes[n][1] += by[1];
    }
    for element in mesh.elements.clone() {
        for side in 0..4 {
            let [a, b] = [element.nodes[side], element.nodes[(side + 1) % 4]];
            let middle = std::array::from_fn(|i| 0.5 * (mesh.nodes[a][i] + mesh.nodes[b][i]));
            mesh.nodes[element.nodes[side + 4]] = middle;
        }
    }
    mesh
}

fn whole_boundary(mesh: &Mesh, pressure_mpa: f64) -> Pressed {
    Pressed {
        edges: mesh.boundary(),
        pressure_mpa,
    }
}

#[test]
fn identity_patch_pressed_all_round_has_the_same_stress_everywhere() {
    let mesh = skewed();
    let pressed = vec![whole_boundary(&mesh, 7.0)];
    // One node held along the axis leaves every false mode of the elements free to show.
    let held = vec![(mesh.nearest([10.0, 0.0]).expect("a node"), Along::Axis)];
    let body = Body {
        mesh,
        metals: vec![STEEL],
        pressed,
        held,
    };
    let solved = solve(&body).expect("an answer");
    for at_nodes in &solved.stress {
        for s in at_nodes {
            for (kind, known) in KINDS.into_iter().zip([-7.0, -7.0, -7.0, 0.0]) {
                assert!((s.of(kind) - known).abs() < 1e-8, "{s:?}");
            }
        }
    }
    for (place, moved) in body.mesh.nodes.iter().zip(&solved.displaced) {
        let known = -7.0 * (1.0 - 2.0 * 0.3) / 200e3 * place[0];
        assert!((moved[0] / known - 1.0).abs() < 1e-8);
    }
}

#[test]
fn identity_patch_pulled_along_the_axis_has_no_other_stress() {
    let mesh = skewed();
    let top = mesh.between([16.0, 6.0], [10.0, 6.0]);
    let under = mesh.between([10.0, 0.0], [16.0, 0.0]);
    let mut body = Body {
        mesh,
        metals: vec![COPPER],
        pressed: vec![Pressed {
            edges: top,
            pressure_mpa: -5.0,
        }],
        held: Vec::new(),
    };
    body.hold(&under, Along::Axis);
    let solved = solve(&body).expect("an answer");
    for s in solved.stress.iter().flatten() {
        for (kind, known) in KINDS.into_iter().zip([0.0, 5.0, 0.0, 0.0]) {
            assert!((s.of(kind) - known).abs() < 1e-8, "{s:?}");
        }
    }
    assert!((solved.balance.held / (-5.0 * PI * (256.0 - 100.0)) - 1.0).abs() < 1e-9);
}

fn tube(inside_radius_mm: f64, wall_mm: f64) -> Tube {
    Tube {
        inside_radius_mm,
        wall_mm,
        metal: COPPER,
    }
}

fn end(rim: Rim, flue: Option<Tube>) -> FlatEnd {
    FlatEnd {
        shell: tube(50.0, 3.0),
        plate_mm: 4.0,
        plate: COPPER,
        rim,
        flue,
        length_mm: 90.0,
        pressure_mpa: 0.6,
    }
}

fn flanged(points: Points) -> Rim {
    Rim::Flanged {
        inside_radius_mm: 7.0,
        height_mm: 20.0,
        points,
    }
}

/// Every kind of part, with its volume by closed forms.
fn parts() -> Vec<(&'static str, Body, f64)> {
    let flue = Some(tube(18.0, 2.0));
    let shell = |long: f64| PI * (53.0 * 53.0 - 50.0 * 50.0) * long;
    let flue_volume = PI * (400.0 - 324.0) * 90.0;
    // A flanged disc: flat to 39, a quarter of a ring 7 to 11 about that radius, a lip of 9 mm.
    let quarter = TAU * (39.0 * PI / 4.0 * (121.0 - 49.0) + (1331.0 - 343.0) / 3.0);
    let lip = PI * (2500.0 - 46.0 * 46.0) * 9.0;
    let disc = PI * 39.0 * 39.0 * 4.0 + quarter + lip;
    let hole = PI * 400.0 * 4.0;
    let body = |rim, flue| end(rim, flue).body(Fineness(1)).expect("an end");
    let away = flanged(Points::AwayFromWater);
    let towards = flanged(Points::TowardsWater);
    let half = DishedEnd {
        shell: tube(49.0, 2.0),
        crown_mm: 49.0,
        knuckle_mm: 49.0,
        thickness_mm: 2.0,
        metal: COPPER,
        length_mm: 60.0,
        pressure_mpa: 1.0,
    };
    let ball = TAU / 3.0 * (51.0_f64.powi(3) - 49.0_f64.powi(3)) + PI * 200.0 * 60.0;
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
    let bushed = PI * (3600.0 - 49.0) * 2.5 + PI * 24.0 * 11.5;
    let half = half.body(Fineness(1)).expect("a dish");
    let bush = bush.body(Fineness(1)).expect("a bush");
    vec![
        (
            "square",
            body(Rim::Square, None),
            PI * 2500.0 * 4.0 + shell(90.0),
        ),
        (
            "with a flue",
            body(Rim::Square, flue),
            PI * 2500.0 * 4.0 - hole + shell(90.0) + flue_volume,
        ),
        ("flanged away", body(away, None), disc + shell(106.0)),
        ("flanged towards", body(towards, None), disc + shell(90.0)),
        (
            "flanged with a flue",
            body(away, flue),
            disc - hole + shell(106.0) + flue_volume,
        ),
        ("half sphere", half, ball),
        ("bush", bush, bushed),
    ]
}

/// Volume by the theorem of the divergence, from the boundary alone.
fn volume(mesh: &Mesh) -> f64 {
    let far = 0.6_f64.sqrt();
    let mut sum = 0.0;
    for edge in mesh.boundary() {
        let p = edge.map(|n| mesh.nodes[n]);
        for (s, weight) in [(-far, 5.0 / 9.0), (0.0, 8.0 / 9.0), (far, 5.0 / 9.0)] {
            let n = [0.5 * s * (s - 1.0), 1.0 - s * s, 0.5 * s * (s + 1.0)];
            let d = [s - 0.5, -2.0 * s, s + 0.5];
            let r: f64 = (0..3).map(|i| n[i] * p[i][0]).sum();
            let dz: f64 = (0..3).map(|i| d[i] * p[i][1]).sum();
            sum += weight * PI * r * r * dz;
        }
    }
    sum
}

#[test]
fn identity_meshes_have_the_volume_of_their_parts() {
    for (name, body, known) in parts() {
        within(volume(&body.mesh), known, 2e-6, name);
    }
}

#[test]
fn identity_forces_add_up_and_energy_is_half_the_work() {
    for (name, body, _) in parts() {
        let solved = solve(&body).expect(name);
        assert!(
            solved.balance.left_over() < 1e-9,
            "{name}: {:?}",
            solved.balance
        );
        assert!(
            (2.0 * solved.energy / solved.work - 1.0).abs() < 1e-9,
            "{name}"
        );
    }
}

#[test]
fn identity_a_closed_end_carries_the_pressure_on_its_bore() {
    let solved = |rim, flue| solve(&end(rim, flue).body(Fineness(1)).expect("an end")).expect("x");
    let all = -0.6 * PI * 2500.0;
    within(solved(Rim::Square, None).balance.applied, all, 1e-9, "over");
    let away = flanged(Points::AwayFromWater);
    within(solved(away, None).balance.applied, all, 1e-6, "flanged");
    let flue = Some(tube(18.0, 2.0));
    let ring = -0.6 * PI * (2500.0 - 400.0);
    within(
        solved(Rim::Square, flue).balance.applied,
        ring,
        1e-9,
        "ring",
    );
}

/// The volume, mm³, that a stretch of boundary sweeps against its pressure.
fn swept(mesh: &Mesh, edges: &[Edge], solved: &Solved) -> f64 {
    let far = 0.6_f64.sqrt();
    let mut sum = 0.0;
    for edge in edges {
        let p = edge.map(|n| mesh.nodes[n]);
        let u = edge.map(|n| solved.displaced[n]);
        for (s, weight) in [(-far, 5.0 / 9.0), (0.0, 8.0 / 9.0), (far, 5.0 / 9.0)] {
            let n = [0.5 * s * (s - 1.0), 1.0 - s * s, 0.5 * s * (s + 1.0)];
            let d = [s - 0.5, -2.0 * s, s + 0.5];
            let of = |by: [f64; 3], a: [[f64; 2]; 3], i: usize| -> f64 {
                (0..3).map(|k| by[k] * a[k][i]).sum()
            };
            let inwards = of(n, u, 1) * of(d, p, 0) - of(n, u, 0) * of(d, p, 1);
            sum += weight * TAU * of(n, p, 0) * inwards;
        }
    }
    sum
}

#[test]
fn identity_two_loads_do_the_same_work_on_each_other() {
    // Pressure in the vessel and a pressure in the flue.
    let body = end(Rim::Square, Some(tube(18.0, 2.0)))
        .body(Fineness(1))
        .expect("an end");
    let first = body.pressed[0].clone();
    let second = Pressed {
        edges: body.mesh.between([18.0, 90.0], [18.0, 0.0]),
        pressure_mpa: 2.0,
    };
    assert!(!second.edges.is_empty());
    let other = Body {
        pressed: vec![second.clone()],
        ..body.clone()
    };
    let [a, b] = [&body, &other].map(|body| solve(body).expect("an answer"));
    let here = 0.6 * swept(&body.mesh, &first.edges, &b);
    let there = 2.0 * swept(&body.mesh, &second.edges, &a);
    within(here, there, 1e-9, "reciprocal work");
    within(
        0.6 * swept(&body.mesh, &first.edges, &a),
        a.work,
        1e-9,
        "own work",
    );
}

#[test]
fn identity_a_bush_of_the_plate_alone_leaves_its_pull_even() {
    let plain = BushInPlate {
        plate_mm: 2.5,
        plate: COPPER,
        rim_radius_mm: 60.0,
        hole_radius_mm: 7.0,
        bore_radius_mm: 7.0,
        below_mm: 0.0,
        above_mm: 0.0,
        bush: COPPER,
        pull_mpa: 10.0,
    };
    let bare = plain.body(Fineness(2)).expect("a hole");
    let solved = solve(&bare).expect("an answer");
    // A hole in a disc pulled at its rim: 2 S b²/(b² − a²) at the hole.
    let known = 20.0 * 3600.0 / (3600.0 - 49.0);
    let hole = stress(&bare, &solved, 0, [7.0, 1.25], Kind::Hoop);
    within(hole, known, 0.005, "hoop at the hole");
    // The same hole of 3 mm in a bush that is as thick as the plate and of its metal.
    let filled = BushInPlate {
        bore_radius_mm: 3.0,
        ..plain
    };
    let filled = filled.body(Fineness(2)).expect("a bush");
    let solved = solve(&filled).expect("an answer");
    let known = 20.0 * 3600.0 / (3600.0 - 9.0);
    let hole = stress(&filled, &solved, 1, [3.0, 1.25], Kind::Hoop);
    within(hole, known, 0.005, "hoop at the bore");
}

#[test]
fn a_body_without_a_place_or_with_a_false_metal_is_refused() {
    let mut loose = ring(20.0, 30.0, 1, [10.0, 0.0], STEEL);
    loose.held.clear();
    assert_eq!(solve(&loose), Err(NotSolved::NotHeld));
    let mut soft = ring(20.0, 30.0, 1, [10.0, 0.0], STEEL);
    soft.metals[0].poisson = 0.5;
    assert_eq!(solve(&soft), Err(NotSolved::Metal(0)));
    let mut inside_out = ring(20.0, 30.0, 1, [10.0, 0.0], STEEL);
    inside_out.mesh.elements[2].nodes.swap(0, 2);
    assert!(matches!(solve(&inside_out), Err(NotSolved::Element(2))));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(24) })]
    #[test]
    fn identity_any_ring_follows_the_closed_form(
        inner in 5.0..50.0_f64,
        ratio in 1.05..1.6_f64,
        p in 0.1..3.0_f64,
        q in 0.0..3.0_f64,
    ) {
        let outer = inner * ratio;
        let body = ring(inner, outer, 2, [p, q], COPPER);
        let solved = solve(&body).expect("an answer");
        let gap = outer * outer - inner * inner;
        let a = (p * inner * inner - q * outer * outer) / gap;
        let b = (p - q) * inner * inner * outer * outer / gap;
        for r in [inner, outer] {
            let found = stress(&body, &solved, 0, [r, 0.0], Kind::Hoop);
            let known = a + b / (r * r);
            let size = a.abs() + (b / (r * r)).abs();
            prop_assert!((found - known).abs() < 0.005 * size);
        }
    }
}
