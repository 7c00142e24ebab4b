//! Duties that cannot be met: the question that forbids them is named, with what was found.

use super::beginnings::{Duty, LAUNCH, workshop};
use design::Question;
use design::propose::{NotProposed, propose};

/// The first thing said against the question that alone forbids.
fn forbids(duty: Duty) -> (Question, String) {
    let proposal = duty.proposed();
    match proposal.forbidden.as_slice() {
        [one] => (one.question, one.says[0].clone()),
        others => panic!("{others:?}"),
    }
}

#[test]
fn a_room_too_narrow_too_low_and_a_mass_too_small_are_told_by_the_parts() {
    for (duty, field) in [
        (
            Duty {
                width: 50.0,
                ..LAUNCH
            },
            "room.width",
        ),
        (
            Duty {
                height: 150.0,
                ..LAUNCH
            },
            "room.height",
        ),
        (
            Duty {
                mass: 1.0,
                ..LAUNCH
            },
            "room.mass",
        ),
    ] {
        let (question, says) = forbids(duty);
        assert_eq!(question, Question::Parts);
        assert!(says.starts_with(field), "{says}");
    }
}

#[test]
fn a_pressure_that_heats_the_metal_too_far_is_told_by_the_proof() {
    let proposal = Duty { bar: 9.0, ..LAUNCH }.proposed();
    let proof = proposal
        .forbidden
        .iter()
        .find(|f| f.question == Question::Proof)
        .expect("the proof forbids it");
    assert!(
        proof.says.iter().any(|s| s.contains("at most 200 °C")),
        "{:?}",
        proof.says
    );
}

#[test]
fn an_engine_too_large_for_the_room_is_told_by_the_fire() {
    let duty = Duty {
        bore: 40.0,
        stroke: 40.0,
        ..LAUNCH
    };
    let proposal = duty.proposed();
    let questions: Vec<Question> = proposal.forbidden.iter().map(|f| f.question).collect();
    assert!(questions.contains(&Question::Steaming), "{questions:?}");
    assert!(plan::read(&proposal.text, "plan.toml").problems.is_empty());
}

fn refused(text: &str) -> NotProposed {
    match propose(text, "plan.toml", &workshop()) {
        Ok(_) => panic!("nothing should be proposed"),
        Err(why) => why,
    }
}

#[test]
fn a_beginning_without_its_duty_is_told_what_is_wanted() {
    let text = LAUNCH.text();
    let without = text
        .replace("run = \"30 min\"\n", "")
        .replace("cut-off = \"75 %\"\n", "");
    match refused(&without) {
        NotProposed::Wanted(fields) => assert_eq!(fields, ["duty.run", "engine.cut-off"]),
        other => panic!("{other}"),
    }
}

#[test]
fn a_form_and_a_fuel_without_a_walk_are_told() {
    let text = LAUNCH.text();
    let form = text.replace(
        "vertical, wet firebox, fire tubes",
        "horizontal, centre flue, cross tubes",
    );
    let fuel = text.replace("anthracite", "charcoal");
    for (text, named) in [(form, "horizontal"), (fuel, "charcoal")] {
        let why = refused(&text);
        assert!(matches!(why, NotProposed::NoWalk { .. }), "{why:?}");
        assert!(why.to_string().contains(named), "{why}");
    }
}

#[test]
fn a_beginning_with_a_fault_is_refused_with_it() {
    let text = LAUNCH.text().replace("\"18 mm\"", "\"18 furlongs\"");
    assert!(matches!(refused(&text), NotProposed::Faulty(found) if found.len() == 1));
}
