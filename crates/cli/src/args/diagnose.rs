//! The options of the diagnosis.

use std::path::PathBuf;

use clap::Args;

/// `evenswath diagnose`
#[derive(Debug, Args)]
#[command(after_help = "Examples:
  evenswath diagnose my-visit.toml
  evenswath diagnose --batch sprayers.jsonl --json
The file is a visit file, or one test. A line of a batch:
  {\"rated\": \"0.30 gal/min @ 40 psi\", \"pressure\": \"40 psi\", \"time\": \"30 s\", \"step\": \"1 fl oz\",
   \"sections\": [[\"19 fl oz\", \"18 fl oz\"], [\"15 fl oz\", null]]}
Sections go from the left as the driver sits; null where a tip was not caught, a list where it was
caught again. One test in a file of its own has the same fields as TOML.")]
pub struct DiagnoseArgs {
    /// The visit file, or a file of one test; - for standard input
    #[arg(value_name = "FILE", required_unless_present = "batch")]
    pub file: Option<PathBuf>,
    /// A file of JSON lines, one test each; - for standard input
    #[arg(long, value_name = "FILE", conflicts_with = "file")]
    pub batch: Option<PathBuf>,
}
