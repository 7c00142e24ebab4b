//! The sentences of steaming and proof.

use plan::Plan;
use proof::Proof;
use reckoning::Verdict;
use reckoning::quantity::{KG_PER_H, show};
use steaming::{FireState, NotSettled};

use crate::answer::{Judged, counted, foremost, worst};
use crate::question::{Answer, Question};
use crate::steam_answer::Steaming;

/// Whether the fire makes the steam; of a boiler with two fires, whether each does.
pub(crate) fn fire(steaming: &Steaming, judged: &[Judged]) -> Answer {
    let question = Question::Steaming;
    let (mut verdict, mut sentence) = match one_fire(steaming) {
        Some(sentence) => (worst(question, judged), sentence),
        None => {
            let answer = wanting(question, steaming, "the fire");
            (answer.verdict, answer.sentence)
        }
    };
    if let Some(on_gas) = &steaming.on_gas {
        match one_fire(on_gas) {
            Some(told) => sentence.push_str(&format!(" On gas: {told}")),
            None => {
                let answer = wanting(question, on_gas, "the gas fire");
                verdict = verdict.max(answer.verdict);
                sentence.push_str(&format!(" {}", answer.sentence));
            }
        }
    }
    Answer {
        question,
        verdict,
        sentence,
    }
}

/// What one fire does by itself, and how surely; `None` where it was not run.
fn one_fire(steaming: &Steaming) -> Option<String> {
    let run = steaming.run.as_ref()?;
    let refusal = steaming.working_pa.and_then(|pa| run.sweep.refusal_at(pa));
    let outlook = match (&run.outlook, refusal) {
        (Some(outlook), _) => outlook.sentence.clone(),
        (None, Some(NotSettled::NotEnoughAir(starved))) => format!("The flame has {starved}."),
        (None, Some(why)) => format!("The fire has no balance at working pressure: {why}."),
        (None, None) => steaming.working_state().map_or_else(
            || "The fire has no balance at working pressure.".to_owned(),
            |state| {
                format!(
                    "Nothing asks for steam; the fire makes {}.",
                    show::quantity(state.evaporation_kg_s, &KG_PER_H, 3)
                )
            },
        ),
    };
    let band = run.band.as_ref().map_or(String::new(), |band| {
        let most = band.dominant().map_or(String::new(), |share| {
            format!(
                ", and most of the doubt is {} ({})",
                share.entering.assumption.meaning, share.entering.assumption.id
            )
        });
        format!(
            " Between {} and {} in eight cases of ten{most}.",
            show::figures(band.low, 3),
            show::figures(band.high, 3)
        )
    });
    Some(format!("{outlook}{band}"))
}

/// Whether every pressure part is strong enough.
pub(crate) fn proof(plan: &Plan, proof: &Proof, judged: &[Judged]) -> Answer {
    let question = Question::Proof;
    let typed = plan.boiler.design_pressure.typed();
    let at = typed.map_or("no pressure, for none is named", |typed| &typed.text);
    let first = foremost(question, judged)
        .filter(|f| f.verdict != Verdict::Met)
        .map_or(String::new(), |f| {
            format!(" First: {}: {}", f.place, f.says)
        });
    Answer {
        question,
        verdict: worst(question, judged),
        sentence: format!(
            "For {at} by the set `{}`, {}.{first}",
            proof.leads.key,
            counted(question, judged)
        ),
    }
}

/// An answer that cannot be given for want of plan fields, or because the loop has no balance.
pub(crate) fn wanting(question: Question, steaming: &Steaming, what: &str) -> Answer {
    let why = match &steaming.fault {
        Some(fault) => format!("it has no balance: {fault}"),
        None => format!("the plan does not give {}", list(&steaming.taken.gaps)),
    };
    Answer {
        question,
        verdict: Some(Verdict::Unproved),
        sentence: format!("Of {what} nothing can be said: {why}."),
    }
}

/// Up to four names, and how many more.
pub(crate) fn list(names: &[String]) -> String {
    const SHOWN: usize = 4;
    let shown = names
        .iter()
        .take(SHOWN)
        .cloned()
        .collect::<Vec<_>>()
        .join(", ");
    match names.len().checked_sub(SHOWN) {
        Some(more) if more > 0 => format!("{shown} and {more} more"),
        _ => shown,
    }
}

impl Steaming {
    /// The fire, and the second one of a boiler that has two.
    pub fn fires(&self) -> impl Iterator<Item = &Self> {
        std::iter::once(self).chain(self.on_gas.as_deref())
    }

    /// The state at working pressure.
    #[must_use]
    pub fn working_state(&self) -> Option<&FireState> {
        self.run.as_ref()?.sweep.state_at(self.working_pa?)
    }
}
