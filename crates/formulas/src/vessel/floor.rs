//! Family `vessel`: the least wall that copper tube should have for handling and wear alone.
//!
//! Source: rules for special service craft, table 1.6.1, copper. Copper alloys are left out.

use crate::sources::SPECIAL_SERVICE_CRAFT;
use reckoning::quantity::MM;
use reckoning::{Card, Cite, Law, Refused, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&FLOOR_WALL];

/// Greatest outside diameter of each row and its least nominal wall, mm. A diameter between two
/// rows of the print belongs to the larger one.
const ROWS: [(f64, f64); 7] = [
    (10.0, 1.0),
    (20.0, 1.2),
    (44.5, 1.5),
    (76.1, 2.0),
    (108.0, 2.5),
    (159.0, 3.0),
    (267.0, 3.5),
];

/// The smallest outside diameter of the table, mm.
const SMALLEST_MM: f64 = 8.0;

/// Least nominal wall of copper pipe; see [`FLOOR_WALL`]. `None` outside the table.
#[must_use]
pub fn floor_wall(d_o_mm: f64) -> Option<f64> {
    if d_o_mm < SMALLEST_MM {
        return None;
    }
    ROWS.iter().find(|(d, _)| d_o_mm <= *d).map(|(_, t)| *t)
}

/// Least nominal wall of copper pipe, for handling and wear.
pub static FLOOR_WALL: Card = Card {
    id: "vessel.floor-wall",
    law: Law::Words("t_f from the table of outside diameters, the larger row between two rows"),
    gives: symbol("t_f", &MM, "least nominal wall"),
    takes: &[symbol("D_o", &MM, "outside diameter")],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &SPECIAL_SERVICE_CRAFT,
        place: "Part 15, chapter 1, table 1.6.1",
    },
    eval: |v| {
        floor_wall(v[0]).ok_or(Refused {
            card: FLOOR_WALL.id,
            symbol: "D_o",
            value: v[0],
            why: "the table runs from 8 to 267 mm",
        })
    },
};
