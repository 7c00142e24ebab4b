//! The cards as a page: what to do, row by row, then why it may be done so.

use super::Cards;
use crate::command::files;
use design::bench::{Bench, Written};
use making::{RowText, SettingText};
use reckoning::quantity::show;
use reckoning::{Finding, Verdict};
use std::path::Path;

/// The widest line.
const WIDTH: usize = 100;
/// Rule of the truth between settings.
const TRUTH: &str = "making.truth";

/// Every card, the problems of the files first.
pub(super) fn cards(asked: &Cards<'_>) -> String {
    let mut out = files::faults(&asked.inputs.problems);
    for (place, bench) in asked.benches.iter().enumerate() {
        if place > 0 {
            out += "\n\n";
        }
        out += &page(bench, asked.plan_file);
    }
    out += &foot(asked);
    out
}

fn page(bench: &Bench, plan: &Path) -> String {
    let mut out = folded("ROUTE CARD  ", &format!("{}: {}", bench.id, bench.name));
    let mut facts = bench.from.clone();
    if let Some(count) = bench.count {
        facts.insert(0, format!("{count} wanted"));
    }
    out += &folded("            ", &facts.join("; "));
    out += &"-".repeat(WIDTH);
    out += "\n";
    out += &folded("Answer      ", &answer(bench));
    let picture = format!("steamwright draw {} {}", plan.display(), bench.id);
    out += &folded("Drawing     ", &picture);
    match &bench.card {
        Ok(card) => out += &written(card),
        Err(why) => {
            out += &folded("No card     ", &sentence(&why.to_string()));
            out += &list("Missing", bench.gaps.iter().cloned());
            out += &list("In the drawing", bench.drawing.iter().map(told));
        }
    }
    out
}

fn answer(bench: &Bench) -> String {
    let verdict = bench.verdict();
    let means = match verdict {
        Verdict::Met => "the order stands",
        Verdict::MetOnCondition => "the order stands if what is to be measured is found so",
        Verdict::Unproved => {
            "something is missing, and the order is not judged or not all can be done"
        }
        Verdict::NotMet => "something stands against it",
    };
    format!("{}: {means}", verdict.words())
}

fn written(card: &Written) -> String {
    let proposal = &card.proposal;
    let reads = proposal.card.reads;
    let mut out = folded(
        "Bar         ",
        &format!(
            "{} for one piece, with what the chuck holds and what is faced and parted away",
            reads.size(proposal.bar_length)
        ),
    );
    out += &folded("Settings    ", &proposal.settings);
    for setting in &card.settings {
        out += &rows(setting);
    }
    out += &list("Tapping drills", card.tapping.iter().cloned());
    let of_truth = |f: &&Finding| f.rule.id == TRUTH;
    out += &list(
        "Truth",
        card.findings
            .iter()
            .filter(of_truth)
            .map(|f| f.says.clone()),
    );
    let against = card
        .findings
        .iter()
        .filter(|f| f.verdict >= Verdict::Unproved);
    out += &list("Against it", against.map(told));
    out += &list("Not in the workshop", proposal.lacks.iter().cloned());
    let conditions = card.findings.iter().flat_map(|f| &f.conditions);
    out += &list(
        "To be measured or seen at the bench",
        conditions.map(|c| format!("[ ] {}", sentence(&c.says))),
    );
    out
}

fn rows(setting: &SettingText) -> String {
    let mut out = String::from("\n");
    out += &folded(&format!("SETTING {}   ", setting.number), &setting.heading);
    for row in &setting.rows {
        out += &one(row);
    }
    out
}

fn one(row: &RowText) -> String {
    let mut out = folded(&format!("  {:>2}  ", row.number), &row.says);
    if let Some(speed) = &row.speed {
        out += &folded("        speed  ", speed);
    }
    if let Some(dial) = &row.dial {
        out += &folded("        dial   ", dial);
    }
    out
}

/// A finding with its cure.
fn told(finding: &Finding) -> String {
    let remedy = finding
        .remedy
        .as_deref()
        .map_or_else(String::new, |r| format!(" Cure: {r}."));
    format!(
        "{} ({}, {}).{remedy}",
        sentence(&finding.says).trim_end_matches('.'),
        finding.verdict.words(),
        finding.place
    )
}

/// A list under its heading; nothing where it is empty.
fn list(heading: &str, items: impl Iterator<Item = String>) -> String {
    let mut out = String::new();
    for item in items {
        if out.is_empty() {
            out = format!("\n{heading}\n");
        }
        out += &folded("  - ", &item);
    }
    out
}

/// With a capital at its head.
fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// What was assumed and left out, once for all cards.
fn foot(asked: &Cards<'_>) -> String {
    let taking = &asked.taking;
    let assumed = taking.assumed.iter().map(|(field, a)| {
        let range = show::range(a.unit.to_si(a.low), a.unit.to_si(a.high), a.unit);
        let value = show::quantity(a.unit.to_si(a.value), a.unit, 3);
        format!(
            "{}: {value} ({range}); replaced by {field} of the workshop",
            a.meaning
        )
    });
    let mut out = list("Assumed of the workshop", assumed);
    let gaps = taking
        .gaps
        .iter()
        .map(|g| format!("{g} is not given, so this is left out"));
    let left = taking.left_out.iter().cloned();
    out += &list("Left out of the workshop", gaps.chain(left));
    out += "\n";
    out += &folded(
        "",
        &format!(
            "From {} and {}. Wear eye protection; take the chuck key out; no gloves or loose sleeves at a spindle.",
            asked.plan_file.display(),
            asked.workshop_file.display()
        ),
    );
    out
}

/// A text folded between words: `first` leads the first line, as much space the others.
fn folded(first: &str, text: &str) -> String {
    let indent = " ".repeat(first.chars().count());
    let options = textwrap::Options::new(WIDTH)
        .initial_indent(first)
        .subsequent_indent(&indent)
        .break_words(false);
    textwrap::fill(text, options) + "\n"
}
