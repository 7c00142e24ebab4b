//! Family `ligament`: what a row of holes leaves of a shell's strength.
//!
//! Sources: ASME VIII-1 UG-53; BS 2790 for rows on the slant. Uneven groups of holes are left
//! out.

use super::positive;
use crate::sources::{ASME_VIII_1, BS_2790};
use reckoning::quantity::{MM, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&ROW, &SLANT];

const TOO_CLOSE: &str = "the holes run into each other";

/// Efficiency of a row along the axis; see [`ROW`].
#[must_use]
pub fn row(p_mm: f64, d_mm: f64) -> f64 {
    (p_mm - d_mm) / p_mm
}

/// Ligament efficiency of a row of equal holes along the axis of a shell.
pub static ROW: Card = Card {
    id: "ligament.row",
    law: Law::Closed("E = (p - d) / p"),
    gives: symbol("E", &ONE, "ligament efficiency"),
    takes: &[
        symbol("p", &MM, "pitch along the axis"),
        symbol("d", &MM, "diameter of the hole cut in the shell"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-53(b)",
    },
    eval: |v| positive(row(v[0], v[1]), ROW.id, ("d", v[1]), TOO_CLOSE),
};

/// Efficiency of two holes on the slant; see [`SLANT`].
///
/// The hoop stress acts along `b` and half of it along `a`; `a = 0` is two holes side by side
/// round the shell.
#[must_use]
pub fn slant(a_mm: f64, b_mm: f64, d_mm: f64) -> f64 {
    let h = (a_mm * a_mm + b_mm * b_mm).sqrt();
    let (cos, sin) = (a_mm / h, b_mm / h);
    let kappa = 1.0 - d_mm / h;
    let a = (cos * cos + 1.0) / (2.0 * kappa);
    let b = kappa * (sin * sin + 1.0) / 2.0;
    let c = sin * cos / (2.0 * kappa);
    2.0 / (a + b + ((a - b).powi(2) + 4.0 * c * c).sqrt())
}

/// Ligament efficiency of two equal holes on the slant. It may come out above 1, when the holes
/// do not matter.
pub static SLANT: Card = Card {
    id: "ligament.slant",
    law: Law::Closed(
        "h = sqrt(a^2 + b^2); k = 1 - d / h; A = ((a / h)^2 + 1) / (2 * k); \
         B = k * ((b / h)^2 + 1) / 2; C = a * b / h^2 / (2 * k); \
         J = 2 / (A + B + sqrt((A - B)^2 + 4 * C^2))",
    ),
    gives: symbol("J", &ONE, "ligament efficiency"),
    takes: &[
        symbol("a", &MM, "spacing along the axis"),
        symbol("b", &MM, "spacing round the shell"),
        symbol("d", &MM, "diameter of the hole cut in the shell"),
    ],
    limits: &[Limit::at_most("d / sqrt(a^2 + b^2)", 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &BS_2790,
        place: "ligament efficiency, diagonal rows",
    },
    eval: |v| {
        let apart = (v[0] * v[0] + v[1] * v[1]).sqrt() - v[2];
        positive(apart, SLANT.id, ("d", v[2]), TOO_CLOSE)?;
        positive(slant(v[0], v[1], v[2]), SLANT.id, ("d", v[2]), TOO_CLOSE)
    },
};
