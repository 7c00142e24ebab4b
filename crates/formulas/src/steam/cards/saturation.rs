//! Cards of the saturation line.

use super::domain::refused;
use crate::sources::IAPWS_R7_97_2012;
use crate::steam::saturation::{p_sat, t_sat};
use reckoning::quantity::{KELVIN, MPA_ABSOLUTE};
use reckoning::{Card, Cite, Law, Spread, symbol};

/// Saturation temperature at a pressure.
pub static SATURATION_TEMPERATURE: Card = Card {
    id: "steam.saturation.temperature",
    law: Law::Closed(
        "beta = p^0.25; \
         E = beta^2 - 17.073846940092 * beta + 14.915108613530; \
         F = 1167.0521452767 * beta^2 + 12020.824702470 * beta - 4823.2657361591; \
         G = -724213.16703206 * beta^2 - 3232555.0322333 * beta + 405113.40542057; \
         D = 2 * G / (-F - sqrt(F^2 - 4 * E * G)); \
         N = 650.17534844798 + D; \
         T = (N - sqrt(N^2 - 4 * (-0.23855557567849 + 650.17534844798 * D))) / 2",
    ),
    gives: symbol("T", &KELVIN, "saturation temperature"),
    takes: &[symbol("p", &MPA_ABSOLUTE, "absolute pressure")],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 31, table 34",
    },
    eval: |v| {
        t_sat(MPA_ABSOLUTE.to_si(v[0])).map_err(|_| {
            let why = "the saturation line runs from 611.213 Pa to 22.064 MPa";
            refused("steam.saturation.temperature", "p", v[0], why)
        })
    },
};

/// Saturation pressure at a temperature.
pub static SATURATION_PRESSURE: Card = Card {
    id: "steam.saturation.pressure",
    law: Law::Closed(
        "theta = T - 0.23855557567849 / (T - 650.17534844798); \
         A = theta^2 + 1167.0521452767 * theta - 724213.16703206; \
         B = -17.073846940092 * theta^2 + 12020.824702470 * theta - 3232555.0322333; \
         C = 14.915108613530 * theta^2 - 4823.2657361591 * theta + 405113.40542057; \
         p = (2 * C / (-B + sqrt(B^2 - 4 * A * C)))^4",
    ),
    gives: symbol("p", &MPA_ABSOLUTE, "saturation pressure, absolute"),
    takes: &[symbol("T", &KELVIN, "temperature")],
    limits: &[],
    spread: Spread::Unstated,
    cite: Cite {
        source: &IAPWS_R7_97_2012,
        place: "equation 30, table 34",
    },
    eval: |v| match p_sat(v[0]) {
        Ok(p_pa) => Ok(MPA_ABSOLUTE.from_si(p_pa)),
        Err(_) => Err(refused(
            "steam.saturation.pressure",
            "T",
            v[0],
            "the saturation line runs from 0 °C to 647.096 K",
        )),
    },
};
