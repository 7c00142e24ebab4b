//! A whole boiler by every set, and which set leads.

use crate::input::{Boiler, Service, Stock};
use crate::set::{Asked, OURS, RuleSet, SETS};
use reckoning::{Finding, Verdict};

/// Every finding of one rule set.
#[derive(Clone, Debug)]
pub struct SetProof {
    /// The set.
    pub set: &'static RuleSet,
    /// What it found, part by part.
    pub findings: Vec<Finding>,
}

impl SetProof {
    /// Whether the set could answer every check: nothing is unproved.
    #[must_use]
    pub fn fits(&self) -> bool {
        self.findings.iter().all(|f| f.verdict != Verdict::Unproved)
    }

    /// The least margin, where any check has one.
    #[must_use]
    pub fn least_margin(&self) -> Option<f64> {
        self.findings
            .iter()
            .filter_map(|f| f.margin)
            .min_by(f64::total_cmp)
    }
}

/// A boiler by every rule set.
#[derive(Clone, Debug)]
pub struct Proof {
    /// The set that leads: the one that the tester named, else the one that asks most among
    /// those that could answer every check, else our own.
    pub leads: &'static RuleSet,
    /// Every set, in the order of the register.
    pub sets: Vec<SetProof>,
}

impl Proof {
    /// The findings of the leading set.
    pub fn leading(&self) -> impl Iterator<Item = &Finding> {
        self.by(self.leads)
    }

    /// The findings that stand beside.
    pub fn beside(&self) -> impl Iterator<Item = &Finding> {
        self.sets
            .iter()
            .filter(|s| s.set.key != self.leads.key)
            .flat_map(|s| &s.findings)
    }

    fn by(&self, set: &'static RuleSet) -> impl Iterator<Item = &Finding> {
        self.sets
            .iter()
            .filter(move |s| s.set.key == set.key)
            .flat_map(|s| &s.findings)
    }
}

/// Proves a boiler by every rule set. `named` is the set that the tester or club named.
#[must_use]
pub fn prove(
    boiler: &Boiler,
    service: &Service,
    stock: &Stock,
    named: Option<&'static RuleSet>,
) -> Proof {
    let asked = Asked { service, stock };
    let sets: Vec<SetProof> = SETS
        .iter()
        .map(|set| SetProof {
            set,
            findings: by_set(set, boiler, &asked),
        })
        .collect();
    let leads = named.unwrap_or_else(|| strictest(&sets));
    Proof { leads, sets }
}

fn by_set(set: &RuleSet, boiler: &Boiler, asked: &Asked<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for shell in &boiler.shells {
        found.extend((set.shell)(shell, asked));
    }
    for plate in &boiler.plates {
        found.extend((set.plate)(plate, asked));
    }
    for flue in &boiler.flues {
        found.extend((set.flue)(flue, asked));
    }
    found.extend((set.whole)(boiler, asked));
    found
}

/// The set of the least margin among those that could answer every check.
fn strictest(sets: &[SetProof]) -> &'static RuleSet {
    sets.iter()
        .filter(|s| s.fits())
        .filter_map(|s| Some((s.set, s.least_margin()?)))
        .min_by(|a, b| a.1.total_cmp(&b.1))
        .map_or(&OURS, |(set, _)| set)
}
