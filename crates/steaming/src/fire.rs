//! The steady loop at a given pressure: engine, exhaust, fire, tubes, coil and chimney.
//!
//! The draught of jets and hot column falls with the gas, the losses rise with it: one root,
//! sought between 4 and 800 kg of fuel on a square metre of grate in an hour. Below that no fire
//! keeps alight, above it no grate burns; a root there is not returned.

use formulas::balance::{
    absolute_pressure, demand, efficiency, evaporation, leaving_speed, useful_heat,
    wall_temperature,
};
use formulas::bed::{BedGas, weight};
use formulas::gas::{FlueGas, MoleFractions};
use formulas::steam::{Phase, Saturated, at_pt};
use reckoning::solve::Solved;

use crate::dryer::Line;
use crate::engine::Supply;
use crate::fault::NotSettled;
use crate::inputs::{Burning, Inputs};
use crate::jets::{BlowerState, Jet, Jets, blower, vapour};
use crate::pass::{Draw, Drawn};
use crate::state::{FireState, WaterState};

/// Rates of burning between which the balance is sought, kg/(m² h).
pub const RATES_KG_M2_H: (f64, f64) = (4.0, 800.0);

/// Settles the loop at a gauge pressure in the boiler, Pa.
///
/// # Errors
/// [`NotSettled`] says which balance has no root, or which value cannot be worked with. A dead
/// fire, a negative flow or a fire that makes no steam is refused, never returned.
pub fn settle(inputs: &Inputs, gauge_pa: f64) -> Result<FireState, NotSettled> {
    let burning = inputs.fire.burning()?;
    settle_burning(inputs, &burning, gauge_pa)
}

/// As [`settle`], with the flue gas prepared beforehand.
///
/// # Errors
/// As [`settle`].
pub fn settle_burning(
    inputs: &Inputs,
    burning: &Burning,
    gauge_pa: f64,
) -> Result<FireState, NotSettled> {
    Round::new(inputs, burning, gauge_pa)?.settled()
}

/// Enthalpy of water before it is fed; steam at that temperature is no feed.
fn feed_enthalpy(atmosphere_pa: f64, feed_k: f64) -> Result<f64, NotSettled> {
    let feed = at_pt(atmosphere_pa, feed_k)?;
    if feed.phase == Phase::Liquid {
        return Ok(feed.h);
    }
    Err(NotSettled::Plant {
        what: "temperature of the feed in K",
        value: feed_k,
        why: "it boils at the pressure of the air",
    })
}

/// What stays the same while the fuel is sought.
pub(crate) struct Round<'a> {
    pub(crate) inputs: &'a Inputs,
    pub(crate) burning: &'a Burning,
    pub(crate) water: WaterState,
    blower: Option<BlowerState>,
    pub(crate) bed_gas: BedGas,
    pub(crate) weight_pa: f64,
    pub(crate) air: FlueGas,
    vapour: FlueGas,
    steam_k: f64,
    /// Steam in the coil; `None` where there is no coil, or no engine that draws steam through it.
    pub(crate) line: Option<Line>,
}

impl<'a> Round<'a> {
    fn new(inputs: &'a Inputs, burning: &'a Burning, gauge_pa: f64) -> Result<Self, NotSettled> {
        let atmosphere_pa = inputs.site.atmosphere_pa;
        let boiler_pa = absolute_pressure(gauge_pa, atmosphere_pa);
        let line = Saturated::at_pressure(boiler_pa)?;
        let steam_j_kg = line.mixed(inputs.boiler.dryness)?.h;
        let bed = &inputs.bed;
        let bed_gas = BedGas {
            density: burning.gas.density(bed.gas_k, atmosphere_pa),
            viscosity: bed.viscosity_factor * burning.gas.transport(bed.gas_k).viscosity,
        };
        let blower = match &inputs.blower {
            Some(b) => Some(blower(b, inputs, boiler_pa, steam_j_kg)?),
            None => None,
        };
        Ok(Self {
            inputs,
            burning,
            water: WaterState {
                gauge_pa,
                boiler_pa,
                saturation_k: line.t_k,
                wall_k: wall_temperature(line.t_k, inputs.boiler.wall_rise_k),
                steam_j_kg,
                steam_kg_m3: line.rho_g,
                feed_j_kg: feed_enthalpy(atmosphere_pa, inputs.site.feed_k)?,
            },
            blower,
            bed_gas,
            weight_pa: weight(
                bed.packing.voidage,
                bed.lump_kg_m3,
                bed_gas.density,
                bed.depth_m,
            ),
            air: FlueGas::new(&MoleFractions::DRY_AIR),
            vapour: vapour(),
            steam_k: Saturated::at_pressure(atmosphere_pa)?.t_k,
            line: (inputs.dryer.and(inputs.engine))
                .map(|_| Line::new(boiler_pa))
                .transpose()?,
        })
    }

    fn settled(&self) -> Result<FireState, NotSettled> {
        let drawn = Draw::new(self)?.balanced()?;
        self.result(drawn)
    }

    /// What comes to the engine.
    pub(crate) fn supply(&self) -> Supply<'_> {
        Supply {
            blast: self.inputs.blast.as_ref(),
            boiler_pa: self.water.boiler_pa,
            atmosphere_pa: self.inputs.site.atmosphere_pa,
            steam_j_kg: self.water.steam_j_kg,
        }
    }

    pub(crate) fn jets(&self, exhaust: Option<Jet>) -> Jets<'_> {
        Jets {
            chimney: &self.inputs.chimney,
            water: self.inputs.exhaust_water,
            exhaust,
            blower: self.blower.map(|b| b.jet),
            gas: &self.burning.gas,
            air: &self.air,
            vapour: &self.vapour,
            atmosphere_pa: self.inputs.site.atmosphere_pa,
            steam_k: self.steam_k,
        }
    }

    fn result(&self, (drawn, balance): (Drawn, Solved)) -> Result<FireState, NotSettled> {
        let Drawn { pass, exhaust, jet } = drawn;
        let boiler = &self.inputs.boiler;
        let (radiant_w, tubes_w) = (pass.firebox.radiant_w, pass.tubes.heat_w);
        let useful_w = useful_heat(radiant_w, tubes_w, boiler.shell_loss_w);
        if useful_w.is_nan() || useful_w <= 0.0 {
            return Err(NotSettled::Plant {
                what: "heat left for the water in W",
                value: useful_w,
                why: "the shell loses more than the fire gives, so no steam is made",
            });
        }
        let feed_j_kg = self.water.feed_j_kg;
        let evaporation_kg_s = evaporation(useful_w, self.water.steam_j_kg, feed_j_kg);
        let (value, density) = (self.inputs.fire.heating_value_j_kg, self.water.steam_kg_m3);
        let engine_kg_s = exhaust.map_or(0.0, |e| e.engine.steam_kg_s);
        let blower_kg_s = self.blower.map_or(0.0, |b| b.jet.steam_kg_s);
        Ok(FireState {
            inputs: *self.inputs,
            burning: *self.burning,
            water: self.water,
            exhaust,
            exhaust_jet: jet,
            blower: self.blower,
            pass,
            balance,
            useful_w,
            evaporation_kg_s,
            demand_kg_s: demand(engine_kg_s, blower_kg_s),
            efficiency: efficiency(useful_w, pass.fuel_kg_s, value),
            leaving_m_s: leaving_speed(evaporation_kg_s, density, boiler.water_surface_m2),
        })
    }
}
