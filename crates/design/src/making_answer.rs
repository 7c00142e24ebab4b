//! In what order the turned parts are made.

use crate::answer::{Judged, Standing, counted, worst};
use crate::bench::Bench;
use crate::question::{Answer, Question};
use crate::sentence::list;

/// The findings on every card and drawing.
pub(crate) fn judged(benches: &[Bench]) -> Vec<Judged> {
    benches
        .iter()
        .flat_map(|bench| {
            let card = bench.card.as_ref().map_or(&[][..], |card| &card.findings);
            bench.drawing.iter().chain(card).map(|finding| {
                let mut finding = finding.clone();
                if !crate::answer::lies_in(&finding.place, &bench.id) {
                    finding.place = format!("{}.{}", bench.id, finding.place);
                }
                Judged {
                    question: Question::Making,
                    standing: Standing::Leads,
                    finding,
                }
            })
        })
        .collect()
}

/// One sentence on the cards.
pub(crate) fn answer(benches: &[Bench], judged: &[Judged]) -> Answer {
    let question = Question::Making;
    if benches.is_empty() {
        return Answer {
            question,
            verdict: None,
            sentence: "The plan names no turned part.".to_owned(),
        };
    }
    let carded = benches.iter().filter(|b| b.card.is_ok()).count();
    let without: Vec<String> = benches
        .iter()
        .filter_map(|b| {
            let why = b.card.as_ref().err()?;
            Some(format!("{} ({why})", b.id))
        })
        .collect();
    let without = if without.is_empty() {
        String::new()
    } else {
        format!(" Without a card: {}.", list(&without))
    };
    let of_cards = benches.iter().map(Bench::verdict).max();
    Answer {
        question,
        verdict: worst(question, judged).max(of_cards),
        sentence: format!(
            "{carded} of {} turned parts {} a card whose order stands up to its rules; {}.{without}",
            benches.len(),
            if carded == 1 { "has" } else { "have" },
            counted(question, judged)
        ),
    }
}
