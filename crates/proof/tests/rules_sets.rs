//! Every rule of the sets beside ours both ways: it fires on a boiler made to break it, and is
//! silent on one that keeps it. The rules of the pressure vessel code, but for its ends, stand in
//! `rules.rs`, those of the state regulations in `rules_state.rs`.

mod sample;

use proof::{
    Boiler, Diameter, Dish, EndShape, Exposure, Flue, Metal, Pressed, Proof, SHIP_REGISTER,
};
use reckoning::Verdict;
use sample::further::{dish, furnished};
use sample::{all, barrel, boiler, bush, celsius, exact, firebox, first, proof_at, proof_of};

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

/// A boiler of one tube with pressure outside and nothing else.
fn tube_alone(d_o_mm: f64, wall_mm: f64) -> Boiler {
    let mut flue = firebox();
    flue.diameter = Some(Diameter::Outside(exact("firebox.outside", d_o_mm)));
    flue.wall = Some(exact("firebox.wall", wall_mm));
    flue.openings.clear();
    Boiler {
        flues: vec![flue],
        ..Boiler::default()
    }
}

#[test]
fn en_13445_shell_wall_fires() {
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 1.0)));
    not_met(&proof_of(&thin), "en-13445.shell-wall");
}

#[test]
fn en_13445_shell_wall_silent() {
    // Of steel, as the sample's cross tubes are, no hot proof stress is known here.
    met(
        &proof_of(&with(|b| b.cross_tubes.clear())),
        "en-13445.shell-wall",
    );
}

#[test]
fn en_13445_opening_fires() {
    let wide = with(|b| {
        b.shells[0].openings[0].hole = Some(exact("bush.safety.hole", 48.0));
        b.shells[0].wall = Some(exact("barrel.wall", 1.6));
    });
    not_met(&proof_of(&wide), "en-13445.opening");
}

#[test]
fn en_13445_opening_silent() {
    silent("en-13445.opening");
}

/// A bush of the shell's own metal counts, a bush of another does not.
#[test]
fn en_13445_counts_a_bush_of_the_shell_s_metal() {
    let copper = with(|b| {
        if let Some(bush) = &mut b.shells[0].openings[0].bush {
            bush.metal = Metal::Copper;
        }
    });
    let margin = |b: &Boiler| first(&proof_of(b), "en-13445.opening").margin;
    assert!(margin(&copper) > margin(&with(|_| ())));
}

#[test]
fn en_13445_openings_apart_fires() {
    let near = with(|b| b.shells[0].openings[1] = bush("bush.feed", 60.0, 0.0));
    unproved(&proof_of(&near), "en-13445.openings-apart", "52.0 mm apart");
}

#[test]
fn en_13445_openings_apart_silent() {
    silent("en-13445.openings-apart");
}

#[test]
fn en_13445_external_fires() {
    let thin = with(|b| b.flues[0].wall = Some(exact("firebox.wall", 1.0)));
    let proof = proof_of(&thin);
    not_met(&proof, "en-13445.external");
    let found = first(&proof, "en-13445.external");
    assert_eq!(found.remedy.as_deref(), Some("a wall of 1.2 mm"));
}

#[test]
fn en_13445_external_silent() {
    silent("en-13445.external");
}

#[test]
fn en_13445_flat_end_fires() {
    let thin = with(|b| b.ends[0].thickness = Some(exact("end.thickness", 4.0)));
    not_met(&proof_of(&thin), "en-13445.flat-end");
}

#[test]
fn en_13445_flat_end_silent() {
    silent("en-13445.flat-end");
}

#[test]
fn en_13445_not_worked_fires() {
    let proof = proof_of(&with(|_| ()));
    unproved(
        &proof,
        "en-13445.not-worked",
        "is not worked by this rule set",
    );
}

#[test]
fn en_13445_not_worked_silent() {
    assert!(all(&proof_of(&shell_alone()), "en-13445.not-worked").is_empty());
}

#[test]
fn asme_viii_flat_end_fires() {
    let thin = with(|b| b.ends[0].thickness = Some(exact("end.thickness", 5.0)));
    not_met(&proof_of(&thin), "asme-viii.flat-end");
}

#[test]
fn asme_viii_flat_end_silent() {
    let thick = with(|b| b.ends[0].thickness = Some(exact("end.thickness", 8.5)));
    met(&proof_of(&thick), "asme-viii.flat-end");
}

#[test]
fn asme_viii_dished_end_fires() {
    let thin = with(|b| {
        b.ends[1].thickness = Some(exact("dish.thickness", 1.6));
        b.ends[1].shape = EndShape::Dished(Box::new(Dish {
            knuckle: Some(exact("dish.knuckle", 6.0)),
            ..dish()
        }));
    });
    not_met(&proof_at(&thin, 0.9), "asme-viii.dished-end");
}

#[test]
fn asme_viii_dished_end_silent() {
    silent("asme-viii.dished-end");
}

#[test]
fn a_dish_pressed_on_its_round_side_is_not_worked_by_the_code() {
    let round = with(|b| {
        b.ends[1].shape = EndShape::Dished(Box::new(Dish {
            pressed: Pressed::Round,
            ..dish()
        }));
    });
    unproved(&proof_of(&round), "asme-viii.dished-end", "round side");
}

#[test]
fn en_12953_furnace_fires() {
    not_met(&proof_at(&tube_alone(400.0, 8.0), 0.9), "en-12953.furnace");
}

#[test]
fn en_12953_furnace_silent() {
    met(&proof_of(&tube_alone(150.0, 8.0)), "en-12953.furnace");
}

#[test]
fn en_12953_not_worked_fires() {
    let proof = proof_of(&shell_alone());
    unproved(&proof, "en-12953.not-worked", "a shell is not worked");
}

#[test]
fn en_12953_not_worked_silent() {
    assert!(all(&proof_of(&tube_alone(150.0, 8.0)), "en-12953.not-worked").is_empty());
}

#[test]
fn ship_register_pipe_wall_fires() {
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 1.5)));
    not_met(&proof_of(&thin), "ship-register.pipe-wall");
}

#[test]
fn ship_register_pipe_wall_silent() {
    silent("ship-register.pipe-wall");
}

#[test]
fn ship_register_least_wall_fires() {
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 2.0)));
    not_met(&proof_of(&thin), "ship-register.least-wall");
}

#[test]
fn ship_register_least_wall_silent() {
    silent("ship-register.least-wall");
}

/// The fire tubes, of steel and as large as a ship's.
fn steel_tubes(b: &mut Boiler) {
    let tubes: &mut Flue = &mut b.flues[1];
    tubes.metal = Metal::Steel;
    tubes.diameter = Some(Diameter::Outside(exact("tube.outside", 51.0)));
    tubes.wall = Some(exact("tube.wall", 3.25));
}

#[test]
fn ship_register_smoke_tube_fires() {
    not_met(
        &proof_at(&with(steel_tubes), 1.5),
        "ship-register.smoke-tube",
    );
}

#[test]
fn ship_register_smoke_tube_silent() {
    met(&proof_of(&with(steel_tubes)), "ship-register.smoke-tube");
}

/// Every flange of the boiler bent to a radius.
fn bent(b: &mut Boiler, mm: f64) {
    for plate in &mut b.plates {
        if let Some(flange) = &mut plate.flange {
            flange.inside_radius = Some(exact("flange.radius", mm));
        }
    }
}

#[test]
fn ship_register_bend_radius_fires() {
    let thick = with(|b| {
        bent(b, 40.0);
        b.plates[0].thickness = Some(exact("plate.thickness", 25.0));
    });
    not_met(&proof_of(&thick), "ship-register.bend-radius");
}

#[test]
fn ship_register_bend_radius_silent() {
    met(
        &proof_of(&with(|b| bent(b, 40.0))),
        "ship-register.bend-radius",
    );
}

#[test]
fn ship_register_filler_fires() {
    let poor = with(|b| b.filler = Some("Ag 145".to_owned()));
    not_met(&proof_of(&poor), "ship-register.filler");
    let unknown = with(|b| b.filler = Some("of my own".to_owned()));
    unproved(
        &proof_of(&unknown),
        "ship-register.filler",
        "silver is known",
    );
    let none = with(|b| b.filler = None);
    unproved(&proof_of(&none), "ship-register.filler", "is not given");
}

#[test]
fn ship_register_filler_silent() {
    silent("ship-register.filler");
}

#[test]
fn ship_register_not_worked_fires() {
    let proof = proof_of(&with(|_| ()));
    unproved(
        &proof,
        "ship-register.not-worked",
        "is not worked by this rule set",
    );
}

#[test]
fn ship_register_not_worked_silent() {
    assert!(all(&proof_of(&shell_alone()), "ship-register.not-worked").is_empty());
}

#[test]
fn trade_shell_wall_fires() {
    let thin = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 1.1)));
    not_met(&proof_of(&thin), "trade.shell-wall");
}

#[test]
fn trade_shell_wall_silent() {
    silent("trade.shell-wall");
}

/// Between the two forms of the trade a wall is met and tight.
#[test]
fn trade_shell_wall_is_tight_below_the_second_form() {
    let between = with(|b| b.shells[0].wall = Some(exact("barrel.wall", 2.0)));
    let proof = proof_of(&between);
    let found = first(&proof, "trade.shell-wall");
    assert_eq!(found.verdict, Verdict::Met);
    assert!(
        found.tight && found.says.contains("asks 2.36 mm"),
        "{}",
        found.says
    );
}

#[test]
fn trade_stayed_flat_fires() {
    let thin = with(|b| b.plates[0].thickness = Some(exact("plate.thickness", 1.5)));
    not_met(&proof_of(&thin), "trade.stayed-flat");
}

#[test]
fn trade_stayed_flat_silent() {
    let thick = with(|b| {
        for plate in &mut b.plates {
            plate.thickness = Some(exact("plate.thickness", 3.5));
        }
    });
    met(&proof_of(&thick), "trade.stayed-flat");
}

#[test]
fn trade_not_worked_fires() {
    let proof = proof_of(&with(|_| ()));
    unproved(&proof, "trade.not-worked", "is not worked by this rule set");
}

#[test]
fn trade_not_worked_silent() {
    assert!(all(&proof_of(&shell_alone()), "trade.not-worked").is_empty());
}

/// What breaks the scope of a set leaves the number standing and the answer open.
#[test]
fn each_scope_limit_leaves_a_check_unproved_and_its_number_there() {
    let proof = proof_of(&with(|_| ()));
    for (rule, says) in [
        ("en-12953.furnace", "begins at 7 mm"),
        ("ship-register.bend-radius", "bends begin at"),
        ("ibr.tube-plate", "steel tubes expanded into steel"),
        ("ibr.between-tubes", "steel tubes expanded into steel"),
    ] {
        unproved(&proof, rule, says);
    }
    assert!(first(&proof, "en-12953.furnace").margin.is_some());
    assert!(first(&proof, "ibr.tube-plate").margin.is_some());
    let hot = with(|b| b.shells[0].metal_temperature = celsius(186.0));
    unproved(&proof_of(&hot), "trade.shell-wall", "ends at 185 °C");
    unproved(
        &proof_of(&hot),
        "en-13445.shell-wall",
        "no proof stress is known",
    );
    let hotter = with(|b| b.shells[0].metal_temperature = celsius(201.0));
    unproved(
        &proof_of(&hotter),
        "ship-register.pipe-wall",
        "no design stress is known",
    );
    assert!((SHIP_REGISTER.scope.metal_c - 200.0).abs() < 1e-12);
    let seam = with(|b| b.shells[0].seam = proof::Seam::ButtStrap);
    for rule in [
        "en-13445.shell-wall",
        "ship-register.pipe-wall",
        "ibr.shell",
    ] {
        unproved(&proof_of(&seam), rule, "a brazed seam along a shell");
    }
    let wide = with(|b| b.shells[0].openings[0].hole = Some(exact("bush.safety.hole", 51.0)));
    unproved(&proof_of(&wide), "en-13445.opening", "half the bore");
    let copper = with(|b| {
        b.girders[0].metal = Metal::Copper;
        b.cross_tubes[0].metal = Metal::Copper;
        if let proof::Feet::OnPlates(standing) = &mut b.girders[0].feet {
            standing.metal = Metal::Copper;
        }
    });
    for rule in ["ibr.girder", "ibr.under-girders", "ibr.cross-tubes"] {
        unproved(
            &proof_of(&copper),
            rule,
            "is of steel, and this is deoxidised copper",
        );
        assert!(first(&proof_of(&copper), rule).margin.is_some());
    }
    let copper_tubes = with(|b| b.flues[1].exposure = Exposure::Gas);
    unproved(
        &proof_of(&copper_tubes),
        "ship-register.smoke-tube",
        "not of steel",
    );
}
