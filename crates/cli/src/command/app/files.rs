//! The app's files: those in this program, or those of a folder.

use std::path::Path;

use server::{AppFiles, FilesError};
use units::{Arg, Args};

use super::super::input::place;
use crate::error::CliError;

/// What the build script found (`build.rs`): names and bytes, compressed forms as files of their own.
static BUILT_IN: &[(&str, &[u8])] = include!(concat!(env!("OUT_DIR"), "/app_files.rs"));

/// The files that are in this program, if it was built with them.
pub fn built_in() -> Option<AppFiles> {
    AppFiles::of_list(BUILT_IN.iter().copied()).ok()
}

/// The files of a folder.
pub fn of_folder(folder: &Path) -> Result<AppFiles, CliError> {
    AppFiles::of_folder(folder).map_err(|error| no_app(&error).at(place(folder)))
}

fn no_app(error: &FilesError) -> CliError {
    let usage = |args| CliError::usage("serve_app", args);
    match error {
        FilesError::Read(error) => usage(Args::new().with("why", Arg::Text(error.to_string()))).case("read"),
        FilesError::NoIndex => usage(Args::new()).case("no_index"),
        FilesError::TooMuch => usage(Args::new()).case("too_much"),
    }
}
