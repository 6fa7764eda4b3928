//! `cargo xtask test`: exactly what CI runs.
//!
//! Needs git and rustup's stable Rust. What else it can use (Python for the reference vectors, a WebAssembly standard
//! library, Node.js and a browser) it sets up where it may, and says so; what it had to leave out stands in the last lines it prints.

use crate::process;
use crate::steps::Steps;
use crate::workspace::Workspace;
use crate::{browser, pdf, tidy, vectors, wasm};

/// Tidy, every test, the Python-made vectors, the wasm comparison, the sheets and the app in a browser, the sheets as PDF.
pub fn run(workspace: &Workspace, _rest: &[String]) -> Result<(), String> {
    let mut steps = Steps::default();
    tidy::step(workspace, &mut steps);
    steps.step("tests", || {
        let mut command = process::cargo(&workspace.root);
        command.args(["test", "--workspace"]);
        if std::env::var_os("CI").is_some() {
            // A snapshot that differs must fail there, never be written.
            command.env("INSTA_UPDATE", "no");
        }
        process::run(&mut command).into()
    });
    steps.step("reference vectors", || vectors::compare(workspace));
    steps.step("wasm", || wasm::compare(workspace));
    steps.step("browser", || browser::measure(workspace));
    steps.step("store in a browser", || browser::test_store(workspace));
    steps.step("app", || browser::measure_shell(workspace));
    steps.step("pdf", || pdf::test(workspace).into());
    steps.finish()
}
