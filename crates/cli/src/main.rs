//! The command `evenswath`: everything that can be computed, for scripts and for people.
//!
//! Standard output carries the answer and nothing else; notes and errors go to standard error.

mod args;
mod command;
mod error;
mod out;

use std::process::ExitCode;

use clap::Parser;

fn main() -> ExitCode {
    // A fault of ours must not look like an answer or like a mistake of the user's.
    match std::panic::catch_unwind(|| run(&args::Cli::parse())) {
        Ok(code) => ExitCode::from(code),
        Err(_) => ExitCode::from(error::FAULT),
    }
}

fn run(cli: &args::Cli) -> u8 {
    let outcome = command::run(cli);
    match outcome {
        Ok(answer) => answer.print(cli),
        Err(error) => error.print(),
    }
}
