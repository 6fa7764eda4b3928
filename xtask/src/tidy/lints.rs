//! Every crate takes the workspace's lints; none makes its own.

use super::failure::Failure;
use super::tree::Tree;
use crate::workspace::Package;

/// Crates whose Cargo.toml lacks `[lints]` with `workspace = true`.
pub fn failures(crates: &[Package], tree: &Tree) -> Vec<Failure> {
    crates
        .iter()
        .filter(|package| !takes_workspace_lints(tree, &package.manifest()))
        .map(|package| {
            Failure::new(
                package.manifest(),
                1,
                "the crate does not take the workspace's lints",
                "add `[lints]` and under it `workspace = true`",
            )
        })
        .collect()
}

fn takes_workspace_lints(tree: &Tree, manifest: &str) -> bool {
    let text = tree.file(manifest).map_or("", |file| file.text.as_str());
    let mut lines = text.lines().map(str::trim);
    lines.any(|line| line == "[lints]") && lines.next() == Some("workspace = true")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fails(manifest: &str) -> bool {
        let package = Package { folder: "crates/units".to_owned(), ..Package::default() };
        !failures(&[package], &Tree::of(&[("crates/units/Cargo.toml", manifest)])).is_empty()
    }

    #[test]
    fn a_crate_without_the_workspace_lints_fails() {
        assert!(fails("[package]\nname = \"units\"\n"));
        assert!(fails("[lints.clippy]\nall = \"allow\"\n"));
        assert!(!fails("[package]\n\n[lints]\nworkspace = true\n"));
    }
}
