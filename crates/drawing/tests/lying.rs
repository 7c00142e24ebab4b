//! The sections of a horizontal boiler and the view of its end. All sizes are invented.

use drawing::Sheet;
use drawing::boiler::TubePlate;
use drawing::clash::clashes;
use drawing::lying::{
    Bush, Chimney, CrossTube, CrossTubes, LyingBoiler, Over, Pipe, Poker, across, along, end,
    of_plant,
};
use plant::part::{Bar, Flange, Shape, Span, Stands, Turned};
use proptest::prelude::*;
use reckoning::quantity::{Angle, Length};

const FERRY: &str = include_str!("../../../examples/gas-ferry/plan.toml");

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

/// A length of thick tube.
fn part(s: f64) -> Turned {
    let bar = Bar::Hollow {
        outside: mm(14.0 * s),
        bore: mm(7.0 * s),
    };
    Turned::bar(bar, Span::mm(0.0, 11.0 * s)).expect("a bush")
}

fn bush(id: &str, s: f64, (along, angle, over): (f64, f64, Over)) -> Bush {
    Bush {
        id: format!("bush.{id}"),
        along: mm(along * s),
        angle: Angle::from_deg(angle),
        over,
        hole: mm(14.0 * s),
        inward: mm(2.0 * s),
        part: part(s),
    }
}

fn tubes(count: u32, turn: f64, s: f64) -> Option<CrossTubes> {
    let tube = |i: u32| CrossTube {
        id: format!("cross-tube.{}", i + 1),
        along: mm((90.0 + 15.0 * f64::from(i)) * s),
        angle: Angle::from_deg(40.0 + turn * f64::from(i)),
    };
    (count > 0).then(|| CrossTubes {
        tubes: (0..count).map(tube).collect(),
        outside: mm(7.0 * s),
        wall: mm(0.8 * s),
        length: mm(49.0 * s),
    })
}

/// A boiler of this barrel diameter, invented for the test.
fn boiler(barrel: f64, count: u32, turn: f64) -> LyingBoiler {
    let s = barrel / 100.0;
    let end = |underside: f64, stands| TubePlate {
        outside: mm(96.0 * s),
        thickness: mm(3.0 * s),
        underside: mm(underside * s),
        flange: Some(Flange {
            stands,
            inside_radius: mm(4.0 * s),
            height: mm(13.0 * s),
        }),
    };
    let pipe = |outside: f64, wall: f64, (from, to): (f64, f64), axis: f64| Pipe {
        outside: mm(outside * s),
        wall: mm(wall * s),
        from: mm(from * s),
        to: mm(to * s),
        axis: mm(axis * s),
    };
    LyingBoiler {
        name: "Horizontal boiler, invented sizes".to_owned(),
        barrel: pipe(100.0, 2.0, (0.0, 230.0), 50.0),
        flue: pipe(46.0, 2.0, (-2.0, 222.0), 41.0),
        front: end(0.0, Stands::Up),
        back: end(217.0, Stands::Up),
        tubes: tubes(count, turn, s),
        bushes: vec![
            bush("valve", s, (60.0, 0.0, Over::Top)),
            bush("steam", s, (110.0, 0.0, Over::Top)),
            bush("feed", s, (160.0, 250.0, Over::Bottom)),
            bush("drain", s, (40.0, 180.0, Over::Bottom)),
        ],
        smokebox: Some(pipe(100.0, 1.0, (230.0, 275.0), 50.0)),
        chimney: Some(Chimney {
            along: mm(252.0 * s),
            choke: mm(36.0 * s),
            mouth: mm(40.0 * s),
            bottom: mm(100.0 * s),
            taper: mm(180.0 * s),
            top: mm(240.0 * s),
        }),
        poker: Some(Poker {
            outside: mm(12.0 * s),
            length: mm(60.0 * s),
        }),
        water_level: Some(mm(78.0 * s)),
        lowest: Some(mm(72.0 * s)),
        typed: std::collections::BTreeMap::new(),
        notes: Vec::new(),
    }
}

fn sections(boiler: &LyingBoiler) -> [Sheet; 2] {
    [along(boiler), across(boiler)]
}

/// The sheets of the example plan.
fn ferry() -> Vec<Sheet> {
    let plan = plan::read(FERRY, "plan.toml").content;
    let resolved = plant::resolve(&plan);
    let boiler = of_plant(&plan, &resolved).expect("a vessel");
    let parts = resolved.plant.parts.iter();
    let ends = parts.filter_map(|part| match &part.shape {
        Shape::Plate(plate) => end(&part.name, plate),
        _ => None,
    });
    sections(&boiler).into_iter().chain(ends).collect()
}

fn says<'a>(sheet: &'a Sheet, measures: &str) -> &'a str {
    let found = sheet.dimensions().find(|d| d.measures == measures);
    found.map_or("", |d| d.text.says.as_str())
}

#[test]
fn no_lettering_of_the_sections_is_run_into() {
    for sheet in sections(&boiler(100.0, 5, 90.0)).iter().chain(&ferry()) {
        assert_eq!(clashes(sheet), [], "{}", sheet.says);
    }
}

#[test]
fn every_leading_dimension_is_shown_once() {
    let [along, across] = sections(&boiler(100.0, 5, 90.0));
    let measured = |sheet: &Sheet| {
        let mut names: Vec<String> = sheet.dimensions().map(|d| d.measures.clone()).collect();
        names.sort_unstable();
        names
    };
    assert_eq!(
        measured(&along),
        [
            "bore of the chimney",
            "burner",
            "cross tubes",
            "flue",
            "height of the chimney",
            "height of the lowest water",
            "height of the water level",
            "length of the barrel",
            "length over the smokebox",
            "outside diameter of the barrel",
            "place of bush.drain",
            "place of bush.feed",
            "place of bush.steam",
            "place of bush.valve",
            "place of the cross tubes",
            "thickness of the back end",
            "thickness of the front end",
            "wall of the barrel",
        ]
    );
    assert_eq!(
        measured(&across),
        [
            "angle of bush.drain",
            "angle of bush.feed",
            "angle of bush.valve",
            "cross tubes",
            "flue",
            "height of the lowest water",
            "height of the water level",
            "outside diameter of the barrel",
            "wall of the barrel",
        ]
    );
}

/// As a reader of the example plan expects to find it.
#[test]
fn sizes_of_the_ferry_stand_as_typed() {
    let sheets = ferry();
    let (along, across, front) = (&sheets[0], &sheets[1], &sheets[2]);
    assert_eq!(says(along, "outside diameter of the barrel"), "Ø88.9");
    assert_eq!(says(along, "length of the barrel"), "226");
    assert_eq!(says(along, "height of the water level"), "74");
    assert_eq!(
        says(along, "flue"),
        "flue Ø42 × 2 ±0.2 wall, 9 below the middle"
    );
    assert_eq!(
        says(along, "place of the cross tubes"),
        "first 120 from the mouth, then every 14.5"
    );
    // Half the barrel and half the smokebox are alike; the chimney stands on it.
    assert_eq!(says(along, "height of the chimney"), "238.9");
    assert_eq!(
        says(across, "angle of bush.valve"),
        "bush.valve, bush.steam at 0°"
    );
    assert_eq!(
        says(front, "flue below the middle"),
        "hole of the flue, 9 below the middle"
    );
}

/// Every part that the sections show bears its id in the plant.
#[test]
fn parts_bear_the_ids_of_the_plant() {
    let plan = plan::read(FERRY, "plan.toml").content;
    let plant = plant::resolve(&plan).plant;
    let without_part = ["water", "burner", "chimney"];
    for item in ferry().iter().take(2).flat_map(|sheet| &sheet.items) {
        if let Some(id) = &item.part {
            let known = plant.part(id).is_some() || without_part.contains(&id.as_str());
            assert!(known, "{id}");
        }
    }
}

#[test]
fn a_plan_without_sizes_names_the_fields_wanted() {
    let text = FERRY.replace("below = \"9 mm\"\n", "");
    let plan = plan::read(&text, "plan.toml").content;
    let lacks = of_plant(&plan, &plant::resolve(&plan)).expect_err("no vessel");
    assert_eq!(lacks.wanted, ["boiler.flue.below"]);
}

#[test]
fn a_plain_flue_and_a_vessel_that_does_not_fit_are_drawn() {
    let plain = boiler(100.0, 0, 0.0);
    let mut wide = boiler(100.0, 3, 40.0);
    wide.flue.outside = mm(120.0);
    for sheet in sections(&plain).iter().chain(&sections(&wide)) {
        let text = drawing::svg(sheet);
        assert!(roxmltree::Document::parse(&text).is_ok());
        assert!(!text.contains("NaN") && !text.contains("inf"));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(32) })]
    #[test]
    fn no_lettering_is_run_into_at_any_size(
        barrel in 50.0..300.0_f64,
        count in 0..7_u32,
        turn in 0.0..180.0_f64,
    ) {
        for sheet in sections(&boiler(barrel, count, turn)) {
            prop_assert_eq!(clashes(&sheet), []);
        }
    }
}
