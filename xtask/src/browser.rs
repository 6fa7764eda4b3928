//! `cargo xtask browser`: the sheets measured, and the notebook's store tested, in a real browser.
//!
//! An example of the crate `report` writes every sheet of the sample visits into `target/sheets`; the programs in
//! `tools/browser` open them in a browser of the Chromium family, print them, look at them as screens of several widths
//! show them, and say what is wrong. What they printed stays in that folder to be looked at.

mod setup;
mod shell;
mod store;

use std::path::{Path, PathBuf};
use std::process::Command;

pub use shell::measure as measure_shell;
pub use store::test as test_store;

use crate::process;
use crate::steps::Outcome;
use crate::workspace::Workspace;

/// The visits whose sheets are measured, and the demo.
const VISITS: &str = "crates/report/tests/visits";
const DEMO: &str = "demo/willow-bend.toml";
/// The measuring programs.
const TOOLS: &str = "tools/browser";

/// Which sheets are measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Sheets {
    /// All there are.
    Every,
    /// Those that ask most of a page, so that a run of all tests stays quick.
    Demanding,
}

/// Measures every sheet and tests the store and what stands around the app, or one of the three. Here a machine that cannot is
/// an error.
pub fn run(workspace: &Workspace, rest: &[String]) -> Result<(), String> {
    let rest: Vec<&str> = rest.iter().map(String::as_str).collect();
    let parts: &[fn(&Workspace) -> Outcome] = match rest.as_slice() {
        [] => &[measure_every, store::test, shell::measure],
        ["sheets"] => &[measure_every],
        ["store"] => &[store::test],
        ["app"] => &[shell::measure],
        _ => return Err("nothing more, or one of `sheets`, `store`, `app`".to_owned()),
    };
    let mut wrong = Vec::new();
    for part in parts {
        if let Outcome::Skipped(message) | Outcome::Failed(message) = part(workspace) {
            wrong.push(message);
        }
    }
    if wrong.is_empty() { Ok(()) } else { Err(wrong.join("\n")) }
}

fn measure_every(workspace: &Workspace) -> Outcome {
    measure_these(workspace, Sheets::Every)
}

/// Measures the most demanding sheets if this machine can, or may be made to; otherwise says why not.
pub fn measure(workspace: &Workspace) -> Outcome {
    measure_these(workspace, Sheets::Demanding)
}

fn measure_these(workspace: &Workspace, which: Sheets) -> Outcome {
    match setup::browser() {
        Ok(browser) => with(workspace, &browser, which).into(),
        Err(why) => Outcome::Skipped(why),
    }
}

fn with(workspace: &Workspace, browser: &Path, which: Sheets) -> Result<(), String> {
    eprintln!("The browser is {}", browser.display());
    let tools = workspace.root.join(TOOLS);
    setup::libraries(&tools)?;
    let sheets = workspace.target.join("sheets");
    write_sheets(workspace, &sheets)?;
    process::run(
        Command::new("node")
            .args(["--test", "--test-reporter=spec", "sheets.test.mjs"])
            .current_dir(&tools)
            .env("EVENSWATH_CHROMIUM", browser)
            .env("EVENSWATH_SHEETS", &sheets)
            .env("EVENSWATH_EVERY_SHEET", if which == Sheets::Every { "1" } else { "" }),
    )?;
    eprintln!("The printed sheets stand in {}", sheets.display());
    Ok(())
}

/// Writes every sheet of every sample visit, each visit's in a folder of its own.
fn write_sheets(workspace: &Workspace, sheets: &Path) -> Result<(), String> {
    let mut visits = visits(&workspace.root.join(VISITS))?;
    visits.push(workspace.root.join(DEMO));
    process::run(process::cargo(&workspace.root).args([
        "build",
        "--quiet",
        "--package",
        "report",
        "--example",
        "sheets",
    ]))?;
    let name = if cfg!(windows) { "sheets.exe" } else { "sheets" };
    let program = workspace.target.join("debug").join("examples").join(name);
    if sheets.exists() {
        std::fs::remove_dir_all(sheets)
            .map_err(|error| format!("cannot empty {}: {error}", sheets.display()))?;
    }
    for visit in visits {
        let own = sheets.join(visit.file_stem().unwrap_or_default());
        process::output_of(Command::new(&program).arg(&visit).arg(&own))
            .map_err(|message| format!("{}: {message}", visit.display()))?;
    }
    Ok(())
}

/// The visit files of a folder, in order of name.
fn visits(folder: &Path) -> Result<Vec<PathBuf>, String> {
    let entries =
        std::fs::read_dir(folder).map_err(|error| format!("cannot read {}: {error}", folder.display()))?;
    let files = entries.flatten().map(|entry| entry.path());
    let mut visits: Vec<PathBuf> =
        files.filter(|path| path.extension().is_some_and(|ending| ending == "toml")).collect();
    visits.sort();
    Ok(visits)
}
