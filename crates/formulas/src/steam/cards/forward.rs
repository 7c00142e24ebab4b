//! Cards of the fundamental equations: six properties of each of the three phases.

use super::domain::{metastable, steam, water};
use crate::sources::IAPWS_R7_97_2012;
use reckoning::quantity::{KELVIN, KJ_PER_KG, KJ_PER_KG_K, M_PER_S, M3_PER_KG, MPA_ABSOLUTE};
use reckoning::{Card, Cite, Law, Spread, Symbol, symbol};

const TAKES: &[Symbol] = &[
    symbol("p", &MPA_ABSOLUTE, "absolute pressure"),
    symbol("T", &KELVIN, "temperature"),
];

const V: Symbol = symbol("v", &M3_PER_KG, "specific volume");
const H: Symbol = symbol("h", &KJ_PER_KG, "specific enthalpy");
const U: Symbol = symbol("u", &KJ_PER_KG, "specific internal energy");
const S: Symbol = symbol("s", &KJ_PER_KG_K, "specific entropy");
const CP: Symbol = symbol("cp", &KJ_PER_KG_K, "specific heat at constant pressure");
const W: Symbol = symbol("w", &M_PER_S, "speed of sound");

// How each follows from the Gibbs function gamma(pi, tau), which is a sum over the terms of the
// tables cited (R7-97(2012), tables 3 and 12).
const V_LAW: Law = Law::Words("v = (R T / p) pi gamma_pi");
const H_LAW: Law = Law::Words("h = R T tau gamma_tau");
const U_LAW: Law = Law::Words("u = R T (tau gamma_tau - pi gamma_pi)");
const S_LAW: Law = Law::Words("s = R (tau gamma_tau - gamma)");
const CP_LAW: Law = Law::Words("cp = -R tau^2 gamma_tautau");
const W_LAW: Law = Law::Words(
    "w = sqrt(R T pi^2 gamma_pi^2 / ((pi gamma_pi - pi tau gamma_pitau)^2 / \
     (tau^2 gamma_tautau) - pi^2 gamma_pipi))",
);

const LIQUID: Cite = Cite {
    source: &IAPWS_R7_97_2012,
    place: "equation 7, tables 2 and 3",
};
const STEAM: Cite = Cite {
    source: &IAPWS_R7_97_2012,
    place: "equations 15 to 17, tables 10 to 14",
};
const METASTABLE: Cite = Cite {
    source: &IAPWS_R7_97_2012,
    place: "equations 18 and 19, tables 10, 12, 13 and 16",
};

/// Specific volume of liquid water.
pub static REGION1_V: Card = Card {
    id: "steam.region1.v",
    law: V_LAW,
    gives: V,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: LIQUID,
    eval: |x| water("steam.region1.v", x).map(|at| at.v),
};

/// Specific enthalpy of liquid water.
pub static REGION1_H: Card = Card {
    id: "steam.region1.h",
    law: H_LAW,
    gives: H,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: LIQUID,
    eval: |x| water("steam.region1.h", x).map(|at| KJ_PER_KG.from_si(at.h)),
};

/// Specific internal energy of liquid water.
pub static REGION1_U: Card = Card {
    id: "steam.region1.u",
    law: U_LAW,
    gives: U,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: LIQUID,
    eval: |x| water("steam.region1.u", x).map(|at| KJ_PER_KG.from_si(at.u)),
};

/// Specific entropy of liquid water.
pub static REGION1_S: Card = Card {
    id: "steam.region1.s",
    law: S_LAW,
    gives: S,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: LIQUID,
    eval: |x| water("steam.region1.s", x).map(|at| KJ_PER_KG_K.from_si(at.s)),
};

/// Specific heat at constant pressure of liquid water.
pub static REGION1_CP: Card = Card {
    id: "steam.region1.cp",
    law: CP_LAW,
    gives: CP,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: LIQUID,
    eval: |x| water("steam.region1.cp", x).map(|at| KJ_PER_KG_K.from_si(at.cp)),
};

/// Speed of sound of liquid water.
pub static REGION1_W: Card = Card {
    id: "steam.region1.w",
    law: W_LAW,
    gives: W,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: LIQUID,
    eval: |x| water("steam.region1.w", x).map(|at| at.w()),
};

/// Specific volume of steam.
pub static REGION2_V: Card = Card {
    id: "steam.region2.v",
    law: V_LAW,
    gives: V,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: STEAM,
    eval: |x| steam("steam.region2.v", x).map(|at| at.v),
};

/// Specific enthalpy of steam.
pub static REGION2_H: Card = Card {
    id: "steam.region2.h",
    law: H_LAW,
    gives: H,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: STEAM,
    eval: |x| steam("steam.region2.h", x).map(|at| KJ_PER_KG.from_si(at.h)),
};

/// Specific internal energy of steam.
pub static REGION2_U: Card = Card {
    id: "steam.region2.u",
    law: U_LAW,
    gives: U,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: STEAM,
    eval: |x| steam("steam.region2.u", x).map(|at| KJ_PER_KG.from_si(at.u)),
};

/// Specific entropy of steam.
pub static REGION2_S: Card = Card {
    id: "steam.region2.s",
    law: S_LAW,
    gives: S,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: STEAM,
    eval: |x| steam("steam.region2.s", x).map(|at| KJ_PER_KG_K.from_si(at.s)),
};

/// Specific heat at constant pressure of steam.
pub static REGION2_CP: Card = Card {
    id: "steam.region2.cp",
    law: CP_LAW,
    gives: CP,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: STEAM,
    eval: |x| steam("steam.region2.cp", x).map(|at| KJ_PER_KG_K.from_si(at.cp)),
};

/// Speed of sound of steam.
pub static REGION2_W: Card = Card {
    id: "steam.region2.w",
    law: W_LAW,
    gives: W,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: STEAM,
    eval: |x| steam("steam.region2.w", x).map(|at| at.w()),
};

/// Specific volume of vapour below its saturation temperature.
pub static METASTABLE_V: Card = Card {
    id: "steam.metastable.v",
    law: V_LAW,
    gives: V,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: METASTABLE,
    eval: |x| metastable("steam.metastable.v", x).map(|at| at.v),
};

/// Specific enthalpy of vapour below its saturation temperature.
pub static METASTABLE_H: Card = Card {
    id: "steam.metastable.h",
    law: H_LAW,
    gives: H,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: METASTABLE,
    eval: |x| metastable("steam.metastable.h", x).map(|at| KJ_PER_KG.from_si(at.h)),
};

/// Specific internal energy of vapour below its saturation temperature.
pub static METASTABLE_U: Card = Card {
    id: "steam.metastable.u",
    law: U_LAW,
    gives: U,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: METASTABLE,
    eval: |x| metastable("steam.metastable.u", x).map(|at| KJ_PER_KG.from_si(at.u)),
};

/// Specific entropy of vapour below its saturation temperature.
pub static METASTABLE_S: Card = Card {
    id: "steam.metastable.s",
    law: S_LAW,
    gives: S,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: METASTABLE,
    eval: |x| metastable("steam.metastable.s", x).map(|at| KJ_PER_KG_K.from_si(at.s)),
};

/// Specific heat at constant pressure of vapour below its saturation temperature.
pub static METASTABLE_CP: Card = Card {
    id: "steam.metastable.cp",
    law: CP_LAW,
    gives: CP,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: METASTABLE,
    eval: |x| metastable("steam.metastable.cp", x).map(|at| KJ_PER_KG_K.from_si(at.cp)),
};

/// Speed of sound of vapour below its saturation temperature.
pub static METASTABLE_W: Card = Card {
    id: "steam.metastable.w",
    law: W_LAW,
    gives: W,
    takes: TAKES,
    limits: &[],
    spread: Spread::Unstated,
    cite: METASTABLE,
    eval: |x| metastable("steam.metastable.w", x).map(|at| at.w()),
};
