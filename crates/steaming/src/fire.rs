//! The steady loop at a given pressure: engine, exhaust, fire, tubes, coil and chimney.
//!
//! The draught of jets and hot column falls with the gas, the losses rise with it: one root of the
//! unknown that the [`Firing`](crate::Firing) names, sought in the bracket that it names.

use formulas::balance::{
    absolute_pressure, demand, efficiency, evaporation, leaving_speed, total_flow, useful_heat,
    wall_temperature,
};
use formulas::gas::{FlueGas, MoleFractions, PureLaw, REFERENCE_LAWS};
use formulas::steam::{Phase, Saturated, at_pt};
use reckoning::solve::Solved;

use crate::dryer::Line;
use crate::engine::Supply;
use crate::fault::NotSettled;
use crate::firing::{Air, Around, Side};
use crate::inputs::Inputs;
use crate::jets::{BlowerState, Jet, Jets, blower, vapour};
use crate::pass::{Draw, Drawn};
use crate::starved;
use crate::state::{FireState, PassState, WaterState};

/// Settles the loop at a gauge pressure in the boiler, Pa.
///
/// # Errors
/// [`NotSettled`] says which balance has no root, or which value cannot be worked with. A dead
/// fire, a negative flow or a fire that makes no steam is refused, never returned.
pub fn settle(inputs: &Inputs, gauge_pa: f64) -> Result<FireState, NotSettled> {
    settle_on(inputs, &REFERENCE_LAWS, gauge_pa)
}

/// The state at a stated value of the firing's unknown, which for a bed is the fuel in kg/s,
/// whatever the chimney makes of it: for a trial in which the rate of burning was weighed and
/// the draught was not told. What draught and losses leave is in `pass.left_pa`.
///
/// # Errors
/// [`NotSettled`] where that much cannot burn, or no steam is made.
pub fn settle_at(inputs: &Inputs, gauge_pa: f64, unknown: f64) -> Result<FireState, NotSettled> {
    Round::of(inputs, &REFERENCE_LAWS, gauge_pa, |round| {
        round.result(Draw::new(round)?.at(unknown)?)
    })
}

/// As [`settle`], with other laws of viscosity and conductivity of the pure gases: so that a sum
/// done elsewhere on other data can be repeated.
///
/// # Errors
/// As [`settle`].
pub fn settle_on(
    inputs: &Inputs,
    laws: &[PureLaw; 4],
    gauge_pa: f64,
) -> Result<FireState, NotSettled> {
    Round::of(inputs, laws, gauge_pa, |round| {
        let settled = round.settled();
        settled.map_err(|fault| starved::told(round, laws, fault))
    })
}

/// Air and metal round the fire.
fn around(inputs: &Inputs, water: &WaterState) -> Around {
    Around {
        air: Air::of(&inputs.site),
        wall_k: water.wall_k,
        extra_loss_pa: inputs.extra_loss_pa,
    }
}

/// Water and steam at a gauge pressure.
fn water(inputs: &Inputs, gauge_pa: f64) -> Result<WaterState, NotSettled> {
    let atmosphere_pa = inputs.site.atmosphere_pa;
    let boiler_pa = absolute_pressure(gauge_pa, atmosphere_pa);
    let line = Saturated::at_pressure(boiler_pa)?;
    Ok(WaterState {
        gauge_pa,
        boiler_pa,
        saturation_k: line.t_k,
        wall_k: wall_temperature(line.t_k, inputs.boiler.wall_rise_k),
        steam_j_kg: line.mixed(inputs.boiler.dryness)?.h,
        steam_kg_m3: line.rho_g,
        feed_j_kg: feed_enthalpy(atmosphere_pa, inputs.site.feed_k)?,
    })
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

/// What stays the same while the unknown is sought.
pub(crate) struct Round<'a> {
    pub(crate) inputs: &'a Inputs,
    pub(crate) water: WaterState,
    pub(crate) side: Side<'a>,
    blower: Option<BlowerState>,
    pub(crate) air: FlueGas,
    vapour: FlueGas,
    steam_k: f64,
    /// Steam in the coil; `None` where there is no coil, or no engine that draws steam through it.
    pub(crate) line: Option<Line>,
}

impl<'a> Round<'a> {
    /// Does something with the round of these inputs at a gauge pressure, Pa.
    pub(crate) fn of<T>(
        inputs: &Inputs,
        laws: &[PureLaw; 4],
        gauge_pa: f64,
        what: impl FnOnce(&Round<'_>) -> Result<T, NotSettled>,
    ) -> Result<T, NotSettled> {
        let water = water(inputs, gauge_pa)?;
        let around = around(inputs, &water);
        let side = Side::new(&inputs.firing, &around, laws)?;
        what(&Round::new(inputs, water, side)?)
    }

    fn new(inputs: &'a Inputs, water: WaterState, side: Side<'a>) -> Result<Self, NotSettled> {
        let blower = match &inputs.blower {
            Some(b) => Some(blower(b, inputs, water.boiler_pa, water.steam_j_kg)?),
            None => None,
        };
        Ok(Self {
            inputs,
            water,
            side,
            blower,
            air: FlueGas::new(&MoleFractions::DRY_AIR),
            vapour: vapour(),
            steam_k: Saturated::at_pressure(inputs.site.atmosphere_pa)?.t_k,
            line: (inputs.dryer.and(inputs.taker()))
                .map(|_| Line::new(water.boiler_pa))
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
            room_k: self.inputs.site.air_k,
            steam_j_kg: self.water.steam_j_kg,
        }
    }

    pub(crate) fn jets<'b>(&'b self, exhaust: Option<Jet>, gas: &'b FlueGas) -> Jets<'b> {
        Jets {
            chimney: &self.inputs.chimney,
            wall: self.inputs.chimney_wall(),
            water: self.inputs.exhaust_water,
            exhaust,
            blower: self.blower.map(|b| b.jet),
            gas,
            air: &self.air,
            vapour: &self.vapour,
            atmosphere_pa: self.inputs.site.atmosphere_pa,
            steam_k: self.steam_k,
        }
    }

    /// Draught that the steam jets add to that of the chimney alone, Pa.
    fn steam_draught(&self, pass: &PassState, gas: &FlueGas) -> Result<f64, NotSettled> {
        if pass.jets.steam_kg_s > 0.0 {
            let alone = Jets {
                blower: None,
                ..self.jets(None, gas)
            };
            return Ok(pass.jets.net_pa - alone.draw(&pass.chimney)?.net_pa);
        }
        Ok(0.0)
    }

    fn result(&self, (drawn, balance): (Drawn, Solved)) -> Result<FireState, NotSettled> {
        let Drawn {
            pass,
            burning,
            exhaust,
            jet,
        } = drawn;
        let boiler = &self.inputs.boiler;
        let heat = pass.firing.to_water();
        let useful_w = useful_heat(heat.wall_w, heat.tubes_w, boiler.shell_loss_w);
        if useful_w.is_nan() || useful_w <= 0.0 {
            return Err(NotSettled::Plant {
                what: "heat left for the water in W",
                value: useful_w,
                why: "the shell loses more than the fire gives, so no steam is made",
            });
        }
        let feed_j_kg = self.water.feed_j_kg;
        let evaporation_kg_s = evaporation(useful_w, self.water.steam_j_kg, feed_j_kg);
        let (value, density) = (burning.heating_value_j_kg, self.water.steam_kg_m3);
        let engine_kg_s = total_flow(
            exhaust.map_or(0.0, |e| e.steam_kg_s),
            self.inputs.beside_kg_s(),
        );
        let blower_kg_s = self.blower.map_or(0.0, |b| b.jet.steam_kg_s);
        Ok(FireState {
            inputs: *self.inputs,
            burning,
            water: self.water,
            exhaust,
            exhaust_jet: jet,
            blower: self.blower,
            steam_draught_pa: self.steam_draught(&pass, &burning.gas)?,
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
