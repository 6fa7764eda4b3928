//! `cargo xtask check`: the quick form of `test`, for every few minutes while working.

use crate::process;
use crate::steps::Steps;
use crate::tidy;
use crate::workspace::Workspace;

/// Tidy and the unit tests; leaves out doc tests, tests of the built program, vectors and wasm.
pub fn run(workspace: &Workspace, _rest: &[String]) -> Result<(), String> {
    let mut steps = Steps::default();
    tidy::step(workspace, &mut steps);
    steps.step("unit tests", || {
        process::run(
            process::cargo(&workspace.root)
                .args(["test", "--workspace", "--lib", "--bins", "--quiet"])
                .env("INSTA_UPDATE", "no"),
        )
        .into()
    });
    steps.finish()
}
