//! The missing quantity: steam supplied beyond what the diagram shows, from condensation on the
//! walls and leakage past valve and piston.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{
    INCH2, J_PER_KG, KG, KG_PER_S, LB_PER_H, M, M2, ONE, PER_S, PSI_ABSOLUTE, WATT,
};
use reckoning::{Card, Cite, symbol};
use std::f64::consts::PI;

use crate::sources::{DERIVED, NAPIER_RULE};

/// Area of the leak of a number of cylinders of bore `d` with a clear gap round each.
#[must_use]
pub fn leak_area(n: f64, d: f64, gap: f64) -> f64 {
    n * PI * d * gap
}

/// Card of [`leak_area`].
pub static LEAK_AREA: Card = Card {
    id: "engine.leak-area",
    law: Law::Closed("A_l = n * pi * D * g"),
    gives: symbol("A_l", &M2, "area past which steam leaks to the exhaust"),
    takes: &[
        symbol("n", &ONE, "number of cylinders"),
        symbol("D", &M, "bore of a cylinder"),
        symbol(
            "g",
            &M,
            "clear gap round a piston that leaks as much as valve and rings",
        ),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "a gap round a piston",
    },
    eval: |v| Ok(leak_area(v[0], v[1], v[2])),
};

/// Saturated steam through an opening, lb/h, from its area in square inches and its pressure in
/// pounds per square inch absolute.
#[must_use]
pub fn leak(area: f64, p: f64) -> f64 {
    3600.0 * area * p / 70.0
}

/// Card of [`leak`].
pub static LEAK: Card = Card {
    id: "engine.leak",
    law: Law::Closed("m_l = 3600 * A_l * p_1 / 70"),
    gives: symbol("m_l", &LB_PER_H, "steam that leaks to the exhaust"),
    takes: &[
        symbol("A_l", &INCH2, "area past which steam leaks to the exhaust"),
        symbol("p_1", &PSI_ABSOLUTE, "pressure at admission"),
    ],
    limits: &[Limit::at_least("p_1", 25.0)],
    spread: Spread::Percent(3.0),
    cite: Cite {
        source: &NAPIER_RULE,
        place: "lb in a second, square inches and lb per square inch absolute; choked",
    },
    eval: |v| Ok(leak(v[0], v[1])),
};

/// What the missing quantity is made of.
#[derive(Clone, Copy, Debug)]
pub struct Lost {
    /// Steam condensed in a stroke.
    pub m_c: f64,
    /// Steam that leaks in a second.
    pub m_l: f64,
    /// Working strokes in a second.
    pub n: f64,
    /// Steam that the diagram accounts for in a stroke.
    pub m_i: f64,
}

/// Missing quantity over the indicated steam, by a factor on what walls and leaks are reckoned to
/// lose.
#[must_use]
pub fn missing_quantity(f: f64, lost: &Lost) -> f64 {
    f * (lost.m_c + lost.m_l / lost.n) / lost.m_i
}

/// Card of [`missing_quantity`].
pub static MISSING_QUANTITY: Card = Card {
    id: "engine.missing-quantity",
    law: Law::Closed("mu = F * (m_c + m_l / n) / m_i"),
    gives: symbol("mu", &ONE, "missing quantity over the indicated steam"),
    takes: &[
        symbol(
            "F",
            &ONE,
            "missing quantity over what walls and leaks are reckoned to lose",
        ),
        symbol("m_c", &KG, "steam condensed on the walls in a stroke"),
        symbol("m_l", &KG_PER_S, "steam that leaks to the exhaust"),
        symbol("n", &PER_S, "working strokes in a second"),
        symbol("m_i", &KG, "steam accounted for by the diagram in a stroke"),
    ],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "definition of the missing quantity",
    },
    eval: |v| {
        let lost = Lost {
            m_c: v[1],
            m_l: v[2],
            n: v[3],
            m_i: v[4],
        };
        Ok(missing_quantity(v[0], &lost))
    },
};

/// Steam that a loss of heat condenses.
#[must_use]
pub fn condensed(heat: f64, latent: f64) -> f64 {
    heat / latent
}

/// Card of [`condensed`].
pub static CONDENSED: Card = Card {
    id: "engine.condensed",
    law: Law::Closed("m_k = Q / h_lg"),
    gives: symbol("m_k", &KG_PER_S, "steam that a loss of heat condenses"),
    takes: &[
        symbol("Q", &WATT, "heat lost"),
        symbol("h_lg", &J_PER_KG, "heat of evaporation"),
    ],
    limits: &[Limit::at_least("Q", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "heat of evaporation",
    },
    eval: |v| Ok(condensed(v[0], v[1])),
};

/// Enthalpy of steam that has lost heat on its way.
#[must_use]
pub fn enthalpy_after_loss(h: f64, heat: f64, m: f64) -> f64 {
    h - heat / m
}

/// Card of [`enthalpy_after_loss`].
pub static ENTHALPY_AFTER_LOSS: Card = Card {
    id: "engine.enthalpy-after-loss",
    law: Law::Closed("h = h_1 - Q / m"),
    gives: symbol("h", &J_PER_KG, "enthalpy after the loss"),
    takes: &[
        symbol("h_1", &J_PER_KG, "enthalpy before the loss"),
        symbol("Q", &WATT, "heat lost"),
        symbol("m", &KG_PER_S, "steam"),
    ],
    limits: &[Limit::at_least("m", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "first law for a steady stream",
    },
    eval: |v| Ok(enthalpy_after_loss(v[0], v[1], v[2])),
};
