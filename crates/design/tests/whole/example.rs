//! The example plans, edited and checked.

use design::{Asked, Checked, Steaming};
use plan::{Document, Field, FieldKind, Plan, Rows, Section, Slot, Visitor, Workshop};
use reckoning::Finding;
use std::sync::LazyLock;

/// A plan that should meet its duty.
pub(crate) const LAUNCH: &str = include_str!("../../../../examples/launch/plan.toml");
/// A plan that should fail.
pub(crate) const MILL: &str = include_str!("../../../../examples/mill-engine/plan.toml");
/// A gas fired plan that should meet its duty.
pub(crate) const FERRY: &str = include_str!("../../../../examples/gas-ferry/plan.toml");
/// A plan hardly begun.
pub(crate) const HALF: &str = include_str!("../../../../examples/half-written/plan.toml");
/// The workshop of all of them.
pub(crate) const WORKSHOP: &str = include_str!("../../../../examples/workshop.toml");

/// The workshop.
pub(crate) fn workshop() -> Workshop {
    plan::read_workshop(WORKSHOP, "workshop.toml").content
}

/// The launch example, checked once for all tests that look at it.
pub(crate) static LAUNCHED: LazyLock<Known> = LazyLock::new(|| Known::of(LAUNCH, Fire::Lit));
/// The mill engine, checked once.
pub(crate) static MILLED: LazyLock<Known> = LazyLock::new(|| Known::of(MILL, Fire::Lit));

/// The ferry, checked once.
pub(crate) static FERRIED: LazyLock<Known> = LazyLock::new(|| Known::of(FERRY, Fire::Lit));

/// The launch example with its fire left out.
pub(crate) static LAUNCH_UNLIT: LazyLock<Known> = LazyLock::new(|| Known::of(LAUNCH, Fire::Unlit));
/// The mill engine with its fire left out.
pub(crate) static MILL_UNLIT: LazyLock<Known> = LazyLock::new(|| Known::of(MILL, Fire::Unlit));

/// A text that reads without a problem, checked.
pub(crate) fn checked(text: &str) -> Checked {
    let read = plan::read(text, "plan.toml");
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    design::check(&read.content, &workshop())
}

/// Checks a plan beside another: where both ask the same of the fire, it is lit once.
pub(crate) fn checked_beside(plan: &Plan, known: &Known) -> Checked {
    design::check_by(plan, &known.workshop, |asked| {
        if known.fire == Fire::Unlit {
            asked.unlit()
        } else if told(&asked) == known.asked {
            known.steaming.clone()
        } else {
            asked.answered()
        }
    })
}

/// All that the answer on the fire rests on, as text: two plans that ask the same are answered
/// the same.
fn told(asked: &Asked<'_>) -> String {
    let (plan, water) = (asked.plan, &asked.plant.water);
    let (run, tank) = (plan.duty.run.value(), plan.feed.tank.value());
    let means: Vec<String> = plan.feed.means.iter().map(|m| format!("{m:?}")).collect();
    format!(
        "{:?} {:?} {:?} {:?} {:?} {water:?} {run:?} {tank:?} {means:?}",
        asked.door, asked.on_gas, asked.working_pa, asked.valve_pa, plan.gas
    )
}

/// Whether the fire of a plan is looked at. It is nearly all the time of a check.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Fire {
    /// As a check does.
    Lit,
    /// Left out: parts, proof and making are looked at alone.
    Unlit,
}

/// A plan with what it asks of its fire and what it was answered.
pub(crate) struct Known {
    fire: Fire,
    asked: String,
    steaming: Steaming,
    workshop: Workshop,
    /// What was found of it.
    pub(crate) checked: Checked,
}

impl Known {
    /// A text that reads without a problem, checked and kept.
    pub(crate) fn of(text: &str, fire: Fire) -> Self {
        let read = plan::read(text, "plan.toml");
        assert!(read.problems.is_empty(), "{:?}", read.problems);
        let (mut heard, workshop) = (String::new(), workshop());
        let checked = design::check_by(&read.content, &workshop, |asked| match fire {
            Fire::Lit => {
                heard = told(&asked);
                asked.answered()
            }
            Fire::Unlit => asked.unlit(),
        });
        Self {
            fire,
            asked: heard,
            steaming: checked.steaming.clone(),
            workshop,
            checked,
        }
    }
}

/// A text under edit.
pub(crate) fn document(text: &str) -> Document<Plan> {
    Document::open(text, "plan.toml").expect("the example opens")
}

/// Every finding of a plan, whoever made it.
pub(crate) fn findings(checked: &Checked) -> impl Iterator<Item = &Finding> {
    checked.judged.iter().map(|judged| &judged.finding)
}

/// The same check in another answer: its rule, set and place.
pub(crate) fn same<'a>(of: &Finding, among: &'a Checked) -> Option<&'a Finding> {
    findings(among).find(|f| f.rule.id == of.rule.id && f.set == of.set && f.place == of.place)
}

/// Paths of every field that is filled, and of the parts of sizes.
pub(crate) fn filled(text: &str) -> Vec<String> {
    let mut content = plan::read(text, "plan.toml").content;
    let mut paths = Paths(Vec::new());
    content.visit(&mut paths);
    let document = document(text);
    let written = |path: &String| document.clone().unset(path).is_ok();
    paths
        .0
        .into_iter()
        .filter(|(path, part)| !*part || written(path))
        .map(|(path, _)| path)
        .collect()
}

/// Paths, each with whether it is a part of a size, of which nothing tells whether it is written.
struct Paths(Vec<(String, bool)>);

impl Visitor for Paths {
    fn field(&mut self, field: Field, slot: &mut dyn Slot) {
        if slot.written().is_none() {
            return;
        }
        self.0.push((slot.path().to_owned(), false));
        if let FieldKind::Size { .. } = field.kind {
            for part in ["made", "tolerance"] {
                self.0.push((format!("{}.{part}", slot.path()), true));
            }
        }
    }

    fn table(&mut self, _key: &'static str, _meaning: &'static str, section: &mut dyn Section) {
        section.visit(self);
    }

    fn rows(&mut self, _key: &'static str, _meaning: &'static str, rows: &mut dyn Rows) {
        for index in 0..rows.count() {
            rows.row(index).visit(self);
        }
    }
}
