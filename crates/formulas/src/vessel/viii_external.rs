//! Family `viii-external`: a tube under external pressure by the closed form of ASME VIII-2.
//!
//! Source: ASME VIII-2 clause 4.4.5. Stiffening rings and the material charts are left out. The
//! clause's smallest wall is judged by the rule set that applies it.

use super::positive;
use crate::sources::ASME_VIII_2;
use reckoning::quantity::{MM, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&LENGTH, &SHAPE, &ELASTIC, &CRITICAL, &FACTOR, &PRESSURE];

const NO_TUBE: &str = "there must be a wall, a diameter and a length";

/// Length parameter; see [`LENGTH`].
#[must_use]
pub fn length(l_mm: f64, d_o_mm: f64, t_mm: f64) -> f64 {
    l_mm / (0.5 * d_o_mm * t_mm).sqrt()
}

/// Length parameter of a tube.
pub static LENGTH: Card = Card {
    id: "viii-external.length",
    law: Law::Closed("M_x = L / sqrt(0.5 * D_o * t)"),
    gives: symbol("M_x", &ONE, "length parameter"),
    takes: &[
        symbol("L", &MM, "length between supports"),
        symbol("D_o", &MM, "outside diameter"),
        symbol("t", &MM, "wall"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.4.5",
    },
    eval: |v| positive(length(v[0], v[1], v[2]), LENGTH.id, ("t", v[2]), NO_TUBE),
};

/// Shape factor; see [`SHAPE`].
#[must_use]
pub fn shape(m_x: f64, d_o_mm: f64, t_mm: f64) -> f64 {
    if m_x <= 1.5 {
        1.0
    } else if m_x < 13.0 {
        0.92 / (m_x - 0.579)
    } else if m_x < 2.0 * (d_o_mm / t_mm).powf(0.94) {
        1.12 * m_x.powf(-1.058)
    } else {
        0.55 * t_mm / d_o_mm
    }
}

/// Shape factor of the elastic buckling stress.
pub static SHAPE: Card = Card {
    id: "viii-external.shape",
    law: Law::Closed(
        "C_h = cases(M_x <= 1.5, 1, M_x < 13, 0.92 / (M_x - 0.579), \
         M_x < 2 * (D_o / t)^0.94, 1.12 * M_x^-1.058, 0.55 * t / D_o)",
    ),
    gives: symbol("C_h", &ONE, "shape factor"),
    takes: &[
        symbol("M_x", &ONE, "length parameter"),
        symbol("D_o", &MM, "outside diameter"),
        symbol("t", &MM, "wall"),
    ],
    limits: &[Limit::at_most("D_o / t", 2000.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.4.5",
    },
    eval: |v| positive(shape(v[0], v[1], v[2]), SHAPE.id, ("t", v[2]), NO_TUBE),
};

/// Elastic buckling stress; see [`ELASTIC`].
#[must_use]
pub fn elastic(c_h: f64, e_mpa: f64, t_mm: f64, d_o_mm: f64) -> f64 {
    1.6 * c_h * e_mpa * t_mm / d_o_mm
}

/// Elastic hoop stress at which a tube buckles.
pub static ELASTIC: Card = Card {
    id: "viii-external.elastic",
    law: Law::Closed("F_he = 1.6 * C_h * E * t / D_o"),
    gives: symbol("F_he", &MPA, "elastic buckling stress"),
    takes: &[
        symbol("C_h", &ONE, "shape factor"),
        symbol("E", &MPA, "modulus of elasticity at metal temperature"),
        symbol("t", &MM, "wall"),
        symbol("D_o", &MM, "outside diameter"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.4.5",
    },
    eval: |v| {
        let f = elastic(v[0], v[1], v[2], v[3]);
        positive(f, ELASTIC.id, ("t", v[2]), NO_TUBE)
    },
};

/// Critical buckling stress; see [`CRITICAL`].
#[must_use]
pub fn critical(f_he_mpa: f64, s_y_mpa: f64) -> f64 {
    let ratio = f_he_mpa / s_y_mpa;
    if ratio <= 0.552 {
        f_he_mpa
    } else if ratio < 2.439 {
        0.7 * s_y_mpa * ratio.powf(0.4)
    } else {
        s_y_mpa
    }
}

/// Buckling stress with yielding taken in.
pub static CRITICAL: Card = Card {
    id: "viii-external.critical",
    law: Law::Closed(
        "F_ic = cases(F_he / S_y <= 0.552, F_he, \
         F_he / S_y < 2.439, 0.7 * S_y * (F_he / S_y)^0.4, S_y)",
    ),
    gives: symbol("F_ic", &MPA, "critical buckling stress"),
    takes: &[
        symbol("F_he", &MPA, "elastic buckling stress"),
        symbol("S_y", &MPA, "yield stress at metal temperature"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.4.3",
    },
    eval: |v| positive(critical(v[0], v[1]), CRITICAL.id, ("S_y", v[1]), NO_TUBE),
};

/// Design factor; see [`FACTOR`].
#[must_use]
pub fn factor(f_ic_mpa: f64, s_y_mpa: f64) -> f64 {
    let ratio = f_ic_mpa / s_y_mpa;
    if ratio <= 0.55 {
        2.0
    } else if ratio < 1.0 {
        2.407 - 0.741 * ratio
    } else {
        1.667
    }
}

/// Design factor on the critical stress.
pub static FACTOR: Card = Card {
    id: "viii-external.factor",
    law: Law::Closed(
        "FS = cases(F_ic / S_y <= 0.55, 2, F_ic / S_y < 1, 2.407 - 0.741 * F_ic / S_y, 1.667)",
    ),
    gives: symbol("FS", &ONE, "design factor"),
    takes: &[
        symbol("F_ic", &MPA, "critical buckling stress"),
        symbol("S_y", &MPA, "yield stress at metal temperature"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.4.2",
    },
    eval: |v| positive(factor(v[0], v[1]), FACTOR.id, ("S_y", v[1]), NO_TUBE),
};

/// Allowable external pressure; see [`PRESSURE`].
#[must_use]
pub fn pressure(f_ic_mpa: f64, fs: f64, t_mm: f64, d_o_mm: f64) -> f64 {
    2.0 * (f_ic_mpa / fs) * t_mm / d_o_mm
}

/// Allowable external pressure of a tube.
pub static PRESSURE: Card = Card {
    id: "viii-external.pressure",
    law: Law::Closed("P_a = 2 * F_ic / FS * t / D_o"),
    gives: symbol("P_a", &MPA_GAUGE, "allowable external pressure"),
    takes: &[
        symbol("F_ic", &MPA, "critical buckling stress"),
        symbol("FS", &ONE, "design factor"),
        symbol("t", &MM, "wall"),
        symbol("D_o", &MM, "outside diameter"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.4.5",
    },
    eval: |v| {
        let p = pressure(v[0], v[1], v[2], v[3]);
        positive(p, PRESSURE.id, ("t", v[2]), NO_TUBE)
    },
};
