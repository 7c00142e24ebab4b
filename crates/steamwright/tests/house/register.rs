//! What is written in the source against what the registers list, and what must stand beside it.

use super::file::{File, read};
use super::shape::declared;
use reckoning::{Assumption, Rule};

/// Statics of this kind that a crate's source declares.
pub(crate) fn written(files: &[File], home: &str, kind: &str) -> Vec<String> {
    files
        .iter()
        .filter(|file| file.is_source() && file.home() == home)
        .flat_map(|file| {
            let lines = file.code_lines().into_iter();
            lines.filter_map(move |(number, line)| {
                declared(line, kind).map(|name| file.at(number, name))
            })
        })
        .collect()
}

/// The crates whose source declares a static of this kind.
pub(crate) fn homes<'a>(files: &'a [File], kind: &str) -> Vec<&'a str> {
    let mut found: Vec<&str> = files
        .iter()
        .filter(|file| file.is_source())
        .filter(|file| {
            file.code_lines()
                .iter()
                .any(|(_, line)| declared(line, kind).is_some())
        })
        .map(File::home)
        .collect();
    found.dedup();
    found
}

/// A fault where not as many are listed as are written. Both lists have no repeats, so that the
/// numbers tell.
pub(crate) fn unlisted(kind: &str, home: &str, written: &[String], listed: usize) -> Vec<String> {
    if written.len() == listed {
        return Vec::new();
    }
    let all = written.join("\n  ");
    let count = written.len();
    vec![format!(
        "{home}: {count} statics of kind {kind} are written, {listed} are listed:\n  {all}"
    )]
}

/// Ids that are given twice.
pub(crate) fn twice<'a>(ids: impl Iterator<Item = &'a str>) -> Vec<String> {
    let mut ids: Vec<&str> = ids.collect();
    ids.sort_unstable();
    ids.windows(2)
        .filter(|pair| pair[0] == pair[1])
        .map(|pair| format!("{} is given twice", pair[0]))
        .collect()
}

/// The tests that a rule lacks: one in which it fires and one in which it is silent, both named
/// for it, in the tests of its crate.
pub(crate) fn untested(files: &[File], home: &str, id: &str) -> Vec<String> {
    let folder = format!("crates/{home}/tests/");
    let name = id.replace(['.', '-'], "_");
    ["fires", "silent"]
        .into_iter()
        .filter(|case| {
            let test = format!("fn {name}_{case}");
            let is_there = files
                .iter()
                .filter(|file| file.path.starts_with(&folder) && file.is_rust())
                .any(|file| has_test(file, &test));
            !is_there
        })
        .map(|case| format!("{home}: rule {id} has no test {name}_{case}…"))
        .collect()
}

fn has_test(file: &File, start: &str) -> bool {
    let mut before = "";
    for (_, line) in file.code_lines() {
        let named = line.trim_start().strip_prefix(start);
        if before.trim() == "#[test]" && named.is_some_and(|rest| rest.starts_with(['(', '_'])) {
            return true;
        }
        before = line;
    }
    false
}

/// What a generated page of the book does not hold.
pub(crate) fn missing(page: &str, wanted: impl Iterator<Item = String>) -> Vec<String> {
    let text = read(&format!("docs/generated/{page}"));
    wanted
        .filter(|words| !text.contains(words.as_str()))
        .map(|words| format!("{page} lacks {words}"))
        .collect()
}

/// What a rule's text lacks.
pub(crate) fn unworded(rule: &Rule) -> Vec<String> {
    let mut faults = Vec::new();
    let mut lacks = |is: bool, what: &str| {
        if is {
            faults.push(format!("rule {} {what}", rule.id));
        }
    };
    lacks(!rule.sentence.ends_with('.'), "is not a sentence");
    lacks(rule.remedy.is_empty(), "has no remedy");
    lacks(rule.cite.place.is_empty(), "has no place in its source");
    faults
}

/// What is wrong with an assumption: its range does not hold its value, or it has no source.
pub(crate) fn unranged(a: &Assumption) -> Vec<String> {
    let mut faults = Vec::new();
    if !(a.low <= a.value && a.value <= a.high && a.low < a.high) {
        faults.push(format!("{}: {} in {}…{}", a.id, a.value, a.low, a.high));
    }
    if a.cite.place.is_empty() || a.meaning.is_empty() {
        faults.push(format!("{} has no place or no meaning", a.id));
    }
    faults
}

/// What the head of a reference or table file lacks, read as text: keys that must be there and
/// not be empty, and a source that is listed.
pub(crate) fn header(file: &File) -> Vec<String> {
    let Ok(document) = file.text().parse::<toml_edit::DocumentMut>() else {
        return vec![format!("{} is not TOML", file.path)];
    };
    let is_table = file.path.contains("/tables/");
    let wanted: &[(&str, &str)] = if is_table {
        &TABLE_HEAD
    } else {
        &REFERENCE_HEAD
    };
    let text = |section: &str, key: &str| {
        let table = if section.is_empty() {
            document.as_item()
        } else {
            document.get(section)?
        };
        let text = table.get(key)?.as_str()?.trim().to_owned();
        (!text.is_empty()).then_some(text)
    };
    let mut faults: Vec<String> = wanted
        .iter()
        .filter(|(section, key)| text(section, key).is_none())
        .map(|(section, key)| format!("{}: [{section}] {key} is missing or empty", file.path))
        .collect();
    let source = text(wanted[0].0, "source");
    if let Some(key) = source.filter(|key| !is_source(key)) {
        faults.push(format!("{}: no source is called {key}", file.path));
    }
    faults
}

const TABLE_HEAD: [(&str, &str); 5] = [
    ("", "name"),
    ("", "source"),
    ("", "place"),
    ("", "seen"),
    ("", "interpolation"),
];
const REFERENCE_HEAD: [(&str, &str); 7] = [
    ("provenance", "family"),
    ("provenance", "source"),
    ("provenance", "place"),
    ("provenance", "kind"),
    ("provenance", "seen"),
    ("provenance", "printed"),
    ("tolerance", "because"),
];

fn is_source(key: &str) -> bool {
    formulas::sources::find(key).is_some()
        || formulas::register::cards().any(|card| card.cite.source.key == key)
}
