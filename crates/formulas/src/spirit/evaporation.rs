//! A wick or cup of spirit that burns on what its own flame evaporates, and what a hot burner
//! boils off besides.
//!
//! The film coefficient is fitted to burning rates of small pools that are remembered, not read,
//! and is wide. Left out: wind, and the lip of a cup that stands above the liquid.

use reckoning::quantity::{
    J_PER_KG, J_PER_KG_K, KELVIN, KG_PER_M2_S, KG_PER_S, M, M2, ONE, W_PER_M2_K,
};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use crate::sources::{COMMON_PRACTICE, DERIVED, DROPLET_BURNING};

/// Specific heat of the hot gas round the fuel, J/(kg K), as the laws of this file take it.
const HOT_GAS: f64 = 1100.0;

/// Share of oxygen in air by mass, as the law of the transfer number takes it.
const OXYGEN: f64 = 0.232;

/// A spirit on its way from the wick to the flame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Burning {
    /// Lower heating value, J/kg.
    pub heating_value: f64,
    /// Oxygen to burn a kilogram, kg/kg.
    pub oxygen: f64,
    /// Latent heat, J/kg.
    pub latent: f64,
    /// Specific heat of the liquid, J/(kg K).
    pub liquid_heat: f64,
    /// Boiling temperature, K.
    pub boiling: f64,
    /// Temperature at which the liquid comes to the wick, K.
    pub feed: f64,
}

/// Transfer number: heat that the flame brings over heat that a kilogram of vapour takes.
#[must_use]
pub fn transfer_number(x: &Burning) -> f64 {
    let rise = x.boiling - x.feed;
    (OXYGEN * x.heating_value / x.oxygen - HOT_GAS * rise) / (x.latent + x.liquid_heat * rise)
}

/// Card of [`transfer_number`].
pub static TRANSFER_NUMBER: Card = Card {
    id: "spirit.transfer-number",
    law: Law::Closed("B = (0.232 * LHV / r - 1100 * (T_b - T_a)) / (h_fg + c_l * (T_b - T_a))"),
    gives: symbol("B", &ONE, "transfer number"),
    takes: &[
        symbol("LHV", &J_PER_KG, "lower heating value of the spirit"),
        symbol("r", &ONE, "oxygen to burn a kilogram of fuel, kg/kg"),
        symbol("h_fg", &J_PER_KG, "latent heat of the spirit"),
        symbol("c_l", &J_PER_KG_K, "specific heat of the liquid"),
        symbol("T_b", &KELVIN, "boiling temperature of the spirit"),
        symbol(
            "T_a",
            &KELVIN,
            "temperature of the liquid that feeds the wick",
        ),
    ],
    limits: &[Limit::at_least("T_b - T_a", 0.0)],
    spread: Spread::Percent(10.0),
    cite: Cite {
        source: &DROPLET_BURNING,
        place: "transfer number of a fuel that burns in air without radiation",
    },
    eval: |v| {
        Ok(transfer_number(&Burning {
            heating_value: v[0],
            oxygen: v[1],
            latent: v[2],
            liquid_heat: v[3],
            boiling: v[4],
            feed: v[5],
        }))
    },
};

/// Film coefficient over a burning wick or cup of diameter `d` (m), W/(m² K).
#[must_use]
pub fn flame_film(d: f64) -> f64 {
    9.0 + 0.15 / d
}

/// Card of [`flame_film`].
pub static FLAME_FILM: Card = Card {
    id: "spirit.flame-film",
    law: Law::Closed("h = 9 + 0.15 / d"),
    gives: symbol("h", &W_PER_M2_K, "film coefficient over the burning wick"),
    takes: &[symbol("d", &M, "diameter of the wick or cup")],
    limits: &[Limit::within("d", 0.005, 0.15)],
    spread: Spread::Percent(60.0),
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "fitted here to remembered burning rates of ethanol: 15 to 18 g/m2s at 30 to \
                50 mm, 12 to 14 at 100 mm",
    },
    eval: |v| Ok(flame_film(v[0])),
};

/// Spirit that the flame evaporates, kg/(m² s).
#[must_use]
pub fn evaporation_flux(h: f64, b: f64) -> f64 {
    h / HOT_GAS * (1.0 + b).ln()
}

/// Card of [`evaporation_flux`].
pub static EVAPORATION_FLUX: Card = Card {
    id: "spirit.evaporation-flux",
    law: Law::Closed("G = h / 1100 * ln(1 + B)"),
    gives: symbol(
        "G",
        &KG_PER_M2_S,
        "spirit evaporated on the area of the wick",
    ),
    takes: &[
        symbol("h", &W_PER_M2_K, "film coefficient over the burning wick"),
        symbol("B", &ONE, "transfer number"),
    ],
    limits: &[Limit::at_least("B", 0.0)],
    spread: Spread::Percent(10.0),
    cite: Cite {
        source: &DROPLET_BURNING,
        place: "mass transfer against the stream of the vapour",
    },
    eval: |v| Ok(evaporation_flux(v[0], v[1])),
};

/// Area of a wick from which spirit burns, m².
#[must_use]
pub fn wick_area(top: f64, side: f64, share: f64) -> f64 {
    top + share * side
}

/// Card of [`wick_area`].
pub static WICK_AREA: Card = Card {
    id: "spirit.wick-area",
    law: Law::Closed("A = A_t + s * A_s"),
    gives: symbol("A", &M2, "area from which spirit burns"),
    takes: &[
        symbol("A_t", &M2, "top of the wick"),
        symbol("A_s", &M2, "side of the wick that stands out"),
        symbol("s", &ONE, "share of the side that burns"),
    ],
    limits: &[Limit::within("s", 0.3, 1.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "a third to the whole of the side burns",
    },
    eval: |v| Ok(wick_area(v[0], v[1], v[2])),
};

/// Spirit burnt, kg/s, by `n` wicks of area `area` (m²) each; `k` is the rate over that of the
/// law, as a burner that was weighed has shown it.
#[must_use]
pub fn spirit_burnt(k: f64, flux: f64, n: f64, area: f64) -> f64 {
    k * flux * n * area
}

/// Card of [`spirit_burnt`].
pub static SPIRIT_BURNT: Card = Card {
    id: "spirit.burnt",
    law: Law::Closed("m = k * G * n * A"),
    gives: symbol("m", &KG_PER_S, "spirit burnt"),
    takes: &[
        symbol("k", &ONE, "rate of burning over that of the law"),
        symbol(
            "G",
            &KG_PER_M2_S,
            "spirit evaporated on the area of the wick",
        ),
        symbol("n", &ONE, "number of wicks"),
        symbol("A", &M2, "area of one wick from which spirit burns"),
    ],
    limits: &[Limit::within("k", 0.5, 2.0)],
    spread: Spread::Unstated,
    cite: Cite {
        source: &DERIVED,
        place: "wicks side by side, each burning as alone",
    },
    eval: |v| Ok(spirit_burnt(v[0], v[1], v[2], v[3])),
};
