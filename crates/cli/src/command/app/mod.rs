//! `evenswath app`: the app's files, and what is done with them.

mod export;
mod files;

use words::Words;

use crate::args::{AppArgs, AppCommand};
use crate::error::CliError;
use crate::out::Answer;

pub use files::{built_in, of_folder};

/// Runs what was typed.
pub fn run(args: &AppArgs, words: &Words) -> Result<Answer, CliError> {
    match &args.command {
        AppCommand::Export { folder, app } => export::run(folder, app.as_deref(), words),
    }
}
