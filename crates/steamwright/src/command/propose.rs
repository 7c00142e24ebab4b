//! `propose`: from the beginning of a plan to a whole one, a reason beside every choice.

use clap::Args;
use design::propose::{By, Choice, Forbidden, NotProposed, Proposal, propose};
use plan::Workshop;
use serde_json::{Value, json};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use super::files;
use super::page::{Page, capital};
use crate::output::{Answer, Failure};

/// What `propose` takes.
#[derive(Args)]
pub(crate) struct Arguments {
    /// The beginning of a plan: form, duty, engine, fuel, room, and whatever else is fixed
    beginning: PathBuf,
    /// The workshop file; else `workshop.toml` beside the beginning or one folder up
    #[arg(long)]
    workshop: Option<PathBuf>,
    /// File to write the plan to; one that is there already is left alone
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
}

/// Proposes, writes the plan, and gives the account.
pub(crate) fn run(arguments: &Arguments) -> Result<Answer, Failure> {
    let inputs = files::read(&arguments.beginning, arguments.workshop.as_deref())?;
    files::readable(&inputs)?;
    if !inputs.problems.is_empty() {
        return Err(Failure {
            says: "the files have faults; a proposal would rest on what they do not say".to_owned(),
            faults: inputs
                .problems
                .iter()
                .flat_map(|located| located.frame.lines().map(str::to_owned))
                .collect(),
        });
    }
    let text = files::text(&arguments.beginning)?;
    let name = arguments.beginning.display().to_string();
    let proposal = propose(&text, &name, &inputs.workshop).map_err(|why| refused(&why))?;
    if let Some(out) = &arguments.out {
        write(out, &proposal.text)?;
    }
    let mut words = account(&proposal, inputs.workshop_file.as_deref());
    match &arguments.out {
        // Writing to a String cannot fail.
        Some(out) => {
            let _: std::fmt::Result = writeln!(words, "The plan is in {}.", out.display());
        }
        None => {
            let _: std::fmt::Result = writeln!(words, "The plan:\n\n{}", proposal.text);
        }
    }
    Ok(Answer {
        words,
        json: tell(&proposal, arguments.out.as_deref()),
        code: u8::from(!proposal.forbidden.is_empty()),
    })
}

fn refused(why: &NotProposed) -> Failure {
    Failure {
        says: format!("Nothing is proposed: {why}."),
        faults: Vec::new(),
    }
}

/// Writes a file that is not there yet.
fn write(path: &Path, text: &str) -> Result<(), Failure> {
    use std::io::Write as _;
    let fails = |fault: std::io::Error| Failure {
        says: format!("{} cannot be written", path.display()),
        faults: vec![match fault.kind() {
            std::io::ErrorKind::AlreadyExists => {
                "it is there already, and is left alone".to_owned()
            }
            _ => fault.to_string(),
        }],
    };
    let mut file = std::fs::File::create_new(path).map_err(fails)?;
    file.write_all(text.as_bytes()).map_err(fails)
}

/// One line a step, then what the check says of the whole.
fn account(proposal: &Proposal, workshop: Option<&Path>) -> String {
    let mut page = Page::default();
    let stock = workshop.map_or(
        format!(
            "Without a {}: sizes are those of the standards.",
            <Workshop as plan::File>::NAME
        ),
        |file| format!("Stock on hand is that of {}.", file.display()),
    );
    page.paragraph("", &stock);
    page.blank();
    for step in &proposal.steps {
        page.line(&capital(step.step));
        page.paragraph("  ", &told(step));
    }
    page.blank();
    for answer in &proposal.checked.answers {
        let Some(verdict) = answer.verdict else {
            continue;
        };
        let name = capital(answer.question.name());
        page.line(&format!("{name}: {}", verdict.words()));
        page.paragraph("  ", &answer.sentence);
    }
    page.blank();
    if !proposal.beside.is_empty() {
        page.line("Beside it, what the trade has as rules; none of them chose anything");
        for beside in &proposal.beside {
            page.paragraph("  - ", &beside.says);
        }
        page.blank();
    }
    page.paragraph("", &end(&proposal.forbidden));
    for forbidden in &proposal.forbidden {
        for says in forbidden.says.iter().take(SHOWN) {
            page.paragraph("  - ", says);
        }
    }
    page.blank();
    page.text
}

/// Findings of a question that forbids, as far as they are listed.
const SHOWN: usize = 4;

fn told(step: &Choice) -> String {
    if step.is_kept() {
        return format!("{}; kept", step.says());
    }
    format!(
        "{}; between {}; {} ({})",
        step.says(),
        step.between,
        step.reason,
        step.weakest.words()
    )
}

fn end(forbidden: &[Forbidden]) -> String {
    if forbidden.is_empty() {
        return "Every question that is asked is met or met on condition; `check` lists the \
                conditions. It is a first proposal, not a certificate: your club's boiler \
                tester has the word before metal is cut."
            .to_owned();
    }
    let named: Vec<String> = forbidden
        .iter()
        .map(|f| format!("{} ({})", f.question.name(), f.verdict.words()))
        .collect();
    format!(
        "No plan was found that meets every question. What forbids this one: {}.",
        named.join(", ")
    )
}

fn tell(proposal: &Proposal, out: Option<&Path>) -> Value {
    let steps: Vec<Value> = proposal.steps.iter().map(step).collect();
    let questions: Vec<Value> = proposal
        .checked
        .answers
        .iter()
        .map(|a| {
            json!({
                "question": a.question.name(),
                "verdict": a.verdict.map(reckoning::Verdict::words),
                "sentence": a.sentence,
            })
        })
        .collect();
    let forbidden: Vec<Value> = proposal
        .forbidden
        .iter()
        .map(|f| {
            json!({
                "question": f.question.name(),
                "verdict": f.verdict.words(),
                "says": f.says,
            })
        })
        .collect();
    let beside: Vec<&str> = proposal.beside.iter().map(|b| b.says.as_str()).collect();
    json!({
        "steps": steps,
        "beside": beside,
        "questions": questions,
        "forbidden": forbidden,
        "out": out.map(|path| path.display().to_string()),
        "text": proposal.text,
    })
}

fn step(choice: &Choice) -> Value {
    let fields: Vec<Value> = choice
        .fields
        .iter()
        .map(|field| {
            json!({
                "field": field.path,
                "value": field.shown(),
                "kept": field.by == By::Maker,
            })
        })
        .collect();
    json!({
        "step": choice.step,
        "fields": fields,
        "between": choice.between,
        "reason": choice.reason,
        "weakest_origin": choice.weakest.words(),
    })
}
