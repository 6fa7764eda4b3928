//! `evenswath notebook`: what was written, kept for good.

mod export;
mod import;
mod kept;
mod log;
mod save;
mod verify;

use words::Words;

use crate::args::{NotebookArgs, NotebookCommand};
use crate::error::CliError;
use crate::out::Answer;

/// Does what was asked for.
pub fn run(args: &NotebookArgs, words: &Words) -> Result<Answer, CliError> {
    match &args.command {
        NotebookCommand::Import { folder, files } => import::run(folder, files, words),
        NotebookCommand::Export { folder, to } => export::run(folder, to.as_deref(), words),
        NotebookCommand::Verify { path } => verify::run(path, words),
        NotebookCommand::Save { folder, to } => save::run(folder, to, words),
        NotebookCommand::Log { folder } => log::run(folder, words),
        NotebookCommand::Visit { folder, visit } => export::visit(folder, visit.as_deref()),
    }
}
