//! The options of the diagnosis.

use std::path::PathBuf;

use clap::Args;

/// `evenswath diagnose`
#[derive(Debug, Args)]
#[command(after_help = "Examples:
  evenswath diagnose my-visit.toml
  evenswath diagnose --batch sprayers.jsonl --json
  evenswath diagnose my-visit.toml --records season.toml
The file is a visit file, or one test. A line of a batch:
  {\"rated\": \"0.30 gal/min @ 40 psi\", \"pressure\": \"40 psi\", \"time\": \"30 s\", \"step\": \"1 fl oz\",
   \"sections\": [[\"19 fl oz\", \"18 fl oz\"], [\"15 fl oz\", null]]}
Sections go from the left as the driver sits; null where a tip was not caught, a list where it was
caught again. One test in a file of its own has the same fields as TOML.
Beside the cups a line may tell:
  \"second\": {\"pressure\": \"80 psi\", \"sections\": [[\"27 fl oz\", null], [null, null]]}
  \"tip_pressure\": [{\"tip\": 2, \"pressure\": \"36 psi\", \"marks\": \"1 psi\"}], \"gauge_marks\": \"2 psi\",
  \"gauge_rests_at\": \"3 psi\", \"new_tip\": [\"19 fl oz\"], \"groups\": [[1, 12]],
  \"swapped\": [{\"tips\": [2, 3], \"readings\": [\"19 fl oz\", \"15 fl oz\"]}],
  \"seen\": [{\"tip\": 2, \"what\": \"streaky_fan\"}], \"looked\": {\"strainers_clean\": \"no\", \"foam\": \"yes\"}
Cups under one timed run carry its number: {\"reading\": \"19 fl oz\", \"run\": 1}.
A file of records counts what is certain, of a sprayer all tips or none:
  [tips]      sound = 220, worn = 9, partly_plugged = 6, plugged = 2, wrong_tip = 3, a line each
  [cups]      right = 236, misread = 4
  [sections]  free = 28, restricted = 2, shut = 0
  [swaps]     tip = 6, place = 1")]
pub struct DiagnoseArgs {
    /// The visit file, or a file of one test; - for standard input
    #[arg(value_name = "FILE", required_unless_present = "batch")]
    pub file: Option<PathBuf>,
    /// A file of JSON lines, one test each; - for standard input
    #[arg(long, value_name = "FILE", conflicts_with = "file")]
    pub batch: Option<PathBuf>,
    /// What turned out before, added to what is believed: a file of counts, or a visit file with what was done after; may stand several times
    #[arg(long, value_name = "FILE")]
    pub records: Vec<PathBuf>,
}
