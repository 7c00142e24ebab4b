//! The house rules as tests: what CONTRIBUTING.md asks of every change.
//!
//! Each rule names the file and line at fault. The rules read the tree as text, so that they
//! hold for code that does not compile yet.

mod house;

use house::{crates, rust_files, tree};

#[test]
fn no_file_is_longer_than_500_lines() {
    let long: Vec<String> = rust_files()
        .filter(|f| f.lines.len() > 500)
        .map(|f| format!("{} has {} lines", f.path, f.lines.len()))
        .collect();
    house::none(&long);
}

#[test]
fn crates_depend_only_downwards() {
    let mut faults = Vec::new();
    for (name, manifest) in crates() {
        let Some(allowed) = house::may_use(&name) else {
            faults.push(format!(
                "crate {name} is not in the list of the house and ARCHITECTURE.md"
            ));
            continue;
        };
        let uses = house::dependencies(&manifest);
        for used in uses
            .iter()
            .filter(|u| house::may_use(u).is_some() && !allowed.contains(*u))
        {
            faults.push(format!("{name} may not use {used}"));
        }
    }
    house::none(&faults);
}

/// Unit factors and offsets that have one home.
const FACTORS: &[&str] = &[
    "273.15", "25.4", "0.0254", "304.8", "6894", "6_894", "101325", "101_325", "101.325",
    "1.01325", "0.45359", "0.453_59", "9.80665", "9.806_65", "9.81", "4.54609", "4.546_09",
    "249.09",
];

#[test]
fn unit_factors_stand_in_one_place() {
    let mut faults = Vec::new();
    for file in rust_files().filter(|f| f.is_source() && !f.path.contains("reckoning/src/quantity"))
    {
        for (number, line) in file.code_lines() {
            if FACTORS.iter().any(|factor| house::has_number(line, factor)) {
                faults.push(format!("{}:{number}: {}", file.path, line.trim()));
            }
        }
    }
    house::none(&faults);
}

#[test]
fn only_the_command_prints() {
    let mut faults = Vec::new();
    for file in rust_files().filter(|f| f.is_source() && !f.path.starts_with("crates/steamwright/"))
    {
        for (number, line) in file.code_lines() {
            if ["println!", "print!(", "eprintln!", "eprint!(", "dbg!("]
                .iter()
                .any(|p| line.contains(p))
            {
                faults.push(format!("{}:{number}: {}", file.path, line.trim()));
            }
        }
    }
    house::none(&faults);
}

#[test]
fn the_middle_touches_no_file_clock_network_or_chance() {
    let banned = [
        "std::fs",
        "std::net",
        "std::env",
        "SystemTime",
        "Instant::now",
        "std::process",
        "thread_rng",
        "rand::rng(",
    ];
    let edges = [
        "crates/records/",
        "crates/workbench/",
        "crates/steamwright/",
    ];
    let mut faults = Vec::new();
    for file in rust_files().filter(|f| f.is_source()) {
        if edges.iter().any(|edge| file.path.starts_with(edge)) {
            continue;
        }
        for (number, line) in file.code_lines() {
            if banned.iter().any(|b| line.contains(b)) {
                faults.push(format!("{}:{number}: {}", file.path, line.trim()));
            }
        }
    }
    house::none(&faults);
}

#[test]
fn no_working_is_filed_where_a_root_is_sought() {
    let faults: Vec<String> = rust_files()
        .filter(|f| f.is_source() && !f.path.contains("reckoning/src"))
        .filter(|f| {
            let mut lines = f.code_lines();
            let seeks = f.code_lines().any(|(_, l)| l.contains("bracketed("));
            seeks && lines.any(|(_, l)| l.contains("Working"))
        })
        .map(|f| format!("{} calls a root finder and mentions Working", f.path))
        .collect();
    house::none(&faults);
}

#[test]
fn nothing_unfinished_or_silent_is_left() {
    let banned = [
        "todo!(",
        "unimplemented!(",
        "#[ignore",
        "FIXME",
        ".unwrap_or_default()",
        "allow(dead_code",
        "allow(unused",
    ];
    let mut faults = Vec::new();
    for file in rust_files().filter(|f| !f.path.contains("tests/house")) {
        for (number, line) in file.code_lines() {
            if banned.iter().any(|b| line.contains(b)) {
                faults.push(format!("{}:{number}: {}", file.path, line.trim()));
            }
        }
    }
    house::none(&faults);
}

#[test]
fn nothing_is_called_by_the_words_that_are_not_ours_to_say() {
    let mut faults = Vec::new();
    for file in tree(&["rs", "md", "toml", "css", "js", "html"]) {
        if file.path.contains("tests/house") || file.path == "CONTRIBUTING.md" {
            continue;
        }
        for (number, line) in file.numbered() {
            let lower = line.to_lowercase();
            for word in ["safe", "safely", "approved", "approval"] {
                if house::has_word(&lower, word) && !house::says_it_never_says_so(&lower) {
                    faults.push(format!(
                        "{}:{number}: `{word}` in: {}",
                        file.path,
                        line.trim()
                    ));
                }
            }
        }
    }
    house::none(&faults);
}

#[test]
fn the_project_speaks_of_itself_alone() {
    let mut faults = Vec::new();
    for file in tree(&["rs", "md", "toml", "py", "yml", "sh", "js", "css", "html"]) {
        if file.path.contains("tests/house") {
            continue;
        }
        for (number, line) in file.numbered() {
            let lower = line.to_lowercase();
            let faulty = [
                "transcript",
                "seed document",
                "this session",
                "subagent",
                "/work/",
                "/farm/",
                "/root/",
            ]
            .iter()
            .any(|b| lower.contains(b));
            if faulty {
                faults.push(format!("{}:{number}: {}", file.path, line.trim()));
            }
        }
    }
    house::none(&faults);
}

#[test]
fn every_card_in_the_text_is_registered() {
    let written: usize = rust_files()
        .filter(|f| f.path.starts_with("crates/formulas/src"))
        .flat_map(|f| {
            f.code_lines()
                .map(|(_, l)| l.contains(": Card = Card {"))
                .collect::<Vec<_>>()
        })
        .filter(|is| *is)
        .count();
    let registered = formulas::register::cards().count();
    assert_eq!(written, registered, "cards written and cards registered");
}

#[test]
fn every_rule_has_a_firing_and_a_silent_case() {
    let mut faults = Vec::new();
    let mut count = 0;
    for file in rust_files().filter(|f| f.is_source() && !f.path.starts_with("crates/reckoning/")) {
        for id in house::rule_ids(&file) {
            count += 1;
            let name = id.replace(['.', '-'], "_");
            let home = file
                .path
                .split("/src/")
                .next()
                .unwrap_or_default()
                .to_owned();
            let tests: String = rust_files()
                .filter(|f| f.path.starts_with(&home) && f.path.contains("/tests/"))
                .map(|f| f.lines.join("\n"))
                .collect();
            for case in ["fires", "silent"] {
                if !tests.contains(&format!("fn {name}_{case}")) {
                    faults.push(format!(
                        "{}: rule {id} has no test {name}_{case}…",
                        file.path
                    ));
                }
            }
        }
    }
    assert!(count > 0, "no rule was found: the search is at fault");
    house::none(&faults);
}

#[test]
fn architecture_is_short_and_names_only_what_is_there() {
    let text = house::read("ARCHITECTURE.md");
    assert!(
        text.lines().count() <= 200,
        "ARCHITECTURE.md has more than 200 lines"
    );
    let mut faults: Vec<String> = house::backticked(&text)
        .filter(|name| name.contains('/') || name.ends_with(".rs") || name.ends_with(".md"))
        .filter(|name| !name.contains(' ') && !name.contains('<'))
        .filter(|name| !house::exists(name))
        .map(|name| format!("ARCHITECTURE.md names `{name}`, which is not there"))
        .collect();
    for (name, _) in crates() {
        if !text.contains(&format!("`{name}`")) {
            faults.push(format!("ARCHITECTURE.md does not name the crate `{name}`"));
        }
    }
    for package in house::outside_packages() {
        if !text.contains(&format!("`{package}`")) {
            faults.push(format!(
                "ARCHITECTURE.md does not say why `{package}` is used"
            ));
        }
    }
    house::none(&faults);
}

#[test]
fn every_example_reads() {
    let mut count = 0;
    for file in tree(&["toml"])
        .into_iter()
        .filter(|f| f.path.starts_with("examples/"))
    {
        count += 1;
        assert!(
            file.text().parse::<toml_edit::DocumentMut>().is_ok(),
            "{} is not TOML",
            file.path
        );
    }
    assert!(
        count >= 4,
        "three plans and a workshop are wanted in examples/, found {count}"
    );
}
