//! How long the flames of a burner are.
//!
//! Length is that of a laminar diffusion flame on a round port, of which a short slot is taken
//! as one of the same flow. Left out: turbulent flames, flames pressed against a wall, and the
//! slot flame, which rises by its speed or its lift.

use reckoning::quantity::{KELVIN, M, M3_PER_S, ONE};
use reckoning::{Card, Cite, Law, Limit, Refused, Spread, symbol};

use crate::sources::{DERIVED, DIFFUSION_FLAMES_1977};

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
