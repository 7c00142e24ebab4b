//! The published trials: what lies outside its acceptance has a reason, what lies inside has none.

#[path = "../examples/book_pages/trials/mod.rs"]
mod trials;

use trials::{files, outcomes};

/// Source: the works that the trial files name; acceptance as their assumptions state it.
#[test]
fn published_trials_lie_inside_or_say_why_not() {
    let outcomes = outcomes().unwrap();
    let mut faults = Vec::new();
    for o in &outcomes {
        let told = format!(
            "{}: {}: {} for {} {}",
            o.trial, o.what, o.found, o.measured, o.unit
        );
        assert!(o.found.is_finite(), "{told}");
        if !o.is_hit() && o.missed.is_none() {
            faults.push(format!("{told} lies outside and no reason is given"));
        }
    }
    for trial in ids(&outcomes) {
        let of: Vec<_> = outcomes.iter().filter(|o| o.trial == trial).collect();
        if of.iter().all(|o| o.is_hit()) && of.iter().any(|o| o.missed.is_some()) {
            faults.push(format!(
                "{trial} gives a reason for a miss and misses nothing"
            ));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// Every trial that is kept has been run, and the reader refuses what it does not know.
#[test]
fn every_trial_is_run() {
    let (_, trials) = files().unwrap();
    let ran = ids(&outcomes().unwrap());
    for file in &trials {
        let id = file
            .sheet()
            .under("trial")
            .unwrap()
            .words("id")
            .unwrap()
            .to_owned();
        assert!(ran.contains(&id), "{id} is not run");
    }
    assert_eq!(ran.len(), trials.len());
}

fn ids(outcomes: &[trials::Outcome]) -> Vec<String> {
    let mut ids: Vec<String> = outcomes.iter().map(|o| o.trial.clone()).collect();
    ids.sort_unstable();
    ids.dedup();
    ids
}
