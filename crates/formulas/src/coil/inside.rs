//! Flow inside a helical tube: where it turns turbulent, its friction, its Nusselt number.
//! Friction factors are those of the Darcy form.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::ONE;
use reckoning::{Card, Cite, Symbol, symbol};

use crate::sources::{
    COIL_CRITICAL_1967, COIL_LAMINAR_1929, COIL_LAMINAR_HEAT_1981, COIL_TURBULENT_1959,
    COIL_TURBULENT_HEAT_1997,
};

const RE: Symbol = symbol("Re", &ONE, "Reynolds number of the tube");
const PR: Symbol = symbol("Pr", &ONE, "Prandtl number");
const RATIO: Symbol = symbol("s", &ONE, "bore of the tube over mean diameter of the coil");

/// Reynolds number at which the flow in a coil turns turbulent.
#[must_use]
pub fn critical_reynolds(s: f64) -> f64 {
    2300.0 * (1.0 + 8.6 * s.powf(0.45))
}

/// Card of [`critical_reynolds`].
pub static CRITICAL_REYNOLDS: Card = Card {
    id: "coil.critical-reynolds",
    law: Law::Closed("Re_c = 2300 * (1 + 8.6 * s^0.45)"),
    gives: symbol(
        "Re_c",
        &ONE,
        "Reynolds number at which the coil turns turbulent",
    ),
    takes: &[RATIO],
    limits: &[Limit::within("s", 0.0, 0.2)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COIL_CRITICAL_1967,
        place: "critical Reynolds number",
    },
    eval: |v| Ok(critical_reynolds(v[0])),
};

/// Darcy friction factor of laminar flow in a coil.
#[must_use]
pub fn laminar_friction(re: f64, s: f64) -> f64 {
    let straight = 64.0 / re;
    let de = re * s.sqrt();
    if de <= 11.6 {
        straight
    } else {
        straight / (1.0 - (1.0 - (11.6 / de).powf(0.45)).powf(1.0 / 0.45))
    }
}

/// Card of [`laminar_friction`].
pub static LAMINAR_FRICTION: Card = Card {
    id: "coil.laminar-friction",
    law: Law::Closed(
        "De = Re * sqrt(s); \
         f = 64 / Re / cases(De <= 11.6, 1, 1 - (1 - (11.6 / De)^0.45)^(1 / 0.45))",
    ),
    gives: symbol("f", &ONE, "friction factor, Darcy form"),
    takes: &[RE, RATIO],
    limits: &[Limit::at_most("Re * sqrt(s)", 2000.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COIL_LAMINAR_1929,
        place: "resistance of curved pipes",
    },
    eval: |v| Ok(laminar_friction(v[0], v[1])),
};

/// Darcy friction factor of turbulent flow in a coil.
#[must_use]
pub fn turbulent_friction(re: f64, s: f64) -> f64 {
    4.0 * (0.00725 * s.sqrt() + 0.076 * re.powf(-0.25))
}

/// Card of [`turbulent_friction`].
pub static TURBULENT_FRICTION: Card = Card {
    id: "coil.turbulent-friction",
    law: Law::Closed("f = 4 * (0.00725 * sqrt(s) + 0.076 * Re^(-0.25))"),
    gives: symbol("f", &ONE, "friction factor, Darcy form"),
    takes: &[RE, RATIO],
    limits: &[Limit::within("Re * s^2", 0.034, 300.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COIL_TURBULENT_1959,
        place: "friction factor of smooth curved pipes",
    },
    eval: |v| Ok(turbulent_friction(v[0], v[1])),
};

/// Nusselt number of laminar flow in a coil at steady wall temperature.
#[must_use]
pub fn laminar_nusselt(re: f64, pr: f64, s: f64) -> f64 {
    let de = re * s.sqrt();
    let x1 = (1.0 + 957.0 / (de * de * pr)).powi(2);
    let x2 = 1.0 + 0.477 / pr;
    ((3.657 + 4.343 / x1).powi(3) + 1.158 * (de / x2).powf(1.5)).cbrt()
}

/// Card of [`laminar_nusselt`].
pub static LAMINAR_NUSSELT: Card = Card {
    id: "coil.laminar-nusselt",
    law: Law::Closed(
        "De = Re * sqrt(s); x1 = (1 + 957 / (De^2 * Pr))^2; x2 = 1 + 0.477 / Pr; \
         Nu = ((3.657 + 4.343 / x1)^3 + 1.158 * (De / x2)^1.5)^(1/3)",
    ),
    gives: symbol("Nu", &ONE, "Nusselt number inside the coil"),
    takes: &[RE, PR, RATIO],
    limits: &[Limit::at_most("Re * sqrt(s)", 2500.0)],
    spread: Spread::Percent(15.0),
    cite: Cite {
        source: &COIL_LAMINAR_HEAT_1981,
        place: "correlating equation for steady wall temperature",
    },
    eval: |v| Ok(laminar_nusselt(v[0], v[1], v[2])),
};

/// Nusselt number of turbulent flow in a coil.
#[must_use]
pub fn turbulent_nusselt(re: f64, pr: f64, s: f64) -> f64 {
    0.00619 * re.powf(0.92) * pr.powf(0.4) * (1.0 + 3.455 * s)
}

/// Card of [`turbulent_nusselt`].
pub static TURBULENT_NUSSELT: Card = Card {
    id: "coil.turbulent-nusselt",
    law: Law::Closed("Nu = 0.00619 * Re^0.92 * Pr^0.4 * (1 + 3.455 * s)"),
    gives: symbol("Nu", &ONE, "Nusselt number inside the coil"),
    takes: &[RE, PR, RATIO],
    limits: &[
        Limit::within("Re", 5e3, 1e5),
        Limit::within("Pr", 0.7, 5.0),
        Limit::within("s", 0.0267, 0.0884),
    ],
    spread: Spread::Percent(15.0),
    cite: Cite {
        source: &COIL_TURBULENT_HEAT_1997,
        place: "average Nusselt number in turbulent flow",
    },
    eval: |v| Ok(turbulent_nusselt(v[0], v[1], v[2])),
};
