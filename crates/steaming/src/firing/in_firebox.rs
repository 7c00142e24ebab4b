//! A flame in a wetted firebox with fire tubes: the coal fire's boiler with a burner in the place
//! of the bed.
//!
//! The jet rules the fuel, the draught rules the air: the unknown of the loop is the ratio of all
//! the air to the air that the fuel needs. Blast and blower, left on, act on the secondary air.

use formulas::balance::{draught_lost, heat_set_free};
use formulas::gas::PureLaw;

use super::{Around, FiringState, HotGas};
use crate::burner::{Aired, Flame, FlameSide, FlameState};
use crate::fault::NotSettled;
use crate::firebox::{self, Fire, FlameSettled, FlameWalls, Taker};
use crate::tubes::{self, March, Stream, Tubes};

/// A flame, and the firebox and tubes that its gas passes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlameInFirebox {
    /// The flame.
    pub flame: Flame,
    /// The wetted box round the flame.
    pub firebox: FlameBox,
    /// Fire tubes.
    pub tubes: Tubes,
}

/// The wetted box round a flame without a bed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlameBox {
    /// Wetted side and crown, m².
    pub area_m2: f64,
    /// Mean beam length of its gas, m.
    pub beam_m: f64,
    /// Emissivity of its wall.
    pub wall_emissivity: f64,
    /// Heat transfer coefficient by convection, W/(m² K).
    pub convection: f64,
    /// Distance from the flame's ports or wicks to the nearest cold metal, m.
    pub gap_m: f64,
}

/// The settled flame with its firebox and tubes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlameInFireboxState {
    /// The flame.
    pub flame: FlameState,
    /// The firebox.
    pub firebox: FlameSettled,
    /// The tubes.
    pub tubes: March,
}

/// What stays the same while the air is sought.
pub(crate) struct FireboxSide<'a> {
    fired: &'a FlameInFirebox,
    around: &'a Around,
    flame: FlameSide<'a>,
}

/// How much hotter than the wall the gas must be able to get, K: tubes take no colder gas.
const ABOVE_WALL_K: f64 = 1.0;

impl<'a> FireboxSide<'a> {
    pub(super) fn new(
        fired: &'a FlameInFirebox,
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
        self.flame.bracket(self.around.wall_k + ABOVE_WALL_K)
    }

    /// The gas behind the tubes with so much air, over the air needed.
    pub(super) fn at(
        &self,
        air_ratio: f64,
        taker: Option<Taker<'_>>,
    ) -> Result<HotGas, NotSettled> {
        let Aired {
            state: flame,
            burning,
            air_kg_s,
            gas_kg_s,
        } = self.flame.at(air_ratio)?;
        let around = self.around;
        let (burnt, value) = (burning.burnt_share, burning.heating_value_j_kg);
        let heat_w = heat_set_free(burnt, flame.fuel_kg_s, value, air_kg_s, around.air.j_kg);
        let walls = FlameWalls {
            of: &self.fired.firebox,
            soot: self.fired.flame.soot,
            wall_k: around.wall_k,
            pressure_pa: around.air.pa,
        };
        let fire = Fire { heat_w, gas_kg_s };
        let firebox = firebox::settle_flame_with(&fire, &walls, &burning.gas, taker)?;
        let stream = Stream {
            gas_kg_s,
            inlet_k: firebox.gas_k,
            wall_k: around.wall_k,
            pressure_pa: around.air.pa,
        };
        let tubes = tubes::march(&self.fired.tubes, &stream, &burning.gas)?;
        Ok(HotGas {
            burning,
            fuel_kg_s: flame.fuel_kg_s,
            air_kg_s,
            gas_kg_s,
            heat_w,
            loss_pa: draught_lost(flame.mouth_pa, tubes.loss_pa(), around.extra_loss_pa),
            behind_k: tubes.outlet.gas_k,
            state: FiringState::Firebox(FlameInFireboxState {
                flame,
                firebox,
                tubes,
            }),
        })
    }
}
