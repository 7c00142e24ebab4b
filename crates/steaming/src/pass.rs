//! The gas side at one rate of burning: bed, firebox, tubes, coil, leak and chimney; and the rate
//! at which draught and losses balance.

use formulas::balance::{
    bed_and_grate_loss, draught_lost, flow_for_fuel, flux_on_area, heat_set_free, lift_share,
};
use formulas::bed::loss;
use formulas::draught::{buoyancy, orifice_flow};
use reckoning::quantity::KG_PER_M2_H;
use reckoning::solve::{Solved, bracketed};

use crate::dryer;
use crate::fault::NotSettled;
use crate::fire::{RATES_KG_M2_H, Round};
use crate::firebox::{self, Settled, Walls};
use crate::jets::{ChimneyGas, Jets};
use crate::seek::seek;
use crate::state::{BedState, PassState};
use crate::tubes::{self, March, Stream};

/// Accuracy of the fuel asked, as a share of it.
const FUEL_ACCURACY: f64 = 1e-8;

/// The gas side with the jets as they are.
pub(crate) struct Draw<'a> {
    pub(crate) round: &'a Round<'a>,
    pub(crate) steam_kg_s: f64,
    pub(crate) jets: Jets<'a>,
}

impl Draw<'_> {
    pub(crate) fn balanced(&self) -> Result<(PassState, Solved), NotSettled> {
        let grate = self.round.inputs.bed.grate_m2;
        let low = grate * KG_PER_M2_H.to_si(RATES_KG_M2_H.0);
        let high = grate * KG_PER_M2_H.to_si(RATES_KG_M2_H.1);
        // Sought in the logarithm of the fuel, and as a share of draught and loss together: the
        // balance is then near a straight line, and few rounds are wanted.
        let balance = "draught against the losses of bed and tubes";
        let bracket = (low.ln(), high.ln());
        let solved = seek(balance, bracket, FUEL_ACCURACY, |ln_fuel| {
            let pass = self.pass(ln_fuel.exp())?;
            let drawn = pass.left_pa + pass.loss_pa;
            Ok(pass.left_pa / (drawn.abs() + pass.loss_pa))
        })?;
        let pass = self.pass(solved.x.exp())?;
        let balance = Solved {
            x: pass.fuel_kg_s,
            residual: pass.left_pa,
            bracket: (low, high),
            rounds: solved.rounds,
        };
        Ok((pass, balance))
    }

    fn pass(&self, fuel_kg_s: f64) -> Result<PassState, NotSettled> {
        let (inputs, burning) = (self.round.inputs, self.round.burning);
        let (fire, site) = (&inputs.fire, &inputs.site);
        let air_kg_s = flow_for_fuel(burning.air_kg_kg, fuel_kg_s);
        let gas_kg_s = flow_for_fuel(burning.flue_kg_kg, fuel_kg_s);
        let value = fire.heating_value_j_kg;
        let heat_w = heat_set_free(fire.burnt_share, fuel_kg_s, value, air_kg_s, site.air_j_kg);
        let (firebox, tubes) = self.hot_side(&firebox::Fire { heat_w, gas_kg_s })?;
        let bed = self.bed(fuel_kg_s, air_kg_s);
        let loss_pa = draught_lost(bed.loss_pa, tubes.loss_pa(), inputs.extra_loss_pa);
        let dryer = self.dryer(gas_kg_s, tubes.outlet.gas_k)?;
        let behind_k = dryer.map_or(tubes.outlet.gas_k, |d| d.gas_k);
        let chimney = self.chimney_gas(gas_kg_s, behind_k, loss_pa)?;
        let jets = self.jets.draw(&chimney)?;
        let outside_kg_m3 = self.round.air.density(site.air_k, site.atmosphere_pa);
        let height_m = inputs.chimney.height_m;
        let lift_pa = buoyancy(height_m, outside_kg_m3, chimney.density_kg_m3);
        Ok(PassState {
            fuel_kg_s,
            air_kg_s,
            gas_kg_s,
            heat_w,
            bed,
            firebox,
            tubes,
            dryer,
            loss_pa,
            chimney,
            jets,
            outside_kg_m3,
            lift_pa,
            left_pa: jets.net_pa + lift_pa - loss_pa,
        })
    }

    /// Firebox and tubes.
    fn hot_side(&self, fire: &firebox::Fire) -> Result<(Settled, March), NotSettled> {
        let (inputs, gas) = (self.round.inputs, &self.round.burning.gas);
        let wall_k = self.round.water.wall_k;
        let walls = Walls {
            area_m2: inputs.firebox.area_m2,
            emissivity: inputs.firebox.emissivity,
            wall_k,
        };
        let stirred = firebox::settle(fire, &walls, gas)
            .map_err(NotSettled::of("heat of the stirred firebox"))?;
        let stream = Stream {
            gas_kg_s: fire.gas_kg_s,
            inlet_k: stirred.gas_k,
            wall_k,
            pressure_pa: inputs.site.atmosphere_pa,
        };
        Ok((stirred, tubes::march(&inputs.tubes, &stream, gas)?))
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
