//! Rules that look at a whole file: its length, its functions, what it declares.

use super::HouseRule;
use super::file::{File, has_word};

/// Most lines of a file.
const FILE_LINES: usize = 500;
/// Most lines of a function's body, blank lines and comments left out.
const FUNCTION_LINES: usize = 40;

/// The rules.
pub(crate) const RULES: &[HouseRule] = &[
    HouseRule {
        name: "no file is too long",
        find: file_length,
        broken: &[("crates/a/src/b.rs", "// ×501")],
        kept: &[("crates/a/src/b.rs", "// ×500")],
    },
    HouseRule {
        name: "no function is too long",
        find: function_length,
        broken: &[
            ("crates/a/src/b.rs", "fn f() {\n    1; ×41\n}"),
            (
                "crates/a/src/b.rs",
                "impl A {\n    pub(crate) const fn f(\n        x: f64,\n    ) -> f64 {\n        1; ×41\n    }\n}",
            ),
        ],
        kept: &[
            ("crates/a/tests/b.rs", "fn f() {\n    1; ×41\n}"),
            (
                "crates/a/src/b.rs",
                "fn f() {\n    // why ×9\n    1; ×40\n}",
            ),
        ],
    },
    HouseRule {
        name: "no working is filed where a root is sought",
        find: roots_and_working,
        broken: &[(
            "crates/a/src/b.rs",
            "use reckoning::Working;\nlet x = solve::bracketed(f, low, high);",
        )],
        kept: &[
            ("crates/a/src/b.rs", "let x = bracketed(f, low, high);"),
            (
                "crates/a/src/b.rs",
                "//! `bracketed`\nuse reckoning::Working;",
            ),
        ],
    },
    HouseRule {
        name: "cards, rules and assumptions stand in statics of their own",
        find: loose_declarations,
        broken: &[
            ("crates/a/src/b.rs", "const HOLDS: Rule = Rule {"),
            ("crates/a/src/b.rs", "static TWO: [Card; 2] = ["),
            ("crates/a/src/b.rs", "pub static TWO: &[Assumption] = &["),
            ("crates/a/src/b.rs", "    let mine = Card {"),
        ],
        kept: &[
            (
                "crates/a/src/b.rs",
                "pub(crate) static HOLDS: Rule = Rule {",
            ),
            (
                "crates/a/src/b.rs",
                "pub static CARDS: &[&Card] = &[&HOLDS];",
            ),
            ("crates/reckoning/src/finding.rs", "pub struct Rule {"),
            ("crates/a/src/b.rs", "fn same(card: &Card) -> bool {"),
            (
                "crates/a/src/b.rs",
                "const fn ratio(id: &str) -> Assumption {\n    Assumption {",
            ),
        ],
    },
];

fn file_length(files: &[File]) -> Vec<String> {
    files
        .iter()
        .filter(|file| file.is_rust() && file.lines.len() > FILE_LINES)
        .map(|file| format!("{} has {} lines", file.path, file.lines.len()))
        .collect()
}

fn function_length(files: &[File]) -> Vec<String> {
    files
        .iter()
        .filter(|file| file.is_source())
        .flat_map(long_functions)
        .collect()
}

/// Functions whose bodies are too long. The text is that of the formatter: a body opens at the
/// end of a line and closes with a brace at the indent of its `fn`.
fn long_functions(file: &File) -> Vec<String> {
    let lines = file.code_lines();
    let mut faults = Vec::new();
    for (at, (number, line)) in lines.iter().enumerate() {
        let indent = line.len() - line.trim_start().len();
        if !begins_function(line) {
            continue;
        }
        let closing = format!("{}}}", " ".repeat(indent));
        let body = lines[at..]
            .iter()
            .skip_while(|(_, l)| !l.ends_with(['{', ';', '}']))
            .skip(1)
            .take_while(|(_, l)| *l != closing)
            .filter(|(_, l)| !l.trim().is_empty())
            .count();
        let has_body = lines[at..]
            .iter()
            .find(|(_, l)| l.ends_with(['{', ';', '}']))
            .is_some_and(|(_, l)| l.ends_with('{'));
        if has_body && body > FUNCTION_LINES {
            faults.push(file.at(*number, &format!("{} ({body} lines)", line.trim())));
        }
    }
    faults
}

fn begins_function(line: &str) -> bool {
    let mut words = line.split_whitespace();
    words
        .by_ref()
        .find(|word| !(word.starts_with("pub") || ["const", "unsafe", "async"].contains(word)))
        == Some("fn")
}

fn roots_and_working(files: &[File]) -> Vec<String> {
    files
        .iter()
        .filter(|file| file.is_source() && file.home() != "reckoning")
        .filter(|file| {
            let has = |word| file.code_lines().iter().any(|(_, l)| has_word(l, word));
            has("bracketed") && has("Working")
        })
        .map(|file| format!("{} calls a root finder and mentions Working", file.path))
        .collect()
}

/// Kinds of things that are written once and listed in a register.
pub(crate) const LISTED: &[&str] = &["Card", "Rule", "Assumption"];

/// The name of the static that this line declares to hold one thing of this kind.
pub(crate) fn declared<'a>(line: &'a str, kind: &str) -> Option<&'a str> {
    let (before, after) = line.split_once("static ")?;
    let outside = before.trim();
    let (name, rest) = after.split_once(": ")?;
    let is_static = outside.is_empty() || outside.starts_with("pub");
    (is_static && rest.strip_prefix(kind)?.starts_with(" =")).then_some(name)
}

fn loose_declarations(files: &[File]) -> Vec<String> {
    let mut faults = Vec::new();
    for file in files.iter().filter(|file| file.is_source()) {
        let mut before = "";
        for (number, line) in file.code_lines() {
            if LISTED.iter().any(|kind| is_loose(before, line, kind)) {
                faults.push(file.at(number, line));
            }
            before = line;
        }
    }
    faults
}

fn is_loose(before: &str, line: &str, kind: &str) -> bool {
    if declared(line, kind).is_some() {
        return false;
    }
    let made = format!("{kind} {{");
    let opens = line.match_indices(&made).any(|(at, _)| {
        let lead = line[..at].trim_end();
        let names_a_type = ["struct", "enum", "impl", "for", "->", "&"]
            .iter()
            .any(|word| lead.ends_with(word));
        let glued = line[..at].ends_with(|c: char| c.is_alphanumeric() || c == '_');
        !names_a_type && !glued
    });
    // A function that makes one for a static is not loose: its statics are counted.
    let for_a_static = before.trim_end().ends_with(&format!("-> {made}"));
    let many = [format!("[{kind}]"), format!("[{kind};")];
    let list = line.contains("static ") && many.iter().any(|m| line.contains(m.as_str()));
    (opens && !for_a_static) || list
}
