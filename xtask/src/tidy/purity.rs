//! The pure crates are held to one list of what they may not touch.
//!
//! Clippy reads the `clippy.toml` in a crate's own folder, so each pure crate carries a copy of the master list, and no
//! source file may switch it off. `purity_bites.rs` shows that every line of the list works.

use super::failure::Failure;
use super::tree::Tree;
use crate::floors;
use crate::workspace::Package;

/// The master list.
pub const MASTER: &str = "xtask/pure-clippy.toml";

/// Lints that must not be allowed in a pure crate: those that carry the list, and the groups they are in.
const CARRIERS: &[&str] = &[
    "clippy::disallowed_methods",
    "clippy::disallowed_types",
    "clippy::disallowed_macros",
    "clippy::all",
    "clippy::style",
];

/// Pure crates without the list, and ways around it.
pub fn failures(crates: &[Package], tree: &Tree) -> Vec<Failure> {
    let mut failures = Vec::new();
    let master = tree.file(MASTER).map(|file| file.text.as_str());
    if master.is_none() {
        failures.push(Failure::new(MASTER, 1, "the master list is not there", "bring it back from git"));
    }
    for package in crates.iter().filter(|package| floors::is_pure(&package.name)) {
        let path = format!("{}/clippy.toml", package.folder);
        if tree.file(&path).map(|file| file.text.as_str()) != master {
            failures.push(Failure::new(
                &path,
                1,
                format!("not the same as {MASTER}"),
                format!("change the master list if need be, then copy it: cp {MASTER} {path}"),
            ));
        }
        if package.targets.iter().any(|target| target.kind == "custom-build") {
            failures.push(Failure::new(
                package.manifest(),
                1,
                "a pure crate with a build script",
                "make the file with an xtask command and keep it in the repository",
            ));
        }
    }
    for file in tree.pure_sources() {
        for (index, line) in file.text.lines().enumerate() {
            if let Some(lint) = CARRIERS.iter().find(|lint| line.contains(**lint)) {
                failures.push(Failure::new(
                    &file.path,
                    index + 1,
                    format!("`{lint}` carries the purity list and cannot be switched off in a pure crate"),
                    "let the caller hand in what is needed; a bench or an outside test may do it in its own file",
                ));
            }
        }
    }
    failures
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::workspace::Target;

    fn found(files: &[(&str, &str)], targets: &[&str]) -> Vec<String> {
        let package = Package {
            name: "units".to_owned(),
            folder: "crates/units".to_owned(),
            targets: targets.iter().map(|kind| Target { kind: (*kind).to_owned() }).collect(),
            ..Package::default()
        };
        let all = failures(&[package], &Tree::of(files));
        all.iter().map(|failure| failure.path.clone()).collect()
    }

    #[test]
    fn a_missing_or_different_list_fails() {
        assert_eq!(found(&[(MASTER, "a")], &[]), ["crates/units/clippy.toml"]);
        assert_eq!(
            found(&[(MASTER, "a"), ("crates/units/clippy.toml", "a\n")], &[]),
            ["crates/units/clippy.toml"]
        );
        assert!(found(&[(MASTER, "a"), ("crates/units/clippy.toml", "a")], &[]).is_empty());
        assert_eq!(found(&[], &[]), [MASTER]);
    }

    const SAME: [(&str, &str); 2] = [(MASTER, "a"), ("crates/units/clippy.toml", "a")];

    #[test]
    fn switching_the_list_off_fails() {
        let source = ("crates/units/src/a.rs", "#[allow(clippy::disallowed_methods)]\n");
        assert_eq!(found(&[SAME[0], SAME[1], source], &[]), ["crates/units/src/a.rs"]);
        let bench = ("crates/units/benches/a.rs", source.1);
        assert!(found(&[SAME[0], SAME[1], bench], &[]).is_empty());
    }

    #[test]
    fn a_build_script_fails() {
        assert_eq!(found(&SAME, &["lib", "custom-build"]), ["crates/units/Cargo.toml"]);
    }
}
