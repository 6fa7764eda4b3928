//! Any rate for lawns and gardens: per 1,000 sq ft, and the ground that a gallon covers.

use super::error::{Input, RateError};
use super::findings::positive;
use units::{Amount, Area, Kind, Quantity, Ranged, Unit, Volume, VolumePerArea};

/// A rate as it is said for small areas.
#[derive(Clone, Debug, PartialEq)]
pub struct SmallAreaRate {
    /// The same rate, shown as gal/1000 sq ft or L/100 sq m.
    pub rate: Amount,
    /// The ground that a US gallon covers, shown in square feet.
    pub gallon_covers: Amount,
    /// The ground that a litre covers, shown in square metres.
    pub litre_covers: Amount,
}

/// Returns a rate as it is said for small areas.
///
/// *Units*: gal/1000 sq ft and sq ft per gallon; L/100 sq m and sq m per litre.
///
/// *Errors*: [`RateError`]: a rate of nothing, below nothing or not a number.
///
/// *Source*: Oklahoma State Univ.-Oklahoma City, Calibrating Application Equipment (2013); the same rate in another unit.
///
/// *Example*: 40 gal/ac over 43.56 thousand sq ft are 0.918 gal/1000 sq ft; a gallon covers 1,089 sq ft.
pub fn per_small_area(rate: &Ranged<VolumePerArea>) -> Result<SmallAreaRate, RateError> {
    let gallon = area_covered_by(Volume::gallons(1.0), rate)?;
    let litre = area_covered_by(Volume::litres(1.0), rate)?;
    let shown = |area: &Ranged<Area>, unit| {
        let amount = Amount::ranged(area, Kind::Area);
        Unit::named(unit).map_or(amount.clone(), |unit| amount.shown_in(&unit))
    };
    Ok(SmallAreaRate {
        rate: Amount::ranged(rate, Kind::SmallAreaRate),
        gallon_covers: shown(&gallon, "sq ft"),
        litre_covers: shown(&litre, "sq m"),
    })
}

/// Returns the ground that a volume covers at a rate.
///
/// *Units*: any.
///
/// *Errors*: [`RateError`]: a rate or volume of nothing, below nothing or not a number.
///
/// *Source*: the definition of the rate, turned round.
///
/// *Example*: a gallon at 40 gal/ac covers 1/40 ac, 1,089 sq ft.
pub fn area_covered_by(volume: Volume, rate: &Ranged<VolumePerArea>) -> Result<Ranged<Area>, RateError> {
    positive(Input::Volume, volume, Kind::Volume)?;
    positive(Input::Rate, rate.value, Kind::Rate)?;
    let covers = |rate: VolumePerArea| volume / rate;
    // A rate that may be nothing at its low end covers any ground there.
    let high = if rate.low.is_positive() { covers(rate.low) } else { Area::from_si(f64::INFINITY) };
    Ok(Ranged { value: covers(rate.value), low: covers(rate.high), high })
}
