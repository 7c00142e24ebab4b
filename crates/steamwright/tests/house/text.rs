//! Rules that look at one line at a time.

use super::HouseRule;
use super::file::{File, has_word};

/// The rules.
pub(crate) const RULES: &[HouseRule] = &[
    HouseRule {
        name: "unit factors stand in one place",
        find: unit_factors,
        broken: &[
            ("crates/a/src/b.rs", "let t_k = t_c + 273.15;"),
            ("crates/a/src/b.rs", "const PSI: f64 = 6_894.757;"),
            ("crates/a/src/b.rs", "let p = p_bar * 1e5 + 101_325.0;"),
            (
                "crates/a/src/b.rs",
                "#[cfg(test)]\nmod tests;\nlet d_mm = 25.4 * inch;",
            ),
        ],
        kept: &[
            ("crates/reckoning/src/quantity/unit.rs", "factor: 25.4e-3,"),
            (
                "crates/a/src/b.rs",
                "// 25.4 mm to the inch\nlet d = 125.4 + x25.4;",
            ),
            ("crates/a/tests/b.rs", "let t_k = t_c + 273.15;"),
            (
                "crates/a/src/b.rs",
                "#[cfg(test)]\nmod tests {\n    let t = 273.15;\n}",
            ),
        ],
    },
    HouseRule {
        name: "only the command prints",
        find: printing,
        broken: &[
            ("crates/a/src/b.rs", "    println!(\"{x}\");"),
            ("crates/a/src/b.rs", "    let y = dbg!(x);"),
        ],
        kept: &[
            ("crates/steamwright/src/output.rs", "    println!(\"{x}\");"),
            ("crates/a/src/b.rs", "/// println!(\"{x}\");"),
        ],
    },
    HouseRule {
        name: "the middle touches no file, clock, network or chance",
        find: outside_world,
        broken: &[
            ("crates/a/src/b.rs", "use std::fs;"),
            ("crates/a/src/b.rs", "let now = std::time::Instant::now();"),
            ("crates/a/src/b.rs", "let key = std::env::var(\"KEY\");"),
        ],
        kept: &[
            ("crates/steamwright/src/b.rs", "use std::fs;"),
            ("crates/a/tests/b.rs", "use std::fs;"),
        ],
    },
    HouseRule {
        name: "nothing unfinished or silent is left",
        find: unfinished,
        broken: &[
            ("crates/a/src/b.rs", "    todo!(\"later\")"),
            ("crates/a/tests/b.rs", "#[ignore = \"slow\"]"),
            ("crates/a/src/b.rs", "let id = id.unwrap_or_default();"),
            ("crates/a/src/b.rs", "#![allow(dead_code)]"),
        ],
        kept: &[("crates/a/src/b.rs", "let id = id.unwrap_or(\"bush\");")],
    },
    HouseRule {
        name: "words that are not ours to say are not said",
        find: words,
        broken: &[
            ("docs/a.md", "This boiler is safe."),
            ("crates/a/src/b.rs", "says: \"Approved for 80 psi\""),
        ],
        kept: &[
            ("docs/a.md", "It never says \"safe\"."),
            ("docs/a.md", "the safety valve, unsafe code"),
        ],
    },
    HouseRule {
        name: "the project speaks of itself alone",
        find: itself,
        broken: &[
            ("crates/a/src/b.rs", "// see /root/notes"),
            ("docs/a.md", concat!("as the sub", "agent found")),
        ],
        kept: &[("docs/a.md", "the workshop, the root of the weld, a farm")],
    },
    HouseRule {
        name: "a file of tests beside the code is built for tests only",
        find: test_files,
        broken: &[
            ("crates/a/src/b.rs", "mod tests;"),
            ("crates/a/src/b.rs", "#[cfg(unix)]\nmod tests;"),
        ],
        kept: &[("crates/a/src/b.rs", "#[cfg(test)]\nmod tests;")],
    },
];

/// Unit factors and offsets that have one home. Those that stand at the head of longer numbers
/// are in `HEADS`.
const FACTORS: &[&str] = &[
    "273.15", "25.4", "0.0254", "304.8", "101325", "101_325", "101.325", "1.01325", "9.80665",
    "9.806_65", "9.81",
];
const HEADS: &[&str] = &[
    "6894", "6_894", "0.45359", "0.453_59", "4.54609", "4.546_09", "249.08", "47.88", "745.69",
];

fn unit_factors(files: &[File]) -> Vec<String> {
    in_code(files, |file| {
        file.is_source() && !file.path.starts_with("crates/reckoning/src/quantity")
    })
    .filter(|(_, _, line)| {
        FACTORS.iter().any(|number| has_number(line, number, false))
            || HEADS.iter().any(|number| has_number(line, number, true))
    })
    .map(|(file, number, line)| file.at(number, line))
    .collect()
}

/// Whether `number` stands in the line as a number of its own; `more_digits` lets it go on.
fn has_number(line: &str, number: &str, more_digits: bool) -> bool {
    line.match_indices(number).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        let mut after = line[at + number.len()..].chars();
        let glued =
            |c: Option<char>| c.is_some_and(|c| c.is_ascii_alphanumeric() || c == '.' || c == '_');
        let goes_on = match after.next() {
            // A fraction of noughts and an exponent leave the number what it is.
            Some('.') => after.next().is_some_and(|c| ('1'..='9').contains(&c)),
            Some('e') => false,
            next => glued(next),
        };
        !glued(before) && (more_digits || !goes_on)
    })
}

fn printing(files: &[File]) -> Vec<String> {
    having(
        files,
        |file| file.is_source() && file.home() != "steamwright",
        &["println!", "print!(", "eprintln!", "eprint!(", "dbg!("],
    )
}

/// Crates at the edge, which may open files and look at the clock.
const EDGES: &[&str] = &["records", "workbench", "steamwright"];

fn outside_world(files: &[File]) -> Vec<String> {
    having(
        files,
        |file| file.is_source() && !EDGES.contains(&file.home()),
        &[
            "std::fs",
            "std::net",
            "std::env",
            "env!(",
            "SystemTime",
            "Instant::now",
            "std::process",
            "thread_rng",
            "rand::rng(",
        ],
    )
}

fn unfinished(files: &[File]) -> Vec<String> {
    having(
        files,
        |file| file.is_rust() && !file.is_house(),
        &[
            "todo!(",
            "unimplemented!(",
            "#[ignore",
            "FIXME",
            ".unwrap_or_default()",
            "allow(dead_code",
            "allow(unused",
        ],
    )
}

fn words(files: &[File]) -> Vec<String> {
    everywhere(files, |line| {
        let says_it_never_says_so = line.contains("never") || line.contains("words \"");
        !says_it_never_says_so
            && ["safe", "safely", "approved", "approval"]
                .iter()
                .any(|word| has_word(line, word))
    })
}

fn itself(files: &[File]) -> Vec<String> {
    // Written in halves, so that this file keeps the rule it states.
    let banned = [
        concat!("trans", "cript"),
        concat!("seed ", "document"),
        concat!("this ", "session"),
        concat!("sub", "agent"),
        concat!("/wo", "rk/"),
        concat!("/fa", "rm/"),
        "/root/",
    ];
    everywhere(files, |line| banned.iter().any(|b| line.contains(b)))
}

fn test_files(files: &[File]) -> Vec<String> {
    let mut faults = Vec::new();
    for file in files.iter().filter(|file| file.is_source()) {
        let mut before = "";
        for (number, line) in file.numbered() {
            if line.trim() == "mod tests;" && before.trim() != "#[cfg(test)]" {
                faults.push(file.at(number, line));
            }
            before = line;
        }
    }
    faults
}

/// Lines of code of some files.
fn in_code(
    files: &[File],
    which: impl Fn(&File) -> bool,
) -> impl Iterator<Item = (&File, usize, &str)> {
    files
        .iter()
        .filter(move |file| which(file))
        .flat_map(|file| {
            let lines = file.code_lines().into_iter();
            lines.map(move |(number, line)| (file, number, line))
        })
}

/// Lines of code of some files that have one of these texts.
fn having(files: &[File], which: impl Fn(&File) -> bool, banned: &[&str]) -> Vec<String> {
    in_code(files, which)
        .filter(|(_, _, line)| banned.iter().any(|b| line.contains(b)))
        .map(|(file, number, line)| file.at(number, line))
        .collect()
}

/// Lines of any file, comments too, in lower case, that are at fault. The files that state the
/// rules themselves are left out.
fn everywhere(files: &[File], at_fault: impl Fn(&str) -> bool) -> Vec<String> {
    files
        .iter()
        .filter(|file| !file.is_house() && file.path != "CONTRIBUTING.md")
        .flat_map(|file| {
            file.numbered()
                .map(move |(number, line)| (file, number, line))
        })
        .filter(|(_, _, line)| at_fault(&line.to_lowercase()))
        .map(|(file, number, line)| file.at(number, line))
        .collect()
}
