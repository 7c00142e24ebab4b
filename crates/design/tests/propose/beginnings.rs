//! Beginnings of plans, all invented.

use design::propose::{Proposal, propose};
use plan::Workshop;

/// The workshop of the examples.
pub(crate) fn workshop() -> Workshop {
    let text = include_str!("../../../../examples/workshop.toml");
    plan::read_workshop(text, "workshop.toml").content
}

/// An engine, what is asked of it, and the room: cylinders, bore, stroke in mm, speed, pressure in
/// bar, run in minutes, room in mm and kg.
#[derive(Clone, Copy)]
pub(crate) struct Duty {
    pub(crate) cylinders: u32,
    pub(crate) bore: f64,
    pub(crate) stroke: f64,
    pub(crate) rpm: f64,
    pub(crate) bar: f64,
    pub(crate) minutes: f64,
    pub(crate) height: f64,
    pub(crate) width: f64,
    pub(crate) mass: f64,
}

/// A stationary engine for a bench.
pub(crate) const SMALL: Duty = Duty {
    cylinders: 1,
    bore: 18.0,
    stroke: 18.0,
    rpm: 500.0,
    bar: 2.5,
    minutes: 20.0,
    height: 300.0,
    width: 110.0,
    mass: 4.0,
};
/// The engine of a model launch.
pub(crate) const LAUNCH: Duty = Duty {
    cylinders: 2,
    bore: 18.0,
    stroke: 20.0,
    rpm: 450.0,
    bar: 3.5,
    minutes: 30.0,
    height: 420.0,
    width: 140.0,
    mass: 9.0,
};
/// A small lorry.
pub(crate) const LARGER: Duty = Duty {
    cylinders: 2,
    bore: 28.0,
    stroke: 28.0,
    rpm: 350.0,
    bar: 5.0,
    minutes: 45.0,
    height: 800.0,
    width: 260.0,
    mass: 40.0,
};

impl Duty {
    /// The beginning of a plan.
    pub(crate) fn text(self) -> String {
        let Self {
            cylinders,
            bore,
            stroke,
            rpm,
            bar,
            minutes,
            height,
            width,
            mass,
        } = self;
        format!(
            r#"# Invented for a test.
format = 1
name = "A first thought"   # no more than that
form = "vertical, wet firebox, fire tubes"

[duty]
pressure = "{bar} bar"
run = "{minutes} min"

[room]
height = "{height} mm"
width = "{width} mm"
mass = "{mass} kg"

[engine]
cylinders = {cylinders}
acting = "double"
bore = "{bore} mm"
stroke = "{stroke} mm"
speed = "{rpm} rpm"
cut-off = "75 %"
clearance = "10 %"
compression = "10 %"
missing = "60 %"

# What burns.
[fire]
fuel = "anthracite"
"#
        )
    }

    pub(crate) fn proposed(self) -> Proposal {
        proposed(&self.text())
    }
}

/// The proposal of a beginning that has all it needs.
pub(crate) fn proposed(text: &str) -> Proposal {
    match propose(text, "plan.toml", &workshop()) {
        Ok(proposal) => proposal,
        Err(why) => panic!("{why}"),
    }
}

/// What a proposal has in a field.
pub(crate) fn value(proposal: &Proposal, path: &str) -> String {
    let fields = proposal.steps.iter().flat_map(|step| &step.fields);
    let mut found = fields.filter(|field| field.path == path);
    let field = found.next().unwrap_or_else(|| panic!("{path} was chosen"));
    field.shown().to_owned()
}

/// A length of a proposal in millimetres.
pub(crate) fn mm(proposal: &Proposal, path: &str) -> f64 {
    let text = value(proposal, path);
    let number = text.trim_end_matches(" mm");
    number.parse().unwrap_or_else(|_| panic!("{text}"))
}
