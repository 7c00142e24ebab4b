//! The first proposal: from duty, fuel, form, room, mass and stock on hand to a whole plan.
//!
//! A walk of steps, each a choice with its reason, in the order in which a boiler is thought out:
//! demand at the high end of its range, barrel from room and stock, grate, tubes by packing,
//! nozzle by the draught balance, walls up to stock, valve, feed, gauges. What the maker gave is
//! kept, never overridden. Rules of the trade give a first bracket and no more: what decides is
//! the geometry, the fire and the proof that judge every plan, and the result is checked by them
//! as a whole. [`largest`] turns the question round. A form of boiler is a module of its own with its own steps. The search is bounded
//! and knows no chance and no clock.

mod choice;
mod demand;
mod draft;
mod fire;
mod largest;
mod stock;
mod vertical;
mod weigh;

use plan::section::{BoilerForm, Fuel};
use plan::{Choice as _, Document, Filling, Plan, Problem, Workshop};

use crate::beside::Beside;
use crate::check::Checked;

pub use choice::{By, Choice, Chosen};
pub use largest::{Binds, Bound, Doubt, Largest, NotAsked, Way, largest};
pub use weigh::Forbidden;

use demand::Demand;
use draft::Draft;
use stock::Shop;
use weigh::Weighed;

/// A whole plan, how it came about, and what was found of it.
#[derive(Clone, Debug)]
pub struct Proposal {
    /// The text: the maker's own, with the fields filled that were empty and the reasons as
    /// comments above them.
    pub text: String,
    /// The steps in their order.
    pub steps: Vec<Choice>,
    /// The check of the plan.
    pub checked: Checked,
    /// Rules of the trade beside it, none of which decided anything; none where the fire has no
    /// balance.
    pub beside: Vec<Beside>,
    /// The questions that forbid it; none where each is met or met on condition.
    pub forbidden: Vec<Forbidden>,
}

/// Why nothing was proposed.
#[derive(Clone, Debug, thiserror::Error)]
pub enum NotProposed {
    /// The text has faults; a proposal would rest on what it does not say.
    #[error("the beginning has faults; mend them first")]
    Faulty(Vec<Problem>),
    /// Fields without which there is no duty.
    #[error("a proposal begins with the duty; wanted are {}", .0.join(", "))]
    Wanted(Vec<String>),
    /// The form or the fuel has no walk yet.
    #[error("there is no walk yet for {what}; there is one for {}", .worked.join(", "))]
    NoWalk {
        /// The form or fuel as the plan names it.
        what: String,
        /// What there is a walk for.
        worked: Vec<&'static str>,
    },
    /// The engine has no balance at the working pressure.
    #[error("the engine takes no steam at the working pressure")]
    NoDemand,
    /// A filled field has no place in the text as it is written.
    #[error("the text has no place for what was chosen: {0}")]
    NoPlace(Box<Problem>),
}

/// Proposes a plan from the text of its beginning; `name` is the name of the file.
///
/// # Errors
/// [`NotProposed`] says what is wanted. A plan that cannot meet its duty is no error: it is given
/// with the question that forbids it.
pub fn propose(text: &str, name: &str, workshop: &Workshop) -> Result<Proposal, NotProposed> {
    let mut document = Document::<Plan>::open(text, name)
        .map_err(|problem| NotProposed::Faulty(vec![*problem]))?;
    let read = document.read();
    if !read.problems.is_empty() {
        return Err(NotProposed::Faulty(read.problems));
    }
    let plan = read.content;
    let wanted = wanted(&plan);
    if !wanted.is_empty() {
        return Err(NotProposed::Wanted(wanted));
    }
    let form = walk_for(&plan)?;
    let demand = Demand::of(&plan).ok_or(NotProposed::NoDemand)?;
    let metal = plan.boiler.metal.get().map_or(METAL, String::as_str);
    let shop = Shop::of(workshop, metal);
    let walked = (form.walk)(&Draft::of(plan), (&shop, workshop), &demand);
    let (draft, weighed) = walked.ok_or(NotProposed::NoDemand)?;
    document
        .fill(&fillings(&draft))
        .map_err(NotProposed::NoPlace)?;
    let state = weighed.checked.steaming.working_state();
    let beside = state.map_or_else(Vec::new, |state| {
        crate::beside(&draft.plan, &weighed.checked.resolved.plant, state)
    });
    Ok(Proposal {
        beside,
        text: document.text().to_owned(),
        steps: draft.choices,
        checked: weighed.checked,
        forbidden: weighed.forbidden,
    })
}

/// The metal of a boiler of which none is named.
const METAL: &str = "CW024A";

/// Where a walk ended: the plan and what was found of it; nothing where there was no place to begin.
type Walked = Option<(Draft, Weighed)>;

/// The walk of one form of boiler. A form that comes later is a module with one of these.
struct FormWalk {
    form: BoilerForm,
    /// Fuels that it is fired with.
    fuels: &'static [Fuel],
    walk: fn(&Draft, (&Shop, &Workshop), &Demand) -> Walked,
}

/// Every walk there is.
static WALKS: &[FormWalk] = &[FormWalk {
    form: BoilerForm::VerticalFireTubes,
    fuels: &[Fuel::Anthracite, Fuel::SteamCoal],
    walk: vertical::walk,
}];

/// The walk for the form and the fuel of a plan that names both.
fn walk_for(plan: &Plan) -> Result<&'static FormWalk, NotProposed> {
    let of_form = |walk: &&FormWalk| plan.form.value() == Some(walk.form);
    let Some(walk) = WALKS.iter().find(of_form) else {
        let worked = WALKS.iter().map(|walk| walk.form.name()).collect();
        return Err(no_walk(plan.form.typed(), worked));
    };
    let fuel = &plan.fire.fuel;
    if fuel.value().is_some_and(|fuel| walk.fuels.contains(&fuel)) {
        return Ok(walk);
    }
    let worked = walk.fuels.iter().map(|fuel| fuel.name()).collect();
    Err(no_walk(fuel.typed(), worked))
}

fn no_walk<T>(typed: Option<&reckoning::Typed<T>>, worked: Vec<&'static str>) -> NotProposed {
    NotProposed::NoWalk {
        what: typed.map_or("a plan without it".to_owned(), |typed| typed.text.clone()),
        worked,
    }
}

/// The fields without which there is nothing to size for.
fn wanted(plan: &Plan) -> Vec<String> {
    let (duty, engine) = (&plan.duty, &plan.engine);
    [
        (plan.form.get().is_none(), plan.form.path()),
        (duty.pressure.get().is_none(), duty.pressure.path()),
        (duty.run.get().is_none(), duty.run.path()),
        (engine.cylinders.get().is_none(), engine.cylinders.path()),
        (engine.acting.get().is_none(), engine.acting.path()),
        (engine.bore.get().is_none(), engine.bore.path()),
        (engine.stroke.get().is_none(), engine.stroke.path()),
        (engine.speed.get().is_none(), engine.speed.path()),
        (engine.cut_off.get().is_none(), engine.cut_off.path()),
        (plan.fire.fuel.get().is_none(), plan.fire.fuel.path()),
    ]
    .into_iter()
    .filter(|(wanted, _)| *wanted)
    .map(|(_, path)| path.to_owned())
    .collect()
}

/// What is to be written: each field that a step chose, the reason above the first of them.
fn fillings(draft: &Draft) -> Vec<Filling> {
    let mut fillings = Vec::new();
    for choice in &draft.choices {
        let mut remark = remark(choice);
        for field in choice.fields.iter().filter(|f| f.by == By::Step) {
            fillings.push(Filling {
                path: field.path.clone(),
                literal: field.literal.clone(),
                remark: std::mem::take(&mut remark),
            });
        }
    }
    fillings
}

/// Width of a comment.
const WIDTH: usize = 92;

/// The reason of a choice in lines.
fn remark(choice: &Choice) -> Vec<String> {
    let text = format!(
        "{}: between {}: {} ({})",
        choice.step,
        choice.between,
        choice.reason,
        choice.weakest.words()
    );
    let mut lines = Vec::new();
    let mut line = String::new();
    for word in text.split(' ') {
        if !line.is_empty() && line.chars().count() + 1 + word.chars().count() > WIDTH {
            lines.push(std::mem::take(&mut line));
        }
        if !line.is_empty() {
            line.push(' ');
        }
        line.push_str(word);
    }
    lines.push(line);
    lines
}
