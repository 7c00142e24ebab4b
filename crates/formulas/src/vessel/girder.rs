//! Family `girder`: girders on a crown as beams on two feet, their feet, and the tube plate that
//! they press.
//!
//! Source: the theory of beams; the state regulations print the same beam with a stress of their
//! own. The crown plate as a flange of the girder is left out.

use super::positive;
use crate::sources::{DERIVED, IBR_1950};
use reckoning::quantity::{MM, MPA, MPA_GAUGE, NEWTON};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&BENDING, &DEPTH, &FOOT, &BEARING, &PLATE];

const NOTHING: &str = "there must be a girder and a load";
const TOUCHING: &str = "the tubes touch";

/// Bending stress of a girder; see [`BENDING`].
#[must_use]
pub fn bending(p_mpa: f64, pitch_mm: f64, span_mm: f64, t_mm: f64, depth_mm: f64) -> f64 {
    0.75 * p_mpa * pitch_mm * span_mm * span_mm / (t_mm * depth_mm * depth_mm)
}

/// Bending stress of a girder on two feet under the plate that hangs on it.
pub static BENDING: Card = Card {
    id: "girder.bending",
    law: Law::Closed("sigma = 0.75 * P * Y * L^2 / (t * D^2)"),
    gives: symbol("sigma", &MPA, "bending stress of the girder"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("Y", &MM, "distance of the girders"),
        symbol("L", &MM, "span"),
        symbol("t", &MM, "thickness of all webs"),
        symbol("D", &MM, "depth"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "beam on two supports under an even load",
    },
    eval: |v| {
        positive(
            bending(v[0], v[1], v[2], v[3], v[4]),
            BENDING.id,
            ("t", v[3]),
            NOTHING,
        )
    },
};

/// Least depth of a girder; see [`DEPTH`].
#[must_use]
pub fn depth(p_mpa: f64, pitch_mm: f64, span_mm: f64, t_mm: f64, f_mpa: f64) -> f64 {
    span_mm * (0.75 * p_mpa * pitch_mm / (t_mm * f_mpa)).sqrt()
}

/// Least depth of a girder, the bending turned round.
pub static DEPTH: Card = Card {
    id: "girder.depth",
    law: Law::Closed("D = L * sqrt(0.75 * P * Y / (t * f))"),
    gives: symbol("D", &MM, "least depth"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("Y", &MM, "distance of the girders"),
        symbol("L", &MM, "span"),
        symbol("t", &MM, "thickness of all webs"),
        symbol("f", &MPA, "design stress"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "beam on two supports under an even load",
    },
    eval: |v| {
        positive(
            depth(v[0], v[1], v[2], v[3], v[4]),
            DEPTH.id,
            ("t", v[3]),
            NOTHING,
        )
    },
};

/// Load on one foot; see [`FOOT`].
#[must_use]
pub fn foot(p_mpa: f64, pitch_mm: f64, span_mm: f64) -> f64 {
    p_mpa * pitch_mm * span_mm / 2.0
}

/// Load on one foot of a girder.
pub static FOOT: Card = Card {
    id: "girder.foot",
    law: Law::Closed("F = P * Y * L / 2"),
    gives: symbol("F", &NEWTON, "load on one foot"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("Y", &MM, "distance of the girders"),
        symbol("L", &MM, "span"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "half the load of a beam",
    },
    eval: |v| positive(foot(v[0], v[1], v[2]), FOOT.id, ("L", v[2]), NOTHING),
};

/// Pressure under a foot; see [`BEARING`].
#[must_use]
pub fn bearing(f_n: f64, foot_mm: f64, t_mm: f64) -> f64 {
    f_n / (foot_mm * t_mm)
}

/// Pressure under the foot of a girder.
pub static BEARING: Card = Card {
    id: "girder.bearing",
    law: Law::Closed("sigma = F / (a * t)"),
    gives: symbol("sigma", &MPA, "pressure under the foot"),
    takes: &[
        symbol("F", &NEWTON, "load on one foot"),
        symbol("a", &MM, "length of the foot"),
        symbol("t", &MM, "thickness of all webs"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "load over area",
    },
    eval: |v| positive(bearing(v[0], v[1], v[2]), BEARING.id, ("a", v[1]), NOTHING),
};

/// Compression of a tube plate under girders; see [`PLATE`].
#[must_use]
pub fn plate(p_mpa: f64, length_mm: f64, pitch_mm: f64, hole_mm: f64, t_mm: f64) -> f64 {
    p_mpa * length_mm * pitch_mm / (2.0 * (pitch_mm - hole_mm) * t_mm)
}

/// Compression of the tube plate between its tubes where girders stand on it.
pub static PLATE: Card = Card {
    id: "girder.plate",
    law: Law::Closed("sigma = P * L * p / (2 * (p - d) * t)"),
    gives: symbol("sigma", &MPA, "compression between the tubes"),
    takes: &[
        symbol("P", &MPA_GAUGE, "pressure, gauge"),
        symbol("L", &MM, "length of the firebox at the top"),
        symbol("p", &MM, "level pitch of the tubes"),
        symbol("d", &MM, "hole of a tube"),
        symbol("t", &MM, "tube plate"),
    ],
    limits: &[Limit::at_least("p - d", 0.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 582, with the hole and not the bore",
    },
    eval: |v| {
        positive(
            plate(v[0], v[1], v[2], v[3], v[4]),
            PLATE.id,
            ("p", v[2]),
            TOUCHING,
        )
    },
};
