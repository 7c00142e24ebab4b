//! Family `register`: copper pipe, smoke tubes and flanges by the rules of a ship register.
//!
//! Sources: rules for special service craft, part 15, for the wall of copper pipe (the form from
//! memory, its corrosion allowance read); rules for naval ships, volume 2, part 8, for smoke tubes
//! of steel and for flanges. Smoke tubes of other sizes than the table's are left out, as it is not
//! read between its rows.

use super::positive;
use crate::sources::{COPPER_PIPE_FORM, NAVAL_SHIPS};
use reckoning::quantity::{BAR_GAUGE, MM, MPA, MPA_GAUGE, ONE};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[&PIPE_WALL, &SMOKE_TUBE, &BEND_RADIUS];

/// Least wall of copper pipe; see [`PIPE_WALL`].
#[must_use]
pub fn pipe_wall(p_bar: f64, d_mm: f64, f_mpa: f64, c_mm: f64) -> f64 {
    p_bar * d_mm / (20.0 * f_mpa + p_bar) + c_mm
}

/// Least wall of seamless copper pipe with what corrosion may take.
pub static PIPE_WALL: Card = Card {
    id: "register.pipe-wall",
    law: Law::Closed("t = p * D / (20 * f + p) + c"),
    gives: symbol("t", &MM, "least wall"),
    takes: &[
        symbol("p", &BAR_GAUGE, "design pressure, gauge"),
        symbol("D", &MM, "outside diameter"),
        symbol("f", &MPA, "design stress at metal temperature"),
        symbol("c", &MM, "corrosion allowance"),
    ],
    limits: &[Limit::at_least("c", 0.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &COPPER_PIPE_FORM,
        place: "part 15, chapter 1, 6.1",
    },
    eval: |v| {
        let t = pipe_wall(v[0], v[1], v[2], v[3]);
        positive(t, PIPE_WALL.id, ("D", v[1]), "there must be a pipe")
    },
};

/// Least wall, mm; then outside diameter, mm, and greatest design pressure, MPa.
const SMOKE_TUBES: [(f64, &[(f64, f64)]); 3] = [
    (2.95, &[(38.0, 1.48), (51.0, 1.07)]),
    (3.25, &[(38.0, 2.03), (51.0, 1.48), (76.0, 0.96)]),
    (3.66, &[(38.0, 2.66), (51.0, 2.07), (76.0, 1.31)]),
];

/// The smallest smoke tube of the table, mm.
const SMALLEST_MM: f64 = 38.0;

/// Greatest pressure of a smoke tube of steel, MPa; see [`SMOKE_TUBE`]. `None` outside the table.
#[must_use]
pub fn smoke_tube(t_mm: f64, d_mm: f64) -> Option<f64> {
    if d_mm < SMALLEST_MM {
        return None;
    }
    let (_, sizes) = SMOKE_TUBES.iter().rev().find(|(wall, _)| t_mm >= *wall)?;
    let (_, pressure) = sizes.iter().find(|(d, _)| d_mm <= *d)?;
    Some(*pressure)
}

/// Greatest design pressure of a smoke tube of steel.
pub static SMOKE_TUBE: Card = Card {
    id: "register.smoke-tube",
    law: Law::Words(
        "P from the table of walls and outside diameters, the thinner wall and the larger tube \
         between two rows",
    ),
    gives: symbol("P", &MPA_GAUGE, "greatest design pressure, gauge"),
    takes: &[
        symbol("t", &MM, "wall"),
        symbol("D", &MM, "outside diameter"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &NAVAL_SHIPS,
        place: "volume 2, part 8, chapter 1, table 1.12.1",
    },
    eval: |v| {
        smoke_tube(v[0], v[1]).ok_or(Refused {
            card: SMOKE_TUBE.id,
            symbol: "D",
            value: v[1],
            why: "the table holds tubes of 38 to 51 mm from 2.95 mm of wall, and to 76 mm from \
                  3.25 mm",
        })
    },
};

/// Least radius of a bend; see [`BEND_RADIUS`].
#[must_use]
pub fn bend_radius(k: f64, t_mm: f64) -> f64 {
    k * t_mm
}

/// Least inside radius of the bend of a flanged plate.
pub static BEND_RADIUS: Card = Card {
    id: "register.bend-radius",
    law: Law::Closed("r = k * t"),
    gives: symbol("r", &MM, "least inside radius of the bend"),
    takes: &[
        symbol("k", &ONE, "1.75 for end plates, 1 for firebox plates"),
        symbol("t", &MM, "plate"),
    ],
    limits: &[Limit::within("k", 1.0, 1.75)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &NAVAL_SHIPS,
        place: "volume 2, part 8, chapter 1, 9.1",
    },
    eval: |v| {
        let r = bend_radius(v[0], v[1]);
        positive(r, BEND_RADIUS.id, ("t", v[1]), "there must be a plate")
    },
};
