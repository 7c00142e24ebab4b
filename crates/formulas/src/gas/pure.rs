//! Viscosity and conductivity of the pure gases, thin: the first term of each reference
//! equation. Water vapour is that of the releases in [`crate::steam`]. Temperatures in kelvin,
//! viscosities in µPa s, conductivities in W/(m K).
//!
//! Left out: the parts that grow with density, which are below 0.1 % at the pressure of a fire.

use reckoning::quantity::{KELVIN, MICRO_PA_S, W_PER_M_K};
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use crate::sources::thermal;

/// The collision integral that nitrogen and oxygen share.
fn collision(x: f64) -> f64 {
    (0.431 + x * (-0.4623 + x * (0.08406 + x * (0.005_341 + x * -0.003_31)))).exp()
}

/// Viscosity of nitrogen; see [`NITROGEN_VISCOSITY`].
#[must_use]
pub fn nitrogen_viscosity(t: f64) -> f64 {
    0.026_695_8 * (28.013_48 * t).sqrt() / (0.3656 * 0.3656 * collision((t / 98.94).ln()))
}

/// Viscosity of oxygen; see [`OXYGEN_VISCOSITY`].
#[must_use]
pub fn oxygen_viscosity(t: f64) -> f64 {
    0.026_695_8 * (31.9988 * t).sqrt() / (0.3428 * 0.3428 * collision((t / 118.5).ln()))
}

/// Viscosity of carbon dioxide; see [`CARBON_DIOXIDE_VISCOSITY`].
#[must_use]
pub fn carbon_dioxide_viscosity(t: f64) -> f64 {
    let x = (t / 251.196).ln();
    let integral =
        0.235_156 + x * (-0.491_266 + x * (5.211_155e-2 + x * (5.347_906e-2 + x * -1.537_102e-2)));
    1.006_97 * t.sqrt() / integral.exp()
}

/// Conductivity of nitrogen of viscosity `mu`; see [`NITROGEN_CONDUCTIVITY`].
#[must_use]
pub fn nitrogen_conductivity(t: f64, mu: f64) -> f64 {
    let tau = 126.192 / t;
    1e-3 * (1.511 * mu + 2.117 / tau - 3.332 * tau.powf(-0.7))
}

/// Conductivity of oxygen of viscosity `mu`; see [`OXYGEN_CONDUCTIVITY`].
#[must_use]
#[expect(
    clippy::approx_constant,
    reason = "a coefficient of the source that happens to lie near twice pi"
)]
pub fn oxygen_conductivity(t: f64, mu: f64) -> f64 {
    let tau = 154.581 / t;
    1e-3 * (1.036 * mu + 6.283 * tau.powf(-0.9) - 4.262 * tau.powf(-0.6))
}

/// Conductivity of carbon dioxide; see [`CARBON_DIOXIDE_CONDUCTIVITY`].
#[must_use]
pub fn carbon_dioxide_conductivity(t: f64) -> f64 {
    let r = t / 304.1282;
    let sum = 1.518_743_07e-2 + (2.806_740_40e-2 + (2.285_641_90e-2 - 7.416_242_10e-3 / r) / r) / r;
    1e-3 * r.sqrt() / sum
}

const T: Symbol = symbol("T", &KELVIN, "temperature of the gas");
const MU: Symbol = symbol("mu", &MICRO_PA_S, "viscosity of the thin gas");
const K: Symbol = symbol("k", &W_PER_M_K, "conductivity of the thin gas");

/// The equations of nitrogen and oxygen are given as valid for all states of liquid and vapour
/// (abstract of the paper, read 2026-11-25), which is as far as an equation of state reaches: that
/// of air to 2000 K (from memory).
const AIR_GASES_HOTTEST_K: f64 = 2000.0;

const AIR_GASES: Cite = Cite {
    source: &thermal::IJT_25_AIR_GASES,
    place: "dilute gas: equations 2 and 5, tables I to IV",
};

/// Viscosity of nitrogen.
pub static NITROGEN_VISCOSITY: Card = Card {
    id: "gas.viscosity-nitrogen",
    law: Law::Closed(
        "x = ln(T / 98.94); \
         O = exp(0.431 - 0.4623 * x + 0.08406 * x^2 + 0.005341 * x^3 - 0.00331 * x^4); \
         mu = 0.0266958 * sqrt(28.01348 * T) / (0.3656^2 * O)",
    ),
    gives: MU,
    takes: &[T],
    limits: &[Limit::within("T", 63.0, AIR_GASES_HOTTEST_K)],
    spread: Spread::Percent(0.5),
    cite: AIR_GASES,
    eval: |v| Ok(nitrogen_viscosity(v[0])),
};

/// Viscosity of oxygen.
pub static OXYGEN_VISCOSITY: Card = Card {
    id: "gas.viscosity-oxygen",
    law: Law::Closed(
        "x = ln(T / 118.5); \
         O = exp(0.431 - 0.4623 * x + 0.08406 * x^2 + 0.005341 * x^3 - 0.00331 * x^4); \
         mu = 0.0266958 * sqrt(31.9988 * T) / (0.3428^2 * O)",
    ),
    gives: MU,
    takes: &[T],
    limits: &[Limit::within("T", 55.0, AIR_GASES_HOTTEST_K)],
    spread: Spread::Percent(1.0),
    cite: AIR_GASES,
    eval: |v| Ok(oxygen_viscosity(v[0])),
};

/// Viscosity of carbon dioxide.
pub static CARBON_DIOXIDE_VISCOSITY: Card = Card {
    id: "gas.viscosity-carbon-dioxide",
    law: Law::Closed(
        "x = ln(T / 251.196); \
         O = exp(0.235156 - 0.491266 * x + 0.05211155 * x^2 + 0.05347906 * x^3 \
         - 0.01537102 * x^4); \
         mu = 1.00697 * sqrt(T) / O",
    ),
    gives: MU,
    takes: &[T],
    limits: &[Limit::within("T", 200.0, 1500.0)],
    spread: Spread::Percent(1.0),
    cite: Cite {
        source: &thermal::JPCRD_27_CARBON_DIOXIDE,
        place: "zero-density limit: equations 3 and 4, table 1",
    },
    eval: |v| Ok(carbon_dioxide_viscosity(v[0])),
};

/// Conductivity of nitrogen.
pub static NITROGEN_CONDUCTIVITY: Card = Card {
    id: "gas.conductivity-nitrogen",
    law: Law::Closed(
        "tau = 126.192 / T; k = 1e-3 * (1.511 * mu + 2.117 * tau^-1 - 3.332 * tau^-0.7)",
    ),
    gives: K,
    takes: &[T, MU],
    limits: &[Limit::within("T", 63.0, AIR_GASES_HOTTEST_K)],
    spread: Spread::Percent(2.0),
    cite: AIR_GASES,
    eval: |v| Ok(nitrogen_conductivity(v[0], v[1])),
};

/// Conductivity of oxygen.
pub static OXYGEN_CONDUCTIVITY: Card = Card {
    id: "gas.conductivity-oxygen",
    law: Law::Closed(
        "tau = 154.581 / T; k = 1e-3 * (1.036 * mu + 6.283 * tau^-0.9 - 4.262 * tau^-0.6)",
    ),
    gives: K,
    takes: &[T, MU],
    limits: &[Limit::within("T", 55.0, AIR_GASES_HOTTEST_K)],
    spread: Spread::Percent(5.0),
    cite: AIR_GASES,
    eval: |v| Ok(oxygen_conductivity(v[0], v[1])),
};

/// Conductivity of carbon dioxide.
pub static CARBON_DIOXIDE_CONDUCTIVITY: Card = Card {
    id: "gas.conductivity-carbon-dioxide",
    law: Law::Closed(
        "r = T / 304.1282; \
         k = 1e-3 * sqrt(r) / (0.0151874307 + 0.0280674040 / r + 0.0228564190 / r^2 \
         - 0.00741624210 / r^3)",
    ),
    gives: K,
    takes: &[T],
    limits: &[Limit::within("T", 216.0, 1100.0)],
    spread: Spread::Percent(2.0),
    cite: Cite {
        source: &thermal::JPCRD_45_CARBON_DIOXIDE,
        place: "dilute gas: equation 3, table 2",
    },
    eval: |v| Ok(carbon_dioxide_conductivity(v[0])),
};
