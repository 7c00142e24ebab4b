//! What burns, and the way that its gas takes to the smokebox.
//!
//! A [`Firing`] names both at once. Each kind answers the loop in the same words: at one value of
//! its unknown, which is the fuel where air rules it and the air where a jet rules the fuel, it
//! gives the gas that comes to the smokebox and the draught lost on the way there. The loop, its
//! sweep, band, cures, findings, heat balance and draught see no more of it than that.
//!
//! | kind | source of heat | way of the gas |
//! | --- | --- | --- |
//! | [`Firing::Bed`] | a bed of coal on a grate | wetted firebox, fire tubes |
//! | [`Firing::Firebox`] | a gas burner or wicks, no bed | the same firebox and tubes |
//! | [`Firing::Flue`] | a gas burner or wicks | centre flue, cross tubes |

mod bed;
mod bed_air;
mod in_firebox;
mod in_flue;

pub(crate) use bed::BedSide;
pub use bed::{Bed, BedFire, BedFireState, BedState, Fire};
pub use bed_air::{FireAir, Opening};
pub(crate) use in_firebox::FireboxSide;
pub use in_firebox::{FlameBox, FlameInFirebox, FlameInFireboxState};
pub(crate) use in_flue::FlueSide;
pub use in_flue::{FlameInFlue, FlameInFlueState};

use formulas::gas::{FlueGas, MoleFractions, PureLaw};

use crate::burner::{Flame, FlameState};
use crate::fault::NotSettled;
use crate::firebox::{self, Settled, Taker, Walls};
use crate::inputs::Site;
use crate::tubes::{self, March, Stream, Tubes};

/// What burns, and the way that its gas takes to the smokebox.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Firing {
    /// A bed of coal on a grate, in a wetted firebox with fire tubes.
    Bed(BedFire),
    /// A flame in that firebox without a bed: dual fuel.
    Firebox(FlameInFirebox),
    /// A flame in a centre flue with cross tubes.
    Flue(FlameInFlue),
}

/// The wetted box round the fire.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Firebox {
    /// Wetted side and crown, m².
    pub area_m2: f64,
    /// Effective emissivity between the fire and that wall.
    pub emissivity: f64,
}

/// What burns at a settled rate.
#[derive(Clone, Copy, Debug)]
pub struct Burning {
    /// The flue gas.
    pub gas: FlueGas,
    /// Air supplied to a kilogram of fuel, kg/kg.
    pub air_kg_kg: f64,
    /// Flue gas from a kilogram of fuel, kg/kg.
    pub flue_kg_kg: f64,
    /// Lower heating value of the fuel as fired, J/kg.
    pub heating_value_j_kg: f64,
    /// Share of the heating value set free.
    pub burnt_share: f64,
}

/// The settled fire with the way of its gas.
#[derive(Clone, Copy, Debug, PartialEq)]
#[expect(
    clippy::large_enum_variant,
    reason = "a state is copied whole, and nothing of it lies on the heap"
)]
pub enum FiringState {
    /// A bed with its firebox and tubes.
    Bed(BedFireState),
    /// A flame with its firebox and tubes.
    Firebox(FlameInFireboxState),
    /// A flame with its flue.
    Flue(FlameInFlueState),
}

/// Heat that comes to the water, W.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ToWater {
    /// By the wall round the fire.
    pub wall_w: f64,
    /// By the tubes.
    pub tubes_w: f64,
}

impl Firing {
    /// The bed and its way; `None` where something else burns.
    #[must_use]
    pub fn bed(&self) -> Option<&BedFire> {
        match self {
            Self::Bed(fired) => Some(fired),
            Self::Firebox(_) | Self::Flue(_) => None,
        }
    }

    /// As [`Self::bed`], to be changed.
    pub fn bed_mut(&mut self) -> Option<&mut BedFire> {
        match self {
            Self::Bed(fired) => Some(fired),
            Self::Firebox(_) | Self::Flue(_) => None,
        }
    }

    /// The fire tubes; `None` where the gas takes a flue.
    #[must_use]
    pub fn tubes(&self) -> Option<&Tubes> {
        match self {
            Self::Bed(fired) => Some(&fired.tubes),
            Self::Firebox(fired) => Some(&fired.tubes),
            Self::Flue(_) => None,
        }
    }

    /// As [`Self::tubes`], to be changed.
    pub fn tubes_mut(&mut self) -> Option<&mut Tubes> {
        match self {
            Self::Bed(fired) => Some(&mut fired.tubes),
            Self::Firebox(fired) => Some(&mut fired.tubes),
            Self::Flue(_) => None,
        }
    }

    /// The flame; `None` where a bed burns.
    #[must_use]
    pub fn flame(&self) -> Option<&Flame> {
        match self {
            Self::Bed(_) => None,
            Self::Firebox(fired) => Some(&fired.flame),
            Self::Flue(fired) => Some(&fired.flame),
        }
    }

    /// As [`Self::flame`], to be changed.
    pub fn flame_mut(&mut self) -> Option<&mut Flame> {
        match self {
            Self::Bed(_) => None,
            Self::Firebox(fired) => Some(&mut fired.flame),
            Self::Flue(fired) => Some(&mut fired.flame),
        }
    }

    /// The flame in its flue; `None` where the gas takes tubes.
    #[must_use]
    pub fn flue(&self) -> Option<&FlameInFlue> {
        match self {
            Self::Flue(fired) => Some(fired),
            Self::Bed(_) | Self::Firebox(_) => None,
        }
    }

    /// As [`Self::flue`], to be changed.
    pub fn flue_mut(&mut self) -> Option<&mut FlameInFlue> {
        match self {
            Self::Flue(fired) => Some(fired),
            Self::Bed(_) | Self::Firebox(_) => None,
        }
    }

    /// The flame in its firebox; `None` where a bed burns, or the gas takes a flue.
    #[must_use]
    pub fn flame_box(&self) -> Option<&FlameInFirebox> {
        match self {
            Self::Firebox(fired) => Some(fired),
            Self::Bed(_) | Self::Flue(_) => None,
        }
    }

    /// As [`Self::flame_box`], to be changed.
    pub fn flame_box_mut(&mut self) -> Option<&mut FlameInFirebox> {
        match self {
            Self::Firebox(fired) => Some(fired),
            Self::Bed(_) | Self::Flue(_) => None,
        }
    }
}

impl FiringState {
    /// The bed and its way; `None` where something else burns.
    #[must_use]
    pub fn bed(&self) -> Option<&BedFireState> {
        match self {
            Self::Bed(state) => Some(state),
            Self::Firebox(_) | Self::Flue(_) => None,
        }
    }

    /// The flame; `None` where a bed burns.
    #[must_use]
    pub fn flame(&self) -> Option<&FlameState> {
        match self {
            Self::Bed(_) => None,
            Self::Firebox(state) => Some(&state.flame),
            Self::Flue(state) => Some(&state.flame),
        }
    }

    /// The flame with its flue; `None` where the gas takes tubes.
    #[must_use]
    pub fn flue(&self) -> Option<&FlameInFlueState> {
        match self {
            Self::Flue(state) => Some(state),
            Self::Bed(_) | Self::Firebox(_) => None,
        }
    }

    /// Heat that comes to the water.
    #[must_use]
    pub fn to_water(&self) -> ToWater {
        let (wall_w, tubes_w) = match self {
            Self::Bed(state) => (state.firebox.radiant_w, state.tubes.heat_w),
            Self::Firebox(state) => (state.firebox.wall_w(), state.tubes.heat_w),
            Self::Flue(state) => (state.flue.wall_w, state.flue.cross_w),
        };
        ToWater { wall_w, tubes_w }
    }

    /// Temperature of the hottest gas, mean of a section, K.
    #[must_use]
    pub fn hottest_k(&self) -> f64 {
        match self {
            Self::Bed(state) => state.firebox.gas_k,
            Self::Firebox(state) => state.firebox.gas_k,
            Self::Flue(state) => state.flue.hottest_k,
        }
    }

    /// Temperature of the gas where it leaves for the smokebox, K.
    #[must_use]
    pub fn behind_k(&self) -> f64 {
        match self {
            Self::Bed(state) => state.tubes.outlet.gas_k,
            Self::Firebox(state) => state.tubes.outlet.gas_k,
            Self::Flue(state) => state.flue.outlet.gas_k,
        }
    }
}

/// The air outside.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Air {
    /// Pressure, Pa.
    pub(crate) pa: f64,
    /// Temperature, K.
    pub(crate) k: f64,
    /// Enthalpy above 298.15 K, J/kg.
    pub(crate) j_kg: f64,
    /// Density, kg/m³.
    pub(crate) kg_m3: f64,
    /// Molar mass, kg/kmol.
    pub(crate) molar_mass: f64,
}

impl Air {
    pub(crate) fn of(site: &Site) -> Self {
        let dry = FlueGas::new(&MoleFractions::DRY_AIR);
        Self {
            pa: site.atmosphere_pa,
            k: site.air_k,
            j_kg: site.air_j_kg,
            kg_m3: dry.density(site.air_k, site.atmosphere_pa),
            molar_mass: dry.molar_mass(),
        }
    }
}

/// Air and metal round the fire, which stay the same while the unknown is sought.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Around {
    pub(crate) air: Air,
    /// Temperature of the wetted metal, K.
    pub(crate) wall_k: f64,
    /// Draught lost in turns, entry and arrester, Pa.
    pub(crate) extra_loss_pa: f64,
}

impl Around {
    /// A stirred firebox and the tubes behind it.
    fn box_and_tubes(
        &self,
        (firebox, tubes): (&Firebox, &Tubes),
        fire: &firebox::Fire,
        (gas, taker): (&FlueGas, Option<Taker<'_>>),
    ) -> Result<(Settled, March), NotSettled> {
        let walls = Walls {
            area_m2: firebox.area_m2,
            emissivity: firebox.emissivity,
            wall_k: self.wall_k,
        };
        let mut stirred = firebox::settle(fire, &walls, gas)
            .map_err(NotSettled::of("heat of the stirred firebox"))?;
        if let Some(taker) = taker {
            let between = (self.wall_k, stirred.gas_k);
            let to_wall = |t| Ok(walls.receives(t));
            let balance = firebox::with_coil(fire, gas, between, (taker, to_wall))?;
            stirred = walls.at(fire, gas, balance);
        }
        let stream = Stream {
            gas_kg_s: fire.gas_kg_s,
            inlet_k: stirred.gas_k,
            wall_k: self.wall_k,
            pressure_pa: self.air.pa,
        };
        Ok((stirred, tubes::march(tubes, &stream, gas)?))
    }
}

/// The gas that comes to the smokebox at one value of the unknown.
pub(crate) struct HotGas {
    pub(crate) burning: Burning,
    pub(crate) fuel_kg_s: f64,
    pub(crate) air_kg_s: f64,
    pub(crate) gas_kg_s: f64,
    pub(crate) heat_w: f64,
    /// Draught lost before the chimney, Pa.
    pub(crate) loss_pa: f64,
    /// Temperature of the gas as it comes to the smokebox, K.
    pub(crate) behind_k: f64,
    pub(crate) state: FiringState,
}

/// A firing prepared for one pressure in the boiler.
#[expect(
    clippy::large_enum_variant,
    reason = "there is one of them for a settling, and it stays where it is"
)]
pub(crate) enum Side<'a> {
    Bed(BedSide<'a>),
    Firebox(FireboxSide<'a>),
    Flue(FlueSide<'a>),
}

impl<'a> Side<'a> {
    pub(crate) fn new(
        firing: &'a Firing,
        around: &'a Around,
        laws: &'a [PureLaw; 4],
    ) -> Result<Self, NotSettled> {
        Ok(match firing {
            Firing::Bed(fired) => Self::Bed(BedSide::new(fired, around, laws)?),
            Firing::Firebox(fired) => Self::Firebox(FireboxSide::new(fired, around, laws)?),
            Firing::Flue(fired) => Self::Flue(FlueSide::new(fired, around, laws)?),
        })
    }

    /// The balance of the draught in words.
    pub(crate) fn balance(&self) -> &'static str {
        match self {
            Self::Bed(_) => "draught against the losses of bed and tubes",
            Self::Firebox(_) => "draught against the losses of mouth and tubes",
            Self::Flue(_) => "draught against the losses of mouth and flue",
        }
    }

    /// The bracket of the unknown.
    pub(crate) fn bracket(&self) -> Result<(f64, f64), NotSettled> {
        match self {
            Self::Bed(side) => Ok(side.bracket()),
            Self::Firebox(side) => side.bracket(),
            Self::Flue(side) => side.bracket(),
        }
    }

    /// The gas at one value of the unknown.
    /// A coil in the firebox takes its heat there; a flue has no such place.
    pub(crate) fn at(&self, unknown: f64, taker: Option<Taker<'_>>) -> Result<HotGas, NotSettled> {
        match self {
            Self::Bed(side) => side.at(unknown, taker),
            Self::Firebox(side) => side.at(unknown, taker),
            Self::Flue(side) => side.at(unknown),
        }
    }
}
