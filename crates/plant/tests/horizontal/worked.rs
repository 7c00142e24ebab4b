//! A horizontal boiler worked out from an invented plan.

use crate::plans::{GOOD, changed, plan, text};
use plant::part::Shape;
use plant::{Stretch, resolve};
use proptest::prelude::*;
use reckoning::quantity::Length;

const PI: f64 = std::f64::consts::PI;

fn close(found: f64, expected: f64, relative: f64) {
    let off = (found / expected - 1.0).abs();
    assert!(
        off <= relative,
        "{found} against {expected}: off by {off:e}"
    );
}

/// Water below several levels, mm³. Independent calculation: upright sections as polygons of
/// 16 384 corners (barrel, end with its bend, flue, rectangles of cross tubes and bushes, discs of
/// stay and bush in the end), cut by the level, integrated along the boiler.
#[test]
fn independent_water_below_levels() {
    let water = changed(&[]).plant.water.unwrap();
    for (level, expected) in [
        (78.5, 523_811.811_595),
        (68.0, 467_107.944_156),
        (65.0, 442_613.041_347),
        (56.0, 349_366.038_995),
        (50.0, 292_036.166_621),
        (34.0, 188_861.597_569),
        (20.0, 111_856.377_438),
    ] {
        let found = water.filled_to(Length::from_mm(level)).mm3();
        close(found, expected, 1e-7);
    }
    // By differences of those volumes over 2 µm; near 50 mm the corner of a tube's end breaks the
    // slope.
    let surface = |mm: f64| water.surface_at(Length::from_mm(mm)).mm2();
    close(surface(68.0), 7_915.803_187, 1e-6);
    close(surface(50.0), 7_850.487_551, 1e-5);
    close(water.water.value.mm3(), 467_107.944_156, 1e-7);
    close(
        water.steam.value.mm3(),
        523_811.811_595 - 467_107.944_156,
        1e-6,
    );
}

/// Between the wet faces of flat ends: water, steam, metal and gas fill the barrel.
#[test]
fn identity_water_steam_metal_and_gas_fill_the_barrel() {
    let flat = [
        ("flange-height = \"12 mm\"", "flange-height = \"0 mm\""),
        ("flange-height = \"12 mm\"", "flange-height = \"0 mm\""),
        ("length-in = \"3 mm\"", "length-in = \"0 mm\""),
        ("length-in = \"2 mm\"", "length-in = \"0 mm\""),
        ("length-in = \"4 mm\"", "length-in = \"0 mm\""),
        ("length-in = \"2 mm\"", "length-in = \"0 mm\""),
    ];
    let resolved = changed(&flat);
    let plant = &resolved.plant;
    let water = plant.water.as_ref().unwrap();
    let between = 180.0 - 6.0;
    let holes = |id: &str| match &plant.part(id).unwrap().shape {
        Shape::Shell(shell) => shell.holes_volume().mm3(),
        _ => panic!("{id} is a shell"),
    };
    let volume = |id: &str| plant.part(id).unwrap().shape.volume().mm3();
    // The flue reaches 4 mm beyond the wet face of each end.
    let wall = PI * (20.5 * 20.5 - 19.0 * 19.0);
    let flue = volume("flue") - 8.0 * wall;
    let tubes = 3.0 * volume("cross-tube.1");
    // The tubes displace flue gas by their outsides within the bore: independent calculation of
    // the two cylinders, by their chords.
    let within = 3.0 * 1_071.065_894_576;
    let gas = PI * 19.0 * 19.0 * between - within;
    let stay = PI * 2.5 * 2.5 * between;
    close(holes("flue"), 255.210_451_538, 1e-8);
    let filled = water.water.value.mm3() + water.steam.value.mm3();
    close(
        filled + flue + tubes + gas + stay,
        PI * 38.0 * 38.0 * between,
        1e-9,
    );
}

#[test]
fn parts_joints_and_ids() {
    let resolved = changed(&[]);
    let plant = &resolved.plant;
    for id in [
        "barrel",
        "flue",
        "end.front",
        "end.back",
        "cross-tube.1",
        "cross-tube.3",
        "stay.top",
        "bush.valve",
        "bush.gauge",
        "smokebox",
    ] {
        assert!(plant.part(id).is_some(), "{id}");
    }
    let joint = |id: &str| plant.joints.iter().find(|j| j.id == id).unwrap();
    // A flange of 12 less its bend of 3 + 3.
    close(
        joint("end.back/barrel").lap.as_ref().unwrap().value.mm(),
        6.0,
        1e-12,
    );
    close(joint("flue/end.front").path.value.mm(), PI * 41.0, 1e-12);
    // Independent calculation: the saddle by 2 000 000 chords.
    close(
        joint("cross-tube.2/flue.left").path.value.mm(),
        18.875_033_853_6,
        1e-10,
    );
    assert!(plant.joints.iter().any(|j| j.id == "bush.gauge/end.back"));
    let ids: std::collections::HashSet<&str> = plant.parts.iter().map(|p| p.id.as_str()).collect();
    assert_eq!(ids.len(), plant.parts.len());
    let joints: std::collections::HashSet<&str> =
        plant.joints.iter().map(|j| j.id.as_str()).collect();
    assert_eq!(joints.len(), plant.joints.len());
    for joint in &plant.joints {
        assert!(
            ids.contains(joint.first.as_str()) && ids.contains(joint.second.as_str()),
            "{}",
            joint.id
        );
    }
}

/// Lengths, areas and masses by hand from the sizes of the plan; areas of the cross tubes by an
/// independent integration.
#[test]
fn worked_lengths_surfaces_and_masses() {
    let resolved = changed(&[]);
    let plant = &resolved.plant;
    let lying = plant.lying.as_ref().unwrap();
    // The back flange of 12 ends flush: wet face at 180 − 12, dry face 3 behind it.
    close(lying.between_ends.value.mm(), 165.0, 1e-12);
    close(lying.flue.mouth.mm(), -1.0, 1e-12);
    close(lying.flue.length.mm(), 173.0, 1e-12);
    close(lying.flue_to_barrel.value.mm(), 38.0 - 20.5 - 6.0, 1e-12);
    close(lying.back_field.widest.value.mm(), 38.0 - 20.5 + 6.0, 1e-12);
    close(lying.back_field.least.value.mm(), 11.5, 1e-12);
    close(lying.back_field.flat.value.mm(), 64.0, 1e-12);
    let tubes = lying.cross_tubes.as_ref().unwrap();
    let slopes: Vec<f64> = tubes.tubes.iter().map(|t| t.slope.deg()).collect();
    for (found, expected) in slopes.iter().zip([50.0, 90.0, 50.0]) {
        close(*found, expected, 1e-12);
    }
    close(tubes.tubes[2].along.mm(), 119.0, 1e-12);
    close(tubes.length.mm(), 44.0, 1e-12);
    let s = &plant.surfaces;
    close(
        s.cross_tubes.as_ref().unwrap().value.mm2(),
        3.0 * 711.797_667_969,
        1e-9,
    );
    close(
        s.flue.as_ref().unwrap().value.mm2(),
        PI * 38.0 * 165.0 - 6.0 * 28.363_281_048,
        1e-10,
    );
    let gas = |stretch| plant.gas(stretch).unwrap();
    close(gas(Stretch::Mouth).area.value.mm2(), 400.0, 1e-12);
    let ring = gas(Stretch::Burner);
    close(
        ring.area.value.mm2(),
        PI / 4.0 * (38.0 * 38.0 - 144.0),
        1e-12,
    );
    close(
        ring.hydraulic_diameter.as_ref().unwrap().value.mm(),
        26.0,
        1e-12,
    );
    close(
        gas(Stretch::Flue).length.as_ref().unwrap().value.mm(),
        113.0,
        1e-12,
    );
    close(
        gas(Stretch::Crossings).area.value.mm2(),
        PI * 361.0 - 6.0 * 38.0,
        1e-12,
    );
    let outline = plant.outline.as_ref().unwrap();
    // Smokebox of 84 about the axis at 40, chimney of 130 on it, lagging of 5 below.
    close(
        outline.height.as_ref().unwrap().value.mm(),
        40.0 + 42.0 + 130.0 + 5.0,
        1e-12,
    );
    close(outline.width.value.mm(), 90.0, 1e-12);
    close(
        outline.length.as_ref().unwrap().value.mm(),
        1.0 + 180.0 + 40.0,
        1e-12,
    );
    let tube = plant.masses.iter().find(|(id, _)| id == "cross-tube.1");
    // In copper of 8.94 g/cm³.
    close(
        tube.unwrap().1.value.g(),
        PI * 5.3 * 0.7 * 44.0 * 8.94e-3,
        1e-12,
    );
    assert!(plant.masses.iter().all(|(_, mass)| mass.value.g() > 0.0));
}

#[test]
fn a_plain_flue_has_no_tubes_and_all_its_surface() {
    let resolved = changed(&[("count = 3", "count = 0")]);
    let plant = &resolved.plant;
    assert!(plant.part("cross-tube.1").is_none());
    assert!(plant.gas(Stretch::Crossings).is_none());
    let flue = plant.surfaces.flue.as_ref().unwrap().value.mm2();
    close(flue, PI * 38.0 * 165.0, 1e-12);
    assert!(plant.water.is_some());
}

#[test]
fn a_plan_with_gaps_gives_what_it_can() {
    let resolved = changed(&[
        ("turn = \"40°\"\n", ""),
        ("area = \"400 mm2\"", "area = \"\""),
    ]);
    let plant = &resolved.plant;
    assert!(plant.part("flue").is_some() && plant.part("end.back").is_some());
    assert!(plant.water.is_none() && plant.surfaces.flue.is_none());
    for field in ["boiler.cross-tubes.turn", "burner.mouth.area"] {
        assert!(
            resolved.gaps.iter().any(|gap| gap.field == field),
            "{field}"
        );
    }
    // One tube needs neither turn nor spacing.
    let one = changed(&[
        ("count = 3", "count = 1"),
        ("turn = \"40°\"\n", ""),
        ("spacing = \"20 mm\"\n", ""),
    ]);
    assert!(
        one.plant.water.is_some() && one.gaps.is_empty(),
        "{:?}",
        one.gaps
    );
}

#[test]
fn what_belongs_to_another_form_is_named_as_a_gap() {
    let resolved = changed(&[
        ("on = \"back end\"", "on = \"upper tube plate\""),
        ("run = \"plate to plate\"", "run = \"firebox to barrel\""),
    ]);
    for field in ["boiler.bush.gauge.on", "boiler.stay.top.run"] {
        assert!(
            resolved.gaps.iter().any(|gap| gap.field == field),
            "{field}"
        );
    }
    assert!(resolved.plant.part("bush.gauge").is_none());
    assert!(resolved.plant.part("stay.top").is_none());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// More water needs a higher level; what is filled never exceeds the room, and the surface is
    /// the slope of the volume.
    #[test]
    fn water_rises_with_its_level(a in 0.0..85.0_f64, b in 0.0..85.0_f64) {
        let water = changed(&[]).plant.water.unwrap();
        let (low, high) = (a.min(b), a.max(b));
        let at = |z: f64| water.filled_to(Length::from_mm(z)).mm3();
        prop_assert!(at(low) <= at(high) * (1.0 + 1e-9) + 1e-6);
        let all = water.water.value.mm3() + water.steam.value.mm3();
        prop_assert!(at(high) <= all * (1.0 + 1e-9));
        prop_assert!(at(low) >= -1e-6);
    }

    /// A boiler turned over its middle plane, left for right, holds the same water.
    #[test]
    fn identity_left_and_right_are_alike(incline in 1.0..89.0_f64, level in 10.0..75.0_f64) {
        let filled = |incline: f64, turn: f64, feed: f64| {
            let resolved = changed(&[
                ("count = 3", "count = 2"),
                ("incline = \"50°\"", &format!("incline = \"{incline}°\"")),
                ("turn = \"40°\"", &format!("turn = \"{turn}°\"")),
                ("angle = \"250°\"", &format!("angle = \"{feed}°\"")),
                ("working = \"68 mm\"", &format!("working = \"{level} mm\"")),
            ]);
            resolved.plant.water.unwrap().water.value.mm3()
        };
        let (right, left) = (filled(incline, 90.0, 250.0), filled(90.0 - incline, 90.0, 110.0));
        // The second pair is the first seen from behind: 180° − (incline + 90°) = 90° − incline.
        prop_assert!((right / left - 1.0).abs() < 1e-9, "{right} {left}");
    }
}

/// A size anywhere within what the file allows, or so.
fn any_size() -> impl Strategy<Value = String> {
    (0.3..120.0_f64).prop_map(|mm| format!("{mm:.2} mm"))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// A bad plan is a finding: nothing panics, and nothing is no number.
    #[test]
    fn whatever_the_sizes_the_plan_is_worked_out(
        sizes in prop::collection::vec(any_size(), 9),
    ) {
        let fields = [
            "outside = \"80 mm\"",
            "length = \"180 mm\"",
            "outside = \"41 mm\"",
            "below = \"6 mm\"",
            "thickness = \"3 mm\"",
            "inside-radius = \"3 mm\"",
            "outside = \"6 mm\"",
            "first = \"80 mm\"",
            "diameter = \"5 mm\"",
        ];
        let mut changed = text(&[]);
        for (field, size) in fields.iter().zip(&sizes) {
            let key = field.split('=').next().unwrap();
            changed = changed.replacen(field, &format!("{key}= \"{size}\""), 1);
        }
        // A size that the file does not allow is refused in reading and counts as missing.
        let resolved = resolve(&plan::read(&changed, "plan.toml").content);
        for part in &resolved.plant.parts {
            let volume = part.shape.volume().mm3();
            prop_assert!(volume.is_finite(), "{}: {volume}", part.id);
        }
        if let Some(water) = &resolved.plant.water {
            prop_assert!(water.water.value.mm3().is_finite());
            prop_assert!(water.surface.value.mm2().is_finite());
        }
    }
}

#[test]
fn the_good_plan_has_no_gap() {
    let resolved = resolve(&plan(GOOD));
    assert!(resolved.gaps.is_empty(), "{:?}", resolved.gaps);
}

/// A cross tube cut off flush with the crown of the flue has no length on its middle plane, which
/// once halved the integral of its volume for ever.
#[test]
fn water_round_cross_tubes_that_end_flush_is_found() {
    let water = |projection: &str| {
        let to = format!(
            "projection = \"{projection}\"\njoint = \"seen both sides\"\n\n[[boiler.stay]]"
        );
        let from = "projection = \"1.5 mm\"\njoint = \"seen both sides\"\n\n[[boiler.stay]]";
        let plant = changed(&[(from, &to)]).plant;
        plant.water.expect("water").water.value.mm3()
    };
    close(water("0 mm"), water("0.0001 mm"), 1e-6);
}
