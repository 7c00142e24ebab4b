//! The command line.

mod command;

use clap::{Parser, Subcommand};
use std::process::ExitCode;

/// From "I want this engine to run so long at this pressure" to a tested steam plant.
#[derive(Parser)]
#[command(name = "steamwright", version)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// List the published formulas.
    Reckon(command::reckon::Arguments),
}

fn main() -> ExitCode {
    match Arguments::parse().command {
        Command::Reckon(arguments) => command::reckon::run(&arguments),
    }
}
