//! `steamwright stress` from outside: words, pictures, JSON, exit codes.

use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

const LAUNCH: &str = "examples/launch/plan.toml";

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn stress(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_steamwright"))
        .arg("stress")
        .args(arguments)
        .current_dir(root())
        .output()
        .expect("the command runs")
}

fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).expect("text")
}

#[test]
fn the_answer_stands_beside_the_formula_and_says_so() {
    let out = stress(&[LAUNCH, "foundation-ring"]);
    assert_eq!(out.status.code(), Some(0), "{}", text(&out.stderr));
    let words = text(&out.stdout);
    let flat = words.split_whitespace().collect::<Vec<_>>().join(" ");
    for said in [
        "decides nothing",
        "It leaves out:",
        "ours.ring-bending",
        "no verdict reads it",
    ] {
        assert!(flat.contains(said), "{said}");
    }
    assert!(words.lines().all(|line| line.chars().count() <= 96));
}

#[test]
fn the_picture_in_json_is_the_picture_and_is_the_same_each_time() {
    let json = stress(&[LAUNCH, "bush.valve", "--json"]);
    let told: Value = serde_json::from_slice(&json.stdout).expect("JSON");
    let picture = stress(&[LAUNCH, "bush.valve", "--picture"]);
    assert!(text(&picture.stdout).starts_with("<svg"));
    assert_eq!(told["svg"], text(&picture.stdout));
    assert_eq!(told["decides"], false);
    assert_eq!(told["found"].as_array().map(Vec::len), Some(3));
    assert!(told["beside"].as_array().is_some_and(|b| !b.is_empty()));
    let hoop = stress(&[LAUNCH, "bush.valve", "--picture", "--of", "hoop"]);
    assert!(text(&hoop.stdout).contains("hoop stress"));
}

#[test]
fn what_cannot_be_asked_is_told_with_its_reason() {
    let plate = stress(&[LAUNCH, "tube-plate.upper"]);
    assert_eq!(plate.status.code(), Some(2));
    assert!(text(&plate.stderr).contains("tubes stand in rows"));
    let funnel = stress(&[LAUNCH, "funnel"]);
    assert_eq!(funnel.status.code(), Some(2));
    assert!(text(&funnel.stderr).contains("foundation-ring, bush.valve"));
    let half = stress(&["examples/half-written/plan.toml", "foundation-ring"]);
    assert_eq!(half.status.code(), Some(2));
    assert_eq!(text(&half.stdout), "");
}

#[test]
fn the_check_does_not_know_of_the_second_opinion() {
    let out = Command::new(env!("CARGO_BIN_EXE_steamwright"))
        .args(["check", LAUNCH])
        .current_dir(root())
        .output()
        .expect("the command runs");
    assert!(!text(&out.stdout).contains("finite elements"));
}
