//! Family `vessel`: cylindrical shells under internal pressure.
//!
//! Sources: EN 13445-3 clause 7.4.2; ASME VIII-1 UG-27. Thick walls, cones and dished ends are
//! left out.

use super::positive;
use crate::sources::{ASME_VIII_1, EN_13445_3};
use reckoning::quantity::{MM, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &SHELL_WALL,
    &SHELL_WALL_OUTSIDE,
    &UG27_HOOP,
    &UG27_HOOP_OUTSIDE,
    &UG27_AXIAL,
    &MEMBRANE,
];

const TOO_HIGH: &str = "the pressure is more than any wall of this stress can hold";

/// Least wall of a cylindrical shell; see [`SHELL_WALL`].
#[must_use]
pub fn shell_wall(p_mpa: f64, d_i_mm: f64, f_mpa: f64, z: f64) -> f64 {
    p_mpa * d_i_mm / (2.0 * f_mpa * z - p_mpa)
}

/// Least wall of a cylindrical shell under internal pressure, EN form.
pub static SHELL_WALL: Card = Card {
    id: "vessel.shell-wall",
    law: Law::Closed("e = P * D_i / (2 * f * z - P)"),
    gives: symbol("e", &MM, "least wall, before allowances"),
    takes: &[
        symbol("P", &MPA_GAUGE, "design pressure, gauge"),
        symbol("D_i", &MM, "inside diameter"),
        symbol("f", &MPA, "design stress at design temperature"),
        symbol("z", &ONE, "joint coefficient"),
    ],
    limits: &[Limit::at_most("e / (D_i + 2 * e)", 0.16)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "7.4.2",
    },
    eval: |v| {
        let wall = shell_wall(v[0], v[1], v[2], v[3]);
        positive(wall, SHELL_WALL.id, ("P", v[0]), TOO_HIGH)
    },
};

/// Least wall for hoop stress; see [`UG27_HOOP`].
#[must_use]
pub fn ug27_hoop(p_mpa: f64, r_mm: f64, s_mpa: f64, e: f64) -> f64 {
    p_mpa * r_mm / (s_mpa * e - 0.6 * p_mpa)
}

/// Least wall of a cylindrical shell against hoop stress, by longitudinal joints.
pub static UG27_HOOP: Card = Card {
    id: "vessel.ug27-hoop",
    law: Law::Closed("t = P * R / (S * E - 0.6 * P)"),
    gives: symbol("t", &MM, "least wall, before allowances"),
    takes: &[
        symbol("P", &MPA_GAUGE, "design pressure, gauge"),
        symbol("R", &MM, "inside radius"),
        symbol("S", &MPA, "allowable stress at design temperature"),
        symbol("E", &ONE, "efficiency of longitudinal joint or ligament"),
    ],
    limits: &[
        Limit::at_most("t / R", 0.5),
        Limit::at_most("P / (S * E)", 0.385),
    ],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-27(c)(1)",
    },
    eval: |v| {
        let wall = ug27_hoop(v[0], v[1], v[2], v[3]);
        positive(wall, UG27_HOOP.id, ("P", v[0]), TOO_HIGH)
    },
};

/// Least wall for axial stress; see [`UG27_AXIAL`].
#[must_use]
pub fn ug27_axial(p_mpa: f64, r_mm: f64, s_mpa: f64, e: f64) -> f64 {
    p_mpa * r_mm / (2.0 * s_mpa * e + 0.4 * p_mpa)
}

/// Least wall of a cylindrical shell against axial stress, by circumferential joints.
pub static UG27_AXIAL: Card = Card {
    id: "vessel.ug27-axial",
    law: Law::Closed("t = P * R / (2 * S * E + 0.4 * P)"),
    gives: symbol("t", &MM, "least wall, before allowances"),
    takes: &[
        symbol("P", &MPA_GAUGE, "design pressure, gauge"),
        symbol("R", &MM, "inside radius"),
        symbol("S", &MPA, "allowable stress at design temperature"),
        symbol("E", &ONE, "efficiency of circumferential joint"),
    ],
    limits: &[
        Limit::at_most("t / R", 0.5),
        Limit::at_most("P / (S * E)", 1.25),
    ],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-27(c)(2)",
    },
    eval: |v| {
        let wall = ug27_axial(v[0], v[1], v[2], v[3]);
        positive(wall, UG27_AXIAL.id, ("P", v[0]), "nothing to hold")
    },
};

/// Membrane stress of a cylindrical shell; see [`MEMBRANE`].
#[must_use]
pub fn membrane(p_mpa: f64, d_m_mm: f64, e_mm: f64) -> f64 {
    p_mpa * d_m_mm / (2.0 * e_mm)
}

/// Hoop membrane stress of a cylindrical shell, as at the water test.
pub static MEMBRANE: Card = Card {
    id: "vessel.membrane",
    law: Law::Closed("sigma = P * D_m / (2 * e)"),
    gives: symbol("sigma", &MPA, "hoop membrane stress"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("D_m", &MM, "mean diameter"),
        symbol("e", &MM, "wall"),
    ],
    limits: &[Limit::at_most("e / (D_m + e)", 0.16)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &EN_13445_3,
        place: "7.4.2, solved for the stress",
    },
    eval: |v| {
        let stress = membrane(v[0], v[1], v[2]);
        positive(stress, MEMBRANE.id, ("e", v[2]), "there must be a wall")
    },
};

/// Least wall of a cylindrical shell from its outside diameter; see [`SHELL_WALL_OUTSIDE`].
#[must_use]
pub fn shell_wall_outside(p_mpa: f64, d_e_mm: f64, f_mpa: f64, z: f64) -> f64 {
    p_mpa * d_e_mm / (2.0 * f_mpa * z + p_mpa)
}

/// Least wall of a cylindrical shell under internal pressure, EN form from the outside diameter.
pub static SHELL_WALL_OUTSIDE: Card = Card {
    id: "vessel.shell-wall-outside",
    law: Law::Closed("e = P * D_e / (2 * f * z + P)"),
    gives: symbol("e", &MM, "least wall, before allowances"),
    takes: &[
        symbol("P", &MPA_GAUGE, "design pressure, gauge"),
        symbol("D_e", &MM, "outside diameter"),
        symbol("f", &MPA, "design stress at design temperature"),
        symbol("z", &ONE, "joint coefficient"),
    ],
    limits: &[Limit::at_most("e / D_e", 0.16)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "7.4.2",
    },
    eval: |v| {
        positive(
            shell_wall_outside(v[0], v[1], v[2], v[3]),
            SHELL_WALL_OUTSIDE.id,
            ("P", v[0]),
            "there must be a pressure",
        )
    },
};

/// Least wall for hoop stress from the outside radius; see [`UG27_HOOP_OUTSIDE`].
#[must_use]
pub fn ug27_hoop_outside(p_mpa: f64, r_o_mm: f64, s_mpa: f64, e: f64) -> f64 {
    p_mpa * r_o_mm / (s_mpa * e + 0.4 * p_mpa)
}

/// Least wall of a cylindrical shell against hoop stress, from its outside radius.
pub static UG27_HOOP_OUTSIDE: Card = Card {
    id: "vessel.ug27-hoop-outside",
    law: Law::Closed("t = P * R_o / (S * E + 0.4 * P)"),
    gives: symbol("t", &MM, "least wall, before allowances"),
    takes: &[
        symbol("P", &MPA_GAUGE, "design pressure, gauge"),
        symbol("R_o", &MM, "outside radius"),
        symbol("S", &MPA, "allowable stress at design temperature"),
        symbol("E", &ONE, "efficiency of longitudinal joint or ligament"),
    ],
    limits: &[
        Limit::at_most("t / (R_o - t)", 0.5),
        Limit::at_most("P / (S * E)", 0.385),
    ],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "Mandatory Appendix 1-1(a)(1)",
    },
    eval: |v| {
        positive(
            ug27_hoop_outside(v[0], v[1], v[2], v[3]),
            UG27_HOOP_OUTSIDE.id,
            ("P", v[0]),
            "there must be a pressure",
        )
    },
};
