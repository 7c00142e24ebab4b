//! Weight of the bed, and the flow that lifts it.

use reckoning::quantity::{KG_PER_M2_S, KG_PER_M3, M, PA, STANDARD_GRAVITY};
use reckoning::{Card, Cite, Law, Limit, Spread, Symbol, symbol};

use super::loss::slopes;
use super::{BedGas, DENSITY, LUMP, Packing, SPHERICITY, VISCOSITY, VOIDAGE, packing};
use crate::sources::{DERIVED, thermal};

const SOLID: Symbol = symbol("rho_p", &KG_PER_M3, "density of a lump, pores included");

/// Weight of a bed on its area, Pa; see [`WEIGHT`].
#[must_use]
pub fn weight(voidage: f64, lump_density: f64, gas_density: f64, depth_m: f64) -> f64 {
    (1.0 - voidage) * (lump_density - gas_density) * STANDARD_GRAVITY * depth_m
}

/// Weight of a bed on its area.
pub static WEIGHT: Card = Card {
    id: "bed.weight",
    law: Law::Closed("w = (1 - e) * (rho_p - rho) * g_n * L"),
    gives: symbol("w", &PA, "weight of the bed on its area"),
    takes: &[VOIDAGE, SOLID, DENSITY, symbol("L", &M, "depth of the bed")],
    limits: &[Limit::within("e", 0.0, 1.0)],
    spread: Spread::Exact,
    cite: Cite {
        source: &DERIVED,
        place: "weight of the lumps less that of the gas they displace",
    },
    eval: |v| Ok(weight(v[0], v[1], v[2], v[3])),
};

/// Mass flux in kg/(m² s) at which the loss of a bed is its weight; see [`LIFT_FLUX`].
#[must_use]
pub fn lift_flux(bed: &Packing, gas: &BedGas, lump_density: f64) -> f64 {
    let (viscous, inertial) = slopes(bed, gas);
    let w = weight(bed.voidage, lump_density, gas.density, 1.0);
    // The root of inertial u² + viscous u = w that keeps its figures where the viscous part rules.
    let u = 2.0 * w / (viscous + (viscous * viscous + 4.0 * inertial * w).sqrt());
    u * gas.density
}

/// Mass flux at which the loss of a bed is its weight; the depth drops out.
pub static LIFT_FLUX: Card = Card {
    id: "bed.lift-flux",
    law: Law::Closed(
        "A = 150 * mu * (1 - e)^2 / (e^3 * (phi * d)^2); \
         B = 1.75 * (1 - e) * rho / (e^3 * phi * d); \
         w = (1 - e) * (rho_p - rho) * g_n; \
         G_lift = 2 * w * rho / (A + sqrt(A^2 + 4 * B * w))",
    ),
    gives: symbol("G_lift", &KG_PER_M2_S, "mass flux that lifts the bed"),
    takes: &[VOIDAGE, SPHERICITY, LUMP, DENSITY, VISCOSITY, SOLID],
    limits: &[
        Limit::within("e", 0.36, 0.55),
        Limit::at_least("phi", 0.6),
        Limit::at_most("G_lift * phi * d / (mu * (1 - e))", 2500.0),
    ],
    spread: Spread::Unstated,
    cite: Cite {
        source: &thermal::CEP_48_PACKED_COLUMNS,
        place: "the general equation, solved for the weight of the bed",
    },
    eval: |v| {
        let gas = BedGas {
            density: v[3],
            viscosity: v[4],
        };
        Ok(lift_flux(&packing("bed.lift-flux", v)?, &gas, v[5]))
    },
};
