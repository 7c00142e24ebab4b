//! The engine made ready at one pressure of the boiler, and worked at one back pressure.

use formulas::engine::{
    Charge, compression_pressure, condensed, feed_power, ideal_work, power_asked, steam_flow,
    steam_per_stroke,
};
use formulas::steam::Saturated;

use super::admit::{Admitted, Admitting, ChestState};
use super::given::{Engine, Missing};
use super::missing::{LostState, Met};
use super::pipe::{self, PipeState, Room};
use super::{EngineState, Supply};
use crate::fault::NotSettled;

/// An engine at one pressure of the boiler.
pub(super) struct Ready<'a> {
    engine: &'a Engine,
    admitting: Admitting<'a>,
    /// The admission, where it does not feel the back pressure.
    fixed: Option<(Admitted, Saturated)>,
    /// The exhaust closes at a pressure that was measured.
    closing: Option<Saturated>,
    pub(super) boiler: Saturated,
    pub(super) pipe: Option<PipeState>,
    pump_w: f64,
    ideal_j_kg: f64,
}

impl<'a> Ready<'a> {
    pub(super) fn new(engine: &'a Engine, supply: &Supply<'_>) -> Result<Self, NotSettled> {
        let boiler = Saturated::at_pressure(supply.boiler_pa)?;
        let room = Room {
            air_k: supply.room_k,
            air_pa: supply.atmosphere_pa,
        };
        let pressure_pa = supply.boiler_pa - supply.atmosphere_pa;
        let pump_w = engine.pump.map_or(0.0, |pump| {
            feed_power(pump.water_m3_s, pressure_pa, pump.efficiency)
        });
        let admitting = Admitting {
            engine,
            chest: ChestState::of(engine, supply.boiler_pa)?,
            wanted_w: engine
                .load
                .asked_w()
                .map(|asked| power_asked(asked, pump_w)),
        };
        let fixed = if admitting.is_fixed() {
            let admitted = admitting.against(supply.atmosphere_pa)?;
            Some((admitted, Saturated::at_pressure(admitted.pa)?))
        } else {
            None
        };
        let pipe = engine.pipe.as_ref();
        Ok(Self {
            engine,
            admitting,
            fixed,
            closing: engine.closing_pa.map(Saturated::at_pressure).transpose()?,
            pipe: pipe
                .map(|p| pipe::settle(p, boiler.t_k, &room))
                .transpose()?,
            boiler,
            pump_w,
            ideal_j_kg: ideal_work(supply.boiler_pa, supply.atmosphere_pa)?,
        })
    }

    /// The greatest back pressure that is thought of: that in the chest, Pa.
    pub(super) fn chest_pa(&self) -> f64 {
        self.admitting.chest.pa
    }

    /// Whether neither steam nor exhaust feels the back pressure.
    pub(super) fn is_deaf(&self) -> bool {
        let dry = matches!(self.engine.exhausts, super::Exhausts::Dryness(_));
        let measured = matches!(self.engine.missing, Missing::Measured(_));
        dry && measured && self.fixed.is_some() && self.closing.is_some()
    }

    /// Heat that the pipe loses, W.
    pub(super) fn pipe_w(&self) -> f64 {
        self.pipe.map_or(0.0, |pipe| pipe.heat_w)
    }

    /// What is admitted against a back pressure, Pa, with the saturation line there.
    fn admitted(&self, back_pa: f64) -> Result<(Admitted, Saturated), NotSettled> {
        if let Some(fixed) = self.fixed {
            return Ok(fixed);
        }
        let admitted = self.admitting.against(back_pa)?;
        Ok((admitted, Saturated::at_pressure(admitted.pa)?))
    }

    /// Steam that the diagram shows for a stroke, kg.
    fn per_stroke(&self, (line, closing): (&Saturated, &Saturated), cut_off: f64) -> f64 {
        let charge = Charge {
            rho_1: line.rho_g,
            rho_x: closing.rho_g,
            r: cut_off,
            c: self.engine.clearance,
            q: self.engine.compression,
        };
        steam_per_stroke(&charge, self.engine.stroke_volume_m3)
    }

    /// The engine against a back pressure, Pa, with steam that is not superheated.
    pub(super) fn against(&self, back_pa: f64) -> Result<EngineState, NotSettled> {
        let e = self.engine;
        let (admitted, line) = self.admitted(back_pa)?;
        let back = Saturated::at_pressure(back_pa)?;
        let closing = self.closing.unwrap_or(back);
        let per_stroke = self.per_stroke((&line, &closing), admitted.cut_off);
        let met = Met {
            admission_k: line.t_k,
            exhaust_k: back.t_k,
            latent_j_kg: line.h_lg(),
        };
        let lost = match e.missing {
            Missing::Measured(_) => None,
            Missing::Reckoned(_) => Some(LostState::of(e, &admitted, &met)),
        };
        let [mean_pressure_pa, indicated_w, shaft_w] = self.admitting.power(&admitted, back_pa);
        let state = EngineState {
            boiler_pa: self.boiler.p_pa,
            chest: self.admitting.chest,
            admitted,
            admission_kg_m3: line.rho_g,
            admission_k: line.t_k,
            admission_latent_j_kg: met.latent_j_kg,
            back_pa,
            back_k: back.t_k,
            closing_pa: closing.p_pa,
            compressed_pa: compression_pressure(closing.p_pa, e.compression, e.clearance),
            closing_kg_m3: closing.rho_g,
            steam_per_stroke_kg: per_stroke,
            lost: None,
            missing: 0.0,
            steam_kg_s: 0.0,
            mean_pressure_pa,
            indicated_w,
            shaft_w,
            pump_w: self.pump_w,
            most_w: self.admitting.most_w(&admitted, back_pa),
            ideal_j_kg: self.ideal_j_kg,
        };
        Ok(self.supplied(&state, lost))
    }

    /// The state with what walls and leaks take.
    fn supplied(&self, state: &EngineState, lost: Option<LostState>) -> EngineState {
        let (strokes, per_stroke) = (state.admitted.strokes_per_s, state.steam_per_stroke_kg);
        let missing = match (self.engine.missing, &lost) {
            (Missing::Reckoned(factor), Some(lost)) => lost.missing(factor, strokes, per_stroke),
            (Missing::Measured(share) | Missing::Reckoned(share), _) => share,
        };
        EngineState {
            lost,
            missing,
            steam_kg_s: steam_flow(per_stroke, missing, strokes),
            ..*state
        }
    }

    /// The engine with steam of this superheat, K.
    pub(super) fn heated(&self, cold: &EngineState, superheat_k: f64) -> EngineState {
        let latent_j_kg = cold.admission_latent_j_kg;
        let lost = cold.lost.map(|l| l.superheated(superheat_k, latent_j_kg));
        self.supplied(cold, lost)
    }

    /// Steam that the pipe condenses when a flow leaves the coil with an enthalpy above that of
    /// dry steam, or with none, kg/s: superheat is used up first.
    pub(super) fn condensed_kg_s(&self, steam_kg_s: f64, above_dry_j_kg: f64) -> f64 {
        let spare_w = if above_dry_j_kg > 0.0 {
            steam_kg_s * above_dry_j_kg
        } else {
            0.0
        };
        let left_w = self.pipe_w() - spare_w;
        if left_w > 0.0 {
            condensed(left_w, self.boiler.h_lg())
        } else {
            0.0
        }
    }
}
