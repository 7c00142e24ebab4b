//! Rules of flanges, the frame of a wet firebox, bushes and stays, both ways.

#![allow(
    clippy::unwrap_used,
    reason = "a test on a sample that has these parts"
)]

mod sample;

use proof::{Boiler, Further, Joint, Metal, Points, Proof};
use reckoning::quantity::Area;
use reckoning::{Known, Verdict};
use sample::{all, boiler, count, exact, first, length, loose, proof_at, proof_of};

fn with(change: impl FnOnce(&mut Boiler)) -> Boiler {
    let mut boiler = boiler();
    change(&mut boiler);
    boiler
}

fn not_met(proof: &Proof, rule: &str) {
    let found = all(proof, rule);
    let bad = found.iter().find(|f| f.verdict == Verdict::NotMet);
    let bad = bad.unwrap_or_else(|| panic!("{rule} does not fire: {:?}", first(proof, rule).says));
    assert!(bad.remedy.is_some(), "{rule} gives no cure");
}

fn tight(proof: &Proof, rule: &str, says: &str) {
    let found = all(proof, rule);
    let hit = found.iter().any(|f| f.tight && f.says.contains(says));
    assert!(hit, "{rule}: {:?}", first(proof, rule).says);
}

fn silent(rule: &str) {
    let proof = proof_of(&boiler());
    let found = all(&proof, rule);
    assert!(!found.is_empty(), "{rule} was not asked");
    for f in found {
        assert_eq!(f.verdict, Verdict::Met, "{rule} at {}: {}", f.place, f.says);
        assert!(!f.tight && f.remedy.is_none(), "{rule}: {}", f.says);
    }
}

fn margin(proof: &Proof, rule: &str) -> f64 {
    first(proof, rule).margin.unwrap_or(f64::NAN)
}

/// A lap of 17 - 5 - 3 = 9 mm is there, 3 times 2.5 mm is asked.
#[test]
fn ours_joint_lap_silent() {
    silent("ours.joint-lap");
    let found = margin(&proof_of(&boiler()), "ours.joint-lap");
    assert!((found - 9.0 / 7.5).abs() < 1e-9, "{found}");
}

#[test]
fn ours_joint_lap_fires() {
    let short = with(|b| {
        if let Some(flange) = &mut b.plates[0].flange {
            flange.height = Some(exact("flange.height", 12.0));
        }
    });
    let proof = proof_of(&short);
    not_met(&proof, "ours.joint-lap");
    let cure = first(&proof, "ours.joint-lap").remedy.clone();
    assert_eq!(cure.as_deref(), Some("a flange of 15.50 mm over all"));
}

#[test]
fn ours_joint_shear_silent() {
    silent("ours.joint-shear");
}

/// 0.9 MPa on 300 mm over a lap of 9 mm: 7.5 MPa, of which a blind joint bears 6.
#[test]
fn ours_joint_shear_fires() {
    let blind = with(|b| {
        b.shells[0].diameter = Some(proof::Diameter::Inside(exact("barrel.bore", 300.0)));
        if let Some(flange) = &mut b.plates[0].flange {
            flange.joint = Joint::Blind;
        }
    });
    let proof = proof_at(&blind, 0.9);
    not_met(&proof, "ours.joint-shear");
    assert!((margin(&proof, "ours.joint-shear") - 0.8).abs() < 1e-9);
}

#[test]
fn ours_joint_peel_silent() {
    silent("ours.joint-peel");
}

#[test]
fn ours_joint_peel_fires() {
    let flat = with(|b| {
        if let Some(flange) = &mut b.plates[0].flange {
            flange.height = Some(exact("flange.height", 0.0));
        }
    });
    not_met(&proof_of(&flat), "ours.joint-peel");
    let outwards = with(|b| {
        for plate in &mut b.plates {
            if let Some(flange) = &mut plate.flange {
                flange.points = Some(Points::AwayFromWater);
            }
        }
    });
    let proof = proof_of(&outwards);
    tight(&proof, "ours.joint-peel", "away from the water");
    // Pressure outside presses the firebox on the flange of its crown.
    let told = all(&proof, "ours.joint-peel")
        .iter()
        .filter(|f| f.tight)
        .count();
    assert_eq!(told, 1);
}

#[test]
fn ours_crown_chain_silent() {
    silent("ours.crown-chain");
    let proof = proof_of(&boiler());
    let says = &first(&proof, "ours.crown-chain").says;
    assert!(
        says.contains("12 tubes to plate.upper") && says.contains("to barrel"),
        "{says}"
    );
}

/// Independent calculation: one tube holds 0.5 pi/4 (75² - 10²) = 2169.7 N, which asks 91.8 mm²
/// where the tube has 25.7 mm².
#[test]
fn ours_crown_chain_fires() {
    let lonely = with(|b| b.plates[1].nest.count = count(1.0));
    let proof = proof_of(&lonely);
    not_met(&proof, "ours.crown-chain");
    let found = margin(&proof, "ours.crown-chain");
    let pull = 0.5 * std::f64::consts::FRAC_PI_4 * (75.0 * 75.0 - 100.0);
    let braze = 12.0 * std::f64::consts::PI * 10.0 * 3.0 / pull;
    let wall = std::f64::consts::PI * 9.1 * 0.9 * 26.0 / (1.1 * pull);
    assert!((found - braze.min(wall)).abs() < 1e-9, "{found}");
}

#[test]
fn no_chain_no_pass() {
    let untold = with(|b| b.plates[1].nest.count = None);
    let proof = proof_of(&untold);
    let found = first(&proof, "ours.crown-chain");
    assert_eq!(found.verdict, Verdict::Unproved, "{}", found.says);
    let flangeless = with(|b| b.plates[0].flange = None);
    let proof = proof_of(&flangeless);
    assert_eq!(first(&proof, "ours.crown-chain").verdict, Verdict::Unproved);
}

/// Met only on condition, for nobody has measured how unlike tubes and shell grow.
#[test]
fn ours_tube_growth_silent() {
    let proof = proof_of(&boiler());
    let found = first(&proof, "ours.tube-growth");
    assert_eq!(found.verdict, Verdict::MetOnCondition, "{}", found.says);
    assert!(found.conditions.iter().any(|c| c.says.contains("15 K")));
}

#[test]
fn ours_tube_growth_fires() {
    let blind = with(|b| b.plates[1].nest.joint = Joint::Blind);
    not_met(&proof_of(&blind), "ours.tube-growth");
}

/// Independent calculation: a leg of 12.5 mm and a ring of 8 mm, 0.75 P w²/h² = 0.916 MPa.
#[test]
fn ours_ring_bending_silent() {
    silent("ours.ring-bending");
    let proof = proof_of(&boiler());
    let says = &first(&proof, "ours.ring-bending").says;
    assert!(says.contains("bent to 0.9 MPa"), "{says}");
}

/// Nothing ties the crown: 0.5 MPa on 75 mm push 9.375 N/mm on a ring of 3 mm.
#[test]
fn ours_ring_bending_fires() {
    let hanging = with(|b| {
        b.plates[1].nest.count = None;
        if let Some(frame) = &mut b.frame {
            frame.ring.depth = Some(exact("ring.depth", 3.0));
        }
    });
    let proof = proof_of(&hanging);
    not_met(&proof, "ours.ring-bending");
    let sigma = 6.0 * (9.375 * 12.5 + 0.25 * 12.5 * 12.5) / 9.0;
    let says = &first(&proof, "ours.ring-bending").says;
    assert!(says.contains(&format!("bent to {sigma:.1} MPa")), "{says}");
}

#[test]
fn ours_ring_joint_silent() {
    silent("ours.ring-joint");
}

/// Nothing ties the crown: 0.5 MPa on 100 mm are 12.5 N/mm, on 2 mm of blind joint 6.25 MPa.
#[test]
fn ours_ring_joint_fires() {
    let shallow = with(|b| {
        b.plates[1].nest.count = None;
        if let Some(frame) = &mut b.frame {
            frame.ring.depth = Some(exact("ring.depth", 2.0));
            frame.ring.joint = Joint::Blind;
        }
    });
    let proof = proof_of(&shallow);
    not_met(&proof, "ours.ring-joint");
    assert!((margin(&proof, "ours.ring-joint") - 0.96).abs() < 1e-9);
}

#[test]
fn ours_firehole_joint_silent() {
    silent("ours.firehole-joint");
}

/// Half a pitch of wall asks sqrt(P S C)/2, which a blind joint of 6 MPa bears up to 2.64 MPa.
#[test]
fn ours_firehole_joint_fires() {
    let blind = with(|b| {
        if let Some(hole) = b.frame.as_mut().and_then(|f| f.firehole.as_mut()) {
            hole.joint = Joint::Blind;
        }
    });
    let proof = proof_at(&blind, 0.9);
    let expected = 6.0 / ((0.9_f64 * 26.0 * 2.1).sqrt() / 2.0);
    assert!((margin(&proof, "ours.firehole-joint") - expected).abs() < 0.02);
    let proof = proof_at(&blind, 2.7);
    let margin = margin(&proof, "ours.firehole-joint");
    assert!(margin < 1.0, "{margin}");
}

#[test]
fn ours_bush_push_out_silent() {
    silent("ours.bush-push-out");
}

/// 1.8 MPa on a bush of 60 mm in 2.5 mm of wall: 10.8 MPa, of which a blind joint bears 6.
#[test]
fn ours_bush_push_out_fires() {
    let wide = with(|b| {
        b.shells[0].openings[0].hole = Some(exact("hole", 60.0));
        if let Some(bush) = &mut b.shells[0].openings[0].bush {
            bush.joint = Joint::Blind;
        }
    });
    let proof = proof_at(&wide, 0.9);
    not_met(&proof, "ours.bush-push-out");
    assert!((margin(&proof, "ours.bush-push-out") - 6.0 / 10.8).abs() < 1e-9);
}

#[test]
fn ours_bush_torque_silent() {
    silent("ours.bush-torque");
}

#[test]
fn ours_bush_torque_fires() {
    let small = with(|b| b.shells[0].openings[0].hole = Some(exact("hole", 10.0)));
    tight(&proof_of(&small), "ours.bush-torque", "second spanner");
}

#[test]
fn ours_stay_metal_silent() {
    silent("ours.stay-metal");
}

#[test]
fn ours_stay_metal_fires() {
    for metal in [Metal::Steel, Metal::Brass] {
        let bad = with(|b| b.stays[0].metal = metal);
        not_met(&proof_of(&bad), "ours.stay-metal");
    }
    assert_eq!(Metal::named("S275JR"), Metal::Steel);
}

#[test]
fn ours_stay_rod_silent() {
    silent("ours.stay-rod");
}

/// Independent calculation: 0.6 MPa on 20 mm square ask a rod of 3.54 mm.
#[test]
fn ours_stay_rod_fires() {
    let thin = with(|b| b.stays[0].diameter = Some(exact("stay.diameter", 3.0)));
    let proof = proof_at(&thin, 0.6);
    not_met(&proof, "ours.stay-rod");
    let cure = first(&proof, "ours.stay-rod").remedy.clone();
    let cure = cure.expect("a cure");
    assert!(cure.starts_with("a stay of 3.5"), "{cure}");
}

#[test]
fn ours_stay_joint_silent() {
    silent("ours.stay-joint");
}

/// Independent calculation: 232.5 N on 4 mm through 2 mm are 9.25 MPa, of which a blind joint
/// bears 6.
#[test]
fn ours_stay_joint_fires() {
    let blind = with(|b| {
        b.stays[0].plate = Some(exact("firebox.wall", 2.0));
        b.stays[0].joint = Joint::Blind;
    });
    let proof = proof_at(&blind, 0.6);
    not_met(&proof, "ours.stay-joint");
    assert!((margin(&proof, "ours.stay-joint") - 6.0 / 9.250_59).abs() < 1e-4);
}

#[test]
fn ours_stay_strain_silent() {
    let proof = proof_of(&boiler());
    let found = first(&proof, "ours.stay-strain");
    assert!(
        !found.tight && found.verdict == Verdict::MetOnCondition,
        "{}",
        found.says
    );
}

/// Independent calculation: 4 mm across 10 mm, 80 mm up, 20 K: 0.33 %.
#[test]
fn ours_stay_strain_fires() {
    let short = with(|b| {
        b.stays[0].length = Some(length("leg", 10.0));
        b.stays[0].height = Some(length("stay.height", 80.0));
    });
    tight(&proof_of(&short), "ours.stay-strain", "0.33 %");
}

#[test]
fn asme_viii_not_worked_fires() {
    let proof = proof_of(&boiler());
    let found = all(&proof, "asme-viii.not-worked");
    let worked = [Further::CrossTubes, Further::Pipe];
    // This set works flat and dished ends, but no end round a flue and none among stays.
    let mut left = boiler();
    left.ends
        .retain(|end| !["end.flat", "end.dished", "end.stayed"].contains(&&*end.id));
    let left = left.further();
    let left = left.iter().filter(|(_, kind)| !worked.contains(kind));
    assert_eq!(found.len(), left.count());
    assert!(found.iter().all(|f| f.verdict == Verdict::Unproved));
}

#[test]
fn asme_viii_not_worked_silent() {
    let bare = with(|b| {
        b.frame = None;
        *b = Boiler {
            shells: b.shells.clone(),
            plates: b.plates.clone(),
            flues: b.flues.clone(),
            ..Boiler::default()
        };
        b.stays.clear();
        b.plates.clear();
    });
    assert!(all(&proof_of(&bare), "asme-viii.not-worked").is_empty());
}

/// A number that is taken away, or has no tolerance, never makes a pass.
#[test]
fn what_is_missing_of_the_form_is_unproved_or_held() {
    type Emptying = (&'static str, fn(&mut Boiler));
    let cases: [Emptying; 8] = [
        ("ours.joint-lap", |b| {
            b.plates[0].flange.as_mut().unwrap().height = None;
        }),
        ("ours.joint-lap", |b| {
            b.plates[0].flange.as_mut().unwrap().inside_radius = None;
        }),
        ("ours.joint-peel", |b| {
            b.plates[0].flange.as_mut().unwrap().points = None;
        }),
        ("ours.ring-bending", |b| {
            b.frame.as_mut().unwrap().ring.depth = None;
        }),
        ("ours.stay-rod", |b| b.stays[0].field = None),
        ("ours.stay-joint", |b| b.stays[0].plate = None),
        ("ours.stay-strain", |b| b.stays[0].length = None),
        ("ours.stay-metal", |b| b.stays[0].metal = Metal::Unlisted),
    ];
    for (rule, empty) in cases {
        let proof = proof_of(&with(empty));
        let found = first(&proof, rule);
        assert_eq!(found.verdict, Verdict::Unproved, "{rule}: {}", found.says);
        assert!(found.remedy.is_some());
    }
    let untold = with(|b| b.stays[0].diameter = Some(loose("stay.diameter", 4.0)));
    let proof = proof_of(&untold);
    let found = first(&proof, "ours.stay-rod");
    assert_eq!(found.verdict, Verdict::MetOnCondition);
    assert_eq!(found.conditions[0].field.as_deref(), Some("stay.diameter"));
}

/// The field of a stay is an area.
#[test]
fn more_plate_on_a_stay_lowers_its_margin() {
    let on = |mm2: f64| {
        let wide = with(|b| {
            b.stays[0].field = Some(Known::from_plan(Area::from_mm2(mm2), "field", ""));
        });
        margin(&proof_of(&wide), "ours.stay-rod")
    };
    assert!(on(500.0) < on(400.0));
}
