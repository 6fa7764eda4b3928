//! Tip sizes of ISO 10625: the number tells the flow, the colour tells the number.

use crate::flow::{FlowError, RatedFlow};
use units::{Arg, Args, Coded, Flow, Pressure};

/// One size of the standard's series.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TipSize(&'static Row);

/// The two nominal scales. They differ by 1.3 % (0.20 gal/min at 40 psi is 0.790 L/min at 3 bar, not 0.800),
/// so one test must not mix them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scale {
    /// US gallons a minute at 40 psi.
    UsAt40Psi,
    /// Litres a minute at 3 bar.
    MetricAt3Bar,
}

impl TipSize {
    /// Looks a size up by its number as printed on the tip, such as `"03"` or `"015"`.
    ///
    /// *Errors*: a number that is not in the series.
    pub fn named(text: &str) -> Result<Self, SizeError> {
        let wanted = text.trim();
        SIZES
            .iter()
            .find(|row| row.name == wanted)
            .map(Self)
            .ok_or_else(|| SizeError::Unknown { given: wanted.to_string() })
    }

    /// Every size, smallest first.
    pub fn all() -> impl Iterator<Item = Self> {
        SIZES.iter().map(Self)
    }

    /// The number as printed on the tip.
    #[must_use]
    pub const fn name(self) -> &'static str {
        self.0.name
    }

    /// The colour of the tip. It tells the flow; it has nothing to do with the colours of droplet classes.
    #[must_use]
    pub const fn colour(self) -> &'static str {
        self.0.colour
    }

    /// The nominal flow with water.
    ///
    /// *Errors*: none in practice; the series holds no flow of nothing.
    ///
    /// *Source*: ISO 10625 (scope seen; flows in gal/min from Univ. of Arizona bulletin, 2012; L/min at 3 bar and
    /// sizes 005, 0075, 10, 15, 20 from memory: 0.4 L/min for each size unit 01).
    pub fn rated(self, scale: Scale) -> Result<RatedFlow, FlowError> {
        let tenths = f64::from(self.0.thousandths) / 1000.0;
        match scale {
            Scale::UsAt40Psi => RatedFlow::new(Flow::gallons_per_minute(tenths), Pressure::psi(40.0)),
            Scale::MetricAt3Bar => RatedFlow::new(Flow::litres_per_minute(tenths * 4.0), Pressure::bar(3.0)),
        }
    }
}

#[derive(Debug, PartialEq, Eq)]
struct Row {
    name: &'static str,
    colour: &'static str,
    /// Thousandths of a US gallon a minute at 40 psi.
    thousandths: u32,
}

const fn row(name: &'static str, colour: &'static str, thousandths: u32) -> Row {
    Row { name, colour, thousandths }
}

/// The series. Source: ISO 10625; see [`TipSize::rated`] for how each part was seen.
const SIZES: &[Row] = &[
    row("005", "violet", 50),
    row("0075", "pink", 75),
    row("01", "orange", 100),
    row("015", "green", 150),
    row("02", "yellow", 200),
    row("025", "lilac", 250),
    row("03", "blue", 300),
    row("04", "red", 400),
    row("05", "brown", 500),
    row("06", "grey", 600),
    row("08", "white", 800),
    row("10", "light blue", 1000),
    row("15", "light green", 1500),
    row("20", "black", 2000),
];

/// Why a size is not known.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SizeError {
    /// Not in the series. The number stands on the tip behind the angle.
    #[error("\"{given}\" is not a tip size of ISO 10625")]
    Unknown {
        /// The size as given.
        given: String,
    },
}

impl Coded for SizeError {
    fn code(&self) -> &'static str {
        "tip_size_unknown"
    }

    fn args(&self) -> Args {
        let Self::Unknown { given } = self;
        Args::new().with("given", Arg::Text(given.clone())).with("known", Arg::Text(known_names()))
    }

    fn hint(&self) -> Option<String> {
        Some(format!("sizes that would do: {}; or give the flow, as 0.30 gal/min @ 40 psi", known_names()))
    }
}

/// The numbers as they stand on the tips.
fn known_names() -> String {
    SIZES.iter().map(|row| row.name).collect::<Vec<_>>().join(", ")
}
