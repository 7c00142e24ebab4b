//! `steamwright draw` from outside: pictures, exit codes, what is told where there is none.

use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn draw(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_steamwright"))
        .arg("draw")
        .args(arguments)
        .current_dir(root())
        .output()
        .expect("the command runs")
}

fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).expect("text")
}

const LAUNCH: &str = "examples/launch/plan.toml";
const FERRY: &str = "examples/gas-ferry/plan.toml";
const MILL: &str = "examples/mill-engine/plan.toml";

#[test]
fn everything_that_is_listed_can_be_drawn() {
    all_that_is_listed(LAUNCH, &["boiler", "dryer-bush", "tube-plate.upper"]);
}

#[test]
fn everything_of_a_horizontal_boiler_that_is_listed_can_be_drawn() {
    all_that_is_listed(FERRY, &["boiler", "boiler.across", "end.front", "end.back"]);
}

fn all_that_is_listed(plan: &str, among: &[&str]) {
    let out = draw(&[plan, "funnel"]);
    assert_eq!(out.status.code(), Some(2));
    assert_eq!(text(&out.stdout), "");
    let told = text(&out.stderr);
    let (_, names) = told.split_once("it has ").expect("a list");
    let names: Vec<&str> = names.trim().split(", ").collect();
    for name in among {
        assert!(names.contains(name), "{name}");
    }
    for name in names {
        let out = draw(&[plan, name]);
        assert_eq!(out.status.code(), Some(0), "{name}: {}", text(&out.stderr));
        assert!(text(&out.stdout).contains("<svg"), "{name}");
    }
}

#[test]
fn a_plan_that_does_not_fit_is_drawn_and_the_code_says_so() {
    for what in ["boiler", "tube-plate.upper", "tube-plate.lower"] {
        let out = draw(&[MILL, what]);
        assert_eq!(out.status.code(), Some(1), "{what}");
        assert!(text(&out.stdout).contains("<svg"), "{what}");
    }
}

#[test]
fn a_half_written_plan_is_told_which_fields_are_wanted() {
    for what in ["boiler", "tube-plate.upper"] {
        let out = draw(&["examples/half-written/plan.toml", what]);
        assert_eq!(out.status.code(), Some(2), "{what}");
        assert!(text(&out.stderr).contains("boiler.barrel.length"), "{what}");
    }
}

#[test]
fn the_same_plan_gives_the_same_bytes() {
    let twice = [draw(&[LAUNCH, "boiler"]), draw(&[LAUNCH, "boiler"])];
    assert_eq!(twice[0].stdout, twice[1].stdout);
}

#[test]
fn the_pictures_of_the_book_are_those_of_the_command() {
    let pictures = [
        ("boiler", "launch-boiler.svg"),
        ("tube-plate.lower", "launch-tube-plate.svg"),
        ("dryer-bush", "dryer-bush.svg"),
    ];
    for (what, file) in pictures {
        let path = root().join("docs/generated/pictures").join(file);
        let kept = std::fs::read_to_string(&path).expect("the picture");
        assert!(text(&draw(&[LAUNCH, what]).stdout) == kept, "{file}");
    }
}

#[test]
fn the_picture_in_json_is_the_picture() {
    let out = draw(&[LAUNCH, "dryer-bush", "--json"]);
    let told: Value = serde_json::from_slice(&out.stdout).expect("JSON");
    assert_eq!(told["what"], "dryer-bush");
    assert_eq!(told["svg"], text(&draw(&[LAUNCH, "dryer-bush"]).stdout));
}
