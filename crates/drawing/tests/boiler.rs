//! The section of the boiler and the plan of its plate. All sizes are invented.

use drawing::boiler::{
    Bush, Chimney, Cylinder, FireTube, Firehole, Grate, Hand, Nozzle, TubePlate, VerticalBoiler,
    section, tube_plate,
};
use drawing::clash::clashes;
use plant::part::{Bar, Flange, Hole, Outline, Plate, Span, Stands, Turned};
use proptest::prelude::*;
use reckoning::quantity::Length;

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

fn cylinder(outside: f64, wall: f64, bottom: f64, top: f64) -> Cylinder {
    Cylinder {
        outside: mm(outside),
        wall: mm(wall),
        bottom: mm(bottom),
        top: mm(top),
    }
}

/// A length of thick tube.
fn bush(s: f64) -> Turned {
    let bar = Bar::Hollow {
        outside: mm(14.0 * s),
        bore: mm(7.0 * s),
    };
    Turned::bar(bar, Span::mm(0.0, 11.0 * s)).expect("a bush")
}

/// A boiler of this barrel diameter, invented for the test.
fn boiler(barrel: f64, tubes: i32) -> VerticalBoiler {
    let s = barrel / 150.0;
    let fire = barrel - 26.0 * s;
    let plate = |outside: f64, underside: f64, stands| TubePlate {
        outside: mm(outside),
        thickness: mm(3.0 * s),
        underside: mm(underside),
        flange: Some(Flange {
            stands,
            inside_radius: mm(5.0 * s),
            height: mm(15.0 * s),
        }),
    };
    let tube = |i: i32| FireTube {
        id: format!("tube.{}", i + tubes + 1),
        x: mm(f64::from(i) * 21.0 * s),
        outside: mm(12.0 * s),
        wall: mm(1.0 * s),
        bottom: mm(118.0 * s),
        top: mm(255.0 * s),
    };
    VerticalBoiler {
        name: "Vertical boiler, invented sizes".to_owned(),
        barrel: cylinder(barrel, 2.5 * s, 0.0, 260.0 * s),
        firebox: cylinder(fire, 3.0 * s, 0.0, 110.0 * s),
        upper_plate: plate(barrel - 5.0 * s, 250.0 * s, Stands::Up),
        lower_plate: plate(fire - 6.0 * s, 120.0 * s, Stands::Down),
        tubes: (-tubes..=tubes).map(tube).collect(),
        ring_top: mm(8.0 * s),
        firehole: Some(Firehole {
            height: mm(60.0 * s),
            opening: mm(30.0 * s),
            wall: mm(3.0 * s),
        }),
        smokebox: Some(cylinder(barrel - 10.0 * s, 1.6 * s, 262.0 * s, 310.0 * s)),
        chimney: Some(Chimney {
            choke: mm(36.0 * s),
            mouth: mm(40.0 * s),
            bottom: mm(310.0 * s),
            taper: mm(380.0 * s),
            top: mm(420.0 * s),
        }),
        nozzle: Some(Nozzle {
            bore: mm(2.2 * s),
            tip: mm(290.0 * s),
        }),
        grate: Some(Grate {
            top: mm(20.0 * s),
            thickness: Some(mm(5.0 * s)),
            diameter: mm(fire - 8.0 * s),
        }),
        water_level: Some(mm(200.0 * s)),
        bushes: vec![Bush {
            id: "bush.gauge.lower".to_owned(),
            hand: Hand::Left,
            height: mm(165.0 * s),
            hole: mm(14.0 * s),
            inward: mm(0.0),
            part: bush(s),
        }],
        typed: std::collections::BTreeMap::new(),
        notes: Vec::new(),
    }
}

fn plate() -> Plate {
    let hole = |x: f64, y: f64, diameter: f64| Hole {
        id: format!("hole.{x}.{y}"),
        x: mm(x),
        y: mm(y),
        diameter: mm(diameter),
    };
    let mut holes: Vec<Hole> = (0..12)
        .map(|i| {
            let angle = f64::from(i) * std::f64::consts::TAU / 12.0;
            hole(48.0 * angle.cos(), 48.0 * angle.sin(), 12.1)
        })
        .collect();
    holes.push(hole(0.0, 0.0, 18.0));
    Plate {
        outline: Outline::Disc {
            diameter: mm(145.0),
        },
        thickness: mm(3.0),
        flange: None,
        holes,
    }
}

#[test]
fn no_lettering_of_the_boiler_or_its_plate_is_run_into() {
    assert_eq!(clashes(&section(&boiler(150.0, 2))), []);
    let plan = tube_plate("Upper tube plate", &plate()).expect("a disc has a plan");
    assert_eq!(clashes(&plan), []);
}

#[test]
fn every_leading_dimension_of_the_boiler_is_shown_once() {
    let sheet = section(&boiler(150.0, 2));
    let mut measured: Vec<&str> = sheet.dimensions().map(|d| d.measures.as_str()).collect();
    measured.sort_unstable();
    let expected = [
        "bore of the chimney",
        "bore of the nozzle",
        "height of bush.gauge.lower",
        "height of the barrel",
        "height of the chimney",
        "height of the firebox",
        "height of the foundation ring",
        "height of the grate",
        "height of the water level",
        "opening of the firehole",
        "outside diameter of the barrel",
        "outside diameter of the firebox",
        "thickness of the lower tube plate",
        "thickness of the upper tube plate",
        "tubes",
        "wall of the barrel",
        "wall of the firebox",
    ];
    assert_eq!(measured, expected);
}

#[test]
fn the_svg_parses_and_says_what_it_shows() {
    let text = drawing::svg(&section(&boiler(150.0, 2)));
    if let Ok(folder) = std::env::var("DRAWINGS") {
        let plan = tube_plate("Upper tube plate", &plate()).expect("a disc has a plan");
        std::fs::write(format!("{folder}/boiler.svg"), &text).expect("written");
        std::fs::write(format!("{folder}/plate.svg"), drawing::svg(&plan)).expect("written");
    }
    let tree = roxmltree::Document::parse(&text).expect("well-formed");
    let title = tree.descendants().find(|n| n.has_tag_name("title"));
    assert_eq!(
        title.and_then(|n| n.text()),
        Some("Vertical boiler, invented sizes")
    );
    assert!(!text.contains("NaN") && !text.contains("inf"));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(32) })]
    #[test]
    fn no_lettering_is_run_into_at_any_size(barrel in 60.0..400.0_f64, tubes in 0..3_i32) {
        prop_assert_eq!(clashes(&section(&boiler(barrel, tubes))), []);
    }
}
