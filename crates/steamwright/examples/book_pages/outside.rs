//! What is read from the folders of the workspace for the page of checks: reference files, grids
//! made by general libraries, and the tests that say in their names what they rest on.

use formulas::reference::{self, Catalogue, Check};
use std::path::{Path, PathBuf};

/// A grid of values that a general library made.
pub(crate) struct Grid {
    pub(crate) file: String,
    /// The head of the file, which names the library and its version.
    pub(crate) says: String,
    pub(crate) rows: usize,
}

/// A test that names its evidence.
pub(crate) struct Witness {
    pub(crate) home: String,
    pub(crate) kind: &'static str,
    pub(crate) says: String,
}

/// Every check value, worked, in the order of the files.
pub(crate) fn checks() -> Result<Vec<Check>, String> {
    let root = crates().join("formulas");
    let catalogue = Catalogue::registered();
    let mut files = Vec::new();
    let mut faults = Vec::new();
    for path in under(&root.join("reference"), "toml")? {
        match reference::read(&inside(&path, &root), &text(&path)?, &catalogue) {
            Ok(file) => files.push(file),
            Err(more) => faults.extend(more.iter().map(ToString::to_string)),
        }
    }
    if faults.is_empty() {
        Ok(reference::checks(&files))
    } else {
        Err(faults.join("\n"))
    }
}

/// Every grid beside the tests.
pub(crate) fn grids() -> Result<Vec<Grid>, String> {
    let root = crates();
    let mut found = Vec::new();
    for path in under(&root, "csv")? {
        let text = text(&path)?;
        let (heads, rows): (Vec<&str>, Vec<&str>) =
            text.lines().partition(|line| line.starts_with('#'));
        let heads: Vec<&str> = heads
            .iter()
            .map(|l| l.trim_start_matches('#').trim())
            .collect();
        found.push(Grid {
            file: inside(&path, &root),
            says: heads.join(" "),
            rows: rows.len().saturating_sub(1),
        });
    }
    Ok(found)
}

const KINDS: [(&str, &str); 4] = [
    ("published", "published"),
    ("worked", "worked by hand"),
    ("independent", "independent calculation"),
    ("identity", "identity"),
];

/// Every test whose name begins with a kind of evidence.
pub(crate) fn witnesses() -> Result<Vec<Witness>, String> {
    let root = crates();
    let mut found = Vec::new();
    for path in under(&root, "rs")? {
        let name = inside(&path, &root);
        let home = name.split('/').next().unwrap_or("").to_owned();
        // The command has no evidence of its own, and the harness over the files is told apart.
        if home == "steamwright" || name == "formulas/tests/reference.rs" {
            continue;
        }
        let text = text(&path)?;
        let tests = text
            .lines()
            .zip(text.lines().skip(1))
            .filter(|(before, _)| before.trim() == "#[test]")
            .filter_map(|(_, line)| line.trim().strip_prefix("fn ")?.split('(').next());
        found.extend(tests.filter_map(|test| witness(&home, test)));
    }
    Ok(found)
}

fn witness(home: &str, test: &str) -> Option<Witness> {
    let (word, says) = test.split_once('_')?;
    let (_, kind) = KINDS.iter().find(|(key, _)| *key == word)?;
    Some(Witness {
        home: home.to_owned(),
        kind,
        says: says.replace('_', " "),
    })
}

fn crates() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn inside(path: &Path, root: &Path) -> String {
    let inside = path.strip_prefix(root).unwrap_or(path);
    inside.to_string_lossy().into_owned()
}

fn text(path: &Path) -> Result<String, String> {
    std::fs::read_to_string(path).map_err(|e| format!("{}: {e}", path.display()))
}

/// Every file under a folder with this ending, in order.
fn under(folder: &Path, ending: &str) -> Result<Vec<PathBuf>, String> {
    let mut found = Vec::new();
    gather(folder, ending, &mut found).map_err(|e| format!("{}: {e}", folder.display()))?;
    found.sort();
    Ok(found)
}

fn gather(folder: &Path, ending: &str, found: &mut Vec<PathBuf>) -> std::io::Result<()> {
    for entry in std::fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            gather(&path, ending, found)?;
        } else if path.extension().is_some_and(|e| e == ending) {
            found.push(path);
        }
    }
    Ok(())
}
