//! The sentence of the duty: steam, power, water and feed.

use plan::Plan;
use reckoning::Verdict;
use reckoning::quantity::{BAR_GAUGE, KG, KG_PER_H, MINUTE, PERCENT, Quantity, RPM, WATT, show};
use steaming::consumption::Consumption;
use steaming::engine::EngineState;
use steaming::{Engine, Load};

use crate::answer::{Judged, worst};
use crate::question::{Answer, Question};
use crate::sentence::{list, wanting};
use crate::steam_answer::Steaming;

/// The demand at working pressure: in the loop where it runs, else with the exhaust let into the
/// open air.
pub(crate) fn duty(plan: &Plan, steaming: &Steaming, judged: &[Judged]) -> Answer {
    let question = Question::Duty;
    let Some(asked) = asked(steaming, worst(question, judged)) else {
        return wanting(question, steaming, "the demand for steam");
    };
    let pressure = plan.duty.pressure.typed().map_or("?", |typed| &typed.text);
    let unsaid = water_unsaid(plan);
    Answer {
        question,
        verdict: if unsaid.is_empty() {
            asked.verdict
        } else {
            asked.verdict.max(Some(Verdict::Unproved))
        },
        sentence: format!(
            "At {pressure} {}{}.{}{}{unsaid}",
            asked.words(steaming.engine.as_ref()),
            run(plan, asked.steam_kg_s),
            asked.how,
            steaming
                .consumption
                .as_ref()
                .map_or_else(String::new, |used| feed(used, steaming.valve_pa)),
        ),
    }
}

/// What is asked, with the verdict of its own rules where the loop runs.
fn asked(steaming: &Steaming, judged: Option<Verdict>) -> Option<Asked> {
    let settled = steaming.working_state();
    Some(
        match (settled, &steaming.engine_alone, steaming.plain_kg_s) {
            (Some(state), _, _) if state.demand_kg_s > 0.0 => Asked {
                engine: state.exhaust.and_then(|e| e.engine),
                steam_kg_s: state.demand_kg_s,
                verdict: judged,
                how: "",
            },
            (None, Some(engine), beside) => Asked {
                engine: Some(*engine),
                steam_kg_s: engine.steam_kg_s + beside.unwrap_or(0.0),
                verdict: Some(Verdict::Unproved),
                how: " That is with its exhaust let into the open air: against a blast it gives less.",
            },
            (None, None, Some(plain)) if steaming.engine.is_none() && is_plain(steaming) => Asked {
                engine: None,
                steam_kg_s: plain,
                verdict: Some(Verdict::Unproved),
                how: "",
            },
            _ => return None,
        },
    )
}

/// Steam is asked for without an engine of which anything is wanted.
fn is_plain(steaming: &Steaming) -> bool {
    !steaming
        .taken
        .gaps
        .iter()
        .any(|gap| gap.starts_with("engine."))
}

/// What is asked, and by whom.
struct Asked {
    engine: Option<EngineState>,
    steam_kg_s: f64,
    verdict: Option<Verdict>,
    how: &'static str,
}

impl Asked {
    fn words(&self, engine: Option<&Engine>) -> String {
        let demand = show::quantity(self.steam_kg_s, &KG_PER_H, 3);
        let Some(run) = &self.engine else {
            return format!("{demand} of steam is asked for");
        };
        let held = engine.map_or_else(String::new, |engine| held(engine, run));
        format!(
            "the engine asks for {demand} of steam and gives {} in its cylinders and {} at its \
             shaft{held}",
            show::quantity(run.indicated_w, &WATT, 2),
            show::quantity(run.net_w(), &WATT, 2),
        )
    }
}

/// What was found for the power that is asked.
fn held(engine: &Engine, run: &EngineState) -> String {
    let admitted = &run.admitted;
    match engine.load {
        Load::Open { .. } => String::new(),
        Load::Throttled { .. } if admitted.pa < admitted.open_pa => format!(
            ", its regulator closed to {} of the pressure of admission",
            show::quantity(admitted.pa / admitted.open_pa, &PERCENT, 2)
        ),
        Load::Throttled { .. } => ", its regulator open".to_owned(),
        Load::BySpeed { .. } => format!(" at {}", show::quantity(admitted.turns_per_s, &RPM, 3)),
        Load::ByCutOff { .. } => format!(
            " at a cut-off of {}",
            show::quantity(admitted.cut_off, &PERCENT, 2)
        ),
    }
}

/// Water of the run that is asked.
fn run(plan: &Plan, steam_kg_s: f64) -> String {
    plan.duty.run.typed().map_or_else(String::new, |run| {
        let mass = show::quantity(steam_kg_s * run.value.si(), &KG, 2);
        format!("; a run of {} takes {mass} of water", run.text)
    })
}

/// What is asked of the feed, and how long the water lasts without it.
fn feed(used: &Consumption, against_pa: Option<f64>) -> String {
    let minutes = |s: f64| show::quantity(s, &MINUTE, 2);
    let asked = show::quantity(used.feed_asked_kg_s, &KG_PER_H, 2);
    let against = against_pa.map_or_else(String::new, |pa| {
        format!(" against {}", show::quantity(pa, &BAR_GAUGE, 2))
    });
    let lasts = used.without_feed_s.map_or_else(String::new, |s| {
        format!(
            " Without feed the water above the lowest level lasts {}.",
            minutes(s)
        )
    });
    let tank = used.tank_s.map_or_else(String::new, |s| {
        format!(" The tank holds the feed of {}.", minutes(s))
    });
    format!(" The feed should give {asked}{against}.{lasts}{tank}")
}

/// Why it cannot be said whether the water lasts the run; empty where it can.
fn water_unsaid(plan: &Plan) -> String {
    let wanted: Vec<String> = [
        (plan.duty.run.get().is_none(), plan.duty.run.path()),
        (
            plan.boiler.water_level.lowest.get().is_none(),
            plan.boiler.water_level.lowest.path(),
        ),
        (plan.feed.tank.is_emptied(), plan.feed.tank.path()),
    ]
    .into_iter()
    .chain(
        plan.feed
            .means
            .iter()
            .map(|means| (means.rate.is_emptied(), means.rate.path())),
    )
    .filter(|(missing, _)| *missing)
    .map(|(_, path)| path.to_owned())
    .collect();
    if wanted.is_empty() {
        return String::new();
    }
    format!(
        " Whether the water lasts cannot be said: the plan does not give {}.",
        list(&wanted)
    )
}
