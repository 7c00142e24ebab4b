//! Family `stay`: rods and brazed smoke tubes that hold two plates together.
//!
//! Sources: ASME VIII-1 UG-50 for the area of a stay; statics for the rest. Screwed stays,
//! girders and the bending of firebox stays are left out.

use super::positive;
use crate::sources::{ASME_VIII_1, DERIVED};
use reckoning::quantity::{MM, MM2, MPA, MPA_GAUGE, NEWTON};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &AREA,
    &TUBE_LOAD_TRIANGLE,
    &TUBE_LOAD_SQUARE,
    &TUBE_STRESS,
    &TUBE_AREA,
    &JOINT_SHEAR,
];

const NO_STAY: &str = "there must be a load and something that holds it";

/// Area that a stay must have; see [`AREA`].
#[must_use]
pub fn area(f_n: f64, s_mpa: f64) -> f64 {
    1.1 * f_n / s_mpa
}

/// Least cross-section of a stay.
pub static AREA: Card = Card {
    id: "stay.area",
    law: Law::Closed("A = 1.1 * F / S"),
    gives: symbol("A", &MM2, "least cross-section of the stay"),
    takes: &[
        symbol("F", &NEWTON, "load on the stay"),
        symbol("S", &MPA, "allowable stress at design temperature"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-50",
    },
    eval: |v| positive(area(v[0], v[1]), AREA.id, ("F", v[0]), NO_STAY),
};

/// Pull of a tube in a triangular nest; see [`TUBE_LOAD_TRIANGLE`].
#[must_use]
pub fn tube_load_triangle(p_mpa: f64, pitch_mm: f64, d_o_mm: f64) -> f64 {
    p_mpa * (3.0_f64.sqrt() / 2.0 * pitch_mm * pitch_mm - PI / 4.0 * d_o_mm * d_o_mm)
}

/// Pull of one tube in an even triangular nest: the pressure on the plate it has to itself.
pub static TUBE_LOAD_TRIANGLE: Card = Card {
    id: "stay.tube-load-triangle",
    law: Law::Closed("F = P * (sqrt(3) / 2 * p^2 - pi / 4 * d_o^2)"),
    gives: symbol("F", &NEWTON, "pull of the tube"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("p", &MM, "pitch of the tubes"),
        symbol("d_o", &MM, "outside diameter of the tubes"),
    ],
    limits: &[Limit::at_least("p / d_o", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "cell of an even triangular nest",
    },
    eval: |v| {
        let f = tube_load_triangle(v[0], v[1], v[2]);
        positive(f, TUBE_LOAD_TRIANGLE.id, ("p", v[1]), NO_STAY)
    },
};

/// Pull of a tube in a square nest; see [`TUBE_LOAD_SQUARE`].
#[must_use]
pub fn tube_load_square(p_mpa: f64, pitch_mm: f64, d_o_mm: f64) -> f64 {
    p_mpa * (pitch_mm * pitch_mm - PI / 4.0 * d_o_mm * d_o_mm)
}

/// Pull of one tube or stay in a square field: the pressure on the plate it has to itself.
pub static TUBE_LOAD_SQUARE: Card = Card {
    id: "stay.tube-load-square",
    law: Law::Closed("F = P * (p^2 - pi / 4 * d_o^2)"),
    gives: symbol("F", &NEWTON, "pull of the tube or stay"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("p", &MM, "pitch"),
        symbol("d_o", &MM, "outside diameter"),
    ],
    limits: &[Limit::at_least("p / d_o", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "cell of a square field",
    },
    eval: |v| {
        let f = tube_load_square(v[0], v[1], v[2]);
        positive(f, TUBE_LOAD_SQUARE.id, ("p", v[1]), NO_STAY)
    },
};

/// Pull over the wall of a tube; see [`TUBE_STRESS`].
#[must_use]
pub fn tube_stress(f_n: f64, d_o_mm: f64, t_mm: f64) -> f64 {
    f_n / (PI * (d_o_mm - t_mm) * t_mm)
}

/// Axial stress in the wall of a tube that acts as a stay.
pub static TUBE_STRESS: Card = Card {
    id: "stay.tube-stress",
    law: Law::Closed("sigma = F / (pi * (d_o - t) * t)"),
    gives: symbol("sigma", &MPA, "axial stress in the tube"),
    takes: &[
        symbol("F", &NEWTON, "pull of the tube"),
        symbol("d_o", &MM, "outside diameter of the tube"),
        symbol("t", &MM, "wall of the tube"),
    ],
    limits: &[Limit::at_most("t / d_o", 0.5)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "load over cross-section",
    },
    eval: |v| {
        let s = tube_stress(v[0], v[1], v[2]);
        positive(s, TUBE_STRESS.id, ("t", v[2]), NO_STAY)
    },
};

/// Shear in the braze of a stay; see [`JOINT_SHEAR`].
#[must_use]
pub fn joint_shear(f_n: f64, d_mm: f64, t_mm: f64) -> f64 {
    f_n / (PI * d_mm * t_mm)
}

/// Shear in the braze of a tube or stay through a plate.
pub static JOINT_SHEAR: Card = Card {
    id: "stay.joint-shear",
    law: Law::Closed("tau = F / (pi * d * t)"),
    gives: symbol("tau", &MPA, "shear in the braze"),
    takes: &[
        symbol("F", &NEWTON, "pull of the tube or stay"),
        symbol("d", &MM, "diameter of the joint"),
        symbol("t", &MM, "plate"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "load over joint area",
    },
    eval: |v| {
        let s = joint_shear(v[0], v[1], v[2]);
        positive(s, JOINT_SHEAR.id, ("t", v[2]), NO_STAY)
    },
};

/// Metal of a tube; see [`TUBE_AREA`].
#[must_use]
pub fn tube_area(d_o_mm: f64, t_mm: f64) -> f64 {
    PI * (d_o_mm - t_mm) * t_mm
}

/// Cross-section of the wall of a tube.
pub static TUBE_AREA: Card = Card {
    id: "stay.tube-area",
    law: Law::Closed("A_t = pi * (d_o - t) * t"),
    gives: symbol("A_t", &MM2, "cross-section of the tube"),
    takes: &[
        symbol("d_o", &MM, "outside diameter of the tube"),
        symbol("t", &MM, "wall of the tube"),
    ],
    limits: &[Limit::at_most("t / d_o", 0.5)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a tube",
    },
    eval: |v| {
        positive(
            tube_area(v[0], v[1]),
            TUBE_AREA.id,
            ("t", v[1]),
            "there must be a wall",
        )
    },
};
