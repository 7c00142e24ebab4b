//! Heat transfer to a tube from gas that crosses it. Left out: the shelter of neighbouring
//! turns.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::ONE;
use reckoning::{Card, Cite, symbol};

use crate::sources::CROSSFLOW_1977;

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
