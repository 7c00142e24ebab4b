//! Areas, momenta and ratios of the jets under the chimney.

use reckoning::formula::{Law, Spread};
use reckoning::quantity::{KG_PER_M2_S, KG_PER_S, M, M_PER_S, M2, NEWTON, ONE};
use reckoning::{Card, symbol};

use super::derived;

/// Area of a round bore.
#[must_use]
pub fn round_area(d: f64) -> f64 {
    std::f64::consts::FRAC_PI_4 * d * d
}

/// Card of [`round_area`].
pub static ROUND_AREA: Card = Card {
    id: "balance.round-area",
    law: Law::Closed("A = pi / 4 * d^2"),
    gives: symbol("A", &M2, "area"),
    takes: &[symbol("d", &M, "bore")],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("geometry"),
    eval: |v| Ok(round_area(v[0])),
};

/// Steam through jets.
#[must_use]
pub fn jet_steam(c: f64, a: f64, g: f64) -> f64 {
    c * a * g
}

/// Card of [`jet_steam`].
pub static JET_STEAM: Card = Card {
    id: "balance.jet-steam",
    law: Law::Closed("m = C * A * G"),
    gives: symbol("m", &KG_PER_S, "steam through the jets"),
    takes: &[
        symbol("C", &ONE, "discharge coefficient"),
        symbol("A", &M2, "area of all jets"),
        symbol("G", &KG_PER_M2_S, "mass flux in the throat"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("continuity"),
    eval: |v| Ok(jet_steam(v[0], v[1], v[2])),
};

/// Area of all jets.
#[must_use]
pub fn jets_area(n: f64, d: f64) -> f64 {
    n * (std::f64::consts::FRAC_PI_4 * d * d)
}

/// Card of [`jets_area`].
pub static JETS_AREA: Card = Card {
    id: "balance.jets-area",
    law: Law::Closed("A = n * pi / 4 * d^2"),
    gives: symbol("A", &M2, "area of all jets"),
    takes: &[
        symbol("n", &ONE, "number of jets"),
        symbol("d", &M, "bore of a jet"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("geometry"),
    eval: |v| Ok(jets_area(v[0], v[1])),
};

/// Momentum of a jet.
#[must_use]
pub fn jet_momentum(m: f64, u: f64) -> f64 {
    m * u
}

/// Card of [`jet_momentum`].
pub static JET_MOMENTUM: Card = Card {
    id: "balance.jet-momentum",
    law: Law::Closed("J = m * u"),
    gives: symbol("J", &NEWTON, "momentum of the jet"),
    takes: &[
        symbol("m", &KG_PER_S, "steam"),
        symbol("u", &M_PER_S, "speed"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition of momentum"),
    eval: |v| Ok(jet_momentum(v[0], v[1])),
};

/// Momentum of all jets.
#[must_use]
pub fn total_momentum(j_1: f64, j_2: f64) -> f64 {
    j_1 + j_2
}

/// Card of [`total_momentum`].
pub static TOTAL_MOMENTUM: Card = Card {
    id: "balance.total-momentum",
    law: Law::Closed("J = J_1 + J_2"),
    gives: symbol("J", &NEWTON, "momentum of all jets"),
    takes: &[
        symbol("J_1", &NEWTON, "momentum of the exhaust jet"),
        symbol("J_2", &NEWTON, "momentum of the blower's jets"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("momenta add"),
    eval: |v| Ok(total_momentum(v[0], v[1])),
};

/// Gas over steam by mass.
#[must_use]
pub fn gas_over_steam(m_g: f64, m_s: f64) -> f64 {
    m_g / m_s
}

/// Card of [`gas_over_steam`].
pub static GAS_OVER_STEAM: Card = Card {
    id: "balance.gas-over-steam",
    law: Law::Closed("w = m_g / m_s"),
    gives: symbol("w", &ONE, "gas over steam by mass"),
    takes: &[
        symbol("m_g", &KG_PER_S, "gas"),
        symbol("m_s", &KG_PER_S, "steam"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition"),
    eval: |v| Ok(gas_over_steam(v[0], v[1])),
};

/// One length over another.
#[must_use]
pub fn length_ratio(a: f64, b: f64) -> f64 {
    a / b
}

/// Card of [`length_ratio`].
pub static LENGTH_RATIO: Card = Card {
    id: "balance.length-ratio",
    law: Law::Closed("s = a / b"),
    gives: symbol("s", &ONE, "one length over another"),
    takes: &[
        symbol("a", &M, "first length"),
        symbol("b", &M, "second length"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition"),
    eval: |v| Ok(length_ratio(v[0], v[1])),
};

/// Area of all nozzles.
#[must_use]
pub fn total_area(a_1: f64, a_2: f64) -> f64 {
    a_1 + a_2
}

/// Card of [`total_area`].
pub static TOTAL_AREA: Card = Card {
    id: "balance.total-area",
    law: Law::Closed("A = A_1 + A_2"),
    gives: symbol("A", &M2, "area of all nozzles"),
    takes: &[
        symbol("A_1", &M2, "area of the blast nozzle"),
        symbol("A_2", &M2, "area of the blower's jets"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("areas add"),
    eval: |v| Ok(total_area(v[0], v[1])),
};

/// Two flows together.
#[must_use]
pub fn total_flow(m_1: f64, m_2: f64) -> f64 {
    m_1 + m_2
}

/// Card of [`total_flow`].
pub static TOTAL_FLOW: Card = Card {
    id: "balance.total-flow",
    law: Law::Closed("m = m_1 + m_2"),
    gives: symbol("m", &KG_PER_S, "both flows together"),
    takes: &[
        symbol("m_1", &KG_PER_S, "one flow"),
        symbol("m_2", &KG_PER_S, "the other"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("balance of mass"),
    eval: |v| Ok(total_flow(v[0], v[1])),
};
