//! What can be typed: the command, its subcommands and their options.

mod catch;
mod steps;
mod visit;

use std::ffi::OsString;

use clap::{Parser, Subcommand, ValueEnum};
use units::UnitSystem;

pub use catch::CatchArgs;
pub use steps::{CourseArgs, FlowArgs, LoadArgs, RateArgs, SpacingArgs, SpeedArgs, WidthKind};
pub use visit::{VisitArgs, VisitCommand};

/// Calibrate a boom sprayer: readings in, what it puts out, what to fix and what goes in the tank out.
#[derive(Debug, Parser)]
#[command(name = "evenswath", version, arg_required_else_help = true, after_help = AFTER)]
pub struct Cli {
    /// Print one JSON object (one for each line with --batch) and nothing else on standard output
    #[arg(long, global = true, help_heading = "For every command")]
    pub json: bool,

    /// Units of the answer; inputs may be in any unit and must carry it
    #[arg(long, global = true, value_enum, default_value_t = Units::Us, help_heading = "For every command")]
    pub units: Units,

    /// Exit with status 1 when a verdict is "outside"
    #[arg(long, global = true, help_heading = "For every command")]
    pub strict: bool,

    /// Show how each number was reached: the formula, the figures put in, the source
    #[arg(long, global = true, help_heading = "For every command")]
    pub why: bool,

    #[command(subcommand)]
    pub command: Command,
}

impl Cli {
    /// The units of the answer.
    pub fn system(&self) -> UnitSystem {
        match self.units {
            Units::Us => UnitSystem::Us,
            Units::Metric => UnitSystem::Metric,
        }
    }
}

/// The two sets of units.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum Units {
    /// gal/ac, mph, psi
    Us,
    /// L/ha, km/h, bar
    Metric,
}

/// What can be done.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// The length to drive so that a cup shows the rate
    Course(CourseArgs),
    /// Speed from timed runs over a measured course
    Speed(SpeedArgs),
    /// Application rate from what was measured
    Rate(RateArgs),
    /// Flow of a tip at a pressure, with water or a heavier carrier
    Flow(FlowArgs),
    /// Whether the tips stand evenly, and the fewest to move
    Spacing(SpacingArgs),
    /// Catch test: how evenly the tips put out, and which to mend
    Catch(CatchArgs),
    /// Loads and product for an area
    Load(LoadArgs),
    /// A whole visit from a file
    Visit(VisitArgs),
    /// Print completions for a shell
    #[command(after_help = "Example:\n  evenswath completions bash > evenswath.bash")]
    Completions {
        /// The shell
        shell: clap_complete::Shell,
    },
}

/// What was typed. A number below nothing is written with the minus sign of print, or it would be taken for an
/// option: `--width "-5 in"` shall hear that no width is less than nothing.
pub fn typed() -> impl Iterator<Item = OsString> {
    std::env::args_os().map(|word| match word.to_str().and_then(|text| text.strip_prefix('-')) {
        Some(rest) if rest.starts_with(|sign: char| sign.is_ascii_digit() || sign == '.') => {
            OsString::from(format!("−{rest}"))
        }
        _ => word,
    })
}

const AFTER: &str = "\
Examples:
  evenswath course --width \"20 in\"
  evenswath rate --catch \"15 fl oz\" --course \"204 ft\" --width \"20 in\"
  evenswath visit new > my-visit.toml
  evenswath visit check my-visit.toml

Quantities carry their unit: \"20 in\", \"50.8 cm\", \"16 ft 8 in\", \"0.30 gal/min @ 40 psi\", \"14 fl oz\",
\"1:05\". gal, qt, pt and fl oz are US; imperial ones are \"imp gal\". The decimal mark is a point.

Exit status: 0 computed, 1 with --strict when a verdict is outside, 2 the input is at fault,
3 something could not be read or kept, 70 a fault of ours.

The label is the law. Where this and the label or a local rule differ, they decide.";
