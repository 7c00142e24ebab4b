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
use reckoning::solve::{Solved, bracketed};

use crate::fault::NotSettled;
use crate::inputs::{Blast, Engine};

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
    let density = at_ph(supply.atmosphere_pa, exhaust_j_kg)?.rho;
    let jet = |m: f64| {
        supply
            .blast
            .map(|b| blast_speed(m, b.coefficient, b.area_m2(), density))
    };
    let drop = |m: f64| match (supply.blast, jet(m)) {
        (Some(b), Some(u)) => blast_back_pressure(density, u, b.coefficient),
        _ => 0.0,
    };
    let back = |back_pa: f64| -> Result<f64, OutOfRange> {
        let state = run(engine, supply.boiler_pa, back_pa)?;
        Ok(back_pa - supply.atmosphere_pa - drop(state.steam_kg_s))
    };
    let balance = if supply.blast.is_some() && engine.closing_pa.is_none() {
        let highest = engine.chest_share * supply.boiler_pa;
        let solved = bracketed(supply.atmosphere_pa, highest, 1e-6, |p| {
            back(p).unwrap_or(f64::NAN)
        });
        Some(solved.map_err(NotSettled::of("back pressure of the blast nozzle"))?)
    } else {
        None
    };
    let back_pa = match balance {
        Some(solved) => solved.x,
        // The steam does not depend on the back pressure, so that any will do to find it.
        None => {
            let state = run(engine, supply.boiler_pa, supply.atmosphere_pa)?;
            back_pressure(supply.atmosphere_pa, drop(state.steam_kg_s))
        }
    };
    let state = run(engine, supply.boiler_pa, back_pa)?;
    if state.steam_kg_s.is_nan() || state.steam_kg_s <= 0.0 {
        return Err(NotSettled::Plant {
            what: "steam taken by the engine in kg/s",
            value: state.steam_kg_s,
            why: "compression gives back more than the cylinder takes in",
        });
    }
    let supplied_j_kg = enthalpy_with_gain(supply.steam_j_kg, supply.gain_j_kg);
    Ok(ExhaustState {
        engine: state,
        supplied_j_kg,
        exhaust_j_kg,
        lacks_j_kg: enthalpy_lacking(air.h_g, exhaust_j_kg),
        exhaust_kg_m3: density,
        heat_lost_w: heat_lost(
            state.steam_kg_s,
            supplied_j_kg,
            exhaust_j_kg,
            state.indicated_w,
        ),
        jet_m_s: jet(state.steam_kg_s),
        nozzle_pa: drop(state.steam_kg_s),
        balance,
    })
}

impl Blast {
    /// Bore area, m².
    #[must_use]
    pub fn area_m2(&self) -> f64 {
        round_area(self.nozzle_m)
    }
}
