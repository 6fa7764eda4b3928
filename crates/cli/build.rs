//! With the feature `app`, puts the app's files into the program: those of the folder that `EVENSWATH_APP` names, or else of
//! `target/app`, where `cargo xtask app` leaves them. Where there are none, the program is built without the app and says so.
#![allow(clippy::print_stdout, reason = "cargo reads what a build script prints")]

use std::path::{Path, PathBuf};

/// Where the folder of the app's files may be named.
const NAMED: &str = "EVENSWATH_APP";

fn main() -> Result<(), String> {
    println!("cargo:rerun-if-changed=build.rs");
    println!("cargo:rerun-if-env-changed={NAMED}");
    let out = PathBuf::from(std::env::var_os("OUT_DIR").ok_or("cargo sets OUT_DIR")?);
    let list = if std::env::var_os("CARGO_FEATURE_APP").is_some() { files()? } else { String::new() };
    std::fs::write(out.join("app_files.rs"), format!("&[{list}]")).map_err(|error| error.to_string())
}

/// Every file as Rust: its path and its bytes, compressed forms as files of their own.
fn files() -> Result<String, String> {
    let own = Path::new(env!("CARGO_MANIFEST_DIR"));
    let named = std::env::var_os(NAMED).map(PathBuf::from);
    let folder = named.clone().unwrap_or_else(|| own.join("../../target/app"));
    println!("cargo:rerun-if-changed={}", folder.display());
    if !folder.join("index.html").is_file() {
        let why = format!("there is no app in {}; `cargo xtask app` builds it", folder.display());
        if named.is_some() {
            return Err(why);
        }
        println!("cargo:warning={why}, and this program is built without it");
        return Ok(String::new());
    }
    let folder = folder.canonicalize().map_err(|error| format!("{}: {error}", folder.display()))?;
    let entries = std::fs::read_dir(&folder).map_err(|error| format!("{}: {error}", folder.display()))?;
    let mut paths: Vec<PathBuf> =
        entries.flatten().map(|entry| entry.path()).filter(|path| path.is_file()).collect();
    paths.sort();
    let line = |path: &PathBuf| {
        let name = path.file_name()?.to_str()?;
        Some(format!("({name:?}, include_bytes!({:?}).as_slice()),\n", path.to_str()?))
    };
    let lines: Option<Vec<String>> = paths.iter().map(line).collect();
    lines.map(|lines| lines.concat()).ok_or_else(|| format!("{}: a name is no UTF-8", folder.display()))
}
