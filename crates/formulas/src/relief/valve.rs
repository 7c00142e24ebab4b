//! Family `relief`: what a safety valve passes, and the pressure at which it passes it.
//!
//! Sources: the boiler regulations that state constants by lift; ISO 4126 for a measured
//! coefficient; the rule for the ideal nozzle beside them. Springs are left out.

use crate::sources::{DERIVED, IBR_1950, ISO_4126_7, NAPIER_RULE};
use crate::vessel::positive;
use reckoning::quantity::{
    BAR_ABSOLUTE, BAR_GAUGE, INCH2, KG_PER_H, LB_PER_H, M3_PER_KG, MM, MM2, ONE, PSI_ABSOLUTE,
};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};
use std::f64::consts::PI;

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &ABSOLUTE,
    &SEAT_AREA,
    &BY_LIFT,
    &SEAT_BY_LIFT,
    &FLOW_FUNCTION,
    &MEASURED,
    &DERATED,
    &IDEAL,
    &TOGETHER,
];

const NOTHING: &str = "there must be a seat and a pressure";

/// Absolute pressure at a valve; see [`ABSOLUTE`].
#[must_use]
pub fn absolute(p_bar: f64, a: f64, p_a_bar: f64) -> f64 {
    p_bar * (1.0 + a) + p_a_bar
}

/// Absolute pressure at a valve that is set to a gauge pressure, with a share of accumulation
/// above it.
pub static ABSOLUTE: Card = Card {
    id: "relief.absolute",
    law: Law::Closed("P_0 = P * (1 + a) + P_a"),
    gives: symbol("P_0", &BAR_ABSOLUTE, "absolute pressure at the valve"),
    takes: &[
        symbol("P", &BAR_GAUGE, "set pressure, gauge"),
        symbol("a", &ONE, "accumulation, share of the set pressure"),
        symbol("P_a", &BAR_ABSOLUTE, "pressure of the air"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "meaning of the words",
    },
    eval: |v| Ok(absolute(v[0], v[1], v[2])),
};

/// Area of a seat; see [`SEAT_AREA`].
#[must_use]
pub fn seat_area(d_mm: f64) -> f64 {
    PI / 4.0 * d_mm * d_mm
}

/// Area of the bore of a seat.
pub static SEAT_AREA: Card = Card {
    id: "relief.seat-area",
    law: Law::Closed("A = pi / 4 * d^2"),
    gives: symbol("A", &MM2, "area of the seat"),
    takes: &[symbol("d", &MM, "least bore of the seat")],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "area of a circle",
    },
    eval: |v| {
        let r = seat_area(v[0]);
        positive(r, SEAT_AREA.id, ("d", v[0]), NOTHING)
    },
};

/// Capacity by lift; see [`BY_LIFT`].
#[must_use]
pub fn by_lift(c: f64, a_mm2: f64, p_bar: f64) -> f64 {
    c * a_mm2 * p_bar
}

/// Saturated steam that a safety valve passes, by the class of its lift.
pub static BY_LIFT: Card = Card {
    id: "relief.by-lift",
    law: Law::Closed("E = C * A * P_0"),
    gives: symbol("E", &KG_PER_H, "steam that the valve passes"),
    takes: &[
        symbol("C", &ONE, "0.05 ordinary, 0.10 high, 0.24 full lift"),
        symbol("A", &MM2, "area of the seat"),
        symbol("P_0", &BAR_ABSOLUTE, "set pressure, absolute"),
    ],
    limits: &[Limit::within("C", 0.05, 0.24)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 293",
    },
    eval: |v| {
        let r = by_lift(v[0], v[1], v[2]);
        positive(r, BY_LIFT.id, ("C", v[0]), NOTHING)
    },
};

/// Seat that is asked; see [`SEAT_BY_LIFT`].
#[must_use]
pub fn seat_by_lift(m_kg_h: f64, c: f64, p_bar: f64) -> f64 {
    (4.0 * m_kg_h / (PI * c * p_bar)).sqrt()
}

/// Bore of the seat that passes a flow, by the class of its lift.
pub static SEAT_BY_LIFT: Card = Card {
    id: "relief.seat-by-lift",
    law: Law::Closed("d = sqrt(4 * m / (pi * C * P_0))"),
    gives: symbol("d", &MM, "bore of the seat asked"),
    takes: &[
        symbol("m", &KG_PER_H, "steam to be passed"),
        symbol("C", &ONE, "0.05 ordinary, 0.10 high, 0.24 full lift"),
        symbol("P_0", &BAR_ABSOLUTE, "set pressure, absolute"),
    ],
    limits: &[Limit::within("C", 0.05, 0.24)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 293, solved for the bore",
    },
    eval: |v| {
        let r = seat_by_lift(v[0], v[1], v[2]);
        positive(r, SEAT_BY_LIFT.id, ("m", v[0]), NOTHING)
    },
};

/// Flow function of a choked nozzle; see [`FLOW_FUNCTION`].
#[must_use]
pub fn flow_function(k: f64) -> f64 {
    3.948 * (k * (2.0 / (k + 1.0)).powf((k + 1.0) / (k - 1.0))).sqrt()
}

/// Function of the isentropic exponent in the flow of a choked nozzle.
pub static FLOW_FUNCTION: Card = Card {
    id: "relief.flow-function",
    law: Law::Closed("C = 3.948 * sqrt(k * (2 / (k + 1))^((k + 1) / (k - 1)))"),
    gives: symbol("C", &ONE, "flow function"),
    takes: &[symbol(
        "k",
        &ONE,
        "isentropic exponent, 1.135 for saturated steam",
    )],
    limits: &[Limit::within("k", 1.0, 1.7)],
    spread: Spread::Exact,
    cite: Cite {
        source: &ISO_4126_7,
        place: "critical flow",
    },
    eval: |v| {
        let r = flow_function(v[0]);
        positive(r, FLOW_FUNCTION.id, ("k", v[0]), NOTHING)
    },
};

/// Capacity by a measured coefficient; see [`MEASURED`].
#[must_use]
pub fn measured(c: f64, a_mm2: f64, k_dr: f64, p_bar: f64, v: f64) -> f64 {
    0.2883 * c * a_mm2 * k_dr * (p_bar / v).sqrt()
}

/// Steam that a valve of measured coefficient passes when choked.
pub static MEASURED: Card = Card {
    id: "relief.measured",
    law: Law::Closed("Q_m = 0.2883 * C * A * K_dr * sqrt(P_0 / v)"),
    gives: symbol("Q_m", &KG_PER_H, "steam that the valve passes"),
    takes: &[
        symbol("C", &ONE, "flow function"),
        symbol("A", &MM2, "area of the seat"),
        symbol("K_dr", &ONE, "coefficient, lowered for certainty"),
        symbol("P_0", &BAR_ABSOLUTE, "absolute pressure at the valve"),
        symbol("v", &M3_PER_KG, "volume of the steam at that pressure"),
    ],
    limits: &[Limit::at_least("P_0", 1.7), Limit::at_most("K_dr", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &ISO_4126_7,
        place: "critical flow",
    },
    eval: |v| {
        let r = measured(v[0], v[1], v[2], v[3], v[4]);
        positive(r, MEASURED.id, ("K_dr", v[2]), NOTHING)
    },
};

/// Coefficient lowered for certainty; see [`DERATED`].
#[must_use]
pub fn derated(k_d: f64) -> f64 {
    0.9 * k_d
}

/// Coefficient that a measured one is lowered to.
pub static DERATED: Card = Card {
    id: "relief.derated",
    law: Law::Closed("K_dr = 0.9 * K_d"),
    gives: symbol("K_dr", &ONE, "coefficient, lowered for certainty"),
    takes: &[symbol("K_d", &ONE, "coefficient as measured")],
    limits: &[Limit::at_most("K_d", 1.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &ISO_4126_7,
        place: "certified coefficient",
    },
    eval: |v| Ok(derated(v[0])),
};

/// Ideal nozzle; see [`IDEAL`].
#[must_use]
pub fn ideal(a_in2: f64, p_psi: f64, k_d: f64) -> f64 {
    51.5 * a_in2 * p_psi * k_d
}

/// Saturated steam through an ideal nozzle of the bore; shown beside, for a plain valve passes
/// a tenth of it.
pub static IDEAL: Card = Card {
    id: "relief.ideal",
    law: Law::Closed("W = 51.5 * A * P_0 * K_d"),
    gives: symbol("W", &LB_PER_H, "steam through the nozzle"),
    takes: &[
        symbol("A", &INCH2, "area of the bore"),
        symbol("P_0", &PSI_ABSOLUTE, "absolute pressure at the valve"),
        symbol("K_d", &ONE, "coefficient, 1 for the ideal nozzle"),
    ],
    limits: &[],
    spread: Spread::Percent(3.0),
    cite: Cite {
        source: &NAPIER_RULE,
        place: "safety valve area, saturated steam",
    },
    eval: |v| {
        let r = ideal(v[0], v[1], v[2]);
        positive(r, IDEAL.id, ("A", v[0]), NOTHING)
    },
};

/// Capacity of valves together; see [`TOGETHER`].
#[must_use]
pub fn together(e_1: f64, e_2: f64) -> f64 {
    e_1 + e_2
}

/// Steam that valves pass together.
pub static TOGETHER: Card = Card {
    id: "relief.together",
    law: Law::Closed("E = E_1 + E_2"),
    gives: symbol("E", &KG_PER_H, "steam that the valves pass"),
    takes: &[
        symbol("E_1", &KG_PER_H, "steam of the valves before"),
        symbol("E_2", &KG_PER_H, "steam of one more"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "sum",
    },
    eval: |v| Ok(together(v[0], v[1])),
};
