//! Balances of a flame in a flue or a firebox: heat set free, heat to the wall, draught spent.

use reckoning::formula::{Law, Spread};
use reckoning::quantity::{KELVIN, M, M2, ONE, PA, W_PER_M2_K, WATT};
use reckoning::{Card, symbol};

use super::derived;

/// Share of the heating value set free by a flame of which a part leaves unburnt.
#[must_use]
pub fn share_set_free(eta: f64, f: f64) -> f64 {
    eta * f
}

/// Card of [`share_set_free`].
pub static SHARE_SET_FREE: Card = Card {
    id: "balance.share-set-free",
    law: Law::Closed("s = eta * F"),
    gives: symbol("s", &ONE, "share of the heating value set free"),
    takes: &[
        symbol("eta", &ONE, "share set free where the gas burns to the end"),
        symbol("F", &ONE, "share of the gas that has burnt"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("both shares multiply"),
    eval: |v| Ok(share_set_free(v[0], v[1])),
};

/// Heat that a wall receives by convection.
#[must_use]
pub fn wall_convection(h: f64, a: f64, t_g: f64, t_w: f64) -> f64 {
    h * a * (t_g - t_w)
}

/// Card of [`wall_convection`].
pub static WALL_CONVECTION: Card = Card {
    id: "balance.wall-convection",
    law: Law::Closed("Q_c = h * A * (T_g - T_w)"),
    gives: symbol("Q_c", &WATT, "heat to the wall by convection"),
    takes: &[
        symbol("h", &W_PER_M2_K, "heat transfer coefficient by convection"),
        symbol("A", &M2, "area of the wall"),
        symbol("T_g", &KELVIN, "temperature of the gas"),
        symbol("T_w", &KELVIN, "temperature of the wall"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the coefficient"),
    eval: |v| Ok(wall_convection(v[0], v[1], v[2], v[3])),
};

/// Heat that a wall receives in both ways.
#[must_use]
pub fn wall_heat(q_r: f64, q_c: f64) -> f64 {
    q_r + q_c
}

/// Card of [`wall_heat`].
pub static WALL_HEAT: Card = Card {
    id: "balance.wall-heat",
    law: Law::Closed("Q_w = Q_r + Q_c"),
    gives: symbol("Q_w", &WATT, "heat to the wall"),
    takes: &[
        symbol("Q_r", &WATT, "heat radiated to the wall"),
        symbol("Q_c", &WATT, "heat to the wall by convection"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("both ways add"),
    eval: |v| Ok(wall_heat(v[0], v[1])),
};

/// Draught that a flue takes.
#[must_use]
pub fn flue_loss(dp_f: f64, dp_x: f64, dp_m: f64, dp_e: f64, dp_l: f64) -> f64 {
    dp_f + dp_x + dp_m + dp_e - dp_l
}

/// Card of [`flue_loss`].
pub static FLUE_LOSS: Card = Card {
    id: "balance.flue-loss",
    law: Law::Closed("dp = dp_f + dp_x + dp_m + dp_e - dp_l"),
    gives: symbol("dp", &PA, "draught taken by the flue"),
    takes: &[
        symbol("dp_f", &PA, "loss by friction"),
        symbol("dp_x", &PA, "loss at the tubes across"),
        symbol("dp_m", &PA, "pressure spent on the speed of the hot gas"),
        symbol("dp_e", &PA, "loss where the gas leaves"),
        symbol("dp_l", &PA, "lift of the hot gas in an upright flue"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("sum of the losses in line"),
    eval: |v| Ok(flue_loss(v[0], v[1], v[2], v[3], v[4])),
};

/// Friction of a bore, in velocity heads.
#[must_use]
pub fn friction_heads(f: f64, l: f64, d: f64) -> f64 {
    f * l / d
}

/// Card of [`friction_heads`].
pub static FRICTION_HEADS: Card = Card {
    id: "balance.friction-heads",
    law: Law::Closed("k_f = f * L / d"),
    gives: symbol("k_f", &ONE, "friction in velocity heads"),
    takes: &[
        symbol("f", &ONE, "friction factor of Darcy"),
        symbol("L", &M, "length of the bore"),
        symbol("d", &M, "bore"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of the friction factor"),
    eval: |v| Ok(friction_heads(v[0], v[1], v[2])),
};
