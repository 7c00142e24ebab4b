//! Air of a bed: all of it through the bed at a stated ratio, or what the bed takes by its depth and
//! what comes through holes over the fire at the draught that bed and ash pan leave.

use formulas::balance::{flow_for_fuel, whole_air_ratio};
use formulas::bed::bed_air_ratio;
use formulas::draught::orifice_flow;

use super::Bed;
use crate::fault::NotSettled;

/// A hole or a door that air passes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opening {
    /// Free area, m².
    pub area_m2: f64,
    /// Discharge coefficient.
    pub coefficient: f64,
}

/// How the fire gets its air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FireAir {
    /// All of it comes through the bed.
    ThroughBed {
        /// Air supplied over air needed.
        ratio: f64,
    },
    /// Part of it comes through holes over the fire.
    WithHoles {
        /// Air of the bed over that which its depth in lumps gives.
        bed_factor: f64,
        /// The holes.
        holes: Opening,
    },
}

impl FireAir {
    /// Air through the bed over the air that the fuel needs.
    #[must_use]
    pub fn bed_ratio(&self, bed: &Bed) -> f64 {
        match self {
            Self::ThroughBed { ratio } => *ratio,
            Self::WithHoles { bed_factor, .. } => {
                bed_factor * bed_air_ratio(bed.depth_m, bed.packing.lump_m)
            }
        }
    }

    /// All air over the air needed, for so much fuel (kg/s) that needs `need` kg of air each, with
    /// this suction (Pa) under the crown and air of this density outside, kg/m³.
    ///
    /// # Errors
    /// [`NotSettled`] where bed and holes together give less than the fuel needs.
    pub(super) fn whole_ratio(
        &self,
        (bed_ratio, need, fuel_kg_s): (f64, f64, f64),
        (suction_pa, outside_kg_m3): (f64, f64),
    ) -> Result<f64, NotSettled> {
        let Self::WithHoles { holes, .. } = self else {
            return Ok(bed_ratio);
        };
        let second = holes.flow(outside_kg_m3, suction_pa);
        let ratio = whole_air_ratio(bed_ratio, second, need, fuel_kg_s);
        if ratio < 1.0 {
            return Err(NotSettled::Smothered { ratio });
        }
        Ok(ratio)
    }
}

impl Opening {
    /// Air through it at a difference of pressure, kg/s.
    #[must_use]
    pub fn flow(&self, outside_kg_m3: f64, suction_pa: f64) -> f64 {
        orifice_flow(self.coefficient, self.area_m2, outside_kg_m3, suction_pa)
    }
}

/// Air that goes through the bed, kg/s.
pub(super) fn primary(bed_ratio: f64, need: f64, fuel_kg_s: f64) -> f64 {
    flow_for_fuel(bed_ratio * need, fuel_kg_s)
}
