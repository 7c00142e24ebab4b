//! Family `flue`: yielding of a tube under external pressure, and what ovality costs.
//!
//! Sources: EN 13445-3 clause 8.5.2 for the yield pressure and the roundness it supposes; Theory
//! of Elastic Stability for the first yield of an oval tube. Dents and flats are left out.

use super::positive;
use crate::sources::{DERIVED, ELASTIC_STABILITY, EN_13445_3};
use reckoning::quantity::{MM, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&YIELD, &DEVIATION, &ROUNDNESS, &FIRST_YIELD, &STRESS_CAP];

const NO_TUBE: &str = "there must be a wall, a radius and a stress";

/// Pressure at which the wall yields in compression; see [`YIELD`].
#[must_use]
pub fn yield_pressure(sigma_e_mpa: f64, e_mm: f64, r_mm: f64) -> f64 {
    sigma_e_mpa * e_mm / r_mm
}

/// Pressure at which the wall of a round tube yields in compression.
pub static YIELD: Card = Card {
    id: "flue.yield",
    law: Law::Closed("P_y = sigma_e * e / R"),
    gives: symbol("P_y", &MPA_GAUGE, "pressure at which the wall yields"),
    takes: &[
        symbol("sigma_e", &MPA, "elastic limit at metal temperature"),
        symbol("e", &MM, "wall"),
        symbol("R", &MM, "mean radius"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &EN_13445_3,
        place: "8.5.2.2",
    },
    eval: |v| {
        let p = yield_pressure(v[0], v[1], v[2]);
        positive(p, YIELD.id, ("e", v[1]), NO_TUBE)
    },
};

/// Greatest departure from a circle; see [`DEVIATION`].
#[must_use]
pub fn deviation(delta_mm: f64) -> f64 {
    delta_mm / 4.0
}

/// Greatest radial departure from a circle of a two-lobed oval: half the difference of the
/// radii, and the radii differ by half of what the diameters do.
pub static DEVIATION: Card = Card {
    id: "flue.deviation",
    law: Law::Closed("w_0 = delta / 4"),
    gives: symbol("w_0", &MM, "greatest radial departure from a circle"),
    takes: &[symbol("delta", &MM, "ovality, Dmax - Dmin")],
    limits: &[Limit::at_least("delta", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "r = R + w_0 cos(2 theta)",
    },
    eval: |v| Ok(deviation(v[0])),
};

/// Departure from a circle in parts of the radius; see [`ROUNDNESS`].
#[must_use]
pub fn roundness(w_0_mm: f64, d_o_mm: f64) -> f64 {
    2.0 * w_0_mm / d_o_mm
}

/// Departure from a circle in parts of the radius; the collapse curve holds up to 0.5 %. (The
/// limit leaves room for the last bit of a sum, not for more.)
pub static ROUNDNESS: Card = Card {
    id: "flue.roundness",
    law: Law::Closed("omega = 2 * w_0 / D_o"),
    gives: symbol(
        "omega",
        &ONE,
        "departure from a circle in parts of the radius",
    ),
    takes: &[
        symbol("w_0", &MM, "greatest radial departure from a circle"),
        symbol("D_o", &MM, "outside diameter"),
    ],
    limits: &[Limit::at_most("omega", 0.005_000_000_01)],
    spread: Spread::Exact,
    cite: Cite {
        source: &EN_13445_3,
        place: "8.5.1, tolerance of shape",
    },
    eval: |v| Ok(roundness(v[0], v[1])),
};

/// A tube that is a little oval.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Oval {
    /// Yield stress at metal temperature, MPa.
    pub sigma_y_mpa: f64,
    /// Elastic collapse pressure of the round long tube, MPa.
    pub q_cr_mpa: f64,
    /// Mean radius, mm.
    pub r_mm: f64,
    /// Wall, mm.
    pub t_mm: f64,
    /// Greatest radial departure from a circle, mm.
    pub w_0_mm: f64,
}

/// Pressure at which an oval tube first yields; see [`FIRST_YIELD`].
#[must_use]
pub fn first_yield(oval: Oval) -> f64 {
    let m = oval.r_mm / oval.t_mm;
    let n = oval.w_0_mm / oval.r_mm;
    let b = oval.sigma_y_mpa / m + (1.0 + 6.0 * m * n) * oval.q_cr_mpa;
    let c = oval.sigma_y_mpa * oval.q_cr_mpa / m;
    // The smaller root in the form that loses no figures when the two lie far apart.
    2.0 * c / (b + (b * b - 4.0 * c).sqrt())
}

fn work_first_yield(v: &[f64]) -> Result<f64, Refused> {
    for (symbol, value) in [("R", v[2]), ("t", v[3])] {
        positive(value, FIRST_YIELD.id, (symbol, value), NO_TUBE)?;
    }
    let oval = Oval {
        sigma_y_mpa: v[0],
        q_cr_mpa: v[1],
        r_mm: v[2],
        t_mm: v[3],
        w_0_mm: v[4],
    };
    positive(
        first_yield(oval),
        FIRST_YIELD.id,
        ("sigma_y", v[0]),
        NO_TUBE,
    )
}

/// Pressure at which an oval tube first yields: the smaller root of
/// `q² − (sigma_y/m + (1 + 6 m n) q_cr) q + sigma_y q_cr/m = 0`.
///
/// The thin ring on which `q_cr` rests is published for R/t above 10. A thicker tube is allowed
/// when its elastic pressure is at least four times its yield pressure: the result then hardly
/// depends on `q_cr`.
pub static FIRST_YIELD: Card = Card {
    id: "flue.first-yield",
    law: Law::Closed(
        "m = R / t; n = w_0 / R; b = sigma_y / m + (1 + 6 * m * n) * q_cr; \
         c = sigma_y * q_cr / m; q = 2 * c / (b + sqrt(b^2 - 4 * c))",
    ),
    gives: symbol("q", &MPA_GAUGE, "pressure at which the tube first yields"),
    takes: &[
        symbol("sigma_y", &MPA, "yield stress at metal temperature"),
        symbol("q_cr", &MPA_GAUGE, "elastic collapse pressure, long tube"),
        symbol("R", &MM, "mean radius"),
        symbol("t", &MM, "wall"),
        symbol("w_0", &MM, "greatest radial departure from a circle"),
    ],
    limits: &[
        Limit::at_least("max(R / (10 * t), q_cr * R / (4 * sigma_y * t))", 1.0),
        Limit::at_least("w_0", 0.0),
    ],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ELASTIC_STABILITY,
        place: "7.5, initially elliptical tube",
    },
    eval: work_first_yield,
};

/// Pressure at which the hoop compression is the design stress; see [`STRESS_CAP`].
#[must_use]
pub fn stress_cap(f_mpa: f64, t_mm: f64, d_o_mm: f64) -> f64 {
    2.0 * f_mpa * t_mm / d_o_mm
}

/// Pressure at which the hoop compression of a tube reaches the design stress.
pub static STRESS_CAP: Card = Card {
    id: "flue.stress-cap",
    law: Law::Closed("P = 2 * f * t / D_o"),
    gives: symbol("P", &MPA_GAUGE, "pressure at the design stress"),
    takes: &[
        symbol("f", &MPA, "design stress at metal temperature"),
        symbol("t", &MM, "wall"),
        symbol("D_o", &MM, "outside diameter"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &DERIVED,
        place: "balance of half a ring, pressure on the outside",
    },
    eval: |v| {
        let p = stress_cap(v[0], v[1], v[2]);
        positive(p, STRESS_CAP.id, ("t", v[1]), NO_TUBE)
    },
};
