//! Family `demand`: the steam that safety valves must pass.
//!
//! Sources: boiler regulations for the least steam a heating surface counts for, the boiler code
//! for a firebox, a trade rule for the area of the seats. What the fire itself can raise comes
//! from the balance of the fire, at the heat of evaporation with the feed shut.

use crate::sources::{IBR_1950, VALVE_SIZES};
use crate::vessel::positive;
use reckoning::quantity::{FOOT2, INCH2, KG_PER_H, KG_PER_M2_H, M2, ONE, PSI_GAUGE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&BY_SURFACE, &TRADE_AREA];

const NOTHING: &str = "there must be a heating surface";

/// Steam by heating surface; see [`BY_SURFACE`].
#[must_use]
pub fn by_surface(q_c: f64, a_c: f64, q_r: f64, a_r: f64) -> f64 {
    q_c * a_c + q_r * a_r
}

/// Steam that heating surface counts for, the firebox at its own rate.
pub static BY_SURFACE: Card = Card {
    id: "demand.by-surface",
    law: Law::Closed("m = q_c * A_c + q_r * A_r"),
    gives: symbol("m", &KG_PER_H, "steam by heating surface"),
    takes: &[
        symbol("q_c", &KG_PER_M2_H, "steam of surface that gas sweeps"),
        symbol("A_c", &M2, "surface that gas sweeps"),
        symbol("q_r", &KG_PER_M2_H, "steam of surface that sees the fire"),
        symbol("A_r", &M2, "surface that sees the fire"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 293, 30 kg/h and square metre or more",
    },
    eval: |v| Ok(by_surface(v[0], v[1], v[2], v[3])),
};

/// Seat area by the trade; see [`TRADE_AREA`].
#[must_use]
pub fn trade_area(hs_ft2: f64, k: f64, p_psi: f64) -> f64 {
    hs_ft2 * k / (p_psi + 15.0)
}

/// Area of the seats that a trade rule gives; shown beside.
pub static TRADE_AREA: Card = Card {
    id: "demand.trade-area",
    law: Law::Closed("A = HS * K / (p + 15)"),
    gives: symbol("A", &INCH2, "area of all seats"),
    takes: &[
        symbol("HS", &FOOT2, "heating surface"),
        symbol("K", &ONE, "1.25 for coal, 1.5 for oil"),
        symbol("p", &PSI_GAUGE, "working pressure, gauge"),
    ],
    limits: &[Limit::within("K", 1.25, 1.5)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &VALVE_SIZES,
        place: "area by heating surface",
    },
    eval: |v| {
        let r = trade_area(v[0], v[1], v[2]);
        positive(r, TRADE_AREA.id, ("HS", v[0]), NOTHING)
    },
};
