//! The example plans on paper: the good one, and the one with what does not fit.

use drawing::Sheet;
use drawing::boiler::{of_plant, section, tube_plate};
use drawing::clash::clashes;
use plant::part::Shape;

const LAUNCH: &str = include_str!("../../../examples/launch/plan.toml");
const MILL: &str = include_str!("../../../examples/mill-engine/plan.toml");
const HALF: &str = include_str!("../../../examples/half-written/plan.toml");

fn boiler(text: &str) -> Sheet {
    let plan = plan::read(text, "plan.toml").content;
    section(&of_plant(&plan, &plant::resolve(&plan)).expect("a vessel"))
}

/// Every sheet of a plan.
fn sheets(text: &str) -> Vec<Sheet> {
    let plan = plan::read(text, "plan.toml").content;
    let parts = plant::resolve(&plan).plant.parts;
    let of_parts = parts.iter().filter_map(|part| match &part.shape {
        Shape::Plate(plate) => tube_plate(&part.name, plate),
        Shape::Turned(turned) => Some(drawing::turned::section(&part.id, turned)),
        Shape::Tube(_) | Shape::Shell(_) => None,
    });
    std::iter::once(boiler(text)).chain(of_parts).collect()
}

#[test]
fn no_lettering_of_the_example_plans_is_run_into() {
    for text in [LAUNCH, MILL] {
        for sheet in sheets(text) {
            assert_eq!(clashes(&sheet), [], "{}", sheet.title);
        }
    }
}

fn says(sheet: &Sheet, measures: &str) -> String {
    let found = sheet.dimensions().find(|d| d.measures == measures);
    found.expect("the dimension").text.says.clone()
}

/// The texts of the two plans, as a reader of them would expect to find them on the sheet.
#[test]
fn sizes_stand_as_the_maker_typed_them() {
    let mill = boiler(MILL);
    assert_eq!(says(&mill, "outside diameter of the barrel"), "Ø5 in");
    assert_eq!(says(&mill, "height of the barrel"), "8 in");
    assert_eq!(says(&mill, "wall of the firebox"), "firebox, 18 swg wall");
    assert!(says(&mill, "height of bush.valve").contains("7 in"));
    let launch = boiler(LAUNCH);
    assert_eq!(says(&launch, "outside diameter of the firebox"), "Ø76.1");
    assert_eq!(
        says(&launch, "wall of the barrel"),
        "barrel, 2.5 ±0.25 wall"
    );
}

/// The ring is flush, so that the barrel stands on the datum; the flange of the upper plate ends
/// flush with the barrel, so that the face on which the smokebox stands is a flange lower and a
/// thickness higher.
#[test]
fn heights_of_the_launch_boiler_add_up() {
    let plan = plan::read(LAUNCH, "plan.toml").content;
    let mm = |size: &plan::Entry<reckoning::Size>| size.likely().expect("a size").value.mm();
    let (barrel, plate) = (&plan.boiler.barrel, &plan.boiler.tube_plate.upper);
    let face = mm(&barrel.length) - mm(&plate.flange_height) + mm(&plate.thickness);
    let top = face + mm(&plan.smokebox.height) + mm(&plan.chimney.height);
    let sheet = boiler(LAUNCH);
    assert_eq!(
        says(&sheet, "height of the barrel"),
        format!("{}", mm(&barrel.length))
    );
    assert_eq!(says(&sheet, "height of the chimney"), format!("{top}"));
}

#[test]
fn tubes_bear_the_ids_of_the_plant() {
    let plan = plan::read(LAUNCH, "plan.toml").content;
    let resolved = plant::resolve(&plan);
    let drawn = of_plant(&plan, &resolved).expect("a vessel");
    assert!(!drawn.tubes.is_empty());
    let nest = resolved.plant.nest.as_ref().expect("a nest");
    for tube in &drawn.tubes {
        assert!(resolved.plant.part(&tube.id).is_some(), "{}", tube.id);
        let number: usize = tube.id["tube.".len()..].parse().expect("a number");
        assert_eq!(nest.tubes[number - 1].x, tube.x);
    }
}

#[test]
fn a_firebox_wider_than_its_barrel_is_drawn_so() {
    let plan = LAUNCH.replace("outside = \"76.1 mm\"", "outside = \"120 mm\"");
    let sheet = boiler(&plan);
    assert_eq!(says(&sheet, "outside diameter of the firebox"), "Ø120");
    let reach = sheet
        .items
        .iter()
        .filter(|i| i.part.as_deref() == Some("firebox"));
    assert!(reach.count() > 0);
}

#[test]
fn a_plan_without_sizes_names_the_fields_wanted() {
    let plan = plan::read(HALF, "plan.toml").content;
    let lacks = of_plant(&plan, &plant::resolve(&plan)).expect_err("no vessel");
    for field in ["boiler.barrel.length", "boiler.firebox.height"] {
        assert!(
            lacks.wanted.iter().any(|f| f == field),
            "{:?}",
            lacks.wanted
        );
    }
}
