//! Cards of viscosity, conductivity and surface tension.

use super::domain::{refused, steam, water};
use crate::sources::{IAPWS_R1_76_2014, IAPWS_R12_08, IAPWS_R15_11};
use crate::steam::range::t_min_k;
use crate::steam::{conductivity, transport, viscosity};
use reckoning::quantity::{KELVIN, KG_PER_M3, MICRO_PA_S, MPA_ABSOLUTE, N_PER_M_LINE, W_PER_M_K};
use reckoning::{Card, Cite, Law, Refused, Spread, Symbol, symbol};

const RHO_T: &[Symbol] = &[
    symbol("rho", &KG_PER_M3, "density"),
    symbol("T", &KELVIN, "temperature"),
];
const P_T: &[Symbol] = &[
    symbol("p", &MPA_ABSOLUTE, "absolute pressure"),
    symbol("T", &KELVIN, "temperature"),
];
/// Greatest temperature of both releases, K (900 °C).
const T_MAX_K: f64 = 1173.15;
/// Greatest density, kg/m³, in the verification tables of both releases.
const RHO_MAX: f64 = 1200.0;

/// Viscosity of water or steam.
pub static VISCOSITY: Card = Card {
    id: "steam.viscosity",
    law: Law::Words(
        "mu = mu_0(T) mu_1(T, rho): 100 sqrt(T/T*) / sum H_i (T*/T)^i times \
         exp(rho/rho* sum H_ij (T*/T - 1)^i (rho/rho* - 1)^j), without critical enhancement",
    ),
    gives: symbol("mu", &MICRO_PA_S, "dynamic viscosity"),
    takes: RHO_T,
    limits: &[],
    spread: Spread::Percent(3.0),
    cite: Cite {
        source: &IAPWS_R12_08,
        place: "equations 10 to 12, tables 1 and 2; enhancement set to one (section 3)",
    },
    eval: |v| {
        in_range("steam.viscosity", v)?;
        Ok(MICRO_PA_S.from_si(viscosity::viscosity(v[0], v[1])))
    },
};

/// Conductivity of water or steam without its critical enhancement.
pub static CONDUCTIVITY_BACKGROUND: Card = Card {
    id: "steam.conductivity-background",
    law: Law::Words(
        "lambda_b = lambda_0(T) lambda_1(T, rho): sqrt(T/T*) / sum L_k (T*/T)^k times \
         exp(rho/rho* sum (T*/T - 1)^i sum L_ij (rho/rho* - 1)^j)",
    ),
    gives: symbol("lambda_b", &W_PER_M_K, "conductivity without enhancement"),
    takes: RHO_T,
    limits: &[],
    spread: Spread::Percent(6.0),
    cite: Cite {
        source: &IAPWS_R15_11,
        place: "equations 16 and 17, tables 1 and 2",
    },
    eval: |v| {
        in_range("steam.conductivity-background", v)?;
        Ok(conductivity::background(v[0], v[1]))
    },
};

const ENHANCED: Law = Law::Words(
    "lambda = lambda_0 lambda_1 + lambda_2, the enhancement lambda_2 from the specific heats and \
     the compressibility of the industrial formulation and the viscosity without enhancement",
);
const ENHANCED_CITE: Cite = Cite {
    source: &IAPWS_R15_11,
    place: "equations 15 to 26, tables 1 to 3 and 6 (industrial use)",
};

/// Conductivity of liquid water.
pub static CONDUCTIVITY_WATER: Card = Card {
    id: "steam.region1.conductivity",
    law: ENHANCED,
    gives: symbol("lambda", &W_PER_M_K, "conductivity of water"),
    takes: P_T,
    limits: &[],
    spread: Spread::Percent(6.0),
    cite: ENHANCED_CITE,
    eval: |v| water("steam.region1.conductivity", v).map(|at| transport::of(&at).lambda),
};

/// Conductivity of steam.
pub static CONDUCTIVITY_STEAM: Card = Card {
    id: "steam.region2.conductivity",
    law: ENHANCED,
    gives: symbol("lambda", &W_PER_M_K, "conductivity of steam"),
    takes: P_T,
    limits: &[],
    spread: Spread::Percent(6.0),
    cite: ENHANCED_CITE,
    eval: |v| steam("steam.region2.conductivity", v).map(|at| transport::of(&at).lambda),
};

/// Surface tension of water against its vapour.
pub static SURFACE_TENSION: Card = Card {
    id: "steam.surface-tension",
    law: Law::Closed("tau = 1 - T / 647.096; sigma = 235.8e-3 * tau^1.256 * (1 - 0.625 * tau)"),
    gives: symbol("sigma", &N_PER_M_LINE, "surface tension"),
    takes: &[symbol("T", &KELVIN, "temperature")],
    limits: &[],
    spread: Spread::Percent(1.0),
    cite: Cite {
        source: &IAPWS_R1_76_2014,
        place: "equation 1",
    },
    eval: |v| {
        transport::surface_tension(v[0]).map_err(|_| {
            let why = "there is a surface from 0 °C to 647.096 K";
            refused("steam.surface-tension", "T", v[0], why)
        })
    },
};

fn in_range(card: &'static str, v: &[f64]) -> Result<(), Refused> {
    let (rho, t_k) = (v[0], v[1]);
    if !(0.0..=RHO_MAX).contains(&rho) {
        let why = "proved for 0 to 1200 kg/m³";
        return Err(refused(card, "rho", rho, why));
    }
    if !(t_min_k()..=T_MAX_K).contains(&t_k) {
        return Err(refused(card, "T", t_k, "published for 0 to 900 °C"));
    }
    Ok(())
}
