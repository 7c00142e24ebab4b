//! `steamwright fire` from outside: the account closes, and what is not given is named.

use serde_json::Value;
use std::path::Path;
use std::process::{Command, Output};

const LAUNCH: &str = "examples/launch/plan.toml";
const HALF: &str = "examples/half-written/plan.toml";

fn fire(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_steamwright"))
        .arg("fire")
        .args(arguments)
        .current_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join("../.."))
        .output()
        .expect("the command runs")
}

fn told(arguments: &[&str]) -> Value {
    let out = fire(arguments);
    assert_eq!(out.status.code(), Some(0));
    serde_json::from_slice(&out.stdout).expect("JSON")
}

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

/// Source: conservation of energy.
#[test]
fn identity_the_heat_of_the_fuel_is_accounted_for() {
    let told = told(&[LAUNCH, "--json"]);
    let heat = &told["heat"];
    let ways = heat["ways"].as_array().expect("ways");
    let gone: f64 = ways.iter().map(|w| number(&w["heat_w"])).sum();
    let brought = number(&heat["brought_w"]);
    assert!((gone / brought - 1.0).abs() < 1e-6, "{gone} of {brought}");
}

/// Source: the draught that is raised is the draught that is spent.
#[test]
fn identity_the_draught_is_accounted_for() {
    for at in ["1.5 bar", "3.5 bar"] {
        let told = told(&[LAUNCH, "--at", at, "--json"]);
        let draught = &told["draught"];
        let spent = draught["spent"].as_array().expect("places");
        let spent: f64 = spent.iter().map(|s| number(&s["pa"])).sum();
        let raised = number(&draught["jets_pa"]) + number(&draught["column_pa"]);
        assert!((raised / spent - 1.0).abs() < 1e-6, "{raised} for {spent}");
    }
}

/// Source: a cubic inch of water a minute from a hundred square inches of surface, common
/// practice, no source.
#[test]
fn a_rule_of_the_trade_stands_beside_and_keeps_its_own_proportion() {
    let told = told(&[LAUNCH, "--json"]);
    let beside = told["beside"].as_array().expect("rules");
    let named = |what: &str| beside.iter().find(|b| b["what"] == what).expect("the rule");
    let surface = named("steam from the heating surface");
    let share = number(&surface["least"]) / number(&surface["most"]);
    assert!((share - 15.2 / 30.0).abs() < 1e-9, "{share}");
    assert_eq!(surface["here"], told["evaporation_kg_s"]);
    assert!(beside.len() >= 5);
}

#[test]
fn every_line_of_the_working_is_there_and_the_words_have_their_headings() {
    let out = fire(&[LAUNCH, "--working"]);
    let text = String::from_utf8(out.stdout).expect("text");
    for head in [
        "Steam",
        "Where the heat goes",
        "How the draught is spent",
        "Working",
    ] {
        assert!(text.contains(&format!("{head}\n")), "{head}");
    }
    assert!(text.contains("heat never set free"));
}

#[test]
fn what_is_not_given_is_named_and_a_bad_pressure_is_told() {
    let out = fire(&[HALF]);
    assert_eq!(out.status.code(), Some(2));
    let text = String::from_utf8(out.stderr).expect("text");
    assert!(
        text.contains("cannot be told") && text.lines().count() > 1,
        "{text}"
    );
    let out = fire(&[LAUNCH, "--at", "3 furlongs"]);
    assert_eq!(out.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&out.stderr).contains("no gauge pressure"));
}
