//! The gas side at one value of the firing's unknown: fire, coil, leak and chimney; and the value
//! at which draught and losses balance.

use formulas::draught::{buoyancy, orifice_flow};
use reckoning::solve::{Solved, bracketed};

use crate::dryer::{Coil, DryerState, Film, Meeting};
use crate::engine::{ExhaustState, exhaust, exhaust_dried};
use crate::fault::NotSettled;
use crate::fire::Round;
use crate::firing::{Burning, HotGas};
use crate::jets::{ChimneyGas, Jet, Jets, exhaust_jet};
use crate::seek::seek;
use crate::state::PassState;

/// Accuracy asked of the unknown, as a share of it.
const ACCURACY: f64 = 1e-8;

/// The gas side with the exhaust that a coil does not change.
pub(crate) struct Draw<'a> {
    round: &'a Round<'a>,
    plain: Option<ExhaustState>,
}

/// The gas side at one value of the unknown, with the exhaust that goes with it.
pub(crate) struct Drawn {
    pub(crate) pass: PassState,
    pub(crate) burning: Burning,
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
        let (low, high) = self.round.side.bracket()?;
        // Sought in the logarithm of the unknown, and as a share of draught and loss together: the
        // balance is then near a straight line, and few rounds are wanted.
        let bracket = (low.ln(), high.ln());
        let solved = seek(self.round.side.balance(), bracket, ACCURACY, |ln_unknown| {
            let pass = self.pass(ln_unknown.exp())?.pass;
            let drawn = pass.left_pa + pass.loss_pa;
            Ok(pass.left_pa / (drawn.abs() + pass.loss_pa.abs()))
        })?;
        let (drawn, found) = self.at(solved.x.exp())?;
        let balance = Solved {
            bracket: (low, high),
            rounds: solved.rounds,
            ..found
        };
        Ok((drawn, balance))
    }

    /// The gas side at a stated value of the unknown, with what draught and losses leave.
    pub(crate) fn at(&self, unknown: f64) -> Result<(Drawn, Solved), NotSettled> {
        let drawn = self.pass(unknown)?;
        let found = Solved {
            x: unknown,
            residual: drawn.pass.left_pa,
            bracket: (unknown, unknown),
            rounds: 0,
        };
        Ok((drawn, found))
    }

    fn pass(&self, unknown: f64) -> Result<Drawn, NotSettled> {
        let inputs = self.round.inputs;
        let site = &inputs.site;
        let hot = self.round.side.at(unknown)?;
        let (exhaust, dryer) = self.engine(&hot)?;
        let behind_k = dryer.map_or(hot.behind_k, |d| d.gas_k);
        let jet = exhaust.and_then(|e| exhaust_jet(inputs, &e));
        let steam = self.round.jets(jet, &hot.burning.gas);
        let chimney = self.chimney_gas(&steam, (hot.gas_kg_s, behind_k), hot.loss_pa)?;
        let jets = steam.draw(&chimney)?;
        let outside_kg_m3 = self.round.air.density(site.air_k, site.atmosphere_pa);
        let height_m = inputs.chimney.height_m;
        let lift_pa = buoyancy(height_m, outside_kg_m3, chimney.density_kg_m3);
        let pass = PassState {
            fuel_kg_s: hot.fuel_kg_s,
            air_kg_s: hot.air_kg_s,
            gas_kg_s: hot.gas_kg_s,
            heat_w: hot.heat_w,
            firing: hot.state,
            arriving_k: hot.behind_k,
            dryer,
            loss_pa: hot.loss_pa,
            chimney,
            jets,
            outside_kg_m3,
            lift_pa,
            left_pa: jets.net_pa + lift_pa - hot.loss_pa,
        };
        Ok(Drawn {
            pass,
            burning: hot.burning,
            exhaust,
            jet,
        })
    }

    /// The engine and the coil that its steam passes: the coil dries the exhaust, which moves the
    /// back pressure, which moves the steam.
    fn engine(
        &self,
        hot: &HotGas,
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
            gas_kg_s: hot.gas_kg_s,
            gas_k: hot.behind_k,
            gas: &hot.burning.gas,
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
            let brought = gas_kg_s * jets.gas.enthalpy(gas_k)
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
