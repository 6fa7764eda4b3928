//! The options of a whole visit.

use std::path::PathBuf;

use clap::{Args, Subcommand};

use super::Lang;

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
        after_help = "Examples:\n  evenswath visit check my-visit.toml\n  evenswath visit check my-visit.toml --json --units metric\n  evenswath visit check my-visit.toml --sheet my-visit.html"
    )]
    Check {
        /// The visit file; - for standard input
        #[arg(value_name = "FILE")]
        file: PathBuf,

        /// Write the visit's sheet as well: a page (.html) or a PDF (.pdf)
        #[arg(long, value_name = "FILE")]
        sheet: Option<PathBuf>,

        /// A second language beside the first on the sheet
        #[arg(long, value_enum, value_name = "LANG", requires = "sheet")]
        beside: Option<Lang>,

        /// A sign for the head of the sheet, PNG or JPEG
        #[arg(long, value_name = "FILE", requires = "sheet")]
        picture: Option<PathBuf>,
    },
    /// Print a commented visit file to fill in
    #[command(after_help = "Example:\n  evenswath visit new > my-visit.toml")]
    New,
    /// Print the JSON Schema of the visit file
    #[command(after_help = "Example:\n  evenswath visit schema > visit.schema.json")]
    Schema,
}
