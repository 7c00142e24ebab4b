//! Family `state`: girders, the plate under them, dished ends and cross tubes by the Indian Boiler
//! Regulations.
//!
//! Source: Indian Boiler Regulations 1950 as amended, regulations 190, 223, 227, 229, 567 and 582,
//! read. Uptakes (half of a furnace) and joggled foundations are left out. Plates count in parts of
//! 1/32 in, as the regulations print them.

use super::positive;
use crate::sources::{DERIVED, IBR_1950};
use reckoning::quantity::{INCH, ONE, PSI_GAUGE, TON_PER_INCH2};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &GIRDER,
    &UNDER_GIRDERS,
    &DISHED,
    &OUTSIDE_RADIUS,
    &CROWN_HEMISPHERE,
    &CROSS_TUBE,
];

const NO_WEAR: &str = "the form takes 1/32 in of plate for wear and has none left";

/// A girder on a crown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Girder {
    /// Constant, 22 for steel plate.
    pub c: f64,
    /// Tensile strength, tons/in².
    pub s_tons: f64,
    /// Thickness of all its webs, in.
    pub t_in: f64,
    /// Depth, in.
    pub depth_in: f64,
    /// Span, in.
    pub l_in: f64,
    /// Distance of neighbours, in.
    pub y_in: f64,
}

/// Working pressure of a crown on girders; see [`GIRDER`].
#[must_use]
pub fn girder(at: Girder) -> f64 {
    at.c * at.s_tons * 32.0 * at.t_in * at.depth_in * at.depth_in / (at.l_in * at.l_in * at.y_in)
}

/// Working pressure of a crown on girders that stand on the ends of the firebox.
pub static GIRDER: Card = Card {
    id: "state.girder",
    law: Law::Closed("WP = C * S * 32 * t * D^2 / (L^2 * Y)"),
    gives: symbol("WP", &PSI_GAUGE, "working pressure"),
    takes: &[
        symbol("C", &ONE, "constant, 22 for steel plate, 19 for cast steel"),
        symbol("S", &TON_PER_INCH2, "tensile strength"),
        symbol("t", &INCH, "thickness of all webs of a girder"),
        symbol("D", &INCH, "depth of the girder"),
        symbol("L", &INCH, "span"),
        symbol("Y", &INCH, "distance of neighbouring girders"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 229",
    },
    eval: |v| {
        let girder_of = Girder {
            c: v[0],
            s_tons: v[1],
            t_in: v[2],
            depth_in: v[3],
            l_in: v[4],
            y_in: v[5],
        };
        let why = "there must be a girder";
        positive(girder(girder_of), GIRDER.id, ("D", v[3]), why)
    },
};

/// Working pressure of a tube plate under girders; see [`UNDER_GIRDERS`].
#[must_use]
pub fn under_girders(t_in: f64, p_in: f64, d_in: f64, l_in: f64) -> f64 {
    875.0 * 32.0 * t_in * (p_in - d_in) / (l_in * p_in)
}

/// Working pressure of a steel tube plate that is pressed by girders.
pub static UNDER_GIRDERS: Card = Card {
    id: "state.under-girders",
    law: Law::Closed("WP = 875 * 32 * t * (p - d) / (L * p)"),
    gives: symbol("WP", &PSI_GAUGE, "working pressure"),
    takes: &[
        symbol("t", &INCH, "tube plate"),
        symbol("p", &INCH, "level pitch of the tubes"),
        symbol("d", &INCH, "bore of the tubes; their hole asks more"),
        symbol("L", &INCH, "length of the firebox at the top"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 582",
    },
    eval: |v| {
        let p = under_girders(v[0], v[1], v[2], v[3]);
        let why = "the holes run into each other";
        positive(p, UNDER_GIRDERS.id, ("p", v[1]), why)
    },
};

/// Working pressure of a dished end; see [`DISHED`].
#[must_use]
pub fn dished(k: f64, s_tons: f64, t_in: f64, r_in: f64) -> f64 {
    k * s_tons * (32.0 * t_in - 1.0) / r_in
}

/// Working pressure of an unstayed dished end.
pub static DISHED: Card = Card {
    id: "state.dished",
    law: Law::Closed("WP = k * S * (32 * t - 1) / R"),
    gives: symbol("WP", &PSI_GAUGE, "working pressure"),
    takes: &[
        symbol(
            "k",
            &ONE,
            "15 with pressure on the hollow side, 12 on the round one, 10.5 there in the flame",
        ),
        symbol("S", &TON_PER_INCH2, "tensile strength"),
        symbol("t", &INCH, "plate"),
        symbol(
            "R",
            &INCH,
            "radius of the dish, inside where its hollow side is pressed, else outside",
        ),
    ],
    limits: &[Limit::within("k", 10.5, 15.0)],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulations 567 and 190",
    },
    eval: |v| {
        let p = dished(v[0], v[1], v[2], v[3]);
        positive(p, DISHED.id, ("t", v[2]), NO_WEAR)
    },
};

/// Outside radius of a dish; see [`OUTSIDE_RADIUS`].
#[must_use]
pub fn outside_radius(r_i_in: f64, t_in: f64) -> f64 {
    r_i_in + t_in
}

/// Outside radius of a dish.
pub static OUTSIDE_RADIUS: Card = Card {
    id: "state.outside-radius",
    law: Law::Closed("R = R_i + t"),
    gives: symbol("R", &INCH, "outside radius of the dish"),
    takes: &[
        symbol("R_i", &INCH, "inside radius of the dish"),
        symbol("t", &INCH, "plate"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "section of a dish",
    },
    eval: |v| {
        let r = outside_radius(v[0], v[1]);
        positive(r, OUTSIDE_RADIUS.id, ("R_i", v[0]), "there must be a dish")
    },
};

/// Working pressure of a hemispherical crown; see [`CROWN_HEMISPHERE`].
#[must_use]
pub fn crown_hemisphere(t_in: f64, r_in: f64) -> f64 {
    275.0 * (32.0 * t_in - 1.0) / r_in
}

/// Working pressure of a hemispherical furnace crown of steel, pressed on its round side.
pub static CROWN_HEMISPHERE: Card = Card {
    id: "state.crown-hemisphere",
    law: Law::Closed("WP = 275 * (32 * t - 1) / R"),
    gives: symbol("WP", &PSI_GAUGE, "working pressure"),
    takes: &[
        symbol("t", &INCH, "plate"),
        symbol("R", &INCH, "outside radius"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 223",
    },
    eval: |v| {
        let p = crown_hemisphere(v[0], v[1]);
        positive(p, CROWN_HEMISPHERE.id, ("t", v[0]), NO_WEAR)
    },
};

/// Working pressure of cross tubes; see [`CROSS_TUBE`].
#[must_use]
pub fn cross_tube(t_in: f64, d_in: f64) -> f64 {
    200.0 * (32.0 * t_in - 7.0) / d_in
}

/// Working pressure of cross tubes of steel.
pub static CROSS_TUBE: Card = Card {
    id: "state.cross-tube",
    law: Law::Closed("WP = 200 * (32 * t - 7) / D"),
    gives: symbol("WP", &PSI_GAUGE, "working pressure"),
    takes: &[
        symbol("t", &INCH, "wall"),
        symbol("D", &INCH, "outside diameter"),
    ],
    limits: &[],
    spread: Spread::Conservative,
    cite: Cite {
        source: &IBR_1950,
        place: "regulation 227",
    },
    eval: |v| {
        let why = "the form gives nothing up to a wall of 7/32 in";
        positive(cross_tube(v[0], v[1]), CROSS_TUBE.id, ("t", v[0]), why)
    },
};
