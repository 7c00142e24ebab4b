//! Family `state`: shells, stays and tube plates by the Indian Boiler Regulations; their furnaces
//! stand in family `furnace`.
//!
//! Source: Indian Boiler Regulations 1950 as amended, regulations 366, 580 and 585a, read; the rule
//! for the stress of shells from memory. Their exemption of openings is left out: it was made for
//! large shells.

use super::positive;
use crate::sources::{IBR_1950, IBR_1950_STRESS};
use reckoning::quantity::{INCH, INCH2, MPA, ONE, PSI, PSI_GAUGE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &SHELL_STRESS,
    &SHELL,
    &STAY,
    &TUBE_PLATE,
    &BETWEEN,
    &BETWEEN_ASKED,
];

/// Stress of a shell; see [`SHELL_STRESS`].
#[must_use]
pub fn shell_stress(s_mpa: f64, e_t_mpa: f64) -> f64 {
    (s_mpa / 2.7).min(e_t_mpa / 1.5)
}

/// Stress permitted in a shell.
pub static SHELL_STRESS: Card = Card {
    id: "state.shell-stress",
    law: Law::Closed("f = min(S / 2.7, E_t / 1.5)"),
    gives: symbol("f", &MPA, "permitted stress of the shell"),
    takes: &[
        symbol("S", &MPA, "tensile strength, cold"),
        symbol("E_t", &MPA, "0.2 % proof stress at metal temperature"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &IBR_1950_STRESS,
        place: "regulation 271",
    },
    eval: |v| {
        let f = shell_stress(v[0], v[1]);
        let why = "there must be a strength";
        positive(f, SHELL_STRESS.id, ("E_t", v[1]), why)
    },
};

/// Working pressure of a shell; see [`SHELL`].
#[must_use]
pub fn shell(f_psi: f64, e: f64, t_in: f64, d_in: f64) -> f64 {
    2.0 * f_psi * e * (t_in - 0.03) / (d_in + t_in - 0.03)
}

/// Working pressure of a cylindrical shell.
pub static SHELL: Card = Card {
    id: "state.shell",
    law: Law::Closed("WP = 2 * f * E * (T - 0.03) / (D + T - 0.03)"),
    gives: symbol("WP", &PSI_GAUGE, "working pressure"),
    takes: &[
        symbol("f", &PSI, "permitted stress"),
        symbol("E", &ONE, "efficiency of ligament or seam, 1 for seamless"),
        symbol("T", &INCH, "wall"),
        symbol("D", &INCH, "inside diameter"),
    ],
    limits: &[Limit::within("E", 0.0, 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 366",
    },
    eval: |v| {
        let p = shell(v[0], v[1], v[2], v[3]);
        let why = "the form takes 0.03 in of wall for wear and has none left";
        positive(p, SHELL.id, ("T", v[2]), why)
    },
};

/// Working pressure of a plain stay; see [`STAY`].
#[must_use]
pub fn stay(c: f64, d_in: f64, a_in2: f64) -> f64 {
    c * d_in * d_in / a_in2
}

/// Working pressure of a plain stay, at its least diameter.
pub static STAY: Card = Card {
    id: "state.stay",
    law: Law::Closed("WP = C * D^2 / A"),
    gives: symbol("WP", &PSI_GAUGE, "working pressure"),
    takes: &[
        symbol("C", &ONE, "constant, 4700 for copper"),
        symbol("D", &INCH, "least diameter of the stay"),
        symbol("A", &INCH2, "plate that hangs on the stay"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulations 202 and 585a",
    },
    eval: |v| {
        let p = stay(v[0], v[1], v[2]);
        positive(p, STAY.id, ("D", v[1]), "there must be a stay")
    },
};

/// Thickness of a tube plate; see [`TUBE_PLATE`].
#[must_use]
pub fn tube_plate(d_in: f64) -> f64 {
    0.125 * d_in + 0.2
}

/// Least thickness of a plate in which steel tubes are expanded.
pub static TUBE_PLATE: Card = Card {
    id: "state.tube-plate",
    law: Law::Closed("t = 0.125 * D + 0.2"),
    gives: symbol("t", &INCH, "least tube plate"),
    takes: &[symbol("D", &INCH, "outside diameter of the tubes")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 580",
    },
    eval: |v| {
        let t = tube_plate(v[0]);
        positive(t, TUBE_PLATE.id, ("D", v[0]), "there must be tubes")
    },
};

/// Metal between two holes; see [`BETWEEN`].
#[must_use]
pub fn between(p_in: f64, d_in: f64, t_in: f64) -> f64 {
    (p_in - d_in) * t_in
}

/// Cross-section of plate between two tube holes.
pub static BETWEEN: Card = Card {
    id: "state.between",
    law: Law::Closed("a = (p - D) * t"),
    gives: symbol("a", &INCH2, "plate between two holes"),
    takes: &[
        symbol("p", &INCH, "pitch of the tubes"),
        symbol("D", &INCH, "hole of the tubes"),
        symbol("t", &INCH, "plate"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 580, the section that it asks",
    },
    eval: |v| {
        let a = between(v[0], v[1], v[2]);
        let why = "the holes run into each other";
        positive(a, BETWEEN.id, ("p", v[0]), why)
    },
};

/// Metal asked between two holes; see [`BETWEEN_ASKED`].
#[must_use]
pub fn between_asked(d_in: f64) -> f64 {
    0.17 * d_in + 0.025
}

/// Least cross-section of plate between two tube holes.
pub static BETWEEN_ASKED: Card = Card {
    id: "state.between-asked",
    law: Law::Closed("a = 0.17 * D + 0.025"),
    gives: symbol("a", &INCH2, "least plate between two holes"),
    takes: &[symbol("D", &INCH, "outside diameter of the tubes")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 580",
    },
    eval: |v| {
        let a = between_asked(v[0]);
        positive(a, BETWEEN_ASKED.id, ("D", v[0]), "there must be tubes")
    },
};
