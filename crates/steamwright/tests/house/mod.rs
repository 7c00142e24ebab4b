//! How the house rules read the tree.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// A text file of the tree.
pub(crate) struct File {
    pub(crate) path: String,
    pub(crate) lines: Vec<String>,
}

impl File {
    pub(crate) fn text(&self) -> String {
        self.lines.join("\n")
    }

    pub(crate) fn numbered(&self) -> impl Iterator<Item = (usize, &str)> {
        self.lines
            .iter()
            .enumerate()
            .map(|(i, l)| (i + 1, l.as_str()))
    }

    /// Whether it is code that ships, and not a test, bench or example.
    pub(crate) fn is_source(&self) -> bool {
        self.path.contains("/src/")
    }

    /// Lines of code up to the unit tests at the foot, without comments.
    pub(crate) fn code_lines(&self) -> impl Iterator<Item = (usize, &str)> {
        self.numbered()
            .take_while(|(_, l)| l.trim() != "#[cfg(test)]")
            .filter(|(_, l)| !l.trim_start().starts_with("//"))
    }
}

pub(crate) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../..")
        .canonicalize()
        .expect("the root")
}

pub(crate) fn read(path: &str) -> String {
    fs::read_to_string(root().join(path)).unwrap_or_else(|e| panic!("{path}: {e}"))
}

pub(crate) fn exists(name: &str) -> bool {
    root().join(name.trim_end_matches('/')).exists()
}

/// Every file of the tree with one of these endings, build folders left out.
pub(crate) fn tree(endings: &[&str]) -> Vec<File> {
    let mut found = Vec::new();
    gather(&root(), &root(), endings, &mut found);
    found.sort_by(|a, b| a.path.cmp(&b.path));
    found
}

fn gather(folder: &Path, root: &Path, endings: &[&str], found: &mut Vec<File>) {
    for entry in fs::read_dir(folder).expect("a folder").flatten() {
        let path = entry.path();
        let name = entry.file_name().to_string_lossy().into_owned();
        if path.is_dir() {
            if !["target", ".git", "site", "node_modules"].contains(&name.as_str()) {
                gather(&path, root, endings, found);
            }
        } else if endings.iter().any(|e| name.ends_with(&format!(".{e}"))) {
            let text = fs::read_to_string(&path).unwrap_or_default();
            let path = path
                .strip_prefix(root)
                .unwrap_or(&path)
                .to_string_lossy()
                .into_owned();
            found.push(File {
                path,
                lines: text.lines().map(str::to_owned).collect(),
            });
        }
    }
}

pub(crate) fn rust_files() -> impl Iterator<Item = File> {
    tree(&["rs"]).into_iter()
}

/// Each crate of the workspace with the text of its manifest.
pub(crate) fn crates() -> Vec<(String, String)> {
    let mut found: Vec<(String, String)> = fs::read_dir(root().join("crates"))
        .expect("crates")
        .flatten()
        .filter_map(|entry| {
            let manifest = fs::read_to_string(entry.path().join("Cargo.toml")).ok()?;
            Some((entry.file_name().to_string_lossy().into_owned(), manifest))
        })
        .collect();
    found.sort();
    found
}

/// What each crate may use directly; what those use is allowed too.
const MAY_USE: &[(&str, &[&str])] = &[
    ("reckoning", &[]),
    ("formulas", &["reckoning"]),
    ("plan", &["reckoning"]),
    ("plant", &["plan", "formulas"]),
    ("steaming", &["plant", "formulas"]),
    ("proof", &["plant", "formulas"]),
    ("making", &["plant", "formulas"]),
    ("heats", &["plant", "formulas"]),
    ("records", &["plan"]),
    ("design", &["steaming", "proof", "making", "heats"]),
    ("drawing", &["design"]),
    ("papers", &["drawing"]),
    ("workbench", &["drawing", "papers", "records"]),
    (
        "steamwright",
        &["workbench", "papers", "drawing", "records", "design"],
    ),
];

/// Everything below a crate; `None` for a name that is not a crate of ours.
pub(crate) fn may_use(name: &str) -> Option<BTreeSet<String>> {
    let (_, direct) = MAY_USE.iter().find(|(n, _)| *n == name)?;
    let mut all: BTreeSet<String> = direct.iter().map(|s| (*s).to_owned()).collect();
    for d in *direct {
        all.extend(may_use(d)?);
    }
    Some(all)
}

/// Names in the dependency sections of a manifest.
pub(crate) fn dependencies(manifest: &str) -> Vec<String> {
    let document: toml_edit::DocumentMut = manifest.parse().expect("a manifest");
    ["dependencies", "dev-dependencies", "build-dependencies"]
        .iter()
        .filter_map(|section| document.get(section)?.as_table_like())
        .flat_map(|t| t.iter().map(|(k, _)| k.to_owned()).collect::<Vec<_>>())
        .collect()
}

/// Packages of others that any crate names as a dependency.
pub(crate) fn outside_packages() -> BTreeSet<String> {
    crates()
        .iter()
        .flat_map(|(_, manifest)| dependencies(manifest))
        .filter(|name| may_use(name).is_none())
        .collect()
}

/// Whether `number` stands in the line as a number of its own.
pub(crate) fn has_number(line: &str, number: &str) -> bool {
    line.match_indices(number).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        let after = line[at + number.len()..].chars().next();
        let glued =
            |c: Option<char>| c.is_some_and(|c| c.is_ascii_alphanumeric() || c == '.' || c == '_');
        let tail_digits = number.starts_with("6894") || number.starts_with("6_894");
        !glued(before) && (tail_digits || !glued(after))
    })
}

/// Whether `word` stands in the line as a word of its own.
pub(crate) fn has_word(line: &str, word: &str) -> bool {
    line.match_indices(word).any(|(at, _)| {
        let glued = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || c == '_');
        !glued(line[..at].chars().next_back()) && !glued(line[at + word.len()..].chars().next())
    })
}

/// A line that states the rule itself ("never says …", "not approved by …").
pub(crate) fn says_it_never_says_so(line: &str) -> bool {
    line.contains("never") || line.contains("words \"")
}

/// Ids of the rules that a file declares: `id: "…"` inside a `Rule {`.
pub(crate) fn rule_ids(file: &File) -> Vec<String> {
    let mut ids = Vec::new();
    let mut in_rule = false;
    for (_, line) in file.code_lines() {
        if line.contains(": Rule = Rule {") || line.trim_start().starts_with("Rule {") {
            in_rule = true;
        }
        if in_rule && let Some(rest) = line.split("id: \"").nth(1) {
            ids.extend(rest.split('"').next().map(str::to_owned));
            in_rule = false;
        }
    }
    ids
}

/// What stands between single backticks.
pub(crate) fn backticked(text: &str) -> impl Iterator<Item = &str> {
    text.split('`').skip(1).step_by(2)
}

/// Fails with the list when it is not empty.
pub(crate) fn none(faults: &[String]) {
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));
}
