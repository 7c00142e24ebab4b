//! Duties that can be met.

use super::beginnings::{Duty, LARGER, LAUNCH, SMALL, mm, proposed, workshop};
use design::Question;
use design::propose::Proposal;
use reckoning::Verdict;

/// Three invented duties: each question is met, each step gives its reason, and the written plan
/// stands by itself.
#[test]
fn three_duties_are_met_and_their_plans_stand_by_themselves() {
    for duty in [SMALL, LAUNCH, LARGER] {
        let proposal = duty.proposed();
        met(&proposal);
        reasoned(&proposal);
        stands(duty, &proposal);
        beside_the_trade(&proposal);
    }
}

fn met(proposal: &Proposal) {
    assert_eq!(proposal.forbidden, []);
    for asked in [
        Question::Duty,
        Question::Steaming,
        Question::Proof,
        Question::Parts,
    ] {
        let answers = &proposal.checked.answers;
        let answer = answers.iter().find(|a| a.question == asked);
        let verdict = answer.and_then(|a| a.verdict);
        assert!(verdict.is_some_and(|v| v <= Verdict::MetOnCondition));
    }
}

/// Each step says between what and why, and stands as a comment.
fn reasoned(proposal: &Proposal) {
    for step in &proposal.steps {
        assert!(!step.between.is_empty() && !step.reason.is_empty());
        let heading = format!("# {}: between", step.step);
        assert!(proposal.text.contains(&heading), "{heading}");
    }
}

/// The written plan reads, and its check finds what the walk found.
fn stands(duty: Duty, proposal: &Proposal) {
    let read = plan::read(&proposal.text, "plan.toml");
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    let again = design::check(&read.content, &workshop());
    let verdicts = |checked: &design::Checked| -> Vec<_> {
        let judged = checked.judged.iter();
        judged
            .map(|j| {
                let f = &j.finding;
                (f.rule.id, f.place.clone(), f.verdict)
            })
            .collect()
    };
    assert_eq!(verdicts(&again), verdicts(&proposal.checked));
    // Every line of the maker's stands where it stood, in its order.
    let mut lines = proposal.text.lines();
    for line in duty.text().lines() {
        assert!(lines.any(|kept| kept == line), "{line}");
    }
}

/// Rules of the trade for small engines that fire on their blast (common practice, no source):
/// choke 4 to 5 nozzles wide; nozzle 0.005 of the grate by area; 15.2 kg of steam an hour from a
/// square metre of heating surface, and to 30 when forced. The walk does not size by them. The
/// choke that it finds lies near theirs and on the wide side, where the draught is flat; the
/// nozzle is far smaller, because the rule has no bed in it; the surface lies within a factor of
/// two of the range.
fn beside_the_trade(proposal: &Proposal) {
    let (choke, nozzle) = (mm(proposal, "chimney.choke"), mm(proposal, "blast.nozzle"));
    let wide = choke / nozzle;
    assert!((4.0..7.0).contains(&wide), "{wide}");
    let share = (nozzle / mm(proposal, "grate.diameter")).powi(2);
    assert!(share < 0.005, "{share}");
    let surface = proposal
        .beside
        .iter()
        .find(|b| b.what == "steam from the heating surface")
        .expect("the rule is told");
    let (least, most) = (surface.least / 2.0, 2.0 * surface.most);
    assert!((least..most).contains(&surface.here), "{surface:?}");
}

#[test]
fn a_proposal_is_the_same_bytes_twice() {
    assert_eq!(LAUNCH.proposed().text, LAUNCH.proposed().text);
}

#[test]
fn a_larger_demand_never_gets_a_smaller_grate() {
    let mut before = 0.0;
    for rpm in [300.0, 400.0, 500.0, 650.0] {
        let proposal = Duty { rpm, ..LAUNCH }.proposed();
        let grate = mm(&proposal, "grate.diameter");
        assert!(grate >= before, "{rpm}: {grate} after {before}");
        before = grate;
    }
}

#[test]
fn stock_on_hand_comes_first() {
    let proposal = proposed(&LAUNCH.text());
    let barrel = proposal.steps.iter().find(|s| s.step == "barrel");
    assert!(barrel.is_some_and(|s| s.reason.contains("on hand (barrel-tube)")));
}
