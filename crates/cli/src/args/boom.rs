//! The options of a boom's plumbing.

use std::path::PathBuf;

use clap::Args;

/// `evenswath boom`
#[derive(Debug, Args)]
#[command(
    after_help = "Examples:\n  evenswath boom my-boom.toml\n  evenswath boom my-boom.toml --json --units metric"
)]
pub struct BoomArgs {
    /// The file of the boom's hoses, bodies and tips; - for standard input
    #[arg(value_name = "FILE")]
    pub file: PathBuf,
}
