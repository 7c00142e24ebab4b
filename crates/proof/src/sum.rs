//! One check under way: its lines, its hold points, and how it ends.

use reckoning::finding::compare;
use reckoning::known::Given;
use reckoning::quantity::Quantity;
use reckoning::quantity::show::figures;
use reckoning::solve::NotSolved;
use reckoning::working::Basis;
use reckoning::{
    Bound, Card, Condition, Finding, Known, Origin, Ref, Refused, Rule, Verdict, Working,
};

/// The margin below which a met check of strength is tight.
pub(crate) const TIGHT: f64 = 1.10;

/// The cure where a set does not reach.
const ANOTHER_SET: &str = "none by this set: another rule set, or sizes, metal and service that it \
                           was made for";

/// Why a check ends without an answer.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Stop {
    /// A size or condition that the plan does not give.
    #[error("{what} of {part} is not given")]
    Missing {
        /// What is missing.
        what: &'static str,
        /// Of which part.
        part: String,
    },
    /// No strength is known for this metal or at this temperature.
    #[error("no {what} is known for {metal} at {celsius:.0} °C")]
    NoStrength {
        /// Which strength.
        what: &'static str,
        /// The metal.
        metal: &'static str,
        /// Its temperature.
        celsius: f64,
    },
    /// The set has no working for this here.
    #[error("{what} is not worked by this rule set here")]
    NotWorked {
        /// What is not worked.
        what: &'static str,
    },
    /// A formula could not be worked.
    #[error(transparent)]
    Refused(#[from] Refused),
    /// A balance was not found.
    #[error(transparent)]
    NotSolved(#[from] NotSolved),
}

/// What a check found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Answer {
    /// Provided and required, to be compared.
    Compared(f64, f64),
    /// It holds; there is no margin to speak of.
    Holds,
    /// It does not hold; there is no margin to speak of.
    Fails,
}

/// How one check ended.
pub(crate) struct Outcome {
    /// What was found.
    pub(crate) answer: Answer,
    /// The same in words.
    pub(crate) says: String,
    /// What would cure it.
    pub(crate) remedy: String,
    /// A remark that marks a met check as tight.
    pub(crate) strained: Option<String>,
}

impl Outcome {
    /// Provided against required.
    pub(crate) fn compared(provided: f64, required: f64, says: String, remedy: String) -> Self {
        Self {
            answer: Answer::Compared(provided, required),
            says,
            remedy,
            strained: None,
        }
    }

    /// A rule that is kept or broken, without a margin.
    pub(crate) fn plain(answer: Answer, says: String, remedy: String) -> Self {
        Self {
            answer,
            says,
            remedy,
            strained: None,
        }
    }

    /// Marks it tight with a remark, should it be met.
    pub(crate) fn strained_if(mut self, remark: Option<String>) -> Self {
        self.strained = remark;
        self
    }
}

/// One check under way.
pub(crate) struct Sum {
    /// Its lines.
    pub(crate) w: Working,
    conditions: Vec<Condition>,
    outside: Vec<String>,
}

impl Sum {
    /// Works a card on earlier lines.
    pub(crate) fn card(&mut self, card: &'static Card, inputs: &[Ref]) -> Result<Ref, Stop> {
        Ok(self.w.worked(card, inputs)?)
    }

    /// Files a value that the state holds, working the card beside it.
    pub(crate) fn settled(
        &mut self,
        card: &'static Card,
        inputs: &[Ref],
        value: f64,
    ) -> Result<Ref, Stop> {
        Ok(self.w.settled(card, inputs, value)?)
    }

    /// Files a value that enters from outside.
    pub(crate) fn know<Q: Quantity>(
        &mut self,
        symbol: &str,
        meaning: &str,
        unit: &'static reckoning::quantity::Unit,
        known: &Known<Q>,
    ) -> Ref {
        self.w.know(symbol, meaning, unit, known)
    }

    /// The value of a line in its own unit.
    pub(crate) fn value(&self, r: Ref) -> f64 {
        self.w.line(r).value
    }

    /// A hold point on which the answer will stand.
    pub(crate) fn hold(&mut self, says: String, field: Option<String>) {
        self.keep(Condition {
            says,
            field,
            bound: None,
        });
    }

    /// A hold point that is one bound on the value of a field.
    pub(crate) fn hold_within(&mut self, says: String, field: String, bound: Bound) {
        self.keep(Condition {
            says,
            field: Some(field),
            bound: Some(bound),
        });
    }

    /// Keeps a condition once, however often a check takes the same size.
    fn keep(&mut self, condition: Condition) {
        if !self.conditions.contains(&condition) {
            self.conditions.push(condition);
        }
    }

    /// The part lies outside what the rule set was made for.
    pub(crate) fn outside(&mut self, limit: String) {
        self.outside.push(limit);
    }

    fn assumes(&self) -> bool {
        self.w
            .lines()
            .iter()
            .any(|line| matches!(line.basis, Basis::Given(Given::Assumed { .. })))
    }

    fn limits_broken(&self) -> Vec<String> {
        self.outside
            .iter()
            .cloned()
            .chain(self.w.breaches().map(ToString::to_string))
            .collect()
    }

    fn close(self, head: Head, outcome: Outcome) -> Finding {
        let broken = self.limits_broken();
        let rests = !self.conditions.is_empty() || self.assumes();
        let (provided, required, wanted) = match outcome.answer {
            Answer::Compared(provided, required) => (provided, required, TIGHT),
            Answer::Holds => (1.0, 1.0, 1.0),
            Answer::Fails => (0.0, 1.0, 1.0),
        };
        let answer = compare(provided, required, wanted, rests, !broken.is_empty());
        let met = matches!(answer.verdict, Verdict::Met | Verdict::MetOnCondition);
        let margin = matches!(outcome.answer, Answer::Compared(..)).then_some(answer.margin);
        let margin = margin.filter(|m| m.is_finite());
        let strained = outcome.strained.filter(|_| met);
        let remedy = if self.outside.is_empty() {
            outcome.remedy
        } else {
            ANOTHER_SET.to_owned()
        };
        Finding {
            rule: head.rule,
            set: head.set,
            verdict: answer.verdict,
            tight: answer.tight || strained.is_some(),
            conditions: if met { self.conditions } else { Vec::new() },
            place: head.place,
            says: sentence(outcome.says, margin, &broken, strained),
            remedy: (!met).then_some(remedy),
            margin,
            weakest_origin: weakest(&self.w, head.rule),
            working: self.w,
        }
    }

    fn stopped(self, head: Head, stop: &Stop) -> Finding {
        let remedy = match stop {
            Stop::Missing { what, part } => format!("give {what} of {part}"),
            Stop::NoStrength { .. } | Stop::NotWorked { .. } => ANOTHER_SET.to_owned(),
            Stop::Refused(_) | Stop::NotSolved(_) => head.rule.remedy.to_owned(),
        };
        Finding {
            rule: head.rule,
            set: head.set,
            verdict: Verdict::Unproved,
            tight: false,
            conditions: Vec::new(),
            place: head.place,
            says: stop.to_string(),
            remedy: Some(remedy),
            margin: None,
            weakest_origin: weakest(&self.w, head.rule),
            working: self.w,
        }
    }
}

/// The weakest origin of the lines and of the rule itself.
fn weakest(w: &Working, rule: &Rule) -> Origin {
    w.weakest().max(rule.cite.source.seen.into())
}

/// What was found, by how much, which limits are broken, and a remark.
fn sentence(
    says: String,
    margin: Option<f64>,
    broken: &[String],
    strained: Option<String>,
) -> String {
    let mut whole = says;
    if let Some(margin) = margin {
        whole = format!("{whole} ({} times)", figures(margin, 3));
    }
    if !broken.is_empty() {
        whole = format!("{whole}; but {}", broken.join("; "));
    }
    match strained {
        Some(remark) => format!("{whole}; {remark}"),
        None => whole,
    }
}

/// What a finding is about.
pub(crate) struct Head {
    /// The rule.
    pub(crate) rule: &'static Rule,
    /// Key of the rule set.
    pub(crate) set: &'static str,
    /// The part.
    pub(crate) place: String,
}

/// Runs one check to its finding.
pub(crate) fn check(head: Head, work: impl FnOnce(&mut Sum) -> Result<Outcome, Stop>) -> Finding {
    let mut sum = Sum {
        w: Working::new(),
        conditions: Vec::new(),
        outside: Vec::new(),
    };
    match work(&mut sum) {
        Ok(outcome) => sum.close(head, outcome),
        Err(stop) => sum.stopped(head, &stop),
    }
}
