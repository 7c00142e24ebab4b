//! How the heat of a poker burner is set free along a flue: the primary share at the ports, the
//! rest as the secondary air mixes in.
//!
//! The mixing length is chosen, not published, and is the largest unknown of a gas flue; a spread
//! must be carried with it. Left out: quenching of the flame on cold metal.

use reckoning::quantity::{M, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::sources::DERIVED;

/// A burner whose ports are spread along the flue from its mouth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Poker {
    /// Ported length, m.
    pub length: f64,
    /// Primary air over the air that the gas needs.
    pub lambda_1: f64,
    /// Length in which the secondary air mixes in, m.
    pub mixing: f64,
}

/// Share of the gas that has burnt at the distance `x` (m) from the first port.
#[must_use]
pub fn burnt_share(poker: &Poker, x: f64) -> f64 {
    let Poker {
        length,
        lambda_1,
        mixing,
    } = *poker;
    let a = x.min(length);
    let primary = lambda_1.min(1.0);
    let late = (-(x - a) / mixing).exp() - (-x / mixing).exp();
    (a - (1.0 - primary) * mixing * late) / length
}

/// Card of [`burnt_share`].
pub static BURNT_SHARE: Card = Card {
    id: "flue.burnt-share",
    law: Law::Closed(
        "a = min(x, L_p); l = min(lambda_1, 1); \
         F = (a - (1 - l) * L_s * (exp(-(x - a) / L_s) - exp(-x / L_s))) / L_p",
    ),
    gives: symbol("F", &ONE, "share of the gas that has burnt"),
    takes: &[
        symbol("x", &M, "distance from the first port"),
        symbol("L_p", &M, "ported length of the burner"),
        symbol(
            "lambda_1",
            &ONE,
            "primary air over the air that the gas needs",
        ),
        symbol("L_s", &M, "length in which the secondary air mixes in"),
    ],
    limits: &[Limit::at_least("x", 0.0), Limit::within("L_s", 0.01, 0.1)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "even ports, each with a primary share at once and the rest by an exponential law",
    },
    eval: |v| {
        let poker = Poker {
            length: v[1],
            lambda_1: v[2],
            mixing: v[3],
        };
        Ok(burnt_share(&poker, v[0]))
    },
};
