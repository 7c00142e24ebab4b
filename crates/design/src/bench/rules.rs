//! What is asked of the drawing of a fitting before a card is written for it.

use reckoning::formula::Cite;
use reckoning::source::{COMMON_PRACTICE, DERIVED};
use reckoning::{Finding, Origin, Rule, Verdict, Working};

/// The features make one shape.
pub(crate) static SHAPE: Rule = Rule {
    id: "fitting.shape",
    sentence: "The features of a fitting make one piece of metal out of its bar.",
    remedy: "Put the size right that takes the feature out of the metal.",
    cite: Cite {
        source: &DERIVED,
        place: "the bar less its features",
    },
};

/// Threads are known, and fit what they are cut on.
pub(crate) static THREAD: Rule = Rule {
    id: "fitting.thread",
    sentence: "Each thread is one of a standard series and is cut on metal of its own size.",
    remedy: "Name the thread with its series, and give the step its major diameter.",
    cite: Cite {
        source: &COMMON_PRACTICE,
        place: "a thread is cut on its major diameter",
    },
};

/// Demands name features that are there.
pub(crate) static REFERS: Rule = Rule {
    id: "fitting.refers",
    sentence: "A demand names two or more steps or bores of its own fitting, each in one demand.",
    remedy: "Name the steps and bores by their ids.",
    cite: Cite {
        source: &DERIVED,
        place: "the ids of the fitting",
    },
};

/// A fault of the drawing. `place` is the path of the field or row at fault.
pub(super) fn against(
    rule: &'static Rule,
    place: &str,
    says: impl Into<String>,
    remedy: impl Into<String>,
) -> Finding {
    Finding {
        rule,
        set: "",
        verdict: Verdict::NotMet,
        tight: false,
        conditions: Vec::new(),
        place: place.to_owned(),
        says: says.into(),
        remedy: Some(remedy.into()),
        margin: None,
        weakest_origin: Origin::Read,
        working: Working::new(),
    }
}
