//! An analysis brought to the water and ash of the fuel in the hopper.

use reckoning::quantity::ONE;
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::sources::DERIVED;

/// Share of an element at other shares of water and ash; see [`SHARE_AS_FIRED`].
#[must_use]
pub fn share_as_fired(share: f64, burnable: f64, water: f64, ash: f64) -> f64 {
    share / burnable * (1.0 - water - ash)
}

/// Share of an element in a fuel that has other shares of water and ash than the analysis.
pub static SHARE_AS_FIRED: Card = Card {
    id: "fuel.share-as-fired",
    law: Law::Closed("x = x_0 / B * (1 - W - A)"),
    gives: symbol("x", &ONE, "share of the element as fired, by mass"),
    takes: &[
        symbol("x_0", &ONE, "share of the element in the analysis, by mass"),
        symbol("B", &ONE, "what is neither water nor ash in the analysis"),
        symbol("W", &ONE, "water as fired, by mass"),
        symbol("A", &ONE, "ash as fired, by mass"),
    ],
    limits: &[Limit::within("W + A", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "balance of mass: what burns keeps its proportions",
    },
    eval: |v| Ok(share_as_fired(v[0], v[1], v[2], v[3])),
};
