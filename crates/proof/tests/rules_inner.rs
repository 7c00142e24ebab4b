//! Rules of what stands inside a boiler or in its gas, both ways.

mod sample;

use proof::{Boiler, Metal, Proof, Service, prove};
use reckoning::{Finding, Verdict};
use sample::{boiler, coil, exact, first, heat, service, stock};

/// The sample at 5 bar with a change to it and to its service.
fn proof_with(change: impl FnOnce(&mut Boiler, &mut Service)) -> Proof {
    let (mut boiler, mut service) = (boiler(), service(0.5));
    change(&mut boiler, &mut service);
    prove(&boiler, &service, &stock(), None)
}

fn fires(rule: &str, change: impl FnOnce(&mut Boiler, &mut Service)) -> Finding {
    let proof = proof_with(change);
    let found = first(&proof, rule);
    assert_eq!(found.verdict, Verdict::NotMet, "{rule}: {}", found.says);
    assert!(found.remedy.is_some());
    found.clone()
}

fn silent(rule: &str, wanted: Verdict) -> Finding {
    let proof = proof_with(|_, _| ());
    let found = first(&proof, rule);
    assert_eq!(found.verdict, wanted, "{rule}: {}", found.says);
    assert!(!found.tight && found.remedy.is_none(), "{}", found.says);
    found.clone()
}

fn unproved(rule: &str, change: impl FnOnce(&mut Boiler, &mut Service)) {
    let proof = proof_with(change);
    let found = first(&proof, rule);
    assert_eq!(found.verdict, Verdict::Unproved, "{rule}: {}", found.says);
}

/// Independent calculation: 0.5 MPa on 6 mm at the 75 MPa of 600 °C and below asks
/// 0.5 * 6 / (150 + 0.5) = 0.0199 mm.
#[test]
fn ours_coil_flowing_silent() {
    let found = silent("ours.coil-flowing", Verdict::Met);
    let margin = found.margin.unwrap_or(f64::NAN);
    assert!((margin - 1.0 / (3.0 / 150.5)).abs() < 1e-6, "{margin}");
}

/// Copper ends at 200 °C, and at 704 °C stainless steel bears 28 MPa (ASME II-D, from memory).
#[test]
fn ours_coil_flowing_fires() {
    fires("ours.coil-flowing", |b, _| b.coils[0].metal = Metal::Copper);
    let thin = fires("ours.coil-flowing", |b, s| {
        s.coils = vec![heat(704.0, 704.0)];
        b.coils[0].wall = Some(exact("coil.wall", 0.05));
    });
    let asked = 3.0 / (2.0 * 28.0 + 0.5);
    assert!(thin.margin.is_some_and(|m| (m - 0.05 / asked).abs() < 1e-6));
    unproved("ours.coil-flowing", |_, s| s.coils[0].flowing = None);
    unproved("ours.coil-flowing", |b, _| b.coils[0].metal = Metal::Steel);
}

#[test]
fn ours_coil_standing_silent() {
    silent("ours.coil-standing", Verdict::Met);
}

/// Copper is refused where it can stand without flow in hot gas, with the wall of stainless steel
/// that would do: 3 / 150.5 = 0.02 mm by pressure, and 1 mm by practice.
#[test]
fn ours_coil_standing_fires() {
    let found = fires("ours.coil-standing", |b, s| {
        b.coils[0].metal = Metal::Copper;
        s.coils = vec![heat(190.0, 420.0)];
    });
    assert!(found.says.contains("420 °C") && found.says.contains("200 °C"));
    let cure = found.remedy.expect("a cure");
    assert!(
        cure.contains("1.4401") && cure.contains("0.02 mm"),
        "{cure}"
    );
    let low = fires("ours.coil-standing", |b, s| {
        b.coils[0].metal = Metal::StainlessLow;
        s.coils = vec![heat(190.0, 460.0)];
    });
    assert!(low.says.contains("450 °C"), "{}", low.says);
    unproved("ours.coil-standing", |_, s| s.coils[0].standing = None);
    unproved("ours.coil-standing", |_, s| s.coils.clear());
}

/// Independent calculation: 20 kW/m² through 1 mm at 15 W/(m K) are 1.3333 K; with 193 000 MPa,
/// 18.5e-6 and 0.34 they strain 3.6066 MPa, beside 0.5 * 52 / 20 = 1.3 MPa of pressure, of 225 MPa.
#[test]
fn ours_coil_strain_silent() {
    let found = silent("ours.coil-strain", Verdict::MetOnCondition);
    let margin = found.margin.unwrap_or(f64::NAN);
    assert!(
        (margin / (225.0 / (3.606_566 + 1.3)) - 1.0).abs() < 1e-5,
        "{margin}"
    );
    let says: Vec<&str> = found.conditions.iter().map(|c| c.says.as_str()).collect();
    // 60 mm of turn, 305 K warmer: 0.34 mm.
    assert!(
        says.iter().any(|s| s.contains("free to move by 0.34 mm")),
        "{says:?}"
    );
    assert!(says.iter().any(|s| s.contains("out of the gas")));
}

#[test]
fn ours_coil_strain_fires() {
    fires("ours.coil-strain", |b, s| {
        b.coils[0].wall = Some(exact("coil.wall", 2.0));
        s.coils = vec![heat(760.0, 760.0)];
        s.coils[0].flux = Some(reckoning::Known::from_plan(
            reckoning::quantity::HeatFlux::from_kw_m2(400.0),
            "flux",
            "",
        ));
    });
    unproved("ours.coil-strain", |_, s| s.coils[0].flux = None);
}

/// Independent calculation: 0.5 MPa on 10 mm at 26 MPa asks 5 / 52.5 = 0.0952 mm.
#[test]
fn ours_tube_wall_silent() {
    let found = silent("ours.tube-wall", Verdict::Met);
    assert!(
        found
            .margin
            .is_some_and(|m| (m - 0.9 / (5.0 / 52.5)).abs() < 1e-9)
    );
}

#[test]
fn ours_tube_wall_fires() {
    fires("ours.tube-wall", |b, _| {
        b.cross_tubes[0].wall = Some(exact("cross.wall", 0.09));
    });
    let hot = fires("ours.tube-wall", |b, _| {
        b.cross_tubes[0].metal_temperature = sample::celsius(210.0);
    });
    assert!(hot.says.contains("210 °C"), "{}", hot.says);
    unproved("ours.tube-wall", |b, _| b.cross_tubes[0].wall = None);
    unproved("ours.tube-wall", |b, _| {
        b.cross_tubes[0].metal_temperature = None;
    });
}

/// Independent calculation: 1 MPa in a tube of 10 by 8.2 mm is 167.24 / 32.76 MPa at its bore.
#[test]
fn ours_tube_test_silent() {
    let found = silent("ours.tube-test", Verdict::Met);
    assert!(
        found
            .margin
            .is_some_and(|m| (m - 40.5 * 32.76 / 167.24).abs() < 1e-9)
    );
}

#[test]
fn ours_tube_test_fires() {
    fires("ours.tube-test", |b, _| {
        b.cross_tubes[0].wall = Some(exact("cross.wall", 0.1));
    });
}

/// A coil that the plan names and of which nothing is known is spoken of, by every set.
#[test]
fn a_coil_of_which_nothing_is_known_is_unproved_by_every_set() {
    let proof = proof_with(|b, s| {
        let mut bare = coil();
        (bare.outside, bare.wall) = (None, None);
        b.coils = vec![bare];
        s.coils.clear();
    });
    for set in &proof.sets {
        let of_it: Vec<_> = set.findings.iter().filter(|f| f.place == "coil").collect();
        assert!(!of_it.is_empty(), "{} is silent", set.set.key);
        assert!(of_it.iter().all(|f| f.verdict == Verdict::Unproved));
    }
}
