//! The settled fire: every value that a reader may ask for.

use formulas::balance::steaming_ratio;
use reckoning::solve::Solved;

use crate::dryer::DryerState;
use crate::engine::ExhaustState;
use crate::firing::{Burning, FiringState};
use crate::inputs::Inputs;
use crate::jets::{BlowerState, ChimneyGas, Jet, JetState};

/// Water and steam of the boiler at the given pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WaterState {
    /// Pressure in the boiler above the air, Pa.
    pub gauge_pa: f64,
    /// Pressure in the boiler, Pa absolute.
    pub boiler_pa: f64,
    /// Saturation temperature, K.
    pub saturation_k: f64,
    /// Temperature of the wetted metal, K.
    pub wall_k: f64,
    /// Enthalpy of the steam as it leaves the water, J/kg.
    pub steam_j_kg: f64,
    /// Density of dry steam in the boiler, kg/m³.
    pub steam_kg_m3: f64,
    /// Enthalpy of the feed water as it is fed, at the pressure of the air, J/kg.
    pub feed_j_kg: f64,
}

/// Air, fuel, heat and draught at one value of the firing's unknown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PassState {
    /// Fuel burnt, kg/s.
    pub fuel_kg_s: f64,
    /// Air supplied to it, kg/s.
    pub air_kg_s: f64,
    /// Flue gas, kg/s.
    pub gas_kg_s: f64,
    /// Heat set free, with the enthalpy of the air, W.
    pub heat_w: f64,
    /// The fire and the way of its gas.
    pub firing: FiringState,
    /// Temperature of the gas that comes to the coil, and where there is none to the smokebox, K.
    pub arriving_k: f64,
    /// The coil.
    pub dryer: Option<DryerState>,
    /// Temperature of the smoke behind tubes and coil, before any leak, K.
    pub smoke_k: f64,
    /// Draught lost before the chimney, Pa: the vacuum of the smokebox.
    pub loss_pa: f64,
    /// The gas that comes to the chimney.
    pub chimney: ChimneyGas,
    /// The jets.
    pub jets: JetState,
    /// Density of the air outside, kg/m³.
    pub outside_kg_m3: f64,
    /// Lift of the hot column, Pa.
    pub lift_pa: f64,
    /// Draught of jets and column less all losses, Pa.
    pub left_pa: f64,
}

/// The settled loop at a given pressure.
#[derive(Clone, Copy, Debug)]
pub struct FireState {
    /// What it was settled for.
    pub inputs: Inputs,
    /// What burns.
    pub burning: Burning,
    /// Water and steam.
    pub water: WaterState,
    /// Engine and exhaust.
    pub exhaust: Option<ExhaustState>,
    /// The exhaust as a jet.
    pub exhaust_jet: Option<Jet>,
    /// The blower.
    pub blower: Option<BlowerState>,
    /// Gas side.
    pub pass: PassState,
    /// The root of the draught balance: the firing's unknown, what is left in Pa.
    pub balance: Solved,
    /// Draught that the steam jets add to what the chimney alone makes of the same gas, Pa; 0
    /// where there are none.
    pub steam_draught_pa: f64,
    /// Heat that comes to the water, after the loss of the shell, W.
    pub useful_w: f64,
    /// Evaporation, kg/s.
    pub evaporation_kg_s: f64,
    /// Steam asked by engine and blower, kg/s.
    pub demand_kg_s: f64,
    /// Useful heat over the lower heating value of the fuel burnt.
    pub efficiency: f64,
    /// Speed of steam through the water surface, m/s.
    pub leaving_m_s: f64,
}

impl FireState {
    /// Evaporation over demand; `None` where nothing asks for steam.
    #[must_use]
    pub fn steaming_ratio(&self) -> Option<f64> {
        (self.demand_kg_s > 0.0).then(|| steaming_ratio(self.evaporation_kg_s, self.demand_kg_s))
    }
}
