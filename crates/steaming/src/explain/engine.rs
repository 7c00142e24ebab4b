//! Lines of the engine: its load, admission, steam and power.

use formulas::balance::{DENSITY_FROM_VOLUME, ENTHALPY_LACKING, PRESSURE_SHARE};
use formulas::engine::{
    COMPRESSION_PRESSURE, FEED_POWER, HEAT_LOST, IDEAL_WORK, INDICATED_POWER,
    MEAN_EFFECTIVE_PRESSURE, MEAN_PRESSURE_FOR, NET_POWER, PORT_SPEED, POWER_ASKED, SHAFT_POWER,
    STEAM_FLOW, STEAM_PER_STROKE, THROTTLED_ADMISSION, WIRE_DRAWN, WORK_OF_STEAM, port_speed,
};
use formulas::steam::cards::{REGION2_V, SATURATION_TEMPERATURE};
use reckoning::quantity::{
    Absolute, Area, KPA_ABSOLUTE, LITRE, Length, M, M2, M3_PER_S, ONE, PA_ABSOLUTE, PER_S, Power,
    Ratio, Rotation, Volume, VolumeFlow, WATT,
};
use reckoning::{Ref, Refused};

use reckoning::solve::Solved;

use super::Filing;
use super::exhaust::StreamLines;
use super::water::{JetLines, Line, Water};
use crate::engine::{Admission, Engine, EngineState, ExhaustState, Exhausts, Load};

/// Lines of the engine that others need.
pub(super) struct EngineLines {
    /// Steam on the way through engine and nozzle.
    pub steam: Ref,
    /// Back pressure.
    pub back: Ref,
    pub jet: Option<JetLines>,
}

/// The engine's own numbers.
pub(super) struct Made {
    pub cylinders: Ref,
    pub bore: Ref,
    pub stroke: Ref,
    pub cut_off: Ref,
    pub clearance: Ref,
    pub compression: Ref,
    pub volume: Ref,
    pub strokes: Ref,
    pub turns: Ref,
}

/// Steam as it is admitted.
pub(super) struct AdmissionLines {
    pub chest: Line,
    pub p: Ref,
    pub line: Line,
    pub density: Ref,
}

impl Filing<'_> {
    pub(super) fn engine(&mut self, water: &Water) -> Result<Option<EngineLines>, Refused> {
        let Some(state) = self.state.exhaust else {
            return Ok(None);
        };
        let Some((engine, run)) = self.state.inputs.engine.zip(state.engine) else {
            return self.plain(&state, water).map(Some);
        };
        let sought = state.balance.map(|solved| self.sought(solved));
        let known = sought.unwrap_or(water.air.p);
        let made = self.made(&engine, &run);
        let pump = self.pump(&engine, &run, water)?;
        let admission = self.admission(&engine, &run, (&made, known, pump), water)?;
        let stroke = self.stroke(&engine, &run, (&made, &admission, known))?;
        let taken = self.taken((&engine, &run), &state, (&made, &admission, known, stroke))?;
        let steam = self.settle(&STEAM_FLOW, &[stroke, taken, made.strokes], run.steam_kg_s)?;
        let stream = self.stream(&engine, &state, (steam, water))?;
        let powered = (&made, admission.p, known, pump);
        let (first, h) = self.exhausted(
            (&engine, &run),
            &state,
            powered,
            (&admission, &stream, water),
        )?;
        let led = self.through(&state, (stream, h), water)?;
        let (back, jet) = self.nozzle((&engine, &state), (&led, made.strokes), water.air.p)?;
        let back = sought.unwrap_or(back);
        let power = match first {
            Some(power) => power,
            None => self.power(&engine, &run, (&made, admission.p, back, pump))?,
        };
        let from = [led.steam, led.supplied, led.h, power];
        self.settle(&HEAT_LOST, &from, state.heat_lost_w)?;
        self.settle(&WORK_OF_STEAM, &[power, steam], run.work_j_kg())?;
        self.settle(&IDEAL_WORK, &[water.boiler_p, water.air.p], run.ideal_j_kg)?;
        Ok(Some(EngineLines {
            steam: led.steam,
            back,
            jet,
        }))
    }

    /// The back pressure where it was sought.
    fn sought(&mut self, solved: Solved) -> Ref {
        let left = format!("{:.1e} Pa left", solved.residual);
        let balance = "back pressure that the engine meets against that of its nozzle";
        let names = ("p_b", "back pressure");
        self.root(names, &PA_ABSOLUTE, solved, (balance, &left))
    }

    /// Enthalpy of the exhaust, and the power where that follows from the balance of heat: the back
    /// pressure is then known before.
    fn exhausted(
        &mut self,
        (engine, run): (&Engine, &EngineState),
        state: &ExhaustState,
        (made, p, known, pump): (&Made, Ref, Ref, Ref),
        (admission, stream, water): (&AdmissionLines, &StreamLines, &Water),
    ) -> Result<(Option<Ref>, Ref), Refused> {
        match engine.exhausts {
            Exhausts::ByLoss(loss) => {
                let power = self.power(engine, run, (made, p, known, pump))?;
                let from = (made, &admission.chest, power, stream);
                Ok((Some(power), self.by_loss(loss, state, from)?))
            }
            Exhausts::Dryness(x) => Ok((None, self.by_dryness(x, state, (stream.gain, water))?)),
        }
    }

    fn made(&mut self, engine: &Engine, run: &EngineState) -> Made {
        let names = ("n_c", "number of cylinders");
        let cylinders = self.given::<Ratio>("engine.cylinders", names, &ONE, engine.cylinders);
        let names = ("D", "bore of a cylinder");
        let bore = self.given::<Length>("engine.bore", names, &M, engine.bore_m);
        let names = ("S", "stroke");
        let stroke = self.given::<Length>("engine.stroke", names, &M, engine.stroke_m);
        let names = ("c", "clearance over stroke volume");
        let clearance = self.given::<Ratio>("engine.clearance", names, &ONE, engine.clearance);
        let names = ("q", "compression as a share of the stroke");
        let compression =
            self.given::<Ratio>("engine.compression", names, &ONE, engine.compression);
        let names = ("V", "stroke volume of one end");
        let volume = self.given::<Volume>("engine.bore", names, &LITRE, engine.stroke_volume_m3);
        let (cut_off, strokes) = self.held(engine, run);
        let how = (
            "cylinders and sides that the steam acts on",
            "each turn has as many working strokes",
        );
        let names = ("N", "turns of the crankshaft in a second");
        let turns = self.marched(names, &PER_S, run.admitted.turns_per_s, &[strokes], how);
        Made {
            cylinders,
            bore,
            stroke,
            cut_off,
            clearance,
            compression,
            volume,
            strokes,
            turns,
        }
    }

    /// Cut-off and strokes: held, or found for the power that is asked.
    fn held(&mut self, engine: &Engine, run: &EngineState) -> (Ref, Ref) {
        let cut_names = ("r", "cut-off as a share of the stroke");
        let stroke_names = ("n", "working strokes in a second");
        let (cut_off, strokes) = (run.admitted.cut_off, run.admitted.strokes_per_s);
        let given_cut =
            |filing: &mut Self| filing.given::<Ratio>("engine.cut-off", cut_names, &ONE, cut_off);
        let given_strokes = |filing: &mut Self| {
            filing.given::<Rotation>("engine.speed", stroke_names, &PER_S, strokes)
        };
        let end = (
            "the end of the range in which it is sought",
            "no value within gives the power that is asked",
        );
        let balance = "power at the shaft against the power that is asked";
        match (engine.load, run.admitted.sought) {
            (Load::Open { .. } | Load::Throttled { .. }, _) => {
                (given_cut(self), given_strokes(self))
            }
            (Load::BySpeed { .. }, Some(found)) => {
                let left = format!("{:.1e} W left", found.residual);
                let n = self.root(stroke_names, &PER_S, found, (balance, &left));
                (given_cut(self), n)
            }
            (Load::BySpeed { .. }, None) => {
                let n = self.marched(stroke_names, &PER_S, strokes, &[], end);
                (given_cut(self), n)
            }
            (Load::ByCutOff { .. }, Some(found)) => {
                let left = format!("{:.1e} W left", found.residual);
                let r = self.root(cut_names, &ONE, found, (balance, &left));
                (r, given_strokes(self))
            }
            (Load::ByCutOff { .. }, None) => {
                let r = self.marched(cut_names, &ONE, cut_off, &[], end);
                (r, given_strokes(self))
            }
        }
    }

    /// Power that the feed pump takes.
    fn pump(&mut self, engine: &Engine, run: &EngineState, water: &Water) -> Result<Ref, Refused> {
        let Some(pump) = engine.pump else {
            return Ok(self.absent("P_f", "power that a feed pump on the engine asks", &WATT));
        };
        let names = ("V_f", "water that the engine's pump feeds");
        let v = self.given::<VolumeFlow>("feed.means.<id>.rate", names, &M3_PER_S, pump.water_m3_s);
        let names = ("eta_f", "work on the water over work on the pump");
        let field = "engine.pump-efficiency";
        let eta = self.given::<Ratio>(field, names, &ONE, pump.efficiency);
        self.settle(&FEED_POWER, &[v, water.gauge_p, eta], run.pump_w)
    }

    /// Pressure at admission and the steam there.
    fn admission(
        &mut self,
        engine: &Engine,
        run: &EngineState,
        (made, back, pump): (&Made, Ref, Ref),
        water: &Water,
    ) -> Result<AdmissionLines, Refused> {
        let names = ("s", "pressure in the chest over that in the boiler");
        let field = "engine.chest-pressure";
        let share = self.given::<Ratio>(field, names, &ONE, engine.chest_share);
        let p_c = self.settle(&PRESSURE_SHARE, &[share, water.boiler_p], run.chest.pa)?;
        let chest = self.saturation(p_c)?;
        let open = self.opened(engine, run, (made, &chest))?;
        let closed = run.admitted.pa < run.admitted.open_pa;
        let p = match engine.load.asked_w().filter(|_| closed) {
            Some(asked_w) => self.throttled(engine, run, (asked_w, made, back, pump))?,
            None => open,
        };
        let line = self.saturation(p)?;
        let density = self.dry_density(line.p, line.t, run.admission_kg_m3)?;
        Ok(AdmissionLines {
            chest,
            p,
            line,
            density,
        })
    }

    /// Pressure at admission with the regulator open.
    fn opened(
        &mut self,
        engine: &Engine,
        run: &EngineState,
        (made, chest): (&Made, &Line),
    ) -> Result<Ref, Refused> {
        let (area_m2, loss) = match engine.admission {
            Admission::Ports { area_m2, loss } => (area_m2, loss),
            Admission::Share(share) => {
                let names = ("s_1", "pressure at admission over that in the chest");
                let field = "engine.admission-pressure";
                let share = self.given::<Ratio>(field, names, &ONE, share);
                return self.settle(&PRESSURE_SHARE, &[share, chest.p], run.admitted.open_pa);
            }
        };
        let names = ("A_p", "area of the port of one end");
        let area = self.given::<Area>("engine.port-area", names, &M2, area_m2);
        let from = [made.bore, made.stroke, made.turns, area];
        let turns = run.admitted.turns_per_s;
        let speed = port_speed(engine.bore_m, engine.stroke_m, turns, area_m2);
        let u = self.settle(&PORT_SPEED, &from, speed)?;
        let names = ("k", "loss of the port in squares of its mean speed");
        let k = self.given::<Ratio>("engine.port-loss", names, &ONE, loss);
        let rho = self.dry_density(chest.p, chest.t, run.chest.kg_m3)?;
        self.settle(&WIRE_DRAWN, &[chest.p, k, rho, u], run.admitted.open_pa)
    }

    /// Pressure at admission with the regulator closed as far as the power allows.
    fn throttled(
        &mut self,
        engine: &Engine,
        run: &EngineState,
        (asked_w, made, back, pump): (f64, &Made, Ref, Ref),
    ) -> Result<Ref, Refused> {
        let names = ("P_w", "power asked at the shaft");
        let asked = self.given::<Power>("duty.power", names, &WATT, asked_w);
        let all = self.working.worked(&POWER_ASKED, &[asked, pump])?;
        let (eta, phi) = self.factors(engine);
        let from = [all, eta, phi, made.volume, made.strokes];
        let mean = self.working.worked(&MEAN_PRESSURE_FOR, &from)?;
        let from = [mean, back, made.cut_off, made.clearance, made.compression];
        self.settle(&THROTTLED_ADMISSION, &from, run.admitted.pa)
    }

    /// Mechanical efficiency and diagram factor.
    fn factors(&mut self, engine: &Engine) -> (Ref, Ref) {
        let names = ("eta", "power at the shaft over indicated power");
        let field = "engine.mechanical-efficiency";
        let eta = self.given::<Ratio>(field, names, &ONE, engine.mechanical_efficiency);
        let names = ("phi", "diagram factor");
        let phi = self.given::<Ratio>("engine.diagram-factor", names, &ONE, engine.diagram_factor);
        (eta, phi)
    }

    /// Steam that the diagram accounts for in a stroke.
    fn stroke(
        &mut self,
        engine: &Engine,
        run: &EngineState,
        (made, admission, back): (&Made, &AdmissionLines, Ref),
    ) -> Result<Ref, Refused> {
        let closing = match engine.closing_pa {
            Some(pa) => {
                let names = ("p_x", "pressure when the exhaust closes");
                let field = "engine.exhaust-pressure-at-compression";
                self.given::<Absolute>(field, names, &KPA_ABSOLUTE, pa)
            }
            None => back,
        };
        let t = self.working.worked(&SATURATION_TEMPERATURE, &[closing])?;
        let v = self.working.worked(&REGION2_V, &[closing, t])?;
        let rho_x = self.settle(&DENSITY_FROM_VOLUME, &[v], run.closing_kg_m3)?;
        let from = [closing, made.compression, made.clearance];
        self.settle(&COMPRESSION_PRESSURE, &from, run.compressed_pa)?;
        let from = [
            admission.density,
            rho_x,
            made.cut_off,
            made.clearance,
            made.compression,
            made.volume,
        ];
        self.settle(&STEAM_PER_STROKE, &from, run.steam_per_stroke_kg)
    }

    /// Power in the cylinders and at the shaft; gives the line of the indicated power.
    fn power(
        &mut self,
        engine: &Engine,
        run: &EngineState,
        (made, admission, back, pump): (&Made, Ref, Ref, Ref),
    ) -> Result<Ref, Refused> {
        let from = [
            admission,
            back,
            made.cut_off,
            made.clearance,
            made.compression,
        ];
        let mean = self.settle(&MEAN_EFFECTIVE_PRESSURE, &from, run.mean_pressure_pa)?;
        let (eta, phi) = self.factors(engine);
        let from = [phi, mean, made.volume, made.strokes];
        let power = self.settle(&INDICATED_POWER, &from, run.indicated_w)?;
        let shaft = self.settle(&SHAFT_POWER, &[eta, power], run.shaft_w)?;
        self.settle(&NET_POWER, &[shaft, pump], run.net_w())?;
        Ok(power)
    }

    /// Heat of evaporation at a pressure.
    pub(super) fn latent(&mut self, line: &Line, si: f64) -> Result<Ref, Refused> {
        self.settle(&ENTHALPY_LACKING, &[line.h_g, line.h_l], si)
    }
}
