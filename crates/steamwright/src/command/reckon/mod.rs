//! `steamwright reckon`: any published formula, asked alone.

mod ask;
mod json;
mod words;

use crate::output::{Answer, Failure};
use clap::Args;
use formulas::register;
use reckoning::known::Given;
use reckoning::{Breach, Card, Ref, Working};
use serde_json::Value;

/// What was asked.
#[derive(Args)]
pub(crate) struct Arguments {
    /// Name of a formula, for instance vessel.shell-wall; without it, all are listed
    name: Option<String>,
    /// A symbol with its quantity, for instance P="80 psi"; without any, the formula is explained
    #[arg(value_name = "SYMBOL=QUANTITY", requires = "name")]
    given: Vec<String>,
}

/// A formula worked on quantities as typed.
struct Answered {
    card: &'static Card,
    /// Symbol by symbol: value in SI and the text as typed.
    inputs: Vec<(f64, String)>,
    working: Working,
    result: Ref,
    breaches: Vec<Breach>,
}

/// Lists, explains or works.
pub(crate) fn run(asked: &Arguments) -> Result<Answer, Failure> {
    let Some(name) = &asked.name else {
        let cards: Vec<&'static Card> = register::cards().collect();
        return Ok(answer(words::list(&cards), json::list(&cards)));
    };
    let card = register::find(name).ok_or_else(|| ask::unknown_card(name))?;
    if asked.given.is_empty() && !card.takes.is_empty() {
        return Ok(answer(words::explain(card), json::explain(card)));
    }
    let answered = work(card, ask::inputs(card, &asked.given)?)?;
    Ok(answer(words::worked(&answered), json::worked(&answered)))
}

fn answer(words: String, json: Value) -> Answer {
    Answer {
        words,
        json,
        code: 0,
    }
}

fn work(card: &'static Card, inputs: Vec<(f64, String)>) -> Result<Answered, Failure> {
    let mut working = Working::new();
    let lines: Vec<Ref> = card
        .takes
        .iter()
        .zip(&inputs)
        .map(|(symbol, (si, typed))| {
            let given = Given::Plan {
                field: symbol.name.to_owned(),
                typed: typed.clone(),
            };
            working.know_si(symbol.name, symbol.meaning, symbol.unit, *si, given)
        })
        .collect();
    let result = working.worked(card, &lines).map_err(|refused| Failure {
        says: format!("{} cannot be worked on these quantities:", card.id),
        faults: vec![refused.to_string()],
    })?;
    let breaches = working.breaches().cloned().collect();
    Ok(Answered {
        card,
        inputs,
        working,
        result,
        breaches,
    })
}
