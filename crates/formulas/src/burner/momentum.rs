//! What a jet of gas does in the throat of a self-aspirating burner: the terms of the momentum
//! balance that sets the primary air.
//!
//! The control volume is a throat of one bore; air enters through holes in its side without
//! momentum along it, and the mixture leaves through the ports. The balance is
//! jet = mixing + ports + holes + pressure outside the ports above that of the air, and the air
//! that settles it is sought elsewhere. Left out: a bell mouth, whose air brings momentum of its
//! own, and any draught of the warm burner itself.

use reckoning::quantity::{KELVIN, KG_PER_M3, KG_PER_S, M2, NEWTON, ONE, PA, PA_ABSOLUTE};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::gas::UNIVERSAL_GAS_CONSTANT;
use crate::sources::DERIVED;

const fn derived(place: &'static str) -> Cite {
    Cite {
        source: &DERIVED,
        place,
    }
}

/// Gas and primary air in the throat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mixture {
    /// Gas, kg/s.
    pub m_g: f64,
    /// Molar mass of the gas, kg/kmol.
    pub molar_g: f64,
    /// Primary air, kg/s.
    pub m_a: f64,
    /// Molar mass of the air, kg/kmol.
    pub molar_a: f64,
}

/// Density of gas and air once mixed, kg/m³.
#[must_use]
pub fn mixture_density(p: f64, t_m: f64, x: &Mixture) -> f64 {
    let moles = x.m_g / x.molar_g + x.m_a / x.molar_a;
    p * (x.m_g + x.m_a) / (UNIVERSAL_GAS_CONSTANT * t_m * moles)
}

/// Card of [`mixture_density`].
pub static MIXTURE_DENSITY: Card = Card {
    id: "burner.mixture-density",
    law: Law::Closed(
        "rho_m = p * (m_g + m_a) / (8314.46261815324 * T_m * (m_g / M_g + m_a / M_a))",
    ),
    gives: symbol("rho_m", &KG_PER_M3, "density of gas and air once mixed"),
    takes: &[
        symbol("p", &PA_ABSOLUTE, "pressure of the air"),
        symbol("T_m", &KELVIN, "temperature of the mixture"),
        symbol("m_g", &KG_PER_S, "gas"),
        symbol("M_g", &ONE, "molar mass of the gas, kg/kmol"),
        symbol("m_a", &KG_PER_S, "primary air"),
        symbol("M_a", &ONE, "molar mass of the air, kg/kmol"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("volumes of ideal gases add"),
    eval: |v| {
        let mixture = Mixture {
            m_g: v[2],
            molar_g: v[3],
            m_a: v[4],
            molar_a: v[5],
        };
        Ok(mixture_density(v[0], v[1], &mixture))
    },
};

/// Pressure of the jet on the throat, Pa.
#[must_use]
pub fn jet_push(x: f64, j: f64, a_t: f64) -> f64 {
    x * j / a_t
}

/// Card of [`jet_push`].
pub static JET_PUSH: Card = Card {
    id: "burner.jet-push",
    law: Law::Closed("dp = x * J / A_t"),
    gives: symbol("dp", &PA, "pressure of the jet on the throat"),
    takes: &[
        symbol(
            "x",
            &ONE,
            "share of the thrust that mixing and alignment leave",
        ),
        symbol("J", &NEWTON, "thrust of the jet"),
        symbol("A_t", &M2, "area of the throat"),
    ],
    limits: &[Limit::within("x", 0.5, 1.0)],
    spread: Spread::Percent(10.0),
    cite: derived("momentum of the control volume of a parallel throat"),
    eval: |v| Ok(jet_push(v[0], v[1], v[2])),
};

/// A throat and what follows it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Throat {
    /// Area, m².
    pub area: f64,
    /// Momentum of the mixture over that of an even stream.
    pub beta: f64,
    /// Wall friction of throat and burner tube, in velocity heads (f L/D).
    pub k_f: f64,
    /// Share of the velocity head that the taper gives back.
    pub eta_d: f64,
    /// Area of the throat over that of the burner tube; 1 where there is no taper.
    pub widening: f64,
}

/// Pressure that mixing and friction take in the throat, less what the taper gives back, Pa.
#[must_use]
pub fn mixing_loss(throat: &Throat, m: f64, rho_m: f64) -> f64 {
    let given_back = throat.eta_d / 2.0 * (1.0 - throat.widening.powi(2));
    let heads = throat.beta + throat.k_f / 2.0 - given_back;
    heads * m * m / (rho_m * throat.area.powi(2))
}

/// Card of [`mixing_loss`].
pub static MIXING_LOSS: Card = Card {
    id: "burner.mixing-loss",
    law: Law::Closed("dp = (beta + k_f / 2 - eta_d / 2 * (1 - s^2)) * m^2 / (rho_m * A_t^2)"),
    gives: symbol("dp", &PA, "pressure that mixing and friction take"),
    takes: &[
        symbol(
            "beta",
            &ONE,
            "momentum of the mixture over that of an even stream",
        ),
        symbol("k_f", &ONE, "wall friction in velocity heads"),
        symbol("eta_d", &ONE, "share of the velocity head given back"),
        symbol("s", &ONE, "area of the throat over that of the burner tube"),
        symbol("m", &KG_PER_S, "gas and primary air"),
        symbol("rho_m", &KG_PER_M3, "density of gas and air once mixed"),
        symbol("A_t", &M2, "area of the throat"),
    ],
    limits: &[
        Limit::within("beta", 1.0, 1.34),
        Limit::within("eta_d", 0.0, 0.8),
        Limit::at_most("s", 1.0),
    ],
    spread: Spread::Percent(15.0),
    cite: derived("momentum of the control volume of a parallel throat"),
    eval: |v| {
        let throat = Throat {
            beta: v[0],
            k_f: v[1],
            eta_d: v[2],
            widening: v[3],
            area: v[6],
        };
        Ok(mixing_loss(&throat, v[4], v[5]))
    },
};

/// Primary air over the air that the gas needs.
#[must_use]
pub fn primary_air_ratio(m_a: f64, af: f64, m_g: f64) -> f64 {
    m_a / (af * m_g)
}

/// Card of [`primary_air_ratio`].
pub static PRIMARY_AIR_RATIO: Card = Card {
    id: "burner.primary-air-ratio",
    law: Law::Closed("lambda_1 = m_a / (AF * m_g)"),
    gives: symbol(
        "lambda_1",
        &ONE,
        "primary air over the air that the gas needs",
    ),
    takes: &[
        symbol("m_a", &KG_PER_S, "primary air"),
        symbol("AF", &ONE, "dry air to burn a kilogram of gas, kg/kg"),
        symbol("m_g", &KG_PER_S, "gas"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition"),
    eval: |v| Ok(primary_air_ratio(v[0], v[1], v[2])),
};

/// Area of the throat that draws the most air where holes and taper are left out, m².
#[must_use]
pub fn best_throat(c_d: f64, a_p: f64, beta: f64, k_f: f64) -> f64 {
    c_d * a_p * (2.0 * beta + k_f).sqrt()
}

/// Card of [`best_throat`].
pub static BEST_THROAT: Card = Card {
    id: "burner.best-throat",
    law: Law::Closed("A_t = C_d * A_p * sqrt(2 * beta + k_f)"),
    gives: symbol("A_t", &M2, "area of the throat that draws the most air"),
    takes: &[
        symbol("C_d", &ONE, "discharge coefficient of the ports"),
        symbol("A_p", &M2, "area of the ports"),
        symbol(
            "beta",
            &ONE,
            "momentum of the mixture over that of an even stream",
        ),
        symbol("k_f", &ONE, "wall friction in velocity heads"),
    ],
    limits: &[Limit::within("C_d", 0.5, 1.0)],
    spread: Spread::Percent(15.0),
    cite: derived("greatest flow of the momentum balance with open air holes"),
    eval: |v| Ok(best_throat(v[0], v[1], v[2], v[3])),
};
