//! Family `annulus`: a flat ring of plate between a shell and a flue, bent by even pressure, with
//! each edge held from turning or free to turn.
//!
//! Source: Formulas for Stress and Strain, table 11.2, case 2; the plate equation is solved here
//! for four edge pairs. An edge that gives way under load, and a flue off the middle, are left out.

use crate::sources::STRESS_FORMULAS_7;
use reckoning::quantity::{MM, MPA, MPA_GAUGE, NEWTON, ONE, Unit};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, Symbol, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[&BOTH_FIXED, &BOTH_FREE, &OUTER_FREE, &INNER_FREE, &PULL];

/// How an edge is held: it never moves out of the plane.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edge {
    /// It does not turn.
    Fixed,
    /// It turns freely.
    Free,
}

/// A ring under pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Annulus {
    /// Pressure, MPa.
    pub p_mpa: f64,
    /// Outer radius, mm.
    pub a_mm: f64,
    /// Inner radius, mm.
    pub b_mm: f64,
    /// Plate, mm.
    pub t_mm: f64,
    /// Ratio of lateral to axial strain.
    pub nu: f64,
}

/// What a ring bears.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bent {
    /// Greatest bending stress, along or across the radius, MPa.
    pub sigma_mpa: f64,
    /// Load that the inner edge takes, N.
    pub inner_n: f64,
}

/// Every pair of edges, the outer first.
pub const PAIRS: [(Edge, Edge); 4] = [
    (Edge::Fixed, Edge::Fixed),
    (Edge::Free, Edge::Free),
    (Edge::Free, Edge::Fixed),
    (Edge::Fixed, Edge::Free),
];

/// The ring with its outer and inner edge held so; `None` where there is no ring.
#[must_use]
pub fn bent(ring: Annulus, outer: Edge, inner: Edge) -> Option<Bent> {
    let beta = ring.b_mm / ring.a_mm;
    if !(beta > 0.0 && beta < 1.0 && ring.t_mm > 0.0) {
        return None;
    }
    let nu = ring.nu;
    let c = solve([
        sag(1.0),
        sag(beta),
        held(1.0, nu, outer),
        held(beta, nu, inner),
    ])?;
    let along = [3.0 + nu, nu - 1.0];
    let across = [1.0 + 3.0 * nu, 1.0 - nu];
    let most = [along, across]
        .into_iter()
        .flat_map(|of| {
            peaks(c, nu, of, beta)
                .into_iter()
                .map(move |x| moment(c, nu, of, x).abs())
        })
        .fold(0.0, f64::max);
    Some(Bent {
        sigma_mpa: 6.0 * most * ring.p_mpa * (ring.a_mm / ring.t_mm).powi(2),
        inner_n: 2.0 * PI * ring.p_mpa * ring.a_mm.powi(2) * (4.0 * c[3] + beta * beta / 2.0).abs(),
    })
}

/// One line of the equations for `w = c0 + c1 x² + c2 ln x + c3 x² ln x + x⁴/64`, in radii of the
/// outer edge: four factors and what they add up to.
type Row = [f64; 5];

/// No sag at `x`.
fn sag(x: f64) -> Row {
    let (s, l) = (x * x, x.ln());
    [1.0, s, l, s * l, -s * s / 64.0]
}

/// No turn at `x`, or no moment.
fn held(x: f64, nu: f64, edge: Edge) -> Row {
    let (s, l) = (x * x, x.ln());
    match edge {
        Edge::Fixed => [0.0, 2.0, 1.0 / s, 2.0 * l + 1.0, -s / 16.0],
        Edge::Free => [
            0.0,
            2.0 * (1.0 + nu),
            (nu - 1.0) / s,
            2.0 * (1.0 + nu) * l + 3.0 + nu,
            -(3.0 + nu) * s / 16.0,
        ],
    }
}

/// Moment at `x`: along the radius with `[3 + nu, nu - 1]`, across it with `[1 + 3 nu, 1 - nu]`.
fn moment(c: [f64; 4], nu: f64, [k, j]: [f64; 2], x: f64) -> f64 {
    let s = x * x;
    let even = 2.0 * (1.0 + nu) * (c[1] + c[3] * x.ln());
    -(even + j * c[2] / s + k * c[3] + k * s / 16.0)
}

/// Where a moment may be greatest: the edges, and where it neither rises nor falls.
fn peaks(c: [f64; 4], nu: f64, [k, j]: [f64; 2], beta: f64) -> Vec<f64> {
    let (a, b, d) = (k / 8.0, (1.0 + nu) * c[3], -2.0 * j * c[2]);
    let mut at = vec![beta, 1.0];
    let within = b * b - a * d;
    if within >= 0.0 {
        let squares = [(-b + within.sqrt()) / a, (-b - within.sqrt()) / a];
        let inside = squares.into_iter().filter(|s| *s > beta * beta && *s < 1.0);
        at.extend(inside.map(f64::sqrt));
    }
    at
}

/// Four equations by elimination, the largest factor first.
fn solve(mut rows: [Row; 4]) -> Option<[f64; 4]> {
    for column in 0..4 {
        let best = (column..4).max_by(|i, j| {
            let size = |k: &usize| rows[*k][column].abs();
            size(i).total_cmp(&size(j))
        })?;
        rows.swap(column, best);
        let lead = rows[column];
        if lead[column] == 0.0 {
            return None;
        }
        for row in rows.iter_mut().skip(column + 1) {
            let share = row[column] / lead[column];
            for (value, by) in row.iter_mut().zip(lead) {
                *value -= share * by;
            }
        }
    }
    let mut c = [0.0; 4];
    for i in (0..4).rev() {
        let known: f64 = (i + 1..4).map(|j| rows[i][j] * c[j]).sum();
        c[i] = (rows[i][4] - known) / rows[i][i];
    }
    Some(c)
}

const RING: &[Symbol] = &[
    symbol("P", &MPA_GAUGE, "pressure, gauge"),
    symbol("a", &MM, "outer radius"),
    symbol("b", &MM, "inner radius"),
    symbol("t", &MM, "plate"),
    symbol("nu", &ONE, "ratio of lateral to axial strain"),
];
const LIMITS: &[Limit] = &[Limit::within("b / a", 0.05, 0.95)];

const fn card(
    id: &'static str,
    law: &'static str,
    gives: (&'static str, &'static Unit, &'static str),
    eval: fn(&[f64]) -> Result<f64, Refused>,
) -> Card {
    Card {
        id,
        law: Law::Words(law),
        gives: symbol(gives.0, gives.1, gives.2),
        takes: RING,
        limits: LIMITS,
        spread: Spread::Unstated,
        cite: Cite {
            source: &STRESS_FORMULAS_7,
            place: "table 11.2, case 2, a ring under even pressure",
        },
        eval,
    }
}

fn of(v: &[f64]) -> Annulus {
    Annulus {
        p_mpa: v[0],
        a_mm: v[1],
        b_mm: v[2],
        t_mm: v[3],
        nu: v[4],
    }
}

fn told<T>(found: Option<T>, id: &'static str, v: &[f64]) -> Result<T, Refused> {
    found.ok_or(Refused {
        card: id,
        symbol: "b",
        value: v[2],
        why: "there is no ring",
    })
}

fn stress(v: &[f64], (outer, inner): (Edge, Edge), id: &'static str) -> Result<f64, Refused> {
    told(bent(of(v), outer, inner), id, v).map(|b| b.sigma_mpa)
}

/// Greatest bending stress of a ring whose edges do not turn.
pub static BOTH_FIXED: Card = card(
    "annulus.both-fixed",
    "sigma from the plate equation, neither edge turning",
    (
        "sigma",
        &MPA,
        "bending stress, both edges held from turning",
    ),
    |v| stress(v, PAIRS[0], BOTH_FIXED.id),
);

/// Greatest bending stress of a ring whose edges turn freely.
pub static BOTH_FREE: Card = card(
    "annulus.both-free",
    "sigma from the plate equation, both edges turning freely",
    ("sigma", &MPA, "bending stress, both edges free to turn"),
    |v| stress(v, PAIRS[1], BOTH_FREE.id),
);

/// Greatest bending stress of a ring whose outer edge alone turns.
pub static OUTER_FREE: Card = card(
    "annulus.outer-free",
    "sigma from the plate equation, the outer edge turning freely and the inner not",
    ("sigma", &MPA, "bending stress, outer edge free to turn"),
    |v| stress(v, PAIRS[2], OUTER_FREE.id),
);

/// Greatest bending stress of a ring whose inner edge alone turns.
pub static INNER_FREE: Card = card(
    "annulus.inner-free",
    "sigma from the plate equation, the inner edge turning freely and the outer not",
    ("sigma", &MPA, "bending stress, inner edge free to turn"),
    |v| stress(v, PAIRS[3], INNER_FREE.id),
);

/// Greatest load of the inner edge among the four pairs of edges.
#[must_use]
pub fn pull(ring: Annulus) -> Option<f64> {
    PAIRS
        .into_iter()
        .map(|(outer, inner)| bent(ring, outer, inner).map(|b| b.inner_n))
        .try_fold(0.0, |most, next| next.map(|n| f64::max(most, n)))
}

/// Greatest load that the inner edge takes, whichever edges turn.
pub static PULL: Card = card(
    "annulus.pull",
    "F from the plate equation, the greatest of four pairs of edges",
    ("F", &NEWTON, "pull on the flue"),
    |v| told(pull(of(v)), PULL.id, v),
);
