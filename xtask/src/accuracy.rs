//! `cargo xtask accuracy`: how often verdicts are right, held to simulated sprayers.
//!
//! Builds the tool in `crates/accuracy` for release and runs it; it prints its tables, and with `--write` keeps them in
//! `accuracy/TABLES.md` and `accuracy/DIAGNOSES.md`; `verdicts` or `diagnoses` makes one of the two. Some minutes on two cores. A bar that is missed is marked there, and is no failure here: `test`
//! holds the bars with smaller runs.

use crate::process;
use crate::workspace::Workspace;

/// Runs the tool; arguments are passed on.
pub fn run(workspace: &Workspace, rest: &[String]) -> Result<(), String> {
    process::run(
        process::cargo(&workspace.root)
            .args(["run", "--release", "--quiet", "--package", "accuracy", "--bin", "accuracy", "--"])
            .args(rest),
    )
}
