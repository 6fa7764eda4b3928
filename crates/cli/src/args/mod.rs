//! What can be typed: the command, its subcommands and their options.

mod app;
mod boom;
mod catch;
mod diagnose;
mod frame;
mod help;
mod mistyped;
mod notebook;
mod pattern;
mod print;
mod reader;
mod serve;
mod steps;
mod symptom;
mod visit;

use clap::{CommandFactory, FromArgMatches, Parser, Subcommand};
use words::{Reader, Words};

pub use app::{AppArgs, AppCommand};
pub use boom::BoomArgs;
pub use catch::CatchArgs;
pub use diagnose::DiagnoseArgs;
pub use notebook::{NotebookArgs, NotebookCommand};
pub use pattern::PatternArgs;
pub use print::{FromVisit, PaperArgs, PrintArgs, PrintSheet, SheetArgs};
pub use reader::{Lang, Numbers, PaperSize, Units, language, typed};
pub use serve::ServeArgs;
pub use steps::{CourseArgs, FlowArgs, LoadArgs, RateArgs, SpacingArgs, SpeedArgs, WidthKind};
pub use symptom::SymptomArgs;
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

    /// Language of the words; names, codes and JSON keys are the same in every language
    #[arg(long, global = true, value_enum, default_value_t = Lang::En, help_heading = "For every command")]
    pub lang: Lang,

    /// How decimals are written for people; what is typed, and JSON, has a point
    #[arg(long, global = true, value_enum, default_value_t = Numbers::Point, help_heading = "For every command")]
    pub numbers: Numbers,

    /// Paper that sheets are made for
    #[arg(long, global = true, value_enum, default_value_t = PaperSize::Letter, help_heading = "For every command")]
    pub paper: PaperSize,

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
    /// Who reads the answer: four settings, none of which follows from another.
    pub fn reader(&self) -> Reader {
        Reader {
            language: self.lang.language(),
            numbers: self.numbers.format(),
            paper: self.paper.paper(),
            units: self.units.system(),
        }
    }
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
    /// How evenly the ground gets it across the boom, by height, angle and tips
    Pattern(PatternArgs),
    /// Catch test: how evenly the tips put out, and which to mend
    Catch(CatchArgs),
    /// What is most likely wrong, and what to look at next
    Diagnose(DiagnoseArgs),
    /// What is seen beside the readings: what brings it, and the next check
    Symptom(SymptomArgs),
    /// Loads and product for an area
    Load(LoadArgs),
    /// Pressure and flow at every tip, from the boom's hoses, valves and bodies
    Boom(BoomArgs),
    /// A whole visit from a file
    Visit(VisitArgs),
    /// The notebook: everything written, kept for good
    Notebook(NotebookArgs),
    /// Sheets to hand over: cups, cab card, tags, paper to fill in, card before the day
    Print(PrintArgs),
    /// The notebook and the app, for this machine or for phones in the same network
    Serve(ServeArgs),
    /// The app as files for any host
    App(AppArgs),
    /// Print completions for a shell
    #[command(after_help = "Example:\n  evenswath completions bash > evenswath.bash")]
    Completions {
        /// The shell
        shell: clap_complete::Shell,
    },
}

/// The command with its help in the reader's language.
pub fn command(words: &Words) -> clap::Command {
    help::in_words(Cli::command(), words)
}

/// Reads what was typed. Where it asks for help, or cannot be read, that is said, and the exit status given back.
pub fn read(typed: Vec<std::ffi::OsString>, words: &Words) -> Result<Cli, u8> {
    let mut command = command(words);
    let typed = reader::for_help(typed);
    let read = command.try_get_matches_from_mut(typed).and_then(|mut found| {
        Cli::from_arg_matches_mut(&mut found).map_err(|error| error.format(&mut command))
    });
    read.map_err(|error| mistyped::say(&error, words))
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
