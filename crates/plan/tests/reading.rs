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
