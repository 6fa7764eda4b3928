//! Why a target cannot be judged, with what was given and what would do.

use units::{Arg, Args, Coded, Kind, UnitSystem, VolumePerArea};

use crate::given::{arg, range_args, range_text, text};

/// Why a target cannot be judged.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum TargetError {
    /// A rate of nothing.
    #[error("a rate of {} cannot be; it must be more than 0", text(.rate, Kind::Rate))]
    NoRate {
        /// The rate as given.
        rate: VolumePerArea,
    },
    /// A range of the rate that does not hold the rate itself, or reaches below nothing.
    #[error("{}", range_text(.low, .rate, .high))]
    RangeOfRate {
        /// The low end as given.
        low: VolumePerArea,
        /// The rate as given.
        rate: VolumePerArea,
        /// The high end as given.
        high: VolumePerArea,
    },
    /// A limit in percent that is not between nothing and all.
    #[error("a limit of {} is not one; more than 0 and less than 100 % would do", Arg::Percent(*.percent).text(UnitSystem::Us))]
    Limit {
        /// The limit as given, in percent.
        percent: f64,
    },
    /// A liquid with a limit by weight, or the reverse. The label gives both in one unit.
    #[error("{name} at \"{rate}\" and its limit \"{limit}\" are not both liquid or both dry")]
    OtherKind {
        /// The product's name.
        name: String,
        /// Its rate as written.
        rate: String,
        /// The limit as written.
        limit: String,
    },
    /// The least is more than the most. Most often the two are swapped.
    #[error("{name}: the least, \"{least}\", is more than the most, \"{most}\"")]
    LeastOverMost {
        /// The product's name.
        name: String,
        /// The least as written.
        least: String,
        /// The most as written.
        most: String,
    },
    /// Product by the ground, but nobody said for which rate the tank was mixed.
    #[error("{name} at \"{rate}\" goes by the ground, but the rate that the tank is mixed for is not given")]
    MixedForNeeded {
        /// The product's name.
        name: String,
        /// Its rate as written.
        rate: String,
    },
}

impl Coded for TargetError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoRate { .. } => "target_no_rate",
            Self::RangeOfRate { .. } => "target_range_of_rate",
            Self::Limit { .. } => "target_limit",
            Self::OtherKind { .. } => "target_other_kind",
            Self::LeastOverMost { .. } => "target_least_over_most",
            Self::MixedForNeeded { .. } => "target_mixed_for_needed",
        }
    }

    fn args(&self) -> Args {
        let letters = |text: &String| Arg::Text(text.clone());
        match self {
            Self::NoRate { rate } => Args::new().with("rate", arg(rate, Kind::Rate)),
            Self::RangeOfRate { low, rate, high } => range_args(low, rate, high),
            Self::Limit { percent } => Args::new().with("percent", Arg::Percent(*percent)),
            Self::OtherKind { name, rate, limit } => Args::new()
                .with("name", letters(name))
                .with("rate", letters(rate))
                .with("limit", letters(limit)),
            Self::LeastOverMost { name, least, most } => Args::new()
                .with("name", letters(name))
                .with("least", letters(least))
                .with("most", letters(most)),
            Self::MixedForNeeded { name, rate } => {
                Args::new().with("name", letters(name)).with("rate", letters(rate))
            }
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NoRate { .. } => "give a rate as 20 gal/ac or 190 L/ha",
            Self::RangeOfRate { .. } => "give the rate with the range it lies in, low end first",
            Self::Limit { .. } => "write 5 % for five gallons over or under in a hundred",
            Self::OtherKind { .. } => "write the limit the way the rate is written; the label says both",
            Self::LeastOverMost { .. } => "look at the label again; the two may be swapped",
            Self::MixedForNeeded { .. } => "say for how many gal/ac the tank is mixed",
        };
        Some(hint.to_string())
    }
}
