//! Family `plate`: discs and strips of plate between supports.
//!
//! Source: Formulas for Stress and Strain, table 11.2, cases 10a and 10b, and the beam. Rings
//! and oblong panels are left out.

use super::positive;
use crate::sources::{DERIVED, STRESS_FORMULAS_7};
use reckoning::quantity::{MM, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &CLAMPED_EDGE,
    &CLAMPED_CENTRE,
    &SUPPORTED,
    &STRIP_SUPPORTED,
    &STRIP_CLAMPED,
    &STRIP_WALL,
    &BETWEEN_TRIANGLE,
    &BETWEEN_SQUARE,
];

const NO_PLATE: &str = "there must be a plate";
const TOUCHING: &str = "the tubes touch";

/// Bending stress at the edge of a clamped disc; see [`CLAMPED_EDGE`].
#[must_use]
pub fn clamped_edge(p_mpa: f64, a_mm: f64, t_mm: f64) -> f64 {
    0.75 * p_mpa * (a_mm / t_mm).powi(2)
}

/// Bending stress at the edge of a clamped disc under even pressure.
pub static CLAMPED_EDGE: Card = Card {
    id: "plate.clamped-edge",
    law: Law::Closed("sigma = 0.75 * P * (a / t)^2"),
    gives: symbol("sigma", &MPA, "bending stress at the clamped edge"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("a", &MM, "radius of the disc"),
        symbol("t", &MM, "plate"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &STRESS_FORMULAS_7,
        place: "table 11.2, case 10b",
    },
    eval: |v| {
        let s = clamped_edge(v[0], v[1], v[2]);
        positive(s, CLAMPED_EDGE.id, ("t", v[2]), NO_PLATE)
    },
};

/// Bending stress at the centre of a clamped disc; see [`CLAMPED_CENTRE`].
#[must_use]
pub fn clamped_centre(p_mpa: f64, a_mm: f64, t_mm: f64, nu: f64) -> f64 {
    3.0 * (1.0 + nu) / 8.0 * p_mpa * (a_mm / t_mm).powi(2)
}

/// Bending stress at the centre of a clamped disc under even pressure.
pub static CLAMPED_CENTRE: Card = Card {
    id: "plate.clamped-centre",
    law: Law::Closed("sigma = 3 * (1 + nu) / 8 * P * (a / t)^2"),
    gives: symbol("sigma", &MPA, "bending stress at the centre, clamped"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("a", &MM, "radius of the disc"),
        symbol("t", &MM, "plate"),
        symbol("nu", &ONE, "ratio of lateral to axial strain"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &STRESS_FORMULAS_7,
        place: "table 11.2, case 10b",
    },
    eval: |v| {
        let s = clamped_centre(v[0], v[1], v[2], v[3]);
        positive(s, CLAMPED_CENTRE.id, ("t", v[2]), NO_PLATE)
    },
};

/// Bending stress at the centre of a supported disc; see [`SUPPORTED`].
#[must_use]
pub fn supported(p_mpa: f64, a_mm: f64, t_mm: f64, nu: f64) -> f64 {
    3.0 * (3.0 + nu) / 8.0 * p_mpa * (a_mm / t_mm).powi(2)
}

/// Bending stress at the centre of a disc whose edge is free to turn.
pub static SUPPORTED: Card = Card {
    id: "plate.supported-centre",
    law: Law::Closed("sigma = 3 * (3 + nu) / 8 * P * (a / t)^2"),
    gives: symbol("sigma", &MPA, "bending stress at the centre, supported"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("a", &MM, "radius of the disc"),
        symbol("t", &MM, "plate"),
        symbol("nu", &ONE, "ratio of lateral to axial strain"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &STRESS_FORMULAS_7,
        place: "table 11.2, case 10a",
    },
    eval: |v| {
        let s = supported(v[0], v[1], v[2], v[3]);
        positive(s, SUPPORTED.id, ("t", v[2]), NO_PLATE)
    },
};

/// Bending stress of a strip whose edges may turn; see [`STRIP_SUPPORTED`].
#[must_use]
pub fn strip_supported(p_mpa: f64, m_mm: f64, t_mm: f64) -> f64 {
    0.75 * p_mpa * (m_mm / t_mm).powi(2)
}

/// Bending stress of a long strip of plate, its edges free to turn.
pub static STRIP_SUPPORTED: Card = Card {
    id: "plate.strip-supported",
    law: Law::Closed("sigma = 0.75 * P * (m / t)^2"),
    gives: symbol("sigma", &MPA, "bending stress of the strip, supported"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("m", &MM, "width of the strip between supports"),
        symbol("t", &MM, "plate"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "supported beam under even load, M = P m^2 / 8",
    },
    eval: |v| {
        let s = strip_supported(v[0], v[1], v[2]);
        positive(s, STRIP_SUPPORTED.id, ("t", v[2]), NO_PLATE)
    },
};

/// Bending stress of a strip whose edges are held; see [`STRIP_CLAMPED`].
#[must_use]
pub fn strip_clamped(p_mpa: f64, m_mm: f64, t_mm: f64) -> f64 {
    0.5 * p_mpa * (m_mm / t_mm).powi(2)
}

/// Bending stress of a long strip of plate, its edges held.
pub static STRIP_CLAMPED: Card = Card {
    id: "plate.strip-clamped",
    law: Law::Closed("sigma = 0.5 * P * (m / t)^2"),
    gives: symbol("sigma", &MPA, "bending stress of the strip, clamped"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("m", &MM, "width of the strip between supports"),
        symbol("t", &MM, "plate"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "clamped beam under even load, M = P m^2 / 12",
    },
    eval: |v| {
        let s = strip_clamped(v[0], v[1], v[2]);
        positive(s, STRIP_CLAMPED.id, ("t", v[2]), NO_PLATE)
    },
};

/// Free circle between three tubes; see [`BETWEEN_TRIANGLE`].
#[must_use]
pub fn between_triangle(p_mm: f64, d_o_mm: f64) -> f64 {
    2.0 * p_mm / 3.0_f64.sqrt() - d_o_mm
}

/// Largest circle of bare plate between three tubes of an even triangular nest.
pub static BETWEEN_TRIANGLE: Card = Card {
    id: "plate.between-triangle",
    law: Law::Closed("d_f = 2 * p / sqrt(3) - d_o"),
    gives: symbol("d_f", &MM, "free circle between the tubes"),
    takes: &[
        symbol("p", &MM, "pitch of the tubes"),
        symbol("d_o", &MM, "outside diameter of the tubes"),
    ],
    limits: &[Limit::at_least("p / d_o", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "circle through the centres of an even triangle, less a tube",
    },
    eval: |v| {
        let d = between_triangle(v[0], v[1]);
        positive(d, BETWEEN_TRIANGLE.id, ("p", v[0]), TOUCHING)
    },
};

/// Free circle between four tubes; see [`BETWEEN_SQUARE`].
#[must_use]
pub fn between_square(p_mm: f64, d_o_mm: f64) -> f64 {
    2.0_f64.sqrt() * p_mm - d_o_mm
}

/// Largest circle of bare plate between four tubes of a square nest.
pub static BETWEEN_SQUARE: Card = Card {
    id: "plate.between-square",
    law: Law::Closed("d_f = sqrt(2) * p - d_o"),
    gives: symbol("d_f", &MM, "free circle between the tubes"),
    takes: &[
        symbol("p", &MM, "pitch of the tubes"),
        symbol("d_o", &MM, "outside diameter of the tubes"),
    ],
    limits: &[Limit::at_least("p / d_o", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "circle through the centres of a square, less a tube",
    },
    eval: |v| {
        let d = between_square(v[0], v[1]);
        positive(d, BETWEEN_SQUARE.id, ("p", v[0]), TOUCHING)
    },
};

/// Thickness of a supported strip; see [`STRIP_WALL`].
#[must_use]
pub fn strip_wall(p_mpa: f64, m_mm: f64, sigma_mpa: f64) -> f64 {
    m_mm * (0.75 * p_mpa / sigma_mpa).sqrt()
}

/// Least thickness of a long strip of plate, its edges free to turn.
pub static STRIP_WALL: Card = Card {
    id: "plate.strip-wall",
    law: Law::Closed("t = m * sqrt(0.75 * P / sigma_b)"),
    gives: symbol("t", &MM, "least plate of the strip"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("m", &MM, "width of the strip between supports"),
        symbol("sigma_b", &MPA, "bending stress allowed"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "supported beam under even load, solved for its depth",
    },
    eval: |v| {
        positive(
            strip_wall(v[0], v[1], v[2]),
            STRIP_WALL.id,
            ("P", v[0]),
            "there must be a load",
        )
    },
};
