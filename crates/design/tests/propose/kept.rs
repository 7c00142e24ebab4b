//! What the maker gave is kept, whatever it is.

use super::beginnings::{LAUNCH, proposed, workshop};
use design::propose::{By, propose};
use proptest::prelude::*;

/// Lines that a maker may have fixed, with their tables.
const FIXED: &[(&str, &str)] = &[
    ("boiler.barrel", "outside = \"4 1/4 in\""),
    ("boiler.barrel", "wall = \"10 swg\""),
    ("boiler.firebox", "outside = \"76.1 mm\""),
    ("boiler.firebox", "bore = \"70 mm\""),
    ("boiler.firebox", "height = \"90 mm\""),
    (
        "boiler.tubes",
        "outside = { drawn = \"8 mm\", tolerance = \"0.05 mm\" }",
    ),
    ("boiler.tubes", "count = 9"),
    ("boiler.tube-plate.upper", "thickness = \"5 mm\""),
    ("boiler.water-level", "working = \"\""),
    ("grate", "diameter = \"60 mm\""),
    ("blast", "nozzle = \"2.4 mm\""),
    ("chimney", "choke = \"15 mm\""),
    ("smokebox", "height = \"60 mm\""),
    ("blower", "bore = \"0.7 mm\""),
    ("feed", "tank = \"3 l\""),
    ("room", "length = \"1 m\""),
];

/// The launch with some of these, each table once.
fn with(fixed: &[(&str, &str)]) -> String {
    let mut text = LAUNCH.text();
    let mut tables: Vec<&str> = fixed.iter().map(|(table, _)| *table).collect();
    tables.dedup();
    for table in tables {
        let lines = fixed.iter().filter(|(t, _)| *t == table);
        let lines: Vec<&str> = lines.map(|(_, line)| *line).collect();
        let heading = format!("[{table}]\n");
        let filled = format!("{heading}{}\n", lines.join("\n"));
        if text.contains(&heading) {
            text = text.replace(&heading, &filled);
        } else {
            text.push_str(&format!("\n{filled}"));
        }
    }
    text
}

#[test]
fn sizes_that_were_given_are_kept_and_told_as_kept() {
    let fixed = [FIXED[0], FIXED[1], FIXED[10]];
    let proposal = proposed(&with(&fixed));
    for (_, line) in fixed {
        assert!(proposal.text.contains(line), "{line}");
    }
    let kept = |path: &str| {
        let fields = proposal.steps.iter().flat_map(|step| &step.fields);
        fields
            .filter(|field| field.by == By::Maker)
            .any(|field| field.path == path)
    };
    assert!(kept("boiler.barrel.outside") && kept("boiler.barrel.wall") && kept("blast.nozzle"));
    assert_eq!(proposal.text.matches("nozzle = ").count(), 1);
}

/// A whole plan is left as it is: there is nothing to choose but what it leaves out.
#[test]
fn a_whole_plan_keeps_every_line() {
    let whole = include_str!("../../../../examples/launch/plan.toml");
    let proposal = proposed(whole);
    let mut lines = proposal.text.lines();
    for line in whole.lines() {
        assert!(lines.any(|kept| kept == line), "{line}");
    }
    assert!(plan::read(&proposal.text, "plan.toml").problems.is_empty());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(6))]

    /// Whatever a maker fixes and whatever is cut off, there is a plan that keeps it, or a reason.
    #[test]
    fn a_beginning_of_any_kind_is_kept_or_refused(
        chosen in proptest::sample::subsequence(FIXED.to_vec(), 0..5),
        cut in prop::option::weighted(0.3, 0usize..600),
    ) {
        let mut text = with(&chosen);
        if let Some(cut) = cut {
            let mut end = text.len().saturating_sub(cut);
            while !text.is_char_boundary(end) {
                end -= 1;
            }
            text.truncate(end);
        }
        if let Ok(proposal) = propose(&text, "plan.toml", &workshop()) {
            let mut lines = proposal.text.lines();
            for line in text.lines() {
                prop_assert!(lines.any(|kept| kept == line), "{}", line);
            }
            let read = plan::read(&proposal.text, "plan.toml");
            prop_assert!(read.problems.is_empty(), "{:?}", read.problems);
        }
    }
}
