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

mod bed;

pub(crate) use bed::BedSide;
pub use bed::{Bed, BedFire, BedFireState, BedState, Fire};

use formulas::gas::{FlueGas, PureLaw};

use crate::fault::NotSettled;
use crate::firebox::{self, Settled, Walls};
use crate::tubes::{self, March, Stream, Tubes};

/// What burns, and the way that its gas takes to the smokebox.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Firing {
    /// A bed of coal on a grate, in a wetted firebox with fire tubes.
    Bed(BedFire),
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
pub enum FiringState {
    /// A bed with its firebox and tubes.
    Bed(BedFireState),
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
        }
    }

    /// As [`Self::bed`], to be changed.
    pub fn bed_mut(&mut self) -> Option<&mut BedFire> {
        match self {
            Self::Bed(fired) => Some(fired),
        }
    }

    /// The wetted firebox; `None` where the fire burns in a flue.
    #[must_use]
    pub fn firebox(&self) -> Option<&Firebox> {
        match self {
            Self::Bed(fired) => Some(&fired.firebox),
        }
    }

    /// As [`Self::firebox`], to be changed.
    pub fn firebox_mut(&mut self) -> Option<&mut Firebox> {
        match self {
            Self::Bed(fired) => Some(&mut fired.firebox),
        }
    }

    /// The fire tubes; `None` where the gas takes a flue.
    #[must_use]
    pub fn tubes(&self) -> Option<&Tubes> {
        match self {
            Self::Bed(fired) => Some(&fired.tubes),
        }
    }

    /// As [`Self::tubes`], to be changed.
    pub fn tubes_mut(&mut self) -> Option<&mut Tubes> {
        match self {
            Self::Bed(fired) => Some(&mut fired.tubes),
        }
    }
}

impl FiringState {
    /// The bed and its way; `None` where something else burns.
    #[must_use]
    pub fn bed(&self) -> Option<&BedFireState> {
        match self {
            Self::Bed(state) => Some(state),
        }
    }

    /// The stirred firebox; `None` where the fire burns in a flue.
    #[must_use]
    pub fn firebox(&self) -> Option<&Settled> {
        match self {
            Self::Bed(state) => Some(&state.firebox),
        }
    }

    /// The fire tubes; `None` where the gas takes a flue.
    #[must_use]
    pub fn tubes(&self) -> Option<&March> {
        match self {
            Self::Bed(state) => Some(&state.tubes),
        }
    }

    /// Heat that comes to the water.
    #[must_use]
    pub fn to_water(&self) -> ToWater {
        match self {
            Self::Bed(state) => ToWater {
                wall_w: state.firebox.radiant_w,
                tubes_w: state.tubes.heat_w,
            },
        }
    }

    /// Temperature of the gas where it leaves for the smokebox, K.
    #[must_use]
    pub fn behind_k(&self) -> f64 {
        match self {
            Self::Bed(state) => state.tubes.outlet.gas_k,
        }
    }
}

/// Air and metal round the fire, which stay the same while the unknown is sought.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Around {
    pub(crate) atmosphere_pa: f64,
    pub(crate) air_j_kg: f64,
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
        gas: &FlueGas,
    ) -> Result<(Settled, March), NotSettled> {
        let walls = Walls {
            area_m2: firebox.area_m2,
            emissivity: firebox.emissivity,
            wall_k: self.wall_k,
        };
        let stirred = firebox::settle(fire, &walls, gas)
            .map_err(NotSettled::of("heat of the stirred firebox"))?;
        let stream = Stream {
            gas_kg_s: fire.gas_kg_s,
            inlet_k: stirred.gas_k,
            wall_k: self.wall_k,
            pressure_pa: self.atmosphere_pa,
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
pub(crate) enum Side<'a> {
    Bed(BedSide<'a>),
}

impl<'a> Side<'a> {
    pub(crate) fn new(
        firing: &'a Firing,
        around: &'a Around,
        laws: &[PureLaw; 4],
    ) -> Result<Self, NotSettled> {
        Ok(match firing {
            Firing::Bed(fired) => Self::Bed(BedSide::new(fired, around, laws)?),
        })
    }

    /// The balance of the draught in words.
    pub(crate) fn balance(&self) -> &'static str {
        match self {
            Self::Bed(_) => "draught against the losses of bed and tubes",
        }
    }

    /// The bracket of the unknown.
    pub(crate) fn bracket(&self) -> Result<(f64, f64), NotSettled> {
        match self {
            Self::Bed(side) => Ok(side.bracket()),
        }
    }

    /// The gas at one value of the unknown.
    pub(crate) fn at(&self, unknown: f64) -> Result<HotGas, NotSettled> {
        match self {
            Self::Bed(side) => side.at(unknown),
        }
    }
}
