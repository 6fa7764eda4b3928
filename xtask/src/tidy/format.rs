//! Every Rust file is as rustfmt writes it.

use super::failure::Failure;
use crate::process;
use crate::workspace::Workspace;

/// Files that rustfmt would write otherwise.
pub fn failures(workspace: &Workspace, left_out: &mut Vec<String>) -> Result<Vec<Failure>, String> {
    if !process::works(process::cargo(&workspace.root).args(["fmt", "--version"])) {
        left_out.push("formatting: no rustfmt; `rustup component add rustfmt` brings it".to_owned());
        return Ok(Vec::new());
    }
    let (text, well) =
        process::output_and_end(process::cargo(&workspace.root).args(["fmt", "--all", "--check"]))?;
    let root = workspace.root.to_string_lossy().replace('\\', "/");
    let mut failures = read(&text, &root);
    if failures.is_empty() && !well {
        failures.push(Failure::new(
            "Cargo.toml",
            1,
            "rustfmt cannot read the sources",
            "its own message stands above",
        ));
    }
    Ok(failures)
}

/// One failure per file, at its first difference. rustfmt writes `Diff in <path>:<line>:`.
fn read(text: &str, root: &str) -> Vec<Failure> {
    let mut failures: Vec<Failure> = Vec::new();
    for place in text.lines().filter_map(|line| line.strip_prefix("Diff in ")) {
        let place = place.trim_end_matches(':');
        let Some((path, line)) = place.rsplit_once(':') else {
            continue;
        };
        let path = path.trim_start_matches(r"\\?\").replace('\\', "/");
        let path = path.strip_prefix(root).unwrap_or(&path).trim_start_matches('/').to_owned();
        if failures.iter().all(|failure| failure.path != path) {
            let line = line.parse().unwrap_or(1);
            failures.push(Failure::new(path, line, "not as rustfmt writes it", "run `cargo fmt`"));
        }
    }
    failures
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_difference_of_each_file_is_reported() {
        let text = "Diff in /r/crates/units/src/lib.rs:12:\n-a\n+b\nDiff in /r/crates/units/src/lib.rs:40:\n";
        let found = read(text, "/r");
        assert_eq!(found.len(), 1);
        assert_eq!((found[0].path.as_str(), found[0].line), ("crates/units/src/lib.rs", 12));
    }

    #[test]
    fn paths_with_a_drive_are_read_too() {
        let found = read(r"Diff in \\?\C:\r\xtask\src\main.rs:3:", "C:/r");
        assert_eq!((found[0].path.as_str(), found[0].line), ("xtask/src/main.rs", 3));
    }
}
