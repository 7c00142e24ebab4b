//! `largest`: the largest engine that the boiler of a plan holds at working pressure.

use clap::Args;
use design::propose::{Binds, Bound, Doubt, Largest, Way, largest};
use reckoning::quantity::{KG_PER_H, show};
use serde_json::{Value, json};
use std::path::PathBuf;

use super::files;
use super::page::Page;
use crate::output::{Answer, Failure};

/// What `largest` takes.
#[derive(Args)]
pub(crate) struct Arguments {
    /// The plan file
    plan: PathBuf,
}

/// Asks how large the engine may be.
pub(crate) fn run(arguments: &Arguments) -> Result<Answer, Failure> {
    let inputs = files::read(&arguments.plan, None)?;
    files::readable(&inputs)?;
    let found = largest(&inputs.plan).map_err(|why| Failure {
        says: format!("It cannot be said: {why}."),
        faults: Vec::new(),
    })?;
    let pressure = inputs.plan.duty.pressure.typed();
    let pressure = pressure.map_or("working pressure", |typed| typed.text.as_str());
    let mut told = tell(&found);
    if let Value::Object(keys) = &mut told {
        keys.insert("problems".to_owned(), files::problems(&inputs.problems));
    }
    // The present engine is held where the size, the doubt counted, may grow.
    let held = found
        .bounds
        .iter()
        .any(|b| b.way == Way::Size && b.doubt == Doubt::Counted && b.share >= 1.0);
    Ok(Answer {
        words: files::faults(&inputs.problems) + &words(&found, pressure),
        json: told,
        code: u8::from(!held || !inputs.problems.is_empty()),
    })
}

fn words(found: &Largest, pressure: &str) -> String {
    let mut page = Page::default();
    let present = found.present_kg_s.map_or_else(
        || "with the engine of the plan the fire has no balance".to_owned(),
        |kg_s| format!("the engine of the plan takes {} of steam", steam(kg_s)),
    );
    page.paragraph("", &format!("At {pressure} {present}."));
    page.blank();
    for way in [Way::Size, Way::Speed] {
        page.line(match way {
            Way::Size => "By bore and stroke, at the present shape and speed",
            Way::Speed => "By speed, at the present bore and stroke",
        });
        let mut bounds = found.bounds.iter().filter(|b| b.way == way).peekable();
        if bounds.peek().is_none() {
            page.paragraph(
                "  ",
                "No engine is held, down to a tenth of the present one.",
            );
        }
        for bound in bounds {
            tell_bound(&mut page, bound);
        }
        page.blank();
    }
    page.paragraph(
        "",
        "Boiler, fire, blast and chimney are as drawn. A larger engine asks a larger feed and \
         raises more steam past the safety valve: check the plan again with it.",
    );
    page.text
}

fn tell_bound(page: &mut Page, bound: &Bound) {
    let size = match bound.way {
        Way::Size => format!(
            "{} mm bore and {} mm stroke",
            show::figures(bound.bore_stroke_mm.0, 3),
            show::figures(bound.bore_stroke_mm.1, 3)
        ),
        Way::Speed => format!("{} rpm", show::figures(bound.rpm, 3)),
    };
    let doubt = match bound.doubt {
        Doubt::Left => "with every number at its value",
        Doubt::Counted => "in nine cases of ten of what may be true",
    };
    let says = format!(
        "up to {size}, {} of steam, {doubt}",
        steam(bound.steam_kg_s)
    );
    page.paragraph("  - ", &says);
    let binds = match &bound.binds {
        Binds::Nothing => "nothing up to ten times the present engine".to_owned(),
        Binds::NoBalance => "above it the fire has no balance".to_owned(),
        Binds::Rules(rules) => rules
            .iter()
            .map(|(id, says)| format!("{id}: {}", first_sentence(says)))
            .collect::<Vec<_>>()
            .join("; "),
    };
    page.paragraph("    what binds: ", &binds);
}

/// The rest of a finding tells of the pressure, which is not asked here.
fn first_sentence(says: &str) -> &str {
    says.split_once(". ").map_or(says, |(first, _)| first)
}

fn steam(kg_s: f64) -> String {
    show::quantity(kg_s, &KG_PER_H, 3)
}

fn tell(found: &Largest) -> Value {
    let bounds: Vec<Value> = found
        .bounds
        .iter()
        .map(|bound| {
            json!({
                "way": match bound.way { Way::Size => "size", Way::Speed => "speed" },
                "doubt_counted": bound.doubt == Doubt::Counted,
                "share": bound.share,
                "bore_mm": bound.bore_stroke_mm.0,
                "stroke_mm": bound.bore_stroke_mm.1,
                "rpm": bound.rpm,
                "steam_kg_s": bound.steam_kg_s,
                "binds": binds(&bound.binds),
            })
        })
        .collect();
    json!({ "present_kg_s": found.present_kg_s, "bounds": bounds })
}

fn binds(binds: &Binds) -> Value {
    match binds {
        Binds::Nothing => Value::Null,
        Binds::NoBalance => json!([{ "rule": Value::Null, "says": "no balance" }]),
        Binds::Rules(rules) => rules
            .iter()
            .map(|(rule, says)| json!({ "rule": rule, "says": says }))
            .collect(),
    }
}
