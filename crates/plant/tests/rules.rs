//! Each rule of the geometry fires on a plan made to break it and is silent on its neighbour.
#![allow(
    clippy::unwrap_used,
    reason = "a test may stop at what it did not expect"
)]

#[allow(dead_code, unreachable_pub, reason = "shared by several test files")]
mod common;

use common::{broken, changed, of};
use plant::RULES;
use reckoning::Verdict;

/// A rule, a change that breaks it, and a neighbouring change that does not.
type Case<'a> = (&'a str, &'a [(&'a str, &'a str)], &'a [(&'a str, &'a str)]);

const CASES: &[Case<'_>] = &[
    (
        "plant.shape",
        &[(
            "length-out = \"6 mm\"\nlength-in = \"3 mm\"\nmetal",
            "length-out = \"6 mm\"\nlength-in = \"3 mm\"\nbore = \"14 mm\"\nmetal",
        )],
        &[(
            "length-out = \"6 mm\"\nlength-in = \"3 mm\"\nmetal",
            "length-out = \"6 mm\"\nlength-in = \"3 mm\"\nbore = \"8 mm\"\nmetal",
        )],
    ),
    (
        "plant.stands",
        &[("length = \"220 mm\"", "length = \"95 mm\"")],
        &[("length = \"220 mm\"", "length = \"150 mm\"")],
    ),
    (
        "plant.flange",
        &[("flange-height = \"14 mm\"", "flange-height = \"6 mm\"")],
        &[("flange-height = \"14 mm\"", "flange-height = \"7 mm\"")],
    ),
    (
        "plant.tubes-fit",
        &[("count = 12", "count = 25")],
        &[("count = 12", "count = 13")],
    ),
    (
        "plant.ligament",
        &[("pitch = \"13.5 mm\"", "pitch = \"12.9 mm\"")],
        &[("pitch = \"13.5 mm\"", "pitch = \"13.1 mm\"")],
    ),
    (
        "plant.hole-clear-of-bend",
        &[("radius = \"35.4 mm\"", "radius = \"35.6 mm\"")],
        &[("radius = \"35.4 mm\"", "radius = \"35.5 mm\"")],
    ),
    (
        "plant.tube-touches",
        &[("radius = \"35.4 mm\"", "radius = \"30 mm\"")],
        &[("radius = \"35.4 mm\"", "radius = \"34 mm\"")],
    ),
    (
        "plant.water-leg",
        &[("outside = \"84 mm\"", "outside = \"93.2 mm\"")],
        &[("outside = \"84 mm\"", "outside = \"92.8 mm\"")],
    ),
    (
        "plant.water-covers-crown",
        &[("lowest = \"110 mm\"", "lowest = \"92 mm\"")],
        &[("lowest = \"110 mm\"", "lowest = \"94 mm\"")],
    ),
    (
        "plant.water-level",
        &[("working = \"140 mm\"", "working = \"205 mm\"")],
        &[("working = \"140 mm\"", "working = \"190 mm\"")],
    ),
    (
        "plant.room",
        &[("height = \"500 mm\"", "height = \"378 mm\"")],
        &[("height = \"500 mm\"", "height = \"380 mm\"")],
    ),
];

#[test]
fn every_rule_fires_and_is_silent_on_its_neighbour() {
    for (rule, breaks, keeps) in CASES {
        assert!(broken(&changed(breaks), rule), "{rule} does not fire");
        assert!(
            !broken(&changed(keeps), rule),
            "{rule} fires on its neighbour"
        );
    }
}

#[test]
fn every_rule_is_registered_and_tried() {
    let mut listed: Vec<&str> = RULES.iter().map(|rule| rule.id).collect();
    let mut tried: Vec<&str> = CASES.iter().map(|case| case.0).collect();
    listed.sort_unstable();
    tried.sort_unstable();
    assert_eq!(listed, tried);
    let good = changed(&[]);
    for finding in &good.findings {
        assert!(listed.contains(&finding.rule.id));
        assert_ne!(
            finding.verdict,
            Verdict::NotMet,
            "{}: {}",
            finding.rule.id,
            finding.says
        );
    }
}

#[test]
fn the_width_and_the_mass_of_the_room_count_too() {
    assert!(broken(
        &changed(&[("width = \"140 mm\"", "width = \"119 mm\"")]),
        "plant.room"
    ));
    assert!(broken(
        &changed(&[("mass = \"9 kg\"", "mass = \"2.9 kg\"")]),
        "plant.room"
    ));
    // What grate, chimney and lagging weigh is not known, so the rest is to be weighed.
    let good = changed(&[]);
    let mass = of(&good, "plant.room")
        .find(|f| f.place == "room.mass")
        .unwrap();
    assert_eq!(mass.verdict, Verdict::MetOnCondition);
    assert_eq!(mass.conditions.len(), 1);
}

#[test]
fn a_bush_that_reaches_into_the_tubes_touches() {
    // Tubes stand out to 25.5 mm from the axis, the bore of the barrel is 51.5 mm in radius.
    let reach = |mm: &str| {
        changed(&[(
            "bore = \"5 mm\"\noutside = \"12 mm\"\nlength-out = \"6 mm\"\nlength-in = \"3 mm\"",
            &format!("outside = \"12 mm\"\nlength-out = \"6 mm\"\nlength-in = \"{mm}\""),
        )])
    };
    assert!(broken(&reach("40 mm"), "plant.tube-touches"));
    assert!(!broken(&reach("10 mm"), "plant.tube-touches"));
}

#[test]
fn a_missing_lowest_level_is_unproved_and_a_chosen_size_is_met_on_condition() {
    let without = changed(&[("lowest = \"110 mm\"\n", "")]);
    let cover = of(&without, "plant.water-covers-crown").next().unwrap();
    assert_eq!(cover.verdict, Verdict::Unproved);
    let unsaid = changed(&[("set-in = \"0 mm\"\n\n[boiler.tubes]", "\n[boiler.tubes]")]);
    let cover = of(&unsaid, "plant.water-covers-crown").next().unwrap();
    assert_eq!(cover.verdict, Verdict::MetOnCondition);
    assert_eq!(cover.conditions.len(), 1);
}
