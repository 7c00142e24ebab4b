//! The doors from a plan and a workshop file to the bench, and the rules of a fitting's drawing.

use design::bench::{ASSUMPTIONS, Bench, WhyNot, bench, tools};
use making::Reads;
use making::workshop::{Hold, Speeds};
use plan::{File, Plan, Workshop};
use reckoning::{Given, Verdict};

const PLAN: &str = include_str!("../../../examples/launch/plan.toml");
const WORKSHOP: &str = include_str!("../../../examples/workshop.toml");

/// The example with one piece of its text changed.
fn changed(text: &str, from: &str, to: &str) -> String {
    assert!(text.contains(from), "`{from}` is not in the example");
    text.replacen(from, to, 1)
}

fn plan_of(text: &str) -> Plan {
    let read = plan::read(text, "plan.toml");
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    read.content
}

fn workshop_of(text: &str) -> Workshop {
    let read = plan::read_workshop(text, "workshop.toml");
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    read.content
}

fn first(plan: &str) -> Bench {
    bench(&plan_of(plan), &workshop_of(WORKSHOP)).remove(0)
}

fn breaks(bench: &Bench, rule: &str) -> bool {
    assert!(
        design::RULES.iter().any(|r| r.id == rule),
        "{rule} is registered"
    );
    bench
        .drawing
        .iter()
        .any(|f| f.rule.id == rule && f.verdict == Verdict::NotMet && f.remedy.is_some())
}

fn fires(rule: &str, from: &str, to: &str) {
    let found = first(&changed(PLAN, from, to));
    assert!(breaks(&found, rule), "{to}: {:?}", found.drawing);
    assert!(matches!(found.card, Err(WhyNot::Drawing)), "{to}");
    assert_eq!(found.verdict(), Verdict::NotMet);
}

#[test]
fn both_fittings_of_the_example_have_a_card_that_stands() {
    for found in bench(&plan_of(PLAN), &workshop_of(WORKSHOP)) {
        assert!(found.gaps.is_empty(), "{:?}", found.gaps);
        assert!(found.verdict() <= Verdict::MetOnCondition, "{}", found.id);
        assert!(found.card.is_ok_and(|c| c.proposal.lacks.is_empty()));
    }
}

#[test]
fn fitting_shape_fires() {
    for (from, to) in [
        ("bar = \"16 mm\"", "bar = \"12 mm\""),
        ("thread-length = \"8 mm\"", "thread-length = \"10 mm\""),
        ("chamfer = \"1 mm\"", "chamfer = \"9 mm\""),
        ("depth = \"16 mm\"", "depth = \"30 mm\""),
        ("diameter = \"5 mm\"\ndepth", "diameter = \"12 mm\"\ndepth"),
        ("at = \"15 mm\"", "at = \"30 mm\""),
        ("at = \"15 mm\"", "at = \"19 mm\""),
        ("diameter = \"3 mm\"", "diameter = \"15 mm\""),
    ] {
        fires("fitting.shape", from, to);
    }
}

#[test]
fn fitting_shape_silent() {
    assert!(!breaks(&first(PLAN), "fitting.shape"));
    let whole = changed(PLAN, "thread-length = \"8 mm\"", "thread-length = \"9 mm\"");
    assert!(!breaks(&first(&whole), "fitting.shape"));
}

#[test]
fn fitting_thread_fires() {
    let steps = "length = \"9 mm\"\nthread = \"M10x1\"";
    for to in ["M10.5x1", "10 x 1", "M12x1"] {
        let to = format!("length = \"9 mm\"\nthread = \"{to}\"");
        fires("fitting.thread", steps, &to);
    }
}

#[test]
fn fitting_thread_silent() {
    assert!(!breaks(&first(PLAN), "fitting.thread"));
    let blank = changed(
        PLAN,
        "diameter = \"10 mm\"\nlength",
        "diameter = \"9.92 mm\"\nlength",
    );
    assert!(
        !breaks(&first(&blank), "fitting.thread"),
        "a blank for a die"
    );
}

#[test]
fn fitting_refers_fires() {
    let of = "of = [\"spigot\", \"seat\"]";
    for to in ["of = [\"spigot\", \"seet\"]", "of = [\"spigot\"]"] {
        fires("fitting.refers", of, to);
    }
    let twice = "of = [\"spigot\", \"seat\"]\nwithin = \"0.05 mm\"\n\n\
                 [[fitting.coaxial]]\nid = \"again\"\nof = [\"head\", \"seat\"]";
    fires("fitting.refers", of, twice);
}

#[test]
fn fitting_refers_silent() {
    assert!(!breaks(&first(PLAN), "fitting.refers"));
    let other = changed(PLAN, "\"spigot\", \"seat\"", "\"head\", \"seat\"");
    assert!(!breaks(&first(&other), "fitting.refers"));
}

#[test]
fn what_a_card_needs_and_is_not_given_is_a_gap_with_its_field() {
    for (gone, field) in [
        ("least-wall = \"1 mm\"\n", "fitting.dryer-bush.least-wall"),
        ("bar = \"16 mm\"\n", "fitting.dryer-bush.bar"),
        (
            "length = \"9 mm\"\n",
            "fitting.dryer-bush.step.spigot.length",
        ),
        (
            "thread-length = \"8 mm\"\n",
            "fitting.dryer-bush.step.spigot.thread-length",
        ),
        ("from = \"left\"\n", "fitting.dryer-bush.bore.seat.from"),
        ("at = \"15 mm\"\n", "fitting.dryer-bush.cross-hole.inlet.at"),
        (
            "within = \"0.05 mm\"\n",
            "fitting.dryer-bush.coaxial.true.within",
        ),
    ] {
        let found = first(&changed(PLAN, gone, ""));
        assert!(
            found.gaps.iter().any(|g| g == field),
            "{gone}: {:?}",
            found.gaps
        );
        assert!(matches!(found.card, Err(WhyNot::Gaps)), "{gone}");
        assert_eq!(found.verdict(), Verdict::Unproved);
    }
    let odd = changed(
        PLAN,
        "metal = \"CW451K\"\nbar",
        "metal = \"unobtainium\"\nbar",
    );
    let gaps = first(&odd).gaps;
    assert!(gaps[0].starts_with("fitting.dryer-bush.metal"), "{gaps:?}");
}

#[test]
fn a_thread_in_a_cross_hole_is_told_and_never_passed_over() {
    let tapped = changed(
        PLAN,
        "reach = \"into the bore\"",
        "reach = \"into the bore\"\nthread = \"M3\"",
    );
    let why = first(&tapped).card.expect_err("no card").to_string();
    assert!(why.starts_with("inlet: "), "{why}");
}

/// Counts by hand: 1.0 to 13.0 mm by a tenth are 121 drills, numbers are 80, letters 26.
#[test]
fn the_drawers_are_laid_out_drill_by_drill() {
    let shop = tools(&workshop_of(WORKSHOP)).shop.expect("a workshop");
    assert_eq!(shop.drills.len(), 121 + 80 + 26);
    let of = |name: &str| {
        let found = shop.drills.iter().find(|d| d.name == name);
        found.map(|d| d.diameter.mm())
    };
    let near = |name: &str, mm: f64| {
        let found = of(name).unwrap_or_else(|| panic!("{name} is not there"));
        assert!((found - mm).abs() < 1e-9, "{name} is {found}");
    };
    near("5.3 mm", 5.3);
    // Number and letter sizes as printed in workshop tables (from memory): 0.2280 in, 0.413 in.
    near(
        "No 1",
        0.2280 * reckoning::quantity::INCH.to_si(1.0) * 1000.0,
    );
    near(
        "letter Z",
        0.413 * reckoning::quantity::INCH.to_si(1.0) * 1000.0,
    );
    let more = format!(
        "{WORKSHOP}\n[[drill-set]]\nid = \"inch\"\nseries = \"fractional\"\nfrom = \"1/16 in\"\n\
         to = \"1/2 in\"\nby = \"1/64 in\"\n\n[[drill-set]]\nid = \"odd\"\nseries = \"single\"\n\
         sizes = [\"5.05 mm\"]\n"
    );
    let shop = tools(&workshop_of(&more)).shop.expect("a workshop");
    // From 4/64 to 32/64 are 29 drills.
    assert_eq!(shop.drills.len(), 121 + 80 + 26 + 29 + 1);
    for name in ["1/16 in", "9/32 in", "1/2 in", "5.05 mm"] {
        assert!(shop.drills.iter().any(|d| d.name == name), "{name}");
    }
}

#[test]
fn holders_are_taken_with_their_swing_and_each_collet_alone() {
    let shop = tools(&workshop_of(WORKSHOP)).shop.expect("a workshop");
    assert_eq!(shop.reads, Reads::Millimetres);
    let collets = shop.lathe.holders.iter().filter(|h| h.hold == Hold::Collet);
    assert_eq!(collets.count(), 8);
    assert!(matches!(shop.lathe.speeds, Speeds::Range(..)));
    let jaws = shop.lathe.holders.iter().find(|h| h.hold == Hold::ThreeJaw);
    let swing = &jaws.expect("three jaws").swing;
    assert!(
        matches!(&swing.given, Given::Plan { field, .. } if field == "holding.three-jaw.run-out")
    );
    assert!(shop.drilling.is_some());
}

#[test]
fn what_nobody_measured_is_assumed_and_told_and_what_has_no_size_is_left_out() {
    let bare = changed(WORKSHOP, "run-out = \"0.08 mm\"\n", "");
    let bare = changed(&bare, "blade = \"2 mm\"\n", "");
    let bare = changed(&bare, "share = \"75 %\"\n", "");
    let bare = changed(&bare, "lead = \"6 mm\"\n", "");
    let found = tools(&workshop_of(&bare));
    let fields: Vec<&str> = found
        .taking
        .assumed
        .iter()
        .map(|(f, _)| f.as_str())
        .collect();
    assert_eq!(
        fields,
        [
            "holding.three-jaw.run-out",
            "lathe.blade",
            "threading.share"
        ]
    );
    assert_eq!(found.taking.gaps, ["reamer.five.lead"]);
    let shop = found.shop.expect("a workshop");
    assert_eq!(shop.reamers.len(), 1);
    let none = tools(&Workshop::blank());
    assert!(none.shop.is_none());
    for field in ["lathe.reads", "lathe.slowest", "lathe.fastest", "holding"] {
        assert!(none.taking.gaps.iter().any(|g| g == field), "{field}");
    }
}

#[test]
fn a_swing_taken_away_never_betters_the_answer() {
    let bare = ["0.08 mm", "0.01 mm", "0.02 mm"]
        .iter()
        .fold(WORKSHOP.to_owned(), |text, swing| {
            changed(&text, &format!("run-out = \"{swing}\""), "run-out = \"\"")
        });
    let before = bench(&plan_of(PLAN), &workshop_of(WORKSHOP));
    let after = bench(&plan_of(PLAN), &workshop_of(&bare));
    for (before, after) in before.iter().zip(&after) {
        assert!(after.verdict() >= before.verdict(), "{}", after.id);
    }
    assert_eq!(after[1].verdict(), Verdict::MetOnCondition);
}

#[test]
fn every_assumption_lies_within_its_range() {
    for a in ASSUMPTIONS {
        assert!(a.low < a.value && a.value < a.high, "{}", a.id);
    }
}
