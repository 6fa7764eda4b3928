//! Why there is no rate.

use crate::doubt::DoubtOf;
use units::{Amount, Arg, Args, Coded, Kind, UnitSystem, Volume};

/// What was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Input {
    /// The flow.
    Flow,
    /// The speed.
    Speed,
    /// The tip spacing.
    TipSpacing,
    /// The swath.
    Swath,
    /// A width.
    Width,
    /// What was caught.
    Catch,
    /// The course.
    Course,
    /// How long the catch lasted.
    CatchTime,
    /// What was used.
    Used,
    /// The distance driven.
    Distance,
    /// The area.
    Area,
    /// The tank.
    Tank,
    /// What was left in the tank.
    Left,
    /// The wetted width.
    Wetted,
    /// The strip wetted twice.
    OverlapStrip,
    /// The band.
    Band,
    /// The row spacing.
    Rows,
    /// The plot.
    Plot,
    /// The rate itself.
    Rate,
    /// A volume.
    Volume,
}

/// One row an input: its stable code, and its name for a message.
macro_rules! inputs {
    ($($input:ident: $code:literal, $name:literal;)*) => {
        impl Input {
            /// Everything that can be given.
            pub const ALL: &[Self] = &[$(Self::$input),*];

            /// The stable code.
            #[must_use]
            pub const fn code(self) -> &'static str {
                match self { $(Self::$input => $code),* }
            }

            /// The name for a message.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$input => $name),* }
            }

            /// The name, to be said in any language.
            #[must_use]
            pub const fn word(self) -> Arg {
                match self { $(Self::$input => Arg::word(concat!("input_", $code), $name)),* }
            }
        }
    };
}

inputs! {
    Flow: "flow", "the flow";
    Speed: "speed", "the speed";
    TipSpacing: "tip_spacing", "the tip spacing";
    Swath: "swath", "the swath";
    Width: "width", "the width";
    Catch: "catch", "the catch";
    Course: "course", "the course";
    CatchTime: "catch_time", "the time of the catch";
    Used: "used", "the volume used";
    Distance: "distance", "the distance driven";
    Area: "area", "the area";
    Tank: "tank", "the tank";
    Left: "left", "what was left in the tank";
    Wetted: "wetted", "the wetted width";
    OverlapStrip: "overlap", "the overlap";
    Band: "band", "the band";
    Rows: "rows", "the row spacing";
    Plot: "plot", "the plot";
    Rate: "rate", "the rate";
    Volume: "volume", "the volume";
}

impl Input {
    /// Whether it is a width that is sprayed.
    pub(super) const fn is_width(self) -> bool {
        matches!(self, Self::TipSpacing | Self::Swath | Self::Width | Self::Wetted | Self::Band | Self::Rows)
    }
}

/// What is wrong with what a rate is to be worked from, and what would do.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum RateError {
    /// Nothing, less than nothing or not a number.
    #[error("{} must be more than nothing, got {}", .what.name(), .given.text(UnitSystem::Us))]
    NotPositive {
        /// What was given.
        what: Input,
        /// The value.
        given: Amount,
    },
    /// A width that nothing sprays.
    #[error("{} must be 1/4 in to 500 ft, got {}", .what.name(), .given.text(UnitSystem::Us))]
    Width {
        /// What was given.
        what: Input,
        /// The value.
        given: Amount,
    },
    /// A doubt below nothing or that is not a number.
    #[error("the doubt of {} must be a number from nothing upwards, got {}", .of.name(), percent(*.given_percent))]
    Doubt {
        /// What is doubtful.
        of: DoubtOf,
        /// The doubt as given, in percent.
        given_percent: f64,
    },
    /// No tip at all, or more than any sprayer has.
    #[error("the number of tips must be 1 to 1000, got {given}")]
    Tips {
        /// The number as given.
        given: u32,
    },
    /// An overlap that leaves no swath.
    #[error(
        "the overlap must be from 0 % to less than 100 % of the wetted width, got {}",
        percent(*.given_percent)
    )]
    Overlap {
        /// The overlap as given, in percent of the wetted width.
        given_percent: f64,
    },
    /// As much left in the tank as was in it.
    #[error("what was left in the tank must be less than the tank, {}, got {}", volume(*.tank), volume(*.left))]
    NothingUsed {
        /// The tank.
        tank: Volume,
        /// What was left.
        left: Volume,
    },
}

fn volume(volume: Volume) -> String {
    Amount::new(volume, Kind::Volume).text(UnitSystem::Us)
}

fn percent(percent: f64) -> String {
    Arg::Percent(percent).text(UnitSystem::Us)
}

impl Coded for RateError {
    fn code(&self) -> &'static str {
        match self {
            Self::NotPositive { .. } => "rate_not_positive",
            Self::Width { .. } => "rate_width",
            Self::Doubt { .. } => "rate_doubt",
            Self::Tips { .. } => "rate_tips",
            Self::Overlap { .. } => "rate_overlap",
            Self::NothingUsed { .. } => "rate_nothing_used",
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::NotPositive { what, given } | Self::Width { what, given } => Args::new()
                .with("what", Arg::Text(what.code().to_string()))
                .with("input", what.word())
                .with("given", Arg::Amount(given.clone())),
            Self::Doubt { of, given_percent } => {
                Args::new().with("of", of.word()).with("given", Arg::Percent(*given_percent))
            }
            Self::Tips { given } => Args::new().with("given", Arg::Count(*given)),
            Self::Overlap { given_percent } => Args::new().with("given", Arg::Percent(*given_percent)),
            Self::NothingUsed { tank, left } => Args::new()
                .with("tank", Arg::Amount(Amount::new(*tank, Kind::Volume)))
                .with("left", Arg::Amount(Amount::new(*left, Kind::Volume))),
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NotPositive { .. } => "measure it, or take a method that does not need it",
            Self::Width { .. } => {
                "look at the number and its unit, as 20 in for one tip or 60 ft for the whole boom"
            }
            Self::Doubt { .. } => "leave it out to take the usual one",
            Self::Tips { .. } => "count the tips that spray",
            Self::Overlap { .. } => {
                "give the strip that the next pass wets again as a part of what one pass wets: 5 ft of 30 ft is 17 %"
            }
            Self::NothingUsed { .. } => "give what the tank held at the start and what was left at the end",
        };
        Some(hint.to_string())
    }
}
