//! Family `flue`: from elastic and yield pressure to the pressure below which no tube of the
//! published tests collapsed.
//!
//! Source: EN 13445-3 table 8.5-5, cylinders and cones. Spheres are left out.

use crate::sources::EN_13445_3;
use reckoning::quantity::ONE;
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&LOWER_BOUND];

/// P_m/P_y and P_r/P_y, as printed; the last row stands for "7 and above".
const CURVE: [(f64, f64); 27] = [
    (0.0, 0.0),
    (0.25, 0.125),
    (0.5, 0.251),
    (0.75, 0.375),
    (1.0, 0.5),
    (1.25, 0.605),
    (1.5, 0.68),
    (1.75, 0.72),
    (2.0, 0.755),
    (2.25, 0.78),
    (2.5, 0.803),
    (2.75, 0.822),
    (3.0, 0.836),
    (3.25, 0.849),
    (3.5, 0.861),
    (3.75, 0.870),
    (4.0, 0.879),
    (4.25, 0.887),
    (4.5, 0.896),
    (4.75, 0.905),
    (5.0, 0.914),
    (5.25, 0.917),
    (5.5, 0.923),
    (5.75, 0.929),
    (6.0, 0.935),
    (6.5, 0.947),
    (7.0, 0.959),
];

/// Collapse over yield pressure at `x`, elastic over yield pressure; see [`LOWER_BOUND`].
/// `None` below 0.
#[must_use]
pub fn lower_bound(x: f64) -> Option<f64> {
    let (last_x, last_y) = CURVE[CURVE.len() - 1];
    if x >= last_x {
        return Some(last_y);
    }
    CURVE.windows(2).find_map(|pair| {
        let [(x0, y0), (x1, y1)] = *pair else {
            return None;
        };
        (x0 <= x && x <= x1).then(|| y0 + (y1 - y0) * (x - x0) / (x1 - x0))
    })
}

/// Lower bound of collapse pressure over yield pressure.
pub static LOWER_BOUND: Card = Card {
    id: "flue.lower-bound",
    law: Law::Words(
        "P_r / P_y from the table of P_m / P_y, straight between its rows; 0.959 from 7 upwards",
    ),
    gives: symbol("y", &ONE, "collapse over yield pressure, lower bound"),
    takes: &[symbol("x", &ONE, "elastic over yield pressure")],
    limits: &[Limit::at_least("x", 0.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &EN_13445_3,
        place: "table 8.5-5",
    },
    eval: |v| {
        lower_bound(v[0]).ok_or(Refused {
            card: LOWER_BOUND.id,
            symbol: "x",
            value: v[0],
            why: "the curve begins at 0",
        })
    },
};
