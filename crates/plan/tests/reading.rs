//! Reading a whole plan: the values, their places and their text.

use plan::section::{Acting, BoilerForm, Seam};
use reckoning::size::Bad;

const TEXT: &str = include_str!("plan.toml");

#[test]
fn a_plan_is_read_with_values_texts_paths_and_places() {
    let read = plan::read(TEXT, "plan.toml");
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    let plan = read.content;
    assert_eq!(plan.form.value(), Some(BoilerForm::VerticalFireTubes));
    assert_eq!(plan.engine.acting.value(), Some(Acting::Double));
    assert_eq!(plan.boiler.barrel.seam.value(), Some(Seam::Seamless));
    let pressure = plan.duty.pressure.typed().expect("a pressure");
    assert!((pressure.value.bar() - 4.0).abs() < 1e-12);
    assert_eq!(pressure.text, "4 bar");
    let wall = &plan.boiler.barrel.wall;
    let line = TEXT
        .lines()
        .position(|l| l.starts_with("wall = {"))
        .expect("the wall")
        + 1;
    let at = wall.place().expect("a place");
    assert_eq!(
        (wall.path(), at.line, at.column),
        ("boiler.barrel.wall", line, 8)
    );
    let made = wall.for_proof(Bad::Small).expect("a wall");
    assert!((made.value.mm() - 2.46).abs() < 1e-12);
    assert_eq!(
        plan.boiler.stays[1].diameter.path(),
        "boiler.stay.s2.diameter"
    );
    assert_eq!(plan.boiler.stays[1].radius.path(), "boiler.stay.s2.radius");
    assert!((plan.engine.cut_off.value().expect("cut-off").number() - 0.75).abs() < 1e-15);
}

#[test]
fn a_plan_may_be_written_in_any_way_that_toml_has() {
    let headings = plan::read(
        "format = 1\n[boiler.barrel.wall]\ndrawn = \"3 mm\"\n[[boiler.stay]]\nid = \"a\"\ndiameter = \"4 mm\"\n",
        "plan.toml",
    );
    let dotted = plan::read(
        "format = 1\nboiler.barrel.wall.drawn = \"3 mm\"\nboiler.stay = [{ id = \"a\", diameter = '4 mm' }]\n",
        "plan.toml",
    );
    assert!(headings.problems.is_empty(), "{:?}", headings.problems);
    assert!(dotted.problems.is_empty(), "{:?}", dotted.problems);
    assert!(headings.content == dotted.content);
    let mut document: plan::Document<plan::Plan> = plan::Document::open(
        "format = 1\nboiler.stay = [{ id = \"a\", diameter = '4 mm' }]\n",
        "plan.toml",
    )
    .expect("a plan");
    document
        .set("boiler.stay.a.diameter", "5 mm")
        .expect("an edit");
    document
        .set("boiler.stay.a.radius", "20 mm")
        .expect("an edit");
    let expected =
        "format = 1\nboiler.stay = [{ id = \"a\", diameter = '5 mm', radius = \"20 mm\" }]\n";
    assert_eq!(document.text(), expected);
}

#[test]
fn a_value_carries_its_origin_to_the_working() {
    let plan = plan::read(TEXT, "plan.toml").content;
    let known = plan.duty.pressure.known().expect("a pressure");
    let given = format!("{:?}", known.given);
    assert_eq!(given, "Plan { field: \"duty.pressure\", typed: \"4 bar\" }");
    let wall = &plan.boiler.barrel.wall;
    let made = format!("{:?}", wall.likely().expect("a wall").given);
    assert_eq!(
        made,
        "Plan { field: \"boiler.barrel.wall.made\", typed: \"2.46 mm\" }"
    );
    let drawn = plan::read(
        "format = 1\n[boiler.barrel]\nwall = { drawn = \"2.5 mm\", tolerance = \"10 %\" }\n",
        "plan.toml",
    );
    let least = drawn
        .content
        .boiler
        .barrel
        .wall
        .for_proof(Bad::Small)
        .expect("a wall");
    assert!((least.value.mm() - 2.25).abs() < 1e-12);
    let given = format!("{:?}", least.given);
    assert_eq!(
        given,
        "Plan { field: \"boiler.barrel.wall\", typed: \"2.5 mm, least by its tolerance\" }"
    );
}
