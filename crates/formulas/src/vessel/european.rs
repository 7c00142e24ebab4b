//! Family `european`: what the European vessel standard takes as design stress, how it tests, and
//! how far apart it wants openings.
//!
//! Sources: EN 13445-3 clauses 6, 9 and 10; EN 13445-5 clause 10. All from memory. Austenitic
//! steel, pads and rows of openings are left out, and so is the help that a shell gives to a flat
//! end.

use super::positive;
use crate::sources::{EN_13445_3, EN_13445_5};
use reckoning::quantity::{MM, MPA, MPA_GAUGE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&DESIGN_STRESS, &TEST_PRESSURE, &APART, &FLAT_END];

/// Design stress; see [`DESIGN_STRESS`].
#[must_use]
pub fn design_stress(r_p_mpa: f64, r_m_mpa: f64) -> f64 {
    (r_p_mpa / 1.5).min(r_m_mpa / 2.4)
}

/// Design stress of a metal other than austenitic steel.
pub static DESIGN_STRESS: Card = Card {
    id: "european.design-stress",
    law: Law::Closed("f = min(R_p / 1.5, R_m / 2.4)"),
    gives: symbol("f", &MPA, "design stress"),
    takes: &[
        symbol("R_p", &MPA, "0.2 % proof stress at metal temperature"),
        symbol("R_m", &MPA, "tensile strength, cold"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13445_3,
        place: "6.2, metals other than austenitic steel",
    },
    eval: |v| {
        let f = design_stress(v[0], v[1]);
        let why = "there must be a strength";
        positive(f, DESIGN_STRESS.id, ("R_p", v[0]), why)
    },
};

/// Water test pressure; see [`TEST_PRESSURE`].
#[must_use]
pub fn test_pressure(p_mpa: f64, f_20_mpa: f64, f_t_mpa: f64) -> f64 {
    (1.43 * p_mpa).max(1.25 * p_mpa * f_20_mpa / f_t_mpa)
}

/// Water test pressure from the design stresses at the test and at work.
pub static TEST_PRESSURE: Card = Card {
    id: "european.test-pressure",
    law: Law::Closed("P_t = max(1.43 * P, 1.25 * P * f_20 / f_T)"),
    gives: symbol("P_t", &MPA_GAUGE, "water test pressure"),
    takes: &[
        symbol("P", &MPA_GAUGE, "working pressure, gauge"),
        symbol("f_20", &MPA, "design stress at the test"),
        symbol("f_T", &MPA, "design stress at metal temperature"),
    ],
    limits: &[Limit::at_least("f_20 / f_T", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13445_5,
        place: "10.2.3.3",
    },
    eval: |v| {
        let p_t = test_pressure(v[0], v[1], v[2]);
        let why = "there must be a pressure and a stress";
        positive(p_t, TEST_PRESSURE.id, ("P", v[0]), why)
    },
};

/// Distance at which two openings stand alone; see [`APART`].
#[must_use]
pub fn apart(d_1_mm: f64, d_2_mm: f64, l_so_mm: f64) -> f64 {
    d_1_mm / 2.0 + d_2_mm / 2.0 + 2.0 * l_so_mm
}

/// Least distance of the middles of two openings that share no shell.
pub static APART: Card = Card {
    id: "european.apart",
    law: Law::Closed("L_b = d_1 / 2 + d_2 / 2 + 2 * l_so"),
    gives: symbol("L_b", &MM, "least distance of the middles"),
    takes: &[
        symbol("d_1", &MM, "first hole cut in the shell"),
        symbol("d_2", &MM, "second hole cut in the shell"),
        symbol("l_so", &MM, "length of shell that helps an opening"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "9.5.1, openings that stand alone",
    },
    eval: |v| {
        let why = "there must be openings";
        positive(apart(v[0], v[1], v[2]), APART.id, ("d_1", v[0]), why)
    },
};

/// Least thickness of a flat end; see [`FLAT_END`].
#[must_use]
pub fn flat_end(d_mm: f64, p_mpa: f64, f_mpa: f64) -> f64 {
    0.40825 * d_mm * (p_mpa / f_mpa).sqrt()
}

/// Least thickness of a round flat end that no stay holds and to which the shell gives no help.
pub static FLAT_END: Card = Card {
    id: "european.flat-end",
    law: Law::Closed("e = 0.40825 * D * sqrt(P / f)"),
    gives: symbol("e", &MM, "least flat end"),
    takes: &[
        symbol("D", &MM, "diameter of the end"),
        symbol("P", &MPA_GAUGE, "design pressure, gauge"),
        symbol("f", &MPA, "design stress at metal temperature"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "10.4, C1 at its greatest, that of a supported plate",
    },
    eval: |v| {
        let e = flat_end(v[0], v[1], v[2]);
        positive(e, FLAT_END.id, ("P", v[1]), "there must be a load")
    },
};
