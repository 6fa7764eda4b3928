//! `cargo xtask`: everything done to this repository, the same on a laptop and in CI.
//!
//! This file only finds the command and prints the help. Each command is a file of its own beside it.
#![allow(
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "a command-line tool: results go to standard output, what it is doing to standard error"
)]

mod accuracy;
mod app;
mod apt;
mod bench;
mod bless;
mod browser;
mod check;
mod dist;
mod floors;
mod pdf;
mod process;
mod python;
mod run;
mod steps;
mod test;
mod tidy;
mod vectors;
mod wasm;
mod workspace;

use std::process::ExitCode;

use workspace::Workspace;

/// A command: its name, what it does in one line, and the function that does it.
struct Command {
    name: &'static str,
    does: &'static str,
    action: fn(&Workspace, &[String]) -> Result<(), String>,
}

const COMMANDS: &[Command] = &[
    Command {
        name: "run",
        does: "check the demo visit, and open the app on a demo notebook (`run check ARGUMENTS`: the first alone)",
        action: run::run,
    },
    Command {
        name: "test",
        does: "everything CI runs: tidy, all tests, Python-made vectors, the wasm comparison, the browser",
        action: test::run,
    },
    Command {
        name: "check",
        does: "the quick form for every few minutes: tidy and the unit tests",
        action: check::run,
    },
    Command {
        name: "tidy",
        does: "formatting, lints, docs, floors, purity, headers, sources, licences, ARCHITECTURE.md",
        action: tidy::run,
    },
    Command {
        name: "bench",
        does: "the benches, beside the Python reference where there is one",
        action: bench::run,
    },
    Command {
        name: "accuracy",
        does: "how often verdicts are right, on simulated sprayers (--write keeps the tables)",
        action: accuracy::run,
    },
    Command {
        name: "vectors",
        does: "make the reference vectors again and compare with those kept (--write replaces them)",
        action: vectors::run,
    },
    Command {
        name: "bless",
        does: "accept what the program prints now as the snapshots to hold it to",
        action: bless::run,
    },
    Command {
        name: "app",
        does: "build the app for browsers into target/app (--quick: sooner, and larger)",
        action: app::run,
    },
    Command { name: "dist", does: "build target/release/evenswath with everything in it", action: dist::run },
    Command {
        name: "pdf",
        does: "build the engine that sets PDF files, and test every sheet set by it",
        action: pdf::run,
    },
    Command {
        name: "wasm",
        does: "build the pure crates for WebAssembly and compare their digits with the native ones",
        action: wasm::run,
    },
    Command {
        name: "browser",
        does: "in a real browser: every sheet measured, the notebook's store killed, filled and read again",
        action: browser::run,
    },
];

fn main() -> ExitCode {
    let mut words = std::env::args().skip(1);
    let name = words.next().unwrap_or_default();
    let rest: Vec<String> = words.collect();

    if matches!(name.as_str(), "help" | "--help" | "-h") {
        println!("{}", help());
        return ExitCode::SUCCESS;
    }
    let Some(command) = COMMANDS.iter().find(|command| command.name == name) else {
        if !name.is_empty() {
            eprintln!("no command is called `{name}`\n");
        }
        eprintln!("{}", help());
        return ExitCode::from(2);
    };
    match Workspace::read().and_then(|workspace| (command.action)(&workspace, &rest)) {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("\ncargo xtask {name}: {message}");
            ExitCode::FAILURE
        }
    }
}

fn help() -> String {
    let mut text = String::from("cargo xtask <command>\n");
    for command in COMMANDS {
        text.push_str(&format!("\n  {:<8} {}", command.name, command.does));
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn help_names_every_command_once() {
        let text = help();
        for command in COMMANDS {
            let lines = text.lines().filter(|line| line.split_whitespace().next() == Some(command.name));
            assert_eq!(lines.count(), 1, "{}", command.name);
        }
    }
}
