//! The options of a whole visit.

use std::path::PathBuf;

use clap::{Args, Subcommand};

/// `evenswath visit`
#[derive(Debug, Args)]
#[command(
    after_help = "Examples:\n  evenswath visit new > my-visit.toml\n  evenswath visit check my-visit.toml"
)]
pub struct VisitArgs {
    #[command(subcommand)]
    pub command: VisitCommand,
}

/// What can be done with a visit file.
#[derive(Debug, Subcommand)]
pub enum VisitCommand {
    /// Work out everything that the file has readings for
    #[command(
        after_help = "Examples:\n  evenswath visit check my-visit.toml\n  evenswath visit check my-visit.toml --json --units metric"
    )]
    Check {
        /// The visit file; - for standard input
        #[arg(value_name = "FILE")]
        file: PathBuf,
    },
    /// Print a commented visit file to fill in
    #[command(after_help = "Example:\n  evenswath visit new > my-visit.toml")]
    New,
    /// Print the JSON Schema of the visit file
    #[command(after_help = "Example:\n  evenswath visit schema > visit.schema.json")]
    Schema,
}
