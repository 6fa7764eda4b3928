//! The notebook's store in a real browser: the crate `store-page` built for WebAssembly, and the tests that drive it.

use std::path::Path;
use std::process::Command;

use super::{TOOLS, setup};
use crate::process;
use crate::steps::Outcome;
use crate::wasm::Toolchain;
use crate::wasm::page::{Build, Page, Part};
use crate::workspace::Workspace;

/// Tests the store if this machine can, or may be made to; otherwise says why not.
pub fn test(workspace: &Workspace) -> Outcome {
    let machine = || Ok((setup::browser()?, Toolchain::find_or_install(&workspace.root)?));
    match machine() {
        Ok((browser, toolchain)) => with(workspace, &browser, &toolchain).into(),
        Err(why) => Outcome::Skipped(why),
    }
}

fn with(workspace: &Workspace, browser: &Path, toolchain: &Toolchain) -> Result<(), String> {
    eprintln!("The browser is {}; WebAssembly by {}", browser.display(), toolchain.name());
    let tools = workspace.root.join(TOOLS);
    setup::libraries(&tools)?;
    let folder = workspace.target.join("pages").join("store-page");
    Page { package: "store-page", part: Part::Library, build: Build::Small }
        .build(toolchain, workspace, &folder)?;
    process::run(
        Command::new("node")
            .args(["--test", "--test-reporter=spec", "store.test.mjs"])
            .current_dir(&tools)
            .env("EVENSWATH_CHROMIUM", browser)
            .env("EVENSWATH_STORE_PAGE", &folder),
    )
}
