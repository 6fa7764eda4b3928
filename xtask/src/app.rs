//! `cargo xtask app`: the app as it is served, in `target/app`.
//!
//! The crate `web` is built for WebAssembly and bound (`wasm/page.rs`), and the program `app-files` makes the folder out of
//! that, `crates/web/page`, the words and the type. What is there already and still right is not made again.

pub mod stamp;

use std::path::{Path, PathBuf};
use std::process::Stdio;

use crate::process;
use crate::wasm::Toolchain;
use crate::wasm::page::{Build, Page, Part};
use crate::workspace::Workspace;

/// The crate that is the app.
const CRATE: &str = "web";
/// Where the build of the crate `cli` looks for the app that it puts into the program.
pub const WITHIN: &str = "EVENSWATH_APP";
/// What stands around it.
pub const PAGE: &str = "crates/web/page";
/// The type of the pages.
const FONTS: &str = "crates/figures/fonts";
/// The words that the app says.
const LOCALES: &str = "crates/words/locales";
/// What names and presses the files.
const MAKER: &str = "xtask/src/bin/app-files";

/// Builds the app and prints its folder.
pub fn run(workspace: &Workspace, rest: &[String]) -> Result<(), String> {
    let rest: Vec<&str> = rest.iter().map(String::as_str).collect();
    let how = match rest.as_slice() {
        [] => Build::Small,
        ["--quick"] => Build::Quick,
        _ => return Err("nothing more, or --quick: built sooner, and ten times as large".to_owned()),
    };
    let toolchain = Toolchain::find_or_install(&workspace.root)?;
    println!("{}", build(workspace, &toolchain, how)?.display());
    Ok(())
}

/// Builds the app. Gives back its folder.
pub fn build(workspace: &Workspace, toolchain: &Toolchain, how: Build) -> Result<PathBuf, String> {
    eprintln!("WebAssembly by {}", toolchain.name());
    let page = page(how);
    let module = page.compile(toolchain, workspace)?;
    let folder = workspace.target.join("app");
    let sources = [PAGE, FONTS, LOCALES, MAKER].map(|path| workspace.root.join(path));
    let stamp = stamp::of(&module, &sources)?;
    let kept = workspace.target.join("app.stamp");
    if std::fs::read_to_string(&kept).is_ok_and(|text| text == stamp) && folder.join("index.html").is_file() {
        eprintln!("{} is as it was built", folder.display());
        return Ok(folder);
    }
    page.bind(&module, workspace, &bound(workspace))?;
    finish(workspace, &workspace.root.join(PAGE), &folder)?;
    std::fs::write(&kept, stamp).map_err(|error| format!("cannot write {}: {error}", kept.display()))?;
    Ok(folder)
}

/// Builds what takes long and says nothing of it, for whoever has something else to do meanwhile: this and what is built
/// into another folder of cargo's do not wait for each other. What goes wrong, [`build`] meets again and tells.
pub fn begin(workspace: &Workspace, toolchain: &Toolchain, how: Build) {
    let mut command = page(how).command(toolchain, &workspace.root);
    let quiet = command.env("CARGO_TERM_QUIET", "true").stdout(Stdio::null()).stderr(Stdio::null());
    let _ = quiet.status();
}

/// Builds the programs that [`build`] runs, each as it is asked for there.
pub fn tools(workspace: &Workspace) -> Result<(), String> {
    for (feature, program) in [("bindgen", "bindgen"), ("app", "app-files")] {
        let build = ["build", "--quiet", "--package", "xtask", "--features", feature, "--bin", program];
        process::run(process::cargo(&workspace.root).args(build))?;
    }
    Ok(())
}

/// The app as a crate that runs in a browser.
fn page(build: Build) -> Page<'static> {
    Page { package: CRATE, part: Part::Program, build }
}

/// Makes the folder of the app out of what was bound last and of a page that stands around it.
pub fn finish(workspace: &Workspace, page: &Path, folder: &Path) -> Result<(), String> {
    process::run(
        process::cargo(&workspace.root)
            .args(["run", "--quiet", "--package", "xtask", "--features", "app", "--bin", "app-files", "--"])
            .arg(bound(workspace))
            .arg(page)
            .arg(workspace.root.join(FONTS))
            .arg(workspace.root.join(LOCALES))
            .arg(folder),
    )
}

/// Where the bound module lies.
fn bound(workspace: &Workspace) -> PathBuf {
    workspace.target.join("pages").join(CRATE)
}
