//! Rule sets: what they reach, which leads, and that every rule is asked.

mod sample;

use proof::{Boiler, OURS, RULES, Seam};
use reckoning::Verdict;
use sample::{all, barrel, boiler, exact, first, proof_at, proof_of};

/// The sample changed by a hand.
fn with(change: impl FnOnce(&mut Boiler)) -> Boiler {
    let mut boiler = boiler();
    change(&mut boiler);
    boiler
}

#[test]
fn every_rule_is_in_the_register_once_and_cited() {
    let mut ids: Vec<&str> = RULES.iter().map(|r| r.id).collect();
    let count = ids.len();
    ids.sort_unstable();
    ids.dedup();
    assert_eq!(ids.len(), count, "an id twice");
    assert!(
        RULES
            .iter()
            .all(|r| !r.cite.place.is_empty() && r.sentence.ends_with('.'))
    );
    let proof = proof_of(&boiler());
    for finding in proof.sets.iter().flat_map(|s| &s.findings) {
        assert!(
            ids.contains(&finding.rule.id),
            "{} is not registered",
            finding.rule.id
        );
        assert!(
            finding.rule.id.starts_with(finding.set),
            "{} by {}",
            finding.rule.id,
            finding.set
        );
    }
    let mut sprung = sample::valve();
    sprung.spring = Some(proof::Spring::default());
    let mounted = proof::Mountings {
        valves: vec![sprung],
        heating: Some(proof::Heating::Gas),
        feeds: vec![sample::feed()],
        ..proof::Mountings::default()
    };
    let mounted = proof::mountings(&mounted, &proof::Raising::default());
    for id in ids {
        let asked = mounted.iter().any(|f| f.rule.id == id);
        assert!(asked || !all(&proof, id).is_empty(), "{id} is never asked");
    }
}

#[test]
fn a_set_that_does_not_reach_says_by_which_limit() {
    let proof = proof_of(&boiler());
    for (rule, limit) in [
        ("asme-viii.external", "begins at 5 mm"),
        ("asme-viii.plate-stayed", "begins at 8 mm"),
    ] {
        let found = first(&proof, rule);
        assert_eq!(found.verdict, Verdict::Unproved);
        assert!(found.says.contains(limit), "{}", found.says);
        assert!(found.margin.is_some(), "the number is still given");
    }
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 1.4)));
    let proof = proof_of(&thin);
    assert!(
        first(&proof, "asme-viii.shell-wall")
            .says
            .contains("begins at 1.5 mm")
    );
    let proof = proof_at(&boiler(), 1.01);
    assert!(
        first(&proof, "ours.shell-wall")
            .says
            .contains("ends at 10 bar")
    );
}

#[test]
fn the_named_set_leads_and_else_the_one_that_asks_most_of_those_that_fit() {
    let proof = proof_of(&boiler());
    assert_eq!(proof.leads.key, "ours");
    let named = proof::find_set("asme-viii");
    let proof = proof::prove(&boiler(), &sample::service(0.5), &sample::stock(), named);
    assert_eq!(proof.leads.key, "asme-viii");
    assert!(proof.leading().all(|f| f.set == "asme-viii"));
    assert!(proof.beside().all(|f| f.set == OURS.key));
    let shell_alone = Boiler {
        shells: vec![{
            let mut shell = barrel();
            shell.openings.clear();
            shell.seam = Seam::ButtStrap;
            shell
        }],
        ..Boiler::default()
    };
    let proof = proof_of(&shell_alone);
    let [ours, code] = [&proof.sets[0], &proof.sets[1]];
    assert!(ours.fits() && code.fits());
    let strictest = if ours.least_margin() < code.least_margin() {
        ours
    } else {
        code
    };
    assert_eq!(proof.leads.key, strictest.set.key);
    assert_eq!(
        proof.leads.key, "asme-viii",
        "its strapped seam counts for less"
    );
}

#[test]
fn an_opening_wider_than_half_the_tube_is_unproved_with_the_limit() {
    let wide = with(|b| b.flues[0].openings[0].hole = Some(exact("firehole.hole", 38.0)));
    let proof = proof_at(&wide, 0.1);
    let found = first(&proof, "ours.flue-opening");
    assert_eq!(found.verdict, Verdict::Unproved);
    assert!(found.says.contains("half the diameter"), "{}", found.says);
}

#[test]
fn no_strength_is_made_up_beyond_what_was_seen() {
    let hot = with(|b| b.flues[0].metal_temperature = sample::celsius(190.0));
    let proof = proof_of(&hot);
    let found = first(&proof, "ours.flue-pressure");
    assert_eq!(found.verdict, Verdict::Unproved);
    assert!(
        found.says.contains("no proof stress is known"),
        "{}",
        found.says
    );
}

/// Efficiencies below one are the trade's, whatever our set was read from.
#[test]
fn a_blind_joint_is_common_practice_in_our_set() {
    let blind = with(|b| b.shells[0].seam = Seam::LapBlind);
    let proof = proof_of(&blind);
    let found = first(&proof, "ours.shell-wall");
    let z = found.working.lines().iter().find(|l| l.symbol == "z");
    assert!(z.is_some_and(|z| z.origin == reckoning::Origin::CommonPractice));
}
