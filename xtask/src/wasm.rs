//! `cargo xtask wasm`: the pure crates build for WebAssembly and give the same digits there.
//!
//! The crate `vectors` computes one list of numbers over the public calculations. It is built natively and for
//! WebAssembly; a program of the same crate runs both and compares bit for bit. `cargo xtask wasm --page CRATE` makes one
//! crate a module for browsers instead.

mod debian;
pub mod page;
mod toolchain;

use std::path::Path;

use crate::floors;
use crate::process;
use crate::steps::Outcome;
use crate::workspace::Workspace;

use page::{Build, Page, Part};
use toolchain::TARGET;
pub use toolchain::Toolchain;

const HOW: &str = "nothing more, or --page CRATE, or --page CRATE --quick";

/// Builds and compares. Here a machine that cannot is an error.
pub fn run(workspace: &Workspace, rest: &[String]) -> Result<(), String> {
    if let Some((flag, rest)) = rest.split_first() {
        return if flag == "--page" { make(workspace, rest) } else { Err(HOW.to_owned()) };
    }
    match compare(workspace) {
        Outcome::Passed => Ok(()),
        Outcome::Skipped(message) | Outcome::Failed(message) => Err(message),
    }
}

/// Makes a crate's library a module for browsers, in a folder of its own under `target/pages`.
fn make(workspace: &Workspace, words: &[String]) -> Result<(), String> {
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let (package, build) = match words.as_slice() {
        [package] => (*package, Build::Small),
        [package, "--quick"] => (*package, Build::Quick),
        _ => return Err(HOW.to_owned()),
    };
    let toolchain = Toolchain::find_or_install(&workspace.root)?;
    eprintln!("WebAssembly by {}", toolchain.name());
    let folder = workspace.target.join("pages").join(package);
    let files = Page { package, part: Part::Library, build }.build(&toolchain, workspace, &folder)?;
    eprintln!("{} loads {}", files.script.display(), files.module.display());
    Ok(())
}

/// Builds and compares if this machine can, or may be made to; otherwise says why not.
pub fn compare(workspace: &Workspace) -> Outcome {
    match Toolchain::find_or_install(&workspace.root) {
        Ok(toolchain) => with(&toolchain, workspace).into(),
        Err(why) => Outcome::Skipped(why),
    }
}

fn with(toolchain: &Toolchain, workspace: &Workspace) -> Result<(), String> {
    eprintln!("WebAssembly by {}", toolchain.name());
    build_pure_crates(toolchain, workspace)?;
    if !workspace.has("vectors") {
        return Err("the crate `vectors`, which compares the digits, is not there".to_owned());
    }
    process::run(toolchain.cargo(&workspace.root).arg("rustc").args(toolchain.flags()).args([
        "--release",
        "--package",
        "vectors",
        "--lib",
        "--crate-type",
        "cdylib",
    ]))?;
    let module = workspace.target.join(TARGET).join("release").join("vectors.wasm");
    run_both(&workspace.root, &module)
}

fn build_pure_crates(toolchain: &Toolchain, workspace: &Workspace) -> Result<(), String> {
    let pure = workspace.crates.iter().filter(|package| floors::is_pure(&package.name));
    let packages = pure.flat_map(|package| ["--package", package.name.as_str()]);
    process::run(
        toolchain
            .cargo(&workspace.root)
            .arg("build")
            .args(toolchain.flags())
            .args(["--release", "--lib"])
            .args(packages),
    )
}

fn run_both(root: &Path, module: &Path) -> Result<(), String> {
    process::run(
        process::cargo(root)
            .args(["run", "--quiet", "--package", "vectors", "--features", "compare"])
            .args(["--bin", "compare", "--"])
            .arg(module),
    )
}
