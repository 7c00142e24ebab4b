//! `steamwright card`: the route card of a turned fitting.

mod json;
mod words;

use super::files::{self, Inputs};
use crate::output::{Answer, Failure};
use clap::Args;
use design::bench::{Bench, Taking, bench, tools};
use reckoning::Verdict;
use std::path::{Path, PathBuf};

/// What was asked.
#[derive(Args)]
pub(crate) struct Arguments {
    /// The plan file
    plan: PathBuf,
    /// Id of a fitting of the plan; without it, the cards of all
    fitting: Option<String>,
    /// The workshop file; else `workshop.toml` beside the plan or one folder up
    #[arg(long, value_name = "FILE")]
    workshop: Option<PathBuf>,
}

/// The cards with the files that they come from.
struct Cards<'a> {
    plan_file: &'a Path,
    workshop_file: &'a Path,
    inputs: &'a Inputs,
    taking: Taking,
    benches: Vec<Bench>,
}

/// Reads the files and writes the cards.
pub(crate) fn run(asked: &Arguments) -> Result<Answer, Failure> {
    let inputs = files::read(&asked.plan, asked.workshop.as_deref())?;
    files::readable(&inputs)?;
    let Some(workshop_file) = &inputs.workshop_file else {
        return Err(Failure {
            says: format!("no workshop was found for {}", asked.plan.display()),
            faults: vec![
                "a card is written for the tools of a workshop".to_owned(),
                "put workshop.toml beside the plan or one folder up, or name a file with \
                 --workshop"
                    .to_owned(),
            ],
        });
    };
    let benches = bench(&inputs.plan, &inputs.workshop);
    let cards = Cards {
        plan_file: &asked.plan,
        workshop_file,
        taking: tools(&inputs.workshop).taking,
        benches: wanted(benches, asked, &inputs)?,
        inputs: &inputs,
    };
    Ok(Answer {
        words: words::cards(&cards),
        json: json::cards(&cards),
        code: cards.code(),
    })
}

/// The fitting that is asked for, or all of them.
fn wanted(benches: Vec<Bench>, asked: &Arguments, inputs: &Inputs) -> Result<Vec<Bench>, Failure> {
    let shown = asked.plan.display();
    let refused = |says: String, told: String| {
        let frames = inputs.problems.iter().flat_map(|p| p.frame.lines());
        Err(Failure {
            says,
            faults: std::iter::once(told)
                .chain(frames.map(str::to_owned))
                .collect(),
        })
    };
    if benches.is_empty() {
        return refused(
            format!("{shown} describes no fitting"),
            "a card is written for each [[fitting]] of a plan".to_owned(),
        );
    }
    let Some(id) = &asked.fitting else {
        return Ok(benches);
    };
    let ids: Vec<String> = benches.iter().map(|b| b.id.clone()).collect();
    let found: Vec<Bench> = benches.into_iter().filter(|b| b.id == *id).collect();
    if found.is_empty() {
        return refused(
            format!("{shown} has no fitting `{id}`"),
            format!("it has {}", ids.join(", ")),
        );
    }
    Ok(found)
}

impl Cards<'_> {
    fn code(&self) -> u8 {
        let met = |b: &Bench| b.verdict() <= Verdict::MetOnCondition;
        u8::from(!(self.inputs.problems.is_empty() && self.benches.iter().all(met)))
    }
}
