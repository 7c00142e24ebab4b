//! Lines of what the walls and leaks take, of the steam pipe, and of the exhaust with its nozzle.

use formulas::balance::{
    BACK_PRESSURE, DENSITY_FROM_VOLUME, ENTHALPY_LACKING, ENTHALPY_WITH_GAIN, JET_MOMENTUM,
    ROUND_AREA, TOTAL_FLOW, WET_ENTHALPY,
};
use formulas::draught::{BLAST_BACK_PRESSURE, BLAST_SPEED};
use formulas::engine::{
    CONDENSED, ENTHALPY_AFTER_LOSS, EXHAUST_ENTHALPY, LEAK, LEAK_AREA, MISSING_QUANTITY,
    PUFF_SHARE, PUFFED_BACK_PRESSURE, SUPERHEAT_RELIEF, SURFACE_HEAT, WALL_AREA, WALL_HEAT,
    WALL_SHARE, WALL_STEAM,
};
use formulas::steam::cards::{DRYNESS, REGION1_V, REGION2_V, SATURATION_TEMPERATURE, WET_DENSITY};
use reckoning::quantity::{
    HeatTransfer, J_PER_KG, J_PER_KG_K, KELVIN, KELVIN_RISE, KG_PER_M3, KG_PER_S, Length, M,
    MassFlow, ONE, Ratio, Temperature, W_PER_M_K, W_PER_M2_K,
};
use reckoning::{Ref, Refused};

use super::Filing;
use super::engine::{AdmissionLines, EngineLines, Made};
use super::water::{JetLines, Line, Water};
use crate::engine::{
    Engine, EngineState, ExhaustState, FILM_W_M2_K, GAP_M, IRON, LostState, Missing, PORTS,
};

/// The stream that leaves the boiler on its way.
pub(super) struct StreamLines {
    /// All of it.
    pub steam: Ref,
    /// Enthalpy where it is supplied.
    pub supplied: Ref,
    /// Enthalpy that a coil adds.
    pub gain: Ref,
}

/// The stream and the exhaust that is left of it.
pub(super) struct Led {
    pub steam: Ref,
    pub supplied: Ref,
    pub h: Ref,
    density: Ref,
    lacks: Ref,
}

impl Filing<'_> {
    /// Steam that comes of no engine.
    pub(super) fn plain(
        &mut self,
        state: &ExhaustState,
        water: &Water,
    ) -> Result<EngineLines, Refused> {
        let names = ("m_s", "steam asked for");
        let steam = self.given::<MassFlow>("duty.steam", names, &KG_PER_S, state.steam_kg_s);
        let (gain, supplied) = self.gained(state, water)?;
        let x = self
            .state
            .inputs
            .plain
            .map_or(f64::NAN, |p| p.exhaust_dryness);
        let h = self.by_dryness(x, state, (gain, water))?;
        let stream = StreamLines {
            steam,
            supplied,
            gain,
        };
        let led = self.through(state, (stream, h), water)?;
        let back = match self.blast_jet(state, &led)? {
            Some((drop, jet)) => {
                let back = self.working.worked(&BACK_PRESSURE, &[water.air.p, drop])?;
                (back, Some(jet))
            }
            None => (water.air.p, None),
        };
        Ok(EngineLines {
            steam,
            back: back.0,
            jet: back.1,
        })
    }

    /// Missing quantity over the indicated steam.
    pub(super) fn taken(
        &mut self,
        (engine, run): (&Engine, &EngineState),
        state: &ExhaustState,
        (made, admission, back, stroke): (&Made, &AdmissionLines, Ref, Ref),
    ) -> Result<Ref, Refused> {
        let names = ("mu", "missing quantity over the indicated steam");
        let (factor, lost) = match (engine.missing, run.lost) {
            (Missing::Reckoned(factor), Some(lost)) => (factor, lost),
            (Missing::Measured(share) | Missing::Reckoned(share), _) => {
                return Ok(self.given::<Ratio>("engine.missing", names, &ONE, share));
            }
        };
        let heat = self.walls(&lost, (made, admission, back))?;
        let dt = self.superheat(state);
        let relief = self.settle(&SUPERHEAT_RELIEF, &[dt], lost.relief)?;
        let latent = self.latent(&admission.line, run.admission_latent_j_kg)?;
        let from = [relief, heat, latent];
        let condensed = self.settle(&WALL_STEAM, &from, lost.condensed_kg)?;
        let leak = self.leaks(&lost, (made, admission.p))?;
        let names = (
            "F",
            "missing quantity over what walls and leaks are reckoned to take",
        );
        let factor = self.given::<Ratio>("engine.missing", names, &ONE, factor);
        let from = [factor, condensed, leak, made.strokes, stroke];
        self.settle(&MISSING_QUANTITY, &from, run.missing)
    }

    fn superheat(&mut self, state: &ExhaustState) -> Ref {
        if state.superheat_k <= 0.0 {
            return self.absent("dT", "superheat at the engine", &KELVIN_RISE);
        }
        let how = (
            "the states of steam at the pressure of the boiler",
            "the one with the enthalpy behind coil and pipe",
        );
        let names = ("dT", "superheat at the engine");
        self.marched(names, &KELVIN_RISE, state.superheat_k, &[], how)
    }

    /// Conductivity, density and specific heat of the cylinder.
    fn iron(&mut self) -> [Ref; 3] {
        let iron = (
            "cast iron and bronze",
            "both take the same heat within a twentieth",
        );
        let [k, rho, c] = IRON;
        let k = self.marched(
            ("k", "conductivity of the cylinder"),
            &W_PER_M_K,
            k,
            &[],
            iron,
        );
        let rho = self.marched(
            ("rho", "density of the cylinder"),
            &KG_PER_M3,
            rho,
            &[],
            iron,
        );
        let c = self.marched(
            ("c", "specific heat of the cylinder"),
            &J_PER_KG_K,
            c,
            &[],
            iron,
        );
        [k, rho, c]
    }

    /// Heat that the walls take in from one admission.
    fn walls(
        &mut self,
        lost: &LostState,
        (made, admission, back): (&Made, &AdmissionLines, Ref),
    ) -> Result<Ref, Refused> {
        let [k, rho, c] = self.iron();
        let film = (
            "5 to 20 kW/(m² K) of condensing steam",
            "the middle; what it may be out by is in the factor on the missing quantity",
        );
        let names = ("h", "film coefficient of condensing steam");
        let film = self.marched(names, &W_PER_M2_K, FILM_W_M2_K, &[], film);
        let from = [k, rho, c, made.turns, film];
        let share = self.settle(&WALL_SHARE, &from, lost.share)?;
        let ports = (
            "the ports of small engines",
            "common practice; what it may be out by is in the factor on the missing quantity",
        );
        let names = ("e", "surface of the ports over that of cover and piston");
        let ports = self.marched(names, &ONE, PORTS, &[], ports);
        let from = [made.bore, made.stroke, ports, made.cut_off];
        let area = self.settle(&WALL_AREA, &from, lost.area_m2)?;
        let t_b = self.working.worked(&SATURATION_TEMPERATURE, &[back])?;
        let from = [share, admission.line.t, t_b, area, k, rho, c, made.turns];
        self.settle(&WALL_HEAT, &from, lost.heat_j)
    }

    fn leaks(&mut self, lost: &LostState, (made, admission): (&Made, Ref)) -> Result<Ref, Refused> {
        let how = (
            "gaps that would leak as much as valve and rings",
            "a fifth of the steam of a small engine; what it may be out by is in the factor on \
             the missing quantity",
        );
        let gap = self.marched(("g", "clear gap round a piston"), &M, GAP_M, &[], how);
        let area = self.settle(&LEAK_AREA, &[made.cylinders, made.bore, gap], lost.leak_m2)?;
        self.settle(&LEAK, &[area, admission], lost.leak_kg_s)
    }

    /// Enthalpy that a coil adds, and that of the steam behind it.
    fn gained(&mut self, state: &ExhaustState, water: &Water) -> Result<(Ref, Ref), Refused> {
        let gain = match (self.state.inputs.dryer, self.state.pass.dryer) {
            (Some(coil), Some(settled)) => self.coil(&coil, &settled)?,
            _ => self.absent("dh", "enthalpy that a coil adds", &J_PER_KG),
        };
        let si = self.state.water.steam_j_kg + state.gain_j_kg;
        let dried = self.settle(&ENTHALPY_WITH_GAIN, &[water.steam_h, gain], si)?;
        Ok((gain, dried))
    }

    /// The stream through coil and pipe.
    pub(super) fn stream(
        &mut self,
        engine: &Engine,
        state: &ExhaustState,
        (engine_steam, water): (Ref, &Water),
    ) -> Result<StreamLines, Refused> {
        let (gain, dried) = self.gained(state, water)?;
        let (Some(pipe), Some(settled)) = (engine.pipe, state.pipe) else {
            return Ok(StreamLines {
                steam: engine_steam,
                supplied: dried,
                gain,
            });
        };
        let heat = self.pipe(&pipe, &settled, water)?;
        let condensed = self.condensed(state, heat, water)?;
        let steam = self.settle(&TOTAL_FLOW, &[engine_steam, condensed], state.steam_kg_s)?;
        let through = match state.flow {
            Some(solved) => {
                let left = format!("{:.1e} kg/s left", solved.residual);
                let balance = "steam that the engine takes against its superheat";
                let names = ("m", "steam through coil and pipe");
                self.root(names, &KG_PER_S, solved, (balance, &left))
            }
            None => steam,
        };
        let from = [dried, heat, through];
        Ok(StreamLines {
            steam,
            supplied: self.settle(&ENTHALPY_AFTER_LOSS, &from, state.supplied_j_kg)?,
            gain,
        })
    }

    /// Steam that the pipe condenses, superheat used up first.
    fn condensed(
        &mut self,
        state: &ExhaustState,
        heat: Ref,
        water: &Water,
    ) -> Result<Ref, Refused> {
        let boiler = self.saturation(water.boiler_p)?;
        let latent = self
            .working
            .worked(&ENTHALPY_LACKING, &[boiler.h_g, boiler.h_l])?;
        if state.flow.is_none() {
            return self.settle(&CONDENSED, &[heat, latent], state.condensed_kg_s);
        }
        let how = (
            "what the pipe condenses and none",
            "the superheat behind the coil is used up first",
        );
        let names = ("m_k", "steam that the pipe condenses");
        let from = [heat, latent];
        Ok(self.marched(names, &KG_PER_S, state.condensed_kg_s, &from, how))
    }

    /// Enthalpy of the exhaust by the balance of heat.
    pub(super) fn by_loss(
        &mut self,
        loss: f64,
        state: &ExhaustState,
        (made, chest, power, stream): (&Made, &Line, Ref, &StreamLines),
    ) -> Result<Ref, Refused> {
        let names = (
            "U",
            "loss on a square metre of bores and covers for a kelvin",
        );
        let u = self.given::<HeatTransfer>("engine.heat-loss", names, &W_PER_M2_K, loss);
        let names = ("T_a", "temperature of the room");
        let room_k = self.state.inputs.site.air_k;
        let room = self.given::<Temperature>("site.air", names, &KELVIN, room_k);
        let from = [u, made.cylinders, made.bore, made.stroke, chest.t, room];
        let lost = self.working.worked(&SURFACE_HEAT, &from)?;
        let from = [stream.supplied, power, lost, stream.steam];
        self.settle(&EXHAUST_ENTHALPY, &from, state.exhaust_j_kg)
    }

    /// Enthalpy of the exhaust by its dryness, with what a coil added.
    pub(super) fn by_dryness(
        &mut self,
        x: f64,
        state: &ExhaustState,
        (gain, water): (Ref, &Water),
    ) -> Result<Ref, Refused> {
        let air = &water.air;
        let names = (
            "x_e",
            "dryness of the exhaust where the steam comes straight from the boiler",
        );
        let x = self.given::<Ratio>("engine.exhaust-dryness", names, &ONE, x);
        let wet = self.working.worked(&WET_ENTHALPY, &[air.h_l, air.h_g, x])?;
        self.settle(&ENTHALPY_WITH_GAIN, &[wet, gain], state.exhaust_j_kg)
    }

    /// The exhaust at the pressure of the air.
    pub(super) fn through(
        &mut self,
        state: &ExhaustState,
        (stream, h): (StreamLines, Ref),
        water: &Water,
    ) -> Result<Led, Refused> {
        let lacks = self.settle(&ENTHALPY_LACKING, &[water.air.h_g, h], state.lacks_j_kg)?;
        let density = self.exhaust_density(state, water, h)?;
        Ok(Led {
            steam: stream.steam,
            supplied: stream.supplied,
            h,
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

    /// Share of the time in which the exhaust of an engine flows.
    fn puff_share(
        &mut self,
        engine: &Engine,
        state: &ExhaustState,
        n: Ref,
    ) -> Result<Ref, Refused> {
        let names = (
            "d_0",
            "share of the time in which the exhaust of a slow engine flows",
        );
        let slow = self.given::<Ratio>("engine.puff-share", names, &ONE, engine.puff_share);
        self.settle(&PUFF_SHARE, &[slow, n], state.puff_share)
    }

    /// Jet and back pressure of the nozzle of an engine; without one the back pressure is that of
    /// the air.
    pub(super) fn nozzle(
        &mut self,
        (engine, state): (&Engine, &ExhaustState),
        (led, strokes): (&Led, Ref),
        air: Ref,
    ) -> Result<(Ref, Option<JetLines>), Refused> {
        let Some((drop, jet)) = self.blast_jet(state, led)? else {
            return Ok((air, None));
        };
        let share = self.puff_share(engine, state, strokes)?;
        self.puffs = Some(share);
        let drop = self.settle(&PUFFED_BACK_PRESSURE, &[drop, share], state.puffed_pa)?;
        // Where the back pressure was sought it is a root already, and this line shows that the
        // nozzle agrees with it.
        let back = self.working.worked(&BACK_PRESSURE, &[air, drop])?;
        Ok((back, Some(jet)))
    }

    /// The jet of the nozzle and its back pressure at the mean flow.
    fn blast_jet(
        &mut self,
        state: &ExhaustState,
        led: &Led,
    ) -> Result<Option<(Ref, JetLines)>, Refused> {
        let (Some(blast), Some(speed)) = (self.state.inputs.blast, state.jet_m_s) else {
            return Ok(None);
        };
        let names = ("d_n", "bore of the blast nozzle");
        let bore = self.given::<Length>("blast.nozzle", names, &M, blast.nozzle_m);
        let area = self.settle(&ROUND_AREA, &[bore], blast.area_m2())?;
        let names = ("C", "nozzle coefficient");
        let c = self.given::<Ratio>("blast.coefficient", names, &ONE, blast.coefficient);
        let u = self.settle(&BLAST_SPEED, &[led.steam, c, area, led.density], speed)?;
        let from = [led.density, u, c];
        let drop = self.settle(&BLAST_BACK_PRESSURE, &from, state.nozzle_pa)?;
        let momentum = self.settle(&JET_MOMENTUM, &[led.steam, u], state.steam_kg_s * speed)?;
        let jet = JetLines {
            steam: led.steam,
            area,
            bore,
            density: led.density,
            momentum,
            lacks: led.lacks,
        };
        Ok(Some((drop, jet)))
    }
}
