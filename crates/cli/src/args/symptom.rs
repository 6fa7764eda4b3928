//! The options of the symptoms.

use clap::Args;

/// `evenswath symptom`
#[derive(Debug, Args)]
#[command(after_help = "Examples:
  evenswath symptom                                        the symptoms and their words
  evenswath symptom needle_jumps foam --drive shaft        causes, the likeliest first, and the next check
  evenswath symptom needle_jumps foam --drive shaft --no tank_low --yes milky_water
  evenswath symptom --json                                 the whole table as data")]
pub struct SymptomArgs {
    /// What is seen, by its word; none lists the words
    #[arg(value_name = "SYMPTOM")]
    pub seen: Vec<String>,
    /// A symptom that was looked for and is not there; give it once for each
    #[arg(long, value_name = "SYMPTOM")]
    pub absent: Vec<String>,
    /// What drives the pump: shaft (PTO, engine, belt) or 12_volt
    #[arg(long, value_name = "DRIVE")]
    pub drive: Option<String>,
    /// What holds the pressure: by_hand (a regulator) or controller
    #[arg(long, value_name = "CONTROL")]
    pub control: Option<String>,
    /// Whether the pump has an air chamber: yes or no
    #[arg(long, value_name = "YES_NO")]
    pub air_chamber: Option<String>,
    /// The pressure that is sprayed at, which decides how far the needle may swing
    #[arg(long, value_name = "PRESSURE")]
    pub pressure: Option<String>,
    /// A check whose question is answered with yes; give it once for each
    #[arg(long, value_name = "CHECK")]
    pub yes: Vec<String>,
    /// A check whose question is answered with no
    #[arg(long, value_name = "CHECK")]
    pub no: Vec<String>,
    /// A check that is not wanted
    #[arg(long, value_name = "CHECK")]
    pub skip: Vec<String>,
}
