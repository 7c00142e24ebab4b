//! The steam jets under the chimney: exhaust and blower, and the jet pump they drive.

use formulas::balance::{
    enthalpy_lacking, flux_on_area, friction_heads, gas_over_steam, jet_momentum, jet_steam,
    jets_area, round_area, total_area, total_flow, total_momentum,
};
use formulas::draught::{
    Expansion, JetPump, Mixing, caught_share, drawn_share, entrainment_share, expansion,
    gas_inlet_speed, jet_pump, joint_mixing, mixed_density, mixed_speed, mixed_temperature,
    net_blast,
};
use formulas::gas::{FlueGas, MoleFractions};
use formulas::heat::{friction_factor, reynolds};
use formulas::steam::Saturated;
use reckoning::solve::bracketed;

use crate::engine::ExhaustState;
use crate::fault::NotSettled;
use crate::inputs::{Blower, Chimney, ExhaustWater, Inputs};

/// Specific heat of steam mixing with flue gas at one atmosphere, J/(kg K): it
/// lies between that of the ideal vapour and that of steam at one atmosphere.
pub const STEAM_J_KG_K: f64 = 1980.0;

/// One jet, or several equal ones.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Jet {
    /// Steam, kg/s.
    pub steam_kg_s: f64,
    /// Speed after expansion, m/s.
    pub speed_m_s: f64,
    /// Density after expansion, kg/m³.
    pub density_kg_m3: f64,
    /// Bore of each nozzle, m.
    pub bore_m: f64,
    /// Area of all nozzles, m².
    pub area_m2: f64,
    /// Distance from tip to the end of the parallel part, m.
    pub reach_m: f64,
    /// Distance from the tip up to the choke, m; `None` where the tip stands in the chimney.
    pub below_m: Option<f64>,
    /// Draught found over that of full mixing.
    pub mixing: f64,
    /// Enthalpy that the steam lacks of dry, J/kg.
    pub lacks_j_kg: f64,
}

impl Jet {
    /// Momentum, N.
    #[must_use]
    pub fn momentum_n(&self) -> f64 {
        jet_momentum(self.steam_kg_s, self.speed_m_s)
    }

    /// Share of it that a choke of this bore, m, catches: all of a jet that begins in the chimney.
    #[must_use]
    pub fn caught(&self, choke_m: f64) -> f64 {
        self.below_m
            .map_or(1.0, |below_m| caught_share(self.bore_m, below_m, choke_m))
    }
}

/// The blower's steam before it meets the gas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BlowerState {
    /// Its expansion.
    pub expansion: Expansion,
    /// The jets.
    pub jet: Jet,
}

/// Steam that the blower takes at an absolute boiler pressure (Pa) and steam enthalpy (J/kg).
///
/// # Errors
/// [`NotSettled::Steam`] outside the steam equations.
pub fn blower(
    blower: &Blower,
    inputs: &Inputs,
    boiler_pa: f64,
    steam_j_kg: f64,
) -> Result<BlowerState, NotSettled> {
    let atmosphere = inputs.site.atmosphere_pa;
    let expansion = expansion(boiler_pa, steam_j_kg, atmosphere)?;
    let area_m2 = jets_area(blower.jets, blower.bore_m);
    Ok(BlowerState {
        expansion,
        jet: Jet {
            steam_kg_s: jet_steam(blower.coefficient, area_m2, expansion.flux_kg_m2_s),
            speed_m_s: expansion.speed_m_s,
            density_kg_m3: expansion.density_kg_m3,
            bore_m: blower.bore_m,
            area_m2,
            reach_m: inputs.chimney.parallel_m,
            below_m: None,
            mixing: blower.mixing,
            // The jet comes to rest in the gas, so that its enthalpy is that of the boiler.
            lacks_j_kg: enthalpy_lacking(Saturated::at_pressure(atmosphere)?.h_g, steam_j_kg),
        },
    })
}

/// The jet of the exhaust, where it is led to a nozzle under the chimney. A tip that stands at the
/// end of the parallel part, or past it, draws nothing: the exhaust has left the chimney before
/// it meets the gas.
#[must_use]
pub fn exhaust_jet(inputs: &Inputs, exhaust: &ExhaustState) -> Option<Jet> {
    let blast = inputs.blast?;
    let reach_m = blast.below_choke_m + inputs.chimney.parallel_m;
    if reach_m <= 0.0 {
        return None;
    }
    Some(Jet {
        steam_kg_s: exhaust.steam_kg_s,
        speed_m_s: exhaust.jet_m_s?,
        density_kg_m3: exhaust.exhaust_kg_m3,
        bore_m: blast.nozzle_m,
        area_m2: blast.area_m2(),
        reach_m,
        below_m: (blast.below_choke_m >= 0.0).then_some(blast.below_choke_m),
        mixing: blast.mixing,
        lacks_j_kg: exhaust.lacks_j_kg,
    })
}

/// The gas that comes to the chimney.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChimneyGas {
    /// Flue gas, kg/s.
    pub gas_kg_s: f64,
    /// Air that leaked in, kg/s.
    pub leak_kg_s: f64,
    /// Temperature of both, K.
    pub gas_k: f64,
    /// Density of both together, kg/m³.
    pub density_kg_m3: f64,
}

/// What the jets make of the gas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct JetState {
    /// All steam, kg/s.
    pub steam_kg_s: f64,
    /// Momentum of the exhaust jet, N; 0 where there is none.
    pub exhaust_n: f64,
    /// Momentum of the blower's jets, N; 0 where there are none.
    pub blower_n: f64,
    /// How well the jets mix.
    pub mixing: MixingState,
    /// The mixture.
    pub mixed: MixedState,
    /// Speed of the gas as it enters the choke, m/s.
    pub inlet_m_s: f64,
    /// Speed of the mixture, m/s.
    pub mixed_m_s: f64,
    /// Friction of the wall, in velocity heads of the mixture.
    pub friction_heads: f64,
    /// Pressure raised before the mixing factor, Pa.
    pub raised_pa: f64,
    /// Draught of the jets, Pa.
    pub net_pa: f64,
}

/// How well the jets mix with the gas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MixingState {
    /// Gas and leak over steam by mass; `None` without steam.
    pub gas_over_steam: Option<f64>,
    /// Share of the exhaust's mixing that distance and choke allow; 1 where there is none.
    pub exhaust_share: f64,
    /// Share of the blower's mixing that distance and choke allow; 1 where there is none.
    pub blower_share: f64,
    /// Mixing factor of all jets; 1 without steam, where the sum is a plain loss.
    pub all: f64,
}

/// Steam and gas once mixed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MixedState {
    /// Mean enthalpy that the steam lacks of dry as it mixes, J/kg.
    pub lacks_j_kg: f64,
    /// Temperature of dry steam at the pressure of the air, K.
    pub steam_k: f64,
    /// Mean specific heat of the gas between mixture and smokebox, J/(kg K).
    pub gas_j_kg_k: f64,
    /// Temperature of the mixture, K.
    pub mixed_k: f64,
    /// Density of vapour at that temperature, kg/m³.
    pub vapour_kg_m3: f64,
    /// Density of the gas at that temperature, kg/m³.
    pub gas_kg_m3: f64,
    /// Density of the mixture, kg/m³.
    pub mixed_kg_m3: f64,
}

/// What the wall of the chimney takes of the mixture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum ChimneyWall {
    /// So many velocity heads of a mixing length.
    Heads(f64),
    /// The friction of a smooth bore of this length, m.
    Smooth(f64),
}

/// What the jets work on: prepared once for a pressure.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Jets<'a> {
    pub chimney: &'a Chimney,
    pub wall: ChimneyWall,
    pub water: ExhaustWater,
    pub exhaust: Option<Jet>,
    pub blower: Option<Jet>,
    pub gas: &'a FlueGas,
    pub air: &'a FlueGas,
    pub vapour: &'a FlueGas,
    pub atmosphere_pa: f64,
    pub steam_k: f64,
}

/// Water vapour alone, as an ideal gas.
pub(crate) fn vapour() -> FlueGas {
    FlueGas::new(&MoleFractions {
        co2: 0.0,
        h2o: 1.0,
        o2: 0.0,
        n2: 0.0,
    })
}

impl Jets<'_> {
    /// Draught of the jets with this gas.
    pub(crate) fn draw(&self, gas: &ChimneyGas) -> Result<JetState, NotSettled> {
        let steam_kg_s = self.sum(|j| j.steam_kg_s);
        let gas_kg_s = total_flow(gas.gas_kg_s, gas.leak_kg_s);
        let mixed = self.mixed(gas, steam_kg_s)?;
        let choke_m2 = round_area(self.chimney.choke_m);
        let flow_kg_s = total_flow(steam_kg_s, gas_kg_s);
        let mixed_m_s = mixed_speed(flow_kg_s, mixed.mixed_kg_m3, choke_m2);
        let area = |jet: Option<Jet>| jet.map_or(0.0, |j| j.area_m2);
        let nozzles_m2 = total_area(area(self.exhaust), area(self.blower));
        let inlet_m_s = gas_inlet_speed(gas_kg_s, gas.density_kg_m3, choke_m2, nozzles_m2);
        let friction_heads = self.friction_heads(flow_kg_s, mixed.mixed_k);
        let (exhaust_n, blower_n) = (momentum(self.exhaust), momentum(self.blower));
        let raised_pa = jet_pump(&JetPump {
            j: total_momentum(exhaust_n, blower_n),
            m_g: gas_kg_s,
            u_g: inlet_m_s,
            rho_g: gas.density_kg_m3,
            rho_m: mixed.mixed_kg_m3,
            u_m: mixed_m_s,
            a_m: choke_m2,
            a_e: round_area(self.chimney.top_m),
            k_in: self.chimney.inlet_heads,
            k_f: friction_heads,
            eta_d: self.chimney.diffuser_share,
            beta: self.chimney.momentum_factor,
        });
        let mixing = self.mixing(gas, steam_kg_s);
        Ok(JetState {
            steam_kg_s,
            exhaust_n,
            blower_n,
            mixing,
            mixed,
            inlet_m_s,
            mixed_m_s,
            friction_heads,
            raised_pa,
            net_pa: net_blast(mixing.all, raised_pa),
        })
    }

    /// Friction of the wall, in velocity heads; the viscosity is that of the flue gas.
    fn friction_heads(&self, flow_kg_s: f64, mixed_k: f64) -> f64 {
        match self.wall {
            ChimneyWall::Heads(heads) => heads,
            ChimneyWall::Smooth(length_m) => {
                let bore_m = self.chimney.choke_m;
                let flux = flux_on_area(1.0, flow_kg_s, round_area(bore_m));
                let viscosity = self.gas.transport(mixed_k).viscosity;
                let factor = friction_factor(reynolds(flux, bore_m, viscosity));
                friction_heads(factor, length_m, bore_m)
            }
        }
    }

    /// Adds what the jets bring.
    fn sum(&self, what: impl Fn(&Jet) -> f64) -> f64 {
        let jets = [self.exhaust, self.blower];
        jets.iter().flatten().map(what).sum()
    }

    /// Mixing factor of the jets that there are.
    fn mixing(&self, gas: &ChimneyGas, steam_kg_s: f64) -> MixingState {
        if steam_kg_s == 0.0 {
            return MixingState {
                gas_over_steam: None,
                exhaust_share: 1.0,
                blower_share: 1.0,
                all: 1.0,
            };
        }
        let over = gas_over_steam(total_flow(gas.gas_kg_s, gas.leak_kg_s), steam_kg_s);
        let share = |jet: Option<Jet>| {
            jet.map_or(1.0, |j| {
                let allowed = entrainment_share(
                    j.reach_m,
                    j.bore_m,
                    gas.density_kg_m3,
                    j.density_kg_m3,
                    over,
                );
                drawn_share(allowed, j.caught(self.chimney.choke_m))
            })
        };
        let (exhaust_share, blower_share) = (share(self.exhaust), share(self.blower));
        MixingState {
            gas_over_steam: Some(over),
            exhaust_share,
            blower_share,
            all: joint_mixing(
                [momentum(self.exhaust), factor(self.exhaust), exhaust_share],
                [momentum(self.blower), factor(self.blower), blower_share],
            ),
        }
    }

    /// Steam and gas at one temperature.
    fn mixed(&self, gas: &ChimneyGas, steam_kg_s: f64) -> Result<MixedState, NotSettled> {
        let lacks_j_kg = match self.water {
            ExhaustWater::DriesInGas if steam_kg_s > 0.0 => {
                self.sum(|j| j.steam_kg_s * j.lacks_j_kg) / steam_kg_s
            }
            _ => 0.0,
        };
        let (mixed_k, gas_j_kg_k) = self.temperature(gas, steam_kg_s, lacks_j_kg)?;
        let vapour_kg_m3 = self.vapour.density(mixed_k, self.atmosphere_pa);
        let gas_kg_m3 = self.density(gas, mixed_k);
        let gas_kg_s = total_flow(gas.gas_kg_s, gas.leak_kg_s);
        Ok(MixedState {
            lacks_j_kg,
            steam_k: self.steam_k,
            gas_j_kg_k,
            mixed_k,
            vapour_kg_m3,
            gas_kg_m3,
            mixed_kg_m3: mixed_density(steam_kg_s, vapour_kg_m3, gas_kg_s, gas_kg_m3),
        })
    }

    /// Density of gas and leaked air together at a temperature.
    pub(crate) fn density(&self, gas: &ChimneyGas, t_k: f64) -> f64 {
        let flue = self.gas.density(t_k, self.atmosphere_pa);
        if gas.leak_kg_s == 0.0 {
            return flue;
        }
        let air = self.air.density(t_k, self.atmosphere_pa);
        mixed_density(gas.gas_kg_s, flue, gas.leak_kg_s, air)
    }

    /// Enthalpy flow of gas and leaked air at a temperature, W.
    pub(crate) fn enthalpy_w(&self, gas: &ChimneyGas, t_k: f64) -> f64 {
        let leak = if gas.leak_kg_s == 0.0 {
            0.0
        } else {
            gas.leak_kg_s * self.air.enthalpy(t_k)
        };
        gas.gas_kg_s * self.gas.enthalpy(t_k) + leak
    }

    /// Temperature of the mixture, and the mean specific heat of the gas that goes with it.
    fn temperature(&self, gas: &ChimneyGas, m_s: f64, dh: f64) -> Result<(f64, f64), NotSettled> {
        let gas_kg_s = total_flow(gas.gas_kg_s, gas.leak_kg_s);
        let carried = self.enthalpy_w(gas, gas.gas_k);
        let mean = |t: f64| (carried - self.enthalpy_w(gas, t)) / (gas_kg_s * (gas.gas_k - t));
        if m_s == 0.0 {
            return Ok((gas.gas_k, mean(gas.gas_k - 1.0)));
        }
        let lacking = m_s * (STEAM_J_KG_K * self.steam_k - dh);
        // Steam warms and gas cools to one temperature: the balance falls as it rises.
        let balance = |t: f64| lacking - m_s * STEAM_J_KG_K * t + carried - self.enthalpy_w(gas, t);
        let hottest = if gas.gas_k > self.steam_k {
            gas.gas_k
        } else {
            self.steam_k
        };
        let solved = bracketed(COLDEST_K, hottest, 1e-7, balance)
            .map_err(NotSettled::of("heat of steam and gas once mixed"))?;
        let c_g = mean(solved.x);
        let mixed = mixed_temperature(&Mixing {
            m_s,
            c_s: STEAM_J_KG_K,
            t_s: self.steam_k,
            dh,
            m_g: gas_kg_s,
            c_g,
            t_g: gas.gas_k,
        });
        Ok((mixed, c_g))
    }
}

/// Lower end of the search for the mixed temperature: below it the water of the steam would not
/// stay vapour in any mixture.
const COLDEST_K: f64 = 280.0;

fn momentum(jet: Option<Jet>) -> f64 {
    jet.map_or(0.0, |j| j.momentum_n())
}

/// A jet that is not there has no momentum, so that its factor does not enter the mean.
fn factor(jet: Option<Jet>) -> f64 {
    jet.map_or(1.0, |j| j.mixing)
}
