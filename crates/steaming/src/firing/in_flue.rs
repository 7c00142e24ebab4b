//! A flame in a centre flue with cross tubes: a gas burner, or spirit wicks.
//!
//! The jet or the wicks rule the fuel, the draught rules the air: the unknown of the loop is the
//! ratio of all the air to the air that the fuel needs.

use formulas::balance::{draught_lost, heat_set_free, share_set_free};
use formulas::gas::PureLaw;

use super::{Around, FiringState, HotGas};
use crate::burner::{Aired, Flame, FlameSide, FlameState};
use crate::fault::NotSettled;
use crate::flue::{self, Flue, March, Release, Stream};

/// A flame, and the flue in which it burns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlameInFlue {
    /// The flame.
    pub flame: Flame,
    /// The flue.
    pub flue: Flue,
}

/// The settled flame with its flue.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlameInFlueState {
    /// The flame.
    pub flame: FlameState,
    /// The gas that came to the flue.
    pub stream: Stream,
    /// Where its heat was set free.
    pub release: Release,
    /// The flue.
    pub flue: March,
}

impl FlameInFlue {
    /// Where the heat of a flame at work is set free along the flue.
    fn release(&self, flame: &FlameState) -> Release {
        Release {
            ported_m: self.flame.ported_m,
            core_m: self.flame.burner().map_or(0.0, |burner| burner.outside_m),
            primary_ratio: flame.primary_ratio,
            mixing_m: self.flame.mixing_m,
            soot: self.flame.soot,
        }
    }
}

/// What stays the same while the air is sought.
pub(crate) struct FlueSide<'a> {
    fired: &'a FlameInFlue,
    around: &'a Around,
    flame: FlameSide<'a>,
}

impl<'a> FlueSide<'a> {
    pub(super) fn new(
        fired: &'a FlameInFlue,
        around: &'a Around,
        laws: &[PureLaw; 4],
    ) -> Result<Self, NotSettled> {
        Ok(Self {
            fired,
            around,
            flame: FlameSide::new(&fired.flame, around, laws)?,
        })
    }

    pub(super) fn bracket(&self) -> Result<(f64, f64), NotSettled> {
        self.flame.bracket(self.around.wall_k)
    }

    /// The gas behind the flue with so much air, over the air needed.
    pub(super) fn at(&self, air_ratio: f64) -> Result<HotGas, NotSettled> {
        let Aired {
            state: flame,
            mut burning,
            air_kg_s,
            gas_kg_s,
        } = self.flame.at(air_ratio)?;
        let around = self.around;
        let release = self.fired.release(&flame);
        let set_free = |share| {
            let value = burning.heating_value_j_kg;
            heat_set_free(share, flame.fuel_kg_s, value, air_kg_s, around.air.j_kg)
        };
        let brought_w = set_free(0.0);
        let stream = Stream {
            gas_kg_s,
            heat_w: set_free(burning.burnt_share) - brought_w,
            inlet_j_kg: brought_w / gas_kg_s,
            wall_k: around.wall_k,
            pressure_pa: around.air.pa,
            outside_kg_m3: around.air.kg_m3,
        };
        let flue = flue::march(&self.fired.flue, &release, &stream, &burning.gas)?;
        burning.burnt_share = share_set_free(burning.burnt_share, flue.outlet.burnt);
        Ok(HotGas {
            burning,
            fuel_kg_s: flame.fuel_kg_s,
            air_kg_s,
            gas_kg_s,
            heat_w: set_free(burning.burnt_share),
            loss_pa: draught_lost(flame.mouth_pa, flue.loss_pa(), around.extra_loss_pa),
            behind_k: flue.outlet.gas_k,
            state: FiringState::Flue(FlameInFlueState {
                flame,
                stream,
                release,
                flue,
            }),
        })
    }
}
