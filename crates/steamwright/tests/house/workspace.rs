//! Manifests: which crate may use which, and which package of others is used where.

use super::file::root;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;

/// Each crate of the workspace with the text of its manifest.
pub(crate) fn crates() -> Vec<(String, String)> {
    let mut found: Vec<(String, String)> = fs::read_dir(root().join("crates"))
        .expect("crates")
        .map(|entry| {
            let entry = entry.expect("an entry");
            let manifest = entry.path().join("Cargo.toml");
            let text =
                fs::read_to_string(&manifest).unwrap_or_else(|e| panic!("{manifest:?}: {e}"));
            (entry.file_name().to_string_lossy().into_owned(), text)
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
    ("solid", &[]),
    ("records", &["plan"]),
    ("design", &["steaming", "proof", "making", "heats", "solid"]),
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

/// Packages that a manifest names, in any of its sections. A package that it renames is named
/// by what it is.
pub(crate) fn dependencies(manifest: &str) -> Vec<String> {
    let document: toml_edit::DocumentMut = manifest.parse().expect("a manifest");
    let sections = ["dependencies", "dev-dependencies", "build-dependencies"];
    let mut found = Vec::new();
    let mut take = |table: &dyn toml_edit::TableLike| {
        for section in sections {
            let named = table.get(section).and_then(|t| t.as_table_like());
            for (key, item) in named.into_iter().flat_map(|t| t.iter()) {
                let package = item.get("package").and_then(|p| p.as_str());
                found.push(package.unwrap_or(key).to_owned());
            }
        }
    };
    take(document.as_table());
    let targets = document.get("target").and_then(|t| t.as_table_like());
    for (_, target) in targets.into_iter().flat_map(|t| t.iter()) {
        if let Some(table) = target.as_table_like() {
            take(table);
        }
    }
    found
}

/// Edges between crates of ours that point the wrong way, and crates that the house does not
/// know.
pub(crate) fn wrong_edges(name: &str, manifest: &str) -> Vec<String> {
    let Some(allowed) = may_use(name) else {
        return vec![format!("the house does not know the crate {name}")];
    };
    dependencies(manifest)
        .into_iter()
        .filter(|used| may_use(used).is_some() && !allowed.contains(used))
        .map(|used| format!("{name} may not use {used}"))
        .collect()
}

/// Packages of others, each with the crates that name it.
pub(crate) fn outside_packages(crates: &[(String, String)]) -> BTreeMap<String, BTreeSet<String>> {
    let mut found: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for (name, manifest) in crates {
        for package in dependencies(manifest) {
            if may_use(&package).is_none() {
                found.entry(package).or_default().insert(name.clone());
            }
        }
    }
    found
}

/// The table of packages in ARCHITECTURE.md: package, crates, reason.
pub(crate) fn told_packages(architecture: &str) -> BTreeMap<String, (BTreeSet<String>, String)> {
    architecture
        .lines()
        .skip_while(|line| *line != "## Packages of others")
        .skip(1)
        .take_while(|line| !line.starts_with("## "))
        .filter_map(|line| {
            let cells: Vec<&str> = line.trim_matches('|').split('|').map(str::trim).collect();
            let [package, homes, reason] = cells[..] else {
                return None;
            };
            let package = package.strip_prefix('`')?.strip_suffix('`')?;
            let homes = homes.split(", ").map(|home| home.replace('`', ""));
            Some((package.to_owned(), (homes.collect(), reason.to_owned())))
        })
        .collect()
}

/// Where the manifests and the table differ.
pub(crate) fn untold_packages(crates: &[(String, String)], architecture: &str) -> Vec<String> {
    let used = outside_packages(crates);
    let told = told_packages(architecture);
    let mut faults = Vec::new();
    for (package, homes) in &used {
        match told.get(package) {
            None => faults.push(format!(
                "ARCHITECTURE.md does not say why `{package}` is used"
            )),
            Some((_, reason)) if reason.is_empty() => {
                faults.push(format!("ARCHITECTURE.md gives no reason for `{package}`"));
            }
            Some((allowed, _)) if !allowed.contains("any") && allowed != homes => {
                faults.push(format!(
                    "`{package}` is used by {homes:?}; ARCHITECTURE.md allows it to {allowed:?}"
                ));
            }
            Some(_) => {}
        }
    }
    let gone = told.keys().filter(|package| !used.contains_key(*package));
    faults.extend(gone.map(|package| format!("ARCHITECTURE.md lists `{package}`, unused")));
    faults
}
