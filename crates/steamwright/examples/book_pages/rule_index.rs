//! The index of rules: what each asks, what cures a breach, where it stands.

use crate::areas::areas;
use crate::{capital, cited, head, row};

/// The page.
pub(crate) fn page() -> String {
    let count: usize = areas().iter().map(|area| area.rules.len()).sum();
    let mut out = format!(
        "# Rules\n\nThis page is made from the {count} rules that the program applies. Each has a \
         test in which it fires and one in which it is silent. A rule that lacks a value, or \
         whose formula is outside its limits, is unproved and never passed.\n"
    );
    for area in areas().iter().filter(|area| !area.rules.is_empty()) {
        out += &format!("\n## {}\n", capital(area.home));
        out += &head(&["rule", "asks", "what cures a breach", "from"]);
        for rule in &area.rules {
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
