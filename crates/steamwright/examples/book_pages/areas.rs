//! The areas with their rules and assumptions: one list for the pages of the book and for the
//! house rules, which hold it complete.

use reckoning::{Assumption, Rule};

/// What an area lists.
pub(crate) struct Area {
    /// Its crate.
    pub(crate) home: &'static str,
    /// Every rule it applies.
    pub(crate) rules: Vec<&'static Rule>,
    /// Every number it assumes where nobody measured it.
    pub(crate) assumptions: Vec<&'static Assumption>,
}

/// Every area that has rules or assumptions.
pub(crate) fn areas() -> Vec<Area> {
    vec![
        Area {
            home: "plant",
            rules: plant::RULES.to_vec(),
            assumptions: Vec::new(),
        },
        Area {
            home: "steaming",
            rules: steaming::RULES.to_vec(),
            assumptions: steaming::ASSUMPTIONS.iter().map(|a| a.assumption).collect(),
        },
        Area {
            home: "proof",
            rules: proof::RULES.to_vec(),
            assumptions: proof::ASSUMPTIONS.to_vec(),
        },
        Area {
            home: "making",
            rules: making::RULES.to_vec(),
            assumptions: Vec::new(),
        },
        Area {
            home: "design",
            rules: design::RULES.to_vec(),
            assumptions: design::bench::ASSUMPTIONS.to_vec(),
        },
    ]
}
