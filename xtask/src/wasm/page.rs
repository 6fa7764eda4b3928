//! One crate of the workspace as a module for browsers: the `.wasm` file, and beside it the JavaScript that loads it.
//!
//! The crate is built for WebAssembly and handed to our program `bindgen`, which is linked with the version of wasm-bindgen
//! that the crate itself is linked with: one Cargo.lock cannot hold two of them.

use std::path::{Path, PathBuf};
use std::process::Command;

use super::toolchain::{TARGET, Toolchain};
use crate::process;
use crate::workspace::Workspace;

/// A crate that runs in a browser.
#[derive(Clone, Copy, Debug)]
pub struct Page<'a> {
    /// The crate's name.
    pub package: &'a str,
    /// What of it is built.
    pub part: Part,
    /// How.
    pub build: Build,
}

/// What of a crate is built.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// Its library, as a module whose exports the page calls.
    Library,
    /// Its program of the same name, which starts when the module is loaded.
    Program,
}

/// How a crate is built.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Build {
    /// As small as can be: cargo's profile `wasm`.
    Small,
    /// As soon as can be, ten times as large.
    Quick,
}

/// What was made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Files {
    /// The JavaScript module; its default export loads the other: `await init({ module_or_path: address })`.
    pub script: PathBuf,
    /// The WebAssembly module.
    pub module: PathBuf,
}

impl Page<'_> {
    /// Builds the crate and writes both files into `folder`.
    pub fn build(
        &self,
        toolchain: &Toolchain,
        workspace: &Workspace,
        folder: &Path,
    ) -> Result<Files, String> {
        let built = self.compile(toolchain, workspace)?;
        self.bind(&built, workspace, folder)
    }

    /// Builds the crate. Gives back where cargo left the module, which no page can load yet.
    pub fn compile(&self, toolchain: &Toolchain, workspace: &Workspace) -> Result<PathBuf, String> {
        if !workspace.has(self.package) {
            return Err(format!("no crate is called `{}`", self.package));
        }
        process::run(&mut self.command(toolchain, &workspace.root))?;
        Ok(self.built(workspace))
    }

    /// What builds the crate.
    pub fn command(&self, toolchain: &Toolchain, root: &Path) -> Command {
        let what: &[&str] = match self.part {
            Part::Library => &["--lib", "--crate-type", "cdylib"],
            Part::Program => &["--bin", self.package],
        };
        let mut command = toolchain.cargo(root);
        command
            .arg("rustc")
            .args(toolchain.flags())
            .args(["--profile", self.build.profile(), "--package", self.package])
            .args(what);
        if let Build::Small = self.build {
            toolchain.for_size(&mut command);
        }
        command
    }

    /// Writes both files of a built module into `folder`.
    pub fn bind(&self, built: &Path, workspace: &Workspace, folder: &Path) -> Result<Files, String> {
        process::run(
            process::cargo(&workspace.root)
                .args(["run", "--quiet", "--package", "xtask", "--features", "bindgen"])
                .args(["--bin", "bindgen", "--"])
                .arg(built)
                .arg(folder),
        )?;
        Ok(self.files(folder))
    }

    /// What cargo calls it.
    fn name(&self) -> String {
        match self.part {
            Part::Library => self.package.replace('-', "_"),
            Part::Program => self.package.to_owned(),
        }
    }

    /// Where cargo leaves the module.
    fn built(&self, workspace: &Workspace) -> PathBuf {
        let name = self.name();
        workspace.target.join(TARGET).join(self.build.folder()).join(format!("{name}.wasm"))
    }

    fn files(&self, folder: &Path) -> Files {
        let name = self.name();
        Files { script: folder.join(format!("{name}.js")), module: folder.join(format!("{name}_bg.wasm")) }
    }
}

impl Build {
    fn profile(self) -> &'static str {
        match self {
            Build::Small => "wasm",
            Build::Quick => "dev",
        }
    }

    fn folder(self) -> &'static str {
        match self {
            Build::Small => "wasm",
            Build::Quick => "debug",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_are_named_as_cargo_and_bindgen_name_them() {
        let page = Page { package: "a-page", part: Part::Library, build: Build::Small };
        let workspace = Workspace { target: PathBuf::from("t"), ..Workspace::default() };
        assert_eq!(page.built(&workspace), Path::new("t").join(TARGET).join("wasm").join("a_page.wasm"));
        let files = page.files(Path::new("f"));
        assert_eq!(files.script, Path::new("f").join("a_page.js"));
        assert_eq!(files.module, Path::new("f").join("a_page_bg.wasm"));
    }

    #[test]
    fn a_crate_that_is_not_there_is_named() {
        let page = Page { package: "mystery", part: Part::Library, build: Build::Quick };
        let found = page.build(&Toolchain::Own, &Workspace::default(), Path::new("f"));
        assert!(found.is_err_and(|message| message.contains("`mystery`")));
    }
}
