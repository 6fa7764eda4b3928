//! No half-settled snapshots: each is accepted, and belongs to a file that is still there.

use super::failure::Failure;
use super::tree::Tree;

/// Snapshots waiting to be accepted, and those whose test file has gone.
pub fn failures(tree: &Tree) -> Vec<Failure> {
    let mut failures = Vec::new();
    for file in &tree.files {
        if file.path.ends_with(".snap.new") || file.path.ends_with(".pending-snap") {
            failures.push(Failure::new(
                &file.path,
                1,
                "a snapshot waiting to be settled",
                "mend the program, or accept it with `cargo xtask bless`; then delete this file",
            ));
        } else if file.path.ends_with(".snap") {
            failures.extend(orphan(tree, &file.path, &file.text));
        }
    }
    failures
}

fn orphan(tree: &Tree, path: &str, text: &str) -> Option<Failure> {
    let line = text.lines().position(|line| line.starts_with("source: "))?;
    let source = text.lines().nth(line)?.trim_start_matches("source: ").trim_matches('"');
    if tree.file(source).is_some() {
        return None;
    }
    Some(Failure::new(
        path,
        line + 1,
        format!("the snapshot belongs to {source}, which is not there"),
        "delete it",
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pending_snapshots_fail() {
        let tree = Tree::of(&[
            ("crates/cli/tests/snapshots/help.snap.new", ""),
            ("crates/cli/tests/.help.rs.pending-snap", ""),
        ]);
        assert_eq!(failures(&tree).len(), 2);
    }

    #[test]
    fn a_snapshot_outlives_its_test_only_with_a_failure() {
        let snapshot =
            ("crates/cli/tests/snapshots/help.snap", "---\nsource: crates/cli/tests/help.rs\n---\n");
        assert_eq!(failures(&Tree::of(&[snapshot]))[0].line, 2);
        let with_test = Tree::of(&[snapshot, ("crates/cli/tests/help.rs", "")]);
        assert!(failures(&with_test).is_empty());
    }
}
