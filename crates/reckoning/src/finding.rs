//! Findings: what was asked of a part or a fire, and whether it was met.

use crate::formula::Cite;
use crate::source::Seen;
use crate::working::Working;

/// How well founded the weakest number in a chain is; later is weaker.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Origin {
    /// From the plan, or from a passage that was read.
    Read,
    /// From a passage entered from memory.
    FromMemory,
    /// Common practice without a source.
    CommonPractice,
    /// Assumed: nobody has measured it yet.
    Assumed,
}

impl Origin {
    /// As printed.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Read => "read",
            Self::FromMemory => "from memory",
            Self::CommonPractice => "common practice",
            Self::Assumed => "assumed",
        }
    }
}

impl From<Seen> for Origin {
    fn from(seen: Seen) -> Self {
        match seen {
            Seen::Read => Self::Read,
            Seen::FromMemory => Self::FromMemory,
            Seen::CommonPractice => Self::CommonPractice,
        }
    }
}

/// The answer to one check; later is worse.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Verdict {
    /// Met.
    Met,
    /// Met if a stated condition is found true by measuring.
    MetOnCondition,
    /// Cannot be said: something is missing, a limit is broken, a balance was not found.
    Unproved,
    /// Not met.
    NotMet,
}

impl Verdict {
    /// As printed.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Self::Met => "met",
            Self::MetOnCondition => "met on condition",
            Self::NotMet => "not met",
            Self::Unproved => "unproved",
        }
    }
}

/// A rule of the trade or of a standard that a stage applies.
#[derive(Debug)]
pub struct Rule {
    /// `area.name`.
    pub id: &'static str,
    /// The rule as one sentence.
    pub sentence: &'static str,
    /// What cures a breach, in general words.
    pub remedy: &'static str,
    /// Where the rule stands.
    pub cite: Cite,
}

/// A sentence with a limit to be measured; it becomes a hold point in the papers.
#[derive(Clone, Debug, PartialEq)]
pub struct Condition {
    /// The sentence, with its limit in the maker's units.
    pub says: String,
    /// The plan field that the measurement fills, where there is one.
    pub field: Option<String>,
    /// The limit as a number, where it is one bound on one measured value.
    pub bound: Option<Bound>,
}

/// One bound on a measured value, in SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Bound {
    /// It must reach this.
    AtLeast(f64),
    /// It may not exceed this.
    AtMost(f64),
}

impl Bound {
    /// Whether this bound asks for as much as the other and more; `None` where the one is a least
    /// and the other a greatest value, which do not replace each other.
    #[must_use]
    pub fn tighter_than(self, other: Self) -> Option<bool> {
        match (self, other) {
            (Self::AtLeast(a), Self::AtLeast(b)) => Some(a > b),
            (Self::AtMost(a), Self::AtMost(b)) => Some(a < b),
            _ => None,
        }
    }
}

/// One check with its answer.
#[derive(Clone, Debug)]
pub struct Finding {
    /// The rule applied.
    pub rule: &'static Rule,
    /// The rule set in whose name it was applied; empty where none.
    pub set: &'static str,
    /// The answer.
    pub verdict: Verdict,
    /// Met, but below the margin which the rule itself states.
    pub tight: bool,
    /// What has to be measured for the answer to stand.
    pub conditions: Vec<Condition>,
    /// Id of the part, feature, joint or plan field spoken of.
    pub place: String,
    /// What was found, with numbers.
    pub says: String,
    /// What would cure it, with a number; `None` where nothing is wrong.
    pub remedy: Option<String>,
    /// Provided over required, where the check is such a comparison.
    pub margin: Option<f64>,
    /// The weakest origin in its chain.
    pub weakest_origin: Origin,
    /// The lines it rests on.
    pub working: Working,
}

/// What one comparison gives: the verdict and whether it is tight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Compared {
    /// The answer.
    pub verdict: Verdict,
    /// Met below the wanted margin.
    pub tight: bool,
    /// Provided over required.
    pub margin: f64,
}

/// What the arithmetic itself may be out by: two sums of the same sizes in another order differ by
/// less than this.
const ROUNDING: f64 = 1e-9;

/// Compares what is provided with what is required.
///
/// `wanted_margin` is the margin below which a met check is marked tight. `rests_on_assumption`
/// turns "met" into "met on condition"; `breached` makes any answer unproved.
#[must_use]
pub fn compare(
    provided: f64,
    required: f64,
    wanted_margin: f64,
    rests_on_assumption: bool,
    breached: bool,
) -> Compared {
    let margin = provided / required;
    let verdict = if breached || !margin.is_finite() || provided < 0.0 || required <= 0.0 {
        Verdict::Unproved
    } else if margin < 1.0 - ROUNDING {
        Verdict::NotMet
    } else if rests_on_assumption {
        Verdict::MetOnCondition
    } else {
        Verdict::Met
    };
    let met = matches!(verdict, Verdict::Met | Verdict::MetOnCondition);
    Compared {
        verdict,
        tight: met && margin < wanted_margin,
        margin,
    }
}
