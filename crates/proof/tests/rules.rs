//! Every rule both ways: it fires on a boiler made to break it, and is silent on the whole one.

mod sample;

use proof::{Boiler, Diameter, Exposure, Joint, Layout, Metal, Proof, Seam};
use reckoning::Verdict;
use sample::{all, boiler, bush, celsius, exact, firebox, first, length, made, proof_at, proof_of};

/// The sample changed by a hand.
fn with(change: impl FnOnce(&mut Boiler)) -> Boiler {
    let mut boiler = boiler();
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

/// The sample is whole.
fn silent(rule: &str) {
    met(&proof_of(&boiler()), rule);
}

#[test]
fn ours_steam_rating_fires() {
    let proof = proof_at(&boiler(), 0.9);
    let found = first(&proof, "ours.steam-rating");
    assert!(
        found.tight && found.says.contains("8.3 bar"),
        "{}",
        found.says
    );
}

#[test]
fn ours_steam_rating_silent() {
    silent("ours.steam-rating");
}

#[test]
fn ours_metal_temperature_fires() {
    let hot = with(|b| b.flues[0].metal_temperature = celsius(201.0));
    not_met(&proof_of(&hot), "ours.metal-temperature");
}

#[test]
fn ours_metal_temperature_silent() {
    silent("ours.metal-temperature");
}

#[test]
fn ours_wetted_metal_fires() {
    let brass = with(|b| {
        if let Some(bush) = &mut b.shells[0].openings[0].bush {
            bush.metal = Metal::Brass;
        }
    });
    not_met(&proof_of(&brass), "ours.wetted-metal");
}

#[test]
fn ours_wetted_metal_silent() {
    silent("ours.wetted-metal");
}

#[test]
fn ours_shell_wall_fires() {
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 0.9)));
    not_met(&proof_of(&thin), "ours.shell-wall");
}

#[test]
fn ours_shell_wall_silent() {
    silent("ours.shell-wall");
}

#[test]
fn ours_shell_test_fires() {
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 0.85)));
    not_met(&proof_of(&thin), "ours.shell-test");
}

#[test]
fn ours_shell_test_silent() {
    silent("ours.shell-test");
}

#[test]
fn a_first_set_is_told_between_the_two_yields() {
    // 0.5 MPa, 100 mm bore, 1.1 mm: 45.95 MPa at the test, between 40.5 and 55.8 MPa.
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 1.1)));
    let proof = proof_of(&thin);
    let found = first(&proof, "ours.shell-test");
    assert!(
        found.tight && found.says.contains("small set"),
        "{}",
        found.says
    );
    assert!(
        found
            .margin
            .is_some_and(|m| (m - 55.8 / 45.954_5).abs() < 1e-4)
    );
}

#[test]
fn ours_shell_floor_fires() {
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 2.0)));
    let proof = proof_of(&thin);
    let found = first(&proof, "ours.shell-floor");
    assert!(
        found.tight && found.says.contains("2.5 mm"),
        "{}",
        found.says
    );
}

#[test]
fn ours_shell_floor_silent() {
    silent("ours.shell-floor");
}

#[test]
fn ours_shell_ligament_fires() {
    // Two 20 mm holes 24 mm apart along the axis leave a sixth of the wall.
    let close = with(|b| {
        b.shells[0].openings = vec![bush("bush.one", 20.0, 0.0), bush("bush.two", 44.0, 0.0)];
    });
    not_met(&proof_of(&close), "ours.shell-ligament");
    let touching = with(|b| {
        b.shells[0].openings = vec![bush("bush.one", 20.0, 0.0), bush("bush.two", 39.0, 0.0)];
    });
    not_met(&proof_of(&touching), "ours.shell-ligament");
}

#[test]
fn ours_shell_ligament_silent() {
    silent("ours.shell-ligament");
    let near = with(|b| {
        b.shells[0].openings = vec![bush("bush.one", 20.0, 0.0), bush("bush.two", 58.0, 0.0)];
    });
    let proof = proof_of(&near);
    let found = first(&proof, "ours.shell-ligament");
    assert_eq!(found.verdict, Verdict::Met, "{}", found.says);
    assert!(found.margin.is_some(), "the pair was weighed");
}

#[test]
fn ours_opening_area_fires() {
    let bare = with(|b| {
        let opening = &mut b.shells[0].openings[0];
        opening.bush = None;
        b.shells[0].wall = Some(exact("barrel.wall", 1.5));
    });
    not_met(&proof_of(&bare), "ours.opening-area");
    let nothing_to_spare = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 0.8)));
    not_met(&proof_of(&nothing_to_spare), "ours.opening-area");
}

#[test]
fn ours_opening_area_silent() {
    silent("ours.opening-area");
}

#[test]
fn ours_opening_pressure_area_fires() {
    let thin = with(|b| {
        b.shells[0].wall = Some(exact("barrel.wall", 1.0));
        for opening in &mut b.shells[0].openings {
            if let Some(bush) = &mut opening.bush {
                bush.bore = Some(exact("bush.bore", 19.0));
                bush.stands_in = Some(exact("bush.in", 0.0));
            }
        }
    });
    not_met(&proof_of(&thin), "ours.opening-pressure-area");
}

#[test]
fn ours_opening_pressure_area_silent() {
    silent("ours.opening-pressure-area");
}

#[test]
fn ours_opening_braze_fires() {
    let blind = with(|b| {
        if let Some(bush) = &mut b.shells[0].openings[0].bush {
            bush.joint = Joint::Blind;
        }
        b.shells[0].wall = Some(exact("barrel.wall", 1.5));
    });
    not_met(&proof_of(&blind), "ours.opening-braze");
}

#[test]
fn ours_opening_braze_silent() {
    silent("ours.opening-braze");
}

#[test]
fn ours_flue_pressure_fires() {
    let thin = with(|b| b.flues[0].wall = Some(exact("firebox.wall", 2.0)));
    let proof = proof_at(&thin, 1.0);
    not_met(&proof, "ours.flue-pressure");
    let remedy = first(&proof, "ours.flue-pressure").remedy.as_deref();
    assert!(
        remedy.is_some_and(|r| r.starts_with("a wall of 2.5 mm")),
        "{remedy:?}"
    );
}

#[test]
fn ours_flue_pressure_silent() {
    silent("ours.flue-pressure");
}

#[test]
fn a_flame_swept_tube_above_the_furnace_form_is_tight_and_a_gas_tube_is_not() {
    let proof = proof_at(&boiler(), 0.8);
    let swept = first(&proof, "ours.flue-pressure");
    assert!(
        swept.tight && swept.says.contains("furnace form"),
        "{}",
        swept.says
    );
    let gas = with(|b| b.flues[0].exposure = Exposure::Gas);
    let proof = proof_at(&gas, 0.8);
    assert!(!first(&proof, "ours.flue-pressure").tight);
}

#[test]
fn ours_flue_opening_fires() {
    let wide = with(|b| b.flues[0].openings[0].hole = Some(exact("firehole.hole", 30.0)));
    not_met(&proof_at(&wide, 0.8), "ours.flue-opening");
}

#[test]
fn ours_flue_opening_silent() {
    silent("ours.flue-opening");
}

#[test]
fn ours_plate_stayed_fires() {
    let wide = with(|b| b.plates[0].nest.pitch = Some(length("nest.pitch", 32.0)));
    not_met(&proof_of(&wide), "ours.plate-stayed");
}

#[test]
fn ours_plate_stayed_silent() {
    silent("ours.plate-stayed");
}

#[test]
fn ours_plate_margin_fires() {
    let wide = with(|b| b.plates[0].margin = Some(length("plate.margin", 28.0)));
    not_met(&proof_of(&wide), "ours.plate-margin");
}

#[test]
fn ours_plate_margin_silent() {
    silent("ours.plate-margin");
}

#[test]
fn ours_plate_between_fires() {
    let wide = with(|b| {
        b.plates[0].nest.layout = Layout::Square;
        b.plates[0].nest.pitch = Some(length("nest.pitch", 40.0));
    });
    not_met(&proof_of(&wide), "ours.plate-between");
}

#[test]
fn ours_plate_between_silent() {
    silent("ours.plate-between");
}

#[test]
fn ours_plate_ligament_fires() {
    let close = with(|b| b.plates[0].nest.pitch = Some(length("nest.pitch", 12.4)));
    not_met(&proof_of(&close), "ours.plate-ligament");
}

#[test]
fn ours_plate_ligament_silent() {
    silent("ours.plate-ligament");
}

#[test]
fn ours_plate_opening_fires() {
    // A margin of 22 mm asks 2.45 mm, and 3.46 mm where a bush pierces the plate.
    let wide = with(|b| b.plates[0].margin = Some(length("plate.margin", 22.0)));
    not_met(&proof_of(&wide), "ours.plate-opening");
}

#[test]
fn ours_plate_opening_silent() {
    silent("ours.plate-opening");
}

#[test]
fn ours_tube_pull_fires() {
    let wide = with(|b| {
        b.plates[0].nest.pitch = Some(length("nest.pitch", 40.0));
        b.plates[0].nest.wall = Some(exact("tube.wall", 0.5));
    });
    not_met(&proof_of(&wide), "ours.tube-pull");
}

#[test]
fn ours_tube_pull_silent() {
    silent("ours.tube-pull");
}

#[test]
fn ours_tube_braze_fires() {
    let blind = with(|b| {
        b.plates[0].nest.pitch = Some(length("nest.pitch", 40.0));
        b.plates[0].nest.joint = Joint::Blind;
    });
    not_met(&proof_of(&blind), "ours.tube-braze");
}

#[test]
fn ours_tube_braze_silent() {
    silent("ours.tube-braze");
}

#[test]
fn asme_viii_shell_wall_fires() {
    let blind = with(|b| {
        b.shells[0].seam = Seam::LapBlind;
        b.shells[0].wall = Some(exact("barrel.wall", 1.6));
    });
    not_met(&proof_of(&blind), "asme-viii.shell-wall");
}

#[test]
fn asme_viii_shell_wall_silent() {
    // The sample's cross tubes are thinner than the code begins.
    let alone = with(|b| b.cross_tubes.clear());
    met(&proof_of(&alone), "asme-viii.shell-wall");
}

/// A barrel with gunmetal bushes, for which this set knows a stress.
fn gunmetal(b: &mut Boiler) {
    for opening in &mut b.shells[0].openings {
        if let Some(bush) = &mut opening.bush {
            bush.metal = Metal::Gunmetal;
        }
    }
}

#[test]
fn asme_viii_opening_area_fires() {
    let bare = with(|b| {
        b.shells[0].openings[0].bush = None;
        b.shells[0].wall = Some(exact("barrel.wall", 1.55));
        b.shells[0].diameter = Some(Diameter::Inside(exact("barrel.bore", 120.0)));
    });
    not_met(&proof_of(&bare), "asme-viii.opening-area");
}

#[test]
fn asme_viii_opening_area_silent() {
    met(&proof_of(&with(gunmetal)), "asme-viii.opening-area");
}

/// A tube that the external clause reaches.
fn thick(b: &mut Boiler, d_o_mm: f64) {
    let mut flue = firebox();
    flue.diameter = Some(Diameter::Outside(exact("firebox.outside", d_o_mm)));
    flue.wall = Some(exact("firebox.wall", 5.0));
    b.flues = vec![flue];
}

#[test]
fn asme_viii_external_fires() {
    not_met(
        &proof_at(&with(|b| thick(b, 300.0)), 1.0),
        "asme-viii.external",
    );
}

#[test]
fn asme_viii_external_silent() {
    met(&proof_of(&with(|b| thick(b, 150.0))), "asme-viii.external");
}

#[test]
fn asme_viii_plate_stayed_fires() {
    let wide = with(|b| {
        b.plates[0].thickness = Some(exact("plate.thickness", 8.0));
        b.plates[0].nest.pitch = Some(length("nest.pitch", 100.0));
    });
    not_met(&proof_of(&wide), "asme-viii.plate-stayed");
}

#[test]
fn asme_viii_plate_stayed_silent() {
    let thick = with(|b| {
        for plate in &mut b.plates {
            plate.thickness = Some(exact("plate.thickness", 8.0));
        }
    });
    met(&proof_of(&thick), "asme-viii.plate-stayed");
}

#[test]
fn an_oval_tube_beyond_the_curve_is_unproved_with_the_limit() {
    let oval = with(|b| b.flues[0].ovality = Some(made("firebox.ovality", 0.9)));
    let proof = proof_of(&oval);
    let found = first(&proof, "ours.flue-pressure");
    assert_eq!(found.verdict, Verdict::Unproved);
    assert!(found.says.contains("flue.roundness"), "{}", found.says);
}

#[test]
fn asme_viii_opening_elsewhere_fires() {
    let proof = proof_of(&boiler());
    let found = all(&proof, "asme-viii.opening-elsewhere");
    assert_eq!(found.len(), 3, "firehole, gauge bush, bush of an end");
    assert!(found.iter().all(|f| f.verdict == Verdict::Unproved));
}

#[test]
fn asme_viii_opening_elsewhere_silent() {
    let whole = with(|b| {
        b.flues[0].openings.clear();
        b.plates[0].openings.clear();
        b.ends.clear();
    });
    assert!(all(&proof_of(&whole), "asme-viii.opening-elsewhere").is_empty());
}
