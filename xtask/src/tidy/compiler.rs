//! What clippy and rustdoc have to say; a warning is a failure.

use std::process::Command;

use serde_json::Value;

use super::failure::Failure;
use crate::process;
use crate::workspace::Workspace;

/// Warnings and errors of clippy over every target, and of rustdoc over our own crates.
pub fn failures(workspace: &Workspace, left_out: &mut Vec<String>) -> Result<Vec<Failure>, String> {
    let mut failures = Vec::new();
    if process::works(process::cargo(&workspace.root).args(["clippy", "--version"])) {
        failures.extend(said_by(&mut clippy(workspace, &["--workspace", "--all-targets"]))?);
        if workspace.has("vectors") {
            // The program that runs WebAssembly is behind a feature, so that nobody else has to build it.
            let compare = ["--package", "vectors", "--features", "compare", "--bins"];
            failures.extend(said_by(&mut clippy(workspace, &compare))?);
        }
    } else {
        left_out.push("lints: no clippy; `rustup component add clippy` brings it".to_owned());
    }
    let mut rustdoc = process::cargo(&workspace.root);
    rustdoc
        .args(["doc", "--workspace", "--no-deps", "--keep-going", "--message-format=json"])
        .env("RUSTDOCFLAGS", "-D warnings");
    failures.extend(said_by(&mut rustdoc)?);
    Ok(failures)
}

fn clippy(workspace: &Workspace, what: &[&str]) -> Command {
    let mut command = process::cargo(&workspace.root);
    command.arg("clippy").args(what).args(["--keep-going", "--message-format=json", "--", "-D", "warnings"]);
    command
}

fn said_by(command: &mut Command) -> Result<Vec<Failure>, String> {
    process::announce(command);
    let (text, well) = process::output_and_end(command)?;
    let mut failures: Vec<Failure> = text.lines().filter_map(read).collect();
    if failures.is_empty() && !well {
        failures.push(Failure::new(
            "Cargo.toml",
            1,
            "cargo could not build the workspace",
            "its message stands above",
        ));
    }
    Ok(failures)
}

/// Reads one line of cargo's JSON; none unless it is a warning or an error at some place.
fn read(line: &str) -> Option<Failure> {
    let entry: Value = serde_json::from_str(line).ok()?;
    if entry["reason"] != "compiler-message" {
        return None;
    }
    let message = &entry["message"];
    if !matches!(message["level"].as_str(), Some("warning" | "error")) {
        return None;
    }
    let what = message["message"].as_str()?;
    let spans = message["spans"].as_array()?;
    let Some(place) = spans.iter().find(|span| span["is_primary"] == true) else {
        // "aborting due to 3 previous errors" has no place and says nothing new; a missing linker has none either.
        let counts = what.starts_with("aborting due to")
            || what.contains("warnings emitted")
            || what.contains("warning emitted");
        return (!counts).then(|| Failure::new("Cargo.toml", 1, what, advice(message)));
    };
    let path = place["file_name"].as_str()?.replace('\\', "/");
    let number = place["line_start"].as_u64().and_then(|number| usize::try_from(number).ok());
    Some(Failure::new(path, number.unwrap_or(1), what, advice(message)))
}

/// The compiler's help and notes on one line, with what it would write instead; without its word on why the lint is on.
fn advice(message: &Value) -> String {
    let idle = ["implied by", "to override", "is on by default", "(part of", "for further information"];
    let children = message["children"].as_array().map_or(&[] as &[Value], Vec::as_slice);
    let parts = children.iter().filter_map(|child| {
        let text = child["message"].as_str()?;
        if idle.iter().any(|words| text.contains(words)) {
            return None;
        }
        let instead = child["spans"][0]["suggested_replacement"].as_str().unwrap_or_default();
        let whole = if instead.trim().is_empty() { text.to_owned() } else { format!("{text}: `{instead}`") };
        Some(whole.split_whitespace().collect::<Vec<_>>().join(" "))
    });
    parts.collect::<Vec<_>>().join("; ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_lint_becomes_a_failure_at_its_line() {
        let line = r#"{"reason":"compiler-message","message":{"level":"error","message":"use of a disallowed method",
            "spans":[{"is_primary":false,"file_name":"b.rs","line_start":1},
                     {"is_primary":true,"file_name":"crates\\units\\src\\lib.rs","line_start":9}],
            "children":[{"message":"digits differ"},{"message":"try","spans":[{"suggested_replacement":"libm::pow(a, b)"}]},{"message":"`-D clippy::x` implied by `-D warnings`"}]}}"#;
        let failure = read(&line.replace('\n', " ")).unwrap();
        assert_eq!(
            failure.to_string(),
            "crates/units/src/lib.rs:9: use of a disallowed method; digits differ; try: `libm::pow(a, b)`"
        );
    }

    #[test]
    fn counts_notes_and_other_messages_are_none() {
        let message = |level: &str, text: &str| {
            format!(
                r#"{{"reason":"compiler-message","message":{{"level":"{level}","message":"{text}","spans":[],"children":[]}}}}"#
            )
        };
        assert_eq!(read(&message("error", "aborting due to 2 previous errors")), None);
        assert_eq!(read(&message("note", "something")), None);
        assert!(read(&message("error", "linker `cc` not found")).is_some());
        assert_eq!(read(r#"{"reason":"build-finished","success":false}"#), None);
        assert_eq!(read("not json"), None);
    }
}
