//! Pressure loss of gas through a bed of lumps.

use reckoning::quantity::{KG_PER_M2_S, M, PA};
use reckoning::{Card, Cite, Law, Limit, Spread, symbol};

use super::{BedGas, DENSITY, LUMP, Packing, SPHERICITY, VISCOSITY, VOIDAGE, packing};
use crate::sources::thermal;

/// Pressure loss of a bed in Pa, `flux` in kg/(m² s) over the whole grate; see [`LOSS`].
#[must_use]
pub fn loss(bed: &Packing, gas: &BedGas, flux: f64, depth_m: f64) -> f64 {
    let (viscous, inertial) = slopes(bed, gas);
    let u = flux / gas.density;
    depth_m * (viscous * u + inertial * u * u)
}

/// The two coefficients of the law: of `u` and of `u²`, per metre of bed.
pub(super) fn slopes(bed: &Packing, gas: &BedGas) -> (f64, f64) {
    let e = bed.voidage;
    let e3 = e * e * e;
    let s = bed.sphericity * bed.lump_m;
    let solid = 1.0 - e;
    (
        150.0 * gas.viscosity * solid * solid / (e3 * s * s),
        1.75 * solid * gas.density / (e3 * s),
    )
}

/// Pressure loss of a bed of lumps.
pub static LOSS: Card = Card {
    id: "bed.loss",
    law: Law::Closed(
        "u = G / rho; \
         dp = L * (150 * mu * (1 - e)^2 * u / (e^3 * (phi * d)^2) \
         + 1.75 * (1 - e) * rho * u^2 / (e^3 * phi * d))",
    ),
    gives: symbol("dp", &PA, "pressure loss of the bed"),
    takes: &[
        VOIDAGE,
        SPHERICITY,
        LUMP,
        DENSITY,
        VISCOSITY,
        symbol("G", &KG_PER_M2_S, "mass flux over the whole grate"),
        symbol("L", &M, "depth of the bed"),
    ],
    limits: &[
        Limit::within("e", 0.36, 0.55),
        Limit::at_least("phi", 0.6),
        Limit::at_most("G * phi * d / (mu * (1 - e))", 2500.0),
    ],
    spread: Spread::Percent(25.0),
    cite: Cite {
        source: &thermal::CEP_48_PACKED_COLUMNS,
        place: "the general equation",
    },
    eval: |v| {
        let gas = BedGas {
            density: v[3],
            viscosity: v[4],
        };
        Ok(loss(&packing("bed.loss", v)?, &gas, v[5], v[6]))
    },
};
