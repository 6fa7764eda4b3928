//! `bindgen MODULE FOLDER`: the JavaScript that loads a WebAssembly module and speaks with it, written beside the module.
//!
//! A program of its own, behind a feature, because the library that does it takes most of a minute to build; only the
//! commands that make a page for browsers ask for it (`xtask/src/wasm/page.rs`).
#![allow(clippy::print_stderr, reason = "a command-line tool: it says what went wrong on standard error")]

use std::process::ExitCode;

use wasm_bindgen_cli_support::Bindgen;

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let [module, folder] = words.as_slice() else {
        eprintln!("bindgen MODULE FOLDER");
        return ExitCode::from(2);
    };
    match write(module, folder) {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{module}: {message}");
            ExitCode::FAILURE
        }
    }
}

fn write(module: &str, folder: &str) -> Result<(), String> {
    let mut bindgen = Bindgen::new();
    bindgen
        .input_path(module)
        .web(true)
        .map_err(in_full)?
        .typescript(false)
        .remove_name_section(true)
        .remove_producers_section(true);
    bindgen.generate(folder).map_err(in_full)
}

/// The error with all that led to it.
fn in_full(error: impl std::fmt::Display) -> String {
    format!("{error:#}")
}
