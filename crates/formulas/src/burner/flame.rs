//! How long the flames of a burner are, and how fast its mixture burns.
//!
//! Length is that of a laminar diffusion flame on a round port, of which a short slot is taken
//! as one of the same flow. Left out: turbulent flames, flames pressed against a wall, and the
//! slot flame, which rises by its speed or its lift.

use reckoning::Known;
use reckoning::quantity::{KELVIN, M, M_PER_S, M3_PER_S, ONE, Quantity, Ratio, Speed};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, symbol};

use crate::sources::{DERIVED, DIFFUSION_FLAMES_1977, FLAME_SPEEDS_1998};
use crate::table::{self, NoValue};

/// Gas that the secondary air must still find, over what stands in the port: see [`PORT_RICHNESS`].
#[must_use]
pub fn port_richness(lambda_1: f64, n: f64) -> f64 {
    (1.0 - lambda_1) * n / (1.0 + lambda_1 * n)
}

/// Volumes of secondary air that a volume of the mixture in the ports still needs.
pub static PORT_RICHNESS: Card = Card {
    id: "burner.port-richness",
    law: Law::Closed("S_m = (1 - lambda_1) * n / (1 + lambda_1 * n)"),
    gives: symbol(
        "S_m",
        &ONE,
        "volumes of secondary air that a volume of mixture needs",
    ),
    takes: &[
        symbol(
            "lambda_1",
            &ONE,
            "primary air over the air that the gas needs",
        ),
        symbol("n", &ONE, "volumes of dry air to burn a volume of gas"),
    ],
    limits: &[Limit::within("lambda_1", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "volumes of gas and air",
    },
    eval: |v| Ok(port_richness(v[0], v[1])),
};

/// Length of the flame of one port, m, from its flow (m³/s, at the temperature `air_k`).
///
/// # Errors
/// [`Refused`] where the mixture needs no more air: its flame has no outer cone.
pub fn flame_length(q: f64, air_k: f64, mixture_k: f64, s_m: f64) -> Result<f64, Refused> {
    if s_m.is_nan() || s_m <= 0.0 {
        return Err(Refused {
            card: "burner.flame-length",
            symbol: "S_m",
            value: s_m,
            why: "a mixture with all its air burns without an outer cone",
        });
    }
    Ok(1330.0 * q * air_k / mixture_k / (1.0 + 1.0 / s_m).ln())
}

/// Length of the laminar diffusion flame of one round port.
pub static FLAME_LENGTH: Card = Card {
    id: "burner.flame-length",
    law: Law::Closed("L_f = 1330 * Q * T_a / T_f / ln(1 + 1 / S_m)"),
    gives: symbol("L_f", &M, "length of the flame"),
    takes: &[
        symbol("Q", &M3_PER_S, "mixture through one port"),
        symbol("T_a", &KELVIN, "temperature of the air"),
        symbol("T_f", &KELVIN, "temperature of the mixture in the port"),
        symbol(
            "S_m",
            &ONE,
            "volumes of secondary air that a volume of mixture needs",
        ),
    ],
    limits: &[Limit::at_most("L_f", 0.3)],
    spread: Spread::Percent(30.0),
    cite: Cite {
        source: &DIFFUSION_FLAMES_1977,
        place: "circular port; form for every fuel",
    },
    eval: |v| flame_length(v[0], v[1], v[2], v[3]),
};

/// The table of flame speeds.
const SPEEDS: &str = "flame-speed-propane";

/// Speed at which cold propane and air of this rich ratio burn at 25 °C, with its row.
///
/// # Errors
/// [`NoValue::Outside`] for a mixture leaner or richer than the table.
///
/// # Panics
/// When the table lacks a column, which is a broken promise of ours.
pub fn cold_flame_speed(x: f64) -> Result<Known<Speed>, NoValue> {
    let table = table::find(SPEEDS);
    Ok(table.known(table.at("X", Ratio::from_si(x), "S")?))
}

/// Speed at which a warm mixture burns, m/s, from that at 25 °C.
#[must_use]
pub fn flame_speed(cold: f64, t_m: f64) -> f64 {
    cold * (t_m / 298.0).powf(1.75)
}

/// Card of [`flame_speed`].
pub static FLAME_SPEED: Card = Card {
    id: "burner.flame-speed",
    law: Law::Closed("S = S_0 * (T_m / 298)^1.75"),
    gives: symbol("S", &M_PER_S, "burning velocity of the mixture"),
    takes: &[
        symbol("S_0", &M_PER_S, "burning velocity at 25 °C"),
        symbol("T_m", &KELVIN, "temperature of the mixture"),
    ],
    limits: &[Limit::within("T_m", 280.0, 500.0)],
    spread: Spread::Percent(10.0),
    cite: Cite {
        source: &FLAME_SPEEDS_1998,
        place: "power of the temperature of the unburnt gas",
    },
    eval: |v| Ok(flame_speed(v[0], v[1])),
};

/// Height of the inner cone on a round port, m.
///
/// # Errors
/// [`Refused`] where the mixture is slower than its flame: the flame does not stand on the port.
pub fn inner_cone(d: f64, u: f64, s: f64) -> Result<f64, Refused> {
    let ratio = u / s;
    if ratio.is_nan() || ratio < 1.0 {
        return Err(Refused {
            card: "burner.inner-cone",
            symbol: "u",
            value: u,
            why: "slower than the flame, which would run into the port",
        });
    }
    Ok(d / 2.0 * (ratio * ratio - 1.0).sqrt())
}

/// Height of the inner cone on a round port.
pub static INNER_CONE: Card = Card {
    id: "burner.inner-cone",
    law: Law::Closed("H = d / 2 * sqrt((u / S)^2 - 1)"),
    gives: symbol("H", &M, "height of the inner cone"),
    takes: &[
        symbol("d", &M, "bore of the port"),
        symbol("u", &M_PER_S, "mean speed in the ports"),
        symbol("S", &M_PER_S, "burning velocity of the mixture"),
    ],
    limits: &[],
    spread: Spread::Percent(20.0),
    cite: Cite {
        source: &DERIVED,
        place: "a cone whose side burns at one speed across an even stream",
    },
    eval: |v| inner_cone(v[0], v[1], v[2]),
};
