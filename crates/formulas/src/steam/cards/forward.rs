//! Cards of the fundamental equations: six properties of each of the three phases.

use super::domain::{metastable, steam, water};
use crate::sources::IAPWS_R7_97_2012;
use reckoning::quantity::{KELVIN, KJ_PER_KG, KJ_PER_KG_K, M_PER_S, M3_PER_KG, MPA_ABSOLUTE, Unit};
use reckoning::{Card, Cite, Law, Refused, Spread, Symbol, symbol};

/// A property with how it follows from the Gibbs function (R7-97(2012), tables 3 and 12).
struct Property {
    symbol: &'static str,
    unit: &'static Unit,
    meaning: &'static str,
    law: &'static str,
}

const V: Property = Property {
    symbol: "v",
    unit: &M3_PER_KG,
    meaning: "specific volume",
    law: "v = (R T / p) pi gamma_pi",
};
const H: Property = Property {
    symbol: "h",
    unit: &KJ_PER_KG,
    meaning: "specific enthalpy",
    law: "h = R T tau gamma_tau",
};
const U: Property = Property {
    symbol: "u",
    unit: &KJ_PER_KG,
    meaning: "specific internal energy",
    law: "u = R T (tau gamma_tau - pi gamma_pi)",
};
const S: Property = Property {
    symbol: "s",
    unit: &KJ_PER_KG_K,
    meaning: "specific entropy",
    law: "s = R (tau gamma_tau - gamma)",
};
const CP: Property = Property {
    symbol: "cp",
    unit: &KJ_PER_KG_K,
    meaning: "specific heat at constant pressure",
    law: "cp = -R tau^2 gamma_tautau",
};
const W: Property = Property {
    symbol: "w",
    unit: &M_PER_S,
    meaning: "speed of sound",
    law: "w = sqrt(R T pi^2 gamma_pi^2 / ((pi gamma_pi - pi tau gamma_pitau)^2 / (tau^2 gamma_tautau) - pi^2 gamma_pipi))",
};

type Eval = fn(&[f64]) -> Result<f64, Refused>;

const fn card(id: &'static str, of: &Property, place: &'static str, eval: Eval) -> Card {
    Card {
        id,
        law: Law::Words(of.law),
        gives: symbol(of.symbol, of.unit, of.meaning),
        takes: TAKES,
        limits: &[],
        spread: Spread::Unstated,
        cite: Cite {
            source: &IAPWS_R7_97_2012,
            place,
        },
        eval,
    }
}

const TAKES: &[Symbol] = &[
    symbol("p", &MPA_ABSOLUTE, "absolute pressure"),
    symbol("T", &KELVIN, "temperature"),
];

const LIQUID: &str = "equation 7, tables 2 and 3";
const STEAM: &str = "equations 15 to 17, tables 10 to 14";
const METASTABLE: &str = "equations 18 and 19, tables 10, 12, 13 and 16";

/// Specific volume of liquid water.
pub static REGION1_V: Card = card("steam.region1.v", &V, LIQUID, |x| {
    water("steam.region1.v", x).map(|at| at.v)
});

/// Specific enthalpy of liquid water.
pub static REGION1_H: Card = card("steam.region1.h", &H, LIQUID, |x| {
    water("steam.region1.h", x).map(|at| KJ_PER_KG.from_si(at.h))
});

/// Specific internal energy of liquid water.
pub static REGION1_U: Card = card("steam.region1.u", &U, LIQUID, |x| {
    water("steam.region1.u", x).map(|at| KJ_PER_KG.from_si(at.u))
});

/// Specific entropy of liquid water.
pub static REGION1_S: Card = card("steam.region1.s", &S, LIQUID, |x| {
    water("steam.region1.s", x).map(|at| KJ_PER_KG_K.from_si(at.s))
});

/// Specific heat at constant pressure of liquid water.
pub static REGION1_CP: Card = card("steam.region1.cp", &CP, LIQUID, |x| {
    water("steam.region1.cp", x).map(|at| KJ_PER_KG_K.from_si(at.cp))
});

/// Speed of sound of liquid water.
pub static REGION1_W: Card = card("steam.region1.w", &W, LIQUID, |x| {
    water("steam.region1.w", x).map(|at| at.w())
});

/// Specific volume of steam.
pub static REGION2_V: Card = card("steam.region2.v", &V, STEAM, |x| {
    steam("steam.region2.v", x).map(|at| at.v)
});

/// Specific enthalpy of steam.
pub static REGION2_H: Card = card("steam.region2.h", &H, STEAM, |x| {
    steam("steam.region2.h", x).map(|at| KJ_PER_KG.from_si(at.h))
});

/// Specific internal energy of steam.
pub static REGION2_U: Card = card("steam.region2.u", &U, STEAM, |x| {
    steam("steam.region2.u", x).map(|at| KJ_PER_KG.from_si(at.u))
});

/// Specific entropy of steam.
pub static REGION2_S: Card = card("steam.region2.s", &S, STEAM, |x| {
    steam("steam.region2.s", x).map(|at| KJ_PER_KG_K.from_si(at.s))
});

/// Specific heat at constant pressure of steam.
pub static REGION2_CP: Card = card("steam.region2.cp", &CP, STEAM, |x| {
    steam("steam.region2.cp", x).map(|at| KJ_PER_KG_K.from_si(at.cp))
});

/// Speed of sound of steam.
pub static REGION2_W: Card = card("steam.region2.w", &W, STEAM, |x| {
    steam("steam.region2.w", x).map(|at| at.w())
});

/// Specific volume of vapour below its saturation temperature.
pub static METASTABLE_V: Card = card("steam.metastable.v", &V, METASTABLE, |x| {
    metastable("steam.metastable.v", x).map(|at| at.v)
});

/// Specific enthalpy of vapour below its saturation temperature.
pub static METASTABLE_H: Card = card("steam.metastable.h", &H, METASTABLE, |x| {
    metastable("steam.metastable.h", x).map(|at| KJ_PER_KG.from_si(at.h))
});

/// Specific internal energy of vapour below its saturation temperature.
pub static METASTABLE_U: Card = card("steam.metastable.u", &U, METASTABLE, |x| {
    metastable("steam.metastable.u", x).map(|at| KJ_PER_KG.from_si(at.u))
});

/// Specific entropy of vapour below its saturation temperature.
pub static METASTABLE_S: Card = card("steam.metastable.s", &S, METASTABLE, |x| {
    metastable("steam.metastable.s", x).map(|at| KJ_PER_KG_K.from_si(at.s))
});

/// Specific heat at constant pressure of vapour below its saturation temperature.
pub static METASTABLE_CP: Card = card("steam.metastable.cp", &CP, METASTABLE, |x| {
    metastable("steam.metastable.cp", x).map(|at| KJ_PER_KG_K.from_si(at.cp))
});

/// Speed of sound of vapour below its saturation temperature.
pub static METASTABLE_W: Card = card("steam.metastable.w", &W, METASTABLE, |x| {
    metastable("steam.metastable.w", x).map(|at| at.w())
});
