//! The gas side at one rate of burning: bed, firebox, tubes, coil, leak and chimney; and the rate
//! at which draught and losses balance.

use formulas::balance::{
    bed_and_grate_loss, draught_lost, flow_for_fuel, flux_on_area, heat_set_free, lift_share,
};
use formulas::bed::loss;
use formulas::draught::{buoyancy, orifice_flow};
use reckoning::quantity::KG_PER_M2_H;
use reckoning::solve::{Solved, bracketed};

use crate::dryer::{Coil, DryerState, Film, Meeting};
use crate::engine::{ExhaustState, exhaust, exhaust_dried};
use crate::fault::NotSettled;
use crate::fire::{RATES_KG_M2_H, Round};
use crate::firebox::{self, Settled, Walls};
use crate::jets::{ChimneyGas, Jet, Jets, exhaust_jet};
use crate::seek::seek;
use crate::state::{BedState, PassState};
use crate::tubes::{self, March, Stream};

/// Accuracy of the fuel asked, as a share of it.
const FUEL_ACCURACY: f64 = 1e-8;

/// The gas side with the exhaust that a coil does not change.
pub(crate) struct Draw<'a> {
    round: &'a Round<'a>,
    plain: Option<ExhaustState>,
}

/// The gas side at one rate of burning, with the exhaust that goes with it.
pub(crate) struct Drawn {
    pub(crate) pass: PassState,
    pub(crate) exhaust: Option<ExhaustState>,
    pub(crate) jet: Option<Jet>,
}

impl<'a> Draw<'a> {
    pub(crate) fn new(round: &'a Round<'a>) -> Result<Self, NotSettled> {
        let plain = match round.inputs.engine.filter(|_| round.line.is_none()) {
            Some(engine) => Some(exhaust(&engine, &round.supply())?),
            None => None,
        };
        Ok(Self { round, plain })
    }

    pub(crate) fn balanced(&self) -> Result<(Drawn, Solved), NotSettled> {
        let grate = self.round.inputs.bed.grate_m2;
        let low = grate * KG_PER_M2_H.to_si(RATES_KG_M2_H.0);
        let high = grate * KG_PER_M2_H.to_si(RATES_KG_M2_H.1);
        // Sought in the logarithm of the fuel, and as a share of draught and loss together: the
        // balance is then near a straight line, and few rounds are wanted.
        let balance = "draught against the losses of bed and tubes";
        let bracket = (low.ln(), high.ln());
        let solved = seek(balance, bracket, FUEL_ACCURACY, |ln_fuel| {
            let pass = self.pass(ln_fuel.exp())?.pass;
            let drawn = pass.left_pa + pass.loss_pa;
            Ok(pass.left_pa / (drawn.abs() + pass.loss_pa))
        })?;
        let drawn = self.pass(solved.x.exp())?;
        let balance = Solved {
            x: drawn.pass.fuel_kg_s,
            residual: drawn.pass.left_pa,
            bracket: (low, high),
            rounds: solved.rounds,
        };
        Ok((drawn, balance))
    }

    fn pass(&self, fuel_kg_s: f64) -> Result<Drawn, NotSettled> {
        let (inputs, burning) = (self.round.inputs, self.round.burning);
        let (fire, site) = (&inputs.fire, &inputs.site);
        let air_kg_s = flow_for_fuel(burning.air_kg_kg, fuel_kg_s);
        let gas_kg_s = flow_for_fuel(burning.flue_kg_kg, fuel_kg_s);
        let value = fire.heating_value_j_kg;
        let heat_w = heat_set_free(fire.burnt_share, fuel_kg_s, value, air_kg_s, site.air_j_kg);
        let (firebox, tubes) = self.hot_side(&firebox::Fire { heat_w, gas_kg_s })?;
        let bed = self.bed(fuel_kg_s, air_kg_s);
        let loss_pa = draught_lost(bed.loss_pa, tubes.loss_pa(), inputs.extra_loss_pa);
        let (exhaust, dryer) = self.engine(gas_kg_s, tubes.outlet.gas_k)?;
        let behind_k = dryer.map_or(tubes.outlet.gas_k, |d| d.gas_k);
        let jet = exhaust.and_then(|e| exhaust_jet(inputs, &e));
        let steam = self.round.jets(jet);
        let chimney = self.chimney_gas(&steam, (gas_kg_s, behind_k), loss_pa)?;
        let jets = steam.draw(&chimney)?;
        let outside_kg_m3 = self.round.air.density(site.air_k, site.atmosphere_pa);
        let height_m = inputs.chimney.height_m;
        let lift_pa = buoyancy(height_m, outside_kg_m3, chimney.density_kg_m3);
        let pass = PassState {
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
        };
        Ok(Drawn { pass, exhaust, jet })
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

    /// The engine and the coil that its steam passes: the coil dries the exhaust, which moves the
    /// back pressure, which moves the steam.
    fn engine(
        &self,
        gas_kg_s: f64,
        gas_k: f64,
    ) -> Result<(Option<ExhaustState>, Option<DryerState>), NotSettled> {
        let inputs = self.round.inputs;
        let (Some(line), Some(dryer), Some(engine)) =
            (&self.round.line, &inputs.dryer, &inputs.engine)
        else {
            return Ok((self.plain, None));
        };
        let meeting = |steam_kg_s| Meeting {
            steam_kg_s,
            steam_pa: self.round.water.boiler_pa,
            inlet_j_kg: self.round.water.steam_j_kg,
            gas_kg_s,
            gas_k,
            gas: &self.round.burning.gas,
        };
        // The film outside does not depend on the steam.
        let film = Film::new(dryer, &meeting(0.0), line);
        let exhaust = exhaust_dried(engine, &self.round.supply(), |steam_kg_s| {
            Coil::new(dryer, &meeting(steam_kg_s), (line, &film)).gain()
        })?;
        let state =
            Coil::new(dryer, &meeting(exhaust.engine.steam_kg_s), (line, &film)).settled()?;
        Ok((Some(exhaust), Some(state)))
    }

    /// The gas once the leak has mixed with it.
    fn chimney_gas(
        &self,
        jets: &Jets<'_>,
        (gas_kg_s, gas_k): (f64, f64),
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
                brought - jets.enthalpy_w(&gas, t)
            })
            .map_err(NotSettled::of("heat of gas and leaked air"))?
            .x;
        }
        gas.density_kg_m3 = jets.density(&gas, gas.gas_k);
        Ok(gas)
    }
}
