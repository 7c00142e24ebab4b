//! The engine at a given pressure, and its exhaust against the blast nozzle.
//!
//! The steam that the engine takes depends on its back pressure through what compression keeps
//! in the cylinder, and the back pressure depends on the steam: one bracketed root. Left out:
//! the pulsing of the exhaust, and thinner superheated steam.

use formulas::balance::{back_pressure, enthalpy_lacking, enthalpy_with_gain, round_area};
use formulas::draught::{blast_back_pressure, blast_speed};
use formulas::engine::{
    Charge, Diagram, compression_pressure, heat_lost, indicated_power, mean_effective_pressure,
    steam_flow, steam_per_stroke,
};
use formulas::steam::{OutOfRange, Saturated, at_ph};
use reckoning::solve::Solved;

use crate::fault::NotSettled;
use crate::inputs::{Blast, Engine};
use crate::seek::seek;

/// The engine at one boiler pressure and one back pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EngineState {
    /// Pressure in the boiler, Pa.
    pub boiler_pa: f64,
    /// Pressure at admission, Pa.
    pub admission_pa: f64,
    /// Back pressure, Pa.
    pub back_pa: f64,
    /// Pressure when the exhaust closes, Pa.
    pub closing_pa: f64,
    /// Pressure at the end of compression, Pa.
    pub compressed_pa: f64,
    /// Density of dry steam at admission, kg/m³.
    pub admission_kg_m3: f64,
    /// Density of dry steam when the exhaust closes, kg/m³.
    pub closing_kg_m3: f64,
    /// Steam that the diagram accounts for in a stroke, kg.
    pub steam_per_stroke_kg: f64,
    /// Steam supplied, kg/s.
    pub steam_kg_s: f64,
    /// Mean effective pressure of the drawn diagram, Pa.
    pub mean_pressure_pa: f64,
    /// Indicated power, W.
    pub indicated_w: f64,
}

/// Works the engine at an absolute boiler pressure and an absolute back pressure, Pa.
///
/// # Errors
/// [`OutOfRange`] where a pressure lies outside the steam equations.
pub fn run(engine: &Engine, boiler_pa: f64, back_pa: f64) -> Result<EngineState, OutOfRange> {
    let admission_pa = engine.chest_share * boiler_pa;
    let closing_pa = engine.closing_pa.unwrap_or(back_pa);
    let charge = Charge {
        rho_1: Saturated::at_pressure(admission_pa)?.rho_g,
        rho_x: Saturated::at_pressure(closing_pa)?.rho_g,
        r: engine.cut_off,
        c: engine.clearance,
        q: engine.compression,
    };
    let diagram = Diagram {
        p_1: admission_pa,
        p_b: back_pa,
        r: engine.cut_off,
        c: engine.clearance,
        q: engine.compression,
    };
    let per_stroke = steam_per_stroke(&charge, engine.stroke_volume_m3);
    let mean_pressure_pa = mean_effective_pressure(&diagram);
    Ok(EngineState {
        boiler_pa,
        admission_pa,
        back_pa,
        closing_pa,
        compressed_pa: compression_pressure(closing_pa, engine.compression, engine.clearance),
        admission_kg_m3: charge.rho_1,
        closing_kg_m3: charge.rho_x,
        steam_per_stroke_kg: per_stroke,
        steam_kg_s: steam_flow(per_stroke, engine.missing, engine.strokes_per_s),
        mean_pressure_pa,
        indicated_w: indicated_power(
            engine.diagram_factor,
            mean_pressure_pa,
            engine.stroke_volume_m3,
            engine.strokes_per_s,
        ),
    })
}

/// The steam that comes to the engine, and where its exhaust goes.
#[derive(Clone, Copy, Debug)]
pub struct Supply<'a> {
    /// The nozzle; `None` where the exhaust is led elsewhere.
    pub blast: Option<&'a Blast>,
    /// Pressure in the boiler, Pa.
    pub boiler_pa: f64,
    /// Pressure of the air, Pa.
    pub atmosphere_pa: f64,
    /// Enthalpy of the steam as it leaves the boiler, J/kg.
    pub steam_j_kg: f64,
}

/// Enthalpy that a coil adds to the steam on its way, J/kg, by the flow of steam in kg/s.
pub(crate) trait Gain: Fn(f64) -> Result<f64, NotSettled> {}

impl<F: Fn(f64) -> Result<f64, NotSettled>> Gain for F {}

/// The engine with its exhaust.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ExhaustState {
    /// The engine.
    pub engine: EngineState,
    /// Enthalpy of the steam supplied, J/kg.
    pub supplied_j_kg: f64,
    /// Enthalpy of the exhaust, J/kg: by its dryness, with what the coil added.
    pub exhaust_j_kg: f64,
    /// Enthalpy that the exhaust lacks of dry steam, J/kg; less than nought when superheated.
    pub lacks_j_kg: f64,
    /// Density of the exhaust at the pressure of the air, kg/m³.
    pub exhaust_kg_m3: f64,
    /// Heat lost by the engine, W.
    pub heat_lost_w: f64,
    /// Speed of the exhaust jet, m/s; `None` without a nozzle.
    pub jet_m_s: Option<f64>,
    /// Back pressure of the nozzle above the air, Pa; 0 without one.
    pub nozzle_pa: f64,
    /// The root of the balance of back pressure, Pa; `None` where it follows without one.
    pub balance: Option<Solved>,
}

/// Finds the state in which the nozzle makes the back pressure that the engine runs against.
///
/// # Errors
/// [`NotSettled`] where no back pressure below that of admission balances, the engine takes no
/// steam, or a state lies outside the steam equations.
pub fn exhaust(engine: &Engine, supply: &Supply<'_>) -> Result<ExhaustState, NotSettled> {
    exhaust_dried(engine, supply, |_| Ok(0.0))
}

/// As [`exhaust`], with steam that takes up heat on its way to the engine.
///
/// # Errors
/// As [`exhaust`], and those of the gain.
pub(crate) fn exhaust_dried(
    engine: &Engine,
    supply: &Supply<'_>,
    gain: impl Gain,
) -> Result<ExhaustState, NotSettled> {
    let air = Saturated::at_pressure(supply.atmosphere_pa)?;
    let wet_j_kg = air.mixed(engine.exhaust_dryness)?.h;
    let led = |steam_kg_s| {
        // Backward flow is met in the search only, and passes no coil.
        let gain_j_kg = if steam_kg_s > 0.0 {
            gain(steam_kg_s)?
        } else {
            0.0
        };
        Nozzle::behind(supply, wet_j_kg, steam_kg_s, gain_j_kg)
    };
    let (state, balance) = against(engine, supply, led)?;
    let nozzle = led(taken(state.steam_kg_s)?)?;
    let supplied_j_kg = enthalpy_with_gain(supply.steam_j_kg, nozzle.gain_j_kg);
    let (steam, power) = (state.steam_kg_s, state.indicated_w);
    let exhaust_j_kg = nozzle.exhaust_j_kg;
    Ok(ExhaustState {
        engine: state,
        supplied_j_kg,
        exhaust_j_kg,
        lacks_j_kg: enthalpy_lacking(air.h_g, exhaust_j_kg),
        exhaust_kg_m3: nozzle.exhaust_kg_m3,
        heat_lost_w: heat_lost(steam, supplied_j_kg, exhaust_j_kg, power),
        jet_m_s: nozzle.jet_m_s,
        nozzle_pa: nozzle.drop_pa,
        balance,
    })
}

/// Steam that an engine takes, kg/s; one that takes none is refused.
fn taken(steam_kg_s: f64) -> Result<f64, NotSettled> {
    if steam_kg_s.is_nan() || steam_kg_s <= 0.0 {
        return Err(NotSettled::Plant {
            what: "steam taken by the engine in kg/s",
            value: steam_kg_s,
            why: "compression gives back more than the cylinder takes in",
        });
    }
    Ok(steam_kg_s)
}

/// The nozzle with the exhaust that comes to it.
struct Nozzle {
    gain_j_kg: f64,
    exhaust_j_kg: f64,
    exhaust_kg_m3: f64,
    jet_m_s: Option<f64>,
    drop_pa: f64,
}

impl Nozzle {
    fn behind(
        supply: &Supply<'_>,
        wet_j_kg: f64,
        steam_kg_s: f64,
        gain_j_kg: f64,
    ) -> Result<Self, NotSettled> {
        let exhaust_j_kg = enthalpy_with_gain(wet_j_kg, gain_j_kg);
        let exhaust_kg_m3 = at_ph(supply.atmosphere_pa, exhaust_j_kg)?.rho;
        let jet = supply.blast.map(|b| {
            let speed = blast_speed(steam_kg_s, b.coefficient, b.area_m2(), exhaust_kg_m3);
            (
                speed,
                blast_back_pressure(exhaust_kg_m3, speed, b.coefficient),
            )
        });
        Ok(Self {
            gain_j_kg,
            exhaust_j_kg,
            exhaust_kg_m3,
            jet_m_s: jet.map(|j| j.0),
            drop_pa: jet.map_or(0.0, |j| j.1),
        })
    }
}

/// The engine against the back pressure that its own exhaust makes.
fn against(
    engine: &Engine,
    supply: &Supply<'_>,
    led: impl Fn(f64) -> Result<Nozzle, NotSettled>,
) -> Result<(EngineState, Option<Solved>), NotSettled> {
    let (boiler, air) = (supply.boiler_pa, supply.atmosphere_pa);
    if supply.blast.is_none() || engine.closing_pa.is_some() {
        // The steam does not depend on the back pressure, so that any will do to find it.
        let steam = run(engine, boiler, air)?.steam_kg_s;
        let back = back_pressure(air, led(steam)?.drop_pa);
        return Ok((run(engine, boiler, back)?, None));
    }
    let bracket = (air, engine.chest_share * boiler);
    let solved = seek("back pressure of the blast nozzle", bracket, 1e-4, |back| {
        let state = run(engine, boiler, back)?;
        Ok(back - air - led(state.steam_kg_s)?.drop_pa)
    })?;
    Ok((run(engine, boiler, solved.x)?, Some(solved)))
}

impl Blast {
    /// Bore area, m².
    #[must_use]
    pub fn area_m2(&self) -> f64 {
        round_area(self.nozzle_m)
    }
}
