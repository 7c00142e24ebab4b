//! Friction and other losses of gas in a tube.

use reckoning::quantity::{KG_PER_M2_S, KG_PER_M3, ONE, PA};
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use crate::sources::{DERIVED, thermal};

/// Where laminar flow ends.
pub(super) const LAMINAR_TO: f64 = 2300.0;
/// Where turbulent flow begins.
pub(super) const TURBULENT_FROM: f64 = 4000.0;

/// Friction factor of Darcy of a smooth round bore; see [`FRICTION_FACTOR`].
#[must_use]
pub fn friction_factor(re: f64) -> f64 {
    if re <= LAMINAR_TO {
        return 64.0 / re;
    }
    if re >= TURBULENT_FROM {
        return turbulent(re);
    }
    let at_end = 64.0 / LAMINAR_TO;
    let share = (re - LAMINAR_TO) / (TURBULENT_FROM - LAMINAR_TO);
    at_end + share * (turbulent(TURBULENT_FROM) - at_end)
}

/// Friction factor of turbulent flow.
pub(super) fn turbulent(re: f64) -> f64 {
    let root = 1.8 * re.log10() - 1.5;
    1.0 / (root * root)
}

/// Friction factor of a smooth round bore: laminar, turbulent, and a straight line between.
pub static FRICTION_FACTOR: Card = Card {
    id: "heat.friction-factor",
    law: Law::Closed(
        "f_l = 64 / 2300; f_t = (1.8 * log10(4000) - 1.5)^-2; \
         f = cases(Re <= 2300, 64 / Re, Re >= 4000, (1.8 * log10(Re) - 1.5)^-2, \
         f_l + (Re - 2300) / (4000 - 2300) * (f_t - f_l))",
    ),
    gives: symbol("f", &ONE, "friction factor of Darcy"),
    takes: &[symbol("Re", &ONE, "Reynolds number")],
    limits: &[Limit::at_most("Re", 1e6)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::IJHMT_63_TUBES,
        place: "friction factor, with the straight line between 2300 and 4000",
    },
    eval: |v| Ok(friction_factor(v[0])),
};

const F: Symbol = symbol("f", &ONE, "friction factor of Darcy");
const FLUX: Symbol = symbol("G", &KG_PER_M2_S, "mass flux");
const RHO: Symbol = symbol("rho", &KG_PER_M3, "density of the gas");

/// Loss by friction over a length, Pa; see [`FRICTION_LOSS`].
#[must_use]
pub fn friction_loss(f: f64, length_over_bore: f64, flux: f64, density: f64) -> f64 {
    f * length_over_bore * flux * flux / (2.0 * density)
}

/// Loss by friction over a length of bore.
pub static FRICTION_LOSS: Card = Card {
    id: "heat.friction-loss",
    law: Law::Closed("dp = f * L_d * G^2 / (2 * rho)"),
    gives: symbol("dp", &PA, "loss by friction"),
    takes: &[F, symbol("L_d", &ONE, "length over bore"), FLUX, RHO],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "definition of the friction factor",
    },
    eval: |v| Ok(friction_loss(v[0], v[1], v[2], v[3])),
};

/// Loss of `k` velocity heads, Pa; see [`LOCAL_LOSS`].
#[must_use]
pub fn local_loss(k: f64, flux: f64, density: f64) -> f64 {
    k * flux * flux / (2.0 * density)
}

/// Loss at an edge, an end or a bend, in velocity heads.
pub static LOCAL_LOSS: Card = Card {
    id: "heat.local-loss",
    law: Law::Closed("dp = K * G^2 / (2 * rho)"),
    gives: symbol("dp", &PA, "loss at the place"),
    takes: &[symbol("K", &ONE, "velocity heads lost"), FLUX, RHO],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "definition of the loss coefficient",
    },
    eval: |v| Ok(local_loss(v[0], v[1], v[2])),
};

/// Pressure spent on speeding the gas up, Pa; see [`MOMENTUM_CHANGE`].
#[must_use]
pub fn momentum_change(flux: f64, density_in: f64, density_out: f64) -> f64 {
    flux * flux * (1.0 / density_out - 1.0 / density_in)
}

/// Pressure spent on speeding the gas up; less than nought where it cools.
pub static MOMENTUM_CHANGE: Card = Card {
    id: "heat.momentum-change",
    law: Law::Closed("dp = G^2 * (1 / rho_2 - 1 / rho_1)"),
    gives: symbol("dp", &PA, "pressure spent on the change of speed"),
    takes: &[
        FLUX,
        symbol("rho_1", &KG_PER_M3, "density of the gas at the inlet"),
        symbol("rho_2", &KG_PER_M3, "density of the gas at the outlet"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "balance of momentum in a bore of one size",
    },
    eval: |v| Ok(momentum_change(v[0], v[1], v[2])),
};
