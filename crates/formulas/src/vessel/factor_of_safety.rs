//! Family `factor`: the factor of safety of the trade's books on model boilers.
//!
//! Source: pages of the hobby that quote books of the trade; common practice. The books know no
//! temperature in the first form and no joint in either: the joint stands beside the strength here.

use super::positive;
use crate::sources::TRADE_BOOKS;
use reckoning::quantity::{INCH, MM, ONE, PSI, PSI_GAUGE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&SHELL_WALL, &SHELL_WALL_HOT, &FLAT];

const NO_SHELL: &str = "there must be a shell under pressure";

/// Wall of a shell by the factor of safety; see [`SHELL_WALL`].
#[must_use]
pub fn shell_wall(p_psi: f64, d_in: f64, u_psi: f64, k: f64, e: f64) -> f64 {
    p_psi * d_in * k / (2.0 * u_psi * e)
}

/// Wall of a shell by a factor of safety on the tensile strength of cold copper.
pub static SHELL_WALL: Card = Card {
    id: "factor.shell-wall",
    law: Law::Closed("T = P * D * k / (2 * U * E)"),
    gives: symbol("T", &INCH, "least wall"),
    takes: &[
        symbol("P", &PSI_GAUGE, "working pressure, gauge"),
        symbol("D", &INCH, "outside diameter"),
        symbol("U", &PSI, "tensile strength, cold"),
        symbol("k", &ONE, "factor of safety"),
        symbol("E", &ONE, "joint efficiency, which the books leave out"),
    ],
    limits: &[Limit::within("E", 0.0, 1.0), Limit::at_least("k", 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &TRADE_BOOKS,
        place: "first form, 25 000 lb/in2 over 8",
    },
    eval: |v| {
        let t = shell_wall(v[0], v[1], v[2], v[3], v[4]);
        positive(t, SHELL_WALL.id, ("D", v[1]), NO_SHELL)
    },
};

/// A shell by the second form of the trade.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hot {
    /// Working pressure, lb/in² gauge.
    pub p_psi: f64,
    /// Outside diameter, in.
    pub d_in: f64,
    /// Tensile strength of hot copper, lb/in².
    pub u_psi: f64,
    /// Factor of safety.
    pub k: f64,
    /// Factor for temperature.
    pub h: f64,
    /// Joint efficiency.
    pub e: f64,
}

/// Wall of a shell by the second form; see [`SHELL_WALL_HOT`].
#[must_use]
pub fn shell_wall_hot(at: Hot) -> f64 {
    at.k * at.p_psi * at.d_in / (2.0 * at.u_psi * at.h * at.e)
}

/// Wall of a shell by a factor of safety on a lower strength, with a factor for temperature.
pub static SHELL_WALL_HOT: Card = Card {
    id: "factor.shell-wall-hot",
    law: Law::Closed("T = k * P * D / (2 * U * h * E)"),
    gives: symbol("T", &INCH, "least wall, second form"),
    takes: &[
        symbol("P", &PSI_GAUGE, "working pressure, gauge"),
        symbol("D", &INCH, "outside diameter"),
        symbol("U", &PSI, "tensile strength"),
        symbol("k", &ONE, "factor of safety"),
        symbol("h", &ONE, "factor for temperature"),
        symbol("E", &ONE, "joint efficiency, which the books leave out"),
    ],
    limits: &[
        Limit::within("E", 0.0, 1.0),
        Limit::within("h", 0.0, 1.0),
        Limit::at_least("k", 1.0),
    ],
    spread: Spread::Unstated,
    cite: Cite {
        source: &TRADE_BOOKS,
        place: "second form, 16 000 lb/in2 times 0.8 over 8",
    },
    eval: |v| {
        let hot = Hot {
            p_psi: v[0],
            d_in: v[1],
            u_psi: v[2],
            k: v[3],
            h: v[4],
            e: v[5],
        };
        positive(
            shell_wall_hot(hot),
            SHELL_WALL_HOT.id,
            ("D", v[1]),
            NO_SHELL,
        )
    },
};

/// Thickness of a stayed flat; see [`FLAT`].
#[must_use]
pub fn flat(t_mm: f64) -> f64 {
    4.0 / 3.0 * t_mm
}

/// Thickness of a stayed flat plate from that of the barrel.
pub static FLAT: Card = Card {
    id: "factor.flat",
    law: Law::Closed("t_p = 4 / 3 * t"),
    gives: symbol("t_p", &MM, "least stayed flat plate"),
    takes: &[symbol("t", &MM, "wall of the barrel")],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &TRADE_BOOKS,
        place: "stayed flats, four thirds of the barrel",
    },
    eval: |v| positive(flat(v[0]), FLAT.id, ("t", v[0]), "there must be a barrel"),
};
