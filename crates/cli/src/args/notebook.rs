//! The options of the notebook.

use std::path::PathBuf;

use clap::{Args, Subcommand};

/// `evenswath notebook`
#[derive(Debug, Args)]
#[command(
    after_help = "Examples:\n  evenswath notebook import my-notebook my-visit.toml\n  evenswath notebook verify my-notebook\n  evenswath notebook export my-notebook > my-notebook.jsonl"
)]
pub struct NotebookArgs {
    #[command(subcommand)]
    pub command: NotebookCommand,
}

/// What can be done with a notebook.
#[derive(Debug, Subcommand)]
pub enum NotebookCommand {
    /// Take visit files and notebook files in; begins the notebook where there is none
    #[command(after_help = "Example:\n  evenswath notebook import farm-notebook my-visit.toml")]
    Import {
        /// The folder of the notebook
        #[arg(value_name = "FOLDER")]
        folder: PathBuf,

        /// Visit files (.toml) or exported notebooks (.jsonl)
        #[arg(value_name = "FILES", required = true)]
        files: Vec<PathBuf>,
    },
    /// Write the whole notebook as one plain file
    #[command(after_help = "Example:\n  evenswath notebook export my-notebook > my-notebook.jsonl")]
    Export {
        /// The folder of the notebook
        #[arg(value_name = "FOLDER")]
        folder: PathBuf,

        /// The file to write; standard output where none is named
        #[arg(long, value_name = "FILE")]
        to: Option<PathBuf>,
    },
    /// Say whether a notebook or an exported file is whole, and what is missing or was changed
    #[command(after_help = "Example:\n  evenswath notebook verify my-notebook")]
    Verify {
        /// The folder of the notebook, or an exported file
        #[arg(value_name = "PATH")]
        path: PathBuf,
    },
    /// Save what is whole of a damaged notebook and its copies into a new one
    #[command(after_help = "Example:\n  evenswath notebook save my-notebook --to saved-notebook")]
    Save {
        /// The folder of the damaged notebook; nothing in it is touched
        #[arg(value_name = "FOLDER")]
        folder: PathBuf,

        /// The folder of the new notebook
        #[arg(long, value_name = "FOLDER")]
        to: PathBuf,
    },
    /// Show every line, struck and withdrawn ones too
    #[command(after_help = "Example:\n  evenswath notebook log my-notebook")]
    Log {
        /// The folder of the notebook
        #[arg(value_name = "FOLDER")]
        folder: PathBuf,
    },
    /// Print a visit of the notebook as a visit file
    #[command(after_help = "Example:\n  evenswath notebook visit my-notebook")]
    Visit {
        /// The folder of the notebook
        #[arg(value_name = "FOLDER")]
        folder: PathBuf,

        /// Which visit, by its name; not needed where there is one
        #[arg(value_name = "VISIT")]
        visit: Option<String>,
    },
}
