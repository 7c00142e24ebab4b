//! The rules applied where areas meet, each on a plan that breaks it and on its neighbour.

use design::check;
use reckoning::Verdict;

fn verdicts(plan: &str, rule: &str) -> Vec<(String, Verdict)> {
    let read = plan::read(plan, "plan.toml");
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    let workshop = plan::read_workshop("format = 1", "workshop.toml").content;
    check(&read.content, &workshop)
        .judged
        .into_iter()
        .filter(|j| j.finding.rule.id == rule)
        .map(|j| (j.finding.place, j.finding.verdict))
        .collect()
}

/// A gas tank is a vessel of its own, and no rule of boilers is worked for one.
#[test]
fn design_covered_fires_on_a_part_without_a_rule() {
    let plan = "format = 1\nform = \"vertical, wet firebox, fire tubes\"\n\
                [gas.tank]\nbore = \"40 mm\"\nwall = \"1.5 mm\"\n";
    let found = verdicts(plan, "design.covered");
    assert_eq!(found, [("gas.tank".to_owned(), Verdict::Unproved)]);
}

/// A barrel is held against rules, even where its sizes are wanting.
#[test]
fn design_covered_silent_on_a_part_with_rules() {
    let plan = "format = 1\nform = \"vertical, wet firebox, fire tubes\"\n\
                [boiler]\ndesign-pressure = \"5 bar\"\nmetal = \"CW024A\"\n\
                [boiler.barrel]\noutside = \"108 mm\"\nwall = \"2.5 mm\"\nseam = \"seamless\"\n";
    assert!(verdicts(plan, "design.covered").is_empty());
}

#[test]
fn design_tester_set_fires_on_a_set_that_is_not_worked() {
    let found = verdicts(
        "format = 1\ntester-set = \"nobody's rules\"\n",
        "design.tester-set",
    );
    assert_eq!(found, [("tester-set".to_owned(), Verdict::Unproved)]);
}

#[test]
fn design_tester_set_silent_on_a_set_that_is_worked() {
    assert!(verdicts("format = 1\ntester-set = \"ours\"\n", "design.tester-set").is_empty());
    assert!(verdicts("format = 1\n", "design.tester-set").is_empty());
}
