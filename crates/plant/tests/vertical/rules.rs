//! Each rule of the geometry fires on a plan made to break it and is silent on its neighbour.

use plant::RULES;
use reckoning::Verdict;

use crate::plans::{broken, changed, of};

#[test]
fn plant_shape_fires() {
    assert!(broken(
        &changed(&[(
            "length-out = \"6 mm\"\nlength-in = \"3 mm\"\nmetal",
            "length-out = \"6 mm\"\nlength-in = \"3 mm\"\nbore = \"14 mm\"\nmetal",
        )]),
        "plant.shape"
    ));
}

#[test]
fn plant_shape_silent() {
    assert!(!broken(
        &changed(&[(
            "length-out = \"6 mm\"\nlength-in = \"3 mm\"\nmetal",
            "length-out = \"6 mm\"\nlength-in = \"3 mm\"\nbore = \"8 mm\"\nmetal",
        )]),
        "plant.shape"
    ));
}

#[test]
fn plant_stands_fires() {
    assert!(broken(
        &changed(&[("length = \"220 mm\"", "length = \"95 mm\"")]),
        "plant.stands"
    ));
}

#[test]
fn plant_stands_silent() {
    assert!(!broken(
        &changed(&[("length = \"220 mm\"", "length = \"150 mm\"")]),
        "plant.stands"
    ));
}

#[test]
fn plant_flange_fires() {
    assert!(broken(
        &changed(&[("flange-height = \"14 mm\"", "flange-height = \"6 mm\"")]),
        "plant.flange"
    ));
}

#[test]
fn plant_flange_silent() {
    assert!(!broken(
        &changed(&[("flange-height = \"14 mm\"", "flange-height = \"7 mm\"")]),
        "plant.flange"
    ));
}

#[test]
fn plant_tubes_fit_fires() {
    assert!(broken(
        &changed(&[("count = 12", "count = 25")]),
        "plant.tubes-fit"
    ));
}

#[test]
fn plant_tubes_fit_silent() {
    assert!(!broken(
        &changed(&[("count = 12", "count = 13")]),
        "plant.tubes-fit"
    ));
}

#[test]
fn plant_ligament_fires() {
    assert!(broken(
        &changed(&[("pitch = \"13.5 mm\"", "pitch = \"12.9 mm\"")]),
        "plant.ligament"
    ));
}

#[test]
fn plant_ligament_silent() {
    assert!(!broken(
        &changed(&[("pitch = \"13.5 mm\"", "pitch = \"13.1 mm\"")]),
        "plant.ligament"
    ));
}

#[test]
fn plant_hole_clear_of_bend_fires() {
    assert!(broken(
        &changed(&[("radius = \"35.4 mm\"", "radius = \"35.6 mm\"")]),
        "plant.hole-clear-of-bend"
    ));
}

#[test]
fn plant_hole_clear_of_bend_silent() {
    assert!(!broken(
        &changed(&[("radius = \"35.4 mm\"", "radius = \"35.5 mm\"")]),
        "plant.hole-clear-of-bend"
    ));
}

#[test]
fn plant_tube_touches_fires() {
    assert!(broken(
        &changed(&[("radius = \"35.4 mm\"", "radius = \"30 mm\"")]),
        "plant.tube-touches"
    ));
}

#[test]
fn plant_tube_touches_silent() {
    assert!(!broken(
        &changed(&[("radius = \"35.4 mm\"", "radius = \"34 mm\"")]),
        "plant.tube-touches"
    ));
}

#[test]
fn plant_water_leg_fires() {
    assert!(broken(
        &changed(&[("outside = \"84 mm\"", "outside = \"93.2 mm\"")]),
        "plant.water-leg"
    ));
}

#[test]
fn plant_water_leg_silent() {
    assert!(!broken(
        &changed(&[("outside = \"84 mm\"", "outside = \"92.8 mm\"")]),
        "plant.water-leg"
    ));
}

#[test]
fn plant_water_covers_crown_fires() {
    assert!(broken(
        &changed(&[("lowest = \"110 mm\"", "lowest = \"92 mm\"")]),
        "plant.water-covers-crown"
    ));
}

#[test]
fn plant_water_covers_crown_silent() {
    assert!(!broken(
        &changed(&[("lowest = \"110 mm\"", "lowest = \"94 mm\"")]),
        "plant.water-covers-crown"
    ));
}

#[test]
fn plant_water_level_fires() {
    assert!(broken(
        &changed(&[("working = \"140 mm\"", "working = \"205 mm\"")]),
        "plant.water-level"
    ));
}

#[test]
fn plant_water_level_silent() {
    assert!(!broken(
        &changed(&[("working = \"140 mm\"", "working = \"190 mm\"")]),
        "plant.water-level"
    ));
}

#[test]
fn plant_room_fires() {
    assert!(broken(
        &changed(&[("height = \"500 mm\"", "height = \"378 mm\"")]),
        "plant.room"
    ));
}

#[test]
fn plant_room_silent() {
    assert!(!broken(
        &changed(&[("height = \"500 mm\"", "height = \"380 mm\"")]),
        "plant.room"
    ));
}

#[test]
fn the_good_plan_breaks_no_rule_and_meets_every_other_one() {
    let good = changed(&[]);
    for finding in &good.findings {
        assert!(RULES.iter().any(|rule| rule.id == finding.rule.id));
        assert_ne!(finding.verdict, Verdict::NotMet, "{}", finding.says);
    }
    let applied = |id: &str| good.findings.iter().any(|f| f.rule.id == id);
    let silent: Vec<&str> = RULES
        .iter()
        .map(|r| r.id)
        .filter(|id| !applied(id))
        .collect();
    // A shape is spoken of only where there is none; the others belong to a horizontal boiler.
    let lying = [
        "plant.ends-stand",
        "plant.flue-clear",
        "plant.cross-tube-passes",
        "plant.cross-tubes-apart",
        "plant.cross-tube-slope",
        "plant.cross-tube-bore",
        "plant.cross-tube-ends",
        "plant.cross-tube-drowned",
        "plant.bush-clear",
        "plant.stay-clear",
        "plant.burner-fits",
    ];
    assert_eq!(silent[0], "plant.shape");
    assert_eq!(silent[1..], lying);
}

#[test]
fn the_width_and_the_mass_of_the_room_count_too() {
    assert!(broken(
        &changed(&[("width = \"140 mm\"", "width = \"119 mm\"")]),
        "plant.room"
    ));
    assert!(broken(
        &changed(&[("mass = \"9 kg\"", "mass = \"2.9 kg\"")]),
        "plant.room"
    ));
    // What grate, chimney and lagging weigh is not known, so the rest is to be weighed.
    let good = changed(&[]);
    let mass = of(&good, "plant.room")
        .find(|f| f.place == "room.mass")
        .unwrap();
    assert_eq!(mass.verdict, Verdict::MetOnCondition);
    assert_eq!(mass.conditions.len(), 1);
}

#[test]
fn a_bush_that_reaches_into_the_tubes_touches() {
    // Tubes stand out to 25.5 mm from the axis, the bore of the barrel is 51.5 mm in radius.
    let reach = |mm: &str| {
        changed(&[(
            "bore = \"5 mm\"\noutside = \"12 mm\"\nlength-out = \"6 mm\"\nlength-in = \"3 mm\"",
            &format!("outside = \"12 mm\"\nlength-out = \"6 mm\"\nlength-in = \"{mm}\""),
        )])
    };
    assert!(broken(&reach("40 mm"), "plant.tube-touches"));
    assert!(!broken(&reach("10 mm"), "plant.tube-touches"));
}

#[test]
fn a_missing_lowest_level_is_unproved_and_a_chosen_size_is_met_on_condition() {
    let without = changed(&[("lowest = \"110 mm\"\n", "")]);
    let cover = of(&without, "plant.water-covers-crown").next().unwrap();
    assert_eq!(cover.verdict, Verdict::Unproved);
    let unsaid = changed(&[("set-in = \"0 mm\"\n\n[boiler.tubes]", "\n[boiler.tubes]")]);
    let cover = of(&unsaid, "plant.water-covers-crown").next().unwrap();
    assert_eq!(cover.verdict, Verdict::MetOnCondition);
    assert_eq!(cover.conditions.len(), 1);
}

#[test]
fn a_shell_without_a_bore_has_no_shape() {
    let solid = changed(&[
        ("wall = \"2.5 mm\"", "wall = \"25 mm\""),
        ("outside = \"108 mm\"", "outside = \"40 mm\""),
    ]);
    assert!(of(&solid, "plant.shape").any(|f| f.place == "barrel"));
}
