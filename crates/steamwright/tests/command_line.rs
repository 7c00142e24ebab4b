//! The command line from outside: words, JSON and exit codes.

use serde_json::Value;
use std::path::PathBuf;
use std::process::{Command, Output};

/// An empty folder of its own for each test, removed at its end.
struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("steamwright-{}-{name}", std::process::id()));
        std::fs::create_dir_all(&path).expect("a folder");
        Self(path)
    }

    fn run(&self, arguments: &[&str]) -> Output {
        Command::new(env!("CARGO_BIN_EXE_steamwright"))
            .args(arguments)
            .current_dir(&self.0)
            .output()
            .expect("the command runs")
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let left = std::fs::read_dir(&self.0).map_or(0, Iterator::count);
        let removed = std::fs::remove_dir_all(&self.0);
        if !std::thread::panicking() {
            assert_eq!(left, 0, "the command left files behind");
            removed.expect("the folder goes");
        }
    }
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).expect("text")
}

/// Line by line, so that a change is seen at once.
fn same(found: &str, wanted: &str) {
    if found == wanted {
        return;
    }
    let (found, wanted): (Vec<&str>, Vec<&str>) =
        (found.lines().collect(), wanted.lines().collect());
    let mut diff = String::new();
    for place in 0..found.len().max(wanted.len()) {
        let (f, w) = (found.get(place), wanted.get(place));
        if f == w {
            diff += &format!("  {}\n", f.unwrap_or(&""));
        } else {
            diff += &w.map_or(String::new(), |w| format!("- {w}\n"));
            diff += &f.map_or(String::new(), |f| format!("+ {f}\n"));
        }
    }
    panic!("the output differs (- wanted, + found):\n{diff}");
}

/// Independent calculation, an invented shell of 4 in inside diameter, worked by hand:
/// 0.551 580 6 * 101.6 / (2 * 26 * 0.8 - 0.551 580 6) = 1.3652 mm.
const SHELL: [&str; 6] = [
    "reckon",
    "vessel.shell-wall",
    "P=80 psi",
    "D_i=4 in",
    "f=26 MPa",
    "z=0.8",
];

#[test]
fn a_formula_is_worked_in_words() {
    let out = Folder::new("words").run(&SHELL);
    same(
        &text(&out.stdout),
        "\
e = 1.3652 mm   (least wall, before allowances)

working
  P = 0.551581 MPa (80 psi)   design pressure, gauge
  D_i = 101.600 mm (4 in)   inside diameter
  f = 26.0000 MPa   design stress at design temperature
  z = 0.800000   joint coefficient
  e = P * D_i / (2 * f * z - P)
  e = 0.551581 * 101.600 / (2 * 26.0000 * 0.800000 - 0.551581)
  e = 1.3652 mm

source Unfired pressure vessels, Part 3: Design, EN 13445-3, 2021, 7.4.2 (from memory)
",
    );
    assert_eq!(
        (out.status.code(), text(&out.stderr)),
        (Some(0), String::new())
    );
}

#[test]
fn a_formula_is_explained() {
    let out = Folder::new("explain").run(&SHELL[..2]);
    same(
        &text(&out.stdout),
        "\
vessel.shell-wall
gives  e    mm   least wall, before allowances
takes  P    MPa  design pressure, gauge
       D_i  mm   inside diameter
       f    MPa  design stress at design temperature
       z         joint coefficient
law    e = P * D_i / (2 * f * z - P)
limits e / (D_i + 2 * e) at most 0.16
spread errs on the careful side
source Unfired pressure vessels, Part 3: Design, EN 13445-3, 2021, 7.4.2 (from memory)
ask    steamwright reckon vessel.shell-wall P=\"…\" D_i=\"…\" f=\"…\" z=\"…\"
",
    );
    assert_eq!(out.status.code(), Some(0));
}

#[test]
fn every_formula_is_listed_and_explains_itself() {
    let folder = Folder::new("list");
    let words = text(&folder.run(&["reckon"]).stdout);
    let out = folder.run(&["reckon", "--json"]);
    let json: Value = serde_json::from_slice(&out.stdout).expect("JSON");
    let listed = json["formulas"].as_array().expect("a list");
    assert_eq!(listed.len(), formulas::register::cards().count());
    assert!(!listed.is_empty());
    for card in listed {
        let id = card["id"].as_str().expect("an id");
        assert!(words.contains(id), "{id} is not in the list in words");
        assert!(!card["law"].as_str().expect("a law").is_empty());
        for symbol in card["takes"]
            .as_array()
            .expect("symbols")
            .iter()
            .chain([&card["gives"]])
        {
            for key in ["symbol", "kind", "meaning"] {
                assert!(!symbol[key].as_str().expect(key).is_empty(), "{id}: {key}");
            }
            assert!(symbol["unit"].is_string() && symbol["si_unit"].is_string());
        }
        for key in ["key", "title", "place", "seen"] {
            assert!(
                !card["source"][key].as_str().expect(key).is_empty(),
                "{id}: {key}"
            );
        }
    }
    let one = folder.run(&["reckon", "vessel.shell-wall", "--json"]);
    let one: Value = serde_json::from_slice(&one.stdout).expect("JSON");
    assert!(listed.contains(&one));
}

#[test]
fn the_json_of_a_worked_formula_keeps_its_shape() {
    let mut asked = SHELL.to_vec();
    asked.push("--json");
    let out = Folder::new("json").run(&asked);
    let json: Value = serde_json::from_slice(&out.stdout).expect("JSON");
    let keys = |value: &Value| -> Vec<String> {
        value
            .as_object()
            .expect("an object")
            .keys()
            .cloned()
            .collect()
    };
    assert_eq!(
        keys(&json),
        ["breaches", "id", "inputs", "results", "source"]
    );
    assert_eq!(json["id"], "vessel.shell-wall");
    let results = json["results"].as_array().expect("results");
    assert_eq!(results.len(), 1);
    assert_eq!(keys(&results[0]), ["shown", "si", "symbol", "unit"]);
    assert_eq!(
        (&results[0]["symbol"], &results[0]["unit"]),
        (&"e".into(), &"mm".into())
    );
    assert_eq!(results[0]["shown"], "1.3652 mm");
    let si = results[0]["si"].as_f64().expect("a number");
    assert!((si - 1.3652e-3).abs() < 5e-8, "{si}");
    let inputs = json["inputs"].as_array().expect("inputs");
    let shown: Vec<&str> = inputs.iter().filter_map(|i| i["shown"].as_str()).collect();
    assert_eq!(shown, ["80 psi", "4 in", "26 MPa", "0.8"]);
    assert!(
        inputs
            .iter()
            .all(|i| keys(i) == ["shown", "si", "symbol", "unit"])
    );
    assert_eq!(json["breaches"], Value::Array(Vec::new()));
    let source = [
        "edition",
        "identifier",
        "key",
        "place",
        "publisher",
        "seen",
        "title",
        "year",
    ];
    assert_eq!(keys(&json["source"]), source);
}

#[test]
fn a_broken_limit_is_told_and_the_value_still_given() {
    let folder = Folder::new("limit");
    let asked = [
        "reckon",
        "vessel.shell-wall",
        "P=8 MPa",
        "D_i=4 in",
        "f=10 MPa",
        "z=1",
    ];
    let words = text(&folder.run(&asked).stdout);
    let told = "
outside the limits of its source, so nothing can be proved with it
  e / (D_i + 2 * e) at most 0.16, and is 0.2857
";
    assert!(
        words.contains(told) && words.starts_with("e = 67.733 mm"),
        "{words}"
    );
    let out = folder.run(&[&asked[..], &["--json"]].concat());
    assert_eq!(out.status.code(), Some(0));
    let json: Value = serde_json::from_slice(&out.stdout).expect("JSON");
    let breach = &json["breaches"][0];
    assert_eq!(
        (&breach["expr"], &breach["high"]),
        (&"e / (D_i + 2 * e)".into(), &0.16.into())
    );
    assert!(breach["low"].is_null() && breach["value"].as_f64().is_some_and(|v| v > 0.16));
}

#[test]
fn every_fault_is_told_at_once() {
    let asked = [
        "reckon",
        "vessel.shell-wall",
        "P=80 in",
        "d_i=4 in",
        "f=26 MPa",
        "f=2 MPa",
        "x",
    ];
    let out = Folder::new("faults").run(&asked);
    same(
        &text(&out.stderr),
        "\
vessel.shell-wall cannot be worked:
  P: `80 in`: in is a unit of length, a gauge pressure is wanted, for instance `80 psi` or `5.5 bar`
  d_i is not a symbol of it, did you mean D_i?
  f is given twice
  `x` is not of the form SYMBOL=QUANTITY
  D_i is missing, the inside diameter: a length is wanted, for instance `12 mm` or `1 7/16 in`
  z is missing, the joint coefficient: a ratio is wanted, for instance `0.75` or `75 %`
",
    );
    assert_eq!(
        (out.status.code(), text(&out.stdout)),
        (Some(2), String::new())
    );
}

#[test]
fn an_absolute_pressure_is_no_gauge_pressure() {
    let mut asked = SHELL.to_vec();
    asked[2] = "P=5 bar absolute";
    let out = Folder::new("absolute").run(&asked);
    assert_eq!(out.status.code(), Some(2));
    let told = "bar absolute says a pressure above vacuum, a gauge pressure is wanted";
    assert!(text(&out.stderr).contains(told), "{}", text(&out.stderr));
    asked[2] = "P=5 bar";
    assert_eq!(Folder::new("gauge").run(&asked).status.code(), Some(0));
}

#[test]
fn what_cannot_be_worked_ends_with_two() {
    let folder = Folder::new("two");
    for (asked, told) in [
        (
            &["reckon", "vessel.shel-wall"][..],
            "nearest: vessel.shell-wall",
        ),
        (
            &[
                "reckon",
                "vessel.shell-wall",
                "P=80 MPa",
                "D_i=4 in",
                "f=26 MPa",
                "z=1",
            ],
            "cannot be worked",
        ),
        (&["reckon", "--jsn"], "--json"),
        (&["recon"], "reckon"),
    ] {
        let out = folder.run(asked);
        assert_eq!(out.status.code(), Some(2), "{asked:?}");
        assert!(
            text(&out.stderr).contains(told),
            "{asked:?}: {}",
            text(&out.stderr)
        );
        assert!(out.stdout.is_empty(), "{asked:?}");
    }
}

#[test]
fn without_arguments_the_example_plan_is_checked() {
    let out = Folder::new("example").run(&[]);
    let words = text(&out.stdout);
    assert!(
        words.contains("Launch plant") && words.contains("Invented:"),
        "{words}"
    );
    assert!(matches!(out.status.code(), Some(0 | 1)) && out.stderr.is_empty());
}

#[test]
fn each_fault_of_a_plan_is_told_once_with_its_line_below() {
    let folder = Folder::new("frames");
    let plan = folder.0.join("plan.toml");
    std::fs::write(&plan, "format = 1\n[duty]\npresure = \"3 bar\"\n").expect("a plan");
    let out = folder.run(&["check", "plan.toml"]);
    std::fs::remove_file(plan).expect("the plan goes");
    let words = text(&out.stdout);
    let told = "
plan.toml:3:1: duty.presure: read `presure`, which is no field; wanted one of `pressure`, `run`, \
                `steam`, `power`; did you mean `pressure`?
  |
3 | presure = \"3 bar\"
  | ^^^^^^^
";
    assert!(words.contains(told), "{words}");
    assert_eq!(words.matches("plan.toml:3:1").count(), 1, "{words}");
}
