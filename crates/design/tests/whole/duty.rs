//! The duty in its three ways, through a whole check.

use design::{Checked, Question};
use reckoning::Verdict;

use crate::example::{LAUNCH, checked, document, findings};

/// The launch example with these fields set; an empty text takes the line away.
fn launch(fields: &[(&str, &str)]) -> String {
    let mut document = document(LAUNCH);
    for (path, text) in fields {
        match *text {
            "" => document.unset(path),
            text => document.set(path, text),
        }
        .expect("a field of the plan");
    }
    document.text().to_owned()
}

fn duty(checked: &Checked) -> &str {
    let answers = &checked.answers;
    let answer = answers.iter().find(|a| a.question == Question::Duty);
    &answer.expect("an answer").sentence
}

fn power(checked: &Checked) -> Option<Verdict> {
    let found = findings(checked).find(|f| f.rule.id == "steaming.engine-power");
    found.map(|f| f.verdict)
}

/// With speed and cut-off given, the regulator holds the power that is asked.
#[test]
fn a_power_below_what_the_engine_can_give_closes_its_regulator() {
    let part = checked(&launch(&[("duty.power", "12 W")]));
    assert!(
        duty(&part).contains("regulator closed to"),
        "{}",
        duty(&part)
    );
    // Half the steam blows the fire so little that some of what may be true has no balance: then
    // the power is not proved, but it is not missed either.
    assert!(power(&part).is_some_and(|verdict| verdict != Verdict::NotMet));
    let much = checked(&launch(&[("duty.power", "400 W")]));
    assert!(duty(&much).contains("regulator open"), "{}", duty(&much));
    assert_eq!(power(&much), Some(Verdict::NotMet));
    let engine = |c: &Checked| c.steaming.working_state().and_then(|s| s.exhaust?.engine);
    let (part, much) = (
        engine(&part).expect("an engine"),
        engine(&much).expect("an engine"),
    );
    assert!(part.steam_kg_s < much.steam_kg_s);
    assert!((part.net_w() / 12.0 - 1.0).abs() < 1e-9);
}

/// Without a speed, the engine runs as fast as the power asks.
#[test]
fn a_power_without_a_speed_finds_the_speed() {
    let found = checked(&launch(&[("duty.power", "15 W"), ("engine.speed", "")]));
    assert!(
        duty(&found).contains("15 W at its shaft at"),
        "{}",
        duty(&found)
    );
    assert!(duty(&found).contains("rpm"), "{}", duty(&found));
}

/// Without a cut-off, steam is admitted as long as the power asks.
#[test]
fn a_power_without_a_cut_off_finds_the_cut_off() {
    let found = checked(&launch(&[("duty.power", "15 W"), ("engine.cut-off", "")]));
    assert!(duty(&found).contains("at a cut-off of"), "{}", duty(&found));
}

/// Without an engine the steam that is asked is the demand, and its exhaust blows the fire.
#[test]
fn plain_steam_needs_no_engine() {
    let start = LAUNCH.find("[engine]").expect("an engine");
    let end = LAUNCH.find("[boiler]").expect("a boiler");
    let text = format!("{}{}", &LAUNCH[..start], &LAUNCH[end..]);
    let text = text.replace("run = \"30 min\"", "run = \"30 min\"\nsteam = \"1.4 kg/h\"");
    let plain = checked(&text);
    let said = duty(&plain);
    assert!(said.contains("1.40 kg/h of steam is asked for"), "{said}");
    let state = plain.steaming.working_state().expect("a settled fire");
    assert!(state.exhaust_jet.is_some() && state.exhaust.is_some_and(|e| e.engine.is_none()));
    let engineless = |id: &str| id.starts_with("steaming.engine-") || id == "steaming.compression";
    assert!(findings(&plain).all(|f| !engineless(f.rule.id)));
    let holds = findings(&plain).find(|f| f.rule.id == "steaming.holds");
    assert!(holds.is_some_and(|f| f.verdict != Verdict::Unproved));
}

/// What is asked of feed and tank stands beside the demand.
#[test]
fn the_duty_says_what_is_asked_of_the_feed() {
    let launch = crate::example::LAUNCHED.checked.answers.iter();
    let said = &launch.into_iter().next().expect("an answer").sentence;
    for wanted in ["The feed should give", "Without feed", "The tank holds"] {
        assert!(said.contains(wanted), "{said}");
    }
}

/// A value of the engine that was given and is taken away leaves no pass behind it.
#[test]
fn an_emptied_value_of_the_duty_leaves_its_question_open() {
    for (path, text) in [
        ("duty.power", "12 W"),
        ("duty.steam", "0.2 kg/h"),
        ("engine.port-area", "20 mm²"),
        ("engine.exhaust-dryness", "93 %"),
        ("engine.pipe.lagging", "4 mm"),
    ] {
        let mut document = document(&launch(&[(path, text)]));
        document.set(path, "").expect("a key");
        let plan = document.read().content;
        let after = design::check(&plan, &crate::example::workshop());
        assert!(
            after.gaps.iter().any(|gap| gap == path),
            "{path}: {:?}",
            after.gaps
        );
        let answer = &after.answers[0];
        assert_eq!(
            answer.verdict,
            Some(Verdict::Unproved),
            "{}",
            answer.sentence
        );
    }
}
