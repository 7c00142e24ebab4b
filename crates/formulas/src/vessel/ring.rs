//! Family `ring`: the diameters of a tube, its least wall and its ovality.
//!
//! Geometry alone; conical and dished forms are left out.

use super::positive;
use crate::sources::DERIVED;
use reckoning::quantity::{MM, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &BORE,
    &OUTSIDE,
    &MEAN,
    &RADIUS,
    &LEAST_WALL,
    &LEAST_SIZE,
    &GREATEST_SIZE,
    &OVALITY,
    &PER_CENT,
];

/// Inside diameter; see [`BORE`].
#[must_use]
pub fn bore(d_o_mm: f64, t_mm: f64) -> f64 {
    d_o_mm - 2.0 * t_mm
}

/// Inside diameter of a tube.
pub static BORE: Card = Card {
    id: "ring.bore",
    law: Law::Closed("D_i = D_o - 2 * t"),
    gives: symbol("D_i", &MM, "inside diameter"),
    takes: &[
        symbol("D_o", &MM, "outside diameter"),
        symbol("t", &MM, "wall"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a tube",
    },
    eval: |v| positive(bore(v[0], v[1]), BORE.id, ("t", v[1]), "the walls meet"),
};

/// Outside diameter; see [`OUTSIDE`].
#[must_use]
pub fn outside(d_i_mm: f64, t_mm: f64) -> f64 {
    d_i_mm + 2.0 * t_mm
}

/// Outside diameter of a tube.
pub static OUTSIDE: Card = Card {
    id: "ring.outside",
    law: Law::Closed("D_o = D_i + 2 * t"),
    gives: symbol("D_o", &MM, "outside diameter"),
    takes: &[
        symbol("D_i", &MM, "inside diameter"),
        symbol("t", &MM, "wall"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a tube",
    },
    eval: |v| {
        positive(
            outside(v[0], v[1]),
            OUTSIDE.id,
            ("D_i", v[0]),
            "there must be a bore",
        )
    },
};

/// Mean diameter; see [`MEAN`].
#[must_use]
pub fn mean(d_o_mm: f64, t_mm: f64) -> f64 {
    d_o_mm - t_mm
}

/// Mean diameter of a tube.
pub static MEAN: Card = Card {
    id: "ring.mean",
    law: Law::Closed("D_m = D_o - t"),
    gives: symbol("D_m", &MM, "mean diameter"),
    takes: &[
        symbol("D_o", &MM, "outside diameter"),
        symbol("t", &MM, "wall"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a tube",
    },
    eval: |v| positive(mean(v[0], v[1]), MEAN.id, ("t", v[1]), "the walls meet"),
};

/// Radius; see [`RADIUS`].
#[must_use]
pub fn radius(d_mm: f64) -> f64 {
    d_mm / 2.0
}

/// Radius of a diameter.
pub static RADIUS: Card = Card {
    id: "ring.radius",
    law: Law::Closed("R = D / 2"),
    gives: symbol("R", &MM, "radius"),
    takes: &[symbol("D", &MM, "diameter")],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a tube",
    },
    eval: |v| {
        positive(
            radius(v[0]),
            RADIUS.id,
            ("D", v[0]),
            "there must be a diameter",
        )
    },
};

/// Least size; see [`LEAST_SIZE`].
#[must_use]
pub fn least_size(d_d_mm: f64, s: f64) -> f64 {
    d_d_mm * (1.0 - s)
}

/// Least size within a share either way of the drawn one.
pub static LEAST_SIZE: Card = Card {
    id: "ring.least-size",
    law: Law::Closed("d = d_d * (1 - s)"),
    gives: symbol("d", &MM, "least size"),
    takes: &[
        symbol("d_d", &MM, "size as drawn"),
        symbol("s", &ONE, "share by which it may depart from it"),
    ],
    limits: &[Limit::within("s", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "meaning of the words",
    },
    eval: |v| Ok(least_size(v[0], v[1])),
};

/// Greatest size; see [`GREATEST_SIZE`].
#[must_use]
pub fn greatest_size(d_d_mm: f64, s: f64) -> f64 {
    d_d_mm * (1.0 + s)
}

/// Greatest size within a share either way of the drawn one.
pub static GREATEST_SIZE: Card = Card {
    id: "ring.greatest-size",
    law: Law::Closed("d = d_d * (1 + s)"),
    gives: symbol("d", &MM, "greatest size"),
    takes: &[
        symbol("d_d", &MM, "size as drawn"),
        symbol("s", &ONE, "share by which it may depart from it"),
    ],
    limits: &[Limit::within("s", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "meaning of the words",
    },
    eval: |v| Ok(greatest_size(v[0], v[1])),
};

/// Least wall; see [`LEAST_WALL`].
#[must_use]
pub fn least_wall(t_d_mm: f64, s: f64) -> f64 {
    t_d_mm * (1.0 - s)
}

/// Least wall that a share of thinning leaves of the drawn one.
pub static LEAST_WALL: Card = Card {
    id: "ring.least-wall",
    law: Law::Closed("t = t_d * (1 - s)"),
    gives: symbol("t", &MM, "least wall"),
    takes: &[
        symbol("t_d", &MM, "wall as drawn"),
        symbol("s", &ONE, "share by which it may be thinner"),
    ],
    limits: &[Limit::within("s", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "meaning of the words",
    },
    eval: |v| {
        positive(
            least_wall(v[0], v[1]),
            LEAST_WALL.id,
            ("t_d", v[0]),
            "there must be a wall",
        )
    },
};

/// Ovality; see [`OVALITY`].
#[must_use]
pub fn ovality(u: f64, d_o_mm: f64) -> f64 {
    u * d_o_mm
}

/// Ovality from its share of the diameter.
pub static OVALITY: Card = Card {
    id: "ring.ovality",
    law: Law::Closed("delta = u * D_o"),
    gives: symbol("delta", &MM, "ovality, Dmax - Dmin"),
    takes: &[
        symbol("u", &ONE, "ovality in parts of the diameter"),
        symbol("D_o", &MM, "outside diameter"),
    ],
    limits: &[Limit::at_least("u", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "meaning of the words",
    },
    eval: |v| Ok(ovality(v[0], v[1])),
};

/// Ovality in per cent; see [`PER_CENT`].
#[must_use]
pub fn per_cent(delta_mm: f64, d_mm: f64) -> f64 {
    100.0 * delta_mm / d_mm
}

/// Ovality in per cent of the mean of the greatest and the least diameter.
pub static PER_CENT: Card = Card {
    id: "ring.per-cent",
    law: Law::Closed("u = 100 * delta / d"),
    gives: symbol("u", &ONE, "ovality in per cent"),
    takes: &[
        symbol("delta", &MM, "ovality, Dmax - Dmin"),
        symbol("d", &MM, "mean diameter"),
    ],
    limits: &[Limit::at_least("delta", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "meaning of the words",
    },
    eval: |v| Ok(per_cent(v[0], v[1])),
};
