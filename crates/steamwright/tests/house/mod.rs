//! What the house rules stand on: files of the tree, rules over them, and how they are shown to
//! be able to fail.

#[path = "../../examples/book_pages/areas.rs"]
pub(crate) mod areas;
mod can_fail;
pub(crate) mod file;
pub(crate) mod register;
pub(crate) mod shape;
pub(crate) mod text;
pub(crate) mod workspace;

use file::File;

/// A rule of the house over some files, with texts that break it and texts that keep it.
pub(crate) struct HouseRule {
    /// What a change must keep.
    pub(crate) name: &'static str,
    /// Every breach, each with its place.
    pub(crate) find: fn(&[File]) -> Vec<String>,
    /// Made-up files (path, text); each alone must be found at fault.
    pub(crate) broken: &'static [(&'static str, &'static str)],
    /// Made-up files; each alone must pass.
    pub(crate) kept: &'static [(&'static str, &'static str)],
}

/// Every rule that looks at text alone.
pub(crate) fn rules() -> impl Iterator<Item = &'static HouseRule> {
    text::RULES.iter().chain(shape::RULES)
}

/// A made-up file. A line that ends in `×9` stands nine times.
pub(crate) fn made(path: &str, text: &str) -> File {
    let lines: Vec<String> = text
        .lines()
        .flat_map(|line| {
            let (line, times) = line.split_once('×').unwrap_or((line, "1"));
            vec![line.trim_end().to_owned(); times.parse().expect("a number")]
        })
        .collect();
    File::new(path, &lines.join("\n"))
}

/// Holds the whole tree to the rule of this name.
pub(crate) fn keep(name: &str) {
    let rule = rules()
        .find(|rule| rule.name == name)
        .unwrap_or_else(|| panic!("no house rule is called `{name}`"));
    none(&(rule.find)(&file::tree()));
}

/// Fails with the list when it is not empty.
#[track_caller]
pub(crate) fn none(faults: &[String]) {
    assert!(
        faults.is_empty(),
        "{} at fault:\n{}",
        faults.len(),
        faults.join("\n")
    );
}
