//! `cargo xtask bless`: accepts what the program prints now as the snapshots to hold it to.
//!
//! Read the difference in git before committing it. Reference vectors are not blessed from our own output; they are
//! made by other people's programs (`cargo xtask vectors --write`).

use crate::process;
use crate::workspace::Workspace;

/// Runs every test with snapshots rewritten.
pub fn run(workspace: &Workspace, _rest: &[String]) -> Result<(), String> {
    eprintln!("Rewriting snapshots: help texts, printed results, and the digits in crates/vectors.");
    process::run(
        process::cargo(&workspace.root)
            .args(["test", "--workspace", "--quiet"])
            .env("INSTA_UPDATE", "always"),
    )?;
    eprintln!("Now read `git diff` before you commit it.");
    Ok(())
}
