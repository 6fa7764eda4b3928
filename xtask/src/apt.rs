//! Debian's packages, installed where that may be done: as root, on a system that has apt.

use std::process::Command;

use crate::process;

/// Whether packages can be installed here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Apt {
    /// They can.
    Ready,
    /// There is apt, but only root may use it.
    NotRoot,
    /// This system has no apt.
    None,
}

/// Looks whether packages can be installed here.
pub fn apt() -> Apt {
    if !process::works(Command::new("apt-get").arg("--version")) {
        return Apt::None;
    }
    let user = process::output_of(Command::new("id").arg("-u")).unwrap_or_default();
    if user.trim() == "0" { Apt::Ready } else { Apt::NotRoot }
}

/// Brings apt's lists up to date.
pub fn refresh() {
    eprintln!("Asking apt for its newest lists.");
    if let Err(message) = process::run(Command::new("apt-get").args(["update", "--quiet", "--quiet"])) {
        // One source that cannot be reached need not be the one we want.
        eprintln!("{message}; going on with the lists there are");
    }
}

/// Whether apt has the package.
pub fn is_offered(package: &str) -> bool {
    process::output_of(Command::new("apt-cache").args(["policy", package]))
        .is_ok_and(|text| text.contains("Candidate:") && !text.contains("Candidate: (none)"))
}

/// Installs packages and nothing they only recommend, saying what for.
pub fn install(packages: &[&str], what_for: &str) -> Result<(), String> {
    eprintln!("Installing with apt, for {what_for}: {}", packages.join(" "));
    process::run(
        Command::new("apt-get")
            .args(["install", "--yes", "--quiet", "--quiet", "--no-install-recommends"])
            .args(packages)
            .env("DEBIAN_FRONTEND", "noninteractive"),
    )
}
