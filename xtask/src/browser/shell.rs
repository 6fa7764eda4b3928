//! The app in a real browser. Two versions of it are built: `tools/browser/shell.test.mjs` goes from one to the other,
//! `yard.test.mjs` makes whole visits. Pictures of the screens are left in `app-pictures` of the target folder.

use std::path::{Path, PathBuf};
use std::process::Command;

use super::{TOOLS, setup};
use crate::app;
use crate::process;
use crate::run;
use crate::steps::Outcome;
use crate::wasm::Toolchain;
use crate::wasm::page::Build;
use crate::workspace::Workspace;

/// Tests the app's shell if this machine can, or may be made to; otherwise says why not.
pub fn measure(workspace: &Workspace) -> Outcome {
    let ready =
        setup::browser().and_then(|browser| Ok((browser, Toolchain::find_or_install(&workspace.root)?)));
    match ready {
        Ok((browser, toolchain)) => with(workspace, &browser, &toolchain).into(),
        Err(why) => Outcome::Skipped(why),
    }
}

fn with(workspace: &Workspace, browser: &Path, toolchain: &Toolchain) -> Result<(), String> {
    let tools = workspace.root.join(TOOLS);
    setup::libraries(&tools)?;
    // What names and presses the files has tests of its own, behind its feature.
    process::run(process::cargo(&workspace.root).args([
        "test",
        "--quiet",
        "--package",
        "xtask",
        "--features",
        "app",
        "--bin",
        "app-files",
    ]))?;
    let first = app::build(workspace, toolchain, Build::Small)?;
    let second = second(workspace)?;
    let program = run::program(workspace)?;
    process::run(
        Command::new("node")
            // One file after the other: they measure times.
            .args([
                "--test",
                "--test-concurrency=1",
                "--test-reporter=spec",
                "shell.test.mjs",
                "yard.test.mjs",
            ])
            .current_dir(&tools)
            .env("EVENSWATH_CHROMIUM", browser)
            .env("EVENSWATH_PROGRAM", program)
            .env("EVENSWATH_APP", first)
            .env("EVENSWATH_SECOND_APP", second)
            .env("EVENSWATH_PICTURES", workspace.target.join("app-pictures")),
    )
}

/// Another version of the app as it was just built: its page says so, and its style sheet has another name.
fn second(workspace: &Workspace) -> Result<PathBuf, String> {
    let folder = workspace.target.join("second-app");
    let page = folder.join("page");
    copy(&workspace.root.join(app::PAGE), &page)?;
    change(&page.join("index.html"), |text| {
        text.replace("<html lang=\"en\">", "<html lang=\"en\" data-version=\"second\">")
    })?;
    change(&page.join("yard.css"), |text| format!("{text}body {{ --second: 1; }}\n"))?;
    let files = folder.join("files");
    app::finish(workspace, &page, &files)?;
    Ok(files)
}

fn copy(from: &Path, to: &Path) -> Result<(), String> {
    let failed = |error: std::io::Error| format!("cannot copy {}: {error}", from.display());
    std::fs::create_dir_all(to).map_err(failed)?;
    for entry in std::fs::read_dir(from).map_err(failed)?.flatten() {
        let (path, to) = (entry.path(), to.join(entry.file_name()));
        if path.is_dir() {
            copy(&path, &to)?;
        } else {
            std::fs::copy(&path, &to).map_err(failed)?;
        }
    }
    Ok(())
}

/// Changes a text. An error where that changes nothing: the test would hold for one version alone.
fn change(path: &Path, how: impl Fn(&str) -> String) -> Result<(), String> {
    let failed = |error: std::io::Error| format!("cannot change {}: {error}", path.display());
    let text = std::fs::read_to_string(path).map_err(failed)?;
    let changed = how(&text);
    if changed == text {
        return Err(format!("{} is not as the second version expects it", path.display()));
    }
    std::fs::write(path, changed).map_err(failed)
}
