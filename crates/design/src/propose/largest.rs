//! The question turned round: given this boiler, the largest engine that it holds at working
//! pressure, and what binds.
//!
//! The engine grows in one of two ways, by its bore and stroke at the present shape and speed, or
//! by its speed at the present size, and with it grow blast, fire and demand. Sizes are walked
//! from ten times the present one down, because the fire may hold more than one stretch of them;
//! the largest that keeps every rule of steaming which a larger engine breaks is then found
//! between two steps. It is found twice: with every number at its value, and counting the doubt,
//! where a rule is kept only if it is kept in nine cases of ten.

use plan::{Plan, put};
use plant::Plant;
use reckoning::quantity::{Quantity, RPM};
use reckoning::{Finding, Verdict, Working};
use steaming::Judging;

use super::choice::mm;
use super::draft::size_mm;
use super::fire::door_of;

/// How the engine grows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// Bore and stroke together, at the present speed.
    Size,
    /// Speed, at the present bore and stroke.
    Speed,
}

/// Whether the doubt about assumed numbers is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doubt {
    /// Every number at its value.
    Left,
    /// A rule must be kept in nine cases of ten of what may be true.
    Counted,
}

/// What stands above a bound.
#[derive(Clone, Debug, PartialEq)]
pub enum Binds {
    /// The rules that the next larger engine breaks: id, and what is found there.
    Rules(Vec<(&'static str, String)>),
    /// Above it the fire has no balance.
    NoBalance,
    /// Nothing up to ten times the present engine.
    Nothing,
}

/// A largest engine.
#[derive(Clone, Debug, PartialEq)]
pub struct Bound {
    /// How it grew.
    pub way: Way,
    /// Whether the doubt is counted.
    pub doubt: Doubt,
    /// Bore over present bore, or speed over present speed.
    pub share: f64,
    /// Bore and stroke, mm.
    pub bore_stroke_mm: (f64, f64),
    /// Speed, a minute.
    pub rpm: f64,
    /// Steam that it takes, kg/s.
    pub steam_kg_s: f64,
    /// What stands above it.
    pub binds: Binds,
}

/// The largest engines that a boiler holds.
#[derive(Clone, Debug, PartialEq)]
pub struct Largest {
    /// Steam that the present engine takes, kg/s; `None` where the fire has no balance with it.
    pub present_kg_s: Option<f64>,
    /// The bounds found; a way without one holds no engine down to a tenth of the present.
    pub bounds: Vec<Bound>,
}

/// The plan does not go far enough for the question.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("the fire cannot be lit; wanted are {}", .0.join(", "))]
pub struct NotAsked(pub Vec<String>);

/// Steps of the walk from ten times to a tenth, in equal ratios.
const WALK: i32 = 80;
/// Steps of the walk where the doubt is counted.
const COARSE: i32 = 20;
/// Halvings of a step.
const HALVINGS: usize = 10;
const COARSE_HALVINGS: usize = 5;

/// What a larger engine breaks.
const BROKEN_BY_MORE: &[&str] = &[
    "steaming.holds",
    "steaming.bed-lift",
    "steaming.back-pressure",
    "steaming.compression",
    "steaming.disengagement",
    "steaming.coil-loss",
];

/// The largest engines that the boiler of a plan holds at its working pressure.
///
/// # Errors
/// [`NotAsked`] names the fields that the fire waits for.
pub fn largest(plan: &Plan) -> Result<Largest, NotAsked> {
    let plant = plant::resolve(plan).plant;
    let door = door_of(plan, &plant);
    let mut wanted = door.taken.gaps;
    if plan.duty.pressure.value().is_none() {
        wanted.push(plan.duty.pressure.path().to_owned());
    }
    if door.inputs.is_none() || !wanted.is_empty() {
        return Err(NotAsked(wanted));
    }
    let seeking = Seeking {
        plan,
        plant: &plant,
    };
    let mut bounds = Vec::new();
    for way in [Way::Size, Way::Speed] {
        let Some(likely) = seeking.bound(way, Doubt::Left, 1.0) else {
            continue;
        };
        let share = likely.share;
        bounds.push(likely);
        bounds.extend(seeking.bound(way, Doubt::Counted, share));
    }
    let present = super::fire::state(plan, &plant);
    Ok(Largest {
        present_kg_s: present.map(|state| state.demand_kg_s),
        bounds,
    })
}

struct Seeking<'a> {
    plan: &'a Plan,
    plant: &'a Plant,
}

/// What an engine of some share does to the fire.
struct Tried {
    steam_kg_s: f64,
    broken: Vec<(&'static str, String)>,
}

impl Seeking<'_> {
    /// The largest share that breaks nothing. The walk begins at `top` where the doubt is counted:
    /// nothing is kept in nine cases of ten that is not kept at the values.
    fn bound(&self, way: Way, doubt: Doubt, top: f64) -> Option<Bound> {
        let (most, steps, halvings) = match doubt {
            Doubt::Left => (10.0, WALK, HALVINGS),
            Doubt::Counted => (top, COARSE, COARSE_HALVINGS),
        };
        let ratio = (MOST_DOWN * most).powf(1.0 / f64::from(steps));
        let at = |step: i32| most / ratio.powi(step);
        let holds = |share: f64| {
            let tried = self.tried(way, share, doubt);
            tried.filter(|tried| tried.broken.is_empty())
        };
        let (step, mut found) = (0..=steps).find_map(|step| Some((step, holds(at(step))?)))?;
        let mut low = at(step);
        let mut binds = Binds::Nothing;
        if step > 0 {
            let mut high = at(step - 1);
            for _ in 0..halvings {
                let middle = (low * high).sqrt();
                match holds(middle) {
                    Some(tried) => (low, found) = (middle, tried),
                    None => high = middle,
                }
            }
            binds = match self.tried(way, high, doubt) {
                Some(tried) => Binds::Rules(tried.broken),
                None => Binds::NoBalance,
            };
        }
        Some(Bound {
            way,
            doubt,
            share: low,
            bore_stroke_mm: self.bore_stroke(way, low)?,
            rpm: self.rpm(way, low)?,
            steam_kg_s: found.steam_kg_s,
            binds,
        })
    }

    fn bore_stroke(&self, way: Way, share: f64) -> Option<(f64, f64)> {
        let engine = &self.plan.engine;
        let share = if way == Way::Size { share } else { 1.0 };
        Some((
            share * size_mm(&engine.bore)?,
            share * size_mm(&engine.stroke)?,
        ))
    }

    fn rpm(&self, way: Way, share: f64) -> Option<f64> {
        let share = if way == Way::Speed { share } else { 1.0 };
        Some(share * RPM.from_si(self.plan.engine.speed.value()?.si()))
    }

    /// The plan with another engine.
    fn with(&self, way: Way, share: f64) -> Option<Plan> {
        let mut plan = self.plan.clone();
        let (bore, stroke) = self.bore_stroke(way, share)?;
        let mut fields = vec![
            ("engine.bore", format!("\"{bore} mm\"")),
            ("engine.stroke", format!("\"{stroke} mm\"")),
            ("engine.speed", format!("\"{} rpm\"", self.rpm(way, share)?)),
        ];
        if let (Some(rod), Way::Size) = (size_mm(&plan.engine.rod), way) {
            fields.push(("engine.rod", mm(share * rod)));
        }
        for (path, literal) in fields {
            put(&mut plan, path, &literal).ok()?;
        }
        Some(plan)
    }

    /// The fire with another engine; `None` where it has no balance.
    fn tried(&self, way: Way, share: f64, doubt: Doubt) -> Option<Tried> {
        let plan = self.with(way, share)?;
        let door = door_of(&plan, self.plant);
        let inputs = door.inputs?;
        let working_pa = plan.duty.pressure.value()?.si();
        let sweep = steaming::sweep(&inputs, &[working_pa]).ok()?;
        let state = sweep.state_at(working_pa)?;
        let draws = match doubt {
            Doubt::Left => None,
            Doubt::Counted => Some(steaming::draws(&inputs, working_pa, &door.taken.assumed).ok()?),
        };
        let findings = steaming::findings(&Judging {
            sweep: &sweep,
            working_pa,
            valve_pa: working_pa,
            draws: draws.as_ref(),
            working: &Working::new(),
        });
        let broken = findings.into_iter().filter(breaks);
        Some(Tried {
            steam_kg_s: state.demand_kg_s,
            broken: broken.map(|f| (f.rule.id, f.says)).collect(),
        })
    }
}

/// How far below the largest the walk goes: to a tenth of the present engine.
const MOST_DOWN: f64 = 10.0;

fn breaks(finding: &Finding) -> bool {
    finding.verdict > Verdict::MetOnCondition && BROKEN_BY_MORE.contains(&finding.rule.id)
}
