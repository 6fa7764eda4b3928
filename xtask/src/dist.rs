//! `cargo xtask dist`: builds the program as it is handed out.

use crate::process;
use crate::workspace::Workspace;

/// Builds `target/release/evenswath` with all there is, the engine for PDF files included.
pub fn run(workspace: &Workspace, _rest: &[String]) -> Result<(), String> {
    let build = ["build", "--release", "--package", "cli", "--features", "pdf"];
    process::run(process::cargo(&workspace.root).args(build))?;
    let name = format!("evenswath{}", std::env::consts::EXE_SUFFIX);
    let program = workspace.target.join("release").join(name);
    if !program.is_file() {
        return Err(format!("built, but {} is not there", program.display()));
    }
    println!("{}", program.display());
    Ok(())
}
