//! `cargo xtask dist`: builds the program as it is handed out.

use crate::app;
use crate::process;
use crate::wasm::Toolchain;
use crate::wasm::page::Build;
use crate::workspace::Workspace;

/// Builds `target/release/evenswath` with all there is: the engine for PDF files, and the app for whoever it serves.
pub fn run(workspace: &Workspace, _rest: &[String]) -> Result<(), String> {
    let mut build = process::cargo(&workspace.root);
    build.args(["build", "--release", "--package", "cli", "--features"]);
    match Toolchain::find_or_install(&workspace.root) {
        Ok(toolchain) => {
            let app = app::build(workspace, &toolchain, Build::Small)?;
            build.arg("pdf,app").env(app::WITHIN, app);
        }
        Err(why) => {
            eprintln!("LEFT OUT: the app, which `serve` and `app export` have none of then: {why}");
            build.arg("pdf");
        }
    }
    process::run(&mut build)?;
    let name = format!("evenswath{}", std::env::consts::EXE_SUFFIX);
    let program = workspace.target.join("release").join(name);
    if !program.is_file() {
        return Err(format!("built, but {} is not there", program.display()));
    }
    println!("{}", program.display());
    Ok(())
}
