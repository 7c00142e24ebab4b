//! What parts the plant is made of.

use plant::part::{Part, Shape};
use plant::{Plant, Resolved};
use reckoning::Verdict;
use reckoning::quantity::{KG, LITRE, MM, Quantity, show};

use crate::answer::{Judged, counted, worst};
use crate::check::PartTold;
use crate::question::{Answer, Question};
use crate::sentence::list;

/// The parts in words, those that are alike together.
pub(crate) fn told(resolved: &Resolved) -> Vec<PartTold> {
    resolved
        .plant
        .parts
        .iter()
        .map(|part| PartTold {
            id: part.id.clone(),
            says: says(part),
            mass_kg: resolved
                .plant
                .masses
                .iter()
                .find(|(id, _)| *id == part.id)
                .map(|(_, mass)| mass.value.si()),
        })
        .collect()
}

fn says(part: &Part) -> String {
    let kind = match &part.shape {
        Shape::Turned(_) => "turned",
        Shape::Plate(_) => "plate",
        Shape::Tube(_) => "tube",
        Shape::Shell(_) => "shell",
    };
    let metal = part.metal.as_deref().unwrap_or("metal not named");
    format!("{kind}, {metal}")
}

/// One sentence on the parts.
pub(crate) fn answer(resolved: &Resolved, judged: &[Judged]) -> Answer {
    let question = Question::Parts;
    let plant = &resolved.plant;
    let gaps: Vec<String> = resolved.gaps.iter().map(|gap| gap.field.clone()).collect();
    if plant.parts.is_empty() {
        return Answer {
            question,
            verdict: Some(Verdict::Unproved),
            sentence: format!(
                "No part can be worked out: the plan does not give {}.",
                list(&gaps)
            ),
        };
    }
    let wanting = if gaps.is_empty() {
        String::new()
    } else {
        format!(" Wanted to say more: {}.", list(&gaps))
    };
    let worst = worst(question, judged);
    let verdict = if gaps.is_empty() {
        worst
    } else {
        worst.max(Some(Verdict::Unproved))
    };
    Answer {
        question,
        verdict: verdict.or(Some(Verdict::Met)),
        sentence: format!(
            "{} parts{}; {}.{wanting}",
            plant.parts.len(),
            measured(plant),
            counted(question, judged)
        ),
    }
}

/// What is known of the plant as a whole: tubes, metal, water, height.
fn measured(plant: &Plant) -> String {
    let tubes = plant.nest.as_ref().map_or(String::new(), |nest| {
        format!(", {} fire tubes", nest.count.value)
    });
    let metal = plant.metal().map_or(String::new(), |mass| {
        format!(", {} of metal", show::quantity(mass.value.si(), &KG, 3))
    });
    let water = plant.water.as_ref().map_or(String::new(), |space| {
        format!(
            "; {} of water and {} of steam at working level",
            show::quantity(space.water.value.si(), &LITRE, 2),
            show::quantity(space.steam.value.si(), &LITRE, 2)
        )
    });
    let height = plant.outline.as_ref().and_then(|o| o.height.as_ref());
    let height = height.map_or(String::new(), |h| {
        format!("; {} high over all", show::quantity(h.value.si(), &MM, 3))
    });
    tubes + &metal + &water + &height
}
