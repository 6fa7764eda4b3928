//! What the pure crates may be built on, so that a clock or a file does not come in through a library.

use super::failure::Failure;
use super::tree::Tree;
use crate::floors;
use crate::workspace::{DependencyKind, Package};

/// Libraries that a pure crate may use, each with the reason why that keeps it pure. Tests may use more.
const ALLOWED: &[(&str, &str)] = &[
    ("libm", "transcendental functions with the same digits on every machine"),
    ("thiserror", "writes `Display` and `Error` for our error enums; nothing at run time"),
    ("fluent-bundle", "sentences out of texts handed to it; opens no file, asks no clock or locale"),
    ("unic-langid", "names of languages"),
    ("sha2", "check sums of bytes handed to it"),
    ("base64", "bytes to letters and back; nothing else"),
    ("uuid", "names written and read; without its features it makes none by chance or clock"),
    ("serde", "describes our types; reads and writes nothing itself"),
    ("toml", "text to values and back; opens no file"),
    ("serde_json", "text to values and back; opens no file unless handed one"),
];

/// Libraries of pure crates that are not on the list.
pub fn failures(crates: &[Package], tree: &Tree) -> Vec<Failure> {
    let mut failures = Vec::new();
    for package in crates.iter().filter(|package| floors::is_pure(&package.name)) {
        for dependency in &package.dependencies {
            let name = dependency.name.as_str();
            if dependency.kind == DependencyKind::Dev
                || floors::is_pure(name)
                || ALLOWED.iter().any(|(allowed, _)| *allowed == name)
            {
                continue;
            }
            failures.push(Failure::new(
                package.manifest(),
                tree.line_of_dependency(&package.manifest(), name),
                format!("the pure crate `{}` is built on `{name}`", package.name),
                format!(
                    "do without it; if it keeps the crate pure, add it with the reason to {}",
                    file!().replace('\\', "/")
                ),
            ));
        }
    }
    failures
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::workspace::Dependency;

    fn fails(user: &str, used: &str, kind: DependencyKind) -> bool {
        let package = Package {
            name: user.to_owned(),
            dependencies: vec![Dependency { name: used.to_owned(), kind }],
            ..Package::default()
        };
        !failures(&[package], &Tree::default()).is_empty()
    }

    #[test]
    fn a_library_off_the_list_fails() {
        assert!(fails("units", "rand", DependencyKind::Normal));
        assert!(fails("units", "cc", DependencyKind::Build));
        assert!(fails("visit", "store", DependencyKind::Normal));
    }

    #[test]
    fn listed_pure_and_test_libraries_pass_and_worldly_crates_are_free() {
        assert!(!fails("units", "libm", DependencyKind::Normal));
        assert!(!fails("visit", "units", DependencyKind::Normal));
        assert!(!fails("units", "proptest", DependencyKind::Dev));
        assert!(!fails("cli", "clap", DependencyKind::Normal));
    }
}
