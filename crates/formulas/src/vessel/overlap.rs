//! Family `overlap`: two openings whose limits of replacement overlap, and an opening beside the
//! lap of an end.
//!
//! Source: ASME VIII-1 UG-42, from memory. Three openings in a cluster are judged pair by pair.

use super::positive;
use crate::sources::{ASME_VIII_1, DERIVED};
use reckoning::quantity::{MM, MM2};
use reckoning::{Card, Cite, Law, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&APART, &BETWEEN, &HALF, &LEAST];

const NOTHING: &str = "there must be metal between two openings";

/// Distance of the middles; see [`APART`].
#[must_use]
pub fn apart(along_mm: f64, around_mm: f64) -> f64 {
    (along_mm * along_mm + around_mm * around_mm).sqrt()
}

/// Distance of the middles of two openings on the shell.
pub static APART: Card = Card {
    id: "overlap.apart",
    law: Law::Closed("l = sqrt(a^2 + b^2)"),
    gives: symbol("l", &MM, "distance of the middles"),
    takes: &[
        symbol("a", &MM, "spacing along the axis"),
        symbol("b", &MM, "spacing round the shell"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "on the unrolled shell",
    },
    eval: |v| positive(apart(v[0], v[1]), APART.id, ("a", v[0]), NOTHING),
};

/// Metal between two openings; see [`BETWEEN`].
#[must_use]
pub fn between(l_mm: f64, d_1_mm: f64, d_2_mm: f64, t_mm: f64, t_r_mm: f64) -> f64 {
    (l_mm - (d_1_mm + d_2_mm) / 2.0) * (t_mm - t_r_mm)
}

/// Metal to spare between two openings, that of their bushes not counted.
pub static BETWEEN: Card = Card {
    id: "overlap.between",
    law: Law::Closed("A_b = (l - (d_1 + d_2) / 2) * (t - t_r)"),
    gives: symbol("A_b", &MM2, "metal between the openings"),
    takes: &[
        symbol("l", &MM, "distance of the middles"),
        symbol("d_1", &MM, "hole of the one"),
        symbol("d_2", &MM, "hole of the other"),
        symbol("t", &MM, "wall"),
        symbol("t_r", &MM, "wall asked without openings"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-42(a)",
    },
    eval: |v| {
        positive(
            between(v[0], v[1], v[2], v[3], v[4]),
            BETWEEN.id,
            ("t", v[3]),
            NOTHING,
        )
    },
};

/// Metal asked between two openings; see [`HALF`].
#[must_use]
pub fn half(a_1_mm2: f64, a_2_mm2: f64) -> f64 {
    0.5 * (a_1_mm2 + a_2_mm2)
}

/// Half the metal that two openings ask together, to lie between them.
pub static HALF: Card = Card {
    id: "overlap.half",
    law: Law::Closed("A_h = 0.5 * (A_1 + A_2)"),
    gives: symbol("A_h", &MM2, "metal asked between the openings"),
    takes: &[
        symbol("A_1", &MM2, "metal asked by the one"),
        symbol("A_2", &MM2, "metal asked by the other"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-42(a)",
    },
    eval: |v| positive(half(v[0], v[1]), HALF.id, ("A_1", v[0]), NOTHING),
};

/// Least distance of two openings; see [`LEAST`].
#[must_use]
pub fn least(d_1_mm: f64, d_2_mm: f64) -> f64 {
    (d_1_mm + d_2_mm) / 2.0 * 4.0 / 3.0
}

/// Least distance of two openings that share their metal: a third more than their mean diameter.
pub static LEAST: Card = Card {
    id: "overlap.least",
    law: Law::Closed("l_min = (d_1 + d_2) / 2 * 4 / 3"),
    gives: symbol("l_min", &MM, "least distance of the middles"),
    takes: &[
        symbol("d_1", &MM, "hole of the one"),
        symbol("d_2", &MM, "hole of the other"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ASME_VIII_1,
        place: "UG-42(a)",
    },
    eval: |v| positive(least(v[0], v[1]), LEAST.id, ("d_1", v[0]), NOTHING),
};
