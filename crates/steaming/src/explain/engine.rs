//! Lines of the engine and its exhaust.

use formulas::balance::{
    BACK_PRESSURE, DENSITY_FROM_VOLUME, ENTHALPY_LACKING, ENTHALPY_WITH_GAIN, JET_MOMENTUM,
    PRESSURE_SHARE, ROUND_AREA, WET_ENTHALPY,
};
use formulas::draught::{BLAST_BACK_PRESSURE, BLAST_SPEED};
use formulas::engine::{
    COMPRESSION_PRESSURE, HEAT_LOST, INDICATED_POWER, MEAN_EFFECTIVE_PRESSURE, STEAM_FLOW,
    STEAM_PER_STROKE,
};
use formulas::steam::cards::{DRYNESS, REGION1_V, REGION2_V, SATURATION_TEMPERATURE, WET_DENSITY};
use reckoning::quantity::{
    Absolute, J_PER_KG, KG_PER_M3, KPA_ABSOLUTE, LITRE, Length, M, ONE, PA_ABSOLUTE, PER_S, Ratio,
    Rotation, Volume,
};
use reckoning::{Ref, Refused};

use super::Filing;
use super::water::{JetLines, Water};
use crate::engine::{EngineState, ExhaustState};
use crate::inputs::Engine;

/// Lines of the engine that others need.
pub(super) struct EngineLines {
    pub steam: Ref,
    pub back: Ref,
    pub jet: Option<JetLines>,
}

/// The engine's own numbers.
struct Made {
    cut_off: Ref,
    clearance: Ref,
    compression: Ref,
    volume: Ref,
    strokes: Ref,
}

/// Exhaust at the pressure of the air.
struct Exhausted {
    h: Ref,
    supplied: Ref,
    density: Ref,
    lacks: Ref,
}

impl Filing<'_> {
    pub(super) fn engine(&mut self, water: &Water) -> Result<Option<EngineLines>, Refused> {
        let (Some(engine), Some(state)) = (self.state.inputs.engine, self.state.exhaust) else {
            return Ok(None);
        };
        let run = state.engine;
        let made = self.made(&engine);
        let (admission, rho_1) = self.admission(&engine, &run, water)?;
        let sought = state.balance.map(|solved| {
            let left = format!("{:.1e} Pa left", solved.residual);
            let balance = "back pressure that the engine meets against that of its nozzle";
            let names = ("p_b", "back pressure");
            self.root(names, &PA_ABSOLUTE, solved, (balance, &left))
        });
        let (closing, rho_x) = self.closing(&engine, &run, sought.unwrap_or(water.air.p))?;
        let from = [
            rho_1,
            rho_x,
            made.cut_off,
            made.clearance,
            made.compression,
            made.volume,
        ];
        let stroke = self.settle(&STEAM_PER_STROKE, &from, run.steam_per_stroke_kg)?;
        let names = ("mu", "missing quantity over the indicated steam");
        let missing = self.given::<Ratio>("engine.missing", names, &ONE, engine.missing);
        let from = [stroke, missing, made.strokes];
        let steam = self.settle(&STEAM_FLOW, &from, run.steam_kg_s)?;
        let exhausted = self.exhausted(&engine, &state, water)?;
        let (back, jet) = self.nozzle(&state, &exhausted, (steam, water.air.p))?;
        let back = sought.unwrap_or(back);
        let power = self.power(&engine, &state, &made, (admission, back, closing))?;
        let from = [steam, exhausted.supplied, exhausted.h, power];
        self.settle(&HEAT_LOST, &from, state.heat_lost_w)?;
        Ok(Some(EngineLines { steam, back, jet }))
    }

    /// Pressure at admission and the density of dry steam there.
    fn admission(
        &mut self,
        engine: &Engine,
        run: &EngineState,
        water: &Water,
    ) -> Result<(Ref, Ref), Refused> {
        let names = ("s", "pressure at admission over that in the boiler");
        let field = "engine.chest-pressure";
        let share = self.given::<Ratio>(field, names, &ONE, engine.chest_share);
        let from = [share, water.boiler_p];
        let p = self.settle(&PRESSURE_SHARE, &from, run.admission_pa)?;
        let t = self.working.worked(&SATURATION_TEMPERATURE, &[p])?;
        Ok((p, self.dry_density(p, t, run.admission_kg_m3)?))
    }

    /// Pressure when the exhaust closes and the density of dry steam there.
    fn closing(
        &mut self,
        engine: &Engine,
        run: &EngineState,
        back: Ref,
    ) -> Result<(Ref, Ref), Refused> {
        let p = match engine.closing_pa {
            Some(pa) => {
                let names = ("p_x", "pressure when the exhaust closes");
                let field = "engine.exhaust-pressure-at-compression";
                self.given::<Absolute>(field, names, &KPA_ABSOLUTE, pa)
            }
            None => back,
        };
        let t = self.working.worked(&SATURATION_TEMPERATURE, &[p])?;
        Ok((p, self.dry_density(p, t, run.closing_kg_m3)?))
    }

    fn made(&mut self, engine: &Engine) -> Made {
        let names = ("r", "cut-off as a share of the stroke");
        let cut_off = self.given::<Ratio>("engine.cut-off", names, &ONE, engine.cut_off);
        let names = ("c", "clearance over stroke volume");
        let clearance = self.given::<Ratio>("engine.clearance", names, &ONE, engine.clearance);
        let names = ("q", "compression as a share of the stroke");
        let compression =
            self.given::<Ratio>("engine.compression", names, &ONE, engine.compression);
        let names = ("V", "stroke volume of one end");
        let volume = self.given::<Volume>("engine.bore", names, &LITRE, engine.stroke_volume_m3);
        let names = ("n", "working strokes in a second");
        let strokes = self.given::<Rotation>("engine.speed", names, &PER_S, engine.strokes_per_s);
        Made {
            cut_off,
            clearance,
            compression,
            volume,
            strokes,
        }
    }

    /// The exhaust by its dryness, with what a coil added.
    fn exhausted(
        &mut self,
        engine: &Engine,
        state: &ExhaustState,
        water: &Water,
    ) -> Result<Exhausted, Refused> {
        let air = &water.air;
        let names = (
            "x_e",
            "dryness of the exhaust where the steam comes straight from the boiler",
        );
        let x = self.given::<Ratio>(
            "engine.exhaust-dryness",
            names,
            &ONE,
            engine.exhaust_dryness,
        );
        let wet = self.working.worked(&WET_ENTHALPY, &[air.h_l, air.h_g, x])?;
        let gain = match (self.state.inputs.dryer, self.state.pass.dryer) {
            (Some(coil), Some(settled)) => self.coil(&coil, &settled)?,
            _ => self.absent("dh", "enthalpy that a coil adds", &J_PER_KG),
        };
        let h = self.settle(&ENTHALPY_WITH_GAIN, &[wet, gain], state.exhaust_j_kg)?;
        let from = [water.steam_h, gain];
        let supplied = self.settle(&ENTHALPY_WITH_GAIN, &from, state.supplied_j_kg)?;
        let lacks = self.settle(&ENTHALPY_LACKING, &[air.h_g, h], state.lacks_j_kg)?;
        let density = self.exhaust_density(state, water, h)?;
        Ok(Exhausted {
            h,
            supplied,
            density,
            lacks,
        })
    }

    fn exhaust_density(
        &mut self,
        state: &ExhaustState,
        water: &Water,
        h: Ref,
    ) -> Result<Ref, Refused> {
        let air = &water.air;
        if state.lacks_j_kg < 0.0 {
            let how = (
                "the states of steam at the pressure of the air",
                "the one with this enthalpy, which is superheated",
            );
            let names = ("rho_s", "density of the exhaust");
            let from = [air.p, h];
            return Ok(self.marched(names, &KG_PER_M3, state.exhaust_kg_m3, &from, how));
        }
        let x = self.working.worked(&DRYNESS, &[h, air.h_l, air.h_g])?;
        let v_l = self.working.worked(&REGION1_V, &[air.p, air.t])?;
        let v_g = self.working.worked(&REGION2_V, &[air.p, air.t])?;
        let rho_l = self.working.worked(&DENSITY_FROM_VOLUME, &[v_l])?;
        let rho_g = self.working.worked(&DENSITY_FROM_VOLUME, &[v_g])?;
        self.settle(&WET_DENSITY, &[rho_l, rho_g, x], state.exhaust_kg_m3)
    }

    /// Jet and back pressure of the nozzle; without one the back pressure is that of the air.
    fn nozzle(
        &mut self,
        state: &ExhaustState,
        exhausted: &Exhausted,
        (steam, air): (Ref, Ref),
    ) -> Result<(Ref, Option<JetLines>), Refused> {
        let (Some(blast), Some(speed)) = (self.state.inputs.blast, state.jet_m_s) else {
            return Ok((air, None));
        };
        let names = ("d_n", "bore of the blast nozzle");
        let bore = self.given::<Length>("blast.nozzle", names, &M, blast.nozzle_m);
        let area = self.settle(&ROUND_AREA, &[bore], blast.area_m2())?;
        let names = ("C", "nozzle coefficient");
        let c = self.given::<Ratio>("blast.coefficient", names, &ONE, blast.coefficient);
        let u = self.settle(&BLAST_SPEED, &[steam, c, area, exhausted.density], speed)?;
        let from = [exhausted.density, u, c];
        let drop = self.settle(&BLAST_BACK_PRESSURE, &from, state.nozzle_pa)?;
        // Where the back pressure was sought it is a root already, and this line shows that the
        // nozzle agrees with it.
        let back = self.working.worked(&BACK_PRESSURE, &[air, drop])?;
        let momentum = self.settle(&JET_MOMENTUM, &[steam, u], state.engine.steam_kg_s * speed)?;
        let jet = JetLines {
            steam,
            area,
            bore,
            density: exhausted.density,
            momentum,
            lacks: exhausted.lacks,
        };
        Ok((back, Some(jet)))
    }

    fn power(
        &mut self,
        engine: &Engine,
        state: &ExhaustState,
        made: &Made,
        (admission, back, closing): (Ref, Ref, Ref),
    ) -> Result<Ref, Refused> {
        let run = &state.engine;
        let from = [
            admission,
            back,
            made.cut_off,
            made.clearance,
            made.compression,
        ];
        let mean = self.settle(&MEAN_EFFECTIVE_PRESSURE, &from, run.mean_pressure_pa)?;
        let names = ("phi", "diagram factor");
        let factor =
            self.given::<Ratio>("engine.diagram-factor", names, &ONE, engine.diagram_factor);
        let from = [factor, mean, made.volume, made.strokes];
        let power = self.settle(&INDICATED_POWER, &from, run.indicated_w)?;
        let from = [closing, made.compression, made.clearance];
        self.settle(&COMPRESSION_PRESSURE, &from, run.compressed_pa)?;
        Ok(power)
    }
}
