//! The options of sheets to hand over.

use std::path::PathBuf;

use clap::{Args, Subcommand};

use super::Lang;

/// `evenswath print`
#[derive(Debug, Args)]
#[command(
    after_help = "Examples:\n  evenswath print cab my-visit.toml --to cab.html\n  evenswath print paper --tips 20 --sections 7,6,7 --to sheet.html\n  evenswath print before --lang es --beside en > before.html"
)]
pub struct PrintArgs {
    #[command(subcommand)]
    pub sheet: PrintSheet,
}

/// What can be printed.
#[derive(Debug, Subcommand)]
pub enum PrintSheet {
    /// The row of cups, large
    #[command(after_help = "Example:\n  evenswath print cups my-visit.toml --to cups.html")]
    Cups(FromVisit),
    /// The card for the cab: the setting to repeat, twice on a sheet
    #[command(after_help = "Example:\n  evenswath print cab my-visit.toml --to cab.html")]
    Cab(FromVisit),
    /// Tags to tie to tips that are to be mended, moved or caught again
    #[command(after_help = "Example:\n  evenswath print tags my-visit.toml --beside es --to tags.html")]
    Tags(FromVisit),
    /// The sheet to fill in by hand, with the sums
    #[command(after_help = "Example:\n  evenswath print paper --tips 20 --sections 7,6,7 --to sheet.html")]
    Paper(PaperArgs),
    /// The card to send before the day, and the kit list
    #[command(after_help = "Example:\n  evenswath print before --lang es --beside en > before.html")]
    Before(SheetArgs),
}

/// A sheet made from a visit.
#[derive(Debug, Args)]
pub struct FromVisit {
    /// The visit file; - for standard input
    #[arg(value_name = "FILE")]
    pub file: PathBuf,

    #[command(flatten)]
    pub sheet: SheetArgs,
}

/// A sheet to fill in.
#[derive(Debug, Args)]
pub struct PaperArgs {
    /// A visit file that says how many tips there are; - for standard input
    #[arg(value_name = "FILE", conflicts_with_all = ["tips", "sections"])]
    pub file: Option<PathBuf>,

    /// How many tips there are, 1 to 1000 [12 where nothing else says it]
    #[arg(long, value_name = "NUMBER", value_parser = clap::value_parser!(u32).range(1..=i64::from(report::make::MOST_TIPS)))]
    pub tips: Option<u32>,

    /// Tips of each section from the left: 7,6,7
    #[arg(long, value_name = "LIST", value_delimiter = ',', value_parser = clap::value_parser!(u32).range(1..=i64::from(report::make::MOST_TIPS)))]
    pub sections: Vec<u32>,

    #[command(flatten)]
    pub sheet: SheetArgs,
}

/// Where a sheet goes, and how it looks.
#[derive(Debug, Args)]
pub struct SheetArgs {
    /// The file to write, ending in .html or .pdf; the page goes to standard output where none is named
    #[arg(long, value_name = "FILE")]
    pub to: Option<PathBuf>,

    /// A second language beside the first
    #[arg(long, value_enum, value_name = "LANG")]
    pub beside: Option<Lang>,

    /// A sign for the head of the sheet, PNG or JPEG
    #[arg(long, value_name = "FILE")]
    pub picture: Option<PathBuf>,
}
