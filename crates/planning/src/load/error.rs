//! Why loads cannot be worked out, with what was given and what would do.

use units::{Amount, Area, Arg, Args, Coded, Kind, Quantity, Volume, VolumePerArea};

use super::plan::MOST_LOADS;

/// Why loads cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LoadError {
    /// No ground to spray.
    #[error("an area of {} ac cannot be sprayed; it must be more than 0", .area.as_acres())]
    NoArea {
        /// The area as given.
        area: Area,
    },
    /// No carrier rate. Measure it, or take the label's.
    #[error("a rate of {} gal/ac cannot be sprayed; it must be more than 0", .rate.as_gallons_per_acre())]
    NoRate {
        /// The rate as given.
        rate: VolumePerArea,
    },
    /// A range of the rate that does not hold the rate itself, or reaches below nothing.
    #[error(
        "the range of the rate, {} to {} gal/ac, must lie above nothing and hold {} gal/ac",
        .low.as_gallons_per_acre(),
        .high.as_gallons_per_acre(),
        .rate.as_gallons_per_acre()
    )]
    RangeOfRate {
        /// The low end as given.
        low: VolumePerArea,
        /// The rate as given.
        rate: VolumePerArea,
        /// The high end as given.
        high: VolumePerArea,
    },
    /// No tank. Its marks or its plate say what it holds.
    #[error("a tank of {} gal holds no load; it must hold more than 0", .tank.as_gallons())]
    NoTank {
        /// The tank as given.
        tank: Volume,
    },
    /// Far more loads than a season has. Most often a unit or a digit is wrong.
    #[error("{} ac at {} gal/ac would take {loads:.0} loads of {} gal; at most {} are worked out",
        .area.as_acres(), .rate.as_gallons_per_acre(), .tank.as_gallons(), MOST_LOADS)]
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
    #[error("{name} at \"{rate}\" alone comes to {} gal in {} gal of mix; at most all of the mix can be product",
        .product.as_gallons(), .mix.as_gallons())]
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
        let area = |area: Area| Arg::Amount(Amount::new(area, Kind::Area));
        let rate = |rate: VolumePerArea| Arg::Amount(Amount::new(rate, Kind::Rate));
        let volume = |volume: Volume| Arg::Amount(Amount::new(volume, Kind::Volume));
        let args = Args::new();
        match self {
            Self::NoArea { area: given } => args.with("area", area(*given)),
            Self::NoRate { rate: given } => args.with("rate", rate(*given)),
            Self::RangeOfRate { low, rate: given, high } => {
                args.with("low", rate(*low)).with("rate", rate(*given)).with("high", rate(*high))
            }
            Self::NoTank { tank } => args.with("tank", volume(*tank)),
            Self::TooManyLoads { area: ground, rate: given, tank, loads } => args
                .with("area", area(*ground))
                .with("rate", rate(*given))
                .with("tank", volume(*tank))
                .with("loads", Arg::Number(*loads))
                .with("most", Arg::Count(MOST_LOADS)),
            Self::MoreProductThanMix { name, rate, product, mix } => args
                .with("name", Arg::Text(name.clone()))
                .with("rate", Arg::Text(rate.clone()))
                .with("product", volume(*product))
                .with("mix", volume(*mix)),
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

/// Refuses what is not more than nothing.
pub(super) fn positive<Q: Quantity>(quantity: Q, error: impl Fn(Q) -> LoadError) -> Result<(), LoadError> {
    if quantity.is_positive() { Ok(()) } else { Err(error(quantity)) }
}
