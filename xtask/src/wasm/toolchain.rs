//! Where a WebAssembly standard library is to be had on this machine.
//!
//! 1. The Rust in use has the target (`rustup target add wasm32-unknown-unknown`): plain cargo. We never change rustup.
//! 2. Debian's own Rust with its library's source (`rustc-web`, `cargo-web`, `rust-web-src`): the standard library is
//!    built from source. Stable compilers allow that only with `RUSTC_BOOTSTRAP=1`, set for these commands alone.

use std::path::{Path, PathBuf};
use std::process::Command;

use super::debian;
use crate::process;

/// The target of a browser's module.
pub const TARGET: &str = "wasm32-unknown-unknown";

const HOW: &str = "`rustup target add wasm32-unknown-unknown` brings it to rustup's Rust";

/// A cargo that builds for WebAssembly.
pub enum Toolchain {
    /// The Rust that runs us has the target.
    Own,
    /// Debian's Rust builds the standard library from source.
    FromSource { rustc: PathBuf, cargo: PathBuf, linker: PathBuf },
}

impl Toolchain {
    /// Finds one, on Debian after installing its packages. The error says why there is none and how to get one.
    pub fn find_or_install(root: &Path) -> Result<Toolchain, String> {
        if own_has_target(root)? {
            return Ok(Toolchain::Own);
        }
        if !cfg!(target_os = "linux") {
            return Err(format!("no WebAssembly standard library here; {HOW}"));
        }
        let rust = match debian::rust() {
            Some(rust) => rust,
            None => debian::install_rust().map_err(|why| format!("{why}; {HOW}"))?,
        };
        if !debian::is_new_enough(&rust.version, env!("CARGO_PKG_RUST_VERSION")) {
            return Err(format!(
                "Debian's Rust is {}, and this project needs {}; {HOW}",
                rust.version,
                env!("CARGO_PKG_RUST_VERSION")
            ));
        }
        let linker = match own_linker(root).or_else(debian::linker) {
            Some(linker) => linker,
            None => debian::install_linker().map_err(|why| format!("{why}; {HOW}"))?,
        };
        Ok(Toolchain::FromSource { rustc: rust.rustc, cargo: rust.cargo, linker })
    }

    /// For people.
    pub fn name(&self) -> String {
        match self {
            Toolchain::Own => "the Rust in use".to_owned(),
            Toolchain::FromSource { rustc, linker, .. } => {
                format!("{} with its library from source, linked by {}", rustc.display(), linker.display())
            }
        }
    }

    /// The cargo to call, in `folder`.
    pub fn cargo(&self, folder: &Path) -> Command {
        match self {
            Toolchain::Own => process::cargo(folder),
            Toolchain::FromSource { rustc, cargo, linker } => {
                let mut command = Command::new(cargo);
                command
                    .current_dir(folder)
                    .env("RUSTC", rustc)
                    .env("RUSTC_BOOTSTRAP", "1")
                    .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", linker);
                command
            }
        }
    }

    /// What goes between the subcommand and the rest.
    pub fn flags(&self) -> &'static [&'static str] {
        match self {
            Toolchain::Own => &["--target", TARGET],
            Toolchain::FromSource { .. } => &["--target", TARGET, "-Zbuild-std=std,panic_abort"],
        }
    }
}

/// Leptos then keeps one kind of view instead of a type for each: the app is a twelfth smaller.
const ERASED: &str = "--cfg=erase_components";

impl Toolchain {
    /// Has a build leave out what a page has no use for: what a panic would say and where in our source it was, which nobody
    /// reads in a browser, and the fast but large ways of the standard library. It makes the app an eighth smaller. Only a
    /// library built from source can be had without them; these are wishes that a stable compiler takes with
    /// `RUSTC_BOOTSTRAP=1` alone.
    pub fn for_size(&self, command: &mut Command) {
        // A page says everything out of its words, so the English of the code stays behind (`units::last_resort`).
        command.env("EVENSWATH_TEXTS_ELSEWHERE", "yes");
        let flags = match self {
            Toolchain::Own => ERASED.to_owned(),
            Toolchain::FromSource { .. } => {
                command.arg("-Zbuild-std-features=optimize_for_size");
                format!("-Zlocation-detail=none -Zunstable-options -Cpanic=immediate-abort {ERASED}")
            }
        };
        command.env("RUSTFLAGS", flags);
    }
}

fn own_has_target(root: &Path) -> Result<bool, String> {
    let folder = process::output_of(own_rustc(root).args(["--print", "target-libdir", "--target", TARGET]))?;
    Ok(Path::new(folder.trim()).is_dir())
}

/// The linker that rustup's Rust carries.
fn own_linker(root: &Path) -> Option<PathBuf> {
    let library = process::output_of(own_rustc(root).args(["--print", "target-libdir"])).ok()?;
    let linker = Path::new(library.trim()).parent()?.join("bin").join("rust-lld");
    linker.is_file().then_some(linker)
}

fn own_rustc(root: &Path) -> Command {
    let mut command = Command::new(std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into()));
    command.current_dir(root);
    command
}
