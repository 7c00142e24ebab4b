//! Soot beside the radiation of gas in a flue. Gas alone is that of [`crate::heat`].
//!
//! What soot a flame carries is an assumption of the plan; here is how it adds to the gas and
//! how it burns out. Left out: the spectrum.

use reckoning::quantity::{M, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::sources::{COMMON_PRACTICE, DERIVED};

/// Emissivity of gas and soot together.
#[must_use]
pub fn sooty_emissivity(gas: f64, soot: f64) -> f64 {
    1.0 - (1.0 - gas) * (1.0 - soot)
}

/// Card of [`sooty_emissivity`].
pub static SOOTY_EMISSIVITY: Card = Card {
    id: "flue.sooty-emissivity",
    law: Law::Closed("eps = 1 - (1 - eps_g) * (1 - eps_s)"),
    gives: symbol("eps", &ONE, "emissivity of gas and soot together"),
    takes: &[
        symbol("eps_g", &ONE, "emissivity of the gas"),
        symbol("eps_s", &ONE, "emissivity of the soot"),
    ],
    limits: &[Limit::within("eps_s", 0.0, 0.2)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "two grey layers, each seen through the other",
    },
    eval: |v| Ok(sooty_emissivity(v[0], v[1])),
};

/// Emissivity of the soot at the distance `x` (m) behind the end of the flame.
#[must_use]
pub fn soot_left(soot: f64, x: f64) -> f64 {
    soot * (-x / 0.05).exp()
}

/// Card of [`soot_left`].
pub static SOOT_LEFT: Card = Card {
    id: "flue.soot-left",
    law: Law::Closed("eps_s = eps_0 * exp(-x / 0.05)"),
    gives: symbol("eps_s", &ONE, "emissivity of the soot behind the flame"),
    takes: &[
        symbol("eps_0", &ONE, "emissivity of the soot in the flame"),
        symbol("x", &M, "distance behind the end of the flame"),
    ],
    limits: &[Limit::at_least("x", 0.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "chosen here: the glow of a small flame fades over some 50 mm",
    },
    eval: |v| Ok(soot_left(v[0], v[1])),
};
