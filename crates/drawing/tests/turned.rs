//! Sections of turned parts. All sizes are invented.

use drawing::clash::clashes;
use drawing::turned::section;
use plant::part::{
    Bar, CrossDepth, CrossHole, End, Feature, Finish, Flats, Form, Point, Span, Surface, Thread,
    Turned,
};
use proptest::prelude::*;
use reckoning::quantity::{Angle, Length};

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

fn outside(id: &str, from: f64, to: f64, diameter: f64) -> Feature {
    let span = Span::mm(from, to);
    Feature::new(id, Form::cylinder(Surface::Outside, span, mm(diameter)))
}

fn cone(id: &str, surface: Surface, span: (f64, f64), ends: (f64, f64)) -> Feature {
    Feature::new(
        id,
        Form::Turned {
            surface,
            span: Span::mm(span.0, span.1),
            from: mm(ends.0),
            to: mm(ends.1),
        },
    )
}

fn drilled(id: &str, diameter: f64, depth: f64) -> Feature {
    Feature::new(
        id,
        Form::Drilled {
            from: End::Low,
            mouth: mm(0.0),
            diameter: mm(diameter),
            depth: mm(depth),
            point: Point::drill(),
        },
    )
}

fn thread(id: &str, surface: Surface, span: (f64, f64), (major, core): (f64, f64)) -> Feature {
    Feature::new(
        id,
        Form::Threaded {
            surface,
            span: Span::mm(span.0, span.1),
            thread: Thread {
                designation: format!("M{major} x 1"),
                major: mm(major),
                core: mm(core),
                pitch: mm(1.0),
            },
        },
    )
}

/// A flanged bush tapped from its low end, with a shoulder and chamfers.
fn bush(size: f64, flange: f64, length: f64) -> Turned {
    let hole = size * 0.5;
    let features = [
        outside("spigot", 0.0, length - flange, size),
        cone("chamfer", Surface::Outside, (0.0, 0.5), (size - 1.0, size)),
        drilled("bore", hole, length + 1.0),
        cone("mouth", Surface::Inside, (0.0, 0.5), (hole + 1.0, hole)),
        thread(
            "thread",
            Surface::Inside,
            (0.0, length * 0.6),
            (hole + 1.0, hole),
        ),
    ];
    Turned::finished(Bar::Round(mm(size + 6.0)), Span::mm(0.0, length), &features).expect("a bush")
}

/// A screwed nipple in hexagon bar: external threads, a groove, a blind hole, cross holes.
fn nipple() -> Turned {
    let cross = |id: &str, degrees: f64| {
        Feature::new(
            id,
            Form::Cross(CrossHole {
                z: mm(18.0),
                azimuth: Angle::from_deg(degrees),
                offset: mm(0.0),
                diameter: mm(2.0),
                depth: CrossDepth::NearWall,
            }),
        )
    };
    let features = [
        outside("stem", 0.0, 10.0, 8.0),
        outside("groove", 8.5, 10.0, 6.5),
        cone("chamfer", Surface::Outside, (0.0, 0.7), (6.6, 8.0)),
        outside("tip", 15.0, 24.0, 7.0),
        thread("thread", Surface::Outside, (0.0, 8.5), (8.0, 6.77)),
        drilled("bore", 3.0, 20.0),
        outside("journal", 21.0, 24.0, 5.0).finished(Finish::Lapped),
        cross("cross.1", 0.0),
        cross("cross.2", 180.0),
    ];
    Turned::finished(Bar::Hexagon(mm(12.0)), Span::mm(0.0, 24.0), &features).expect("a nipple")
}

/// A spindle with a counterbore, a taper, flats and a hole square to the plane.
fn spindle() -> Turned {
    let flats = Feature::new(
        "flats",
        Form::Flats(Flats {
            span: Span::mm(28.0, 34.0),
            count: 2,
            from_axis: mm(3.5),
            azimuth: Angle::from_deg(0.0),
        }),
    );
    let counterbore = Form::cylinder(Surface::Inside, Span::mm(0.0, 3.0), mm(6.0));
    let cross = Feature::new(
        "pin",
        Form::Cross(CrossHole {
            z: mm(24.0),
            azimuth: Angle::from_deg(0.0),
            offset: mm(0.0),
            diameter: mm(2.5),
            depth: CrossDepth::Through,
        }),
    );
    let features = [
        outside("neck", 8.0, 12.0, 7.0),
        outside("rear", 20.0, 34.0, 9.0),
        cone("taper", Surface::Outside, (0.0, 8.0), (8.0, 10.0)),
        drilled("bore", 4.0, 15.0),
        Feature::new("counterbore", counterbore),
        cross,
        flats,
    ];
    Turned::finished(Bar::Round(mm(10.0)), Span::mm(0.0, 34.0), &features).expect("a spindle")
}

fn disc() -> Turned {
    Turned::bar(Bar::Round(mm(10.0)), Span::mm(0.0, 4.0)).expect("a disc")
}

#[test]
fn no_lettering_is_run_into_and_no_dimension_is_shown_twice() {
    for part in [bush(14.0, 3.0, 12.0), nipple(), spindle()] {
        let sheet = section("part", &part);
        assert_eq!(clashes(&sheet), []);
        let mut names: Vec<&str> = sheet.dimensions().map(|d| d.measures.as_str()).collect();
        let all = names.len();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), all);
    }
}

#[test]
fn every_size_of_the_bush_is_lettered_once() {
    let sheet = section("bush", &bush(14.0, 3.0, 12.0));
    let mut says: Vec<&str> = sheet.dimensions().map(|d| d.text.says.as_str()).collect();
    says.sort_unstable();
    let expected = [
        "0.5 × 45°",
        "0.5 × 45°",
        "12",
        "9",
        "M8 x 1 × 7.2 deep",
        "Ø14",
        "Ø20",
        "Ø7 through",
    ];
    assert_eq!(says, expected);
}

#[test]
fn every_size_of_the_nipple_is_lettered_once() {
    let sheet = section("nipple", &nipple());
    let mut says: Vec<&str> = sheet.dimensions().map(|d| d.text.says.as_str()).collect();
    says.sort_unstable();
    let expected = [
        "0.7 × 45°",
        "10",
        "15",
        "18",
        "21",
        "24",
        "8.5",
        "M8 x 1 × 8.5 long",
        "hexagon, 12 across flats",
        "Ø2 into the bore, at 0°, 180°",
        "Ø3 × 20 deep",
        "Ø5 lapped",
        "Ø6.5",
        "Ø7",
    ];
    assert_eq!(says, expected);
}

#[test]
fn a_cross_hole_leaves_no_hatching_in_it() {
    let sheet = section("nipple", &nipple());
    let centre = 18.0 * sheet.scale;
    let half = sheet.scale - 1e-6;
    for (layer, mark) in sheet.simple() {
        if let (drawing::sheet::Layer::Hatch, drawing::sheet::Mark::Line(a, b)) = (layer, mark) {
            let middle = 0.5 * (a.x + b.x);
            assert!((middle - centre).abs() > half);
        }
    }
}

#[test]
fn kept_a_plain_disc_gives_the_same_bytes() {
    let text = drawing::svg(&section("disc", &disc()));
    assert_eq!(text, include_str!("golden/disc.svg"));
    assert!(roxmltree::Document::parse(&text).is_ok());
}

#[test]
fn sections_are_well_formed() {
    let parts = [
        ("disc", disc()),
        ("bush", bush(14.0, 3.0, 12.0)),
        ("nipple", nipple()),
        ("spindle", spindle()),
    ];
    for (name, part) in parts {
        let text = drawing::svg(&section(name, &part));
        if let Ok(folder) = std::env::var("DRAWINGS") {
            std::fs::write(format!("{folder}/{name}.svg"), &text).expect("written");
        }
        assert!(roxmltree::Document::parse(&text).is_ok());
        assert!(!text.contains("NaN") && !text.contains("inf"));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(48) })]
    #[test]
    fn no_lettering_of_a_bush_is_run_into(
        size in 6.0..60.0_f64,
        flange in 0.8..6.0_f64,
        rest in 2.0..60.0_f64,
    ) {
        prop_assert_eq!(clashes(&section("bush", &bush(size, flange, flange + rest))), []);
    }
}
