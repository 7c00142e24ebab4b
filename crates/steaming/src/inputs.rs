//! What the loop is told: plain numbers in SI with the unit in each name.
//!
//! Pressures are absolute unless the name says gauge. A part that a plant does not have is
//! `None`, never a zero.

use formulas::gas::{FlueGas, MoleFractions};

use crate::engine::{Engine, Plain};
use crate::firing::Firing;
use crate::jets::ChimneyWall;

/// Everything that the steady loop needs of a plant.
#[derive(Clone, Copy, Debug)]
pub struct Inputs {
    /// Surroundings and feed.
    pub site: Site,
    /// The boiler as a vessel of steam.
    pub boiler: Boiler,
    /// The engine; `None` where the stop valve is shut.
    pub engine: Option<Engine>,
    /// Steam that is asked for beside the engine, or with none described; `None` where none is.
    pub plain: Option<Plain>,
    /// What burns, and the way of its gas to the smokebox.
    pub firing: Firing,
    /// The chimney with its bell and choke.
    pub chimney: Chimney,
    /// The exhaust nozzle; `None` where the exhaust is led elsewhere.
    pub blast: Option<Blast>,
    /// What becomes of the water in wet steam under the chimney.
    pub exhaust_water: ExhaustWater,
    /// Live steam jets; `None` where there are none or they are shut.
    pub blower: Option<Blower>,
    /// The coil that dries or superheats the steam.
    pub dryer: Option<Dryer>,
    /// Air that leaks into the smokebox.
    pub leak: Option<Leak>,
    /// Draught lost in turns, entry and arrester, Pa.
    pub extra_loss_pa: f64,
}

impl Inputs {
    /// What the wall of the chimney takes. Over a coal fire the jets fill a mixing length of which
    /// the heads are known; over a flame the gas creeps, and takes what a smooth bore takes.
    pub(crate) fn chimney_wall(&self) -> ChimneyWall {
        match self.firing {
            Firing::Bed(_) => ChimneyWall::Heads(self.chimney.friction_heads),
            Firing::Firebox(_) | Firing::Flue(_) => ChimneyWall::Smooth(self.chimney.height_m),
        }
    }
}

/// Whether the water of wet exhaust dries in the gas.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ExhaustWater {
    /// It is taken out ahead of the nozzle, or falls out: dry steam mixes with the gas.
    TakenOut,
    /// It dries in the gas.
    DriesInGas,
}

/// Surroundings and feed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Site {
    /// Pressure of the air, Pa.
    pub atmosphere_pa: f64,
    /// Temperature of the air, K.
    pub air_k: f64,
    /// Enthalpy of the combustion air above 298.15 K, J/kg.
    pub air_j_kg: f64,
    /// Temperature of the feed water, K.
    pub feed_k: f64,
}

/// Enthalpy of dry air above 298.15 K, J/kg, at a temperature in kelvin.
#[must_use]
pub fn air_enthalpy(air_k: f64) -> f64 {
    FlueGas::new(&MoleFractions::DRY_AIR).enthalpy(air_k)
}

/// The boiler as a vessel of steam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Boiler {
    /// Dryness of the steam as it leaves the water.
    pub dryness: f64,
    /// Rise of the wetted metal over the saturation temperature, K.
    pub wall_rise_k: f64,
    /// Heat lost by the outside, W.
    pub shell_loss_w: f64,
    /// Water surface that steam leaves, m².
    pub water_surface_m2: f64,
    /// Height of the steam space above it, m.
    pub steam_space_m: f64,
}

/// The chimney with its bell and choke.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chimney {
    /// Height of the hot column above the smokebox, m.
    pub height_m: f64,
    /// Bore of the choke, m.
    pub choke_m: f64,
    /// Bore at the top, m; that of the choke in a parallel chimney.
    pub top_m: f64,
    /// Length of the parallel part, m.
    pub parallel_m: f64,
    /// Loss of the gas at the bell, in velocity heads.
    pub inlet_heads: f64,
    /// Friction of the mixing length, in velocity heads of the mixture.
    pub friction_heads: f64,
    /// Share of the velocity head that a taper gives back.
    pub diffuser_share: f64,
    /// Momentum of the mixture over that of an even stream.
    pub momentum_factor: f64,
}

impl Chimney {
    /// Whether it widens to the top, so that it gives back a part of the velocity head.
    #[must_use]
    pub fn tapers(&self) -> bool {
        self.top_m > self.choke_m
    }
}

/// The exhaust nozzle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Blast {
    /// Bore, m.
    pub nozzle_m: f64,
    /// Distance from the tip up to the choke, m.
    pub below_choke_m: f64,
    /// Nozzle coefficient.
    pub coefficient: f64,
    /// Draught found over that of full mixing.
    pub mixing: f64,
}

/// Live steam jets under the chimney.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Blower {
    /// Number of jets.
    pub jets: f64,
    /// Bore of a jet, m.
    pub bore_m: f64,
    /// Discharge coefficient of a jet.
    pub coefficient: f64,
    /// Draught found over that of full mixing.
    pub mixing: f64,
}

/// Where the coil lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CoilPlace {
    /// In the gas that has left the tubes or the flue.
    Smokebox,
    /// Over the fire, in its radiation.
    Firebox {
        /// Emissivity of its outside.
        emissivity: f64,
        /// Share of its outside that sees the fire.
        view: f64,
    },
}

/// The coil that dries or superheats the steam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dryer {
    /// Where it lies.
    pub place: CoilPlace,
    /// Bore of its tube, m.
    pub bore_m: f64,
    /// Outside diameter of its tube, m.
    pub outside_m: f64,
    /// Length of tube in the gas, m.
    pub length_m: f64,
    /// Mean diameter of the coil, m.
    pub coil_m: f64,
    /// Least area that the gas passes beside the coil, m².
    pub gas_area_m2: f64,
}

impl Dryer {
    /// Emissivity and view of a coil over the fire, which takes its heat before the tubes.
    #[must_use]
    pub fn over_fire(&self) -> Option<(f64, f64)> {
        match self.place {
            CoilPlace::Smokebox => None,
            CoilPlace::Firebox { emissivity, view } => Some((emissivity, view)),
        }
    }
}

/// Air that leaks into the smokebox.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leak {
    /// Area of all leaks, m².
    pub area_m2: f64,
    /// Discharge coefficient.
    pub coefficient: f64,
}
