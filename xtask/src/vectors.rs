//! `cargo xtask vectors`: the numbers that other people's libraries give, which our tests are held to.
//!
//! Each script in `tools/vectors` makes one file of numbers. With `--check` it makes them again and compares with the
//! file in the repository; without, it replaces the file. A last script works the published check values out again.

use std::process::Command;

use crate::process;
use crate::python;
use crate::steps::Outcome;
use crate::workspace::Workspace;

const FOLDER: &str = "tools/vectors";

/// Only compares: its numbers were copied from publications, not made.
const CHECK_VALUES: &str = "tools/check_values.py";

/// Compares, or with `--write` replaces, the vectors. Here what is missing is an error.
pub fn run(workspace: &Workspace, rest: &[String]) -> Result<(), String> {
    let mode = match rest {
        [] => Mode::Compare,
        [one] if one == "--write" => Mode::Write,
        other => return Err(format!("does not know `{}`; it takes --write or nothing", other.join(" "))),
    };
    match each_script(workspace, mode) {
        Outcome::Passed => Ok(()),
        Outcome::Skipped(message) | Outcome::Failed(message) => Err(message),
    }
}

/// Compares the vectors if this machine can; otherwise says why not.
pub fn compare(workspace: &Workspace) -> Outcome {
    each_script(workspace, Mode::Compare)
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Mode {
    Compare,
    Write,
}

fn each_script(workspace: &Workspace, mode: Mode) -> Outcome {
    let mut scripts = python::scripts(&workspace.root.join(FOLDER));
    let check_values = workspace.root.join(CHECK_VALUES);
    if mode == Mode::Compare && check_values.is_file() {
        scripts.push(check_values);
    }
    if scripts.is_empty() {
        return Outcome::Skipped(format!("there are no scripts in {FOLDER}"));
    }
    let python = match python::ready(workspace) {
        Ok(python) => python,
        Err(unready) => return unready.into(),
    };
    let mut failed = Vec::new();
    for script in scripts {
        let mut command = Command::new(&python);
        command.arg(&script).current_dir(&workspace.root);
        if mode == Mode::Compare {
            command.arg("--check");
        }
        if let Err(message) = process::run(&mut command) {
            failed.push(message);
        }
    }
    if failed.is_empty() { Outcome::Passed } else { Outcome::Failed(failed.join("; ")) }
}
