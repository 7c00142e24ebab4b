//! Fittings drawn from an invented plan.

use crate::plans::{GOOD, changed, plan};
use plan::Plan;
use plant::fitting::{Fault, Fitted, Sizes, fitted};
use plant::part::{CrossHole, Form, Shape, Surface};
use plant::resolve;
use reckoning::Origin;
use reckoning::quantity::Length;

const BUSH: &str = r#"
[[fitting]]
id = "dryer-bush"
name = "bush of the coil"
metal = "CW451K"
bar = "16 mm"

[[fitting.step]]
id = "spigot"
diameter = "10 mm"
length = "9 mm"
thread = "M10x1"
thread-length = "8 mm"
chamfer = "1 mm"

[[fitting.step]]
id = "head"
diameter = "14 mm"
length = "12 mm"

[[fitting.bore]]
id = "seat"
from = "left"
kind = "reamed"
diameter = "5 mm"
depth = "16 mm"

[[fitting.cross-hole]]
id = "inlet"
at = "15 mm"
angle = "0°"
diameter = "3 mm"
reach = "into the bore"

[[fitting.coaxial]]
id = "true"
of = ["spigot", "seat"]
within = "0.05 mm"
"#;

/// The bush with one piece of its text changed, after the plan of a boiler.
fn with(from: &str, to: &str) -> Plan {
    assert!(BUSH.contains(from), "`{from}` is not in the bush");
    plan(&format!("{GOOD}{}", BUSH.replacen(from, to, 1)))
}

fn drawn(plan: &Plan) -> Fitted {
    fitted(&plan.fittings[0], Sizes::Drawn)
}

fn gaps(made: &Fitted) -> Vec<&str> {
    made.gaps.iter().map(|gap| gap.field.as_str()).collect()
}

#[test]
fn a_fitting_keeps_its_features_and_ids() {
    let resolved = resolve(&plan(&format!("{GOOD}{BUSH}")));
    let Shape::Turned(bush) = &resolved.plant.part("fitting.dryer-bush").unwrap().shape else {
        panic!("a turned part")
    };
    let ids: Vec<&str> = bush.features().iter().map(|f| f.id.as_str()).collect();
    assert_eq!(
        ids,
        [
            "spigot",
            "spigot-thread",
            "spigot-chamfer",
            "head",
            "seat",
            "inlet"
        ]
    );
    assert_eq!(bush.span().to, Length::from_mm(21.0));
    // The spigot is the free end: its chamfer lies at 0.
    assert_eq!(
        bush.outside_at(Length::from_mm(0.0)),
        Some(Length::from_mm(8.0))
    );
    assert_eq!(
        bush.inside_at(Length::from_mm(15.0)),
        Some(Length::from_mm(5.0))
    );
    let thread = bush.threads().next().unwrap();
    assert_eq!(
        (thread.1, thread.2.to),
        (Surface::Outside, Length::from_mm(8.0))
    );
    assert!(bush.feature("seat").unwrap().coaxial.is_some());
}

/// The bush with its seat tapped M5 and no diameter given.
fn tapped() -> Plan {
    with(
        "kind = \"reamed\"\ndiameter = \"5 mm\"",
        "kind = \"tapped\"\nthread = \"M5\"\nthread-length = \"8 mm\"",
    )
}

/// ISO 724 gives M5 a minor diameter D1 of 4.134 mm (from memory).
#[test]
fn published_a_tapped_bore_without_a_diameter_stands_at_the_minor_diameter_and_says_so() {
    let plan = tapped();
    let made = drawn(&plan);
    assert!(made.gaps.is_empty() && made.faults.is_empty(), "{made:?}");
    let Form::Drilled { diameter, .. } = made.feature("seat").unwrap().form else {
        panic!("a drilled hole")
    };
    assert!((diameter.mm() - 4.134).abs() < 5e-4, "{diameter:?}");
    let (field, size) = &made.chosen[0];
    assert_eq!(field, "fitting.dryer-bush.bore.seat.diameter");
    assert_eq!(size.given.origin(), Origin::CommonPractice);
    // The thread runs true, not the hole that only leads the tap.
    assert!(made.feature("seat-thread").unwrap().coaxial.is_some());
    assert!(made.feature("seat").unwrap().coaxial.is_none());
    let resolved = resolve(&plan);
    assert_eq!(resolved.gaps, changed(&[]).gaps);
    let masses = resolved.plant.masses.iter();
    let (_, mass) = masses
        .clone()
        .find(|(id, _)| id == "fitting.dryer-bush")
        .unwrap();
    assert_eq!(mass.given.origin(), Origin::CommonPractice);
}

#[test]
fn a_diameter_that_the_plan_gives_is_drawn_under_a_thread() {
    let plan = with(
        "kind = \"reamed\"",
        "kind = \"tapped\"\nthread = \"M6\"\nthread-length = \"8 mm\"",
    );
    let made = drawn(&plan);
    assert!(made.chosen.is_empty());
    assert_eq!(
        made.shape.unwrap().inside_at(Length::from_mm(1.0)),
        Some(Length::from_mm(5.0))
    );
}

/// ISO 724 gives M3 a minor diameter D1 of 2.459 mm (from memory).
#[test]
fn published_a_tapped_cross_hole_without_a_diameter_stands_at_the_minor_diameter() {
    let made = drawn(&with("diameter = \"3 mm\"", "thread = \"M3\""));
    assert!(made.gaps.is_empty(), "{:?}", made.gaps);
    let Form::Cross(CrossHole { diameter, .. }) = made.feature("inlet").unwrap().form else {
        panic!("a cross hole")
    };
    assert!((diameter.mm() - 2.459).abs() < 5e-4, "{diameter:?}");
}

#[test]
fn a_thread_of_no_name_is_a_fault_and_leaves_its_hole_without_a_size() {
    let plan = with(
        "kind = \"reamed\"\ndiameter = \"5 mm\"",
        "kind = \"tapped\"\nthread = \"M5.5x3\"",
    );
    let made = drawn(&plan);
    assert!(
        matches!(&made.faults[..], [Fault::Thread { .. }]),
        "{:?}",
        made.faults
    );
    assert_eq!(gaps(&made), ["fitting.dryer-bush.bore.seat.thread"]);
    assert!(made.shape.is_none());
    let told = resolve(&plan).gaps;
    assert!(
        told.iter()
            .any(|gap| gap.field == "fitting.dryer-bush.bore.seat.thread")
    );
}

#[test]
fn a_bore_of_another_kind_and_a_tapped_one_without_a_thread_want_their_fields() {
    let bare = with("diameter = \"5 mm\"\n", "");
    assert_eq!(
        gaps(&drawn(&bare)),
        ["fitting.dryer-bush.bore.seat.diameter"]
    );
    let nameless = with("kind = \"reamed\"", "kind = \"tapped\"");
    assert_eq!(
        gaps(&drawn(&nameless)),
        ["fitting.dryer-bush.bore.seat.thread"]
    );
    let turned = with("angle = \"0°\"\n", "");
    assert_eq!(
        gaps(&drawn(&turned)),
        ["fitting.dryer-bush.cross-hole.inlet.angle"]
    );
}

#[test]
fn a_demand_without_its_zone_is_a_gap_and_leaves_the_shape() {
    let made = drawn(&with("within = \"0.05 mm\"\n", ""));
    assert_eq!(gaps(&made), ["fitting.dryer-bush.coaxial.true.within"]);
    assert!(made.shape.is_some());
}

/// A nut comes on from the side where nothing wider stands before it.
#[test]
fn a_chamfer_lies_at_the_free_end_of_its_step() {
    let chamfer = "length = \"12 mm\"\nchamfer = \"1 mm\"";
    let at = |plan: &Plan, id: &str| drawn(plan).feature(id).and_then(|f| f.form.span());
    let span = at(&with("length = \"12 mm\"", chamfer), "head-chamfer");
    assert_eq!(
        span.map(|s| s.to.mm()),
        Some(21.0),
        "the last step ends the part"
    );
    let tail = format!(
        "{chamfer}\n\n[[fitting.step]]\nid = \"tail\"\ndiameter = \"8 mm\"\nlength = \"5 mm\"\n\
         chamfer = \"0.5 mm\""
    );
    let both = with("length = \"12 mm\"", &tail);
    let low = at(&both, "head-chamfer").map(|s| s.from.mm());
    assert_eq!(low, Some(9.0), "open at both ends, within the part");
    let high = at(&both, "tail-chamfer").map(|s| s.to.mm());
    assert_eq!(high, Some(26.0), "the head stands before it on the left");
}

/// A part that is measured is drawn as drawn for the bench, as made for what it weighs.
#[test]
fn the_bench_takes_the_drawing_and_the_plant_what_was_made() {
    let plan = with(
        "diameter = \"14 mm\"",
        "diameter = { drawn = \"14 mm\", made = \"13.9 mm\" }",
    );
    let at = |sizes| {
        let shape = fitted(&plan.fittings[0], sizes).shape.unwrap();
        shape.outside_at(Length::from_mm(15.0)).unwrap().mm()
    };
    assert!((at(Sizes::Drawn) - 14.0).abs() < 1e-9);
    assert!((at(Sizes::Likely) - 13.9).abs() < 1e-9);
}
