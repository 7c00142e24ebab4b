//! `steamwright fire`: what the fire does at one pressure.

mod flame_json;
mod json;

use clap::Args;
use design::{Account, Asked, NoAccount, account};
use reckoning::quantity::{Gauge, Quantity, parse};
use std::path::PathBuf;

use super::files;
use super::page::{Page, capital};
use crate::output::{Answer, Failure};

/// What was asked.
#[derive(Args)]
pub(crate) struct Arguments {
    /// The plan file
    plan: PathBuf,
    /// Gauge pressure in the boiler (`3 bar`, `45 psi`); else the working pressure of the plan
    #[arg(long, value_name = "PRESSURE")]
    at: Option<String>,
    /// Show the working of every number
    #[arg(long)]
    working: bool,
}

/// Reads the plan and tells of its fire.
pub(crate) fn run(asked: &Arguments) -> Result<Answer, Failure> {
    let inputs = files::read(&asked.plan, None)?;
    files::readable(&inputs)?;
    let at = asked.at.as_deref().map(pressure).transpose()?;
    let resolved = plant::resolve(&inputs.plan);
    let told = Asked::of(&inputs.plan, &resolved.plant).unlit();
    let account = account((&inputs.plan, &resolved.plant), &told, at)
        .map_err(|why| refused(&asked.plan.display().to_string(), &why))?;
    let on_gas = told
        .on_gas
        .as_ref()
        .map(|on_gas| design::account((&inputs.plan, &resolved.plant), on_gas, at));
    let mut json = json::tell(&account);
    if let serde_json::Value::Object(keys) = &mut json {
        keys.insert("on_gas".to_owned(), json::on_gas(on_gas.as_ref()));
        keys.insert("problems".to_owned(), files::problems(&inputs.problems));
    }
    let mut words = files::faults(&inputs.problems);
    words.push_str(&tell(&account, asked));
    words.push_str(&tell_on_gas(on_gas.as_ref(), asked));
    Ok(Answer {
        words,
        json,
        code: 0,
    })
}

fn pressure(text: &str) -> Result<f64, Failure> {
    parse::read::<Gauge>(text)
        .map(|typed| typed.value.si())
        .map_err(|fault| Failure {
            says: format!("{text} is no gauge pressure"),
            faults: vec![fault.to_string()],
        })
}

fn refused(plan: &str, why: &NoAccount) -> Failure {
    let faults = match why {
        NoAccount::Wanted(fields) => fields.clone(),
        other => vec![other.to_string()],
    };
    Failure {
        says: format!("the fire of {plan} cannot be told"),
        faults,
    }
}

/// The same of the gas fire of a coal boiler, which may have no balance where coal has one.
fn tell_on_gas(on_gas: Option<&Result<Account, NoAccount>>, asked: &Arguments) -> String {
    match on_gas {
        None => String::new(),
        Some(Ok(account)) => format!("On gas\n\n{}", tell(account, asked)),
        Some(Err(why)) => {
            let mut out = Page::default();
            out.line("On gas");
            out.paragraph("  ", &format!("{}.", capital(&why.to_string())));
            out.text
        }
    }
}

fn tell(account: &Account, asked: &Arguments) -> String {
    let mut out = Page::default();
    for told in account.told() {
        out.line(told.head);
        for line in &told.lines {
            out.paragraph("  ", line);
        }
        out.blank();
    }
    if asked.working {
        out.line("Working");
        out.working(&account.working);
        for rule in &account.beside {
            out.working(&rule.working);
        }
        out.blank();
    }
    out.text
}
