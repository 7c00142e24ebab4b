//! The bed of burning fuel as a packing that gas flows through.
//!
//! Pressure loss, and the flow at which the loss carries the bed. Left out: the loss of the
//! grate and the growth of ash, which no published law gives at this size.

mod air;
mod lift;
mod loss;
mod sparks;

pub use air::{BED_AIR_RATIO, bed_air_ratio};
pub use lift::{LIFT_FLUX, WEIGHT, lift_flux, weight};
pub use loss::{LOSS, loss};
pub use sparks::{CARRIED_SIZE, DRAG_COEFFICIENT, carried_size, drag_coefficient};

use reckoning::quantity::{KG_PER_M3, M, ONE, PA_S};
use reckoning::{Card, Refused, Symbol, symbol};

/// The cards of this family.
pub static CARDS: &[&Card] = &[
    &BED_AIR_RATIO,
    &LOSS,
    &WEIGHT,
    &LIFT_FLUX,
    &DRAG_COEFFICIENT,
    &CARRIED_SIZE,
];

/// A bed of lumps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Packing {
    /// Share of the bed that is open between the lumps.
    pub voidage: f64,
    /// Sphericity of the lumps.
    pub sphericity: f64,
    /// Size of the lumps, m.
    pub lump_m: f64,
}

/// The gas in the bed, at the temperature of the bed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BedGas {
    /// Density, kg/m³.
    pub density: f64,
    /// Dynamic viscosity, Pa s.
    pub viscosity: f64,
}

const VOIDAGE: Symbol = symbol("e", &ONE, "voidage of the bed");
const SPHERICITY: Symbol = symbol("phi", &ONE, "sphericity of the lumps");
const LUMP: Symbol = symbol("d", &M, "size of the lumps");
const DENSITY: Symbol = symbol(
    "rho",
    &KG_PER_M3,
    "density of the gas at the bed temperature",
);
const VISCOSITY: Symbol = symbol("mu", &PA_S, "viscosity of the gas at the bed temperature");

/// The packing of a card's first three values.
fn packing(card: &'static str, v: &[f64]) -> Result<Packing, Refused> {
    let refuse = |symbol, value, why| Refused {
        card,
        symbol,
        value,
        why,
    };
    if !(v[0] > 0.0 && v[0] < 1.0) {
        return Err(refuse("e", v[0], "a voidage lies between 0 and 1"));
    }
    if !(v[1] > 0.0 && v[1] <= 1.0) {
        return Err(refuse("phi", v[1], "a sphericity lies between 0 and 1"));
    }
    if v[2].is_nan() || v[2] <= 0.0 {
        return Err(refuse("d", v[2], "a lump has a size"));
    }
    Ok(Packing {
        voidage: v[0],
        sphericity: v[1],
        lump_m: v[2],
    })
}
