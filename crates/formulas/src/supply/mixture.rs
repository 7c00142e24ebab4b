//! A mixture of three liquefied gases as an ideal solution: shares by mole from shares by mass,
//! pressure, what the vapour is made of, and means weighted by mole or by mass.
//!
//! The ideal solution reads 2 to 5 % high in pressure for propane with butane, which is the
//! careful side for the strength of a tank. Left out: the real mixture.

use reckoning::quantity::{BAR_ABSOLUTE, J_PER_KG_K, KG_PER_M3, KJ_PER_KG, MJ_PER_KG, ONE};
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use crate::sources::DERIVED;

const fn derived(place: &'static str) -> Cite {
    Cite {
        source: &DERIVED,
        place,
    }
}

/// Share by mole of the first of three parts, each of a share by mass and a molar mass.
#[must_use]
pub fn mole_share(first: [f64; 2], second: [f64; 2], third: [f64; 2]) -> f64 {
    let moles = |[mass, molar]: [f64; 2]| mass / molar;
    moles(first) / (moles(first) + moles(second) + moles(third))
}

/// Card of [`mole_share`].
pub static MOLE_SHARE: Card = Card {
    id: "supply.mole-share",
    law: Law::Closed("x_1 = w_1 / M_1 / (w_1 / M_1 + w_2 / M_2 + w_3 / M_3)"),
    gives: symbol("x_1", &ONE, "share of the part by mole"),
    takes: &[
        symbol("w_1", &ONE, "share of the part by mass"),
        symbol("M_1", &ONE, "molar mass of the part, kg/kmol"),
        symbol("w_2", &ONE, "share of the second part by mass"),
        symbol("M_2", &ONE, "molar mass of the second part, kg/kmol"),
        symbol("w_3", &ONE, "share of the third part by mass"),
        symbol("M_3", &ONE, "molar mass of the third part, kg/kmol"),
    ],
    limits: &[Limit::within("w_1 + w_2 + w_3", 0.9999, 1.0001)],
    spread: Spread::Exact,
    cite: derived("amount of substance of a mixture"),
    eval: |v| Ok(mole_share([v[0], v[1]], [v[2], v[3]], [v[4], v[5]])),
};

/// Pressure over an ideal solution, in the unit of the pressures of the parts.
#[must_use]
pub fn mixture_pressure(x: [f64; 3], p: [f64; 3]) -> f64 {
    weighted_mean(x, p)
}

/// Card of [`mixture_pressure`].
pub static MIXTURE_PRESSURE: Card = Card {
    id: "supply.mixture-pressure",
    law: Law::Closed("p = x_1 * p_1 + x_2 * p_2 + x_3 * p_3"),
    gives: symbol("p", &BAR_ABSOLUTE, "pressure over the liquid"),
    takes: &[
        X[0],
        X[1],
        X[2],
        symbol("p_1", &BAR_ABSOLUTE, "vapour pressure of the first part"),
        symbol("p_2", &BAR_ABSOLUTE, "vapour pressure of the second part"),
        symbol("p_3", &BAR_ABSOLUTE, "vapour pressure of the third part"),
    ],
    limits: LIQUID,
    spread: Spread::Conservative,
    cite: derived("Raoult's law of the ideal solution"),
    eval: |v| Ok(mixture_pressure([v[0], v[1], v[2]], [v[3], v[4], v[5]])),
};

/// Share of a part in the vapour, by mole.
#[must_use]
pub fn vapour_share(x: f64, p_i: f64, p: f64) -> f64 {
    x * p_i / p
}

/// Card of [`vapour_share`].
pub static VAPOUR_SHARE: Card = Card {
    id: "supply.vapour-share",
    law: Law::Closed("y = x * p_i / p"),
    gives: symbol("y", &ONE, "share of the part in the vapour, by mole"),
    takes: &[
        symbol("x", &ONE, "share of the part in the liquid, by mole"),
        symbol("p_i", &BAR_ABSOLUTE, "vapour pressure of the part alone"),
        symbol("p", &BAR_ABSOLUTE, "pressure over the liquid"),
    ],
    limits: &[Limit::within("y", 0.0, 1.0)],
    spread: Spread::Unstated,
    cite: derived("Raoult's law of the ideal solution"),
    eval: |v| Ok(vapour_share(v[0], v[1], v[2])),
};

/// Share of a part by mass, from its share by mole and the molar mass of the mixture.
#[must_use]
pub fn mass_share(y: f64, molar_mass: f64, mixture: f64) -> f64 {
    y * molar_mass / mixture
}

/// Card of [`mass_share`].
pub static MASS_SHARE: Card = Card {
    id: "supply.mass-share",
    law: Law::Closed("w = y * M_i / M"),
    gives: symbol("w", &ONE, "share of the part by mass"),
    takes: &[
        symbol("y", &ONE, "share of the part by mole"),
        symbol("M_i", &ONE, "molar mass of the part, kg/kmol"),
        symbol("M", &ONE, "molar mass of the mixture, kg/kmol"),
    ],
    limits: &[Limit::within("w", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: derived("amount of substance of a mixture"),
    eval: |v| Ok(mass_share(v[0], v[1], v[2])),
};

/// Mean of three values by their shares.
#[must_use]
pub fn weighted_mean(shares: [f64; 3], values: [f64; 3]) -> f64 {
    shares[0] * values[0] + shares[1] * values[1] + shares[2] * values[2]
}

fn mean(v: &[f64]) -> f64 {
    weighted_mean([v[0], v[1], v[2]], [v[3], v[4], v[5]])
}

const X: [Symbol; 3] = [
    symbol(
        "x_1",
        &ONE,
        "share of the first part in the liquid, by mole",
    ),
    symbol(
        "x_2",
        &ONE,
        "share of the second part in the liquid, by mole",
    ),
    symbol(
        "x_3",
        &ONE,
        "share of the third part in the liquid, by mole",
    ),
];
const Y: [Symbol; 3] = [
    symbol("y_1", &ONE, "share of the first part by mole"),
    symbol("y_2", &ONE, "share of the second part by mole"),
    symbol("y_3", &ONE, "share of the third part by mole"),
];
const W: [Symbol; 3] = [
    symbol("w_1", &ONE, "share of the first part by mass"),
    symbol("w_2", &ONE, "share of the second part by mass"),
    symbol("w_3", &ONE, "share of the third part by mass"),
];
const LIQUID: &[Limit] = &[Limit::within("x_1 + x_2 + x_3", 0.9999, 1.0001)];
const BY_MOLE: &[Limit] = &[Limit::within("y_1 + y_2 + y_3", 0.9999, 1.0001)];
const BY_MASS: &[Limit] = &[Limit::within("w_1 + w_2 + w_3", 0.9999, 1.0001)];

/// Molar mass of a mixture, by [`weighted_mean`].
pub static MIXTURE_MOLAR_MASS: Card = Card {
    id: "supply.mixture-molar-mass",
    law: Law::Closed("M = y_1 * M_1 + y_2 * M_2 + y_3 * M_3"),
    gives: symbol("M", &ONE, "molar mass of the mixture, kg/kmol"),
    takes: &[
        Y[0],
        Y[1],
        Y[2],
        symbol("M_1", &ONE, "molar mass of the first part, kg/kmol"),
        symbol("M_2", &ONE, "molar mass of the second part, kg/kmol"),
        symbol("M_3", &ONE, "molar mass of the third part, kg/kmol"),
    ],
    limits: BY_MOLE,
    spread: Spread::Exact,
    cite: derived("amount of substance of a mixture"),
    eval: |v| Ok(mean(v)),
};

/// Molar heat of a mixture of ideal gases, by [`weighted_mean`].
pub static MIXTURE_HEAT: Card = Card {
    id: "supply.mixture-heat",
    law: Law::Closed("c = y_1 * c_1 + y_2 * c_2 + y_3 * c_3"),
    gives: symbol("c", &ONE, "molar heat of the mixture over the gas constant"),
    takes: &[
        Y[0],
        Y[1],
        Y[2],
        symbol(
            "c_1",
            &ONE,
            "molar heat of the first part over the gas constant",
        ),
        symbol(
            "c_2",
            &ONE,
            "molar heat of the second part over the gas constant",
        ),
        symbol(
            "c_3",
            &ONE,
            "molar heat of the third part over the gas constant",
        ),
    ],
    limits: BY_MOLE,
    spread: Spread::Exact,
    cite: derived("molar heats of ideal gases add"),
    eval: |v| Ok(mean(v)),
};

/// Compressibility of the vapour over a mixture, by [`weighted_mean`].
///
/// What a part lacks of the ideal volume grows with the pressure, from that of the part saturated
/// alone; in an ideal solution the shares of such a mean are those of the liquid.
pub static MIXTURE_COMPRESSIBILITY: Card = Card {
    id: "supply.mixture-compressibility",
    law: Law::Closed("Z = x_1 * Z_1 + x_2 * Z_2 + x_3 * Z_3"),
    gives: symbol("Z", &ONE, "compressibility of the vapour"),
    takes: &[
        X[0],
        X[1],
        X[2],
        symbol(
            "Z_1",
            &ONE,
            "compressibility of the first part, saturated alone",
        ),
        symbol(
            "Z_2",
            &ONE,
            "compressibility of the second part, saturated alone",
        ),
        symbol(
            "Z_3",
            &ONE,
            "compressibility of the third part, saturated alone",
        ),
    ],
    limits: LIQUID,
    spread: Spread::Percent(1.0),
    cite: derived("second virial coefficients of the parts, mean by mole of the vapour"),
    eval: |v| Ok(mean(v)),
};

/// Lower heating value of a mixture, by [`weighted_mean`].
pub static MIXTURE_HEATING_VALUE: Card = Card {
    id: "supply.mixture-heating-value",
    law: Law::Closed("LHV = w_1 * H_1 + w_2 * H_2 + w_3 * H_3"),
    gives: symbol("LHV", &MJ_PER_KG, "lower heating value of the mixture"),
    takes: &[
        W[0],
        W[1],
        W[2],
        symbol("H_1", &MJ_PER_KG, "lower heating value of the first part"),
        symbol("H_2", &MJ_PER_KG, "lower heating value of the second part"),
        symbol("H_3", &MJ_PER_KG, "lower heating value of the third part"),
    ],
    limits: BY_MASS,
    spread: Spread::Exact,
    cite: derived("heats of burning add by mass"),
    eval: |v| Ok(mean(v)),
};

/// Latent heat of what leaves a mixture, by [`weighted_mean`].
pub static MIXTURE_LATENT_HEAT: Card = Card {
    id: "supply.mixture-latent-heat",
    law: Law::Closed("r = w_1 * r_1 + w_2 * r_2 + w_3 * r_3"),
    gives: symbol("r", &KJ_PER_KG, "latent heat of the vapour drawn"),
    takes: &[
        W[0],
        W[1],
        W[2],
        symbol("r_1", &KJ_PER_KG, "latent heat of the first part"),
        symbol("r_2", &KJ_PER_KG, "latent heat of the second part"),
        symbol("r_3", &KJ_PER_KG, "latent heat of the third part"),
    ],
    limits: BY_MASS,
    spread: Spread::Percent(2.0),
    cite: derived("latent heats add by the mass drawn, heat of mixing left out"),
    eval: |v| Ok(mean(v)),
};

/// Share of an element in a mixture, by [`weighted_mean`].
pub static MIXTURE_ELEMENT: Card = Card {
    id: "supply.mixture-element",
    law: Law::Closed("x = w_1 * x_1 + w_2 * x_2 + w_3 * x_3"),
    gives: symbol("x", &ONE, "share of the element in the mixture, by mass"),
    takes: &[
        W[0],
        W[1],
        W[2],
        symbol(
            "x_1",
            &ONE,
            "share of the element in the first part, by mass",
        ),
        symbol(
            "x_2",
            &ONE,
            "share of the element in the second part, by mass",
        ),
        symbol(
            "x_3",
            &ONE,
            "share of the element in the third part, by mass",
        ),
    ],
    limits: BY_MASS,
    spread: Spread::Exact,
    cite: derived("balance of mass"),
    eval: |v| Ok(mean(v)),
};

/// Specific heat of a liquid mixture, by [`weighted_mean`].
pub static MIXTURE_LIQUID_HEAT: Card = Card {
    id: "supply.mixture-liquid-heat",
    law: Law::Closed("c_l = w_1 * c_1 + w_2 * c_2 + w_3 * c_3"),
    gives: symbol("c_l", &J_PER_KG_K, "specific heat of the liquid"),
    takes: &[
        W[0],
        W[1],
        W[2],
        symbol("c_1", &J_PER_KG_K, "specific heat of the first part"),
        symbol("c_2", &J_PER_KG_K, "specific heat of the second part"),
        symbol("c_3", &J_PER_KG_K, "specific heat of the third part"),
    ],
    limits: BY_MASS,
    spread: Spread::Percent(2.0),
    cite: derived("heats add by mass, heat of mixing left out"),
    eval: |v| Ok(mean(v)),
};

/// Density of a liquid mixture, kg/m³: the volumes of the parts add.
#[must_use]
pub fn mixture_density(w: [f64; 3], rho: [f64; 3]) -> f64 {
    1.0 / (w[0] / rho[0] + w[1] / rho[1] + w[2] / rho[2])
}

/// Card of [`mixture_density`].
pub static MIXTURE_DENSITY: Card = Card {
    id: "supply.mixture-density",
    law: Law::Closed("rho_l = 1 / (w_1 / rho_1 + w_2 / rho_2 + w_3 / rho_3)"),
    gives: symbol("rho_l", &KG_PER_M3, "density of the liquid"),
    takes: &[
        W[0],
        W[1],
        W[2],
        symbol("rho_1", &KG_PER_M3, "density of the first part"),
        symbol("rho_2", &KG_PER_M3, "density of the second part"),
        symbol("rho_3", &KG_PER_M3, "density of the third part"),
    ],
    limits: BY_MASS,
    spread: Spread::Percent(2.0),
    cite: derived("volumes of an ideal solution add"),
    eval: |v| Ok(mixture_density([v[0], v[1], v[2]], [v[3], v[4], v[5]])),
};

/// Dry air for a mixture, by [`weighted_mean`].
pub static MIXTURE_AIR: Card = Card {
    id: "supply.mixture-air",
    law: Law::Closed("AF = w_1 * AF_1 + w_2 * AF_2 + w_3 * AF_3"),
    gives: symbol(
        "AF",
        &ONE,
        "dry air to burn a kilogram of the mixture, kg/kg",
    ),
    takes: &[
        W[0],
        W[1],
        W[2],
        symbol("AF_1", &ONE, "dry air for the first part, kg/kg"),
        symbol("AF_2", &ONE, "dry air for the second part, kg/kg"),
        symbol("AF_3", &ONE, "dry air for the third part, kg/kg"),
    ],
    limits: BY_MASS,
    spread: Spread::Exact,
    cite: derived("oxygen needed adds by mass"),
    eval: |v| Ok(mean(v)),
};
