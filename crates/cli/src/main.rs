//! The command `evenswath`: everything that can be computed, for scripts and for people.
//!
//! Standard output carries the answer and nothing else; notes and errors go to standard error.

mod args;
mod command;
mod error;
mod out;

use std::ffi::OsString;
use std::process::ExitCode;

use words::Words;

fn main() -> ExitCode {
    let typed = args::typed();
    let language = args::language(&typed);
    std::panic::set_hook(Box::new(move |panic| error::fault(&Words::of(language), &panic.to_string())));
    ExitCode::from(guarded(|| run(typed)))
}

/// A fault of ours must not look like an answer or like a mistake of the user's.
fn guarded(work: impl FnOnce() -> u8 + std::panic::UnwindSafe) -> u8 {
    std::panic::catch_unwind(work).unwrap_or(error::FAULT)
}

fn run(typed: Vec<OsString>) -> u8 {
    let before = Words::of(args::language(&typed));
    let cli = match args::read(typed, &before) {
        Ok(cli) => cli,
        Err(status) => return status,
    };
    // Most people read as most do; the words are then at hand already.
    let reader = cli.reader();
    let words = if reader == before.reader() { before } else { Words::new(reader) };
    match command::run(&cli, &words) {
        Ok(answer) => answer.print(&cli, &words),
        Err(error) => error.print(&words),
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
