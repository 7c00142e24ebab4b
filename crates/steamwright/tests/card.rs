//! `steamwright card` from outside: words, JSON, files and exit codes.

use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// A folder of its own for each test, removed at its end.
struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path =
            std::env::temp_dir().join(format!("steamwright-card-{}-{name}", std::process::id()));
        std::fs::create_dir_all(path.join("launch")).expect("a folder");
        Self(path)
    }

    /// With the example as it stands in the repository.
    fn with_example(name: &str) -> Self {
        let folder = Self::new(name);
        folder.put("launch/plan.toml", &example("launch/plan.toml"));
        folder.put("workshop.toml", &example("workshop.toml"));
        folder
    }

    fn put(&self, file: &str, text: &str) {
        std::fs::write(self.0.join(file), text).expect("written");
    }

    fn run(&self, arguments: &[&str]) -> Output {
        Command::new(env!("CARGO_BIN_EXE_steamwright"))
            .arg("card")
            .args(arguments)
            .current_dir(&self.0)
            .output()
            .expect("the command runs")
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let removed = std::fs::remove_dir_all(&self.0);
        if !std::thread::panicking() {
            removed.expect("the folder goes");
        }
    }
}

fn example(file: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../examples")
        .join(file);
    std::fs::read_to_string(path).expect("an example")
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).expect("text")
}

/// Kept to show changes; our own output is no evidence that it is right.
#[test]
fn kept_card_of_the_example() {
    let out = Folder::with_example("kept").run(&["launch/plan.toml"]);
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/golden/card-launch.txt");
    let kept = std::fs::read_to_string(kept).expect("the kept card");
    let found = text(&out.stdout);
    let differs = found.lines().zip(kept.lines()).find(|(f, k)| f != k);
    assert!(
        found == kept,
        "first difference (found, kept): {differs:?}\n{found}"
    );
    assert_eq!(out.status.code(), Some(0), "{}", text(&out.stderr));
}

#[test]
fn a_card_is_no_wider_than_a_page_and_its_rows_are_numbered_through() {
    let out = Folder::with_example("wide").run(&["launch/plan.toml", "dryer-bush"]);
    let page = text(&out.stdout);
    assert!(page.lines().all(|l| l.chars().count() <= 100), "{page}");
    assert!(!page.contains("gauge-plug"), "one card was asked");
    for row in 1..=12 {
        assert!(
            page.lines()
                .any(|l| l.starts_with(&format!("  {row:>2}  "))),
            "row {row}"
        );
    }
}

#[test]
fn the_card_in_json_holds_what_the_page_holds() {
    let folder = Folder::with_example("json");
    let out = folder.run(&["launch/plan.toml", "gauge-plug", "--json"]);
    assert_eq!(out.status.code(), Some(0));
    let told: Value = serde_json::from_slice(&out.stdout).expect("JSON");
    let card = &told["cards"][0];
    assert_eq!(card["fitting"], "gauge-plug");
    assert_eq!(card["verdict"], "met");
    assert_eq!(card["why_not"], Value::Null);
    // 1/4 x 40 ME from 5.7 mm: (6.35 - 5.7) / (1.280654 * 0.635) = 0.799, by hand.
    let chosen = &card["card"]["tapping"][0]["chosen"];
    assert_eq!(chosen["drill"], "5.7 mm");
    assert!((chosen["share"].as_f64().expect("a number") - 0.799).abs() < 5e-4);
    let rows = card["card"]["settings"][0]["rows"]
        .as_array()
        .expect("rows");
    assert_eq!(rows.len(), 8);
}

#[test]
fn something_against_a_card_gives_one_and_says_what() {
    let folder = Folder::with_example("against");
    let plan = example("launch/plan.toml").replace("within = \"0.1 mm\"", "within = \"0.01 mm\"");
    folder.put("launch/plan.toml", &plan);
    folder.put(
        "workshop.toml",
        &example("workshop.toml")
            .replace("run-out = \"0.02 mm\"", "run-out = \"0.03 mm\"")
            .replace("run-out = \"0.01 mm\"", "run-out = \"0.03 mm\""),
    );
    let out = folder.run(&["launch/plan.toml", "gauge-plug"]);
    assert_eq!(out.status.code(), Some(1));
    let page = text(&out.stdout);
    assert!(page.contains("not met") && page.contains("Cure:"), "{page}");
}

#[test]
fn a_gap_names_its_field_and_gives_one() {
    let folder = Folder::with_example("gap");
    let plan = example("launch/plan.toml").replacen("least-wall = \"1 mm\"\n", "", 1);
    folder.put("launch/plan.toml", &plan);
    let out = folder.run(&["launch/plan.toml", "dryer-bush"]);
    assert_eq!(out.status.code(), Some(1));
    assert!(text(&out.stdout).contains("fitting.dryer-bush.least-wall"));
}

#[test]
fn a_fault_of_a_file_is_shown_with_its_line_and_gives_one() {
    let folder = Folder::with_example("fault");
    let plan = example("launch/plan.toml").replace("bar = \"16 mm\"", "bar = 16");
    folder.put("launch/plan.toml", &plan);
    let out = folder.run(&["launch/plan.toml", "dryer-bush"]);
    assert_eq!(out.status.code(), Some(1));
    let page = text(&out.stdout);
    assert!(
        page.contains("| bar = 16") && page.contains("did you mean `16 mm`?"),
        "{page}"
    );
}

#[test]
fn what_cannot_be_worked_gives_two_and_says_why() {
    let folder = Folder::with_example("two");
    let says = |arguments: &[&str], wanted: &str| {
        let out = folder.run(arguments);
        let told = text(&out.stderr);
        assert_eq!(out.status.code(), Some(2), "{told}");
        assert!(out.stdout.is_empty());
        assert!(told.contains(wanted), "{told}");
    };
    says(&["none.toml"], "there is no such file");
    says(&["launch"], "it is a folder");
    says(
        &["launch/plan.toml", "bush"],
        "it has dryer-bush, gauge-plug",
    );
    says(
        &["launch/plan.toml", "--workshop", "none.toml"],
        "none.toml cannot be read",
    );
    folder.put("launch/empty.toml", "format = 1\n");
    says(&["launch/empty.toml"], "describes no fitting");
    folder.put("launch/torn.toml", "format = 1\n[fitting\n");
    says(&["launch/torn.toml"], "torn.toml:2:");
    std::fs::remove_file(folder.0.join("workshop.toml")).expect("removed");
    says(&["launch/plan.toml"], "no workshop was found");
}

#[test]
fn the_workshop_beside_the_plan_comes_before_the_one_above() {
    let folder = Folder::with_example("beside");
    let own = example("workshop.toml").replace("blade = \"2 mm\"", "blade = \"\"");
    folder.put("launch/workshop.toml", &own);
    let out = folder.run(&["launch/plan.toml"]);
    assert!(
        text(&out.stdout).contains("replaced by lathe.blade"),
        "{}",
        text(&out.stdout)
    );
}
