//! Why spacing cannot be worked out.

use super::MOST_TIPS;
use units::{Amount, Arg, Args, Coded, Kind, Length, UnitSystem};

/// What is wrong with the readings of the spacing, and what would do.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SpacingError {
    /// An intended spacing that is no length.
    #[error("the intended spacing must be more than nothing, got {}", width(*.given))]
    Intended {
        /// The spacing as given.
        given: Length,
    },
    /// Fewer than two tips, so that there is no gap.
    #[error("{} no gap; at least 2 tips are needed", if *.tips == 1 { "one tip has".to_string() } else { format!("{tips} tips have") })]
    TooFew {
        /// How many tips the readings stand for.
        tips: usize,
    },
    /// More tips than any boom has.
    #[error("{tips} tips are more than any boom has (at most {MOST_TIPS})")]
    TooMany {
        /// How many tips the readings stand for.
        tips: usize,
    },
    /// A gap that is no length.
    #[error("gap {number} must be more than nothing, got {}", width(*.given))]
    Gap {
        /// Which gap, from the left.
        number: u32,
        /// The gap as given.
        given: Length,
    },
    /// A mark that is not beyond the one before it. Read the tape from the left end of the boom.
    #[error("the mark of tip {tip}, {}, is not beyond the mark before it, {}", width(*.given), width(*.before))]
    MarkOrder {
        /// Which tip, from the left.
        tip: u32,
        /// The mark as given.
        given: Length,
        /// The mark before it.
        before: Length,
    },
    /// A step of the tape that is no length.
    #[error("the step of the tape must be more than nothing, got {}", width(*.given))]
    Step {
        /// The step as given.
        given: Length,
    },
    /// A limit that is none.
    #[error("the limit must be more than 0 % and less than 50 % of the spacing, got {} %", units::sensible(*.given_percent))]
    Limit {
        /// The limit as given, in percent.
        given_percent: f64,
    },
    /// A tip said to be fixed that there is not.
    #[error("tip {tip} cannot be a fixed one; the boom has tips 1 to {tips}")]
    NoSuchTip {
        /// The tip as given.
        tip: u32,
        /// How many there are.
        tips: u32,
    },
}

fn width(length: Length) -> String {
    Amount::new(length, Kind::Width).text(UnitSystem::Us)
}

impl Coded for SpacingError {
    fn code(&self) -> &'static str {
        match self {
            Self::Intended { .. } => "spacing_intended",
            Self::TooFew { .. } => "spacing_too_few_tips",
            Self::TooMany { .. } => "spacing_too_many_tips",
            Self::Gap { .. } => "spacing_gap",
            Self::MarkOrder { .. } => "spacing_mark_order",
            Self::Step { .. } => "spacing_step",
            Self::Limit { .. } => "spacing_limit",
            Self::NoSuchTip { .. } => "spacing_no_such_tip",
        }
    }

    fn args(&self) -> Args {
        let length = |length: &Length| Arg::Amount(Amount::new(*length, Kind::Width));
        match self {
            Self::Intended { given } | Self::Step { given } => Args::new().with("given", length(given)),
            Self::TooFew { tips } | Self::TooMany { tips } => {
                Args::new().with("tips", Arg::Count(u32::try_from(*tips).unwrap_or(u32::MAX)))
            }
            Self::Gap { number, given } => {
                Args::new().with("number", Arg::Count(*number)).with("given", length(given))
            }
            Self::MarkOrder { tip, given, before } => Args::new()
                .with("tip", Arg::Count(*tip))
                .with("given", length(given))
                .with("before", length(before)),
            Self::Limit { given_percent } => Args::new().with("given", Arg::Percent(*given_percent)),
            Self::NoSuchTip { tip, tips } => {
                Args::new().with("tip", Arg::Count(*tip)).with("tips", Arg::Count(*tips))
            }
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::Intended { .. } => "give the spacing the boom is meant to have, as 20 in or 50 cm",
            Self::TooFew { .. } => "give the mark of every tip off one stretched tape, or every gap",
            Self::TooMany { .. } => "give the tips of one boom",
            Self::Gap { .. } => "measure from the middle of one tip to the middle of the next, as 19 3/4 in",
            Self::MarkOrder { .. } => {
                "hook the tape at the leftmost tip as the driver sits and read every tip towards the right"
            }
            Self::Step { .. } => "give the distance between two marks of the tape, as 1/8 in",
            Self::Limit { .. } => "5 % is the usual limit",
            Self::NoSuchTip { .. } => "number the tips from the left as the driver sits, beginning with 1",
        };
        Some(hint.to_string())
    }
}
