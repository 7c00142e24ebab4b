//! The ports of a burner: speed, gradient at the wall, and the gradients at which the flame
//! blows off or strikes back.
//!
//! The law of blow-off is fitted to rich mixtures of the paraffins and is good to a factor of
//! two: ports beside each other, gauze and hot metal hold a flame longer. Left out: yellow tips.

use reckoning::quantity::{
    KELVIN, KG_PER_M3, KG_PER_S, M, M_PER_S, M2, ONE, PER_S, W_PER_M2, WATT,
};
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use crate::sources::{DERIVED, FLAMES_AND_EXPLOSIONS};

/// Gradient below which a mixture near the one that just burns runs back into an open port, 1/s
/// (Combustion, Flames and Explosions of Gases, from memory).
pub const LIGHT_BACK_GRADIENT: f64 = 600.0;

/// Rich ratios between which [`LIGHT_BACK_GRADIENT`] is known.
pub const LIGHT_BACK_RICHNESS: [f64; 2] = [0.9, 1.1];

/// Rich ratio above which no flame runs back into a port.
pub const NO_LIGHT_BACK_ABOVE: f64 = 1.6;

/// Width of slot, m, below which no flame of propane in air runs back into it: the quenching
/// distance of parallel plates (Combustion, Flames and Explosions of Gases, from memory).
pub const QUENCH_SLOT_M: f64 = 2.0e-3;

/// Bore of port, m, below which no flame of propane in air runs back into it: the quenching
/// distance of a tube (Combustion, Flames and Explosions of Gases, from memory).
pub const QUENCH_BORE_M: f64 = 3.0e-3;

/// Share of the blow-off gradient below which a flame stays, and above which it leaves, as far as
/// a law of a factor of two can say.
pub const BLOW_OFF_SHARES: [f64; 2] = [0.5, 2.0];

const fn derived(place: &'static str) -> Cite {
    Cite {
        source: &DERIVED,
        place,
    }
}

const U: Symbol = symbol("u", &M_PER_S, "mean speed in the ports");
const G: Symbol = symbol("g", &PER_S, "gradient of the speed at the wall of a port");

/// Mean speed in the ports, m/s.
#[must_use]
pub fn port_speed(m: f64, rho_m: f64, a_p: f64) -> f64 {
    m / (rho_m * a_p)
}

/// Card of [`port_speed`].
pub static PORT_SPEED: Card = Card {
    id: "burner.port-speed",
    law: Law::Closed("u = m / (rho_m * A_p)"),
    gives: U,
    takes: &[
        symbol("m", &KG_PER_S, "gas and primary air"),
        symbol("rho_m", &KG_PER_M3, "density of gas and air once mixed"),
        symbol("A_p", &M2, "area of the ports"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("continuity"),
    eval: |v| Ok(port_speed(v[0], v[1], v[2])),
};

/// Heat on the area of the ports, W/m².
#[must_use]
pub fn port_loading(q: f64, a_p: f64) -> f64 {
    q / a_p
}

/// Card of [`port_loading`].
pub static PORT_LOADING: Card = Card {
    id: "burner.port-loading",
    law: Law::Closed("q = Q / A_p"),
    gives: symbol("q", &W_PER_M2, "heat on the area of the ports"),
    takes: &[
        symbol("Q", &WATT, "heat of the gas burnt to the end"),
        symbol("A_p", &M2, "area of the ports"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition"),
    eval: |v| Ok(port_loading(v[0], v[1])),
};

/// Gradient at the wall of a slot of width `w`, 1/s.
#[must_use]
pub fn slot_gradient(u: f64, w: f64) -> f64 {
    6.0 * u / w
}

/// Card of [`slot_gradient`].
pub static SLOT_GRADIENT: Card = Card {
    id: "burner.slot-gradient",
    law: Law::Closed("g = 6 * u / w"),
    gives: G,
    takes: &[U, symbol("w", &M, "width of the slot")],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("laminar flow between parallel walls"),
    eval: |v| Ok(slot_gradient(v[0], v[1])),
};

/// Gradient at the wall of a round port of bore `d`, 1/s.
#[must_use]
pub fn round_gradient(u: f64, d: f64) -> f64 {
    8.0 * u / d
}

/// Card of [`round_gradient`].
pub static ROUND_GRADIENT: Card = Card {
    id: "burner.round-gradient",
    law: Law::Closed("g = 8 * u / d"),
    gives: G,
    takes: &[U, symbol("d", &M, "bore of the port")],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("laminar flow in a round bore"),
    eval: |v| Ok(round_gradient(v[0], v[1])),
};

/// Rich ratio: gas over the gas that the primary air could burn.
#[must_use]
pub fn rich_ratio(lambda_1: f64) -> f64 {
    1.0 / lambda_1
}

/// Card of [`rich_ratio`].
pub static RICH_RATIO: Card = Card {
    id: "burner.rich-ratio",
    law: Law::Closed("X = 1 / lambda_1"),
    gives: symbol(
        "X",
        &ONE,
        "gas over the gas that the primary air could burn",
    ),
    takes: &[symbol(
        "lambda_1",
        &ONE,
        "primary air over the air that the gas needs",
    )],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition"),
    eval: |v| Ok(rich_ratio(v[0])),
};

/// Gradient at which the flame of a paraffin gas blows off a single cold port, 1/s.
#[must_use]
pub fn blow_off_gradient(x: f64, t_m: f64) -> f64 {
    1700.0 * x.powf(2.7) * (t_m / 298.0).powf(1.8)
}

/// Card of [`blow_off_gradient`].
pub static BLOW_OFF_GRADIENT: Card = Card {
    id: "burner.blow-off-gradient",
    law: Law::Closed("g_b = 1700 * X^2.7 * (T_m / 298)^1.8"),
    gives: symbol("g_b", &PER_S, "gradient at which the flame blows off"),
    takes: &[
        symbol(
            "X",
            &ONE,
            "gas over the gas that the primary air could burn",
        ),
        symbol("T_m", &KELVIN, "temperature of the mixture"),
    ],
    limits: &[
        Limit::within("X", 0.7, 2.0),
        Limit::within("T_m", 280.0, 430.0),
    ],
    spread: Spread::Percent(100.0),
    cite: Cite {
        source: &FLAMES_AND_EXPLOSIONS,
        place: "critical gradients of propane and butane in air; power laws fitted here",
    },
    eval: |v| Ok(blow_off_gradient(v[0], v[1])),
};

/// How near the flame is to blowing off.
#[must_use]
pub fn blow_off_share(g: f64, g_b: f64) -> f64 {
    g / g_b
}

/// Card of [`blow_off_share`].
pub static BLOW_OFF_SHARE: Card = Card {
    id: "burner.blow-off-share",
    law: Law::Closed("s = g / g_b"),
    gives: symbol("s", &ONE, "gradient at the wall over that of blow-off"),
    takes: &[
        G,
        symbol("g_b", &PER_S, "gradient at which the flame blows off"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: derived("definition"),
    eval: |v| Ok(blow_off_share(v[0], v[1])),
};
