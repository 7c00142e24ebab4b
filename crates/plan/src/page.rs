//! The page of the book that lists every field, written from the register.

use crate::field::{FieldKind, Limits, Named};
use crate::file::File;
use crate::plan::Plan;
use crate::register::{Registered, What, register};
use crate::workshop::Workshop;

const HEAD: &str = "\
# Fields of the plan and the workshop

This page is written from the program's own register of fields; do not edit it.

A quantity is a text with its unit, in whatever unit the maker works: `\"2 1/2 in\"`, `\"16 swg\"`, \
`\"63.5 mm\"`, `\"80 psi\"`, `\"5.5 bar\"`, `\"20 min\"`. A size is such a text, or \
`{ drawn = \"2.5 mm\", tolerance = \"10 %\", made = \"2.46 mm\" }`; a tolerance is a length or a \
share either way, or `{ lower = \"-0.1 mm\", upper = \"0 mm\" }`. Any field may be left out: what \
can be worked out is, and what is missing is named. An empty text, `\"\"`, says that a value was \
taken away.

Limits catch a slip of the unit or of the decimal point. They judge nothing.
";

/// The page.
#[must_use]
pub fn fields_page() -> String {
    let mut page = HEAD.to_owned();
    section(&mut page, Plan::NAME, &register::<Plan>());
    section(&mut page, Workshop::NAME, &register::<Workshop>());
    page
}

fn section(page: &mut String, name: &str, registered: &[Registered]) {
    page.push_str(&format!("\n## {name}\n"));
    let top = registered
        .iter()
        .take_while(|entry| matches!(entry.what, What::Field(_)))
        .count();
    fields(page, "", &registered[..top]);
    for (index, entry) in registered.iter().enumerate().skip(top) {
        let heading = match entry.what {
            What::Table => format!("[{}]", entry.path),
            What::List => format!("[[{}]]", entry.path.replace(".<id>", "")),
            What::Field(_) => continue,
        };
        let meaning = entry.meaning;
        page.push_str(&format!("\n### `{heading}`\n\n{}.\n", capital(meaning)));
        let below = match entry.what {
            What::List => format!("{}.<id>.", entry.path),
            _ => format!("{}.", entry.path),
        };
        let own: Vec<Registered> = registered[index + 1..]
            .iter()
            .filter(|e| matches!(e.what, What::Field(_)))
            .filter(|e| {
                e.path
                    .strip_prefix(&below)
                    .is_some_and(|key| !key.contains('.'))
            })
            .cloned()
            .collect();
        fields(page, &below, &own);
    }
}

fn fields(page: &mut String, below: &str, registered: &[Registered]) {
    if registered.is_empty() {
        return;
    }
    page.push_str("\n| key | meaning | holds |\n| --- | --- | --- |\n");
    for entry in registered {
        if let What::Field(kind) = &entry.what {
            let key = entry.path.strip_prefix(below).unwrap_or(&entry.path);
            let (meaning, holds) = (entry.meaning, holds(kind));
            page.push_str(&format!("| `{key}` | {meaning} | {holds} |\n"));
        }
    }
}

/// What a field holds, in words.
#[must_use]
pub fn holds(kind: &FieldKind) -> String {
    let between = |limits: &Limits| format!("{} to {}", limits.low, limits.high);
    match kind {
        FieldKind::Number { kind, limits } => format!("{}, {}", kind.words(), between(limits)),
        FieldKind::Numbers { kind, limits } => {
            format!("list, each a {}, {}", kind.words(), between(limits))
        }
        FieldKind::Size { limits } => format!("size, {}", between(limits)),
        FieldKind::Count { low, high } if low == high => format!("{low}"),
        FieldKind::Count { low, high } => format!("whole number, {low} to {high}"),
        FieldKind::Counts { low, high } => format!("list of whole numbers, each {low} to {high}"),
        FieldKind::Choice { names, not_yet } => {
            let names: Vec<String> = names.iter().map(named).collect();
            let mut words = names.join(", ");
            if !not_yet.is_empty() {
                let later: Vec<String> = not_yet.iter().map(named).collect();
                words.push_str(&format!("; not worked yet: {}", later.join(", ")));
            }
            words
        }
        FieldKind::Text => "text".to_owned(),
        FieldKind::Texts => "list of texts".to_owned(),
        FieldKind::Id => "lower case letters, digits and hyphens, a letter first".to_owned(),
    }
}

fn named(name: &Named) -> String {
    let Named { name, meaning } = name;
    if meaning.is_empty() {
        format!("`\"{name}\"`")
    } else {
        format!("`\"{name}\"` ({meaning})")
    }
}

fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
