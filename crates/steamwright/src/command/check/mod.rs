//! `check`: one sentence a question, worst first, then what was found.

mod json;
mod words;

use clap::Args;
use reckoning::Verdict;
use serde_json::Value;
use std::path::PathBuf;

use super::files::{self, Inputs};
use crate::output::{Answer, Failure};

/// What `check` takes.
#[derive(Args)]
pub(crate) struct Arguments {
    /// The plan file
    plan: PathBuf,
    /// The workshop file; else `workshop.toml` beside the plan or one folder up
    #[arg(long)]
    workshop: Option<PathBuf>,
    /// Tell every check, met ones and those of the other rule sets too
    #[arg(long)]
    all: bool,
    /// Tell of one part and what lies in it (`firebox`, `bush.valve`)
    #[arg(long, value_name = "ID")]
    part: Option<String>,
    /// Show the working of each finding told
    #[arg(long)]
    working: bool,
}

/// What is wanted in words.
pub(crate) struct Wanted<'a> {
    pub(crate) all: bool,
    pub(crate) part: Option<&'a str>,
    pub(crate) working: bool,
}

/// Checks a plan.
pub(crate) fn run(arguments: &Arguments) -> Result<Answer, Failure> {
    let inputs = files::read(&arguments.plan, arguments.workshop.as_deref())?;
    let wanted = Wanted {
        all: arguments.all,
        part: arguments.part.as_deref(),
        working: arguments.working,
    };
    answer(&inputs, &wanted)
}

/// Checks the example that is built in.
pub(crate) fn example() -> Result<Answer, Failure> {
    let wanted = Wanted {
        all: false,
        part: None,
        working: false,
    };
    let mut answer = answer(&files::example(), &wanted)?;
    let head = "No command was given, so this is the example plan. `steamwright check PLAN` \
                checks yours,\n`steamwright --help` tells the rest.\n\n";
    answer.words.insert_str(0, head);
    Ok(answer)
}

fn answer(inputs: &Inputs, wanted: &Wanted<'_>) -> Result<Answer, Failure> {
    let checked = design::check(&inputs.plan, &inputs.workshop);
    if let Some(part) = wanted.part {
        known_part(&checked, part)?;
    }
    let against = checked
        .answers
        .iter()
        .any(|a| matches!(a.verdict, Some(Verdict::NotMet | Verdict::Unproved)));
    let mut told = json::tell(&checked);
    if let Value::Object(keys) = &mut told {
        keys.insert("problems".to_owned(), files::problems(&inputs.problems));
    }
    let mut text = files::faults(&inputs.problems);
    text.push_str(&words::tell(&checked, wanted));
    Ok(Answer {
        words: text,
        json: told,
        code: u8::from(against || !inputs.problems.is_empty()),
    })
}

fn known_part(checked: &design::Checked, part: &str) -> Result<(), Failure> {
    let mut names: Vec<&str> = checked.parts.iter().map(|p| p.id.as_str()).collect();
    names.extend(checked.judged.iter().map(|j| j.finding.place.as_str()));
    names.sort_unstable();
    names.dedup();
    if names.iter().any(|name| design::lies_in(name, part)) {
        return Ok(());
    }
    Err(Failure {
        says: format!("the plan has no part `{part}`; it has:"),
        faults: names.into_iter().map(str::to_owned).collect(),
    })
}
