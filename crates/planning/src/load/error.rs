//! Why loads cannot be worked out, with what was given and what would do.

use units::{Area, Arg, Args, Coded, Kind, UnitSystem, Volume, VolumePerArea};

use super::plan::MOST_LOADS;
use crate::given::{arg, range_args, range_text, text};

/// Why loads cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LoadError {
    /// No ground to spray.
    #[error("an area of {} cannot be sprayed; it must be more than 0", text(.area, Kind::Area))]
    NoArea {
        /// The area as given.
        area: Area,
    },
    /// No carrier rate. Measure it, or take the label's.
    #[error("a rate of {} cannot be sprayed; it must be more than 0", text(.rate, Kind::Rate))]
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
    /// No tank. Its marks or its plate say what it holds.
    #[error("a tank of {} holds no load; it must hold more than 0", text(.tank, Kind::Volume))]
    NoTank {
        /// The tank as given.
        tank: Volume,
    },
    /// Far more loads than a season has. Most often a unit or a digit is wrong.
    #[error("{} at {} would take {} loads of {}; at most {} are worked out", text(.area, Kind::Area),
        text(.rate, Kind::Rate), Arg::Number(*.loads).text(UnitSystem::Us), text(.tank, Kind::Volume), MOST_LOADS)]
    TooManyLoads {
        /// The area as given.
        area: Area,
        /// The rate as given.
        rate: VolumePerArea,
        /// The tank as given.
        tank: Volume,
        /// The number of loads it would take.
        loads: f64,
    },
    /// More product than the mix has room for. Most often the rate of the product or of the carrier is wrong.
    #[error("{name} at \"{rate}\" alone comes to {} in {} of mix; at most all of the mix can be product",
        text(.product, Kind::Volume), text(.mix, Kind::Volume))]
    MoreProductThanMix {
        /// The product's name.
        name: String,
        /// Its rate as written.
        rate: String,
        /// The product in a load.
        product: Volume,
        /// The load.
        mix: Volume,
    },
}

impl Coded for LoadError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoArea { .. } => "load_no_area",
            Self::NoRate { .. } => "load_no_rate",
            Self::RangeOfRate { .. } => "load_range_of_rate",
            Self::NoTank { .. } => "load_no_tank",
            Self::TooManyLoads { .. } => "load_too_many",
            Self::MoreProductThanMix { .. } => "load_more_product_than_mix",
        }
    }

    fn args(&self) -> Args {
        let args = Args::new();
        match self {
            Self::NoArea { area } => args.with("area", arg(area, Kind::Area)),
            Self::NoRate { rate } => args.with("rate", arg(rate, Kind::Rate)),
            Self::RangeOfRate { low, rate, high } => range_args(low, rate, high),
            Self::NoTank { tank } => args.with("tank", arg(tank, Kind::Volume)),
            Self::TooManyLoads { area, rate, tank, loads } => args
                .with("area", arg(area, Kind::Area))
                .with("rate", arg(rate, Kind::Rate))
                .with("tank", arg(tank, Kind::Volume))
                .with("loads", Arg::Number(*loads))
                .with("most", Arg::Count(MOST_LOADS)),
            Self::MoreProductThanMix { name, rate, product, mix } => args
                .with("name", Arg::Text(name.clone()))
                .with("rate", Arg::Text(rate.clone()))
                .with("product", arg(product, Kind::Volume))
                .with("mix", arg(mix, Kind::Volume)),
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NoArea { .. } => "give the ground this job covers, as 25 ac or 10 ha",
            Self::NoRate { .. } => "give what the sprayer puts out, as 20 gal/ac or 190 L/ha",
            Self::RangeOfRate { .. } => "give the rate with the range it lies in, low end first",
            Self::NoTank { .. } => "give what the tank holds, as 500 gal or 2000 L",
            Self::TooManyLoads { .. } => "check the units of area, rate and tank",
            Self::MoreProductThanMix { .. } => "check the product's rate and the gallons per acre",
        };
        Some(hint.to_string())
    }
}
