//! Family `demand`: the steam that safety valves must pass.
//!
//! Sources: boiler regulations for the least steam a heating surface counts for, the boiler code
//! for a firebox, a trade rule for the area of the seats. What the fire itself can raise comes
//! from the balance of the fire, at the heat of evaporation with the feed shut.

use crate::sources::{DERIVED, IBR_1950, NAPIER_RULE, VALVE_SIZES};
use crate::vessel::positive;
use reckoning::quantity::{
    FOOT2, INCH2, KG_PER_H, KG_PER_M2_H, LB_PER_H, M2, MM, MM2, ONE, PSI_ABSOLUTE, PSI_GAUGE,
};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[&BY_SURFACE, &TRADE_AREA, &SEAT_OF_AREA, &IDEAL_AREA];

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

/// Seat of an area; see [`SEAT_OF_AREA`].
#[must_use]
pub fn seat_of_area(a_mm2: f64) -> f64 {
    (4.0 * a_mm2 / PI).sqrt()
}

/// Seat of one valve with an area.
pub static SEAT_OF_AREA: Card = Card {
    id: "demand.seat-of-area",
    law: Law::Closed("d = sqrt(4 * A / pi)"),
    gives: symbol("d", &MM, "seat of one valve"),
    takes: &[symbol("A", &MM2, "area of the seat")],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "area of a circle",
    },
    eval: |v| positive(seat_of_area(v[0]), SEAT_OF_AREA.id, ("A", v[0]), NOTHING),
};

/// Ideal nozzle for a flow; see [`IDEAL_AREA`].
#[must_use]
pub fn ideal_area(w_lb_h: f64, p_psi: f64) -> f64 {
    w_lb_h / (51.5 * p_psi)
}

/// Area of the ideal nozzle that passes a flow of saturated steam; shown beside, for no plain valve
/// opens so far.
pub static IDEAL_AREA: Card = Card {
    id: "demand.ideal-area",
    law: Law::Closed("A = W / (51.5 * P_0)"),
    gives: symbol("A", &INCH2, "area of the ideal nozzle"),
    takes: &[
        symbol("W", &LB_PER_H, "steam to be passed"),
        symbol("P_0", &PSI_ABSOLUTE, "absolute pressure at the valve"),
    ],
    limits: &[],
    spread: Spread::Percent(3.0),
    cite: Cite {
        source: &NAPIER_RULE,
        place: "safety valve area, saturated steam",
    },
    eval: |v| {
        let r = ideal_area(v[0], v[1]);
        positive(r, IDEAL_AREA.id, ("W", v[0]), NOTHING)
    },
};
