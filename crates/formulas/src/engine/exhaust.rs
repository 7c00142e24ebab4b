//! The exhaust: heat that the engine loses to the room, and the puffs in which it leaves.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{KELVIN, KG_PER_M2_S, M, ONE, PA, PER_S, W_PER_M2_K, WATT};
use reckoning::{Card, Cite, symbol};
use std::f64::consts::PI;

use crate::sources::{COMMON_PRACTICE, DERIVED};

/// Bores and covers of a number of cylinders, the surface by which the loss of heat is counted.
#[must_use]
pub fn cylinder_surface(n: f64, d: f64, s: f64) -> f64 {
    n * (PI * d * s + PI / 2.0 * d * d)
}

/// Heat that an engine loses to the room.
#[must_use]
pub fn surface_heat(u: f64, surface: f64, steam: f64, air: f64) -> f64 {
    u * surface * (steam - air)
}

/// Card of [`surface_heat`] on a [`cylinder_surface`].
pub static SURFACE_HEAT: Card = Card {
    id: "engine.surface-heat",
    law: Law::Closed("Q_s = U * n * (pi * D * S + pi / 2 * D^2) * (T_c - T_a)"),
    gives: symbol("Q_s", &WATT, "heat that the engine loses to the room"),
    takes: &[
        symbol(
            "U",
            &W_PER_M2_K,
            "loss on a square metre of bores and covers for a kelvin",
        ),
        symbol("n", &ONE, "number of cylinders"),
        symbol("D", &M, "bore of a cylinder"),
        symbol("S", &M, "stroke"),
        symbol("T_c", &KELVIN, "temperature of the steam in the chest"),
        symbol("T_a", &KELVIN, "temperature of the room"),
    ],
    limits: &[Limit::at_least("T_c - T_a", 0.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "loss by the surface, which grows with bores and covers",
    },
    eval: |v| {
        Ok(surface_heat(
            v[0],
            cylinder_surface(v[1], v[2], v[3]),
            v[4],
            v[5],
        ))
    },
};

/// Puffs in a second from which on the exhaust flows all the time.
const STEADY_PUFFS: f64 = 10.0;

/// Share of the time in which the exhaust flows, at a rate of puffs.
#[must_use]
pub fn puff_share(d_0: f64, n: f64) -> f64 {
    if n < STEADY_PUFFS {
        d_0 + (1.0 - d_0) * n / STEADY_PUFFS
    } else {
        1.0
    }
}

/// Card of [`puff_share`].
pub static PUFF_SHARE: Card = Card {
    id: "engine.puff-share",
    law: Law::Closed("d = cases(n < 10, d_0 + (1 - d_0) * n / 10, 1)"),
    gives: symbol("d", &ONE, "share of the time in which the exhaust flows"),
    takes: &[
        symbol("d_0", &ONE, "that share in an engine that hardly turns"),
        symbol("n", &PER_S, "puffs in a second"),
    ],
    limits: &[Limit::within("d_0", 0.2, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "0.5 to 0.7 in a slow engine, 1 above some ten puffs in a second",
    },
    eval: |v| Ok(puff_share(v[0], v[1])),
};

/// Mean back pressure of a nozzle that is passed in puffs.
#[must_use]
pub fn puffed_back_pressure(dp: f64, d: f64) -> f64 {
    dp / d
}

/// Card of [`puffed_back_pressure`].
pub static PUFFED_BACK_PRESSURE: Card = Card {
    id: "engine.puffed-back-pressure",
    law: Law::Closed("dp_m = dp / d"),
    gives: symbol(
        "dp_m",
        &PA,
        "mean back pressure of a nozzle passed in puffs",
    ),
    takes: &[
        symbol("dp", &PA, "back pressure of the mean flow"),
        symbol("d", &ONE, "share of the time in which the exhaust flows"),
    ],
    limits: &[Limit::within("d", 0.0, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "flow over d in the share d of the time, loss by its square, mean over the time",
    },
    eval: |v| Ok(puffed_back_pressure(v[0], v[1])),
};

/// Flux in a puff.
#[must_use]
pub fn puff_flux(g: f64, d: f64) -> f64 {
    g / d
}

/// Card of [`puff_flux`].
pub static PUFF_FLUX: Card = Card {
    id: "engine.puff-flux",
    law: Law::Closed("G_p = G / d"),
    gives: symbol("G_p", &KG_PER_M2_S, "mass flux through the bed in a puff"),
    takes: &[
        symbol("G", &KG_PER_M2_S, "mean mass flux through the bed"),
        symbol("d", &ONE, "share of the time in which the exhaust flows"),
    ],
    limits: &[Limit::within("d", 0.0, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "the fire is drawn only while the exhaust flows",
    },
    eval: |v| Ok(puff_flux(v[0], v[1])),
};
