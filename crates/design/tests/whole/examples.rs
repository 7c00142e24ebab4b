//! Each example does what its comments say of it.

use design::{Checked, Question, Standing};
use reckoning::Verdict;

use crate::example::{HALF, LAUNCHED, MILLED, checked, findings};

fn verdict(checked: &Checked, of: Question) -> Option<Verdict> {
    let answer = checked.answers.iter().find(|a| a.question == of);
    answer.and_then(|a| a.verdict)
}

fn of<'a>(checked: &'a Checked, rule: &'a str) -> impl Iterator<Item = Verdict> + 'a {
    let named = findings(checked).filter(move |f| f.rule.id == rule);
    named.map(|f| f.verdict)
}

#[test]
fn the_launch_meets_its_duty() {
    let launch = &LAUNCHED.checked;
    let met = [Verdict::Met, Verdict::MetOnCondition];
    for question in [Question::Duty, Question::Steaming] {
        let found = verdict(launch, question);
        assert!(
            found.is_some_and(|v| met.contains(&v)),
            "{question:?}: {found:?}"
        );
    }
    let run = launch.steaming.run.as_ref().expect("a run");
    let word = run.outlook.as_ref().expect("an outlook").word.words();
    assert!(["blows off", "holds"].contains(&word), "{word}");
    // Its coil is of copper, and stands in gas far above 200 °C when the regulator is shut.
    // Other sets stand beside, and may ask more.
    let leading = launch.judged.iter();
    let leading = leading.filter(|j| j.standing == Standing::Leads);
    let failed = leading.map(|j| &j.finding);
    for f in failed.filter(|f| f.verdict == Verdict::NotMet) {
        let coil = ["ours.coil-standing", "ours.coil-flowing"].contains(&f.rule.id);
        assert!(coil && f.place == "dryer", "{}: {}", f.rule.id, f.says);
        let cure = f.remedy.as_deref().expect("a cure");
        assert!(cure.contains("1.4401"), "{cure}");
    }
}

/// The mill engine, drawn down from full size by eye, fails in the ways that its comments name.
#[test]
fn the_mill_engine_fails_in_each_way_of_its_comments() {
    let mill = &MILLED.checked;
    for (rule, comment) in [
        ("plant.water-covers-crown", "below the crown of the firebox"),
        ("ours.shell-wall", "a blind seam carries half"),
        (
            "ours.flue-pressure",
            "far too thin for a flue of four inches",
        ),
        ("ours.plate-margin", "not stayed outside the nest"),
        ("plant.ligament", "leaves a ligament of a sixteenth"),
        ("ours.plate-ligament", "leaves a ligament of a sixteenth"),
        ("plant.tubes-fit", "more than the plate holds"),
        (
            "steaming.holds",
            "copied from a rule of thumb by grate area",
        ),
    ] {
        assert!(
            crate::example::MILL.contains(comment),
            "no comment `{comment}`"
        );
        let failed = of(mill, rule).any(|v| v == Verdict::NotMet);
        assert!(failed, "{rule} does not fail: {comment}");
    }
    for question in [Question::Steaming, Question::Proof, Question::Parts] {
        assert_eq!(
            verdict(mill, question),
            Some(Verdict::NotMet),
            "{question:?}"
        );
    }
    let run = mill.steaming.run.as_ref().expect("a run");
    let word = run.outlook.as_ref().expect("an outlook").word.words();
    assert_eq!(word, "will not hold");
}

/// What is half written gives what it can, and nothing is met that rests on what is missing.
#[test]
fn the_half_written_plan_names_what_is_wanted() {
    let half = checked(HALF);
    for wanted in [
        "fire.fuel",
        "boiler.firebox.outside",
        "boiler.barrel.length",
    ] {
        assert!(
            half.gaps.iter().any(|gap| gap == wanted),
            "{wanted} is not named"
        );
    }
    for question in [Question::Steaming, Question::Proof, Question::Parts] {
        let found = verdict(&half, question);
        assert!(found >= Some(Verdict::Unproved), "{question:?}: {found:?}");
    }
    for f in findings(&half).filter(|f| f.verdict <= Verdict::MetOnCondition) {
        // Barrel, metal and pressure are given, and the temperature follows from the pressure.
        let by_pressure = ["ours.steam-rating", "ours.metal-temperature"];
        let given = f.place.starts_with("barrel") || by_pressure.contains(&f.rule.id);
        assert!(given, "{} of {}: {}", f.rule.id, f.place, f.says);
    }
    let engine = half.steaming.engine_alone.expect("the engine by itself");
    assert!(engine.steam_kg_s > 0.0 && engine.indicated_w > 0.0);
}
