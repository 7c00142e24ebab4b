//! Every rule of the state boiler regulations both ways: it fires on a boiler made to break it, and
//! is silent on one that keeps it.

mod sample;

use proof::{Boiler, Metal, Proof};
use reckoning::Verdict;
use sample::further::furnished;
use sample::{all, barrel, boiler, exact, first, length, proof_at, proof_of};

/// The furnished sample changed by a hand.
fn with(change: impl FnOnce(&mut Boiler)) -> Boiler {
    let mut boiler = furnished(boiler());
    change(&mut boiler);
    boiler
}

fn not_met(proof: &Proof, rule: &str) {
    let found = all(proof, rule);
    let bad = found.iter().find(|f| f.verdict == Verdict::NotMet);
    let bad =
        bad.unwrap_or_else(|| panic!("{rule} does not fire: {:?}", found.first().map(|f| &f.says)));
    assert!(bad.remedy.is_some(), "{rule} gives no cure");
    assert!(
        bad.margin.is_none_or(|m| m < 1.0),
        "{rule}: {:?}",
        bad.margin
    );
}

fn met(proof: &Proof, rule: &str) {
    let found = all(proof, rule);
    assert!(!found.is_empty(), "{rule} was not asked");
    for f in found {
        assert_eq!(f.verdict, Verdict::Met, "{rule} at {}: {}", f.place, f.says);
        assert!(!f.tight && f.remedy.is_none(), "{rule}: {}", f.says);
    }
}

/// The furnished sample keeps it.
fn silent(rule: &str) {
    met(&proof_of(&with(|_| ())), rule);
}

fn unproved(proof: &Proof, rule: &str, says: &str) {
    let found = first(proof, rule);
    assert_eq!(found.verdict, Verdict::Unproved, "{rule}: {}", found.says);
    assert!(found.says.contains(says), "{rule}: {}", found.says);
}

/// A boiler of one shell without openings: every set that knows shells can answer it.
fn shell_alone() -> Boiler {
    let mut shell = barrel();
    shell.openings.clear();
    Boiler {
        shells: vec![shell],
        ..Boiler::default()
    }
}

#[test]
fn ibr_shell_fires() {
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 1.2)));
    not_met(&proof_of(&thin), "ibr.shell");
}

#[test]
fn ibr_shell_silent() {
    silent("ibr.shell");
}

#[test]
fn ibr_furnace_fires() {
    not_met(&proof_of(&with(|_| ())), "ibr.furnace");
}

#[test]
fn ibr_furnace_silent() {
    met(&proof_at(&with(|_| ()), 0.15), "ibr.furnace");
}

#[test]
fn ibr_stay_fires() {
    let thin = with(|b| b.stays[0].diameter = Some(exact("stay.diameter", 2.0)));
    let proof = proof_of(&thin);
    not_met(&proof, "ibr.stay");
    // By hand: 4 mm hold 12.96 bar, and the load goes with the square.
    let found = first(&proof, "ibr.stay");
    assert_eq!(found.remedy.as_deref(), Some("a stay of 2.49 mm"));
}

#[test]
fn ibr_stay_silent() {
    silent("ibr.stay");
}

/// Tube plates of steel, as the regulation supposes.
fn steel_plates(b: &mut Boiler, thickness_mm: f64, pitch_mm: f64) {
    for plate in &mut b.plates {
        plate.metal = Metal::Steel;
        plate.thickness = Some(exact("plate.thickness", thickness_mm));
        plate.nest.pitch = Some(length("nest.pitch", pitch_mm));
    }
}

#[test]
fn ibr_tube_plate_fires() {
    let thin = with(|b| steel_plates(b, 6.0, 20.0));
    not_met(&proof_of(&thin), "ibr.tube-plate");
}

#[test]
fn ibr_tube_plate_silent() {
    met(
        &proof_of(&with(|b| steel_plates(b, 8.0, 20.0))),
        "ibr.tube-plate",
    );
}

#[test]
fn ibr_between_tubes_fires() {
    let close = with(|b| steel_plates(b, 8.0, 14.0));
    not_met(&proof_of(&close), "ibr.between-tubes");
}

#[test]
fn ibr_between_tubes_silent() {
    met(
        &proof_of(&with(|b| steel_plates(b, 8.0, 20.0))),
        "ibr.between-tubes",
    );
}

#[test]
fn ibr_girder_fires() {
    let shallow = with(|b| b.girders[0].depth = Some(exact("girder.depth", 6.0)));
    not_met(&proof_of(&shallow), "ibr.girder");
}

#[test]
fn ibr_girder_silent() {
    silent("ibr.girder");
}

#[test]
fn ibr_under_girders_fires() {
    let long = with(|b| {
        if let proof::Feet::OnPlates(standing) = &mut b.girders[0].feet {
            standing.length = Some(length("firebox.length", 1000.0));
        }
    });
    not_met(&proof_of(&long), "ibr.under-girders");
}

#[test]
fn ibr_under_girders_silent() {
    silent("ibr.under-girders");
}

#[test]
fn ibr_dished_fires() {
    let thin = with(|b| b.ends[1].thickness = Some(exact("dish.thickness", 1.4)));
    not_met(&proof_of(&thin), "ibr.dished");
}

#[test]
fn ibr_dished_silent() {
    silent("ibr.dished");
}

#[test]
fn ibr_cross_tubes_fires() {
    let thin = with(|b| b.cross_tubes[0].wall = Some(exact("cross.wall", 5.7)));
    not_met(&proof_of(&thin), "ibr.cross-tubes");
}

#[test]
fn ibr_cross_tubes_silent() {
    silent("ibr.cross-tubes");
}

#[test]
fn ibr_not_worked_fires() {
    let proof = proof_of(&with(|_| ()));
    unproved(&proof, "ibr.not-worked", "is not worked by this rule set");
}

#[test]
fn ibr_not_worked_silent() {
    assert!(all(&proof_of(&shell_alone()), "ibr.not-worked").is_empty());
}
