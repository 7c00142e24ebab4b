//! Height of the flame over a wide wick or cup.

use reckoning::quantity::{KILOWATT, M};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::sources::FLAME_HEIGHTS_1983;

/// Height of the flame, m, over a cup of diameter `d` (m) that gives `q` kilowatt.
#[must_use]
pub fn flame_height(q_kw: f64, d: f64) -> f64 {
    0.235 * q_kw.powf(0.4) - 1.02 * d
}

/// Card of [`flame_height`].
pub static FLAME_HEIGHT: Card = Card {
    id: "spirit.flame-height",
    law: Law::Closed("L_f = 0.235 * Q^0.4 - 1.02 * d"),
    gives: symbol("L_f", &M, "height of the flame"),
    takes: &[
        symbol("Q", &KILOWATT, "heat of the spirit burnt to the end"),
        symbol("d", &M, "diameter of the wick or cup"),
    ],
    limits: &[Limit::at_least("d", 0.03), Limit::at_least("L_f", 0.0)],
    spread: Spread::Percent(30.0),
    cite: Cite {
        source: &FLAME_HEIGHTS_1983,
        place: "mean height of a flame over a pool in open air",
    },
    eval: |v| Ok(flame_height(v[0], v[1])),
};
