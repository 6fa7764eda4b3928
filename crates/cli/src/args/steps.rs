//! The options of the single steps.

use clap::{ArgGroup, Args, ValueEnum};

/// `evenswath course`
#[derive(Debug, Args)]
#[command(after_help = "Examples:
  evenswath course --width \"20 in\"                    204 ft: fl oz from one tip = gal/ac
  evenswath course --width \"50 cm\" --units metric     100 m: mL from one tip / 5 = L/ha
  evenswath course --width \"30 ft\" --boomless         for a cluster's whole catch")]
pub struct CourseArgs {
    /// Width one catch stands for: tip spacing, row spacing, band, or the whole swath
    #[arg(long, value_name = "LENGTH")]
    pub width: String,
    /// A boomless or cluster tip, caught whole over its effective swath
    #[arg(long)]
    pub boomless: bool,
    /// Speed to be driven, to see how long the course takes
    #[arg(long, value_name = "SPEED")]
    pub speed: Option<String>,
}

/// `evenswath speed`
#[derive(Debug, Args)]
#[command(after_help = "Examples:
  evenswath speed --distance \"204 ft\" --time \"27.8 s\" --time \"28.3 s\" --dash \"5.2 mph\"
  evenswath speed --distance \"204 ft\" --there \"27.8 s\" --back \"28.9 s\"")]
pub struct SpeedArgs {
    /// Length of the measured course
    #[arg(long, value_name = "LENGTH")]
    pub distance: String,
    /// Time of a run; give one for each run
    #[arg(long, value_name = "TIME")]
    pub time: Vec<String>,
    /// Time of a run one way
    #[arg(long, value_name = "TIME")]
    pub there: Vec<String>,
    /// Time of a run the other way
    #[arg(long, value_name = "TIME")]
    pub back: Vec<String>,
    /// What the dash showed
    #[arg(long, value_name = "SPEED")]
    pub dash: Option<String>,
    /// How sharply the watch is started, and again stopped
    #[arg(long, value_name = "TIME", default_value = "0.2 s")]
    pub timer: String,
}

/// Which width a rate is worked out with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum WidthKind {
    /// One tip's flow over the tip spacing, or the whole boom's over its swath
    Broadcast,
    /// One tip's flow over the width of its band
    Band,
    /// Several tips to a row: the row's flow over the row spacing
    Directed,
    /// The whole cluster's flow over its effective swath
    Boomless,
    /// A hand wand or backpack: its flow over the width sprayed while walking
    Hand,
}

/// `evenswath rate`
#[derive(Debug, Args)]
#[command(
    group(ArgGroup::new("what").required(true).args(["flow", "catch", "used"])),
    after_help = "Examples:
  evenswath rate --flow \"0.30 gal/min\" --speed \"5 mph\" --width \"20 in\"
  evenswath rate --flow \"0.30 gal/min +- 2 %\" --speed \"5 mph +- 0.1 mph\" --width \"20 in\"
  evenswath rate --catch \"15 fl oz\" --course \"204 ft\" --width \"20 in\"
  evenswath rate --used \"6.5 gal\" --distance \"660 ft\" --swath \"21 ft 8 in\"
  evenswath rate --used \"200 gal\" --area \"13.5 ac\"
  evenswath rate --flow \"0.9 gal/min\" --speed \"4 mph\" --row \"30 in\" --tips-per-row 3
  evenswath rate --kind band --flow \"0.30 gal/min\" --speed \"5 mph\" --width \"10 in\" --row \"30 in\""
)]
pub struct RateArgs {
    /// Flow of one tip, of a row's tips, of a cluster or of the whole boom
    #[arg(long, value_name = "FLOW", requires = "speed")]
    pub flow: Option<String>,
    /// Speed over the ground
    #[arg(long, value_name = "SPEED", conflicts_with_all = ["catch", "used"])]
    pub speed: Option<String>,
    /// Width the flow or catch stands for
    #[arg(long, value_name = "LENGTH", conflicts_with = "used")]
    pub width: Option<String>,
    /// What that width is
    #[arg(long, value_enum, default_value_t = WidthKind::Broadcast)]
    pub kind: WidthKind,
    /// Row spacing, for directed tips
    #[arg(long, value_name = "LENGTH", conflicts_with = "used")]
    pub row: Option<String>,
    /// Tips directed at a row, where the flow is one tip's
    #[arg(long, value_name = "COUNT", requires = "row", value_parser = clap::value_parser!(u32).range(1..=1000))]
    pub tips_per_row: Option<u32>,
    /// What one tip gave over the time of driving the course
    #[arg(long, value_name = "VOLUME", requires = "course")]
    pub catch: Option<String>,
    /// Length of the course
    #[arg(long, value_name = "LENGTH", conflicts_with_all = ["flow", "used"])]
    pub course: Option<String>,
    /// What it took to fill up again
    #[arg(long, value_name = "VOLUME")]
    pub used: Option<String>,
    /// Distance over which it was used
    #[arg(long, value_name = "LENGTH", requires = "swath", conflicts_with_all = ["flow", "catch"])]
    pub distance: Option<String>,
    /// Swath: tips times spacing, not the boom's length
    #[arg(long, value_name = "LENGTH", conflicts_with_all = ["flow", "catch", "area"])]
    pub swath: Option<String>,
    /// Area over which it was used
    #[arg(long, value_name = "AREA", conflicts_with_all = ["flow", "catch", "distance"])]
    pub area: Option<String>,
}

/// `evenswath flow`
#[derive(Debug, Args)]
#[command(
    group(ArgGroup::new("tip").required(true).args(["rated", "size"])),
    after_help = "Examples:
  evenswath flow --size 03 --pressure \"30 psi\"
  evenswath flow --rated \"0.30 gal/min @ 40 psi\" --pressure \"30 psi\" --density \"10.65 lb/gal\"
  evenswath flow --size 03 --flow \"0.26 gal/min\"       the pressure that gives a flow"
)]
pub struct FlowArgs {
    /// Rated flow of water at a pressure
    #[arg(long, value_name = "FLOW @ PRESSURE")]
    pub rated: Option<String>,
    /// ISO 10625 size printed on the tip
    #[arg(long, value_name = "SIZE")]
    pub size: Option<String>,
    /// Pressure at the tip
    #[arg(long, value_name = "PRESSURE", required_unless_present = "flow", conflicts_with = "flow")]
    pub pressure: Option<String>,
    /// A flow of the liquid, to get the pressure that gives it
    #[arg(long, value_name = "FLOW")]
    pub flow: Option<String>,
    /// Density of the carrier, where it is not water
    #[arg(long, value_name = "DENSITY")]
    pub density: Option<String>,
}

/// `evenswath spacing`
#[derive(Debug, Args)]
#[command(after_help = "Examples:
  evenswath spacing --intended \"20 in\" --marks \"0 in\" \"20 in\" \"41.5 in\" \"60 in\" \"80 in\"
  evenswath spacing --intended \"20 in\" \"20 in\" \"21.5 in\" \"18.5 in\"
Marks read off one stretched tape are better than gaps: their errors do not add up.")]
pub struct SpacingArgs {
    /// How far apart the tips are meant to stand
    #[arg(long, value_name = "LENGTH")]
    pub intended: String,
    /// Gaps between neighbours, from the left as the driver sits
    #[arg(value_name = "GAP", required_unless_present = "marks", conflicts_with = "marks")]
    pub gaps: Vec<String>,
    /// What one stretched tape shows at each tip, from the left
    #[arg(long, value_name = "MARK", num_args = 2..)]
    pub marks: Vec<String>,
    /// How far the marks of the tape are apart
    #[arg(long, value_name = "LENGTH")]
    pub step: Option<String>,
    /// How far a gap may be off
    #[arg(long, value_name = "PERCENT", default_value = "5 %")]
    pub limit: String,
    /// Tips that cannot be moved, as 1,12
    #[arg(long, value_name = "TIPS", value_delimiter = ',')]
    pub fixed: Vec<u32>,
}

/// `evenswath load`
#[derive(Debug, Args)]
#[command(after_help = "Examples:
  evenswath load --area \"25 ac\" --rate \"20 gal/ac\" --tank \"500 gal\" --product \"Product A: 3 pt/ac\"
  evenswath load --area \"40 ac\" --rate \"14.6 gal/ac\" --tank \"200 gal\" \\
      --product \"Product A: 2 pt/ac\" --product \"Adjuvant: 0.25 % v/v\"
Use the rate the sprayer was measured at: mix for what it puts out.")]
pub struct LoadArgs {
    /// Area to spray
    #[arg(long, value_name = "AREA")]
    pub area: String,
    /// Application rate
    #[arg(long, value_name = "RATE")]
    pub rate: String,
    /// What the tank holds
    #[arg(long, value_name = "VOLUME")]
    pub tank: String,
    /// NAME: RATE, as "Product A: 3 pt/ac", "2 pt/100 gal", "0.25 % v/v", "1.5 lb ai/ac at 4 lb ai/gal"
    #[arg(long, value_name = "NAME: RATE")]
    pub product: Vec<String>,
}
