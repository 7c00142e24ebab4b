//! `steamwright propose` and `steamwright largest` from outside: files, exit codes, JSON.

use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// An invented beginning.
const BEGINNING: &str = r#"# A launch, invented.
format = 1
name = "Launch"
form = "vertical, wet firebox, fire tubes"

[duty]
pressure = "3.5 bar"
run = "30 min"

[room]
height = "420 mm"
width = "140 mm"

[engine]
cylinders = 2
acting = "double"
bore = "18 mm"
stroke = "20 mm"
speed = "450 rpm"
cut-off = "75 %"

[fire]
fuel = "anthracite"

[blast]
below-choke = "12 mm"  # the pipe is made
"#;

fn steamwright(arguments: &[&str], folder: &Path) -> Output {
    Command::new(env!("CARGO_BIN_EXE_steamwright"))
        .args(arguments)
        .current_dir(folder)
        .output()
        .expect("the command runs")
}

fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).expect("text")
}

/// A folder with a beginning and the workshop of the examples.
fn folder(beginning: &str) -> tempfile::TempDir {
    let folder = tempfile::tempdir().expect("a folder");
    fs::write(folder.path().join("beginning.toml"), beginning).expect("written");
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..");
    let workshop = folder.path().join("workshop.toml");
    fs::copy(root.join("examples/workshop.toml"), workshop).expect("copied");
    folder
}

#[test]
fn a_plan_is_written_once_and_checks_and_holds_its_engine() {
    let folder = folder(BEGINNING);
    let propose = ["propose", "beginning.toml", "--out", "plan.toml"];
    let out = steamwright(&propose, folder.path());
    assert_eq!(out.status.code(), Some(0), "{}", text(&out.stderr));
    let words: Vec<&str> = text(&out.stdout).split_whitespace().collect();
    let told = words.join(" ");
    for line in [
        "Stock on hand is that of ",
        "Barrel boiler.barrel.outside 133 mm",
        "(barrel-tube)",
        "choke 12 mm (as given)",
        "The plan is in plan.toml.",
    ] {
        assert!(told.contains(line), "{line}: {told}");
    }
    let written = fs::read_to_string(folder.path().join("plan.toml")).expect("a plan");
    assert!(written.contains("below-choke = \"12 mm\"  # the pipe is made\n"));

    let again = steamwright(&propose, folder.path());
    assert_eq!(again.status.code(), Some(2));
    assert!(text(&again.stderr).contains("there already"));
    let kept = fs::read_to_string(folder.path().join("plan.toml")).expect("a plan");
    assert_eq!(kept, written);

    let checked = steamwright(&["check", "plan.toml"], folder.path());
    assert_eq!(checked.status.code(), Some(0), "{}", text(&checked.stdout));

    let largest = steamwright(&["largest", "plan.toml"], folder.path());
    assert_eq!(largest.status.code(), Some(0), "{}", text(&largest.stdout));
    assert!(text(&largest.stdout).contains("what binds: steaming."));
    let largest = steamwright(&["largest", "plan.toml", "--json"], folder.path());
    let told: Value = serde_json::from_slice(&largest.stdout).expect("JSON");
    let bounds = told["bounds"].as_array().expect("bounds");
    assert_eq!(bounds.len(), 4);
    assert!(bounds.iter().all(|b| b["share"].as_f64() >= Some(0.999)));
}

#[test]
fn a_room_too_narrow_is_told_with_the_question_that_forbids() {
    let folder = folder(&BEGINNING.replace("140 mm", "40 mm"));
    let out = steamwright(&["propose", "beginning.toml", "--json"], folder.path());
    assert_eq!(out.status.code(), Some(1));
    let told: Value = serde_json::from_slice(&out.stdout).expect("JSON");
    let forbidden = told["forbidden"].as_array().expect("questions");
    let parts = forbidden.iter().find(|f| f["question"] == "parts");
    let says = parts.expect("the parts forbid it")["says"][0]
        .as_str()
        .expect("a sentence");
    assert!(says.starts_with("room.width"), "{says}");
    assert_eq!(told["out"], Value::Null);
    let steps = told["steps"].as_array().expect("steps");
    let blast = steps
        .iter()
        .find(|s| s["step"] == "blast")
        .expect("a blast");
    let kept = blast["fields"].as_array().expect("fields").iter();
    let kept: Vec<&Value> = kept.filter(|f| f["kept"] == true).collect();
    assert_eq!(kept.len(), 1);
    assert_eq!(kept[0]["field"], "blast.below-choke");
}

#[test]
fn what_cannot_be_proposed_is_told_on_the_error_stream() {
    let wanted = BEGINNING.replace("run = \"30 min\"\n", "");
    let form = BEGINNING.replace(
        "vertical, wet firebox, fire tubes",
        "horizontal, centre flue, cross tubes",
    );
    let fault = BEGINNING.replace("\"18 mm\"", "18");
    for (beginning, says) in [
        (wanted, "wanted are duty.run"),
        (form, "there is no walk yet for horizontal"),
        (fault, "the files have faults"),
    ] {
        let folder = folder(&beginning);
        let out = steamwright(&["propose", "beginning.toml"], folder.path());
        assert_eq!(out.status.code(), Some(2), "{says}");
        assert_eq!(text(&out.stdout), "");
        assert!(text(&out.stderr).contains(says), "{}", text(&out.stderr));
    }
    let folder = folder(BEGINNING);
    let out = steamwright(&["largest", "beginning.toml"], folder.path());
    assert_eq!(out.status.code(), Some(2));
    assert!(text(&out.stderr).contains("grate.diameter"));
}
