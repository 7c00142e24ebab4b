//! Air that a bed of coal takes, by its depth in lumps.
//!
//! In a thin bed the oxygen is not used up; in a thick one it is gone three to four lumps above
//! the grate, and what rises is rich in carbon monoxide that must burn in air from elsewhere.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{M, ONE};
use reckoning::{Card, Cite, symbol};

use crate::sources::DERIVED;

/// Air through a bed over the air that its fuel needs, for a bed `l` deep of lumps `d`.
#[must_use]
pub fn bed_air_ratio(l: f64, d: f64) -> f64 {
    (0.65 + 0.75 * (-(l / d - 3.0) / 3.0).exp()).min(1.4)
}

/// Card of [`bed_air_ratio`].
pub static BED_AIR_RATIO: Card = Card {
    id: "bed.air-ratio",
    law: Law::Closed("lambda_b = min(1.4, 0.65 + 0.75 * exp(-(L / d - 3) / 3))"),
    gives: symbol("lambda_b", &ONE, "air through the bed over air needed"),
    takes: &[
        symbol("L", &M, "depth of the bed"),
        symbol("d", &M, "size of the lumps"),
    ],
    limits: &[Limit::within("L / d", 1.0, 30.0)],
    spread: Spread::Percent(20.0),
    cite: Cite {
        source: &DERIVED,
        place: "a curve from thin fires that pass spare air to thick ones that make gas; to be \
                found by trial",
    },
    eval: |v| Ok(bed_air_ratio(v[0], v[1])),
};
