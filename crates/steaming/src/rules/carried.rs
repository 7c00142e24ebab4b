//! Which assumption carries the doubt of a law that is worked beyond its published range.
//!
//! A breach makes every check that rests on it unproved. It does so no longer where the distance
//! from the truth is itself a number with a range, drawn with all others: then it is in the band.

use reckoning::{Breach, Working};

use crate::band::Draws;

/// An assumption and the cards whose breaches it carries.
#[derive(Clone, Copy, Debug)]
pub struct Carried {
    /// Id of the assumption.
    pub assumption: &'static str,
    /// Ids of the cards.
    pub cards: &'static [&'static str],
}

/// Every doubt that a band can carry.
pub static CARRIED: &[Carried] = &[
    Carried {
        assumption: "gas.tube-radiation",
        cards: &[
            "heat.emissivity-water-vapour",
            "heat.emissivity-carbon-dioxide",
        ],
    },
    Carried {
        assumption: "gas.conductivity",
        cards: &["gas.conductivity"],
    },
    Carried {
        assumption: "gas.viscosity",
        cards: &["gas.viscosity"],
    },
];

/// The breaches that no assumption of these draws carries, each once, as printed.
pub(super) fn uncarried(working: &Working, draws: Option<&Draws>) -> Vec<String> {
    let mut broken: Vec<String> = Vec::new();
    for breach in working.breaches().filter(|b| !is_carried(b, draws)) {
        let words = breach.to_string();
        if !broken.contains(&words) {
            broken.push(words);
        }
    }
    broken
}

fn is_carried(breach: &Breach, draws: Option<&Draws>) -> bool {
    let drawn = |id: &str| {
        draws.is_some_and(|d| {
            d.assumed
                .iter()
                .any(|entering| entering.assumption.id == id)
        })
    };
    CARRIED
        .iter()
        .any(|c| c.cards.contains(&breach.card) && drawn(c.assumption))
}
