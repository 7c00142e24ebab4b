//! Geometry of drilled holes: the point, the depth of a through hole, a cross hole into a bore,
//! the mouth of a countersink.
//!
//! Wander and oversize of drills are facts of the trade and stand with the order rules.

use reckoning::quantity::{DEGREE, MM};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, symbol};

use crate::sources::{COMMON_PRACTICE, DERIVED};

/// Length of the point of a drill, mm; see [`POINT`].
#[must_use]
pub fn point(d_mm: f64, a_deg: f64) -> f64 {
    d_mm / (2.0 * (a_deg * std::f64::consts::PI / 360.0).tan())
}

/// Length of the point of a drill.
pub static POINT: Card = Card {
    id: "cutting.drill-point",
    law: Law::Closed("l = d / (2 * tan(a * pi / 360))"),
    gives: symbol("l", &MM, "length of the point"),
    takes: &[
        symbol("d", &MM, "drill"),
        symbol("a", &DEGREE, "angle of the point"),
    ],
    limits: &[Limit::within("a", 60.0, 180.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "height of a cone",
    },
    eval: |v| Ok(point(v[0], v[1])),
};

/// Depth of the tip for a through hole made before parting, mm; see [`THROUGH_TIP`].
#[must_use]
pub fn through_tip(length_mm: f64, beyond_mm: f64, point_mm: f64) -> f64 {
    length_mm + beyond_mm + point_mm
}

/// Depth of the tip at which a hole has its full diameter a little beyond the length of the part,
/// so that parting or facing leaves no cone in it.
pub static THROUGH_TIP: Card = Card {
    id: "cutting.through-tip",
    law: Law::Closed("t = L + b + l"),
    gives: symbol("t", &MM, "depth of the tip"),
    takes: &[
        symbol("L", &MM, "length of the part"),
        symbol("b", &MM, "full diameter beyond it"),
        symbol("l", &MM, "length of the point"),
    ],
    limits: &[Limit::at_least("b", 0.5)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "sum of lengths; the half millimetre beyond is common practice",
    },
    eval: |v| Ok(through_tip(v[0], v[1], v[2])),
};

/// Depth of the tip at which a radial hole opens fully into a bore, mm; see [`CROSS_TIP`].
///
/// # Errors
/// [`Refused`] when the drill is larger than the bore, which it can then never open fully into.
pub fn cross_tip(r_0_mm: f64, r_b_mm: f64, r_mm: f64, point_mm: f64) -> Result<f64, Refused> {
    if r_mm > r_b_mm {
        return Err(Refused {
            card: CROSS_TIP.id,
            symbol: "r",
            value: r_mm,
            why: "the cross hole is larger than the bore",
        });
    }
    Ok(r_0_mm - (r_b_mm.powi(2) - r_mm.powi(2)).sqrt() + point_mm)
}

/// Depth of the tip, from the outside, at which a radial hole opens fully into a bore: the corners
/// of the drill have then passed the wall.
pub static CROSS_TIP: Card = Card {
    id: "cutting.cross-tip",
    law: Law::Closed("t = R_0 - sqrt(r_b^2 - r^2) + l"),
    gives: symbol("t", &MM, "least depth of the tip"),
    takes: &[
        symbol("R_0", &MM, "radius of the outside"),
        symbol("r_b", &MM, "radius of the bore"),
        symbol("r", &MM, "radius of the drill"),
        symbol("l", &MM, "length of the point"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "chord of a circle",
    },
    eval: |v| cross_tip(v[0], v[1], v[2], v[3]),
};

/// Deepest tip that leaves the far wall of the bore unmarked, mm; see [`CROSS_DEEPEST`].
#[must_use]
pub fn cross_deepest(r_0_mm: f64, r_b_mm: f64) -> f64 {
    r_0_mm + r_b_mm - 0.3
}

/// Deepest tip of a radial drill that leaves the far wall of the bore unmarked.
pub static CROSS_DEEPEST: Card = Card {
    id: "cutting.cross-deepest",
    law: Law::Closed("t = R_0 + r_b - 0.3"),
    gives: symbol("t", &MM, "greatest depth of the tip"),
    takes: &[
        symbol("R_0", &MM, "radius of the outside"),
        symbol("r_b", &MM, "radius of the bore"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "0.3 mm short of the far wall",
    },
    eval: |v| Ok(cross_deepest(v[0], v[1])),
};

/// Depth of a countersink below the mouth of a hole, mm; see [`COUNTERSINK`].
#[must_use]
pub fn countersink(mouth_mm: f64, d_mm: f64, a_deg: f64) -> f64 {
    (mouth_mm - d_mm) / 2.0 / (a_deg * std::f64::consts::PI / 360.0).tan()
}

/// Depth of a countersink from a hole to a wider mouth.
pub static COUNTERSINK: Card = Card {
    id: "cutting.countersink",
    law: Law::Closed("t = (D_c - d) / 2 / tan(a * pi / 360)"),
    gives: symbol("t", &MM, "depth of the cone"),
    takes: &[
        symbol("D_c", &MM, "diameter of the mouth"),
        symbol("d", &MM, "diameter of the hole"),
        symbol("a", &DEGREE, "angle of the countersink"),
    ],
    limits: &[Limit::at_least("D_c - d", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "height of a cone",
    },
    eval: |v| Ok(countersink(v[0], v[1], v[2])),
};
