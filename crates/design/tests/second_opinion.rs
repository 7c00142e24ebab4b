//! The second opinion on parts of plans and of boilers put together by hand. All sizes are
//! invented.

use design::second_opinion::{NoOpinion, SecondOpinion, Shape, Unit, of_boiler, second_opinion};
use plan::{File as _, Plan, Workshop};
use proof::{
    Boiler, Curve, Diameter, Dimension, Dish, End, EndShape, Exposure, Flange, Flue, Joint, Metal,
    Points, Pressed, Removed, Seam, Service, Shell, Stock, prove,
};
use reckoning::quantity::{Gauge, Length};
use reckoning::{Known, Size};

const FERRY: &str = include_str!("../../../examples/gas-ferry/plan.toml");
const LAUNCH: &str = include_str!("../../../examples/launch/plan.toml");

fn plan(text: &str) -> Plan {
    plan::read(text, "plan.toml").content
}

fn asked(text: &str, part: &str) -> Result<SecondOpinion, NoOpinion> {
    second_opinion(&plan(text), &Workshop::blank(), part)
}

fn size(mm: f64) -> Dimension {
    Dimension {
        field: "boiler.part.size".to_owned(),
        size: Size::drawn(Length::from_mm(mm), format!("{mm} mm")),
        removed: Removed::Nothing,
    }
}

fn barrel() -> Shell {
    Shell {
        id: "barrel".to_owned(),
        metal: Metal::Copper,
        diameter: Some(Diameter::Inside(size(97.0))),
        wall: Some(size(3.0)),
        seam: Seam::Seamless,
        ends: Joint::SeenBothSides,
        metal_temperature: None,
        openings: Vec::new(),
        laps: Vec::new(),
    }
}

fn flue() -> Flue {
    Flue {
        id: "flue".to_owned(),
        metal: Metal::Copper,
        diameter: Some(Diameter::Outside(size(40.0))),
        wall: Some(size(2.0)),
        length: Some(Known::from_plan(
            Length::from_mm(200.0),
            "boiler.barrel.length",
            "200 mm",
        )),
        ovality: None,
        exposure: Exposure::FlameSwept,
        metal_temperature: None,
        openings: Vec::new(),
        laps: Vec::new(),
    }
}

fn end(shape: EndShape) -> End {
    End {
        id: "end.front".to_owned(),
        metal: Metal::Copper,
        thickness: Some(size(5.0)),
        closes: "barrel".to_owned(),
        flange: None,
        shape,
        stayed: None,
        openings: Vec::new(),
        metal_temperature: None,
    }
}

fn annular(off: f64) -> EndShape {
    EndShape::Annular {
        flue: "flue".to_owned(),
        off: Some(size(off)),
        joint: Joint::SeenBothSides,
    }
}

fn opinion_of(end: End) -> Result<SecondOpinion, NoOpinion> {
    let boiler = Boiler {
        shells: vec![barrel()],
        flues: vec![flue()],
        ends: vec![end],
        ..Boiler::default()
    };
    let service = Service {
        pressure: Some(Known::from_plan(
            Gauge::from_bar(6.0),
            "boiler.design-pressure",
            "6 bar",
        )),
        coils: Vec::new(),
    };
    let proof = prove(&boiler, &service, &Stock::default(), None);
    of_boiler(&boiler, Some(0.6), &proof, "end.front")
}

fn told(opinion: &SecondOpinion, starts: &str) -> f64 {
    let told = opinion.told.iter().find(|t| t.what.starts_with(starts));
    told.unwrap_or_else(|| panic!("{starts} in {:?}", opinion.told))
        .value()
}

#[test]
fn independent_the_middle_of_a_flat_end_is_that_of_another_solver() {
    // 45.56 MPa at the middle outside, by an independent solver of the same kind; radius 50 to
    // the middle of a wall of 3 mm, end of 5 mm, 0.6 MPa.
    let opinion = opinion_of(end(EndShape::Flat)).expect("an opinion");
    let middle = told(&opinion, "pull across the axis at the middle");
    assert!((middle / 45.56 - 1.0).abs() < 0.02, "{middle}");
}

#[test]
fn the_flue_of_an_annular_end_carries_its_share_of_the_pressure() {
    let opinion = opinion_of(end(annular(0.0))).expect("an opinion");
    let pull = told(&opinion, "pull that the flue carries");
    let whole = 0.6 * std::f64::consts::PI * (48.5 * 48.5 - 400.0);
    // Thin-plate theory gives the inner rim of such a ring about two fifths.
    assert!(
        pull > 0.25 * whole && pull < 0.55 * whole,
        "{pull} of {whole}"
    );
}

#[test]
fn a_flue_off_the_axis_is_taken_with_its_widest_strip_and_said_so() {
    let on = opinion_of(end(annular(0.0))).expect("an opinion");
    let off = opinion_of(end(annular(6.0))).expect("an opinion");
    let between = |o: &SecondOpinion| told(o, "pull across the axis on the dry face");
    assert!(between(&off) > between(&on));
    assert!(
        off.stands_for
            .iter()
            .any(|s| s.contains("6.0 mm off the axis"))
    );
    assert!(!on.stands_for.iter().any(|s| s.contains("off the axis")));
}

#[test]
fn a_flange_stiffens_the_end_it_stands_on() {
    let mut flanged = end(EndShape::Flat);
    flanged.flange = Some(Flange {
        closes: "barrel".to_owned(),
        height: Some(size(22.0)),
        inside_radius: Some(size(8.0)),
        points: Some(Points::TowardsWater),
        joint: Joint::SeenBothSides,
    });
    let flanged = opinion_of(flanged).expect("an opinion");
    let plain = opinion_of(end(EndShape::Flat)).expect("an opinion");
    let gives = |o: &SecondOpinion| told(o, "how far the plate gives way at its middle");
    assert!(gives(&flanged) < gives(&plain));
}

fn dished(pressed: Pressed) -> EndShape {
    EndShape::Dished(Box::new(Dish {
        curve: Curve::Torisphere,
        crown: Some(size(97.0)),
        knuckle: Some(size(10.0)),
        pressed,
        exposure: None,
    }))
}

#[test]
fn published_the_crown_of_a_dished_end_has_the_pull_of_a_sphere() {
    // p R / 2 t of a thin sphere, its mean radius.
    let opinion = opinion_of(end(dished(Pressed::Hollow))).expect("an opinion");
    let crown = told(&opinion, "even pull of the crown");
    let known = 0.6 * (97.0 + 2.5) / 10.0;
    assert!((crown / known - 1.0).abs() < 0.1, "{crown}, {known}");
    let refused = opinion_of(end(dished(Pressed::Round)));
    assert!(matches!(refused, Err(NoOpinion::NotRound { .. })));
}

#[test]
fn every_part_of_the_launch_that_is_round_is_answered_beside_its_formulas() {
    let ring = asked(LAUNCH, "foundation-ring").expect("an opinion");
    assert!(matches!(ring.shape, Shape::Flat(_)));
    assert_eq!(ring.beside[0].rule, "ours.ring-bending");
    for part in ["bush.valve", "bush.steam", "bush.blow-down"] {
        let bush = asked(LAUNCH, part).expect("an opinion");
        assert_eq!(bush.beside[0].rule, "ours.opening-area", "{part}");
        assert!(bush.sentence.contains(&bush.beside[0].says));
        // The joint carries less than the pull, the wall beside it less than a bare hole.
        let Shape::Bush(shape) = bush.shape else {
            panic!("a bush");
        };
        let pull = shape.pull_mpa;
        assert!(told(&bush, "pull on the joint") < pull);
        assert!(told(&bush, "hoop stress of the wall") < 2.0 * pull);
    }
}

#[test]
fn the_ends_of_the_ferry_are_answered_with_their_flange_and_their_low_flue() {
    for part in ["end.front", "end.back"] {
        let end = asked(FERRY, part).expect("an opinion");
        let Shape::Flat(shape) = end.shape else {
            panic!("a flat end");
        };
        assert!(matches!(shape.rim, solid::Rim::Flanged { .. }) && shape.flue.is_some());
        assert!(
            end.stands_for
                .iter()
                .any(|s| s.contains("9.0 mm off the axis"))
        );
        assert!(end.left_over < 1e-9);
        assert!(
            end.beside[0].rule.starts_with("ours.end-"),
            "{:?}",
            end.beside
        );
    }
    let Err(NoOpinion::Unknown { has, .. }) = asked(FERRY, "foundation-ring") else {
        panic!("a horizontal boiler has no foundation ring");
    };
    assert!(has.contains(&"end.back".to_owned()) && has.contains(&"bush.valve".to_owned()));
}

#[test]
fn every_value_has_settled_and_every_balance_closes() {
    for part in ["foundation-ring", "bush.valve"] {
        let opinion = asked(LAUNCH, part).expect("an opinion");
        assert!(opinion.left_over < 1e-9, "{part}: {}", opinion.left_over);
        assert!(opinion.nodes[0] < opinion.nodes[1] && opinion.nodes[1] < opinion.nodes[2]);
        for told in opinion.told.iter().filter(|t| t.unit == Unit::Mpa) {
            let moved = (told.values[2] - told.values[1]).abs();
            assert!(moved < 0.1 + 0.02 * told.value().abs(), "{part}: {told:?}");
        }
        assert!(opinion.peak.grows(), "the sharp corner of {part}");
    }
}

#[test]
fn what_is_not_round_is_refused_and_what_is_missing_is_named() {
    for plate in ["tube-plate.upper", "tube-plate.lower"] {
        assert!(matches!(
            asked(LAUNCH, plate),
            Err(NoOpinion::NotRound { .. })
        ));
    }
    let Err(NoOpinion::Unknown { has, .. }) = asked(LAUNCH, "funnel") else {
        panic!("there is no funnel");
    };
    assert!(has.contains(&"foundation-ring".to_owned()) && has.contains(&"bush.valve".to_owned()));
    let without = LAUNCH.replace("depth = \"8 mm\"\n", "");
    assert_ne!(without, LAUNCH);
    let Err(NoOpinion::Wanted { lacks, .. }) = asked(&without, "foundation-ring") else {
        panic!("the depth is missing");
    };
    assert!(
        lacks.contains(&"depth of foundation-ring".to_owned()),
        "{lacks:?}"
    );
    let mut held = end(EndShape::Flat);
    held.metal = Metal::Brass;
    assert!(matches!(opinion_of(held), Err(NoOpinion::Wanted { .. })));
}
