//! The questions that a plan is asked, in the order of the job.

use reckoning::Verdict;

/// A question of the job.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Question {
    /// What steam does the engine ask for?
    Duty,
    /// Will this fire make that steam, and keep making it?
    Steaming,
    /// Is every pressure part strong enough by a named rule?
    Proof,
    /// What parts is it made of?
    Parts,
    /// In what order is each part made?
    Making,
    /// Which joints in which heat?
    Heats,
    /// What is next at the bench?
    Job,
    /// What do tests and firings teach?
    Trials,
    /// What is on paper for the boiler tester?
    Papers,
}

impl Question {
    /// Every question in the order of the job.
    pub const ALL: [Self; 9] = [
        Self::Duty,
        Self::Steaming,
        Self::Proof,
        Self::Parts,
        Self::Making,
        Self::Heats,
        Self::Job,
        Self::Trials,
        Self::Papers,
    ];

    /// The name under which it is printed.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Duty => "duty",
            Self::Steaming => "steaming",
            Self::Proof => "proof",
            Self::Parts => "parts",
            Self::Making => "making",
            Self::Heats => "heats",
            Self::Job => "job",
            Self::Trials => "trials",
            Self::Papers => "papers",
        }
    }

    /// The question as asked.
    #[must_use]
    pub fn asks(self) -> &'static str {
        match self {
            Self::Duty => "What steam does the engine ask for?",
            Self::Steaming => "Will this fire make that steam, and keep making it?",
            Self::Proof => "Is every pressure part strong enough by a named rule?",
            Self::Parts => "What parts is it made of?",
            Self::Making => "In what order is each part made?",
            Self::Heats => "Which joints in which heat?",
            Self::Job => "What is next at the bench?",
            Self::Trials => "What do tests and firings teach?",
            Self::Papers => "What is on paper for the boiler tester?",
        }
    }
}

/// The answer to one question.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The question.
    pub question: Question,
    /// The worst verdict among its findings; `None` where this version does not ask it.
    pub verdict: Option<Verdict>,
    /// One sentence.
    pub sentence: String,
}
