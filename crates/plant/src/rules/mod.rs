//! The geometry of a plant held against the rules. Met checks are kept.

mod list;
mod lying;
mod nest;
mod plate;
mod room;
mod vessel;

pub use list::*;

use plan::Plan;
use reckoning::finding::compare;
use reckoning::quantity::{Length, MM, Quantity, show};
use reckoning::{Condition, Finding, Known, Origin, Rule, Verdict, Working};

use crate::boiler::{Built, Form};

/// Figures of a length in a sentence.
const FIGURES: usize = 4;
/// The least margin that is not tight.
const WANTED: f64 = 1.10;

/// Applies every rule to what was built.
pub(crate) fn findings(plan: &Plan, built: &Built) -> Vec<Finding> {
    let mut found: Vec<Finding> = built.refused.iter().map(room::shape).collect();
    match &built.form {
        Form::Unsaid => {}
        Form::Vertical(upright) => {
            found.extend(vessel::findings(upright));
            found.extend(room::findings(plan, built));
            found.extend(nest::findings(plan, built, upright));
            return found;
        }
        Form::Horizontal(lying) => found.extend(lying::findings(plan, built, lying)),
    }
    found.extend(room::findings(plan, built));
    found
}

/// A length in words.
fn words(length: Length) -> String {
    show::quantity(length.si(), &MM, FIGURES)
}

/// What is held against what.
struct Held<'a> {
    rule: &'static Rule,
    place: &'a str,
    /// Symbol, meaning and value of what there is.
    provided: (&'a str, &'a str, Known<Length>),
    /// Symbol, meaning and value of what is asked.
    required: (&'a str, &'a str, Known<Length>),
}

impl Held<'_> {
    /// The finding; what there is must not be less than what is asked.
    fn judged(&self) -> Finding {
        let mut working = Working::new();
        working.know(self.provided.0, self.provided.1, &MM, &self.provided.2);
        working.know(self.required.0, self.required.1, &MM, &self.required.2);
        let (there, asked) = (self.provided.2.value, self.required.2.value);
        let weakest = self
            .provided
            .2
            .given
            .origin()
            .max(self.required.2.given.origin());
        let chosen = self.provided.2.given.origin() >= Origin::CommonPractice;
        let compared = compare(there.mm(), asked.mm(), WANTED, chosen, false);
        // Less than nothing is no missing number but a clash.
        let verdict = if there.mm() < 0.0 {
            Verdict::NotMet
        } else {
            compared.verdict
        };
        let failed = verdict == Verdict::NotMet;
        Finding {
            rule: self.rule,
            set: "",
            verdict,
            tight: compared.tight,
            conditions: conditions(verdict, self.provided.1, there),
            place: self.place.to_owned(),
            says: format!(
                "{} is {}; asked is {}, {}.",
                capital(self.provided.1),
                words(there),
                words(asked),
                self.required.1
            ),
            remedy: failed
                .then(|| format!("{} It is {} short.", self.rule.remedy, words(asked - there))),
            margin: Some(compared.margin),
            weakest_origin: weakest,
            working,
        }
    }
}

/// A value that rests on a choice is to be measured.
fn conditions(verdict: Verdict, meaning: &str, there: Length) -> Vec<Condition> {
    if verdict != Verdict::MetOnCondition {
        return Vec::new();
    }
    vec![Condition {
        says: format!(
            "A size that the plan leaves out was chosen: {meaning} is to be measured, here {}.",
            words(there)
        ),
        field: None,
        bound: None,
    }]
}

/// A finding that rests on no comparison.
fn said(rule: &'static Rule, place: &str, verdict: Verdict, says: String) -> Finding {
    Finding {
        rule,
        set: "",
        verdict,
        tight: false,
        conditions: Vec::new(),
        place: place.to_owned(),
        says,
        remedy: (verdict == Verdict::NotMet || verdict == Verdict::Unproved)
            .then(|| rule.remedy.to_owned()),
        margin: None,
        weakest_origin: Origin::Read,
        working: Working::new(),
    }
}

fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// A limit of the trade, in millimetres.
fn limit(mm: f64) -> Known<Length> {
    crate::known::chosen(
        Length::from_mm(mm),
        "the limit of the rule",
        "common practice, no source",
    )
}
