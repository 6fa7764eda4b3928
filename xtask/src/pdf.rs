//! `cargo xtask pdf`: builds the engine that sets PDF files and tests it: every sheet, and the command that writes one.
//!
//! The engine takes minutes to build and runs ten times slower without optimisation, so it is built for release here and
//! not in the everyday build.

use crate::process;
use crate::workspace::Workspace;

/// Builds and tests.
pub fn run(workspace: &Workspace, _rest: &[String]) -> Result<(), String> {
    test(workspace)
}

/// The same, as a step of the tests.
pub fn test(workspace: &Workspace) -> Result<(), String> {
    eprintln!("Building the engine that sets PDF files; the first time this takes some minutes.");
    let engine: &[&str] = &["--package", "report-pdf", "--features", "engine"];
    let command: &[&str] = &["--package", "cli", "--features", "pdf", "--test", "sheets"];
    for what in [engine, command] {
        let mut tests = process::cargo(&workspace.root);
        process::run(tests.args(["test", "--release"]).args(what).env("INSTA_UPDATE", "no"))?;
    }
    Ok(())
}
