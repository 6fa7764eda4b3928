//! The options of the pattern across the boom.

use std::path::PathBuf;

use clap::Args;

/// `evenswath pattern`
#[derive(Debug, Args)]
#[command(after_help = "Examples:
  evenswath pattern --angle 110 --height \"20 in\" --spacing \"20 in\" --tips 13
  evenswath pattern --angle 80 --height \"14 in\" --spacing \"20 in\" --tips 13 --plugged 4
  evenswath pattern --angle 110 --height \"50 cm\" --spacing \"50 cm\" --tips 13 --flow \"7=115 %\" \\
      --tilt \"5=10 deg\" --units metric
  evenswath pattern --spacing \"50 cm\" --tips 13 --height \"50 cm\" --angle 110 \\
      --caught 0 2 9 19 28 33 35 35 33 28 19 9 2 0 --caught-groove \"10 cm\" --caught-height \"50 cm\"
  evenswath pattern my-visit.toml --json
What the ground gets is worked out for five shapes that a fan may have, and told from the least
to the most over them: nobody knows the shape of a fan that was not caught in grooves. The angle
falls with the pressure; give the one at the job's. The limit is 10 % of spread and 20 % for each
groove (ISO 16122-2 and EN 13790-1, from memory); nothing here was measured on a table, so
nothing complies. An overlap of 100 % means that each fan is twice as wide as the spacing: every
place lies under two. A boom in the field swings; that adds some 3.5 to 5.2 % that this cannot
see (Ooms et al., 2003). A catch test and a pattern see different faults; neither replaces the
other.")]
pub struct PatternArgs {
    /// A visit's file with fan_angle and boom_height; - for standard input
    #[arg(value_name = "FILE", conflicts_with_all = ["angle", "height", "spacing", "tips", "marks"])]
    pub file: Option<PathBuf>,
    /// How wide the fans spray at the job's pressure; a bare number is degrees
    #[arg(long, value_name = "ANGLE", required_unless_present = "file")]
    pub angle: Option<String>,
    /// How high the tips are over what is sprayed
    #[arg(long, value_name = "LENGTH", required_unless_present = "file")]
    pub height: Option<String>,
    /// How far apart the tips are meant to stand
    #[arg(long, value_name = "LENGTH", required_unless_present = "file")]
    pub spacing: Option<String>,
    /// How many tips there are
    #[arg(long, value_name = "COUNT", required_unless_present_any = ["file", "marks"], value_parser = clap::value_parser!(u32).range(1..=1000))]
    pub tips: Option<u32>,
    /// What one stretched tape shows at each tip, from the left, where they do not stand evenly
    #[arg(long, value_name = "MARK", num_args = 2.., conflicts_with = "tips")]
    pub marks: Vec<String>,
    /// Tips that are plugged, as 1,12
    #[arg(long, value_name = "TIPS", value_delimiter = ',', conflicts_with = "file")]
    pub plugged: Vec<u32>,
    /// A tip's flow over a sound one's, as "7=115 %"
    #[arg(long, value_name = "TIP=PERCENT", conflicts_with = "file")]
    pub flow: Vec<String>,
    /// How far a tip leans to the right, as "5=10 deg"; to the left with a minus
    #[arg(long, value_name = "TIP=ANGLE", conflicts_with = "file")]
    pub tilt: Vec<String>,
    /// How far a tip's spray is set off to the right, as "5=2 in"; to the left with a minus
    #[arg(long, value_name = "TIP=LENGTH", conflicts_with = "file")]
    pub offset: Vec<String>,
    /// A tip that hangs at another height, as "12=16 in"
    #[arg(long, value_name = "TIP=LENGTH", conflicts_with = "file")]
    pub hangs: Vec<String>,
    /// How far the fans are turned out of the boom's line, so that they do not hit one another
    #[arg(long, value_name = "ANGLE", conflicts_with = "file")]
    pub twist: Option<String>,
    /// Width of a groove: 100 mm for sprayers, 50 mm to look closer
    #[arg(long, value_name = "LENGTH", default_value = "100 mm")]
    pub groove: String,
    /// One shape instead of five: triangle, parabola, raised-cosine, beta, truncated-normal, even
    #[arg(long, value_name = "SHAPE", conflicts_with = "caught")]
    pub shape: Option<String>,
    /// What one tip gave in each groove from the left, instead of shapes
    #[arg(long, value_name = "AMOUNT", num_args = 1.., requires_all = ["caught_groove", "caught_height"], conflicts_with = "file")]
    pub caught: Vec<f64>,
    /// Width of those grooves
    #[arg(long, value_name = "LENGTH", requires = "caught")]
    pub caught_groove: Option<String>,
    /// Height at which they were caught
    #[arg(long, value_name = "LENGTH", requires = "caught")]
    pub caught_height: Option<String>,
    /// Overlap wanted of the fans, to get the height for it
    #[arg(long, value_name = "PERCENT")]
    pub overlap: Option<String>,
}
