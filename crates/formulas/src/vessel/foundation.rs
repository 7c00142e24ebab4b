//! Family `foundation`: the ring that closes a water leg at the bottom, with the crown of the
//! firebox tied up or hanging on it.
//!
//! Source: statics of a strip of unit width. A ring thinner than it is wide bends as a plate; the
//! help of its curvature is left out.

use super::positive;
use crate::sources::DERIVED;
use reckoning::quantity::{MM, MPA, MPA_GAUGE, N_PER_MM, NEWTON, ONE};
use reckoning::{Card, Cite, Law, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &WIDTH,
    &LOAD_TIED,
    &LOAD_INNER,
    &LOAD_OUTER,
    &MOMENT_UNTIED,
    &STRESS,
    &JOINT_SHEAR,
];

const NOTHING: &str = "there must be a leg, a ring and a load";

/// Width of a water leg; see [`WIDTH`].
#[must_use]
pub fn width(d_i_mm: f64, d_f_mm: f64) -> f64 {
    (d_i_mm - d_f_mm) / 2.0
}

/// Width of the water leg that the ring closes.
pub static WIDTH: Card = Card {
    id: "foundation.width",
    law: Law::Closed("w = (D_i - d_f) / 2"),
    gives: symbol("w", &MM, "width of the water leg"),
    takes: &[
        symbol("D_i", &MM, "inside of the shell"),
        symbol("d_f", &MM, "outside of the firebox"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of the leg",
    },
    eval: |v| {
        let r = width(v[0], v[1]);
        positive(r, WIDTH.id, ("D_i", v[0]), NOTHING)
    },
};

/// Load on a ring under a tied crown; see [`LOAD_TIED`].
#[must_use]
pub fn load_tied(p_mpa: f64, w_mm: f64) -> f64 {
    p_mpa * w_mm / 2.0
}

/// Load on each joint of the ring, per length, where the crown is tied up and the ring holds
/// its own pressure alone.
pub static LOAD_TIED: Card = Card {
    id: "foundation.load-tied",
    law: Law::Closed("V = P * w / 2"),
    gives: symbol("V", &N_PER_MM, "load on each joint of the ring"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("w", &MM, "width of the water leg"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "strip of the ring between its joints",
    },
    eval: |v| Ok(load_tied(v[0], v[1])),
};

/// Push of a crown that hangs on the ring; see [`LOAD_INNER`].
#[must_use]
pub fn load_inner(p_mpa: f64, d_f_mm: f64, n: f64, d_o_mm: f64) -> f64 {
    p_mpa * (d_f_mm * d_f_mm - n * d_o_mm * d_o_mm) / (4.0 * d_f_mm)
}

/// Push of the firebox on the ring, per length, where nothing ties its crown up.
pub static LOAD_INNER: Card = Card {
    id: "foundation.load-inner",
    law: Law::Closed("V_i = P * (d_f^2 - n * d_o^2) / (4 * d_f)"),
    gives: symbol("V_i", &N_PER_MM, "push of the firebox on the ring"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("d_f", &MM, "outside of the firebox"),
        symbol("n", &ONE, "number of tubes through the crown"),
        symbol("d_o", &MM, "outside of a tube"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "pressure on the crown over its rim",
    },
    eval: |v| {
        let r = load_inner(v[0], v[1], v[2], v[3]);
        positive(r, LOAD_INNER.id, ("d_f", v[1]), NOTHING)
    },
};

/// Pull of the shell on the ring; see [`LOAD_OUTER`].
#[must_use]
pub fn load_outer(p_mpa: f64, d_i_mm: f64, n: f64, d_o_mm: f64) -> f64 {
    p_mpa * (d_i_mm * d_i_mm - n * d_o_mm * d_o_mm) / (4.0 * d_i_mm)
}

/// Load on the outer joint of the ring, per length, where nothing ties the crown up.
pub static LOAD_OUTER: Card = Card {
    id: "foundation.load-outer",
    law: Law::Closed("V_o = P * (D_i^2 - n * d_o^2) / (4 * D_i)"),
    gives: symbol("V_o", &N_PER_MM, "load on the outer joint of the ring"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("D_i", &MM, "inside of the shell"),
        symbol("n", &ONE, "number of tubes through the crown"),
        symbol("d_o", &MM, "outside of a tube"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "pressure on crown and leg over the rim of the shell",
    },
    eval: |v| {
        let r = load_outer(v[0], v[1], v[2], v[3]);
        positive(r, LOAD_OUTER.id, ("D_i", v[1]), NOTHING)
    },
};

/// Moment in a ring that holds the crown; see [`MOMENT_UNTIED`].
#[must_use]
pub fn moment_untied(v_n_mm: f64, p_mpa: f64, w_mm: f64) -> f64 {
    v_n_mm * w_mm + p_mpa * w_mm * w_mm / 2.0
}

/// Moment per length in a ring that is held at the shell and carries firebox and leg.
pub static MOMENT_UNTIED: Card = Card {
    id: "foundation.moment-untied",
    law: Law::Closed("M = V_i * w + P * w^2 / 2"),
    gives: symbol("M", &NEWTON, "moment per length at the shell"),
    takes: &[
        symbol("V_i", &N_PER_MM, "push of the firebox on the ring"),
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("w", &MM, "width of the water leg"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "cantilever strip",
    },
    eval: |v| Ok(moment_untied(v[0], v[1], v[2])),
};

/// Bending stress of the ring; see [`STRESS`].
#[must_use]
pub fn stress(m_n: f64, h_mm: f64) -> f64 {
    6.0 * m_n / (h_mm * h_mm)
}

/// Bending stress of a strip of the ring.
pub static STRESS: Card = Card {
    id: "foundation.stress",
    law: Law::Closed("sigma = 6 * M / h^2"),
    gives: symbol("sigma", &MPA, "bending stress of the ring"),
    takes: &[
        symbol("M", &NEWTON, "moment per length"),
        symbol("h", &MM, "depth of the ring"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a strip",
    },
    eval: |v| {
        let r = stress(v[0], v[1]);
        positive(r, STRESS.id, ("h", v[1]), NOTHING)
    },
};

/// Shear in a joint of the ring; see [`JOINT_SHEAR`].
#[must_use]
pub fn joint_shear(v_n_mm: f64, h_mm: f64) -> f64 {
    v_n_mm / h_mm
}

/// Shear in the braze between ring and wall.
pub static JOINT_SHEAR: Card = Card {
    id: "foundation.joint-shear",
    law: Law::Closed("tau = V / h"),
    gives: symbol("tau", &MPA, "shear in the joint of the ring"),
    takes: &[
        symbol("V", &N_PER_MM, "load on the joint"),
        symbol("h", &MM, "depth of the ring, which is its lap"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "load over joint area",
    },
    eval: |v| {
        let r = joint_shear(v[0], v[1]);
        positive(r, JOINT_SHEAR.id, ("h", v[1]), NOTHING)
    },
};
