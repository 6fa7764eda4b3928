//! Why a catch test cannot be worked out.

use sprayer::FlowError;
use units::{Amount, Arg, Args, Coded, Kind, Phrase, ReadingError, Time, UnitSystem};

/// What a share is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShareOf {
    /// How far off a tip may be.
    Limit,
    /// The risk of being wrong that a verdict may carry.
    Risk,
}

impl ShareOf {
    /// Which sentence of the error is meant.
    const fn case(self) -> &'static str {
        match self {
            Self::Limit => "limit",
            Self::Risk => "risk",
        }
    }

    const fn would_do(self) -> &'static str {
        match self {
            Self::Limit => "more than 0 % and at most 100 %, as 10 %",
            Self::Risk => "more than 0 and less than 0.5, as 0.05",
        }
    }
}

fn time_text(time: Time) -> String {
    Amount::new(time, Kind::Time).text(UnitSystem::Us)
}

/// What is wrong with the catches, and what would do.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum CatchError {
    /// A catch over no time, or less.
    #[error("a catch over {} cannot be; the time must be more than nothing", time_text(*.given))]
    NoTime {
        /// The time as given.
        given: Time,
    },
    /// Nothing was caught at all.
    #[error("no tip was caught")]
    NothingCaught,
    /// More tips than any boom has.
    #[error("{tips} tips are more than any boom has (at most 1000)")]
    TooMany {
        /// How many were given.
        tips: usize,
    },
    /// A reading that does not go with its marks.
    #[error(transparent)]
    Reading(#[from] ReadingError),
    /// A new tip whose flow cannot be worked out.
    #[error(transparent)]
    NewTip(#[from] FlowError),
    /// A reading that this tip or cup cannot have given. Read again, or say that it is to be kept.
    #[error("tip {tip}: {reading} in {} cannot be: {}", time_text(*.time), .why.text(UnitSystem::Us))]
    Absurd {
        /// The tip's number.
        tip: u32,
        /// The reading as written.
        reading: String,
        /// Over what time.
        time: Time,
        /// What it would mean.
        why: Phrase,
    },
    /// A share that is none, such as a limit of nothing.
    #[error("a {} of {given} cannot be", .of.case())]
    Share {
        /// What it is of.
        of: ShareOf,
        /// The number as given.
        given: String,
    },
}

impl Coded for CatchError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoTime { .. } => "catch_no_time",
            Self::NothingCaught => "catch_nothing",
            Self::TooMany { .. } => "catch_too_many_tips",
            Self::Reading(error) => error.code(),
            Self::NewTip(error) => error.code(),
            Self::Absurd { .. } => "catch_absurd",
            Self::Share { .. } => "catch_share",
        }
    }

    fn case(&self) -> Option<&'static str> {
        match self {
            Self::Reading(error) => error.case(),
            Self::NewTip(error) => error.case(),
            Self::Share { of, .. } => Some(of.case()),
            _ => None,
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::NoTime { given } => Args::new().with("given", Arg::Amount(Amount::new(*given, Kind::Time))),
            Self::NothingCaught => Args::new(),
            Self::TooMany { tips } => {
                Args::new().with("tips", Arg::Count(u32::try_from(*tips).unwrap_or(u32::MAX)))
            }
            Self::Reading(error) => error.args(),
            Self::NewTip(error) => error.args(),
            Self::Absurd { tip, reading, time, why } => Args::new()
                .with("tip", Arg::Count(*tip))
                .with("reading", Arg::Text(reading.clone()))
                .with("time", Arg::Amount(Amount::new(*time, Kind::Time)))
                .with("why", Arg::Phrases(vec![why.clone()])),
            Self::Share { given, .. } => Args::new().with("given", Arg::Text(given.clone())),
        }
    }

    fn hint(&self) -> Option<String> {
        match self {
            Self::NoTime { .. } => Some("write how long each cup was held under its tip, as 30 s".to_string()),
            Self::NothingCaught => Some("write a reading for each tip, 0 for one that gives nothing".to_string()),
            Self::TooMany { .. } => Some("give the tips of one boom".to_string()),
            Self::Reading(error) => error.hint(),
            Self::NewTip(error) => error.hint(),
            Self::Absurd { .. } => {
                Some("look at the reading, its unit and the time; if it is right, say that doubtful readings are to be kept".to_string())
            }
            Self::Share { of, .. } => Some(of.would_do().to_string()),
        }
    }
}
