//! A vertical boiler worked out from an invented plan.

use crate::plans::{GOOD, changed, plan};
use plant::part::Shape;
use plant::{Stretch, resolve};
use proptest::prelude::*;
use reckoning::Origin;
use reckoning::quantity::Length;

fn close(found: f64, expected: f64, relative: f64) {
    let off = (found / expected - 1.0).abs();
    assert!(
        off <= relative,
        "{found} against {expected}: off by {off:e}"
    );
}

/// Water and steam of the plan, mm³. Independent calculation: sections of barrel, firebox, crown
/// with its bend, tubes, and bush in the plate integrated over the height; firehole, stay and the
/// end of the bush in the barrel by their chords.
#[test]
fn independent_water_and_steam() {
    let resolved = changed(&[]);
    let water = resolved.plant.water.unwrap();
    close(water.water.value.mm3(), 628_716.476_330_202, 1e-9);
    close(water.steam.value.mm3(), 474_650.170_559_201, 1e-9);
    close(
        water.reserve.unwrap().value.mm3(),
        221_694.339_582_198,
        1e-9,
    );
    close(
        water.surface.value.mm2(),
        std::f64::consts::PI * (51.5 * 51.5 - 12.0 * 25.0),
        1e-12,
    );
}

/// Inside the bore of the barrel, from the ring to the wet face of a flat upper plate: water,
/// steam, metal and the gas of firebox and tubes fill it.
#[test]
fn identity_water_steam_metal_and_gas_fill_the_barrel() {
    let flat = [
        ("flange-height = \"14 mm\"", "flange-height = \"0 mm\""),
        ("flange-height = \"14 mm\"", "flange-height = \"0 mm\""),
        ("set-in = \"11 mm\"", "set-in = \"0 mm\""),
        (
            "set-in = \"0 mm\"\n\n[boiler.tubes]",
            "set-in = \"3 mm\"\n\n[boiler.tubes]",
        ),
        ("length-in = \"3 mm\"", "length-in = \"0 mm\""),
        ("length-in = \"3 mm\"", "length-in = \"0 mm\""),
    ];
    let resolved = changed(&flat);
    let plant = &resolved.plant;
    let water = plant.water.as_ref().unwrap();
    let pi = std::f64::consts::PI;
    let (bottom, crown, upper) = (8.0, 77.0, 215.0);
    let gross = pi * 51.5 * 51.5 * (upper - bottom);
    let volume = |id: &str| plant.part(id).unwrap().shape.volume().mm3();
    // The firebox tube loses what stands in the ring; its holes are filled by firehole and stay.
    let holes = match &plant.part("firebox").unwrap().shape {
        Shape::Shell(shell) => shell.holes_volume().mm3(),
        _ => panic!("the firebox is a shell"),
    };
    let firebox = volume("firebox") + holes - pi * (42.0 * 42.0 - 40.0 * 40.0) * bottom;
    let gas_in_box = pi * 40.0 * 40.0 * (crown - bottom);
    // The lower plate lies in the tube, pierced by the tubes, which fill its holes.
    let plate = volume("tube-plate.lower") + 12.0 * pi * 25.0 * 3.0;
    let tubes = 12.0 * pi * 25.0 * (upper - 80.0);
    // What crosses the leg, by its chords. Independent calculation.
    let leg = 5_214.023_646_454_402;
    let filled = water.water.value.mm3() + water.steam.value.mm3();
    close(
        filled + firebox + gas_in_box + plate + tubes + leg,
        gross,
        1e-9,
    );
}

#[test]
fn parts_joints_and_ids() {
    let resolved = changed(&[]);
    let plant = &resolved.plant;
    for id in [
        "barrel",
        "firebox",
        "foundation-ring",
        "tube-plate.upper",
        "tube-plate.lower",
        "tube.1",
        "tube.12",
        "firehole",
        "stay.leg",
        "bush.valve",
        "bush.steam",
        "smokebox",
        "dryer",
    ] {
        assert!(plant.part(id).is_some(), "{id}");
    }
    let tubes = plant
        .joints
        .iter()
        .filter(|j| j.first.starts_with("tube."))
        .count();
    assert_eq!(tubes, 24);
    let rim = plant
        .joints
        .iter()
        .find(|j| j.id == "tube-plate.upper/barrel")
        .unwrap();
    // A flange of 14 less its bend of 3 + 3.
    close(rim.lap.as_ref().unwrap().value.mm(), 8.0, 1e-12);
    close(rim.path.value.mm(), std::f64::consts::PI * 103.0, 1e-12);
    let ids: std::collections::HashSet<&str> = plant.parts.iter().map(|p| p.id.as_str()).collect();
    assert_eq!(ids.len(), plant.parts.len());
    for joint in &plant.joints {
        assert!(
            ids.contains(joint.first.as_str()) && ids.contains(joint.second.as_str()),
            "{}",
            joint.id
        );
    }
}

/// Lengths, areas and masses by hand from the sizes of the plan.
#[test]
fn worked_lengths_surfaces_and_masses() {
    let resolved = changed(&[]);
    let plant = &resolved.plant;
    let nest = plant.nest.as_ref().unwrap();
    let pi = std::f64::consts::PI;
    // Crown 80 to 83, upper plate from 218 − 11 − 3 = 204 to 207; 1 mm beyond each dry face.
    close(
        nest.between_plates.as_ref().unwrap().value.mm(),
        121.0,
        1e-12,
    );
    close(nest.length.as_ref().unwrap().value.mm(), 129.0, 1e-12);
    close(
        plant.firebox_length.as_ref().unwrap().value.mm(),
        72.0,
        1e-12,
    );
    let s = &plant.surfaces;
    close(
        s.tubes_inside.as_ref().unwrap().value.mm2(),
        12.0 * pi * 8.4 * 121.0,
        1e-12,
    );
    close(
        s.crown.as_ref().unwrap().value.mm2(),
        pi * 1600.0 - 12.0 * pi / 4.0 * 8.4 * 8.4,
        1e-12,
    );
    let side = pi * 80.0 * (80.0 - 12.0) - pi / 4.0 * 26.0 * 26.0;
    close(s.firebox_side.as_ref().unwrap().value.mm2(), side, 1e-12);
    let gas = |stretch| plant.gas(stretch).unwrap();
    close(
        gas(Stretch::Tubes).area.value.mm2(),
        12.0 * pi / 4.0 * 8.4 * 8.4,
        1e-12,
    );
    close(
        gas(Stretch::Coil).area.value.mm2(),
        pi * 53.0 * 53.0 - pi * 60.0 * 5.0,
        1e-12,
    );
    close(
        gas(Stretch::Chimney).length.as_ref().unwrap().value.mm(),
        40.0,
        1e-12,
    );
    // Highest smoke: 207 + 50 + 120, from 2 mm below the ring.
    let outline = plant.outline.as_ref().unwrap();
    close(outline.height.as_ref().unwrap().value.mm(), 379.0, 1e-12);
    close(outline.width.value.mm(), 120.0, 1e-12);
    // A tube of 10 × 0.8, 129 long, in copper of 8.94 g/cm³.
    let tube = plant.masses.iter().find(|(id, _)| id == "tube.1").unwrap();
    close(tube.1.value.g(), pi * 9.2 * 0.8 * 129.0 * 8.94e-3, 1e-12);
    assert_eq!(tube.1.given.origin(), Origin::FromMemory);
    assert!(plant.masses.iter().all(|(_, mass)| mass.value.g() > 0.0));
}

#[test]
fn a_plan_with_gaps_gives_what_it_can() {
    let resolved = changed(&[("length = \"220 mm\"\n", "")]);
    assert!(resolved.plant.part("firebox").is_some());
    assert!(resolved.plant.part("barrel").is_none());
    assert!(resolved.plant.water.is_none());
    assert!(
        resolved
            .gaps
            .iter()
            .any(|gap| gap.field == "boiler.barrel.length")
    );
    let empty = resolve(&plan("format = 1\n"));
    assert!(empty.plant.parts.is_empty());
    assert!(empty.gaps.iter().any(|gap| gap.field == "form"));
}

#[test]
fn tubes_are_counted_where_the_plan_does_not_say() {
    let resolved = changed(&[("count = 12\n", "")]);
    let nest = resolved.plant.nest.unwrap();
    assert_eq!(nest.count.value as usize, nest.fit);
    assert_eq!(nest.tubes.len(), nest.fit);
    // As many of the same fit again, more of a thinner tube, fewer of a thicker one.
    let fit = |by: f64| nest.fit_of(nest.outside.value * by).unwrap();
    assert_eq!(fit(1.0), nest.fit);
    assert!(fit(0.7) > nest.fit && fit(1.5) < nest.fit);
    assert!(matches!(nest.count.given, reckoning::Given::Chosen { .. }));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// More water needs a higher level; what is filled never exceeds the room.
    #[test]
    fn water_rises_with_its_level(a in 0.0..220.0_f64, b in 0.0..220.0_f64) {
        let resolved = changed(&[]);
        let water = resolved.plant.water.unwrap();
        let (low, high) = (a.min(b), a.max(b));
        let at = |z: f64| water.filled_to(Length::from_mm(z)).mm3();
        prop_assert!(at(low) <= at(high) * (1.0 + 1e-9) + 1e-6);
        let all = water.water.value.mm3() + water.steam.value.mm3();
        prop_assert!(at(high) <= all * (1.0 + 1e-9));
        prop_assert!(at(low) >= 0.0);
    }

    /// Every part has metal, whatever the sizes.
    #[test]
    fn masses_are_positive(wall in 0.5..4.0_f64, tube in 0.4..2.0_f64, length in 180.0..400.0_f64) {
        let resolved = changed(&[
            ("wall = \"2.5 mm\"", &format!("wall = \"{wall} mm\"")),
            ("wall = \"0.8 mm\"", &format!("wall = \"{tube} mm\"")),
            ("length = \"220 mm\"", &format!("length = \"{length} mm\"")),
        ]);
        for (id, mass) in &resolved.plant.masses {
            prop_assert!(mass.value.g() > 0.0, "{}", id);
        }
        prop_assert!(resolved.plant.water.is_some());
    }
}

/// A size anywhere within what the file allows, or so.
fn any_size() -> impl Strategy<Value = String> {
    (0.3..120.0_f64).prop_map(|mm| format!("{mm:.2} mm"))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// A bad plan is a finding: nothing panics, and no part has less than no metal.
    #[test]
    fn whatever_the_sizes_the_plan_is_worked_out(
        sizes in prop::collection::vec(any_size(), 8),
    ) {
        let fields = [
            "outside = \"108 mm\"",
            "wall = \"2 mm\"",
            "height = \"80 mm\"",
            "bore = \"22 mm\"",
            "thickness = \"3 mm\"",
            "inside-radius = \"3 mm\"",
            "outside = \"10 mm\"",
            "diameter = \"4 mm\"",
        ];
        let mut text = GOOD.to_owned();
        for (field, size) in fields.iter().zip(&sizes) {
            let key = field.split('=').next().unwrap();
            text = text.replacen(field, &format!("{key}= \"{size}\""), 1);
        }
        // A size that the file does not allow is refused in reading and counts as missing.
        let resolved = resolve(&plan::read(&text, "plan.toml").content);
        for part in &resolved.plant.parts {
            let volume = part.shape.volume().mm3();
            prop_assert!(volume.is_finite(), "{}: {volume}", part.id);
        }
        if let Some(water) = &resolved.plant.water {
            prop_assert!(water.water.value.mm3().is_finite());
        }
    }
}
