//! Will this fire make the steam: the loop at working pressure, over pressure, and its band.

use plan::Plan;
use plant::Plant;
use reckoning::quantity::{Gauge, MassFlow, Quantity};
use reckoning::{Finding, Known, Verdict, Working};
use steaming::engine::EngineState;
use steaming::{
    Band, Cure, Draws, Engine, FireState, Inputs, Judging, NotSettled, Outlook, Site, Sweep,
};

use crate::fire::{CoilHeat, Door, Taken, door};

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
}

/// What a plan asks of its fire: all that the answer rests on.
#[derive(Clone, Debug)]
pub struct Asked<'a> {
    /// The plan, for what it says of the water.
    pub plan: &'a Plan,
    /// The plant, for the room that the water has.
    pub plant: &'a Plant,
    /// What was taken at the door.
    pub door: Door,
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
        Self {
            plan,
            plant,
            working_pa: door.taken.wanted(&plan.duty.pressure),
            valve_pa: valve_pressure(plan, &mut door.taken),
            door,
        }
    }

    /// Runs the loop.
    #[must_use]
    pub fn answered(self) -> Steaming {
        let unlit = self.unlit();
        let blower = self.door.blower;
        let taken = &unlit.taken;
        let greatest = unlit
            .inputs
            .zip(unlit.valve_pa)
            .and_then(|(inputs, valve)| {
                crate::fire::greatest(&inputs, blower, &taken.assumed, valve)
            });
        let ran = match (&unlit.inputs, unlit.working_pa, unlit.valve_pa) {
            (Some(inputs), Some(working), Some(valve)) => Some(run(
                (self.plan, self.plant),
                inputs,
                (working, valve),
                taken,
            )),
            _ => None,
        };
        let (run, fault) = match ran {
            Some(Ok(run)) => (Some(run), None),
            Some(Err(fault)) => (None, Some(fault)),
            None => (None, None),
        };
        let (greatest, coil) = greatest.map_or((None, None), |g| (Some(g.steam), g.coil));
        Steaming {
            run,
            greatest,
            coil,
            fault,
            ..unlit
        }
    }

    /// What is known before the fire is lit: what was taken, and the engine alone.
    #[must_use]
    pub fn unlit(&self) -> Steaming {
        let (door, working_pa) = (&self.door, self.working_pa);
        Steaming {
            engine_alone: engine_alone(door.engine, door.site, working_pa),
            taken: door.taken.clone(),
            inputs: door.inputs,
            working_pa,
            valve_pa: self.valve_pa,
            run: None,
            greatest: None,
            coil: None,
            fault: None,
        }
    }
}

/// The engine with its exhaust let into the open air.
fn engine_alone(
    engine: Option<Engine>,
    site: Option<Site>,
    working_pa: Option<f64>,
) -> Option<EngineState> {
    let (engine, air, working) = (engine?, site?.atmosphere_pa, working_pa?);
    steaming::engine::run(&engine, working + air, air).ok()
}

/// The lowest set pressure among the safety valves, else the design pressure.
fn valve_pressure(plan: &Plan, taken: &mut Taken) -> Option<f64> {
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
    findings.extend(crate::fire::water(plan, plant, &judging));
    Ok(Run {
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
