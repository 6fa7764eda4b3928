//! What measuring in a browser needs: Node.js with npm, a browser, and the libraries of `tools/browser`.

use std::path::{Path, PathBuf};
use std::process::Command;

use crate::apt::{self, Apt, apt};
use crate::process;

/// The oldest Node.js that the libraries run on.
const OLDEST_NODE: u32 = 18;

/// A browser may be named here; else one is looked for.
const NAMED: &str = "EVENSWATH_CHROMIUM";

/// What browsers of the Chromium family are called.
const NAMES: &[&str] =
    &["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge", "msedge"];

/// Where they stand on systems that do not have them on the path.
const PLACES: &[&str] = &[
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/// A browser, with Node.js and npm beside it: found, or installed where that may be done. The error says what is missing.
pub fn browser() -> Result<PathBuf, String> {
    let found = find_browser();
    let mut missing = Vec::new();
    if !has_node() {
        missing.push("nodejs");
    }
    if !process::works(npm().arg("--version")) {
        missing.push("npm");
    }
    if found.is_none() {
        missing.push("chromium");
    }
    if missing.is_empty() {
        return found.ok_or_else(how_to_get_them);
    }
    match apt() {
        Apt::Ready => {}
        Apt::NotRoot => {
            return Err(format!(
                "as root, `apt-get install {}` would bring what is missing",
                missing.join(" ")
            ));
        }
        Apt::None => return Err(how_to_get_them()),
    }
    apt::refresh();
    // Where `chromium` is no package but a name for something else, as on some systems, it is not installed.
    if let Some(none) = missing.iter().find(|package| !apt::is_offered(package)) {
        return Err(format!("apt has no {none}; {}", how_to_get_them()));
    }
    apt::install(&missing, "measuring sheets in a browser")?;
    if !has_node() {
        return Err(format!("the system's Node.js is too old; {}", how_to_get_them()));
    }
    find_browser().ok_or_else(how_to_get_them)
}

fn how_to_get_them() -> String {
    format!(
        "needs Node.js {OLDEST_NODE} or newer with npm, and Chromium, Chrome or Edge; {NAMED} may hold the browser's path"
    )
}

/// The libraries that `tools/browser` names, brought by npm into `node_modules` there; again when they change.
pub fn libraries(tools: &Path) -> Result<(), String> {
    let lock = tools.join("package-lock.json");
    let wanted =
        std::fs::read_to_string(&lock).map_err(|error| format!("cannot read {}: {error}", lock.display()))?;
    let stamp = tools.join("node_modules").join("package-lock-installed.json");
    if std::fs::read_to_string(&stamp).is_ok_and(|text| text == wanted) {
        return Ok(());
    }
    eprintln!("Installing the libraries of {} into its node_modules.", lock.display());
    process::run(npm().args(["ci", "--no-audit", "--no-fund"]).current_dir(tools))?;
    std::fs::write(&stamp, wanted).map_err(|error| format!("cannot write {}: {error}", stamp.display()))
}

fn npm() -> Command {
    Command::new(if cfg!(windows) { "npm.cmd" } else { "npm" })
}

fn has_node() -> bool {
    let test = format!("process.exit(Number(process.versions.node.split('.')[0]) < {OLDEST_NODE} ? 1 : 0)");
    process::works(Command::new("node").args(["-e", &test]))
}

fn find_browser() -> Option<PathBuf> {
    if let Some(named) = std::env::var_os(NAMED).filter(|named| !named.is_empty()) {
        return Some(PathBuf::from(named));
    }
    let path = std::env::var_os("PATH").unwrap_or_default();
    let folders: Vec<PathBuf> = std::env::split_paths(&path).collect();
    in_folders(&folders).or_else(|| PLACES.iter().map(PathBuf::from).find(|place| place.is_file()))
}

/// The first of the names that stands in one of the folders; a name earlier in the list wins.
fn in_folders(folders: &[PathBuf]) -> Option<PathBuf> {
    let ending = std::env::consts::EXE_SUFFIX;
    NAMES
        .iter()
        .flat_map(|name| folders.iter().map(move |folder| folder.join(format!("{name}{ending}"))))
        .find(|place| place.is_file())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_name_wins_wherever_it_stands() {
        let folder = std::env::temp_dir().join(format!("xtask-browser-{}", std::process::id()));
        let (first, second) = (folder.join("first"), folder.join("second"));
        for one in [&first, &second] {
            std::fs::create_dir_all(one).unwrap();
        }
        let ending = std::env::consts::EXE_SUFFIX;
        let file = |folder: &Path, name: &str| folder.join(format!("{name}{ending}"));
        std::fs::write(file(&first, "google-chrome"), "").unwrap();
        std::fs::write(file(&second, "chromium"), "").unwrap();
        let found = in_folders(&[first.clone(), second.clone()]);
        let none = in_folders(std::slice::from_ref(&folder));
        std::fs::remove_dir_all(&folder).unwrap();
        assert_eq!(found, Some(file(&second, "chromium")));
        assert_eq!(none, None);
    }
}
