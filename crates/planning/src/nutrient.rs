//! Liquid fertilizer: nutrient in a gallon, and gallons for a nutrient rate.

use units::{Arg, Args, Coded, Density, Kind, MassPerArea, UnitSystem, VolumePerArea};

use crate::given::{arg, positive, text};

/// Returns the nutrient in a volume of liquid fertilizer: its density times the nutrient's share by weight.
///
/// *Units*: weight in a volume; `share` is a fraction of one, 0.28 for 28 % nitrogen.
///
/// *Assumptions*: the grade (28-0-0) is by weight, as the source has it; phosphate and potash count as
/// P₂O₅ and K₂O, as on the label (common practice).
///
/// *Errors*: a density of nothing, a share not above 0 and at most 1.
///
/// *Source*: Univ. of Nebraska-Lincoln CropWatch, Setting the Sprayer Flow Rate for Non-Water Solutions, 2016.
///
/// *Example*: 10.65 lb/gal × 0.28 = 2.982 lb of nitrogen in a gallon.
pub fn nutrient_in_volume(density: Density, share: f64) -> Result<Density, NutrientError> {
    positive(density, |density| NutrientError::NoDensity { density })?;
    if share > 0.0 && share <= 1.0 {
        Ok(density * share)
    } else {
        Err(NutrientError::Share { percent: share * 100.0 })
    }
}

/// Returns the rate of liquid fertilizer that brings a rate of nutrient.
///
/// *Units*, *assumptions*: those of [`nutrient_in_volume`].
///
/// *Errors*: those of [`nutrient_in_volume`]; a nutrient rate of nothing.
///
/// *Source*: Univ. of Nebraska-Lincoln CropWatch, 2016: 75 lb N/ac from 28 % UAN is 25.151 gal/ac.
///
/// *Example*: 75 lb/ac ÷ 2.982 lb/gal = 25.15 gal/ac.
pub fn carrier_for_nutrient(
    nutrient: MassPerArea,
    density: Density,
    share: f64,
) -> Result<VolumePerArea, NutrientError> {
    positive(nutrient, |nutrient| NutrientError::NoNutrient { nutrient })?;
    Ok(nutrient / nutrient_in_volume(density, share)?)
}

/// Returns the nutrient that a rate of liquid fertilizer brings.
///
/// *Units*, *assumptions* and *source*: those of [`nutrient_in_volume`].
///
/// *Errors*: those of [`nutrient_in_volume`]; a rate of nothing.
///
/// *Example*: 25 gal/ac × 2.982 lb/gal = 74.55 lb/ac.
pub fn nutrient_at_rate(
    rate: VolumePerArea,
    density: Density,
    share: f64,
) -> Result<MassPerArea, NutrientError> {
    positive(rate, |rate| NutrientError::NoRate { rate })?;
    Ok(nutrient_in_volume(density, share)? * rate)
}

/// Why nutrient cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NutrientError {
    /// No density. The dealer or the label gives it.
    #[error("a density of {} cannot be; it must be more than 0", text(.density, Kind::Density))]
    NoDensity {
        /// The density as given.
        density: Density,
    },
    /// A share that is none.
    #[error("a nutrient share of {} cannot be; more than 0 and at most 100 % would do", Arg::Percent(*.percent).text(UnitSystem::Us))]
    Share {
        /// The share as given, in percent.
        percent: f64,
    },
    /// No nutrient wanted.
    #[error("a nutrient rate of {} cannot be; it must be more than 0", text(.nutrient, Kind::MassRate))]
    NoNutrient {
        /// The rate as given.
        nutrient: MassPerArea,
    },
    /// No fertilizer put out.
    #[error("a rate of {} cannot be; it must be more than 0", text(.rate, Kind::Rate))]
    NoRate {
        /// The rate as given.
        rate: VolumePerArea,
    },
}

impl Coded for NutrientError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoDensity { .. } => "nutrient_no_density",
            Self::Share { .. } => "nutrient_share",
            Self::NoNutrient { .. } => "nutrient_none",
            Self::NoRate { .. } => "nutrient_no_rate",
        }
    }

    fn args(&self) -> Args {
        let (name, given) = match self {
            Self::NoDensity { density } => ("density", arg(density, Kind::Density)),
            Self::Share { percent } => ("percent", Arg::Percent(*percent)),
            Self::NoNutrient { nutrient } => ("nutrient", arg(nutrient, Kind::MassRate)),
            Self::NoRate { rate } => ("rate", arg(rate, Kind::Rate)),
        };
        Args::new().with(name, given)
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NoDensity { .. } => "the dealer or the label gives the weight of a gallon, as 10.65 lb/gal",
            Self::Share { .. } => "the first figure of 28-0-0 is 28 % nitrogen",
            Self::NoNutrient { .. } => "give the nutrient wanted, as 75 lb/ac",
            Self::NoRate { .. } => "give the rate of fertilizer, as 25 gal/ac",
        };
        Some(hint.to_string())
    }
}
