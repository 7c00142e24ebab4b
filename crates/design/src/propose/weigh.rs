//! A whole plan, checked, and what stands against it.

use plan::{Plan, Workshop};
use reckoning::Verdict;

use crate::answer::Standing;
use crate::check::{Checked, check};
use crate::question::Question;

/// A question that is not met, and what forbids it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Forbidden {
    /// The question.
    pub question: Question,
    /// Its verdict: not met, or unproved.
    pub verdict: Verdict,
    /// What was found, worst first, each with its place.
    pub says: Vec<String>,
}

/// A plan with what was found of it.
#[derive(Clone, Debug)]
pub(super) struct Weighed {
    /// The check.
    pub(super) checked: Checked,
    /// Questions that are not met.
    pub(super) forbidden: Vec<Forbidden>,
    /// How much stands against it: what is not met counts more than what is unproved.
    pub(super) against: usize,
}

impl Weighed {
    /// Whether the verdict of one of these rules is as bad as this, or worse.
    pub(super) fn against_by(&self, rules: &[&str], at_least: Verdict) -> bool {
        self.checked.judged.iter().any(|judged| {
            let finding = &judged.finding;
            finding.verdict >= at_least && rules.contains(&finding.rule.id)
        })
    }
}

/// A finding that is not met outweighs any number of unproved ones.
const NOT_MET: usize = 1000;

pub(super) fn weigh(plan: &Plan, workshop: &Workshop) -> Weighed {
    let checked = check(plan, workshop);
    let worse = |verdict: &Verdict| *verdict > Verdict::MetOnCondition;
    let forbidden: Vec<Forbidden> = checked
        .answers
        .iter()
        .filter_map(|answer| {
            let verdict = answer.verdict.filter(worse)?;
            Some(Forbidden {
                question: answer.question,
                verdict,
                says: said(&checked, answer.question),
            })
        })
        .collect();
    let leads = checked
        .judged
        .iter()
        .filter(|j| j.standing == Standing::Leads);
    let against = leads
        .map(|j| match j.finding.verdict {
            Verdict::NotMet => NOT_MET,
            Verdict::Unproved => 1,
            Verdict::Met | Verdict::MetOnCondition => 0,
        })
        .sum();
    Weighed {
        against,
        forbidden,
        checked,
    }
}

/// What speaks against a question, worst first.
fn said(checked: &Checked, question: Question) -> Vec<String> {
    let mut found: Vec<&crate::answer::Judged> = checked
        .judged
        .iter()
        .filter(|j| j.question == question && j.standing == Standing::Leads)
        .filter(|j| j.finding.verdict > Verdict::MetOnCondition)
        .collect();
    found.sort_by_key(|judged| std::cmp::Reverse(judged.finding.verdict));
    let says: Vec<String> = found
        .into_iter()
        .map(|j| format!("{}: {}", j.finding.place, j.finding.says))
        .collect();
    if says.is_empty() {
        let answer = checked.answers.iter().find(|a| a.question == question);
        return answer.map(|a| a.sentence.clone()).into_iter().collect();
    }
    says
}
