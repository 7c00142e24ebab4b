//! The exhaust of a slow engine comes in puffs. The bed is drawn by the puffs alone, so that it
//! must lie still in a puff; the mean flow of gas stays as it is where the losses go by its
//! square.

use formulas::balance::lift_share;
use formulas::bed::{BedGas, loss};
use formulas::engine::puff_flux;

use crate::state::FireState;

/// The bed in a puff of the exhaust.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PuffedBed {
    /// Share of the time in which the exhaust flows.
    pub share: f64,
    /// Primary air over grate area in a puff, kg/(m² s).
    pub flux_kg_m2_s: f64,
    /// Loss of the bare bed in a puff, Pa.
    pub bare_pa: f64,
    /// That loss over the weight of the bed.
    pub lift: f64,
}

impl FireState {
    /// The bed in a puff; `None` where there is no bed, or no exhaust is led to a nozzle.
    #[must_use]
    pub fn puffed_bed(&self) -> Option<PuffedBed> {
        let share = self.exhaust.filter(|e| e.jet_m_s.is_some())?.puff_share;
        let bed = &self.inputs.firing.bed()?.bed;
        let mean = &self.pass.firing.bed()?.bed;
        let gas = BedGas {
            density: mean.gas_kg_m3,
            viscosity: mean.gas_pa_s,
        };
        let flux_kg_m2_s = puff_flux(mean.flux_kg_m2_s, share);
        let bare_pa = loss(&bed.packing, &gas, flux_kg_m2_s, bed.depth_m);
        Some(PuffedBed {
            share,
            flux_kg_m2_s,
            bare_pa,
            lift: lift_share(bare_pa, mean.weight_pa),
        })
    }
}
