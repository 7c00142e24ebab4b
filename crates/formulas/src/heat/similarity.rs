//! The numbers by which flow in a tube is judged, and what a Nusselt number means.

use reckoning::quantity::{J_PER_KG_K, KG_PER_M2_S, KG_PER_S, M, ONE, PA_S, W_PER_M_K, W_PER_M2_K};
use reckoning::{Card, Cite, Law, Spread, symbol};

use crate::sources::DERIVED;

/// Mass flux in each of `n` round bores that share a flow, kg/(m² s); see [`TUBE_FLUX`].
#[must_use]
pub fn tube_flux(flow_kg_s: f64, n: f64, d_m: f64) -> f64 {
    flow_kg_s / (n * std::f64::consts::PI / 4.0 * d_m * d_m)
}

/// Mass flux in each of the tubes that share a flow.
pub static TUBE_FLUX: Card = Card {
    id: "heat.tube-flux",
    law: Law::Closed("G = m / (n * pi / 4 * d^2)"),
    gives: symbol("G", &KG_PER_M2_S, "mass flux in the tubes"),
    takes: &[
        symbol("m", &KG_PER_S, "gas through all the tubes"),
        symbol("n", &ONE, "number of tubes"),
        symbol("d", &M, "bore of a tube"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "flow over the open area, shared evenly",
    },
    eval: |v| Ok(tube_flux(v[0], v[1], v[2])),
};

/// Reynolds number of a round bore; see [`REYNOLDS`].
#[must_use]
pub fn reynolds(flux: f64, d_m: f64, viscosity: f64) -> f64 {
    flux * d_m / viscosity
}

/// Reynolds number of a round bore.
pub static REYNOLDS: Card = Card {
    id: "heat.reynolds",
    law: Law::Closed("Re = G * d / mu"),
    gives: symbol("Re", &ONE, "Reynolds number"),
    takes: &[
        symbol("G", &KG_PER_M2_S, "mass flux"),
        symbol("d", &M, "bore"),
        symbol("mu", &PA_S, "dynamic viscosity"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: DEFINITION,
    eval: |v| Ok(reynolds(v[0], v[1], v[2])),
};

/// Prandtl number; see [`PRANDTL`].
#[must_use]
pub fn prandtl(viscosity: f64, specific_heat: f64, conductivity: f64) -> f64 {
    viscosity * specific_heat / conductivity
}

/// Prandtl number.
pub static PRANDTL: Card = Card {
    id: "heat.prandtl",
    law: Law::Closed("Pr = mu * c_p / k"),
    gives: symbol("Pr", &ONE, "Prandtl number"),
    takes: &[
        symbol("mu", &PA_S, "dynamic viscosity"),
        symbol("c_p", &J_PER_KG_K, "specific heat at constant pressure"),
        symbol("k", &W_PER_M_K, "thermal conductivity"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: DEFINITION,
    eval: |v| Ok(prandtl(v[0], v[1], v[2])),
};

/// Heat transfer coefficient, W/(m² K); see [`FILM_COEFFICIENT`].
#[must_use]
pub fn film_coefficient(nusselt: f64, conductivity: f64, d_m: f64) -> f64 {
    nusselt * conductivity / d_m
}

/// Heat transfer coefficient of a round bore.
pub static FILM_COEFFICIENT: Card = Card {
    id: "heat.film-coefficient",
    law: Law::Closed("h = Nu * k / d"),
    gives: symbol("h", &W_PER_M2_K, "heat transfer coefficient by convection"),
    takes: &[
        symbol("Nu", &ONE, "Nusselt number"),
        symbol("k", &W_PER_M_K, "thermal conductivity of the gas"),
        symbol("d", &M, "bore"),
    ],
    limits: &[],
    spread: Spread::Exact,
    cite: DEFINITION,
    eval: |v| Ok(film_coefficient(v[0], v[1], v[2])),
};

const DEFINITION: Cite = Cite {
    source: &DERIVED,
    place: "definition",
};
