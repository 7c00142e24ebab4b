//! Heat transfer to a tube from gas that crosses it, and from a fire that it sees. Left out: the
//! shelter of neighbouring turns.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{KELVIN, ONE, W_PER_M2_K};
use reckoning::{Card, Cite, symbol};

use crate::heat::SIGMA;
use crate::sources::{CROSSFLOW_1977, DERIVED};

/// Nusselt number of a cylinder in crossflow, properties at the film temperature.
#[must_use]
pub fn crossflow_nusselt(re: f64, pr: f64) -> f64 {
    let low = 0.62 * re.sqrt() * pr.cbrt() / (1.0 + (0.4 / pr).powf(2.0 / 3.0)).powf(0.25);
    0.3 + low * (1.0 + (re / 282_000.0).powf(0.625)).powf(0.8)
}

/// Card of [`crossflow_nusselt`].
pub static CROSSFLOW_NUSSELT: Card = Card {
    id: "coil.crossflow-nusselt",
    law: Law::Closed(
        "Nu = 0.3 + 0.62 * Re^0.5 * Pr^(1/3) / (1 + (0.4 / Pr)^(2/3))^0.25 \
         * (1 + (Re / 282000)^0.625)^0.8",
    ),
    gives: symbol("Nu", &ONE, "Nusselt number of a cylinder in crossflow"),
    takes: &[
        symbol("Re", &ONE, "Reynolds number on the outside diameter"),
        symbol("Pr", &ONE, "Prandtl number of the film"),
    ],
    limits: &[Limit::at_least("Re * Pr", 0.2), Limit::at_most("Re", 1e7)],
    spread: Spread::Percent(20.0),
    cite: Cite {
        source: &CROSSFLOW_1977,
        place: "correlating equation for all Reynolds numbers",
    },
    eval: |v| Ok(crossflow_nusselt(v[0], v[1])),
};

/// Coefficient of radiation between a fire and a tube that sees it, W/(m² K): grey, the share `f`
/// of its outside in sight.
#[must_use]
pub fn radiation_coefficient(eps: f64, f: f64, t_g: f64, t_w: f64) -> f64 {
    eps * f * SIGMA * (t_g.powi(2) + t_w.powi(2)) * (t_g + t_w)
}

/// Card of [`radiation_coefficient`].
pub static RADIATION_COEFFICIENT: Card = Card {
    id: "coil.radiation-coefficient",
    law: Law::Closed("h_r = eps * F * 5.670374419e-8 * (T_g^2 + T_w^2) * (T_g + T_w)"),
    gives: symbol("h_r", &W_PER_M2_K, "coefficient of radiation"),
    takes: &[
        symbol("eps", &ONE, "emissivity of the outside of the tube"),
        symbol("F", &ONE, "share of its outside that sees the fire"),
        symbol("T_g", &KELVIN, "temperature of the fire"),
        symbol("T_w", &KELVIN, "temperature of the tube"),
    ],
    limits: &[Limit::within("eps", 0.0, 1.0), Limit::within("F", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "difference of fourth powers over the difference of temperatures",
    },
    eval: |v| Ok(radiation_coefficient(v[0], v[1], v[2], v[3])),
};

/// Coefficient outside a tube by convection and radiation together, W/(m² K).
#[must_use]
pub fn whole_coefficient(h_c: f64, h_r: f64) -> f64 {
    h_c + h_r
}

/// Card of [`whole_coefficient`].
pub static WHOLE_COEFFICIENT: Card = Card {
    id: "coil.whole-coefficient",
    law: Law::Closed("h = h_c + h_r"),
    gives: symbol("h", &W_PER_M2_K, "coefficient outside"),
    takes: &[
        symbol("h_c", &W_PER_M2_K, "coefficient of convection"),
        symbol("h_r", &W_PER_M2_K, "coefficient of radiation"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "both heats cross the same surface",
    },
    eval: |v| Ok(whole_coefficient(v[0], v[1])),
};
