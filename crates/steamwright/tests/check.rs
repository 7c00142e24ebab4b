//! The command `check`: words, JSON and exit codes as `docs/json.md` promises them.

use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn run(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_steamwright"))
        .args(arguments)
        .current_dir(root())
        .output()
        .expect("the command runs")
}

fn words(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("text")
}

fn json(plan: &str) -> Value {
    let output = run(&["check", plan, "--json"]);
    serde_json::from_slice(&output.stdout).expect("JSON")
}

fn in_folder(text: &str) -> (tempfile::TempDir, String) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("plan.toml");
    std::fs::write(&path, text).expect("written");
    let shown = path.display().to_string();
    (folder, shown)
}

#[test]
fn without_a_command_the_example_plan_is_checked() {
    let output = run(&[]);
    let text = words(&output);
    assert!(text.starts_with("No command was given"), "{text}");
    for question in ["Duty", "Steaming", "Proof", "Parts", "Making"] {
        assert!(
            text.contains(&format!("\n{question}: ")),
            "{question} in\n{text}"
        );
    }
    assert!(text.contains("not a certificate"));
}

#[test]
fn the_questions_are_told_worst_first() {
    let told = |plan: &str| words(&run(&["check", plan]));
    let text = told("examples/gas-ferry/plan.toml");
    let at = |word: &str| {
        text.find(word)
            .unwrap_or_else(|| panic!("{word} in\n{text}"))
    };
    assert!(at("Proof: ") < at("Duty: met on condition"), "{text}");
    assert!(at("Duty: met on condition") < at("Not asked"), "{text}");
}

#[test]
fn json_has_every_question_in_the_order_of_the_job() {
    let told = json("examples/launch/plan.toml");
    let names: Vec<&str> = told["questions"]
        .as_array()
        .expect("questions")
        .iter()
        .filter_map(|q| q["question"].as_str())
        .collect();
    let wanted = [
        "duty", "steaming", "proof", "parts", "making", "heats", "job", "trials", "papers",
    ];
    assert_eq!(names, wanted);
}

/// The keys that `docs/json.md` promises.
#[test]
fn json_keeps_its_keys() {
    let told = json("examples/launch/plan.toml");
    let has = |value: &Value, keys: &[&str]| {
        for key in keys {
            assert!(value.get(key).is_some(), "{key} in {value}");
        }
    };
    has(
        &told,
        &[
            "plan",
            "questions",
            "findings",
            "agreements",
            "leading_set",
            "parts",
            "gaps",
            "steaming",
            "problems",
        ],
    );
    has(
        &told["findings"][0],
        &[
            "question",
            "leads",
            "rule",
            "set",
            "verdict",
            "tight",
            "place",
            "says",
            "remedy",
            "margin",
            "weakest_origin",
            "conditions",
            "source",
            "working",
        ],
    );
    has(
        &told["steaming"],
        &[
            "working_pa",
            "valve_pa",
            "outlook",
            "points",
            "crossings",
            "band",
            "assumed",
        ],
    );
    has(
        &told["steaming"]["band"],
        &[
            "value",
            "low",
            "middle",
            "high",
            "without_balance",
            "shares",
        ],
    );
    has(&told["parts"][0], &["id", "says", "mass_kg"]);
}

#[test]
fn an_answer_with_something_against_it_ends_with_one() {
    for plan in [
        "examples/mill-engine/plan.toml",
        "examples/half-written/plan.toml",
    ] {
        assert_eq!(run(&["check", plan]).status.code(), Some(1), "{plan}");
    }
}

#[test]
fn every_fault_of_a_file_is_told_at_once_with_its_place() {
    let (_folder, plan) = in_folder(
        "format = 1\nform = \"locomotive\"\n\n[boiler.barrel]\nwal = \"3 mm\"\nwall = 3\n\
         outside = \"4 psi\"\n",
    );
    let output = run(&["check", &plan]);
    let text = words(&output);
    assert_eq!(output.status.code(), Some(1));
    for place in [":2:8", ":5:1", ":6:8", ":7:14"] {
        assert!(
            text.contains(&format!("plan.toml{place}")),
            "{place} in\n{text}"
        );
    }
    let told = json(&plan);
    assert_eq!(
        told["problems"].as_array().map(Vec::len),
        Some(4),
        "{}",
        told["problems"]
    );
    assert_eq!(told["problems"][0]["line"], 2);
}

#[test]
fn a_file_that_is_not_there_ends_with_two() {
    let output = run(&["check", "nowhere/plan.toml"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(output.stdout.is_empty());
    assert!(!output.stderr.is_empty());
}

#[test]
fn one_part_is_told_with_its_working_and_an_unknown_one_lists_them() {
    let plan = "examples/launch/plan.toml";
    let text = words(&run(&["check", plan, "--part", "barrel", "--working"]));
    assert!(text.contains("e = "), "a law with its result in\n{text}");
    assert!(
        text.contains("EN 13445") || text.contains("pressure vessels"),
        "{text}"
    );
    assert!(!text.contains("firebox:"), "only the barrel in\n{text}");
    let unknown = run(&["check", plan, "--part", "dome"]);
    assert_eq!(unknown.status.code(), Some(2));
    let said = String::from_utf8(unknown.stderr).expect("text");
    assert!(
        said.contains("`dome`") && said.contains("firebox"),
        "{said}"
    );
}

#[test]
fn all_tells_met_checks_and_the_other_rule_sets() {
    let plan = "examples/launch/plan.toml";
    let brief = words(&run(&["check", plan]));
    let all = words(&run(&["check", plan, "--all"]));
    assert!(!brief.contains("What is met"));
    assert!(
        all.contains("What is met") && all.contains("asme-viii"),
        "{all}"
    );
}

/// Data parallelism never changes a result.
#[test]
fn the_same_plan_gives_the_same_bytes_on_one_thread_and_on_two() {
    let on = |threads: &str| {
        Command::new(env!("CARGO_BIN_EXE_steamwright"))
            .args(["check", "examples/launch/plan.toml", "--json"])
            .env("RAYON_NUM_THREADS", threads)
            .current_dir(root())
            .output()
            .expect("the command runs")
            .stdout
    };
    let one = on("1");
    assert!(!one.is_empty());
    assert_eq!(one, on("2"));
    assert_eq!(one, on("2"));
}
