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
    std::panic::set_hook(Box::new(|panic| error::fault(&panic.to_string())));
    ExitCode::from(guarded(|| run(&args::Cli::parse_from(args::typed()))))
}

/// A fault of ours must not look like an answer or like a mistake of the user's.
fn guarded(work: impl FnOnce() -> u8 + std::panic::UnwindSafe) -> u8 {
    std::panic::catch_unwind(work).unwrap_or(error::FAULT)
}

fn run(cli: &args::Cli) -> u8 {
    let outcome = command::run(cli);
    match outcome {
        Ok(answer) => answer.print(cli),
        Err(error) => error.print(),
    }
}

#[cfg(test)]
mod tests {
    use super::{error, guarded};

    #[test]
    fn a_fault_of_ours_has_a_status_of_its_own() {
        assert_eq!(guarded(|| panic!("a fault made for this test")), error::FAULT);
        assert_eq!(guarded(|| error::INPUT), error::INPUT);
    }
}
