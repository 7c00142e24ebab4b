//! Convection in a round tube with a wall at one temperature, mean over the length.

use reckoning::quantity::ONE;
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use super::friction::{LAMINAR_TO, TURBULENT_FROM, turbulent};
use crate::sources::thermal;

/// Mean Nusselt number of laminar flow; see [`NUSSELT_LAMINAR`].
#[must_use]
pub fn nusselt_laminar(re: f64, pr: f64, d_over_l: f64) -> f64 {
    let graetz = re * pr * d_over_l;
    let thermal = 1.615 * graetz.cbrt() - 0.7;
    let both = (2.0 / (1.0 + 22.0 * pr)).sqrt() * graetz * graetz.sqrt();
    (3.66_f64.powi(3) + 0.7_f64.powi(3) + thermal * thermal * thermal + both).cbrt()
}

/// Mean Nusselt number of laminar flow that enters with an even speed.
pub static NUSSELT_LAMINAR: Card = Card {
    id: "heat.nusselt-laminar",
    law: Law::Closed(
        "Nu_2 = 1.615 * (Re * Pr * d_L)^(1 / 3); \
         Nu_3 = (2 / (1 + 22 * Pr))^(1 / 6) * (Re * Pr * d_L)^(1 / 2); \
         Nu = (3.66^3 + 0.7^3 + (Nu_2 - 0.7)^3 + Nu_3^3)^(1 / 3)",
    ),
    gives: NU,
    takes: &[RE, PR, D_L],
    limits: &[
        Limit::at_most("Re", 2300.0),
        Limit::within("Pr", 0.6, 1000.0),
    ],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::HEAT_ATLAS_2010,
        place: "section G1, laminar flow, constant wall temperature",
    },
    eval: |v| Ok(nusselt_laminar(v[0], v[1], v[2])),
};

/// Mean Nusselt number of turbulent flow of a gas that is cooled; see [`NUSSELT_TURBULENT`].
#[must_use]
pub fn nusselt_turbulent(re: f64, pr: f64, d_over_l: f64) -> f64 {
    let e = turbulent(re) / 8.0;
    let straight = e * (re - 1000.0) * pr / (1.0 + 12.7 * e.sqrt() * (pr.powf(2.0 / 3.0) - 1.0));
    straight * (1.0 + d_over_l.powf(2.0 / 3.0))
}

/// Mean Nusselt number of turbulent flow of a gas that is cooled.
pub static NUSSELT_TURBULENT: Card = Card {
    id: "heat.nusselt-turbulent",
    law: Law::Closed(
        "f = (1.8 * log10(Re) - 1.5)^-2; \
         Nu = f / 8 * (Re - 1000) * Pr / (1 + 12.7 * sqrt(f / 8) * (Pr^(2 / 3) - 1)) \
         * (1 + d_L^(2 / 3))",
    ),
    gives: NU,
    takes: &[RE, PR, D_L],
    limits: &[
        Limit::within("Re", 4000.0, 1e6),
        Limit::within("Pr", 0.1, 1000.0),
        Limit::at_most("d_L", 1.0),
    ],
    spread: Spread::Percent(10.0),
    cite: Cite {
        source: &thermal::IJHMT_63_TUBES,
        place: "turbulent flow; the factor for a gas that is cooled is 1",
    },
    eval: |v| Ok(nusselt_turbulent(v[0], v[1], v[2])),
};

/// Nusselt number between laminar and turbulent flow; see [`NUSSELT_TRANSITION`].
#[must_use]
pub fn nusselt_transition(re: f64, laminar_end: f64, turbulent_start: f64) -> f64 {
    let share = (re - LAMINAR_TO) / (TURBULENT_FROM - LAMINAR_TO);
    laminar_end + share * (turbulent_start - laminar_end)
}

/// Nusselt number between laminar and turbulent flow: a straight line.
pub static NUSSELT_TRANSITION: Card = Card {
    id: "heat.nusselt-transition",
    law: Law::Closed("Nu = Nu_l + (Re - 2300) / (4000 - 2300) * (Nu_t - Nu_l)"),
    gives: NU,
    takes: &[
        RE,
        symbol("Nu_l", &ONE, "laminar Nusselt number at Re = 2300"),
        symbol("Nu_t", &ONE, "turbulent Nusselt number at Re = 4000"),
    ],
    limits: &[Limit::within("Re", 2300.0, 4000.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::IJHMT_63_TUBES,
        place: "transition",
    },
    eval: |v| Ok(nusselt_transition(v[0], v[1], v[2])),
};

/// Mean Nusselt number of a gas that is cooled, whatever the flow: the three laws above where
/// each of them holds.
#[must_use]
pub fn nusselt(re: f64, pr: f64, d_over_l: f64) -> f64 {
    if re <= LAMINAR_TO {
        nusselt_laminar(re, pr, d_over_l)
    } else if re >= TURBULENT_FROM {
        nusselt_turbulent(re, pr, d_over_l)
    } else {
        nusselt_transition(
            re,
            nusselt_laminar(LAMINAR_TO, pr, d_over_l),
            nusselt_turbulent(TURBULENT_FROM, pr, d_over_l),
        )
    }
}

const NU: Symbol = symbol("Nu", &ONE, "mean Nusselt number");
const RE: Symbol = symbol("Re", &ONE, "Reynolds number");
const PR: Symbol = symbol("Pr", &ONE, "Prandtl number");
const D_L: Symbol = symbol("d_L", &ONE, "bore over length");
