//! Bodies with ideal edges, for which there are closed forms.

use solid::{Along, Block, Body, Kind, Mesh, Metal, Pressed, Solved, solve};
use std::f64::consts::TAU;

pub(crate) const COPPER: Metal = Metal {
    modulus_mpa: 110e3,
    poisson: 0.34,
};
pub(crate) const STEEL: Metal = Metal {
    modulus_mpa: 200e3,
    poisson: 0.3,
};

pub(crate) fn even(from: f64, to: f64, parts: u32) -> Vec<f64> {
    let step = (to - from) / f64::from(parts);
    let inner = (0..parts).map(|i| from + step * f64::from(i));
    inner.chain([to]).collect()
}

/// Stations from `from` to `to`, closer by half at each step towards both ends.
pub(crate) fn to_both(from: f64, to: f64, halvings: i32, parts: u32) -> Vec<f64> {
    let long = to - from;
    let mut near: Vec<f64> = (1..=halvings).map(|i| 0.25 * 0.5_f64.powi(i)).collect();
    near.reverse();
    let low = near.iter().map(|x| from + long * x);
    let high = near.iter().rev().map(|x| to - long * x);
    let middle = even(from + 0.25 * long, to - 0.25 * long, parts);
    [from]
        .into_iter()
        .chain(low)
        .chain(middle)
        .chain(high)
        .chain([to])
        .collect()
}

/// How an edge of a plate is held.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum Rim {
    Fixed,
    Supported,
    Guided,
    Free,
}

pub(crate) struct Plate {
    pub(crate) inner: f64,
    pub(crate) outer: f64,
    pub(crate) thickness: f64,
    pub(crate) metal: Metal,
    pub(crate) pressure: f64,
    pub(crate) rims: [Rim; 2],
}

impl Plate {
    /// The plate with pressure on its lower face, bending upwards.
    pub(crate) fn body(&self, parts: u32) -> Body {
        let (a, b, t) = (self.inner, self.outer, self.thickness);
        let block = Block::Square {
            r: to_both(a, b, 5, 4 * parts),
            z: even(0.0, t, 2 * parts),
        };
        let mesh = Mesh::of(&[(block, 0)]);
        let under = mesh.between([a, 0.0], [b, 0.0]);
        let mut body = Body {
            mesh,
            metals: vec![self.metal],
            pressed: vec![Pressed {
                edges: under,
                pressure_mpa: self.pressure,
            }],
            held: Vec::new(),
        };
        for (r, rim) in [a, b].into_iter().zip(self.rims) {
            if r > 0.0 {
                hold(&mut body, r, rim, t);
            }
        }
        body
    }

    pub(crate) fn solved(&self, parts: u32) -> (Body, Solved) {
        let body = self.body(parts);
        let solved = solve(&body).expect("an answer");
        (body, solved)
    }

    /// Bending moment at a rim that is held against turning, per mm, from what holds it.
    pub(crate) fn moment(&self, body: &Body, solved: &Solved, r: f64) -> f64 {
        let nodes = body.mesh.on_line([r, 0.0], [r, self.thickness]);
        let middle = 0.5 * self.thickness;
        let turning: f64 = solved
            .reactions
            .iter()
            .filter(|((n, along), _)| *along == Along::Radius && nodes.contains(n))
            .map(|((n, _), force)| force * (body.mesh.nodes[*n][1] - middle))
            .sum();
        turning / (TAU * r)
    }

    pub(crate) fn rise(&self, body: &Body, solved: &Solved) -> f64 {
        let middle = body.mesh.on_line(
            [self.inner, 0.5 * self.thickness],
            [self.outer, 0.5 * self.thickness],
        );
        let rises = middle.iter().map(|n| solved.displaced[*n][1].abs());
        rises.fold(0.0, f64::max)
    }
}

fn hold(body: &mut Body, r: f64, rim: Rim, t: f64) {
    let nodes = body.mesh.on_line([r, 0.0], [r, t]);
    let middle = nodes[nodes.len() / 2];
    let mut keep = |n: usize, along| body.held.push((n, along));
    match rim {
        Rim::Free => {}
        Rim::Supported => keep(middle, Along::Axis),
        Rim::Guided => nodes.iter().for_each(|n| keep(*n, Along::Radius)),
        Rim::Fixed => {
            for n in &nodes {
                keep(*n, Along::Radius);
                keep(*n, Along::Axis);
            }
        }
    }
}

/// A thick ring that cannot grow along its axis.
pub(crate) fn ring(inner: f64, outer: f64, parts: u32, pressures: [f64; 2], metal: Metal) -> Body {
    let block = Block::Square {
        r: even(inner, outer, 4 * parts),
        z: even(0.0, 2.0, parts),
    };
    let mesh = Mesh::of(&[(block, 0)]);
    let faces = [
        mesh.between([inner, 2.0], [inner, 0.0]),
        mesh.between([outer, 0.0], [outer, 2.0]),
    ];
    let ends = [
        mesh.between([inner, 0.0], [outer, 0.0]),
        mesh.between([outer, 2.0], [inner, 2.0]),
    ];
    let pressed = faces
        .into_iter()
        .zip(pressures)
        .map(|(edges, pressure_mpa)| Pressed {
            edges,
            pressure_mpa,
        })
        .collect();
    let mut body = Body {
        mesh,
        metals: vec![metal],
        pressed,
        held: Vec::new(),
    };
    body.hold(&ends.concat(), Along::Axis);
    body
}

pub(crate) fn stress(body: &Body, solved: &Solved, metal: usize, at: [f64; 2], kind: Kind) -> f64 {
    let node = body.mesh.nearest(at).expect("a node");
    let there = body.mesh.nodes[node];
    assert!(
        (there[0] - at[0]).hypot(there[1] - at[1]) < 1e-6,
        "no node at {at:?}"
    );
    solved.at(&body.mesh, metal, node).expect("stress").of(kind)
}

/// Asserts that a value lies within a share of another, and prints by how much it is out.
pub(crate) fn within(found: f64, known: f64, share: f64, what: &str) {
    println!("{what}: out by {:.3} %", 100.0 * (found / known - 1.0));
    assert!(
        (found / known - 1.0).abs() <= share,
        "{what}: {found}, known {known}: out by {:.3} %",
        100.0 * (found / known - 1.0)
    );
}
