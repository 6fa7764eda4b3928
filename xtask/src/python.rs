//! The Python that makes reference vectors and runs reference benches, in a folder of its own under `target`.

use std::path::{Path, PathBuf};
use std::process::Command;

use crate::process;
use crate::steps::Outcome;
use crate::workspace::Workspace;

/// The packages that the scripts need, each with its exact version.
const REQUIREMENTS: &str = "tools/requirements.txt";

/// The oldest Python that those packages run on.
const OLDEST: (u32, u32) = (3, 11);

/// Why there is no Python to run the scripts with.
pub enum Unready {
    /// This machine has none, or only a part: what is missing and how to get it.
    Missing(String),
    /// It is there, and setting up failed.
    Broken(String),
}

impl From<Unready> for Outcome {
    fn from(unready: Unready) -> Outcome {
        match unready {
            Unready::Missing(why) => Outcome::Skipped(why),
            Unready::Broken(message) => Outcome::Failed(message),
        }
    }
}

impl From<Unready> for String {
    fn from(unready: Unready) -> String {
        let (Unready::Missing(words) | Unready::Broken(words)) = unready;
        words
    }
}

/// A Python with the packages of `tools/requirements.txt`; made on first use, and again when that file changes.
pub fn ready(workspace: &Workspace) -> Result<PathBuf, Unready> {
    let wanted = std::fs::read_to_string(workspace.root.join(REQUIREMENTS)).unwrap_or_default();
    let folder = workspace.target.join("venv");
    let python = program_in(&folder);
    let stamp = folder.join("requirements-installed.txt");
    if python.is_file() && std::fs::read_to_string(&stamp).is_ok_and(|text| text == wanted) {
        return Ok(python);
    }
    set_up(&workspace.root, &folder, &wanted)?;
    std::fs::write(&stamp, wanted)
        .map_err(|error| Unready::Broken(format!("cannot write {}: {error}", stamp.display())))?;
    Ok(python)
}

/// The scripts in a folder, in order of name. Those that begin with `_` are parts of others.
pub fn scripts(folder: &Path) -> Vec<PathBuf> {
    let Ok(entries) = std::fs::read_dir(folder) else {
        return Vec::new();
    };
    let mut scripts: Vec<PathBuf> = entries
        .flatten()
        .map(|entry| entry.path())
        .filter(|path| path.extension().is_some_and(|extension| extension == "py"))
        .filter(|path| !name(path).starts_with('_'))
        .collect();
    scripts.sort();
    scripts
}

fn set_up(root: &Path, folder: &Path, wanted: &str) -> Result<(), Unready> {
    let Some(system) = find() else {
        let (major, minor) = OLDEST;
        return Err(Unready::Missing(format!(
            "no Python {major}.{minor} or newer here; get it from https://www.python.org or your system's packages"
        )));
    };
    if !process::works(Command::new(system).args(["-c", "import venv, ensurepip"])) {
        return Err(Unready::Missing(format!(
            "{system} cannot make environments; on Debian and Ubuntu `apt install python3-venv` mends it"
        )));
    }
    eprintln!(
        "Installing a Python environment for the reference scripts in {} with the packages of {REQUIREMENTS}.\n\
         Nothing outside that folder is changed, pip's own cache aside.",
        folder.display()
    );
    process::run(Command::new(system).args(["-m", "venv", "--clear"]).arg(folder))
        .map_err(Unready::Broken)?;
    if wanted.trim().is_empty() {
        return Ok(());
    }
    process::run(
        Command::new(program_in(folder))
            .args(["-m", "pip", "install", "--quiet", "--disable-pip-version-check"])
            .args(["--requirement", REQUIREMENTS])
            .current_dir(root),
    )
    .map_err(Unready::Broken)
}

fn find() -> Option<&'static str> {
    let test = format!("import sys; sys.exit(sys.version_info < {OLDEST:?})");
    // Windows has no `python3`, or one that only opens a shop; there `python` or the launcher `py` is the real one.
    ["python3", "python", "py"]
        .into_iter()
        .find(|name| process::works(Command::new(name).args(["-c", &test])))
}

fn program_in(folder: &Path) -> PathBuf {
    if cfg!(windows) { folder.join("Scripts").join("python.exe") } else { folder.join("bin").join("python") }
}

fn name(path: &Path) -> String {
    path.file_name().unwrap_or_default().to_string_lossy().into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn scripts_come_in_order_and_without_their_parts() {
        let folder = std::env::temp_dir().join(format!("xtask-scripts-{}", std::process::id()));
        std::fs::create_dir_all(&folder).unwrap();
        for file in ["b.py", "a.py", "_shared.py", "notes.md"] {
            std::fs::write(folder.join(file), "").unwrap();
        }
        let found: Vec<String> = scripts(&folder).iter().map(|path| name(path)).collect();
        std::fs::remove_dir_all(&folder).unwrap();
        assert_eq!(found, ["a.py", "b.py"]);
    }

    #[test]
    fn no_folder_means_no_scripts() {
        assert!(scripts(Path::new("no such folder")).is_empty());
    }
}
