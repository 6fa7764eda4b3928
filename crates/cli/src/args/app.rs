//! The options of the app.

use std::path::PathBuf;

use clap::{Args, Subcommand};

/// `evenswath app`
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  evenswath app export my-site")]
pub struct AppArgs {
    #[command(subcommand)]
    pub command: AppCommand,
}

/// What can be done with the app.
#[derive(Debug, Subcommand)]
pub enum AppCommand {
    /// Write the app as a folder of files for any host that serves HTTPS
    #[command(after_help = "Example:\n  evenswath app export my-site")]
    Export {
        /// The folder to write: a new one, an empty one, or one that was written so before
        #[arg(value_name = "FOLDER")]
        folder: PathBuf,

        /// The folder of the app's files, where they are not in this program
        #[arg(long, value_name = "FOLDER")]
        app: Option<PathBuf>,
    },
}
