//! `cargo xtask run`: builds the program and checks the demo visit with it.

use crate::process;
use crate::workspace::Workspace;

/// The visit of an invented farm that a newcomer sees first.
const DEMO: &str = "demo/willow-bend.toml";

/// Builds and runs `evenswath visit check` on the demo; more arguments are passed on.
pub fn run(workspace: &Workspace, rest: &[String]) -> Result<(), String> {
    eprintln!(
        "Building the command `evenswath` and checking the demo visit {DEMO} with it.\n\
         The first build fetches the libraries named in Cargo.lock into cargo's own folder and writes to\n\
         {}; nothing else on this machine is changed.",
        workspace.target.display()
    );
    process::run(
        process::cargo(&workspace.root)
            .args(["run", "--quiet", "--package", "cli", "--bin", "evenswath", "--"])
            .args(["visit", "check", DEMO])
            .args(rest),
    )
}
