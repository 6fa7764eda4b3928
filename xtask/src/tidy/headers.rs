//! Every Rust file begins by saying what it is for.

use super::failure::Failure;
use super::tree::Tree;

/// Files whose first line is not `//! something`.
pub fn failures(tree: &Tree) -> Vec<Failure> {
    let headless = tree.rust().filter(|file| {
        let first = file.text.lines().next().unwrap_or_default();
        first.strip_prefix("//!").is_none_or(|rest| rest.trim().is_empty())
    });
    headless
        .map(|file| {
            Failure::new(
                &file.path,
                1,
                "the file does not begin with a `//!` line",
                "say in one sentence what it is for",
            )
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fails(text: &str) -> bool {
        !failures(&Tree::of(&[("crates/units/src/lib.rs", text)])).is_empty()
    }

    #[test]
    fn a_file_needs_a_header_with_words_in_it() {
        assert!(fails("use std::fmt;\n"));
        assert!(fails("//!\n"));
        assert!(fails(""));
        assert!(!fails("//! Lengths.\nuse std::fmt;\n"));
    }

    #[test]
    fn other_files_need_none() {
        assert!(failures(&Tree::of(&[("README.md", "# Evenswath\n")])).is_empty());
    }
}
