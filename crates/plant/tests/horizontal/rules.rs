//! Each rule of a horizontal boiler fires on a plan made to break it and is silent on its
//! neighbour.

use plant::Resolved;
use reckoning::Verdict;

use crate::plans::{broken, changed, of};

/// The good plan with the value of one line replaced.
fn with(key: &str, (good, new): (&str, &str)) -> Resolved {
    changed(&[(
        &format!("{key} = \"{good}\""),
        &format!("{key} = \"{new}\""),
    )])
}

/// Whether a rule is spoken of and not broken.
fn kept(resolved: &Resolved, rule: &str) -> bool {
    of(resolved, rule).next().is_some() && !broken(resolved, rule)
}

#[test]
fn plant_ends_stand_fires() {
    let changed = with("length", ("180 mm", "24 mm"));
    assert!(broken(&changed, "plant.ends-stand"));
}

#[test]
fn plant_ends_stand_silent() {
    let changed = with("length", ("180 mm", "150 mm"));
    assert!(kept(&changed, "plant.ends-stand"));
}

#[test]
fn plant_flue_clear_fires() {
    let changed = with("below", ("6 mm", "12.6 mm"));
    assert!(broken(&changed, "plant.flue-clear"));
}

#[test]
fn plant_flue_clear_silent() {
    let changed = with("below", ("6 mm", "12.4 mm"));
    assert!(kept(&changed, "plant.flue-clear"));
}

#[test]
fn plant_cross_tube_passes_fires() {
    let changed = with("outside", ("6 mm", "30 mm"));
    assert!(broken(&changed, "plant.cross-tube-passes"));
}

#[test]
fn plant_cross_tube_passes_silent() {
    let changed = with("outside", ("6 mm", "29 mm"));
    assert!(kept(&changed, "plant.cross-tube-passes"));
}

#[test]
fn plant_cross_tubes_apart_fires() {
    let changed = with("spacing", ("20 mm", "8.4 mm"));
    assert!(broken(&changed, "plant.cross-tubes-apart"));
}

#[test]
fn plant_cross_tubes_apart_silent() {
    let changed = with("spacing", ("20 mm", "8.6 mm"));
    assert!(kept(&changed, "plant.cross-tubes-apart"));
}

#[test]
fn plant_cross_tube_slope_fires() {
    let changed = with("turn", ("40°", "60.1°"));
    assert!(broken(&changed, "plant.cross-tube-slope"));
}

#[test]
fn plant_cross_tube_slope_silent() {
    let changed = with("turn", ("40°", "60°"));
    assert!(kept(&changed, "plant.cross-tube-slope"));
}

#[test]
fn plant_cross_tube_bore_fires() {
    let changed = with("wall", ("0.7 mm", "0.8 mm"));
    assert!(broken(&changed, "plant.cross-tube-bore"));
}

#[test]
fn plant_cross_tube_bore_silent() {
    let changed = with("wall", ("0.7 mm", "0.75 mm"));
    assert!(kept(&changed, "plant.cross-tube-bore"));
}

#[test]
fn plant_cross_tube_ends_fires() {
    let changed = with("projection", ("1.5 mm", "10.3 mm"));
    assert!(broken(&changed, "plant.cross-tube-ends"));
}

#[test]
fn plant_cross_tube_ends_silent() {
    let changed = with("projection", ("1.5 mm", "10 mm"));
    assert!(kept(&changed, "plant.cross-tube-ends"));
}

#[test]
fn plant_cross_tube_drowned_fires() {
    let changed = with("projection", ("1.5 mm", "10.6 mm"));
    assert!(broken(&changed, "plant.cross-tube-drowned"));
}

#[test]
fn plant_cross_tube_drowned_silent() {
    let changed = with("projection", ("1.5 mm", "10.4 mm"));
    assert!(kept(&changed, "plant.cross-tube-drowned"));
}

#[test]
fn plant_bush_clear_fires() {
    let changed = with("length-in", ("3 mm", "23.6 mm"));
    assert!(broken(&changed, "plant.bush-clear"));
}

#[test]
fn plant_bush_clear_silent() {
    let changed = with("length-in", ("3 mm", "23.4 mm"));
    assert!(kept(&changed, "plant.bush-clear"));
}

#[test]
fn plant_burner_fits_fires() {
    let changed = with("length", ("60 mm", "77.1 mm"));
    assert!(broken(&changed, "plant.burner-fits"));
}

#[test]
fn plant_burner_fits_silent() {
    let changed = with("length", ("60 mm", "76.9 mm"));
    assert!(kept(&changed, "plant.burner-fits"));
}

#[test]
fn lying_water_covers_crown_fires() {
    let changed = with("lowest", ("65 mm", "64 mm"));
    assert!(broken(&changed, "plant.water-covers-crown"));
}

#[test]
fn lying_water_covers_crown_silent() {
    let changed = with("lowest", ("65 mm", "64.6 mm"));
    assert!(kept(&changed, "plant.water-covers-crown"));
}

#[test]
fn lying_water_level_fires() {
    let changed = with("working", ("68 mm", "78.1 mm"));
    assert!(broken(&changed, "plant.water-level"));
}

#[test]
fn lying_water_level_silent() {
    let changed = with("working", ("68 mm", "77.9 mm"));
    assert!(kept(&changed, "plant.water-level"));
}

#[test]
fn lying_room_fires() {
    let changed = with("length", ("230 mm", "220 mm"));
    assert!(broken(&changed, "plant.room"));
}

#[test]
fn lying_room_silent() {
    let changed = with("length", ("230 mm", "222 mm"));
    assert!(kept(&changed, "plant.room"));
}

#[test]
fn lying_ligament_fires() {
    let changed = with("radius", ("26 mm", "19.9 mm"));
    assert!(broken(&changed, "plant.ligament"));
}

#[test]
fn lying_ligament_silent() {
    let changed = with("radius", ("26 mm", "20.1 mm"));
    assert!(kept(&changed, "plant.ligament"));
}

#[test]
fn lying_hole_clear_of_bend_fires() {
    let changed = with("radius", ("26 mm", "26.6 mm"));
    assert!(broken(&changed, "plant.hole-clear-of-bend"));
}

#[test]
fn lying_hole_clear_of_bend_silent() {
    let changed = with("radius", ("26 mm", "26.4 mm"));
    assert!(kept(&changed, "plant.hole-clear-of-bend"));
}

#[test]
fn lying_flange_fires() {
    let changed = with("flange-height", ("12 mm", "6 mm"));
    assert!(broken(&changed, "plant.flange"));
}

#[test]
fn lying_flange_silent() {
    let changed = with("flange-height", ("12 mm", "6.5 mm"));
    assert!(kept(&changed, "plant.flange"));
}

/// The bush on top reaches in from 38 mm; the stay of 5 mm stands at 26 mm from the middle.
#[test]
fn plant_stay_clear_fires_at_a_bush_that_reaches_into_it() {
    let changed = with("length-in", ("3 mm", "9.6 mm"));
    assert!(broken(&changed, "plant.stay-clear"));
}

#[test]
fn plant_stay_clear_silent_beside_it() {
    let changed = with("length-in", ("3 mm", "9.4 mm"));
    assert!(kept(&changed, "plant.stay-clear"));
}

/// The upright tube stands 22 mm up from the flue, 16 mm up from the middle of the barrel; longer
/// by 7.5 mm it meets the underside of the stay at 23.5 mm.
#[test]
fn a_stay_in_the_way_of_a_cross_tube_is_told() {
    let longer = |by: &str| with("projection", ("1.5 mm", by));
    assert!(broken(&longer("9.1 mm"), "plant.stay-clear"));
    assert!(kept(&longer("8.9 mm"), "plant.stay-clear"));
}

/// Above, `plant.` rules that a vertical boiler has too begin with `lying_`.
#[test]
fn the_good_plan_breaks_no_rule() {
    let resolved = changed(&[]);
    for finding in &resolved.findings {
        assert!(
            matches!(finding.verdict, Verdict::Met | Verdict::MetOnCondition),
            "{}: {}",
            finding.rule.id,
            finding.says
        );
    }
}

#[test]
fn a_missing_lowest_level_is_unproved() {
    let resolved = changed(&[("lowest = \"65 mm\"\n", "")]);
    let mut cover = of(&resolved, "plant.water-covers-crown");
    assert!(cover.all(|f| f.verdict == Verdict::Unproved));
}

#[test]
fn a_bush_too_near_an_end_or_another_bush_is_told() {
    for change in [
        ("along = \"140 mm\"", "along = \"164 mm\""),
        ("along = \"30 mm\"", "along = \"16 mm\""),
    ] {
        assert!(
            broken(&changed(&[change]), "plant.bush-clear"),
            "{change:?}"
        );
    }
    let beside = [
        ("along = \"30 mm\"", "along = \"136 mm\""),
        ("angle = \"250°\"", "angle = \"190°\""),
    ];
    assert!(broken(&changed(&beside), "plant.bush-clear"));
}

#[test]
fn plant_room_fires_unproved_where_a_limit_was_taken_away() {
    let emptied = with("mass", ("3 kg", ""));
    let found = of(&emptied, "plant.room").find(|f| f.place == "room.mass");
    assert_eq!(found.map(|f| f.verdict), Some(Verdict::Unproved));
}
