//! Family `furnace`: flame-swept tubes by boiler codes, which ask a wider margin than vessel
//! codes do.
//!
//! Sources: EN 12953-3 for the furnace form (factors as the Indian Boiler Regulations print
//! them, regulation 592); Indian Boiler Regulations 220 for plain copper furnaces. Corrugated
//! furnaces are left out.

use super::positive;
use crate::sources::{EN_12953_3, IBR_1950};
use reckoning::quantity::{INCH, MM, MPA, MPA_GAUGE, ONE, PSI_GAUGE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&PLASTIC, &ELASTIC, &IBR_SHORT, &IBR_LONG];

const NO_TUBE: &str = "there must be a wall, a diameter and a length";

/// A furnace tube by the boiler codes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Furnace {
    /// Proof stress at metal temperature, MPa.
    pub r_p_mpa: f64,
    /// Wall, mm.
    pub e_mm: f64,
    /// Mean diameter, mm.
    pub d_mm: f64,
    /// Length between supports, mm.
    pub l_mm: f64,
    /// Ovality in per cent, 200 (Dmax - Dmin)/(Dmax + Dmin).
    pub u_percent: f64,
    /// Factor on yielding.
    pub s_1: f64,
}

/// Pressure at which yielding is far enough away; see [`PLASTIC`].
#[must_use]
pub fn plastic(at: Furnace) -> f64 {
    let oval = 1.0 + 0.03 * (at.d_mm / at.e_mm) * at.u_percent / (1.0 + 5.0 * at.d_mm / at.l_mm);
    2.0 * at.r_p_mpa * at.e_mm / (at.s_1 * at.d_mm) * (1.0 + at.d_mm / (15.0 * at.l_mm)) / oval
}

/// Allowable pressure of a furnace tube against yielding.
pub static PLASTIC: Card = Card {
    id: "furnace.plastic",
    law: Law::Closed(
        "P = 2 * R_p * e / (S_1 * d) * (1 + d / (15 * L)) \
         / (1 + 0.03 * (d / e) * u / (1 + 5 * d / L))",
    ),
    gives: symbol("P", &MPA_GAUGE, "allowable pressure against yielding"),
    takes: &[
        symbol("R_p", &MPA, "proof stress at metal temperature"),
        symbol("e", &MM, "wall"),
        symbol("d", &MM, "mean diameter"),
        symbol("L", &MM, "length between supports"),
        symbol(
            "u",
            &ONE,
            "ovality in per cent, 200 (Dmax - Dmin) / (Dmax + Dmin)",
        ),
        symbol("S_1", &ONE, "factor on yielding, 2.5 in the flame"),
    ],
    limits: &[Limit::at_least("u", 0.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_12953_3,
        place: "furnace tubes, plastic deformation",
    },
    eval: |v| {
        let furnace = Furnace {
            r_p_mpa: v[0],
            e_mm: v[1],
            d_mm: v[2],
            l_mm: v[3],
            u_percent: v[4],
            s_1: v[5],
        };
        positive(plastic(furnace), PLASTIC.id, ("e", v[1]), NO_TUBE)
    },
};

/// Pressure at which elastic collapse is far enough away; see [`ELASTIC`].
#[must_use]
pub fn elastic(e_mpa: f64, e_mm: f64, d_mm: f64, l_mm: f64, s_2: f64) -> f64 {
    2.6 * e_mpa * e_mm.powf(2.5) / (s_2 * l_mm * d_mm.powf(1.5))
}

/// Allowable pressure of a furnace tube against elastic collapse.
pub static ELASTIC: Card = Card {
    id: "furnace.elastic",
    law: Law::Closed("P = 2.6 * E * e^2.5 / (S_2 * L * d^1.5)"),
    gives: symbol(
        "P",
        &MPA_GAUGE,
        "allowable pressure against elastic collapse",
    ),
    takes: &[
        symbol("E", &MPA, "modulus of elasticity at metal temperature"),
        symbol("e", &MM, "wall"),
        symbol("d", &MM, "mean diameter"),
        symbol("L", &MM, "length between supports"),
        symbol("S_2", &ONE, "factor on elastic collapse"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_12953_3,
        place: "furnace tubes, elastic buckling",
    },
    eval: |v| {
        let p = elastic(v[0], v[1], v[2], v[3], v[4]);
        positive(p, ELASTIC.id, ("e", v[1]), NO_TUBE)
    },
};

/// Working pressure of a short copper furnace; see [`IBR_SHORT`].
#[must_use]
pub fn ibr_short(c: f64, t_in: f64, d_in: f64, l_in: f64) -> f64 {
    c * (32.0 * t_in - 1.0).powi(2) / (d_in * (l_in + 24.0))
}

/// Working pressure of a plain copper furnace, the first of two forms; the lesser counts.
pub static IBR_SHORT: Card = Card {
    id: "furnace.ibr-first",
    law: Law::Closed("WP = C * (32 * t - 1)^2 / (D * (L + 24))"),
    gives: symbol("WP", &PSI_GAUGE, "working pressure, first form"),
    takes: &[
        symbol(
            "C",
            &ONE,
            "constant, 725 for copper with double straps, 650 lapped",
        ),
        symbol("t", &INCH, "plate"),
        symbol("D", &INCH, "outside diameter"),
        symbol("L", &INCH, "length between supports"),
    ],
    limits: &[Limit::at_least("32 * t", 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 220",
    },
    eval: |v| {
        let p = ibr_short(v[0], v[1], v[2], v[3]);
        positive(p, IBR_SHORT.id, ("t", v[1]), NO_TUBE)
    },
};

/// Working pressure of a long copper furnace; see [`IBR_LONG`].
#[must_use]
pub fn ibr_long(c_1: f64, t_in: f64, d_in: f64, l_in: f64) -> f64 {
    c_1 * (10.0 * (32.0 * t_in - 1.0) - l_in) / d_in
}

/// Working pressure of a plain copper furnace, the second of two forms; the lesser counts.
pub static IBR_LONG: Card = Card {
    id: "furnace.ibr-second",
    law: Law::Closed("WP = C_1 * (10 * (32 * t - 1) - L) / D"),
    gives: symbol("WP", &PSI_GAUGE, "working pressure, second form"),
    takes: &[
        symbol(
            "C_1",
            &ONE,
            "constant, 25 for copper with double straps, 22.5 lapped",
        ),
        symbol("t", &INCH, "plate"),
        symbol("D", &INCH, "outside diameter"),
        symbol("L", &INCH, "length between supports"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 220",
    },
    eval: |v| {
        let why = "the form gives no pressure for so thin or long a furnace";
        positive(
            ibr_long(v[0], v[1], v[2], v[3]),
            IBR_LONG.id,
            ("t", v[1]),
            why,
        )
    },
};
