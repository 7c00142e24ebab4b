//! The gas side at one value of the firing's unknown: fire, coil, leak and chimney; and the value
//! at which draught and losses balance.

use formulas::draught::{buoyancy, orifice_flow};
use formulas::gas::FlueGas;
use reckoning::solve::{Solved, bracketed};

use crate::dryer::{Coil, DryerState, Film, Meeting};
use crate::engine::{ExhaustState, exhaust, exhaust_dried};
use crate::fault::NotSettled;
use crate::fire::Round;
use crate::firebox::Taker;
use crate::firing::{BedFire, Burning, HotGas};
use crate::jets::{ChimneyGas, Jet, Jets, exhaust_jet};
use crate::seek::seek;
use crate::state::PassState;

/// Accuracy asked of the unknown, as a share of it.
const ACCURACY: f64 = 1e-8;

/// By how much the upper end of the bracket is brought down at a time.
const STEP_DOWN: f64 = 1.3;

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
        let plain = match round.inputs.taker().filter(|_| round.line.is_none()) {
            Some(taker) => Some(exhaust(taker, &round.supply())?),
            None => None,
        };
        Ok(Self { round, plain })
    }

    pub(crate) fn balanced(&self) -> Result<(Drawn, Solved), NotSettled> {
        let (low, high) = self.round.side.bracket()?;
        let high = self.workable(low, high)?;
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

    /// The upper end of the bracket, brought down to where the steam of a coil over the fire is
    /// still within its equations, and the fire gets air enough through the holes over it: the
    /// fiercest fire of the bracket is hotter, and wants more air, than any that burns.
    fn workable(&self, low: f64, high: f64) -> Result<f64, NotSettled> {
        let holes = self
            .round
            .inputs
            .firing
            .bed()
            .is_some_and(BedFire::has_holes);
        if self.over_fire().is_none() && !holes {
            return Ok(high);
        }
        let mut high = high;
        loop {
            match self.pass(high) {
                Err(NotSettled::Steam(_) | NotSettled::Smothered { .. })
                    if high > low * STEP_DOWN =>
                {
                    high /= STEP_DOWN;
                }
                Err(fault) => return Err(fault),
                Ok(_) => return Ok(high),
            }
        }
    }

    /// The coil over the fire, where there is one.
    fn over_fire(&self) -> Option<(f64, f64)> {
        self.round.inputs.dryer?.over_fire()
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
        let in_box = |gas: &FlueGas, gas_kg_s, gas_k| {
            let gas = (gas, gas_kg_s, gas_k);
            Ok(self
                .coil_over_fire(gas)?
                .map_or(0.0, |(_, coil)| coil.heat_w))
        };
        let taker: Option<Taker<'_>> = match self.over_fire() {
            Some(_) => Some(&in_box),
            None => None,
        };
        let hot = self.round.side.at(unknown, taker)?;
        let (exhaust, dryer, behind_k) = self.engine(&hot)?;
        let jet = exhaust.and_then(|e| exhaust_jet(inputs, &e));
        let steam = self.round.jets(jet, &hot.burning.gas);
        let chimney = self.chimney_gas(&steam, (hot.gas_kg_s, behind_k), hot.loss_pa)?;
        let jets = steam.draw(&chimney)?;
        let (outside_kg_m3, lift_pa) = self.column(&chimney);
        let pass = PassState {
            fuel_kg_s: hot.fuel_kg_s,
            air_kg_s: hot.air_kg_s,
            gas_kg_s: hot.gas_kg_s,
            heat_w: hot.heat_w,
            firing: hot.state,
            arriving_k: self.arriving(&hot),
            dryer,
            smoke_k: behind_k,
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

    /// Temperature of the gas that comes to the coil, else to the smokebox, K.
    fn arriving(&self, hot: &HotGas) -> f64 {
        match self.over_fire() {
            Some(_) => hot.state.hottest_k(),
            None => hot.behind_k,
        }
    }

    /// Density of the air outside, kg/m³, and lift of the hot column in it, Pa.
    fn column(&self, gas: &ChimneyGas) -> (f64, f64) {
        let (site, chimney) = (&self.round.inputs.site, &self.round.inputs.chimney);
        let outside_kg_m3 = self.round.air.density(site.air_k, site.atmosphere_pa);
        let lift_pa = buoyancy(chimney.height_m, outside_kg_m3, gas.density_kg_m3);
        (outside_kg_m3, lift_pa)
    }

    /// The engine and the coil that its steam passes, with the temperature of the gas behind both
    /// in K: the coil dries the exhaust, which moves the back pressure, which moves the steam.
    fn engine(
        &self,
        hot: &HotGas,
    ) -> Result<(Option<ExhaustState>, Option<DryerState>, f64), NotSettled> {
        let gas = (&hot.burning.gas, hot.gas_kg_s, hot.state.hottest_k());
        if let Some((exhaust, coil)) = self.coil_over_fire(gas)? {
            return Ok((Some(exhaust), Some(coil), hot.behind_k));
        }
        let gas = (&hot.burning.gas, hot.gas_kg_s, hot.behind_k);
        let drying = self.coil(gas, |coil| coil.gain(), |coil| coil.settled())?;
        Ok(match drying {
            Some((exhaust, coil)) => (Some(exhaust), Some(coil), coil.gas_k),
            None => (self.plain, None, hot.behind_k),
        })
    }

    /// The coil over the fire, in gas of a temperature that the firebox has; `None` where there is
    /// none there.
    fn coil_over_fire(
        &self,
        gas: (&FlueGas, f64, f64),
    ) -> Result<Option<(ExhaustState, DryerState)>, NotSettled> {
        if self
            .round
            .inputs
            .dryer
            .and_then(|d| d.over_fire())
            .is_none()
        {
            return Ok(None);
        }
        self.coil(gas, |coil| coil.gain_there(), |coil| coil.settled_there())
    }

    /// The coil in this gas (what it is, kg/s, K), with the engine that draws steam through it.
    fn coil(
        &self,
        (gas, gas_kg_s, gas_k): (&FlueGas, f64, f64),
        gain: impl Fn(&Coil<'_>) -> Result<f64, NotSettled>,
        settled: impl Fn(&Coil<'_>) -> Result<DryerState, NotSettled>,
    ) -> Result<Option<(ExhaustState, DryerState)>, NotSettled> {
        let inputs = self.round.inputs;
        let (Some(line), Some(dryer), Some(taker)) =
            (&self.round.line, &inputs.dryer, inputs.taker())
        else {
            return Ok(None);
        };
        let meeting = |steam_kg_s| Meeting {
            steam_kg_s,
            steam_pa: self.round.water.boiler_pa,
            inlet_j_kg: self.round.water.steam_j_kg,
            gas_kg_s,
            gas_k,
            gas,
        };
        // The film outside does not depend on the steam.
        let film = Film::new(dryer, &meeting(0.0), line);
        let exhaust = exhaust_dried(taker, &self.round.supply(), |steam_kg_s| {
            gain(&Coil::new(dryer, &meeting(steam_kg_s), (line, &film)))
        })?;
        let steam_kg_s = exhaust.steam_kg_s;
        let state = settled(&Coil::new(dryer, &meeting(steam_kg_s), (line, &film)))?;
        Ok(Some((exhaust, state)))
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
