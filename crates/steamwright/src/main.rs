//! The command line.
//!
//! One module a command under `command`. A command gives an answer in words and in JSON, or says
//! why it could not work; only `output` prints.

mod command;
mod output;

use clap::{Parser, Subcommand};
use std::process::ExitCode;

/// From "I want this engine to run so long at this pressure" to a tested steam plant.
#[derive(Parser)]
#[command(name = "steamwright", version)]
struct Arguments {
    #[command(subcommand)]
    command: Option<Command>,
    /// Answer in JSON, for other programs
    #[arg(long, global = true)]
    json: bool,
}

#[derive(Subcommand)]
enum Command {
    /// Check a plan: one sentence a question, worst first, then what was found
    Check(command::check::Arguments),
    /// Tell what the fire does at one pressure: heat, gas, draught, metal, how long it lasts
    Fire(command::fire::Arguments),
    /// List the published formulas, explain one, or work it
    Reckon(command::reckon::Arguments),
    /// Write the route cards of the turned fittings of a plan
    Card(command::card::Arguments),
    /// Draw a part of a plan, or the section of its boiler, in SVG on the standard output
    Draw(command::draw::Arguments),
    /// Find the largest engine that the boiler of a plan holds at working pressure, and what binds
    Largest(command::largest::Arguments),
    /// Make a whole plan of a beginning, with the reason of each choice
    Propose(command::propose::Arguments),
    /// Ask a second opinion on a round part by finite elements; it stands beside, never decides
    Stress(command::stress::Arguments),
}

fn main() -> ExitCode {
    let Arguments { command, json } = Arguments::parse();
    let answer = match &command {
        None => command::check::example(),
        Some(Command::Check(arguments)) => command::check::run(arguments),
        Some(Command::Fire(arguments)) => command::fire::run(arguments),
        Some(Command::Reckon(arguments)) => command::reckon::run(arguments),
        Some(Command::Card(arguments)) => command::card::run(arguments),
        Some(Command::Draw(arguments)) => command::draw::run(arguments),
        Some(Command::Largest(arguments)) => command::largest::run(arguments),
        Some(Command::Propose(arguments)) => command::propose::run(arguments),
        Some(Command::Stress(arguments)) => command::stress::run(arguments),
    };
    let form = if json {
        output::Form::Json
    } else {
        output::Form::Words
    };
    output::finish(answer, form)
}
