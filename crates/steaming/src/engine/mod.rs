//! The engine at a given pressure, and its exhaust against the blast nozzle.
//!
//! The steam that the engine takes depends on its back pressure, and the back pressure on the
//! steam and on what the engine leaves in its exhaust: one bracketed root. What does not feel the
//! back pressure is made ready once for a pressure of the boiler. Steam that is asked for without
//! an engine being described goes the same way.

mod admit;
mod exhaust;
mod given;
mod missing;
mod pipe;
mod pulse;
mod ready;

pub use admit::{Admitted, ChestState};
pub(crate) use exhaust::exhaust_dried;
pub use exhaust::{ExhaustState, exhaust};
pub use given::{Admission, Engine, Exhausts, Lagging, Load, Missing, Pipe, Plain, Pump};
pub use missing::LostState;
pub(crate) use missing::{FILM_W_M2_K, GAP_M, IRON, PORTS};
pub use pipe::PipeState;
pub use pulse::PuffedBed;

use formulas::balance::round_area;

use crate::inputs::{Blast, Inputs};

/// The engine at one boiler pressure and one back pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EngineState {
    /// Pressure in the boiler, Pa.
    pub boiler_pa: f64,
    /// Steam in the chest.
    pub chest: ChestState,
    /// Speed, cut-off and pressure of the admission.
    pub admitted: Admitted,
    /// Density of dry steam at admission, kg/m³.
    pub admission_kg_m3: f64,
    /// Saturation temperature at admission, K.
    pub admission_k: f64,
    /// Heat of evaporation at admission, J/kg.
    pub admission_latent_j_kg: f64,
    /// Back pressure, Pa.
    pub back_pa: f64,
    /// Saturation temperature at the back pressure, K.
    pub back_k: f64,
    /// Pressure when the exhaust closes, Pa.
    pub closing_pa: f64,
    /// Pressure at the end of compression, Pa.
    pub compressed_pa: f64,
    /// Density of dry steam when the exhaust closes, kg/m³.
    pub closing_kg_m3: f64,
    /// Steam that the diagram accounts for in a stroke, kg.
    pub steam_per_stroke_kg: f64,
    /// Walls and leaks; `None` where the missing quantity is measured.
    pub lost: Option<LostState>,
    /// Steam supplied beyond what the diagram shows, over what it shows.
    pub missing: f64,
    /// Steam supplied to the engine, kg/s.
    pub steam_kg_s: f64,
    /// Mean effective pressure of the drawn diagram, Pa.
    pub mean_pressure_pa: f64,
    /// Indicated power, W.
    pub indicated_w: f64,
    /// Power at the shaft, W.
    pub shaft_w: f64,
    /// Power that the feed pump takes off the shaft, W.
    pub pump_w: f64,
    /// The most that the engine gives at the shaft against this back pressure, W.
    pub most_w: f64,
    /// Work of an engine without loss between boiler and air from a kilogram of dry steam, J/kg.
    pub ideal_j_kg: f64,
}

impl EngineState {
    /// Power at the shaft beside that of the feed pump, W.
    #[must_use]
    pub fn net_w(&self) -> f64 {
        formulas::engine::net_power(self.shaft_w, self.pump_w)
    }

    /// Work in the cylinders from a kilogram of steam, J/kg.
    #[must_use]
    pub fn work_j_kg(&self) -> f64 {
        formulas::engine::work_of_steam(self.indicated_w, self.steam_kg_s)
    }
}

/// The steam that comes to the engine, and where its exhaust goes.
#[derive(Clone, Copy, Debug)]
pub struct Supply<'a> {
    /// The nozzle; `None` where the exhaust is led elsewhere.
    pub blast: Option<&'a Blast>,
    /// Pressure in the boiler, Pa.
    pub boiler_pa: f64,
    /// Pressure of the air, Pa.
    pub atmosphere_pa: f64,
    /// Temperature of the room, K.
    pub room_k: f64,
    /// Enthalpy of the steam as it leaves the boiler, J/kg.
    pub steam_j_kg: f64,
}

/// What takes the steam.
#[derive(Clone, Copy, Debug)]
pub enum Taker<'a> {
    /// An engine.
    Engine(&'a Engine),
    /// Something of which only the steam is known.
    Plain(&'a Plain),
}

impl Inputs {
    /// What takes the steam through the coil to the nozzle: the engine, or where there is none
    /// what is asked for without one.
    #[must_use]
    pub fn taker(&self) -> Option<Taker<'_>> {
        let engine = self.engine.as_ref().map(Taker::Engine);
        engine.or_else(|| self.plain.as_ref().map(Taker::Plain))
    }

    /// Steam asked for beside an engine, kg/s.
    #[must_use]
    pub fn beside_kg_s(&self) -> f64 {
        let beside = self.engine.and(self.plain);
        beside.map_or(0.0, |plain| plain.steam_kg_s)
    }
}

impl Blast {
    /// Bore area, m².
    #[must_use]
    pub fn area_m2(&self) -> f64 {
        round_area(self.nozzle_m)
    }
}
