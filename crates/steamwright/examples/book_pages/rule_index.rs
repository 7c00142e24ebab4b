//! The index of rules: what each asks, what cures a breach, where it stands.

use crate::{cited, head, row};
use reckoning::Rule;

/// The rules of each area.
const AREAS: &[(&str, &[&Rule])] = &[
    ("Plant", plant::RULES),
    ("Steaming", steaming::RULES),
    ("Proof", proof::RULES),
    ("Making", making::RULES),
];

/// The page.
pub(crate) fn page() -> String {
    let count: usize = AREAS.iter().map(|(_, rules)| rules.len()).sum();
    let mut out = format!(
        "# Rules\n\nThis page is made from the {count} rules that the program applies. Each has a \
         test in which it fires and one in which it is silent. A rule that lacks a value, or \
         whose formula is outside its limits, is unproved and never passed.\n"
    );
    for (area, rules) in AREAS {
        out += &format!("\n## {area}\n");
        out += &head(&["rule", "asks", "what cures a breach", "from"]);
        for rule in *rules {
            out += &row(&[
                format!("`{}`", rule.id),
                rule.sentence.to_owned(),
                rule.remedy.to_owned(),
                cited(&rule.cite),
            ]);
        }
    }
    out
}
