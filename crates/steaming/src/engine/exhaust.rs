//! The exhaust with its nozzle: the back pressure at which what the nozzle makes of the exhaust
//! is what the engine runs against.

use formulas::balance::{back_pressure, enthalpy_lacking, enthalpy_with_gain, total_flow};
use formulas::draught::{blast_back_pressure, blast_speed};
use formulas::engine::{
    cylinder_surface, enthalpy_after_loss, exhaust_enthalpy, heat_lost, puff_share,
    puffed_back_pressure, surface_heat,
};
use formulas::steam::{Saturated, at_ph, dryness, wet_density};
use reckoning::solve::Solved;

use super::given::{Engine, Exhausts, Plain};
use super::pipe::PipeState;
use super::ready::Ready;
use super::{EngineState, Supply, Taker};
use crate::fault::NotSettled;
use crate::seek::seek;

/// Accuracy of the back pressure, Pa.
const BACK_ACCURACY: f64 = 1e-4;
/// Accuracy of the logarithm of the steam, where coil and engine must agree on it.
const STEAM_ACCURACY: f64 = 1e-8;
/// How far the root may lie above the steam that the engine takes straight from the boiler, in the
/// logarithm: a lighter exhaust raises the back pressure, and a throttled engine then takes more.
const SLACK: f64 = 0.01;
/// Share of the upper end where the bracket begins: a coil that hardly superheats spares little.
const NARROW: f64 = 0.95;

/// Enthalpy that a coil adds to the steam on its way, J/kg, by the flow of steam in kg/s.
pub(crate) trait Gain: Fn(f64) -> Result<f64, NotSettled> {}

impl<F: Fn(f64) -> Result<f64, NotSettled>> Gain for F {}

/// The engine with its exhaust, or the exhaust alone where no engine is described.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ExhaustState {
    /// The engine.
    pub engine: Option<EngineState>,
    /// Steam that leaves the boiler on this way, with what the pipe condenses, kg/s.
    pub steam_kg_s: f64,
    /// Enthalpy that a coil adds, J/kg.
    pub gain_j_kg: f64,
    /// The steam pipe.
    pub pipe: Option<PipeState>,
    /// Steam that the pipe condenses, kg/s.
    pub condensed_kg_s: f64,
    /// Superheat of the steam at the engine, K; 0 where it is not superheated.
    pub superheat_k: f64,
    /// Enthalpy of the steam supplied, J/kg.
    pub supplied_j_kg: f64,
    /// Enthalpy of the exhaust, J/kg.
    pub exhaust_j_kg: f64,
    /// Enthalpy that the exhaust lacks of dry steam, J/kg; less than nought when superheated.
    pub lacks_j_kg: f64,
    /// Density of the exhaust at the pressure of the air, kg/m³.
    pub exhaust_kg_m3: f64,
    /// Heat lost by the engine, W; 0 where none is described.
    pub heat_lost_w: f64,
    /// Share of the time in which the exhaust flows.
    pub puff_share: f64,
    /// Speed of the exhaust jet at the mean flow, m/s; `None` without a nozzle.
    pub jet_m_s: Option<f64>,
    /// Back pressure of the nozzle at the mean flow, Pa; 0 without one.
    pub nozzle_pa: f64,
    /// Mean back pressure of the nozzle above the air, Pa.
    pub puffed_pa: f64,
    /// Back pressure, Pa absolute.
    pub back_pa: f64,
    /// The root of the balance of back pressure, Pa; `None` where it follows without one.
    pub balance: Option<Solved>,
    /// The root of the steam through a coil, kg/s: the flow at which engine and coil agree.
    pub flow: Option<Solved>,
}

/// Finds the state in which the nozzle makes the back pressure that the engine runs against.
///
/// # Errors
/// [`NotSettled`] where no back pressure below that of the chest balances, the engine takes no
/// steam, or a state lies outside the steam equations.
pub fn exhaust(taker: Taker<'_>, supply: &Supply<'_>) -> Result<ExhaustState, NotSettled> {
    match taker {
        Taker::Engine(engine) => Led::new(engine, supply)?.settled(&Fed::Straight),
        Taker::Plain(plain) => Stream::of(plain, supply, 0.0),
    }
}

/// As [`exhaust`], with steam that takes up heat on its way to the engine.
///
/// # Errors
/// As [`exhaust`], and those of the gain.
pub(crate) fn exhaust_dried(
    taker: Taker<'_>,
    supply: &Supply<'_>,
    gain: impl Gain,
) -> Result<ExhaustState, NotSettled> {
    match taker {
        Taker::Engine(engine) => Led::new(engine, supply)?.dried(gain),
        Taker::Plain(plain) => Stream::of(plain, supply, gain(plain.steam_kg_s)?),
    }
}

/// What flows to the nozzle.
#[derive(Clone, Copy)]
struct Stream {
    steam_kg_s: f64,
    gain_j_kg: f64,
    condensed_kg_s: f64,
    superheat_k: f64,
    supplied_j_kg: f64,
    exhaust_j_kg: f64,
    puff_share: f64,
}

impl Stream {
    const NONE: Self = Self {
        steam_kg_s: 0.0,
        gain_j_kg: 0.0,
        condensed_kg_s: 0.0,
        superheat_k: 0.0,
        supplied_j_kg: 0.0,
        exhaust_j_kg: 0.0,
        puff_share: 1.0,
    };

    /// Steam of which no engine is known, with what a coil adds, J/kg.
    fn of(plain: &Plain, supply: &Supply<'_>, gain: f64) -> Result<ExhaustState, NotSettled> {
        let air = Saturated::at_pressure(supply.atmosphere_pa)?;
        let wet_j_kg = air.mixed(plain.exhaust_dryness)?.h;
        let stream = Self {
            steam_kg_s: plain.steam_kg_s,
            gain_j_kg: gain,
            supplied_j_kg: enthalpy_with_gain(supply.steam_j_kg, gain),
            exhaust_j_kg: enthalpy_with_gain(wet_j_kg, gain),
            ..Self::NONE
        };
        stream.through(supply, &air)
    }

    /// The stream through the nozzle, or past where it would be.
    fn through(&self, supply: &Supply<'_>, air: &Saturated) -> Result<ExhaustState, NotSettled> {
        let exhaust_kg_m3 = density(air, self.exhaust_j_kg)?;
        let jet = supply.blast.map(|b| {
            let speed = blast_speed(self.steam_kg_s, b.coefficient, b.area_m2(), exhaust_kg_m3);
            let drop = blast_back_pressure(exhaust_kg_m3, speed, b.coefficient);
            (speed, drop)
        });
        let nozzle_pa = jet.map_or(0.0, |j| j.1);
        let puffed_pa = puffed_back_pressure(nozzle_pa, self.puff_share);
        Ok(ExhaustState {
            engine: None,
            steam_kg_s: self.steam_kg_s,
            gain_j_kg: self.gain_j_kg,
            pipe: None,
            condensed_kg_s: self.condensed_kg_s,
            superheat_k: self.superheat_k,
            supplied_j_kg: self.supplied_j_kg,
            exhaust_j_kg: self.exhaust_j_kg,
            lacks_j_kg: enthalpy_lacking(air.h_g, self.exhaust_j_kg),
            exhaust_kg_m3,
            heat_lost_w: 0.0,
            puff_share: self.puff_share,
            jet_m_s: jet.map(|j| j.0),
            nozzle_pa,
            puffed_pa,
            back_pa: back_pressure(supply.atmosphere_pa, puffed_pa),
            balance: None,
            flow: None,
        })
    }
}

/// Density of the exhaust at the pressure of the air, kg/m³.
fn density(air: &Saturated, exhaust_j_kg: f64) -> Result<f64, NotSettled> {
    if exhaust_j_kg <= air.h_g {
        let x = dryness(exhaust_j_kg, air.h_l, air.h_g);
        return Ok(wet_density(air.rho_l, air.rho_g, x));
    }
    Ok(at_ph(air.p_pa, exhaust_j_kg)?.rho)
}

/// What coil and pipe make of the steam on its way.
#[derive(Clone, Copy)]
enum Fed {
    /// Straight from the boiler, or through a pipe.
    Straight,
    /// Through a coil at a flow that was thought of, kg/s.
    Dried {
        gain_j_kg: f64,
        supplied_j_kg: f64,
        superheat_k: f64,
        condensed_kg_s: f64,
    },
}

/// An engine whose exhaust is led to the nozzle.
struct Led<'a> {
    engine: &'a Engine,
    supply: &'a Supply<'a>,
    air: Saturated,
    ready: Ready<'a>,
}

impl<'a> Led<'a> {
    fn new(engine: &'a Engine, supply: &'a Supply<'a>) -> Result<Self, NotSettled> {
        Ok(Self {
            engine,
            supply,
            air: Saturated::at_pressure(supply.atmosphere_pa)?,
            ready: Ready::new(engine, supply)?,
        })
    }

    /// The state with steam that comes through a coil. The coil is worked at a flow that is
    /// thought of, the engine with what it then gives; the flow at which both agree is sought.
    fn dried(&self, gain: impl Gain) -> Result<ExhaustState, NotSettled> {
        let straight = self.settled(&Fed::Straight)?;
        let high = straight.steam_kg_s.ln() + SLACK;
        // The root is one of the flows that were worked, and mostly the last: its state is kept.
        let mut last = None;
        let mut within = |share: f64| {
            let what = "steam through the coil against that which the engine takes";
            seek(what, (high + share.ln(), high), STEAM_ACCURACY, |ln| {
                let state = self.settled(&self.fed(ln.exp(), &gain)?)?;
                last = Some((ln, state));
                Ok(ln - state.steam_kg_s.ln())
            })
        };
        let mut solved = within(NARROW);
        if let Err(NotSettled::Balance { .. }) = solved {
            solved = within(NARROW * self.dry_share(&straight));
        }
        let solved = solved?;
        let through_kg_s = solved.x.exp();
        let state = match last {
            Some((ln, state)) if ln.total_cmp(&solved.x).is_eq() => state,
            _ => self.settled(&self.fed(through_kg_s, &gain)?)?,
        };
        Ok(ExhaustState {
            flow: Some(Solved {
                x: through_kg_s,
                residual: through_kg_s - state.steam_kg_s,
                bracket: (solved.bracket.0.exp(), solved.bracket.1.exp()),
                ..solved
            }),
            ..state
        })
    }

    /// Steam that the engine would take if its walls condensed none, over what it takes straight
    /// from the boiler: no superheat spares more.
    fn dry_share(&self, straight: &ExhaustState) -> f64 {
        straight.engine.map_or(1.0, |engine| {
            let dry = self.ready.heated(&engine, f64::INFINITY);
            dry.steam_kg_s / straight.steam_kg_s
        })
    }

    /// What coil and pipe make of a flow, kg/s.
    fn fed(&self, through_kg_s: f64, gain: &impl Gain) -> Result<Fed, NotSettled> {
        let gain_j_kg = gain(through_kg_s)?;
        let dried = enthalpy_with_gain(self.supply.steam_j_kg, gain_j_kg);
        let supplied_j_kg = enthalpy_after_loss(dried, self.ready.pipe_w(), through_kg_s);
        let boiler = &self.ready.boiler;
        let superheat_k = if supplied_j_kg > boiler.h_g {
            at_ph(boiler.p_pa, supplied_j_kg)?.t_k - boiler.t_k
        } else {
            0.0
        };
        Ok(Fed::Dried {
            gain_j_kg,
            supplied_j_kg,
            superheat_k,
            condensed_kg_s: self.ready.condensed_kg_s(through_kg_s, dried - boiler.h_g),
        })
    }

    fn settled(&self, fed: &Fed) -> Result<ExhaustState, NotSettled> {
        let air_pa = self.supply.atmosphere_pa;
        if self.supply.blast.is_none() {
            return self.found(fed, air_pa, None);
        }
        if self.ready.is_deaf() {
            // The steam does not depend on the back pressure, so that any will do to find it.
            let back_pa = self.at(fed, air_pa)?.1.back_pa;
            return self.found(fed, back_pa, None);
        }
        let bracket = (air_pa, self.ready.chest_pa());
        let balance = "back pressure of the blast nozzle";
        let solved = seek(balance, bracket, BACK_ACCURACY, |back| {
            Ok(back - self.at(fed, back)?.1.back_pa)
        })?;
        self.found(fed, solved.x, Some(solved))
    }

    /// The state at the back pressure that was found.
    fn found(
        &self,
        fed: &Fed,
        back_pa: f64,
        balance: Option<Solved>,
    ) -> Result<ExhaustState, NotSettled> {
        let (engine, led) = self.at(fed, back_pa)?;
        if engine.steam_kg_s.is_nan() || engine.steam_kg_s <= 0.0 {
            return Err(NotSettled::Plant {
                what: "steam taken by the engine in kg/s",
                value: engine.steam_kg_s,
                why: "compression gives back more than the cylinder takes in",
            });
        }
        let (steam, power) = (led.steam_kg_s, engine.indicated_w);
        Ok(ExhaustState {
            engine: Some(engine),
            pipe: self.ready.pipe,
            heat_lost_w: heat_lost(steam, led.supplied_j_kg, led.exhaust_j_kg, power),
            back_pa,
            balance,
            ..led
        })
    }

    /// Engine and nozzle at a back pressure, Pa; the back pressure that is returned is the one
    /// that the nozzle makes.
    fn at(&self, fed: &Fed, back_pa: f64) -> Result<(EngineState, ExhaustState), NotSettled> {
        let (engine, stream) = self.steam(fed, back_pa)?;
        let stream = Stream {
            exhaust_j_kg: self.left(&engine, &stream)?,
            puff_share: puff_share(self.engine.puff_share, engine.admitted.strokes_per_s),
            ..stream
        };
        Ok((engine, stream.through(self.supply, &self.air)?))
    }

    /// Steam at a back pressure, with what coil and pipe make of it.
    fn steam(&self, fed: &Fed, back_pa: f64) -> Result<(EngineState, Stream), NotSettled> {
        let cold = self.ready.against(back_pa)?;
        Ok(match *fed {
            Fed::Straight => {
                let condensed_kg_s = self.ready.condensed_kg_s(0.0, 0.0);
                let steam_kg_s = total_flow(cold.steam_kg_s, condensed_kg_s);
                let (h, lost_w) = (self.supply.steam_j_kg, self.ready.pipe_w());
                let stream = Stream {
                    steam_kg_s,
                    condensed_kg_s,
                    supplied_j_kg: enthalpy_after_loss(h, lost_w, steam_kg_s),
                    ..Stream::NONE
                };
                (cold, stream)
            }
            Fed::Dried {
                gain_j_kg,
                supplied_j_kg,
                superheat_k,
                condensed_kg_s,
            } => {
                let engine = self.ready.heated(&cold, superheat_k);
                let stream = Stream {
                    steam_kg_s: total_flow(engine.steam_kg_s, condensed_kg_s),
                    gain_j_kg,
                    condensed_kg_s,
                    superheat_k,
                    supplied_j_kg,
                    ..Stream::NONE
                };
                (engine, stream)
            }
        })
    }

    /// Enthalpy of the exhaust, J/kg.
    fn left(&self, engine: &EngineState, stream: &Stream) -> Result<f64, NotSettled> {
        match self.engine.exhausts {
            Exhausts::Dryness(x) => {
                let wet_j_kg = self.air.mixed(x)?.h;
                Ok(enthalpy_with_gain(wet_j_kg, stream.gain_j_kg))
            }
            Exhausts::ByLoss(w_m2_k) => {
                let e = self.engine;
                let surface = cylinder_surface(e.cylinders, e.bore_m, e.stroke_m);
                let lost_w = surface_heat(w_m2_k, surface, engine.chest.t_k, self.supply.room_k);
                let (supplied, steam) = (stream.supplied_j_kg, stream.steam_kg_s);
                Ok(exhaust_enthalpy(
                    supplied,
                    engine.indicated_w,
                    lost_w,
                    steam,
                ))
            }
        }
    }
}
