//! Small ground and small sprayers: a label's amount scaled to a lawn, a percent solution, an amount for a hand can.

use units::{Amount, Area, Arg, Args, Coded, Density, Kind, Mass, Unit, UnitSystem, Volume};

use crate::given::{arg, positive, text};
use crate::product::{ProductAmount, ProductPerArea};

/// Returns a label's amount, given for one area, for another area.
///
/// *Units*: any; a liquid stays a volume, a dry product a weight. Spread and sprayed products alike.
///
/// *Assumptions*: the amount goes with the ground.
///
/// *Errors*: an amount or an area of nothing.
///
/// *Source*: Virginia Turfgrass Council, applicator topics: 50 lb for 6,000 sq ft is 75 lb for 9,000 sq ft.
///
/// *Example*: 50 × 9,000 ÷ 6,000 = 75 lb.
pub fn scaled_to_area(
    amount: ProductAmount,
    label_area: Area,
    area: Area,
) -> Result<ProductAmount, SmallAreaError> {
    area_given(label_area)?;
    area_given(area)?;
    if amount.si() > 0.0 && amount.si().is_finite() {
        Ok(amount.times(area.ratio_to(label_area)))
    } else {
        Err(SmallAreaError::NoAmount)
    }
}

/// Returns the product for a piece of ground at a rate per acre, per 1,000 sq ft or per hectare.
///
/// *Units*: any.
///
/// *Errors*: an area of nothing.
///
/// *Source*: Pacific Northwest Pest Management Handbooks, pints per acre table: 1 lb ai/ac at 4 lb ai/gal is 22 mL on
/// 1,000 sq ft.
///
/// *Example*: 2 pt/ac on 1,000 sq ft is 2 × 473.2 mL ÷ 43.56 = 21.7 mL.
pub fn amount_on(rate: ProductPerArea, area: Area) -> Result<ProductAmount, SmallAreaError> {
    area_given(area)?;
    Ok(rate.on(area))
}

/// Returns the liquid product in a volume of mix by volume: share × volume.
///
/// *Units*: any; `share` is a fraction of one, 0.03 for 3 % v/v.
///
/// *Assumptions*: the percentage is of the finished mix, and by volume. The label's words decide which it is.
///
/// *Errors*: a volume of nothing, a share not above 0 and at most 1.
///
/// *Source*: practice problems for right-of-way and aquatic applicators (slides, 2007): 3 gal of 3 % takes 12 fl oz.
///
/// *Example*: 3 gal × 0.03 = 0.09 gal = 11.52 fl oz.
pub fn percent_solution(volume: Volume, share: f64) -> Result<Volume, SmallAreaError> {
    mix_given(volume, share)?;
    Ok(volume * share)
}

/// Returns the weight of product in a volume of mix by weight: share × the weight of that volume.
///
/// *Units*: any; `share` is a fraction of one; `density` is the mix's, water's for a thin mix.
///
/// *Assumptions*: the percentage is by weight. 1 % by weight is 1.33 oz of weight in a gallon, 1 % by volume 1.28 fl oz.
///
/// *Errors*: a volume or density of nothing, a share not above 0 and at most 1.
///
/// *Source*: Virginia Dept. of Wildlife Resources, Formulas for Determining Application Rates: 1.34 oz in a gallon.
///
/// *Example*: 1 gal × 8.34 lb/gal × 0.01 = 0.0834 lb = 1.3344 oz wt.
pub fn percent_by_weight(volume: Volume, density: Density, share: f64) -> Result<Mass, SmallAreaError> {
    mix_given(volume, share)?;
    positive(density, |density| SmallAreaError::NoDensity { density })?;
    Ok(density * volume * share)
}

fn area_given(area: Area) -> Result<(), SmallAreaError> {
    positive(area, |area| SmallAreaError::NoArea { area }).map(drop)
}

fn mix_given(volume: Volume, share: f64) -> Result<(), SmallAreaError> {
    positive(volume, |volume| SmallAreaError::NoVolume { volume })?;
    if share > 0.0 && share <= 1.0 { Ok(()) } else { Err(SmallAreaError::Share { percent: share * 100.0 }) }
}

/// Why an amount for a small area cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SmallAreaError {
    /// No ground.
    #[error("an area of {} cannot be; it must be more than 0", small(.area).text(UnitSystem::Us))]
    NoArea {
        /// The area as given.
        area: Area,
    },
    /// No product.
    #[error("an amount of nothing cannot be scaled; it must be more than 0")]
    NoAmount,
    /// No mix.
    #[error("a mix of {} cannot be; it must be more than 0", text(.volume, Kind::Volume))]
    NoVolume {
        /// The volume as given.
        volume: Volume,
    },
    /// A share that is none.
    #[error("a solution of {} cannot be; more than 0 and at most 100 % would do", Arg::Percent(*.percent).text(UnitSystem::Us))]
    Share {
        /// The share as given, in percent.
        percent: f64,
    },
    /// No density.
    #[error("a density of {} cannot be; it must be more than 0", text(.density, Kind::Density))]
    NoDensity {
        /// The density as given.
        density: Density,
    },
}

/// Small ground in square feet, whatever acres or hectares are used elsewhere.
fn small(area: &Area) -> Amount {
    let amount = Amount::new(*area, Kind::Area);
    match Unit::named("sq ft") {
        Some(unit) => amount.shown_in(&unit),
        None => amount,
    }
}

impl Coded for SmallAreaError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoArea { .. } => "small_area_no_area",
            Self::NoAmount => "small_area_no_amount",
            Self::NoVolume { .. } => "small_area_no_volume",
            Self::Share { .. } => "small_area_share",
            Self::NoDensity { .. } => "small_area_no_density",
        }
    }

    fn args(&self) -> Args {
        let (name, given) = match self {
            Self::NoAmount => return Args::new(),
            Self::NoArea { area } => ("area", Arg::Amount(small(area))),
            Self::NoVolume { volume } => ("volume", arg(volume, Kind::Volume)),
            Self::Share { percent } => ("percent", Arg::Percent(*percent)),
            Self::NoDensity { density } => ("density", arg(density, Kind::Density)),
        };
        Args::new().with(name, given)
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NoArea { .. } => "give the ground as 9000 sq ft or 850 sq m",
            Self::NoAmount => "give the label's amount as 50 lb or 3 fl oz",
            Self::NoVolume { .. } => "give the mix as 3 gal or 12 L",
            Self::Share { .. } => "a solution is written as 3 %",
            Self::NoDensity { .. } => "water weighs 8.34 lb/gal",
        };
        Some(hint.to_string())
    }
}
