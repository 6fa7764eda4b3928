//! Carriers heavier than water: the same tip at the same pressure gives less of them.

use units::{Amount, Arg, Args, Coded, Density, Kind, UnitSystem, VolumePerArea};

/// The density of water that the trade's tables of factors are made with, 8.34 lb/gal.
/// Source: Univ. of Nebraska-Lincoln CropWatch, Setting the Sprayer Flow Rate for Non-Water Solutions, 2016.
/// Oklahoma State Univ. Extension takes 8.33; the factor differs by 0.06 %.
pub const WATER_DENSITY: Density = Density::pounds_per_gallon(8.34);

/// The density of water near 20 °C, for turning a weight on a scale into a volume: 0.998 kg/L.
/// Source: physical tables (0.9982 kg/L at 20 °C, 0.9957 at 30 °C), from memory; air buoyancy of 0.1 % is left out.
pub const WATER_AT_20_C: Density = Density::kilograms_per_litre(0.9982);

/// Beyond this difference in flow a calibration with water alone does not do.
/// Source: ASTM E549-87 (reapproved 2022), section 4.2: more than 5 %.
pub const OWN_TEST_ABOVE: f64 = 0.05;

/// Returns √(density ÷ density of water): what to multiply a solution's flow by to get the water flow that
/// chooses the tip, and what to divide a water flow by to get the solution's.
///
/// *Units*: none; more than 1 for carriers heavier than water.
///
/// *Assumptions*: an orifice at equal pressure; thin liquids (above some 10 mPa·s the tip's own behaviour
/// changes and this does not say how).
///
/// *Errors*: a density below 0.5 or above 2.5 kg/L, which no carrier has.
///
/// *Source*: Univ. of Nebraska-Lincoln CropWatch (2016): 10.65 lb/gal (28 % UAN) has 1.13.
///
/// *Example*: √(10.65 ÷ 8.34) = 1.13.
pub fn density_factor(density: Density) -> Result<f64, CarrierError> {
    let heaviness = density.as_kilograms_per_litre();
    if (LIGHTEST..=HEAVIEST).contains(&heaviness) {
        Ok(density.ratio_to(WATER_DENSITY).sqrt())
    } else {
        Err(CarrierError::NoCarrier { density })
    }
}

/// Returns the rate of water that stands for a wanted rate of solution, to choose or set tips by: times the factor.
///
/// *Errors*: those of [`density_factor`].
///
/// *Source*: Univ. of Nebraska-Lincoln CropWatch (2016): 20 gal/ac of 28 % UAN is set as 22.6 gal/ac of water.
pub fn to_water(solution: VolumePerArea, density: Density) -> Result<VolumePerArea, CarrierError> {
    Ok(solution * density_factor(density)?)
}

/// Returns the rate of solution a sprayer lays that was set with water: divided by the factor.
///
/// *Errors*: those of [`density_factor`].
///
/// *Source*: Georgia county extension column, The Millen News, 2 March 2005: 13 to 15 % lower near 11 lb/gal.
pub fn from_water(water: VolumePerArea, density: Density) -> Result<VolumePerArea, CarrierError> {
    Ok(water / density_factor(density)?)
}

/// Why a carrier's factor cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CarrierError {
    /// No liquid that is sprayed weighs this.
    #[error("no carrier weighs {}; 4.2 to 21 lb/gal (0.5 to 2.5 kg/L) would do", Amount::new(*.density, Kind::Density).text(UnitSystem::Us))]
    NoCarrier {
        /// The density as given.
        density: Density,
    },
}

impl Coded for CarrierError {
    fn code(&self) -> &'static str {
        "carrier_density"
    }

    fn args(&self) -> Args {
        let Self::NoCarrier { density } = self;
        Args::new().with("density", Arg::Amount(Amount::new(*density, Kind::Density)))
    }

    fn hint(&self) -> Option<String> {
        Some(
            "the fertilizer dealer or the label gives the weight of a gallon; water weighs 8.34 lb/gal"
                .to_string(),
        )
    }
}

/// Lightest liquid accepted, kg/L. Our own bound, below any oil (0.8).
const LIGHTEST: f64 = 0.5;
/// Heaviest liquid accepted, kg/L. Our own bound, above any fertilizer solution (1.7).
const HEAVIEST: f64 = 2.5;
