//! The grain that a stream of gas just carries.

use reckoning::quantity::{KG_PER_M3, M, M_PER_S, ONE, STANDARD_GRAVITY};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::sources::{DERIVED, thermal};

/// Drag coefficient of a sphere at a Reynolds number; see [`DRAG_COEFFICIENT`].
#[must_use]
pub fn drag_coefficient(re: f64) -> f64 {
    24.0 / re * (1.0 + 0.15 * re.powf(0.687))
}

/// Drag coefficient of a sphere.
pub static DRAG_COEFFICIENT: Card = Card {
    id: "bed.drag-coefficient",
    law: Law::Closed("C_d = 24 / Re * (1 + 0.15 * Re^0.687)"),
    gives: symbol("C_d", &ONE, "drag coefficient of a sphere"),
    takes: &[symbol(
        "Re",
        &ONE,
        "Reynolds number of the sphere in the stream",
    )],
    limits: &[Limit::within("Re", 0.0, 800.0)],
    spread: Spread::Percent(5.0),
    cite: Cite {
        source: &thermal::VDI_77_DRAG,
        place: "formula for the drag of spheres",
    },
    eval: |v| Ok(drag_coefficient(v[0])),
};

/// Size of the grain whose weight is its drag, m; see [`CARRIED_SIZE`].
#[must_use]
pub fn carried_size(c_d: f64, rho: f64, u: f64, rho_p: f64) -> f64 {
    0.75 * c_d * rho * u * u / (STANDARD_GRAVITY * (rho_p - rho))
}

/// Size of the grain whose weight is its drag.
pub static CARRIED_SIZE: Card = Card {
    id: "bed.carried-size",
    law: Law::Closed("d = 0.75 * C_d * rho * u^2 / (g_n * (rho_p - rho))"),
    gives: symbol("d", &M, "size of the grain that the stream just carries"),
    takes: &[
        symbol("C_d", &ONE, "drag coefficient of a sphere"),
        symbol("rho", &KG_PER_M3, "density of the gas"),
        symbol("u", &M_PER_S, "speed of the gas"),
        symbol("rho_p", &KG_PER_M3, "density of the grain"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "weight of a sphere less that of the gas it displaces, against its drag",
    },
    eval: |v| Ok(carried_size(v[0], v[1], v[2], v[3])),
};
