//! `steamwright draw`: the picture of a part of the plan, in SVG on the standard output.

use super::files::{self, Inputs};
use crate::output::{Answer, Failure};
use clap::Args;
use design::bench::{Bench, WhyNot, bench};
use drawing::Sheet;
use drawing::boiler::NotDrawn;
use plan::section::BoilerForm;
use plant::Resolved;
use plant::part::Shape;
use reckoning::Verdict;
use serde_json::json;
use std::path::PathBuf;

/// The section of the whole.
const BOILER: &str = "boiler";
/// The section across a boiler that lies.
const ACROSS: &str = "boiler.across";
/// Plates that every vertical boiler has, whether their sizes are known or not.
const PLATES: [&str; 2] = ["tube-plate.upper", "tube-plate.lower"];
/// The same of a boiler that lies.
const ENDS: [&str; 2] = ["end.front", "end.back"];

/// What was asked.
#[derive(Args)]
pub(crate) struct Arguments {
    /// The plan file
    plan: PathBuf,
    /// What to draw: `boiler`, `boiler.across`, `tube-plate.upper`, `end.front`, or the id of a part
    /// or fitting of the plan
    what: String,
    /// The workshop file; else `workshop.toml` beside the plan or one folder up
    #[arg(long, value_name = "FILE")]
    workshop: Option<PathBuf>,
}

/// Reads the files and draws.
pub(crate) fn run(asked: &Arguments) -> Result<Answer, Failure> {
    let inputs = files::read(&asked.plan, asked.workshop.as_deref())?;
    files::readable(&inputs)?;
    let desk = Desk {
        resolved: plant::resolve(&inputs.plan),
        benches: bench(&inputs.plan, &inputs.workshop),
        inputs: &inputs,
    };
    let sheet = desk.sheet(&asked.what, &asked.plan.display().to_string())?;
    let svg = drawing::svg(&sheet);
    Ok(Answer {
        json: json!({
            "plan": asked.plan.display().to_string(),
            "what": asked.what,
            "says": sheet.says,
            "scale": sheet.scale,
            "problems": files::problems(&inputs.problems),
            "svg": svg,
        }),
        code: desk.code(),
        words: svg,
    })
}

/// What there is to draw from.
struct Desk<'a> {
    inputs: &'a Inputs,
    resolved: Resolved,
    benches: Vec<Bench>,
}

impl Desk<'_> {
    fn sheet(&self, what: &str, plan: &str) -> Result<Sheet, Failure> {
        if self.lies() && [BOILER, ACROSS].contains(&what) {
            let boiler = drawing::lying::of_plant(&self.inputs.plan, &self.resolved)
                .map_err(|lacks| self.wanted(what, lacks))?;
            return Ok(match what {
                ACROSS => drawing::lying::across(&boiler),
                _ => drawing::lying::along(&boiler),
            });
        }
        if what == BOILER {
            let boiler = drawing::boiler::of_plant(&self.inputs.plan, &self.resolved)
                .map_err(|lacks| self.wanted(what, lacks))?;
            return Ok(drawing::boiler::section(&boiler));
        }
        if let Some(bench) = self.benches.iter().find(|b| b.id == what) {
            return self.fitting(bench);
        }
        if let Some(part) = self.resolved.plant.part(what) {
            let drawn = match &part.shape {
                Shape::Plate(plate) if ENDS.contains(&what) => {
                    drawing::lying::end(&part.name, plate)
                }
                Shape::Plate(plate) => drawing::boiler::tube_plate(&part.name, plate),
                Shape::Turned(turned) => Some(drawing::turned::section(&part.id, turned)),
                Shape::Tube(_) | Shape::Shell(_) => None,
            };
            if let Some(sheet) = drawn {
                return Ok(sheet);
            }
        } else if self.plates().contains(&what) {
            return Err(self.no_plate(what));
        }
        Err(Failure {
            says: format!("{plan} has nothing to draw that is called `{what}`"),
            faults: vec![format!("it has {}", self.names().join(", "))],
        })
    }

    fn lies(&self) -> bool {
        self.inputs.plan.form.value() == Some(BoilerForm::HorizontalCentreFlue)
    }

    fn plates(&self) -> [&'static str; 2] {
        if self.lies() { ENDS } else { PLATES }
    }

    /// Everything that can be asked for, whether all its sizes are there or not.
    fn names(&self) -> Vec<String> {
        let parts = &self.resolved.plant.parts;
        let drawable = parts.iter().filter(|p| match p.shape {
            Shape::Plate(_) => !self.plates().contains(&p.id.as_str()),
            // A fitting is asked for by the id that the plan gives it.
            Shape::Turned(_) => !p.id.starts_with("fitting."),
            Shape::Tube(_) | Shape::Shell(_) => false,
        });
        let sections: &[&str] = if self.lies() {
            &[BOILER, ACROSS]
        } else {
            &[BOILER]
        };
        let plates = self.plates();
        let first = sections.iter().chain(&plates).map(|&name| name.to_owned());
        first
            .chain(drawable.map(|p| p.id.clone()))
            .chain(self.benches.iter().map(|b| b.id.clone()))
            .collect()
    }

    /// A fitting as it is to be made; one with a fault is drawn as far as it has a shape.
    fn fitting(&self, bench: &Bench) -> Result<Sheet, Failure> {
        let name = format!("{}: {}", bench.id, bench.name);
        if let Some(piece) = &bench.piece {
            return Ok(drawing::turned::section(&name, &piece.shape));
        }
        let part = self
            .resolved
            .plant
            .part(&format!("fitting.{}", bench.id))
            .map(|part| &part.shape);
        if let Some(Shape::Turned(turned)) = part {
            return Ok(drawing::turned::section(&name, turned));
        }
        let faults = match &bench.card {
            Err(WhyNot::Drawing) => bench.drawing.iter().map(|f| f.says.clone()).collect(),
            _ => bench.gaps.clone(),
        };
        Err(Failure {
            says: format!("`{}` cannot be drawn yet; this is wanted:", bench.id),
            faults,
        })
    }

    fn no_plate(&self, what: &str) -> Failure {
        let (plan, resolved) = (&self.inputs.plan, &self.resolved);
        let vessel = if self.lies() {
            drawing::lying::of_plant(plan, resolved).map(|_| ())
        } else {
            drawing::boiler::of_plant(plan, resolved).map(|_| ())
        };
        match vessel {
            Err(lacks) => self.wanted(what, lacks),
            Ok(()) => Failure {
                says: format!(
                    "`{what}` cannot be drawn: the vessel that it stands in does not fit"
                ),
                faults: self.against(),
            },
        }
    }

    fn wanted(&self, what: &str, lacks: NotDrawn) -> Failure {
        let frames = self.inputs.problems.iter().flat_map(|p| p.frame.lines());
        Failure {
            says: format!("`{what}` cannot be drawn yet; the plan wants these fields:"),
            faults: lacks
                .wanted
                .into_iter()
                .chain(frames.map(str::to_owned))
                .collect(),
        }
    }

    /// What does not fit.
    fn against(&self) -> Vec<String> {
        let findings = self.resolved.findings.iter();
        findings
            .filter(|f| f.verdict == Verdict::NotMet)
            .map(|f| format!("{}: {}", f.place, f.says))
            .collect()
    }

    fn code(&self) -> u8 {
        u8::from(!self.inputs.problems.is_empty() || !self.against().is_empty())
    }
}
