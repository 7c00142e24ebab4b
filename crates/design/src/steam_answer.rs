//! Will this fire make the steam: the loop at working pressure, over pressure, and its band.

use formulas::steam::Saturated;
use plan::Plan;
use plant::Plant;
use reckoning::quantity::{Gauge, MassFlow, Quantity};
use reckoning::{Finding, Known, Verdict, Working};
use steaming::consumption::Consumption;
use steaming::engine::EngineState;
use steaming::{
    Band, Cure, Draws, Engine, FireState, Inputs, Judging, NotSettled, Outlook, Site, Supply,
    Sweep, Taker,
};

use crate::fire::{CoilHeat, Door, Greatest, Taken, door, door_on_gas};
use crate::flame_answer::FlameAnswer;

/// Pressures of a sweep between the least and the valve.
const SWEEP_POINTS: usize = 16;
/// The least pressure of a sweep as a share of the working pressure.
const LEAST_SHARE: f64 = 0.2;

/// Everything that was found about steaming.
#[derive(Clone, Debug)]
pub struct Steaming {
    /// What was taken at the door.
    pub taken: Taken,
    /// The engine by itself at working pressure, with its exhaust let into the open air.
    pub engine_alone: Option<EngineState>,
    /// The engine, where it is whole.
    pub engine: Option<Engine>,
    /// Steam asked for beside the engine or without one, kg/s.
    pub plain_kg_s: Option<f64>,
    /// What the settled loop uses, where the water above the lowest level is known.
    pub consumption: Option<Consumption>,
    /// The inputs of the loop, where nothing is wanted.
    pub inputs: Option<Inputs>,
    /// Working pressure, Pa gauge.
    pub working_pa: Option<f64>,
    /// Pressure at which the valve lifts, Pa gauge.
    pub valve_pa: Option<f64>,
    /// The run of the loop, where there was one.
    pub run: Option<Run>,
    /// The most that the fire can evaporate, for the safety valve.
    pub greatest: Option<Known<MassFlow>>,
    /// How hot the fire at its greatest makes the coil.
    pub coil: Option<CoilHeat>,
    /// Why the loop did not run on whole inputs.
    pub fault: Option<NotSettled>,
    /// The same of the gas fire of a coal boiler that has a burner too.
    pub on_gas: Option<Box<Steaming>>,
}

/// The loop over pressure and its band at the working pressure.
#[derive(Clone, Debug)]
pub struct Run {
    /// The steaming ratio over pressure.
    pub sweep: Sweep,
    /// What the pressure does by itself.
    pub outlook: Option<Outlook>,
    /// The draws at working pressure, where the plant has a balance there.
    pub draws: Option<Draws>,
    /// The band of the steaming ratio.
    pub band: Option<Band>,
    /// What would let a fire hold that is not known to: the nearest nozzle, lump, chimney.
    pub cures: Vec<Cure>,
    /// What the rules of steaming found.
    pub findings: Vec<Finding>,
    /// What is told of a flame besides.
    pub flame: Option<FlameAnswer>,
}

/// What a plan asks of its fire: all that the answer rests on.
#[derive(Clone, Debug)]
pub struct Asked<'a> {
    /// The plan, for what it says of the water and of the gas.
    pub plan: &'a Plan,
    /// The plant, for the room that the water has.
    pub plant: &'a Plant,
    /// What was taken at the door.
    pub door: Door,
    /// The same of the gas fire of a coal boiler; `None` where there is but one fire.
    pub on_gas: Option<Door>,
    /// Working pressure, Pa gauge.
    pub working_pa: Option<f64>,
    /// Pressure at which the valve lifts, Pa gauge.
    pub valve_pa: Option<f64>,
}

/// Runs the loop for a plan.
#[must_use]
pub fn steaming(plan: &Plan, plant: &Plant) -> Steaming {
    Asked::of(plan, plant).answered()
}

impl<'a> Asked<'a> {
    /// What this plan asks.
    #[must_use]
    pub fn of(plan: &'a Plan, plant: &'a Plant) -> Self {
        let geometry = crate::geometry::of_fire(plan, plant);
        let mut door = door(plan, geometry.as_ref());
        let mut on_gas = door_on_gas(plan, geometry.as_ref());
        if let Some(other) = &mut on_gas {
            other.taken.wanted(&plan.duty.pressure);
            valve_pressure(plan, &mut other.taken);
        }
        Self {
            plan,
            plant,
            working_pa: door.taken.wanted(&plan.duty.pressure),
            valve_pa: valve_pressure(plan, &mut door.taken),
            door,
            on_gas,
        }
    }

    /// Runs the loop.
    #[must_use]
    pub fn answered(self) -> Steaming {
        let (first, greatest) = self.one_answered(&self.door);
        let second = self.on_gas.as_ref().map(|door| self.one_answered(door));
        let (on_gas, other) = second.map_or((None, None), |(on_gas, g)| (Some(on_gas), g));
        // A boiler of two fires wants a valve for the stronger: while one is not known, nor is it.
        let greatest = match (&on_gas, greatest, other) {
            (None, greatest, _) => greatest,
            (Some(_), Some(one), Some(other)) => Some(one.or(other)),
            (Some(_), ..) => None,
        };
        let (greatest, coil) = greatest.map_or((None, None), |g| (Some(g.steam), g.coil));
        Steaming {
            greatest,
            coil,
            on_gas: on_gas.map(|mut on_gas| {
                on_gas.told_apart();
                Box::new(on_gas)
            }),
            ..first
        }
    }

    /// The answer of one fire, and what it does at its greatest.
    fn one_answered(&self, door: &Door) -> (Steaming, Option<Greatest>) {
        let unlit = self.one_unlit(door);
        let ran = match (&unlit.inputs, unlit.working_pa, unlit.valve_pa) {
            (Some(inputs), Some(working), Some(valve)) => {
                let at = (working, valve);
                Some(run((self.plan, self.plant), inputs, at, &unlit.taken))
            }
            _ => None,
        };
        let (run, fault) = match ran {
            Some(Ok(run)) => (Some(run), None),
            Some(Err(fault)) => (None, Some(fault)),
            None => (None, None),
        };
        let greatest = self.greatest(&unlit, door, run.as_ref());
        let settled = run.as_ref().zip(unlit.working_pa);
        let state = settled.and_then(|(run, working)| run.sweep.state_at(working));
        let consumption =
            state.and_then(|state| crate::fire::consumption(self.plan, self.plant, state));
        (
            Steaming {
                run,
                consumption,
                fault,
                ..unlit
            },
            greatest,
        )
    }

    /// What a fire does at its greatest: a gas fire on its hottest day, any other at the best of
    /// its band.
    fn greatest(&self, unlit: &Steaming, door: &Door, run: Option<&Run>) -> Option<Greatest> {
        let (inputs, valve_pa) = (unlit.inputs.as_ref()?, unlit.valve_pa?);
        let assumed = &unlit.taken.assumed;
        let burner = inputs.firing.flame().and_then(|flame| flame.burner());
        if burner.is_none() {
            return crate::fire::greatest(inputs, door.blower, assumed, valve_pa);
        }
        let day = run?.flame.as_ref()?.hottest.as_ref()?;
        crate::fire::greatest_on_gas(inputs, day, assumed, valve_pa)
    }

    /// What is known before the fire is lit: what was taken, and the engine alone.
    #[must_use]
    pub fn unlit(&self) -> Steaming {
        Steaming {
            on_gas: self
                .on_gas
                .as_ref()
                .map(|door| Box::new(self.one_unlit(door))),
            ..self.one_unlit(&self.door)
        }
    }

    fn one_unlit(&self, door: &Door) -> Steaming {
        Steaming {
            engine_alone: engine_alone(door.engine, door.site, self.working_pa),
            engine: door.engine,
            plain_kg_s: door.plain.map(|plain| plain.steam_kg_s),
            consumption: None,
            taken: door.taken.clone(),
            inputs: door.inputs,
            working_pa: self.working_pa,
            valve_pa: self.valve_pa,
            run: None,
            greatest: None,
            coil: None,
            fault: None,
            on_gas: None,
        }
    }
}

impl Steaming {
    /// The second fire of a boiler told apart from the first: of what both are asked it keeps
    /// what differs, under places of its own.
    fn told_apart(&mut self) {
        let Some(run) = &mut self.run else {
            return;
        };
        run.findings.retain(|f| !OF_THE_ENGINE.contains(&f.rule.id));
        for finding in &mut run.findings {
            if finding.rule.id.starts_with("steaming.") {
                finding.place.insert_str(0, "on-gas.");
            }
        }
    }
}

/// Rules that are asked of the engine and its water, whichever fire there is.
pub(crate) const OF_THE_ENGINE: [&str; 8] = [
    "steaming.back-pressure",
    "steaming.compression",
    "steaming.engine-heat",
    "steaming.engine-power",
    "steaming.engine-work",
    "steaming.port-speed",
    "steaming.water-lasts",
    "steaming.feed-keeps-up",
];

/// The engine with its exhaust let into the open air.
fn engine_alone(
    engine: Option<Engine>,
    site: Option<Site>,
    working_pa: Option<f64>,
) -> Option<EngineState> {
    let (engine, site, working) = (engine?, site?, working_pa?);
    let boiler_pa = working + site.atmosphere_pa;
    let supply = Supply {
        blast: None,
        boiler_pa,
        atmosphere_pa: site.atmosphere_pa,
        room_k: site.air_k,
        steam_j_kg: Saturated::at_pressure(boiler_pa).ok()?.h_g,
    };
    let settled = steaming::engine::exhaust(Taker::Engine(&engine), &supply).ok()?;
    settled.engine
}

/// The lowest set pressure among the safety valves, else the design pressure.
fn valve_pressure(plan: &Plan, taken: &mut Taken) -> Option<f64> {
    // A set pressure that was taken away again may have been the lowest.
    if plan
        .safety_valves
        .iter()
        .any(|valve| valve.set.is_emptied())
    {
        return taken.keep::<Gauge>("safety-valve.set", None);
    }
    let first = plan
        .safety_valves
        .iter()
        .filter_map(|valve| valve.set.known())
        .min_by(|a, b| a.value.si().total_cmp(&b.value.si()));
    let known = first.or_else(|| plan.boiler.design_pressure.known());
    taken.keep::<Gauge>("safety-valve.set", known)
}

fn run(
    (plan, plant): (&Plan, &Plant),
    inputs: &Inputs,
    (working_pa, valve_pa): (f64, f64),
    taken: &Taken,
) -> Result<Run, NotSettled> {
    let sweep = steaming::sweep(inputs, &pressures(working_pa, valve_pa))?;
    let outlook = sweep.outlook(working_pa, valve_pa);
    // Only a plant without a balance has no draws, and then no rule is judged but the first.
    let draws = steaming::draws(inputs, working_pa, &taken.assumed).ok();
    let ratio_band = draws
        .as_ref()
        .and_then(|d| d.band(FireState::steaming_ratio).ok());
    let mut working = Working::new();
    if let Some(state) = sweep.state_at(working_pa) {
        crate::fire::explain(state, taken, &mut working)?;
    }
    let judging = Judging {
        sweep: &sweep,
        working_pa,
        valve_pa,
        draws: draws.as_ref(),
        working: &working,
    };
    let mut findings = steaming::findings(&judging);
    let flame = crate::flame_answer::flame(plan, inputs, &judging, &mut findings);
    findings.extend(crate::fire::water(plan, plant, &judging));
    Ok(Run {
        flame,
        cures: cures((plan, plant), &findings, inputs, working_pa),
        sweep,
        outlook,
        draws,
        band: ratio_band,
        findings,
    })
}

/// Cures are sought for a fire that is not known to hold.
fn cures(
    (plan, plant): (&Plan, &Plant),
    findings: &[Finding],
    inputs: &Inputs,
    working_pa: f64,
) -> Vec<Cure> {
    let holds = |f: &&Finding| f.rule.id == "steaming.holds";
    let met = findings
        .iter()
        .find(holds)
        .is_some_and(|f| matches!(f.verdict, Verdict::Met | Verdict::MetOnCondition));
    if met {
        return Vec::new();
    }
    crate::fire::cures(plan, plant, inputs, working_pa)
}

/// Evenly spaced pressures up to the valve, the working pressure among them.
fn pressures(working_pa: f64, valve_pa: f64) -> Vec<f64> {
    let least = LEAST_SHARE * working_pa;
    let most = valve_pa.max(working_pa);
    let steps = (SWEEP_POINTS - 1) as f64;
    let mut all: Vec<f64> = (0..SWEEP_POINTS)
        .map(|i| least + (most - least) * i as f64 / steps)
        .collect();
    all.push(working_pa);
    all.sort_by(f64::total_cmp);
    all.dedup_by(|a, b| (*a - *b).abs() < 1.0);
    all
}
