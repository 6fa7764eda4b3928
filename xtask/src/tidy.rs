//! `cargo xtask tidy`: the rules of the house that a machine can hold us to.
//!
//! Each rule is a file in the folder beside this one. All failures are collected and printed together, one a line, as
//! `path:line: what is wrong; what to do`.

mod architecture;
mod banned_words;
mod compiler;
mod constants;
mod dependencies;
mod failure;
mod format;
mod headers;
mod layers;
mod length;
mod licences;
mod lints;
mod purity;
#[cfg(test)]
mod purity_bites;
mod snapshots;
mod tree;
mod words;

use crate::steps::{Outcome, Steps};
use crate::workspace::Workspace;

use failure::Failure;
use tree::Tree;

/// Runs every rule and prints what is wrong.
pub fn run(workspace: &Workspace, _rest: &[String]) -> Result<(), String> {
    let mut steps = Steps::default();
    step(workspace, &mut steps);
    steps.finish()
}

/// Tidy as one step of a longer list.
pub fn step(workspace: &Workspace, steps: &mut Steps) {
    let mut left_out = Vec::new();
    steps.step("tidy", || match failures(workspace, &mut left_out) {
        Err(message) => Outcome::Failed(message),
        Ok(failures) if failures.is_empty() => Outcome::Passed,
        Ok(failures) => {
            for failure in &failures {
                println!("{failure}");
            }
            Outcome::Failed(format!("{} to mend, listed above", failures.len()))
        }
    });
    for why in left_out {
        steps.left_out("part of tidy", why);
    }
}

fn failures(workspace: &Workspace, left_out: &mut Vec<String>) -> Result<Vec<Failure>, String> {
    let tree = Tree::read(&workspace.root)?;

    // Quick rules first; the compiler's take most of the time.
    let mut failures = Vec::new();
    failures.extend(headers::failures(&tree));
    failures.extend(length::failures(&tree));
    failures.extend(banned_words::failures(&tree));
    failures.extend(snapshots::failures(&tree));
    failures.extend(constants::failures(&tree));
    failures.extend(words::failures(&tree));
    failures.extend(layers::failures(&workspace.crates, &tree));
    failures.extend(lints::failures(&workspace.crates, &tree));
    failures.extend(purity::failures(&workspace.crates, &tree));
    failures.extend(dependencies::failures(&workspace.crates, &tree));
    failures.extend(architecture::failures(&workspace.crates, &tree));
    match workspace.all_packages() {
        Ok(packages) => failures.extend(licences::failures(&packages, &tree)),
        Err(message) => {
            left_out.push(format!("licences: {message}; without a network cargo cannot look at them all"))
        }
    }
    failures.extend(format::failures(workspace, left_out)?);
    failures.extend(compiler::failures(workspace, left_out)?);

    failures.sort();
    // The compiler says the same of a file as a library, as a test, and while documenting it.
    failures.dedup_by(|a, b| (&a.path, a.line, &a.what) == (&b.path, b.line, &b.what));
    Ok(failures)
}
