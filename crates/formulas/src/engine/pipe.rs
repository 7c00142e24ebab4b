//! Heat that a horizontal steam pipe loses to still air, bare or lagged.
//!
//! The film of steam inside and the wall of the pipe hold back next to nothing and are left out,
//! and so are draughts.

use reckoning::formula::{Law, Limit, Spread};
use reckoning::quantity::{
    KELVIN, KG_PER_M3, M, ONE, PA_S, STANDARD_GRAVITY, W_PER_M_K, W_PER_M2_K, WATT,
};
use reckoning::{Card, Cite, Symbol, symbol};
use std::f64::consts::PI;

use crate::sources::{DERIVED, FREE_CONVECTION_1975};

/// Constant of black radiation, W/(m² K⁴) (CODATA 2018).
const SIGMA: f64 = 5.670_374_419e-8;

/// Air beside a pipe at the mean of both temperatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StillAir {
    /// Density, kg/m³.
    pub rho: f64,
    /// Viscosity, Pa s.
    pub mu: f64,
    /// Prandtl number.
    pub pr: f64,
}

/// Rayleigh number of a pipe of outside diameter `d` in still air.
#[must_use]
pub fn rayleigh(t_w: f64, t_a: f64, d: f64, air: &StillAir) -> f64 {
    let lift = STANDARD_GRAVITY * (t_w - t_a) / ((t_w + t_a) / 2.0);
    lift * d.powi(3) * air.pr * (air.rho / air.mu).powi(2)
}

const T_W: Symbol = symbol("T_w", &KELVIN, "temperature of the surface");
const T_A: Symbol = symbol("T_a", &KELVIN, "temperature of the room");

/// Card of [`rayleigh`].
pub static RAYLEIGH: Card = Card {
    id: "engine.pipe-rayleigh",
    law: Law::Closed("Ra = g_n * (T_w - T_a) / ((T_w + T_a) / 2) * D^3 * Pr * (rho / mu)^2"),
    gives: symbol("Ra", &ONE, "Rayleigh number"),
    takes: &[
        T_W,
        T_A,
        symbol("D", &M, "outside diameter"),
        symbol(
            "rho",
            &KG_PER_M3,
            "density of the air at the mean temperature",
        ),
        symbol("mu", &PA_S, "viscosity of the air at the mean temperature"),
        symbol("Pr", &ONE, "Prandtl number of the air"),
    ],
    limits: &[Limit::at_least("T_w - T_a", 0.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "definition, for an ideal gas",
    },
    eval: |v| {
        let air = StillAir {
            rho: v[3],
            mu: v[4],
            pr: v[5],
        };
        Ok(rayleigh(v[0], v[1], v[2], &air))
    },
};

/// Nusselt number of free convection from a long horizontal cylinder.
#[must_use]
pub fn free_nusselt(ra: f64, pr: f64) -> f64 {
    let shape = (1.0 + (0.559 / pr).powf(9.0 / 16.0)).powf(8.0 / 27.0);
    (0.6 + 0.387 * ra.powf(1.0 / 6.0) / shape).powi(2)
}

/// Card of [`free_nusselt`].
pub static FREE_NUSSELT: Card = Card {
    id: "engine.pipe-nusselt",
    law: Law::Closed("Nu = (0.6 + 0.387 * Ra^(1 / 6) / (1 + (0.559 / Pr)^(9 / 16))^(8 / 27))^2"),
    gives: symbol("Nu", &ONE, "Nusselt number"),
    takes: &[
        symbol("Ra", &ONE, "Rayleigh number"),
        symbol("Pr", &ONE, "Prandtl number"),
    ],
    limits: &[Limit::within("Ra", 1e-5, 1e12)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &FREE_CONVECTION_1975,
        place: "the equation for all Rayleigh numbers",
    },
    eval: |v| Ok(free_nusselt(v[0], v[1])),
};

/// The outside of a pipe that loses heat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surface {
    /// Diameter, m.
    pub d: f64,
    /// Length, m.
    pub l: f64,
    /// Coefficient of convection, W/(m² K).
    pub h: f64,
    /// Emissivity.
    pub eps: f64,
}

/// Heat that a pipe loses by convection and radiation, W.
#[must_use]
pub fn pipe_heat(surface: &Surface, t_w: f64, t_a: f64) -> f64 {
    let flux = surface.h * (t_w - t_a) + SIGMA * surface.eps * (t_w.powi(4) - t_a.powi(4));
    PI * surface.d * surface.l * flux
}

/// Card of [`pipe_heat`].
pub static PIPE_HEAT: Card = Card {
    id: "engine.pipe-heat",
    law: Law::Closed("Q = pi * D * L * (h * (T_w - T_a) + 5.670374419e-8 * eps * (T_w^4 - T_a^4))"),
    gives: symbol("Q", &WATT, "heat that the pipe loses"),
    takes: &[
        symbol("D", &M, "diameter of the surface"),
        symbol("L", &M, "length"),
        symbol("h", &W_PER_M2_K, "coefficient of convection"),
        symbol("eps", &ONE, "emissivity of the surface"),
        T_W,
        T_A,
    ],
    limits: &[Limit::within("eps", 0.0, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "convection, and radiation into a large room",
    },
    eval: |v| {
        let surface = Surface {
            d: v[0],
            l: v[1],
            h: v[2],
            eps: v[3],
        };
        Ok(pipe_heat(&surface, v[4], v[5]))
    },
};

/// Heat that passes lagging of conductivity `k` between two diameters, W, for a difference of
/// temperature in kelvin.
#[must_use]
pub fn lagging_heat(k: f64, l: f64, d_i: f64, d_o: f64, dt: f64) -> f64 {
    2.0 * PI * k * l * dt / (d_o / d_i).ln()
}

/// Card of [`lagging_heat`].
pub static LAGGING_HEAT: Card = Card {
    id: "engine.lagging-heat",
    law: Law::Closed("Q = 2 * pi * k * L * (T_i - T_w) / ln(D_o / D_i)"),
    gives: symbol("Q", &WATT, "heat that passes the lagging"),
    takes: &[
        symbol("k", &W_PER_M_K, "conductivity of the lagging"),
        symbol("L", &M, "length"),
        symbol("D_i", &M, "diameter of the pipe"),
        symbol("D_o", &M, "diameter over the lagging"),
        symbol("T_i", &KELVIN, "temperature of the pipe"),
        T_W,
    ],
    limits: &[Limit::at_least("D_o / D_i", 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "conduction in a round wall",
    },
    eval: |v| Ok(lagging_heat(v[0], v[1], v[2], v[3], v[4] - v[5])),
};
