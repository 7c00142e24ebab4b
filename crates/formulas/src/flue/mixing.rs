//! How far the gas of a laminar flue runs before its middle and its rim are one.

use reckoning::quantity::{M, M_PER_S};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::sources::COMMON_PRACTICE;

/// Length in which what differs across a round bore fades to a third, m.
#[must_use]
pub fn radial_mixing_length(u: f64, radius: f64) -> f64 {
    u * radius * radius / (14.7 * 2e-4)
}

/// Card of [`radial_mixing_length`].
pub static RADIAL_MIXING_LENGTH: Card = Card {
    id: "flue.radial-mixing-length",
    law: Law::Closed("L = u * R^2 / (14.7 * 2e-4)"),
    gives: symbol("L", &M, "length in which rim and middle of the gas mix"),
    takes: &[
        symbol("u", &M_PER_S, "mean speed of the gas"),
        symbol("R", &M, "half the bore of the flue"),
    ],
    limits: &[Limit::within("u", 0.0, 5.0)],
    spread: Spread::Percent(50.0),
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "first eigenvalue of diffusion in a round bore, from memory; hot gas of diffusivity \
                2e-4 m2/s",
    },
    eval: |v| Ok(radial_mixing_length(v[0], v[1])),
};
