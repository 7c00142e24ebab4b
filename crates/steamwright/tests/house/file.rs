//! Files of the tree as text.

use std::fs;
use std::path::{Path, PathBuf};

/// Endings of the files that the rules read.
const ENDINGS: &[&str] = &[
    "rs", "md", "toml", "py", "yml", "sh", "js", "css", "html", "svg", "csv", "txt",
];
/// Files without an ending that are read too.
const NAMED: &[&str] = &["test", "run", ".gitignore"];
/// Folders that are built and not written.
const BUILT: &[&str] = &["target", ".git", "site", "node_modules"];

/// A text file of the tree.
pub(crate) struct File {
    /// Path from the root, with `/`.
    pub(crate) path: String,
    /// Its lines.
    pub(crate) lines: Vec<String>,
}

impl File {
    pub(crate) fn new(path: &str, text: &str) -> Self {
        Self {
            path: path.to_owned(),
            lines: text.lines().map(str::to_owned).collect(),
        }
    }

    pub(crate) fn text(&self) -> String {
        self.lines.join("\n")
    }

    pub(crate) fn is_rust(&self) -> bool {
        self.path.ends_with(".rs")
    }

    /// Whether it speaks of the house rules themselves, with the words that they forbid.
    pub(crate) fn is_house(&self) -> bool {
        self.path.starts_with("crates/steamwright/tests/house")
    }

    /// Whether it is Rust that ships, and not a test, bench or example. A file `tests.rs` beside
    /// the code is a test; a rule of its own holds its `mod` line to say so.
    pub(crate) fn is_source(&self) -> bool {
        self.is_rust() && self.path.contains("/src/") && !self.path.ends_with("/tests.rs")
    }

    /// The crate it belongs to; empty outside `crates/`.
    pub(crate) fn home(&self) -> &str {
        let inside = self.path.strip_prefix("crates/").unwrap_or("");
        inside.split_once('/').map_or("", |(name, _)| name)
    }

    /// Lines with their number, from 1.
    pub(crate) fn numbered(&self) -> impl Iterator<Item = (usize, &str)> {
        (1..).zip(self.lines.iter().map(String::as_str))
    }

    /// Lines of code: neither comments nor what stands under `#[cfg(test)]`.
    pub(crate) fn code_lines(&self) -> Vec<(usize, &str)> {
        let mut found = Vec::new();
        let mut lines = self.numbered();
        while let Some((number, line)) = lines.next() {
            if line.trim() == "#[cfg(test)]" {
                skip_item(line, &mut lines);
            } else if !line.trim_start().starts_with("//") {
                found.push((number, line));
            }
        }
        found
    }

    /// One breach, as told.
    pub(crate) fn at(&self, number: usize, line: &str) -> String {
        format!("{}:{number}: {}", self.path, line.trim())
    }
}

/// Passes over the item that follows an attribute: to its `;`, or to the brace at its indent.
fn skip_item<'a>(attribute: &str, lines: &mut impl Iterator<Item = (usize, &'a str)>) {
    let indent = attribute.len() - attribute.trim_start().len();
    let mut opened = false;
    for (_, line) in lines {
        opened |= line.ends_with('{');
        let closed = line.starts_with(&format!("{}}}", " ".repeat(indent)));
        if closed || (!opened && line.ends_with([';', '}'])) {
            return;
        }
    }
}

/// The root of the workspace.
pub(crate) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../..")
        .canonicalize()
        .expect("the root")
}

/// The text of one file.
pub(crate) fn read(path: &str) -> String {
    fs::read_to_string(root().join(path)).unwrap_or_else(|e| panic!("{path}: {e}"))
}

/// Every text file of the tree, build folders left out.
pub(crate) fn tree() -> Vec<File> {
    let root = root();
    let mut found = Vec::new();
    gather(&root, &root, &mut found);
    found.sort_by(|a, b| a.path.cmp(&b.path));
    found
}

fn gather(folder: &Path, root: &Path, found: &mut Vec<File>) {
    for entry in fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        let ending = name.rsplit_once('.').map_or("", |(_, ending)| ending);
        if path.is_dir() {
            if !BUILT.contains(&&*name) {
                gather(&path, root, found);
            }
        } else if ENDINGS.contains(&ending) || NAMED.contains(&&*name) {
            let text = fs::read_to_string(&path).unwrap_or_else(|e| panic!("{path:?}: {e}"));
            let inside = path.strip_prefix(root).expect("inside the root");
            found.push(File::new(&inside.to_string_lossy(), &text));
        }
    }
}

/// Whether `word` stands in the line as a word of its own.
pub(crate) fn has_word(line: &str, word: &str) -> bool {
    let glued = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || c == '_');
    line.match_indices(word).any(|(at, _)| {
        !glued(line[..at].chars().next_back()) && !glued(line[at + word.len()..].chars().next())
    })
}

/// What stands between single backticks.
pub(crate) fn backticked(text: &str) -> impl Iterator<Item = &str> {
    text.split('`').skip(1).step_by(2)
}
