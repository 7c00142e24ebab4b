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
    /// Enthalpy that a coil adds on the way, J/kg.
    pub gain_j_kg: f64,
}

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
    let air = Saturated::at_pressure(supply.atmosphere_pa)?;
    let wet = air.mixed(engine.exhaust_dryness)?;
    let exhaust_j_kg = enthalpy_with_gain(wet.h, supply.gain_j_kg);
    let nozzle = Nozzle {
        blast: supply.blast,
        exhaust_kg_m3: at_ph(supply.atmosphere_pa, exhaust_j_kg)?.rho,
    };
    let (state, balance) = against(engine, supply, &nozzle)?;
    if state.steam_kg_s.is_nan() || state.steam_kg_s <= 0.0 {
        return Err(NotSettled::Plant {
            what: "steam taken by the engine in kg/s",
            value: state.steam_kg_s,
            why: "compression gives back more than the cylinder takes in",
        });
    }
    let supplied_j_kg = enthalpy_with_gain(supply.steam_j_kg, supply.gain_j_kg);
    let (steam, power) = (state.steam_kg_s, state.indicated_w);
    Ok(ExhaustState {
        engine: state,
        supplied_j_kg,
        exhaust_j_kg,
        lacks_j_kg: enthalpy_lacking(air.h_g, exhaust_j_kg),
        exhaust_kg_m3: nozzle.exhaust_kg_m3,
        heat_lost_w: heat_lost(steam, supplied_j_kg, exhaust_j_kg, power),
        jet_m_s: nozzle.jet(steam),
        nozzle_pa: nozzle.drop(steam),
        balance,
    })
}

/// The nozzle with the exhaust that comes to it.
struct Nozzle<'a> {
    blast: Option<&'a Blast>,
    exhaust_kg_m3: f64,
}

impl Nozzle<'_> {
    fn jet(&self, steam_kg_s: f64) -> Option<f64> {
        let blast = self.blast?;
        let area = blast.area_m2();
        Some(blast_speed(
            steam_kg_s,
            blast.coefficient,
            area,
            self.exhaust_kg_m3,
        ))
    }

    fn drop(&self, steam_kg_s: f64) -> f64 {
        match (self.blast, self.jet(steam_kg_s)) {
            (Some(b), Some(u)) => blast_back_pressure(self.exhaust_kg_m3, u, b.coefficient),
            _ => 0.0,
        }
    }
}

/// The engine against the back pressure that its own exhaust makes.
fn against(
    engine: &Engine,
    supply: &Supply<'_>,
    nozzle: &Nozzle<'_>,
) -> Result<(EngineState, Option<Solved>), NotSettled> {
    let (boiler, air) = (supply.boiler_pa, supply.atmosphere_pa);
    if nozzle.blast.is_none() || engine.closing_pa.is_some() {
        // The steam does not depend on the back pressure, so that any will do to find it.
        let steam = run(engine, boiler, air)?.steam_kg_s;
        let back = back_pressure(air, nozzle.drop(steam));
        return Ok((run(engine, boiler, back)?, None));
    }
    let bracket = (air, engine.chest_share * boiler);
    let solved = seek("back pressure of the blast nozzle", bracket, 1e-6, |back| {
        let state = run(engine, boiler, back)?;
        Ok(back - air - nozzle.drop(state.steam_kg_s))
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
