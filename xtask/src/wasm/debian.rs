//! Debian's Rust for WebAssembly: found, or installed where that is allowed.
//!
//! The packages follow Debian's browser updates, so versions are read at run time and never written down here.

use std::path::{Path, PathBuf};
use std::process::Command;

use crate::apt::{self, Apt, apt};
use crate::process;

const PACKAGES: &[&str] = &["rustc-web", "cargo-web", "rust-web-src"];

/// Debian's compiler, its cargo, and its version such as `1.96.0`.
pub struct Rust {
    pub rustc: PathBuf,
    pub cargo: PathBuf,
    pub version: String,
}

/// Debian's Rust, if it is installed with the source of its library.
pub fn rust() -> Option<Rust> {
    let (rustc, cargo) = (PathBuf::from("/usr/bin/rustc"), PathBuf::from("/usr/bin/cargo"));
    if !rustc.is_file() || !cargo.is_file() {
        return None;
    }
    let sysroot = process::output_of(Command::new(&rustc).args(["--print", "sysroot"])).ok()?;
    let source = Path::new(sysroot.trim()).join("lib/rustlib/src/rust/library");
    if !source.is_dir() {
        return None;
    }
    let version = process::output_of(Command::new(&rustc).arg("--version")).ok()?;
    let version = version.split_whitespace().nth(1)?.to_owned();
    Some(Rust { rustc, cargo, version })
}

/// Installs Debian's Rust with apt, if we may. The error says why not.
pub fn install_rust() -> Result<Rust, String> {
    refresh()?;
    if !apt::is_offered(PACKAGES[0]) {
        return Err(format!("no WebAssembly standard library here, and apt has no {}", PACKAGES[0]));
    }
    apt::install(PACKAGES, WHAT_FOR)?;
    rust().ok_or_else(|| {
        "the packages are installed, but /usr/bin/rustc and its library's source are not there".to_owned()
    })
}

/// The newest WebAssembly linker of the system.
pub fn linker() -> Option<PathBuf> {
    let entries = std::fs::read_dir("/usr/bin").ok()?;
    let names: Vec<String> =
        entries.flatten().map(|entry| entry.file_name().to_string_lossy().into_owned()).collect();
    let newest = newest(&names, "wasm-ld-")?;
    Some(Path::new("/usr/bin").join(newest))
}

/// Installs the newest linker that apt offers.
pub fn install_linker() -> Result<PathBuf, String> {
    refresh()?;
    let text = process::output_of(Command::new("apt-cache").args(["pkgnames", "lld-"]))?;
    let names: Vec<String> = text.lines().map(str::to_owned).collect();
    let package = newest(&names, "lld-").ok_or("no WebAssembly linker here, and apt has no lld")?;
    apt::install(&[&package], WHAT_FOR)?;
    linker().ok_or_else(|| format!("{package} is installed, but there is no wasm-ld in /usr/bin"))
}

/// Whether a version is at least another, figure by figure.
pub fn is_new_enough(version: &str, least: &str) -> bool {
    let figures = |text: &str| -> Vec<u32> {
        text.split(['.', '-', '+']).map_while(|part| part.parse().ok()).collect()
    };
    figures(version) >= figures(least)
}

/// The name with the highest number after the prefix.
fn newest(names: &[String], prefix: &str) -> Option<String> {
    let numbered =
        names.iter().filter_map(|name| Some((name.strip_prefix(prefix)?.parse::<u32>().ok()?, name)));
    numbered.max().map(|(_, name)| name.clone())
}

/// What the packages are installed for.
const WHAT_FOR: &str = "the WebAssembly check";

fn refresh() -> Result<(), String> {
    match apt() {
        Apt::Ready => apt::refresh(),
        Apt::None => {
            return Err("no WebAssembly standard library here, and no apt to install Debian's".to_owned());
        }
        Apt::NotRoot => {
            return Err(format!(
                "no WebAssembly standard library here; as root, `apt-get install {}` would bring it",
                PACKAGES.join(" ")
            ));
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_highest_number_wins_not_the_last_in_the_alphabet() {
        let names = ["lld-9", "lld-22", "lld-14", "lld", "lld-dev"].map(str::to_owned);
        assert_eq!(newest(&names, "lld-"), Some("lld-22".to_owned()));
        assert_eq!(newest(&names, "wasm-ld-"), None);
    }

    #[test]
    fn versions_are_compared_by_figures() {
        assert!(is_new_enough("1.96.0", "1.95"));
        assert!(is_new_enough("1.95.0", "1.95"));
        assert!(!is_new_enough("1.85.0", "1.95"));
        assert!(is_new_enough("1.100.0", "1.95"));
        assert!(is_new_enough("1.96.0-nightly", "1.95"));
    }
}
