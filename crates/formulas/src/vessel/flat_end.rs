//! Family `end`: flat ends without stays, as supported discs, with the code's form beside.
//!
//! Sources: Formulas for Stress and Strain, table 11.2, case 10a; ASME VIII-1 UG-34 and UG-39. Bolted
//! covers and oblong ends are left out.

use super::positive;
use crate::sources::{ASME_VIII_1, STRESS_FORMULAS_7};
use reckoning::quantity::{MM, MM2, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&SUPPORTED_WALL, &UG34, &AREA];

const NOTHING: &str = "there must be an end, and stress that it may bear";

/// Least thickness of a supported disc; see [`SUPPORTED_WALL`].
#[must_use]
pub fn supported_wall(p_mpa: f64, a_mm: f64, nu: f64, sigma_mpa: f64) -> f64 {
    a_mm * (3.0 * (3.0 + nu) / 8.0 * p_mpa / sigma_mpa).sqrt()
}

/// Least thickness of a disc whose edge turns freely.
pub static SUPPORTED_WALL: Card = Card {
    id: "end.supported-wall",
    law: Law::Closed("t = a * sqrt(3 * (3 + nu) / 8 * P / sigma_b)"),
    gives: symbol("t", &MM, "least thickness"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("a", &MM, "radius of the disc"),
        symbol("nu", &ONE, "ratio of lateral to axial strain"),
        symbol("sigma_b", &MPA, "bending stress allowed"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &STRESS_FORMULAS_7,
        place: "table 11.2, case 10a, turned round",
    },
    eval: |v| {
        positive(
            supported_wall(v[0], v[1], v[2], v[3]),
            SUPPORTED_WALL.id,
            ("sigma_b", v[3]),
            NOTHING,
        )
    },
};

/// Thickness of a flat end by the code; see [`UG34`].
#[must_use]
pub fn ug34(d_mm: f64, c: f64, p_mpa: f64, s_mpa: f64, e: f64) -> f64 {
    d_mm * (c * p_mpa / (s_mpa * e)).sqrt()
}

/// Thickness of an unstayed flat end by the code.
pub static UG34: Card = Card {
    id: "end.ug34",
    law: Law::Closed("t = d * sqrt(C * P / (S * E))"),
    gives: symbol("t", &MM, "thickness by the code"),
    takes: &[
        symbol("d", &MM, "inside diameter"),
        symbol("C", &ONE, "constant for the edge"),
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("S", &MPA, "design stress"),
        symbol("E", &ONE, "joint efficiency"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-34(c)(2)",
    },
    eval: |v| {
        positive(
            ug34(v[0], v[1], v[2], v[3], v[4]),
            UG34.id,
            ("S", v[3]),
            NOTHING,
        )
    },
};

/// Metal to be replaced at an opening of a flat end; see [`AREA`].
#[must_use]
pub fn area(d_mm: f64, t_r_mm: f64, t_n_mm: f64, f_r: f64) -> f64 {
    0.5 * d_mm * t_r_mm + t_r_mm * t_n_mm * (1.0 - f_r)
}

/// Metal to be replaced at an opening of an unstayed flat end.
pub static AREA: Card = Card {
    id: "end.area",
    law: Law::Closed("A = 0.5 * d * t_r + t_r * t_n * (1 - f_r)"),
    gives: symbol("A", &MM2, "metal to be replaced"),
    takes: &[
        symbol("d", &MM, "finished bore"),
        symbol("t_r", &MM, "thickness asked of the end without it"),
        symbol("t_n", &MM, "wall of the bush"),
        symbol("f_r", &ONE, "strength of bush over end"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-39(b)(1)",
    },
    eval: |v| positive(area(v[0], v[1], v[2], v[3]), AREA.id, ("d", v[0]), NOTHING),
};
