//! The steady loop at a given pressure: engine, exhaust, fire, tubes, coil and chimney.
//!
//! The draught of jets and hot column falls with the gas, the losses rise with it: one root,
//! sought between 4 and 800 kg of fuel on a square metre of grate in an hour. Below that no fire
//! keeps alight, above it no grate burns; a root there is not returned.

use formulas::balance::{
    absolute_pressure, bed_and_grate_loss, demand, draught_lost, efficiency, evaporation,
    flow_for_fuel, flux_on_area, heat_set_free, leaving_speed, lift_share, useful_heat,
    wall_temperature,
};
use formulas::bed::{BedGas, loss, weight};
use formulas::draught::{buoyancy, orifice_flow};
use formulas::gas::{FlueGas, MoleFractions};
use formulas::steam::Saturated;
use reckoning::quantity::KG_PER_M2_H;
use reckoning::solve::{Solved, bracketed};

use crate::dryer;
use crate::engine::{ExhaustState, Supply, exhaust};
use crate::fault::NotSettled;
use crate::firebox::{self, Walls};
use crate::inputs::{Burning, Inputs};
use crate::jets::{BlowerState, ChimneyGas, Jet, Jets, blower, exhaust_jet, vapour};
use crate::state::{BedState, FireState, PassState, WaterState};
use crate::tubes::{self, Stream};

/// Rates of burning between which the balance is sought, kg/(m² h).
pub const RATES_KG_M2_H: (f64, f64) = (4.0, 800.0);

/// Accuracy of the fuel asked, as a share of it.
const FUEL_ACCURACY: f64 = 1e-8;

/// Enthalpy that no coil in a smokebox adds to steam, J/kg; the upper end of the search.
const MOST_GAIN_J_KG: f64 = 1e6;

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
    let round = Round::new(inputs, burning, gauge_pa)?;
    let Some(_) = inputs.dryer.filter(|_| inputs.engine.is_some()) else {
        return round.settled(0.0);
    };
    // The coil dries the exhaust, which moves the blast, which moves the gas at the coil.
    let mut fault = None;
    let gain = bracketed(0.0, MOST_GAIN_J_KG, 1e-2, |gain| {
        match round.settled(gain) {
            Ok(state) => gain - state.pass.dryer.map_or(0.0, |d| d.gain_j_kg),
            Err(e) => {
                fault = Some(e);
                f64::NAN
            }
        }
    });
    match (gain, fault) {
        (Ok(gain), _) => round.settled(gain.x),
        (Err(_), Some(fault)) => Err(fault),
        (Err(why), None) => Err(NotSettled::of("enthalpy that the coil adds")(why)),
    }
}

/// What stays the same while the gain of the coil and the fuel are sought.
struct Round<'a> {
    inputs: &'a Inputs,
    burning: &'a Burning,
    water: WaterState,
    blower: Option<BlowerState>,
    bed_gas: BedGas,
    weight_pa: f64,
    air: FlueGas,
    vapour: FlueGas,
    steam_k: f64,
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
            viscosity: burning.gas.transport(bed.gas_k).viscosity,
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
        })
    }

    /// Engine and fire with this gain of the coil.
    fn settled(&self, gain_j_kg: f64) -> Result<FireState, NotSettled> {
        let exhausted = match &self.inputs.engine {
            Some(engine) => Some(exhaust(
                engine,
                &Supply {
                    blast: self.inputs.blast.as_ref(),
                    boiler_pa: self.water.boiler_pa,
                    atmosphere_pa: self.inputs.site.atmosphere_pa,
                    steam_j_kg: self.water.steam_j_kg,
                    gain_j_kg,
                },
            )?),
            None => None,
        };
        let jet = exhausted.as_ref().and_then(|e| exhaust_jet(self.inputs, e));
        let draw = Draw {
            round: self,
            steam_kg_s: exhausted.map_or(0.0, |e| e.engine.steam_kg_s),
            jets: self.jets(jet),
        };
        let (pass, balance) = draw.balanced()?;
        self.result(exhausted, jet, pass, balance)
    }

    fn jets(&self, exhaust: Option<Jet>) -> Jets<'_> {
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

    fn result(
        &self,
        exhaust: Option<ExhaustState>,
        exhaust_jet: Option<Jet>,
        pass: PassState,
        balance: Solved,
    ) -> Result<FireState, NotSettled> {
        let boiler = &self.inputs.boiler;
        let useful_w = useful_heat(
            pass.firebox.radiant_w,
            pass.tubes.heat_w,
            boiler.shell_loss_w,
        );
        if useful_w.is_nan() || useful_w <= 0.0 {
            return Err(NotSettled::Plant {
                what: "heat left for the water in W",
                value: useful_w,
                why: "the shell loses more than the fire gives, so no steam is made",
            });
        }
        let feed_j_kg = self.inputs.site.feed_j_kg;
        let evaporation_kg_s = evaporation(useful_w, self.water.steam_j_kg, feed_j_kg);
        let engine_kg_s = exhaust.map_or(0.0, |e| e.engine.steam_kg_s);
        let blower_kg_s = self.blower.map_or(0.0, |b| b.jet.steam_kg_s);
        Ok(FireState {
            inputs: *self.inputs,
            burning: *self.burning,
            water: self.water,
            exhaust,
            exhaust_jet,
            blower: self.blower,
            pass,
            balance,
            useful_w,
            evaporation_kg_s,
            demand_kg_s: demand(engine_kg_s, blower_kg_s),
            efficiency: efficiency(
                useful_w,
                pass.fuel_kg_s,
                self.inputs.fire.heating_value_j_kg,
            ),
            leaving_m_s: leaving_speed(
                evaporation_kg_s,
                self.water.steam_kg_m3,
                boiler.water_surface_m2,
            ),
        })
    }
}

/// The gas side with the jets as they are.
struct Draw<'a> {
    round: &'a Round<'a>,
    steam_kg_s: f64,
    jets: Jets<'a>,
}

impl Draw<'_> {
    fn balanced(&self) -> Result<(PassState, Solved), NotSettled> {
        let grate = self.round.inputs.bed.grate_m2;
        let (low, high) = (
            grate * KG_PER_M2_H.to_si(RATES_KG_M2_H.0),
            grate * KG_PER_M2_H.to_si(RATES_KG_M2_H.1),
        );
        let mut fault = None;
        // Sought in the logarithm of the fuel, and as a share of draught and loss together: the
        // balance is then near a straight line, and few rounds are wanted.
        let solved = bracketed(low.ln(), high.ln(), FUEL_ACCURACY, |ln_fuel| {
            match self.pass(ln_fuel.exp()) {
                Ok(pass) => {
                    let drawn = pass.left_pa + pass.loss_pa;
                    pass.left_pa / (drawn.abs() + pass.loss_pa)
                }
                Err(e) => {
                    fault = Some(e);
                    f64::NAN
                }
            }
        });
        match (solved, fault) {
            (Ok(solved), _) => {
                let pass = self.pass(solved.x.exp())?;
                let balance = Solved {
                    x: pass.fuel_kg_s,
                    residual: pass.left_pa,
                    bracket: (low, high),
                    rounds: solved.rounds,
                };
                Ok((pass, balance))
            }
            (Err(_), Some(fault)) => Err(fault),
            (Err(why), None) => Err(NotSettled::of(
                "draught against the losses of bed and tubes",
            )(why)),
        }
    }

    fn pass(&self, fuel_kg_s: f64) -> Result<PassState, NotSettled> {
        let (inputs, burning) = (self.round.inputs, self.round.burning);
        let wall_k = self.round.water.wall_k;
        let air_kg_s = flow_for_fuel(burning.air_kg_kg, fuel_kg_s);
        let gas_kg_s = flow_for_fuel(burning.flue_kg_kg, fuel_kg_s);
        let fire = &inputs.fire;
        let heat_w = heat_set_free(
            fire.burnt_share,
            fuel_kg_s,
            fire.heating_value_j_kg,
            air_kg_s,
            inputs.site.air_j_kg,
        );
        let walls = Walls {
            area_m2: inputs.firebox.area_m2,
            emissivity: inputs.firebox.emissivity,
            wall_k,
        };
        let stirred = firebox::settle(&firebox::Fire { heat_w, gas_kg_s }, &walls, &burning.gas)
            .map_err(NotSettled::of("heat of the stirred firebox"))?;
        let stream = Stream {
            gas_kg_s,
            inlet_k: stirred.gas_k,
            wall_k,
            pressure_pa: inputs.site.atmosphere_pa,
        };
        let march = tubes::march(&inputs.tubes, &stream, &burning.gas)?;
        let bed = self.bed(fuel_kg_s, air_kg_s);
        let loss_pa = draught_lost(bed.loss_pa, march.loss_pa(), inputs.extra_loss_pa);
        let dryer = self.dryer(gas_kg_s, march.outlet.gas_k)?;
        let behind_k = dryer.map_or(march.outlet.gas_k, |d| d.gas_k);
        let chimney = self.chimney_gas(gas_kg_s, behind_k, loss_pa)?;
        let jets = self.jets.draw(&chimney)?;
        let outside = self
            .round
            .air
            .density(inputs.site.air_k, inputs.site.atmosphere_pa);
        let lift_pa = buoyancy(inputs.chimney.height_m, outside, chimney.density_kg_m3);
        Ok(PassState {
            fuel_kg_s,
            air_kg_s,
            gas_kg_s,
            heat_w,
            bed,
            firebox: stirred,
            tubes: march,
            dryer,
            loss_pa,
            chimney,
            jets,
            outside_kg_m3: outside,
            lift_pa,
            left_pa: jets.net_pa + lift_pa - loss_pa,
        })
    }

    fn bed(&self, fuel_kg_s: f64, air_kg_s: f64) -> BedState {
        let bed = &self.round.inputs.bed;
        let gas = &self.round.bed_gas;
        let primary = self.round.inputs.fire.primary_share;
        let flux = flux_on_area(primary, air_kg_s, bed.grate_m2);
        let bare_pa = loss(&bed.packing, gas, flux, bed.depth_m);
        BedState {
            rate_kg_m2_s: flux_on_area(1.0, fuel_kg_s, bed.grate_m2),
            flux_kg_m2_s: flux,
            gas_kg_m3: gas.density,
            gas_pa_s: gas.viscosity,
            bare_pa,
            loss_pa: bed_and_grate_loss(bed.grate_factor, bed.ash_factor, bare_pa),
            weight_pa: self.round.weight_pa,
            lift: lift_share(bare_pa, self.round.weight_pa),
        }
    }

    fn dryer(&self, gas_kg_s: f64, gas_k: f64) -> Result<Option<dryer::DryerState>, NotSettled> {
        let Some(coil) = self.round.inputs.dryer.filter(|_| self.steam_kg_s > 0.0) else {
            return Ok(None);
        };
        let meeting = dryer::Meeting {
            steam_kg_s: self.steam_kg_s,
            steam_pa: self.round.water.boiler_pa,
            inlet_j_kg: self.round.water.steam_j_kg,
            gas_kg_s,
            gas_k,
            gas_pa: self.round.inputs.site.atmosphere_pa,
            gas: &self.round.burning.gas,
        };
        dryer::settle(&coil, &meeting).map(Some)
    }

    /// The gas once the leak has mixed with it.
    fn chimney_gas(
        &self,
        gas_kg_s: f64,
        gas_k: f64,
        vacuum_pa: f64,
    ) -> Result<ChimneyGas, NotSettled> {
        let site = &self.round.inputs.site;
        let leak_kg_s = match &self.round.inputs.leak {
            Some(leak) => {
                let outside = self.round.air.density(site.air_k, site.atmosphere_pa);
                orifice_flow(leak.coefficient, leak.area_m2, outside, vacuum_pa)
            }
            None => 0.0,
        };
        let mut gas = ChimneyGas {
            gas_kg_s,
            leak_kg_s,
            gas_k,
            density_kg_m3: 0.0,
        };
        if leak_kg_s > 0.0 {
            let brought = gas_kg_s * self.round.burning.gas.enthalpy(gas_k)
                + leak_kg_s * self.round.air.enthalpy(site.air_k);
            gas.gas_k = bracketed(site.air_k, gas_k, 1e-8, |t| {
                brought - self.jets.enthalpy_w(&gas, t)
            })
            .map_err(NotSettled::of("heat of gas and leaked air"))?
            .x;
        }
        gas.density_kg_m3 = self.jets.density(&gas, gas.gas_k);
        Ok(gas)
    }
}
