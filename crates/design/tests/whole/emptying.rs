//! Emptying the value of a field never improves the verdict of a check that read it.
//!
//! A value is taken away in both ways that a file knows: the key stays with an empty text, or the
//! line goes. That a check which was not met becomes unproved is no improvement: neither is a
//! pass, and without the value nobody can say by how much it fails. A check may fall silent only
//! where its question is left without a pass. Where lines go or two values at once, the fire
//! is left out: it is nearly all the time of a check.

use std::collections::BTreeSet;

use design::Checked;
use proptest::prelude::*;
use reckoning::{Finding, Verdict};

use crate::example::{
    FERRIED, FERRY, Fire, Known, LAUNCH, LAUNCH_UNLIT, LAUNCHED, MILL, MILL_UNLIT, MILLED,
    checked_beside, document, filled, findings, same,
};

/// How far from a pass: a check that is not proved is no better than one that is not met.
fn rank(verdict: Verdict) -> u8 {
    match verdict {
        Verdict::Met => 0,
        Verdict::MetOnCondition => 1,
        Verdict::Unproved | Verdict::NotMet => 2,
    }
}

/// Whether a condition keeps open what was taken away.
fn stays_open(after: &Finding, paths: &[&str]) -> bool {
    let fields = after.conditions.iter().filter_map(|c| c.field.as_deref());
    after.verdict == Verdict::MetOnCondition && fields.into_iter().any(|f| paths.contains(&f))
}

/// What is better than before though values were taken away.
fn better(before: &Checked, after: &Checked, paths: &[&str]) -> Vec<String> {
    let mut found = Vec::new();
    for b in findings(before) {
        let Some(a) = same(b, after) else {
            continue;
        };
        if rank(a.verdict) < rank(b.verdict) && !stays_open(a, paths) {
            found.push(format!(
                "{paths:?}: {} of {} at {} was {} and became {}: {} / {}",
                b.rule.id,
                b.set,
                b.place,
                b.verdict.words(),
                a.verdict.words(),
                b.says,
                a.says
            ));
        }
    }
    // A condition that keeps open what was taken away keeps the answer on condition too.
    let open = findings(after).any(|finding| stays_open(finding, paths));
    for (b, a) in before.answers.iter().zip(&after.answers) {
        let kept = open && a.verdict == Some(Verdict::MetOnCondition);
        if a.verdict.map(rank) < b.verdict.map(rank) && !kept {
            found.push(format!(
                "{paths:?}: the answer on {} improved: {} / {}",
                b.question.name(),
                b.sentence,
                a.sentence
            ));
        }
    }
    found
}

/// How a value is taken away.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Way {
    Emptied,
    LineGone,
}

/// Fields whose taking away is another plant or another question, with the reason.
const ANOTHER: &[(&str, Option<Way>, &str)] = &[
    (".id", None, "the name by which a thing is known"),
    (".count", None, "how many there are"),
    (
        ".metal",
        Some(Way::LineGone),
        "a part without a line of its own is of the boiler's metal",
    ),
    (
        ".depth",
        Some(Way::LineGone),
        "a bore without a depth goes right through",
    ),
    (
        "blast.nozzle",
        Some(Way::LineGone),
        "without a nozzle the exhaust is led elsewhere",
    ),
    (
        "room.",
        Some(Way::LineGone),
        "room that is not limited is not asked",
    ),
];

fn is_another(path: &str, way: Way) -> bool {
    ANOTHER.iter().any(|(part, only, _)| {
        let named = path.ends_with(part) || (part.ends_with('.') && path.starts_with(part));
        named && only.is_none_or(|only| only == way)
    })
}

/// The plan without these values; none where it would not read without them.
fn without(text: &str, paths: &[&str], way: Way) -> Option<plan::Plan> {
    let mut document = document(text);
    for path in paths {
        match way {
            Way::Emptied => document.set(path, ""),
            Way::LineGone => document.unset(path),
        }
        .ok()?;
    }
    Some(document.read().content)
}

/// Takes each value of a plan away in turn; tells what improved, and how many were tried.
fn each_in_turn((text, known): (&str, &Known), way: Way) -> (Vec<String>, usize) {
    let (mut found, mut tried) = (Vec::new(), 0);
    for path in filled(text) {
        if is_another(&path, way) {
            continue;
        }
        if let Some(plan) = without(text, &[&path], way) {
            let after = checked_beside(&plan, known);
            found.extend(better(&known.checked, &after, &[&path]));
            tried += 1;
        }
    }
    (found, tried)
}

fn none_improves(of: (&str, &Known), way: Way) {
    let (found, tried) = each_in_turn(of, way);
    assert!(tried > 60, "only {tried} values were taken away");
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn no_check_improves_when_a_value_of_the_launch_is_emptied() {
    none_improves((LAUNCH, &LAUNCHED), Way::Emptied);
}

#[test]
fn no_check_improves_when_a_line_of_the_launch_goes() {
    none_improves((LAUNCH, &LAUNCH_UNLIT), Way::LineGone);
}

#[test]
fn no_check_improves_when_a_value_of_the_mill_engine_is_emptied() {
    none_improves((MILL, &MILLED), Way::Emptied);
}

#[test]
fn no_check_improves_when_a_line_of_the_mill_engine_goes() {
    none_improves((MILL, &MILL_UNLIT), Way::LineGone);
}

#[test]
fn no_check_improves_when_a_value_of_the_ferry_is_emptied() {
    none_improves((FERRY, &FERRIED), Way::Emptied);
}

#[test]
fn every_exception_is_met_by_a_field_of_the_examples() {
    let fields: BTreeSet<String> = [LAUNCH, MILL].into_iter().flat_map(filled).collect();
    for (part, only, why) in ANOTHER {
        let way = only.unwrap_or(Way::Emptied);
        let named = |path: &&String| path.contains(part) && is_another(path, way);
        assert!(fields.iter().any(|path| named(&path)), "{part}: {why}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn no_check_improves_when_two_values_go(
        (one, other) in (any::<prop::sample::Index>(), any::<prop::sample::Index>()),
        launch in any::<bool>(),
    ) {
        let launched: (&str, &Known) = (LAUNCH, &LAUNCH_UNLIT);
        let (text, known) = if launch { launched } else { (MILL, &*MILL_UNLIT) };
        let fields: Vec<String> = filled(text)
            .into_iter()
            .filter(|path| !is_another(path, Way::Emptied))
            .collect();
        let pair = [one.get(&fields).as_str(), other.get(&fields).as_str()];
        if let Some(plan) = without(text, &pair, Way::Emptied) {
            let after = checked_beside(&plan, known);
            let found = better(&known.checked, &after, &pair);
            prop_assert!(found.is_empty(), "{}", found.join("\n"));
        }
    }
}

/// A field that the examples leave out, with a value that spoils a check, on the launch.
fn spoilt(path: &str, value: &str) -> String {
    let mut document = document(LAUNCH);
    document.set(path, value).expect("a value that reads");
    document.text().to_owned()
}

/// A value that spoils a check and is taken away again leaves no pass behind it.
#[test]
fn a_spoiling_value_taken_away_leaves_no_pass() {
    for (path, value) in [
        ("boiler.design-temperature", "199 °C"),
        ("boiler.wall-rise", "45 K"),
        ("fire.moisture", "40 %"),
        ("fire.heating-value", "12 MJ/kg"),
        ("boiler.bush.valve.metal", "CW508L"),
        ("boiler.bush.valve.on", "upper tube plate"),
        ("boiler.water-level.lowest", "160 mm"),
        ("boiler.tubes.hole", "12 mm"),
        ("boiler.tubes.projection", "25 mm"),
        ("boiler.tube-plate.upper.set-in", "60 mm"),
        ("boiler.firehole.bore", "45 mm"),
        ("safety-valve.first.set", "5 bar"),
        ("safety-valve.first.bore", "2 mm"),
        ("safety-valve.first.coefficient", "0.01"),
        ("dryer.place", "firebox"),
        ("feed.tank", "10 ml"),
        ("feed.means.hand.rate", "1 ml/min"),
    ] {
        let text = spoilt(path, value);
        let burns = ["fire.", "safety-valve.", "feed.", "dryer."];
        let fire = if burns.iter().any(|part| path.starts_with(part)) {
            Fire::Lit
        } else {
            Fire::Unlit
        };
        let known = Known::of(&text, fire);
        let after = without(&text, &[path], Way::Emptied).expect("a plan");
        let found = better(&known.checked, &checked_beside(&after, &known), &[path]);
        assert!(found.is_empty(), "{}", found.join("\n"));
    }
}
