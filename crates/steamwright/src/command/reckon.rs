//! `steamwright reckon`: any published formula, asked alone.

use clap::Args;
use std::process::ExitCode;

/// What was asked.
#[derive(Args)]
pub(crate) struct Arguments {}

pub(crate) fn run(_: &Arguments) -> ExitCode {
    for card in formulas::register::cards() {
        println!("{}  {}", card.id, card.gives.meaning);
    }
    ExitCode::SUCCESS
}
