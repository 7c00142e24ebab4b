//! Radiation of water vapour and carbon dioxide: total emissivity and absorptivity.
//!
//! Pressures are in bar, temperatures in kelvin, as the source prints its coefficients. A gas
//! that is absent radiates nothing; a path shorter than [`SHORTEST_PATH_BAR_CM`] is refused,
//! because the logarithms of the law then run away from anything that was measured.

use reckoning::quantity::{BAR_ABSOLUTE, KELVIN, M, ONE};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, Symbol, symbol};

use crate::sources::thermal;

/// The shortest product of partial pressure and path that is worked, bar cm.
pub const SHORTEST_PATH_BAR_CM: f64 = 0.001;

const CM_PER_M: f64 = 100.0;

/// The gas along a mean path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GasPath {
    /// Pressure, bar absolute.
    pub p_bar: f64,
    /// Partial pressure of water vapour, bar.
    pub h2o_bar: f64,
    /// Partial pressure of carbon dioxide, bar.
    pub co2_bar: f64,
    /// Mean beam length, m.
    pub path_m: f64,
}

/// Emissivity of water vapour; see [`WATER_VAPOUR_EMISSIVITY`].
///
/// # Errors
/// [`Refused`] where the path is shorter than [`SHORTEST_PATH_BAR_CM`].
pub fn water_vapour_emissivity(t_k: f64, p: f64, p_a: f64, path_m: f64) -> Result<f64, Refused> {
    let Some(pl) = pressure_path("heat.emissivity-water-vapour", p_a, path_m)? else {
        return Ok(0.0);
    };
    let t = t_k / 1000.0;
    let x = pl.log10();
    let c0 = -2.2118 + t * (-1.1987 + t * 0.035_596);
    let c1 = 0.856_67 + t * (0.930_48 + t * -0.143_91);
    let c2 = -0.108_38 + t * (-0.171_56 + t * 0.045_915);
    let at_one_bar = (c0 + x * (c1 + x * c2)).exp();
    let p_e = p + 2.56 * p_a / t.sqrt();
    let a = if t <= 0.75 {
        2.144
    } else {
        1.888 - 2.053 * t.log10()
    };
    let b = 1.10 * t.powf(-1.4);
    let far = (13.2 * t * t / pl).log10();
    Ok(at_one_bar
        * (1.0 - (a - 1.0) * (1.0 - p_e) / (a + b - 1.0 + p_e) * (-0.5 * far * far).exp()))
}

/// Emissivity of carbon dioxide; see [`CARBON_DIOXIDE_EMISSIVITY`].
///
/// # Errors
/// [`Refused`] where the path is shorter than [`SHORTEST_PATH_BAR_CM`].
pub fn carbon_dioxide_emissivity(t_k: f64, p: f64, p_a: f64, path_m: f64) -> Result<f64, Refused> {
    let Some(pl) = pressure_path("heat.emissivity-carbon-dioxide", p_a, path_m)? else {
        return Ok(0.0);
    };
    let t = t_k / 1000.0;
    let x = pl.log10();
    let c0 = -3.9893 + t * (2.7669 + t * (-2.1081 + t * 0.391_63));
    let c1 = 1.2710 + t * (-1.1090 + t * (1.0195 + t * -0.218_97));
    let c2 = -0.236_78 + t * (0.197_31 + t * (-0.195_44 + t * 0.044_644));
    let at_one_bar = (c0 + x * (c1 + x * c2)).exp();
    let p_e = p + 0.28 * p_a;
    let peak = if t <= 0.7 {
        0.054 / (t * t)
    } else {
        0.225 * t * t
    };
    let a = 1.0 + 0.1 * t.powf(-1.45);
    let far = (peak / pl).log10();
    Ok(at_one_bar
        * (1.0 - (a - 1.0) * (1.0 - p_e) / (a + 0.23 - 1.0 + p_e) * (-1.47 * far * far).exp()))
}

/// The product of partial pressure and path in bar cm; none where the gas is absent.
fn pressure_path(card: &'static str, p_a: f64, path_m: f64) -> Result<Option<f64>, Refused> {
    if p_a == 0.0 {
        return Ok(None);
    }
    let product = CM_PER_M * p_a * path_m;
    if product >= SHORTEST_PATH_BAR_CM {
        return Ok(Some(product));
    }
    Err(Refused {
        card,
        symbol: "p_a",
        value: p_a,
        why: "partial pressure times path is below 0.001 bar cm, where nothing was measured",
    })
}

/// What the two gases hide of each other; see [`OVERLAP`].
#[must_use]
pub fn overlap(h2o_bar: f64, co2_bar: f64, path_m: f64) -> f64 {
    let sum = CM_PER_M * (h2o_bar + co2_bar) * path_m;
    if sum <= 1.0 {
        return 0.0;
    }
    let z = h2o_bar / (h2o_bar + co2_bar);
    (z / (10.7 + 101.0 * z) - z.powf(10.4) / 111.7) * sum.log10().powf(2.76)
}

/// Emissivity of the gas at its own temperature.
///
/// # Errors
/// [`Refused`] where a path is too short.
pub fn emissivity(gas: &GasPath, t_k: f64) -> Result<f64, Refused> {
    let water = water_vapour_emissivity(t_k, gas.p_bar, gas.h2o_bar, gas.path_m)?;
    let carbon = carbon_dioxide_emissivity(t_k, gas.p_bar, gas.co2_bar, gas.path_m)?;
    Ok(water + carbon - overlap(gas.h2o_bar, gas.co2_bar, gas.path_m))
}

/// The path at the density that the gas would have at the wall, m; see [`ABSORBING_PATH`].
#[must_use]
pub fn absorbing_path(path_m: f64, gas_k: f64, wall_k: f64) -> f64 {
    path_m * wall_k / gas_k
}

/// Absorptivity of the gas for the radiation of a wall.
///
/// # Errors
/// [`Refused`] where a path is too short.
pub fn absorptivity(gas: &GasPath, gas_k: f64, wall_k: f64) -> Result<f64, Refused> {
    let dense = GasPath {
        path_m: absorbing_path(gas.path_m, gas_k, wall_k),
        ..*gas
    };
    Ok((gas_k / wall_k).sqrt() * emissivity(&dense, wall_k)?)
}

const T: Symbol = symbol("T", &KELVIN, "temperature of the gas");
const P: Symbol = symbol("p", &BAR_ABSOLUTE, "pressure of the gas");
const P_A: Symbol = symbol("p_a", &BAR_ABSOLUTE, "partial pressure");
const PATH: Symbol = symbol("L", &M, "mean beam length");

/// Emissivity of water vapour.
pub static WATER_VAPOUR_EMISSIVITY: Card = Card {
    id: "heat.emissivity-water-vapour",
    law: Law::Closed(
        "t = T / 1000; P = 100 * p_a * L; X = log10(P); \
         c_0 = -2.2118 - 1.1987 * t + 0.035596 * t^2; \
         c_1 = 0.85667 + 0.93048 * t - 0.14391 * t^2; \
         c_2 = -0.10838 - 0.17156 * t + 0.045915 * t^2; \
         P_E = p + 2.56 * p_a / sqrt(t); P_m = 13.2 * t^2; \
         a = cases(t <= 0.75, 2.144, 1.888 - 2.053 * log10(t)); b = 1.10 * t^-1.4; \
         eps_w = exp(c_0 + c_1 * X + c_2 * X^2) \
         * (1 - (a - 1) * (1 - P_E) / (a + b - 1 + P_E) * exp(-0.5 * log10(P_m / P)^2))",
    ),
    gives: symbol("eps_w", &ONE, "emissivity of water vapour"),
    takes: &[T, P, P_A, PATH],
    limits: MEASURED,
    spread: Spread::Percent(5.0),
    cite: PAPER,
    eval: |v| water_vapour_emissivity(v[0], v[1], v[2], v[3]),
};

/// Emissivity of carbon dioxide.
pub static CARBON_DIOXIDE_EMISSIVITY: Card = Card {
    id: "heat.emissivity-carbon-dioxide",
    law: Law::Closed(
        "t = T / 1000; P = 100 * p_a * L; X = log10(P); \
         c_0 = -3.9893 + 2.7669 * t - 2.1081 * t^2 + 0.39163 * t^3; \
         c_1 = 1.2710 - 1.1090 * t + 1.0195 * t^2 - 0.21897 * t^3; \
         c_2 = -0.23678 + 0.19731 * t - 0.19544 * t^2 + 0.044644 * t^3; \
         P_E = p + 0.28 * p_a; P_m = cases(t <= 0.7, 0.054 / t^2, 0.225 * t^2); \
         a = 1 + 0.1 * t^-1.45; \
         eps_c = exp(c_0 + c_1 * X + c_2 * X^2) \
         * (1 - (a - 1) * (1 - P_E) / (a + 0.23 - 1 + P_E) * exp(-1.47 * log10(P_m / P)^2))",
    ),
    gives: symbol("eps_c", &ONE, "emissivity of carbon dioxide"),
    takes: &[T, P, P_A, PATH],
    limits: MEASURED,
    spread: Spread::Percent(10.0),
    cite: PAPER,
    eval: |v| carbon_dioxide_emissivity(v[0], v[1], v[2], v[3]),
};

/// What the two gases hide of each other.
pub static OVERLAP: Card = Card {
    id: "heat.emissivity-overlap",
    law: Law::Closed(
        "P = 100 * (p_w + p_c) * L; z = p_w / (p_w + p_c); \
         d_eps = cases(P <= 1, 0, (z / (10.7 + 101 * z) - z^10.4 / 111.7) * log10(P)^2.76)",
    ),
    gives: symbol("d_eps", &ONE, "emissivity lost where the two gases overlap"),
    takes: &[
        symbol("p_w", &BAR_ABSOLUTE, "partial pressure of water vapour"),
        symbol("p_c", &BAR_ABSOLUTE, "partial pressure of carbon dioxide"),
        PATH,
    ],
    limits: &[Limit::at_most("100 * (p_w + p_c) * L", 1000.0)],
    spread: Spread::Unstated,
    cite: PAPER,
    eval: |v| Ok(overlap(v[0], v[1], v[2])),
};

/// Emissivity of the gas.
pub static GAS_EMISSIVITY: Card = Card {
    id: "heat.emissivity-gas",
    law: Law::Closed("eps_g = eps_w + eps_c - d_eps"),
    gives: symbol("eps_g", &ONE, "emissivity of the gas"),
    takes: &[
        symbol("eps_w", &ONE, "emissivity of water vapour"),
        symbol("eps_c", &ONE, "emissivity of carbon dioxide"),
        symbol("d_eps", &ONE, "emissivity lost where the two gases overlap"),
    ],
    limits: &[Limit::within("eps_g", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: PAPER,
    eval: |v| Ok(v[0] + v[1] - v[2]),
};

/// The path at the density that the gas would have at the wall.
pub static ABSORBING_PATH: Card = Card {
    id: "heat.absorbing-path",
    law: Law::Closed("L_w = L * T_w / T_g"),
    gives: symbol("L_w", &M, "beam length for radiation from the wall"),
    takes: &[PATH, T_G, T_W],
    limits: &[],
    spread: Spread::Exact,
    cite: PAPER,
    eval: |v| Ok(absorbing_path(v[0], v[1], v[2])),
};

/// Absorptivity of the gas for the radiation of a wall.
pub static GAS_ABSORPTIVITY: Card = Card {
    id: "heat.absorptivity-gas",
    law: Law::Closed("a_g = sqrt(T_g / T_w) * eps"),
    gives: symbol(
        "a_g",
        &ONE,
        "absorptivity of the gas for radiation from the wall",
    ),
    takes: &[
        symbol(
            "eps",
            &ONE,
            "emissivity at the temperature of the wall over the path L_w",
        ),
        T_G,
        T_W,
    ],
    limits: &[Limit::within("a_g", 0.0, 1.0)],
    spread: Spread::Unstated,
    cite: PAPER,
    eval: |v| Ok((v[1] / v[2]).sqrt() * v[0]),
};

const T_G: Symbol = symbol("T_g", &KELVIN, "temperature of the gas");
const T_W: Symbol = symbol("T_w", &KELVIN, "temperature of the wall");

/// Below 1 bar cm the law is carried on smoothly beyond what it was fitted to.
const MEASURED: &[Limit] = &[
    Limit::within("T", 400.0, 2500.0),
    Limit::within("100 * p_a * L", 1.0, 1000.0),
];

const PAPER: Cite = Cite {
    source: &thermal::COMBUSTION_FLAME_19,
    place: "total emissivity and its corrections for pressure and overlap",
};
