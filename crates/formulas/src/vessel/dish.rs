//! Family `dish`: dished ends with pressure on the hollow or on the round side.
//!
//! Sources: ASME VIII-1 UG-32 and UG-33, ASME VIII-2 4.4.7, from memory. Flanges of dished ends, conical ends and knuckles pressed from outside are left
//! out.

use super::positive;
use crate::sources::{ASME_VIII_1, ASME_VIII_2, DERIVED};
use reckoning::quantity::{MM, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &HEMISPHERE,
    &ELLIPSOID,
    &KNUCKLE,
    &TORISPHERE,
    &AS_HOLLOW,
    &SPHERE_OF_ELLIPSOID,
    &ELASTIC,
    &CRITICAL,
    &ROUND,
    &CAP,
];

const NO_DISH: &str = "there must be a dish";
const TOO_MUCH: &str = "the pressure is more than the metal can bear at any thickness";
/// Least thickness of half a sphere; see [`HEMISPHERE`].
#[must_use]
pub fn hemisphere(p_mpa: f64, l_mm: f64, s_mpa: f64, e: f64) -> f64 {
    p_mpa * l_mm / (2.0 * s_mpa * e - 0.2 * p_mpa)
}

/// Least thickness of half a sphere with pressure on its hollow side.
pub static HEMISPHERE: Card = Card {
    id: "dish.hemisphere",
    law: Law::Closed("t = P * L / (2 * S * E - 0.2 * P)"),
    gives: symbol("t", &MM, "least thickness"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("L", &MM, "inside radius"),
        symbol("S", &MPA, "design stress"),
        symbol("E", &ONE, "joint efficiency"),
    ],
    limits: &[Limit::at_most("t / L", 0.356)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-32(f)",
    },
    eval: |v| {
        positive(
            hemisphere(v[0], v[1], v[2], v[3]),
            HEMISPHERE.id,
            ("S", v[2]),
            TOO_MUCH,
        )
    },
};

/// Least thickness of half an ellipsoid; see [`ELLIPSOID`].
#[must_use]
pub fn ellipsoid(p_mpa: f64, d_mm: f64, s_mpa: f64, e: f64) -> f64 {
    p_mpa * d_mm / (2.0 * s_mpa * e - 0.2 * p_mpa)
}

/// Least thickness of half an ellipsoid of two to one, pressure on its hollow side.
pub static ELLIPSOID: Card = Card {
    id: "dish.ellipsoid",
    law: Law::Closed("t = P * D / (2 * S * E - 0.2 * P)"),
    gives: symbol("t", &MM, "least thickness"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("D", &MM, "inside diameter"),
        symbol("S", &MPA, "design stress"),
        symbol("E", &ONE, "joint efficiency"),
    ],
    limits: &[Limit::at_least("t / D", 0.002)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-32(d)",
    },
    eval: |v| {
        positive(
            ellipsoid(v[0], v[1], v[2], v[3]),
            ELLIPSOID.id,
            ("S", v[2]),
            TOO_MUCH,
        )
    },
};

/// Factor of the knuckle; see [`KNUCKLE`].
#[must_use]
pub fn knuckle(l_mm: f64, r_mm: f64) -> f64 {
    0.25 * (3.0 + (l_mm / r_mm).sqrt())
}

/// Factor of the knuckle of a torisphere.
pub static KNUCKLE: Card = Card {
    id: "dish.knuckle",
    law: Law::Closed("M = 0.25 * (3 + sqrt(L / r))"),
    gives: symbol("M", &ONE, "factor of the knuckle"),
    takes: &[
        symbol("L", &MM, "inside radius of the crown"),
        symbol("r", &MM, "inside radius of the knuckle"),
    ],
    limits: &[Limit::at_most("L / r", 16.67)],
    spread: Spread::Exact,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "appendix 1-4(d)",
    },
    eval: |v| positive(knuckle(v[0], v[1]), KNUCKLE.id, ("r", v[1]), NO_DISH),
};

/// Least thickness of a torisphere; see [`TORISPHERE`].
#[must_use]
pub fn torisphere(p_mpa: f64, l_mm: f64, m: f64, s_mpa: f64, e: f64) -> f64 {
    p_mpa * l_mm * m / (2.0 * s_mpa * e - 0.2 * p_mpa)
}

/// Least thickness of a torisphere with pressure on its hollow side.
pub static TORISPHERE: Card = Card {
    id: "dish.torisphere",
    law: Law::Closed("t = P * L * M / (2 * S * E - 0.2 * P)"),
    gives: symbol("t", &MM, "least thickness"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("L", &MM, "inside radius of the crown"),
        symbol("M", &ONE, "factor of the knuckle"),
        symbol("S", &MPA, "design stress"),
        symbol("E", &ONE, "joint efficiency"),
    ],
    limits: &[Limit::at_least("t / L", 0.002)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "appendix 1-4(d)",
    },
    eval: |v| {
        positive(
            torisphere(v[0], v[1], v[2], v[3], v[4]),
            TORISPHERE.id,
            ("S", v[3]),
            TOO_MUCH,
        )
    },
};

/// Pressure at which a dish pressed on its round side is checked as if on its hollow side; see [`AS_HOLLOW`].
#[must_use]
pub fn as_hollow(p_mpa: f64) -> f64 {
    1.67 * p_mpa
}

/// Pressure at which a dish that is pressed on its round side is checked as if on its hollow side.
pub static AS_HOLLOW: Card = Card {
    id: "dish.as-hollow",
    law: Law::Closed("P_h = 1.67 * P"),
    gives: symbol(
        "P_h",
        &MPA_GAUGE,
        "pressure for the formula of the hollow side",
    ),
    takes: &[symbol("P", &MPA_GAUGE, "pressure, gauge")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-33(a)(1)",
    },
    eval: |v| positive(as_hollow(v[0]), AS_HOLLOW.id, ("P", v[0]), TOO_MUCH),
};

/// Sphere that stands for half an ellipsoid; see [`SPHERE_OF_ELLIPSOID`].
#[must_use]
pub fn sphere_of_ellipsoid(d_o_mm: f64) -> f64 {
    0.9 * d_o_mm
}

/// Outside radius of the sphere that stands for half an ellipsoid of two to one.
pub static SPHERE_OF_ELLIPSOID: Card = Card {
    id: "dish.sphere-of-ellipsoid",
    law: Law::Closed("R_o = 0.9 * D_o"),
    gives: symbol(
        "R_o",
        &MM,
        "outside radius of the sphere that stands for it",
    ),
    takes: &[symbol("D_o", &MM, "outside diameter")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-33, table of K_o",
    },
    eval: |v| {
        positive(
            sphere_of_ellipsoid(v[0]),
            SPHERE_OF_ELLIPSOID.id,
            ("D_o", v[0]),
            NO_DISH,
        )
    },
};

/// Elastic buckling stress of a sphere; see [`ELASTIC`].
#[must_use]
pub fn elastic(e_mpa: f64, t_mm: f64, r_o_mm: f64) -> f64 {
    0.075 * e_mpa * t_mm / r_o_mm
}

/// Elastic buckling stress of a sphere pressed from outside, imperfections taken in.
pub static ELASTIC: Card = Card {
    id: "dish.elastic",
    law: Law::Closed("F_he = 0.075 * E * t / R_o"),
    gives: symbol("F_he", &MPA, "elastic buckling stress"),
    takes: &[
        symbol("E", &MPA, "modulus of elasticity at metal temperature"),
        symbol("t", &MM, "thickness at its thinnest"),
        symbol("R_o", &MM, "outside radius"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.4.7",
    },
    eval: |v| {
        positive(
            elastic(v[0], v[1], v[2]),
            ELASTIC.id,
            ("R_o", v[2]),
            NO_DISH,
        )
    },
};

/// Critical buckling stress of a sphere; see [`CRITICAL`].
#[must_use]
pub fn critical(f_he_mpa: f64, s_y_mpa: f64) -> f64 {
    let ratio = f_he_mpa / s_y_mpa;
    if ratio >= 6.25 {
        s_y_mpa
    } else if ratio > 1.6 {
        1.31 * s_y_mpa / (1.15 + s_y_mpa / f_he_mpa)
    } else if ratio > 0.55 {
        0.18 * f_he_mpa + 0.45 * s_y_mpa
    } else {
        f_he_mpa
    }
}

/// Buckling stress of a sphere with yielding taken in.
pub static CRITICAL: Card = Card {
    id: "dish.critical",
    law: Law::Closed(
        "F_ic = cases(F_he / S_y >= 6.25, S_y, F_he / S_y > 1.6, 1.31 * S_y / (1.15 + S_y / F_he), F_he / S_y > 0.55, 0.18 * F_he + 0.45 * S_y, F_he)",
    ),
    gives: symbol("F_ic", &MPA, "critical buckling stress"),
    takes: &[
        symbol("F_he", &MPA, "elastic buckling stress"),
        symbol("S_y", &MPA, "yield stress at metal temperature"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.4.7",
    },
    eval: |v| positive(critical(v[0], v[1]), CRITICAL.id, ("S_y", v[1]), NO_DISH),
};

/// Allowable pressure on the round side; see [`ROUND`].
#[must_use]
pub fn round(f_ic_mpa: f64, fs: f64, t_mm: f64, r_o_mm: f64) -> f64 {
    2.0 * (f_ic_mpa / fs) * t_mm / r_o_mm
}

/// Allowable pressure on the round side of a sphere.
pub static ROUND: Card = Card {
    id: "dish.round",
    law: Law::Closed("P_a = 2 * F_ic / FS * t / R_o"),
    gives: symbol("P_a", &MPA_GAUGE, "allowable pressure on the round side"),
    takes: &[
        symbol("F_ic", &MPA, "critical buckling stress"),
        symbol("FS", &ONE, "design factor"),
        symbol("t", &MM, "thickness at its thinnest"),
        symbol("R_o", &MM, "outside radius"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_2,
        place: "4.4.7",
    },
    eval: |v| {
        positive(
            round(v[0], v[1], v[2], v[3]),
            ROUND.id,
            ("R_o", v[3]),
            NO_DISH,
        )
    },
};

/// Pressure at which a sphere is at its design stress; see [`CAP`].
#[must_use]
pub fn cap(f_mpa: f64, t_mm: f64, r_o_mm: f64) -> f64 {
    2.0 * f_mpa * t_mm / r_o_mm
}

/// Pressure on the round side at which a sphere is compressed to its design stress.
pub static CAP: Card = Card {
    id: "dish.cap",
    law: Law::Closed("P = 2 * f * t / R_o"),
    gives: symbol("P", &MPA_GAUGE, "pressure at the design stress"),
    takes: &[
        symbol("f", &MPA, "design stress"),
        symbol("t", &MM, "thickness at its thinnest"),
        symbol("R_o", &MM, "outside radius"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "membrane of a sphere",
    },
    eval: |v| positive(cap(v[0], v[1], v[2]), CAP.id, ("R_o", v[2]), NO_DISH),
};
