//! The options of the catch test.

use std::path::PathBuf;

use clap::Args;

/// What belongs to one test; in a batch it stands in the test's own line.
const OF_ONE_TEST: [&str; 14] = [
    "readings",
    "time",
    "step",
    "limit",
    "rated",
    "pressure",
    "cup_holds",
    "timer",
    "cup_scale",
    "watch",
    "handling",
    "risk",
    "density",
    "order",
];

/// `evenswath catch`
#[derive(Debug, Args)]
#[command(after_help = "Examples:
  evenswath catch --time \"30 s\" --step \"1 fl oz\" 14 14.5 15 13 14.5 - 17
  evenswath catch --time \"30 s\" --step \"10 mL\" --limit mean-5 \\
      --rated \"0.30 gal/min @ 40 psi\" --pressure \"30 psi\" 490 500 480
  evenswath catch --batch readings.jsonl --json
Readings go from the left as the driver sits: 14+14.5 where a tip was caught again, - where it
was not caught. A line of a batch:
  {\"time\": \"30 s\", \"step\": \"1 fl oz\", \"limit\": \"10 %\", \"readings\": [\"14 fl oz\", null]}")]
pub struct CatchArgs {
    /// Readings, one for each tip from the left; a bare number takes the unit of --step
    #[arg(value_name = "READING", required_unless_present = "batch")]
    pub readings: Vec<String>,
    /// How long each cup was held
    #[arg(long, value_name = "TIME", required_unless_present = "batch")]
    pub time: Option<String>,
    /// How far the marks of the cup are apart
    #[arg(long, value_name = "VOLUME", required_unless_present = "batch")]
    pub step: Option<String>,
    /// How far a tip may be off: a percentage of the mean, or a named limit (mean-5, mean-10, new-10, new-over-10, inspection-10-15); 10 % where left out
    #[arg(long, value_name = "LIMIT")]
    pub limit: Option<String>,
    /// Flow of a new tip at a pressure, to hold each tip against
    #[arg(long, value_name = "FLOW @ PRESSURE")]
    pub rated: Option<String>,
    /// Pressure at the tips, where it is not the rated one
    #[arg(long, value_name = "PRESSURE", requires = "rated")]
    pub pressure: Option<String>,
    /// How much the cup holds
    #[arg(long, value_name = "VOLUME")]
    pub cup_holds: Option<String>,
    /// How sharply the watch is started, and again stopped (standard uncertainty); 0.2 s where left out
    #[arg(long, value_name = "TIME")]
    pub timer: Option<String>,
    /// How well the cup's scale is known (standard uncertainty); 1 % where left out
    #[arg(long, value_name = "PERCENT")]
    pub cup_scale: Option<String>,
    /// How well the watch runs (standard uncertainty); 0.1 % where left out
    #[arg(long, value_name = "PERCENT")]
    pub watch: Option<String>,
    /// How well one cup is handled: foam, tilt, a wet cup (standard uncertainty); 0.5 % where left out
    #[arg(long, value_name = "PERCENT")]
    pub handling: Option<String>,
    /// Risk of a wrong verdict that is taken; 0.05 where left out
    #[arg(long, value_name = "RISK", value_parser = risk)]
    pub risk: Option<f64>,
    /// Tips in the order they were caught, as 1,2,3,1 where tip 1 was caught again at the end; shows a drift
    #[arg(long, value_name = "TIPS", value_delimiter = ',')]
    pub order: Vec<u32>,
    /// Density of the liquid where cups were weighed; water where left out
    #[arg(long, value_name = "DENSITY")]
    pub density: Option<String>,
    /// Keep readings that cannot be, with a word about each
    #[arg(long)]
    pub keep_doubtful: bool,
    /// A file of JSON lines, one catch test each; - for standard input
    #[arg(long, value_name = "FILE", conflicts_with_all = OF_ONE_TEST)]
    pub batch: Option<PathBuf>,
}

/// A risk as typed; what is none is shown as it was typed.
fn risk(text: &str) -> Result<f64, String> {
    let risk = text.trim().parse().ok().filter(|risk| *risk > 0.0 && *risk < 0.5);
    risk.ok_or_else(|| "more than 0 and less than 0.5 is needed, as 0.05".to_string())
}
