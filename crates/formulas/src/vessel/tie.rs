//! Family `tie`: fire tubes that tie the crown of a firebox to the plate above, and what their
//! unequal growth adds.
//!
//! Source: statics. The plates are taken as rigid, which bounds the load from growth.

use super::positive;
use crate::sources::DERIVED;
use reckoning::quantity::{KELVIN_RISE, MM, MM2, MPA, MPA_GAUGE, NEWTON, ONE, PER_K};
use reckoning::{Card, Cite, Law, Spread, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &CROWN_LOAD,
    &SHARE,
    &ALL_TUBES,
    &GROWTH,
    &JOINT_FORCE,
    &EDGE_SHEAR,
];

const NOTHING: &str = "there must be something that is held and something that holds";

/// Load on a crown; see [`CROWN_LOAD`].
#[must_use]
pub fn crown_load(p_mpa: f64, d_mm: f64, n: f64, d_o_mm: f64) -> f64 {
    p_mpa * PI / 4.0 * (d_mm * d_mm - n * d_o_mm * d_o_mm)
}

/// Pressure on the whole crown less its tubes.
pub static CROWN_LOAD: Card = Card {
    id: "tie.crown-load",
    law: Law::Closed("F = P * pi / 4 * (d^2 - n * d_o^2)"),
    gives: symbol("F", &NEWTON, "load on the crown"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("d", &MM, "diameter of the crown under pressure"),
        symbol("n", &ONE, "number of tubes"),
        symbol("d_o", &MM, "outside of a tube"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "pressure over area",
    },
    eval: |v| {
        let r = crown_load(v[0], v[1], v[2], v[3]);
        positive(r, CROWN_LOAD.id, ("d", v[1]), NOTHING)
    },
};

/// Share of one tube; see [`SHARE`].
#[must_use]
pub fn share(f_n: f64, n: f64) -> f64 {
    f_n / n
}

/// Load of one tube where all tubes hold the whole crown.
pub static SHARE: Card = Card {
    id: "tie.share",
    law: Law::Closed("F_1 = F / n"),
    gives: symbol("F_1", &NEWTON, "pull of one tube"),
    takes: &[
        symbol("F", &NEWTON, "load on the crown"),
        symbol("n", &ONE, "number of tubes"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "even share",
    },
    eval: |v| {
        let r = share(v[0], v[1]);
        positive(r, SHARE.id, ("n", v[1]), NOTHING)
    },
};

/// Section of all tubes; see [`ALL_TUBES`].
#[must_use]
pub fn all_tubes(n: f64, a_mm2: f64) -> f64 {
    n * a_mm2
}

/// Cross-section of the walls of all tubes.
pub static ALL_TUBES: Card = Card {
    id: "tie.all-tubes",
    law: Law::Closed("A = n * A_1"),
    gives: symbol("A", &MM2, "cross-section of all tubes"),
    takes: &[
        symbol("n", &ONE, "number of tubes"),
        symbol("A_1", &MM2, "cross-section of one"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "sum",
    },
    eval: |v| Ok(all_tubes(v[0], v[1])),
};

/// Load from unequal growth; see [`GROWTH`].
#[must_use]
pub fn growth(e_mpa: f64, alpha: f64, dt_k: f64, a_t_mm2: f64, a_s_mm2: f64) -> f64 {
    e_mpa * alpha * dt_k / (1.0 / a_t_mm2 + 1.0 / a_s_mm2)
}

/// Load between tubes and shell when the tubes are hotter or colder, the plates taken as
/// rigid.
pub static GROWTH: Card = Card {
    id: "tie.growth",
    law: Law::Closed("F = E * alpha * dT / (1 / A_t + 1 / A_s)"),
    gives: symbol("F", &NEWTON, "load from unequal growth"),
    takes: &[
        symbol("E", &MPA, "modulus of elasticity"),
        symbol("alpha", &PER_K, "expansion"),
        symbol("dT", &KELVIN_RISE, "difference of tubes and shell"),
        symbol("A_t", &MM2, "cross-section of all tubes"),
        symbol("A_s", &MM2, "cross-section of the shell"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "two bars between rigid plates",
    },
    eval: |v| {
        let r = growth(v[0], v[1], v[2], v[3], v[4]);
        positive(r, GROWTH.id, ("A_t", v[3]), NOTHING)
    },
};

/// Load on the joint of a tube; see [`JOINT_FORCE`].
#[must_use]
pub fn joint_force(f_1_n: f64, f_n: f64, n: f64) -> f64 {
    f_1_n + f_n / n
}

/// Load on the joint of one tube from pressure and growth, taken as pulling the same way.
pub static JOINT_FORCE: Card = Card {
    id: "tie.joint-force",
    law: Law::Closed("F_j = F_1 + F / n"),
    gives: symbol("F_j", &NEWTON, "load on the joint of a tube"),
    takes: &[
        symbol("F_1", &NEWTON, "pull of one tube"),
        symbol("F", &NEWTON, "load from unequal growth"),
        symbol("n", &ONE, "number of tubes"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "sum",
    },
    eval: |v| Ok(joint_force(v[0], v[1], v[2])),
};

/// Shear in the joint of a firehole tube; see [`EDGE_SHEAR`].
#[must_use]
pub fn edge_shear(p_mpa: f64, s_mm: f64, t_mm: f64) -> f64 {
    p_mpa * s_mm / (2.0 * t_mm)
}

/// Shear in the joint of a tube that ties two walls round a hole: half a pitch of wall hangs
/// on its rim.
pub static EDGE_SHEAR: Card = Card {
    id: "tie.edge-shear",
    law: Law::Closed("tau = P * s / (2 * t)"),
    gives: symbol("tau", &MPA, "shear in the joint"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("s", &MM, "pitch that the wall bears"),
        symbol("t", &MM, "wall, which is the lap of the joint"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "half a pitch of wall hung on the rim",
    },
    eval: |v| {
        let r = edge_shear(v[0], v[1], v[2]);
        positive(r, EDGE_SHEAR.id, ("t", v[2]), NOTHING)
    },
};
