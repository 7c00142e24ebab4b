//! The page of checks: every outside value, what the code gives, and how far they lie apart.

use crate::cell;
use formulas::reference::{self, Catalogue, Check, Evidence};
use reckoning::quantity::show::{figures, to_uncertainty};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

/// The page, or the faults of the reference files.
pub(crate) fn page() -> Result<String, String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../formulas");
    let mut paths = Vec::new();
    gather(&root.join("reference"), &mut paths).map_err(|e| e.to_string())?;
    paths.sort();
    let catalogue = Catalogue::registered();
    let mut files = Vec::new();
    let mut faults = Vec::new();
    for path in paths {
        let text = std::fs::read_to_string(&path).map_err(|e| e.to_string())?;
        let name = path.strip_prefix(&root).unwrap_or(&path).to_string_lossy();
        match reference::read(&name, &text, &catalogue) {
            Ok(file) => files.push(file),
            Err(more) => faults.extend(more.iter().map(ToString::to_string)),
        }
    }
    if faults.is_empty() {
        Ok(write(&reference::checks(&files)))
    } else {
        Err(faults.join("\n"))
    }
}

fn gather(folder: &Path, paths: &mut Vec<PathBuf>) -> std::io::Result<()> {
    for entry in std::fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            gather(&path, paths)?;
        } else if path.extension().is_some_and(|e| e == "toml") {
            paths.push(path);
        }
    }
    Ok(())
}

fn write(checks: &[Check]) -> String {
    let mut out = String::from(
        "# Checks\n\nThis page is made by running the code. Each row is a value from outside the \
         project, what the formula gives for the same inputs, and how far the two lie apart. The \
         distance allowed comes from the printed digits or from what the source says of itself, \
         never from what passes.\n\n",
    );
    counts(&mut out, checks);
    let mut family = "";
    let mut checks: Vec<&Check> = checks.iter().collect();
    checks.sort_by_key(|c| family_of(c.card));
    for check in checks {
        let own = family_of(check.card);
        if own != family {
            family = own;
            out += &format!(
                "\n## {own}\n\n| formula | inputs | outside value | given here | apart | allowed | \
                 from | |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n"
            );
        }
        out += &row(check);
    }
    out
}

fn family_of(card: &str) -> &str {
    card.split('.').next().unwrap_or(card)
}

/// How many values of each kind there are, what was seen only in memory, and what is missed.
fn counts(out: &mut String, checks: &[Check]) {
    *out += "| kind of evidence | values | of these from memory | missed |\n| --- | --- | --- | --- |\n";
    for kind in Evidence::ALL {
        let of: Vec<&Check> = checks.iter().filter(|c| c.kind == kind).collect();
        if of.is_empty() {
            continue;
        }
        let memory = of.iter().filter(|c| c.seen == "from memory").count();
        let missed = of.iter().filter(|c| !c.is_met()).count();
        // Writing to a String cannot fail.
        let _: std::fmt::Result = writeln!(
            out,
            "| {} | {} | {memory} | {missed} |",
            kind.words(),
            of.len()
        );
    }
}

fn row(check: &Check) -> String {
    let given: Vec<String> = check
        .given
        .iter()
        .map(|(s, text)| format!("{s} = {text}"))
        .collect();
    let unit = check.unit.symbol;
    let (found, apart) = match (&check.found, check.deviation()) {
        (Ok(found), Some(apart)) => (
            format!("{} {unit}", figures(*found, 8)),
            to_uncertainty(apart, check.tolerance),
        ),
        (Err(refused), _) => (refused.to_string(), String::new()),
        (Ok(_), None) => (String::new(), String::new()),
    };
    let cells = [
        check.card.to_owned(),
        given.join(", "),
        format!("{} = {}", check.symbol, check.written),
        found,
        apart,
        format!("{} ({})", figures(check.tolerance, 2), check.because),
        format!(
            "{}, {}; {}, {}",
            check.source.title,
            check.place,
            check.kind.words(),
            check.seen
        ),
        if check.is_met() { "met" } else { "**missed**" }.to_owned(),
    ]
    .map(|text| cell(&text));
    format!("| {} |\n", cells.join(" | "))
}
