//! Crates use only crates on the floors below them.

use super::failure::Failure;
use super::tree::Tree;
use crate::floors::{self, place};
use crate::workspace::Package;

/// Crates that have no floor, and dependencies that do not go down.
pub fn failures(crates: &[Package], tree: &Tree) -> Vec<Failure> {
    let mut failures = Vec::new();
    for package in crates {
        let Some(own) = place(&package.name) else {
            failures.push(Failure::new(
                package.manifest(),
                1,
                format!("the crate `{}` has no floor", package.name),
                format!("add it to the table in {}", floors::FILE),
            ));
            continue;
        };
        let names = package.dependencies.iter().map(|dependency| dependency.name.as_str());
        for name in names.filter(|name| crates.iter().any(|other| other.name == *name)) {
            let Some(other) = place(name) else { continue };
            if other.floor >= own.floor {
                failures.push(Failure::new(
                    package.manifest(),
                    tree.line_of_dependency(&package.manifest(), name),
                    format!(
                        "`{}` (floor {}) uses `{}` (floor {})",
                        own.name, own.floor, other.name, other.floor
                    ),
                    format!("a crate uses lower floors only; move the code down, or see {}", floors::FILE),
                ));
            }
        }
    }
    failures
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::workspace::{Dependency, DependencyKind};

    fn check(user: &str, used: &str, expected: Option<&str>) {
        let package = |name: &str, dependencies: &[&str]| Package {
            name: name.to_owned(),
            folder: format!("crates/{name}"),
            dependencies: dependencies
                .iter()
                .map(|name| Dependency { name: (*name).to_owned(), kind: DependencyKind::Normal })
                .collect(),
            ..Package::default()
        };
        let found = failures(&[package(user, &[used]), package(used, &[])], &Tree::default());
        match expected {
            None => assert!(found.is_empty(), "{found:?}"),
            Some(words) => assert!(found.iter().any(|failure| failure.what.contains(words)), "{found:?}"),
        }
    }

    #[test]
    fn down_is_allowed() {
        check("visit", "units", None);
        check("cli", "visit", None);
    }

    #[test]
    fn up_and_sideways_are_not() {
        check("units", "visit", Some("`units` (floor 0) uses `visit` (floor 3)"));
        check("calibration", "planning", Some("`calibration` (floor 2) uses `planning` (floor 2)"));
    }

    #[test]
    fn a_crate_that_the_table_does_not_know_fails() {
        check("mystery", "units", Some("`mystery` has no floor"));
    }
}
