//! One sentence a question, from what was found.

use reckoning::{Finding, Verdict};

use crate::question::{Answer, Question};

/// A finding with the question it belongs to.
#[derive(Clone, Debug)]
pub struct Judged {
    /// The question.
    pub question: Question,
    /// Whether it counts for the answer, or stands beside it as another rule set's opinion.
    pub standing: Standing,
    /// The finding.
    pub finding: Finding,
}

/// How a finding counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// It decides the answer.
    Leads,
    /// It is another rule set's opinion.
    Beside,
}

/// The findings of one question that count.
pub(crate) fn of(question: Question, judged: &[Judged]) -> impl Iterator<Item = &Finding> {
    judged
        .iter()
        .filter(move |j| j.question == question && j.standing == Standing::Leads)
        .map(|j| &j.finding)
}

/// The worst verdict of a question; `None` where nothing was found.
pub(crate) fn worst(question: Question, judged: &[Judged]) -> Option<Verdict> {
    of(question, judged).map(|f| f.verdict).max()
}

/// How many checks there are of each verdict, in words, worst first.
pub(crate) fn counted(question: Question, judged: &[Judged]) -> String {
    let count = |verdict| {
        of(question, judged)
            .filter(|f| f.verdict == verdict)
            .count()
    };
    let tight = of(question, judged).filter(|f| f.tight).count();
    let all = of(question, judged).count();
    let mut parts: Vec<String> = [
        Verdict::NotMet,
        Verdict::Unproved,
        Verdict::MetOnCondition,
        Verdict::Met,
    ]
    .into_iter()
    .map(|verdict| (count(verdict), verdict))
    .filter(|(n, _)| *n > 0)
    .map(|(n, verdict)| format!("{n} {}", verdict.words()))
    .collect();
    if tight > 0 {
        parts.push(format!("{tight} of them tight"));
    }
    let checks = if all == 1 { "check" } else { "checks" };
    format!("{all} {checks}: {}", parts.join(", "))
}

/// The finding that speaks first: the worst verdict, then the least margin.
pub(crate) fn foremost(question: Question, judged: &[Judged]) -> Option<&Finding> {
    of(question, judged).min_by(|a, b| {
        let margin = |f: &Finding| f.margin.unwrap_or(f64::INFINITY);
        b.verdict
            .cmp(&a.verdict)
            .then(margin(a).total_cmp(&margin(b)))
    })
}

/// Whether a place lies in a part: the part itself, or something named under it.
#[must_use]
pub fn lies_in(place: &str, part: &str) -> bool {
    place == part
        || place
            .strip_prefix(part)
            .is_some_and(|rest| rest.starts_with('.'))
}

/// An answer that this version does not give.
pub(crate) fn not_asked(question: Question) -> Answer {
    Answer {
        question,
        verdict: None,
        sentence: "Not asked by this version.".to_owned(),
    }
}

/// The answers worst first: not met, unproved, on condition, met, then those not asked; within a
/// verdict in the order of the job.
#[must_use]
pub fn worst_first(answers: &[Answer]) -> Vec<&Answer> {
    let mut sorted: Vec<&Answer> = answers.iter().collect();
    sorted.sort_by(|a, b| b.verdict.cmp(&a.verdict).then(a.question.cmp(&b.question)));
    sorted
}

/// Findings in the order in which they should be read: worst first, then the least margin.
pub(crate) fn sort(judged: &mut [Judged]) {
    judged.sort_by(|a, b| {
        let margin = |j: &Judged| j.finding.margin.unwrap_or(f64::INFINITY);
        b.finding
            .verdict
            .cmp(&a.finding.verdict)
            .then(a.question.cmp(&b.question))
            .then(margin(a).total_cmp(&margin(b)))
            .then_with(|| a.finding.place.cmp(&b.finding.place))
            .then_with(|| a.finding.rule.id.cmp(b.finding.rule.id))
    });
}
