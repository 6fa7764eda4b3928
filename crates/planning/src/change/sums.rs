//! How rate, speed and pressure hang together for one set of tips.

use units::{Pressure, Speed, VolumePerArea};

use super::error::ChangeError;
use crate::given::positive;

/// Returns the speed that hits a rate with the pressure held: speed × measured rate ÷ wanted rate.
///
/// *Units*, *assumptions* and *source*: those of [`super::rate_at_speed`] at constant pressure, turned round.
///
/// *Errors*: a rate or speed of nothing.
///
/// *Example*: 18 gal/ac at 5 mph, 15 wanted: 6 mph.
pub fn speed_for_rate(
    speed: Speed,
    measured: VolumePerArea,
    wanted: VolumePerArea,
) -> Result<Speed, ChangeError> {
    speed_given(speed)?;
    rate_given(measured)?;
    rate_given(wanted)?;
    Ok(speed * measured.ratio_to(wanted))
}

/// Returns the pressure that hits a rate at the same speed: pressure × (wanted rate ÷ measured rate)².
///
/// *Units*: any.
///
/// *Assumptions*: tips are orifices, and the pressure is that at the tips. For small corrections; see
/// [`super::SMALL_CORRECTION`].
///
/// *Errors*: a rate or pressure of nothing.
///
/// *Source*: orifice law; Iowa State Univ. Extension, Integrated Crop Management News, item 844.
///
/// *Example*: 16 gal/ac at 40 psi, 14 wanted: 40 × (14 ÷ 16)² = 30.6 psi.
pub fn pressure_for_rate(
    pressure: Pressure,
    measured: VolumePerArea,
    wanted: VolumePerArea,
) -> Result<Pressure, ChangeError> {
    pressure_given(pressure)?;
    rate_given(measured)?;
    rate_given(wanted)?;
    let ratio = wanted.ratio_to(measured);
    Ok(pressure * (ratio * ratio))
}

/// Returns the pressure that a rate controller must go to, to hold the rate at another speed.
///
/// *Units* and *assumptions*: those of [`pressure_for_rate`].
///
/// *Errors*: a pressure or speed of nothing.
///
/// *Source*: Iowa State Univ. Extension, Integrated Crop Management News, item 844: 40 psi at 12 mph is 63 psi at 15 mph.
///
/// *Example*: 40 × (15 ÷ 12)² = 62.5 psi.
pub fn pressure_to_hold(pressure: Pressure, speed: Speed, new: Speed) -> Result<Pressure, ChangeError> {
    pressure_given(pressure)?;
    speed_given(speed)?;
    speed_given(new)?;
    let ratio = new.ratio_to(speed);
    Ok(pressure * (ratio * ratio))
}

/// Returns how far the rate is off, in percent, when the speed really driven is off by a percentage.
///
/// *Units*: percent in, percent out; less than nothing is slow, more than nothing is over.
///
/// *Assumptions*: constant pressure.
///
/// *Errors*: 100 % slow or more.
///
/// *Source*: Univ. of Missouri Extension, G1270a, which calls 10 % slow "similar" over-application; exactly it is 1 ÷ 0.9.
///
/// *Example*: 10 % slow lays 11.1 % more.
pub fn rate_error_from_speed_error(percent: f64) -> Result<f64, ChangeError> {
    if percent.is_finite() && percent > -100.0 {
        Ok((1.0 / (1.0 + percent / 100.0) - 1.0) * 100.0)
    } else {
        Err(ChangeError::SpeedError { percent })
    }
}

pub(super) fn rate_given(rate: VolumePerArea) -> Result<(), ChangeError> {
    positive(rate, |rate| ChangeError::NoRate { rate }).map(drop)
}

pub(super) fn speed_given(speed: Speed) -> Result<(), ChangeError> {
    positive(speed, |speed| ChangeError::NoSpeed { speed }).map(drop)
}

pub(super) fn pressure_given(pressure: Pressure) -> Result<(), ChangeError> {
    positive(pressure, |pressure| ChangeError::NoPressure { pressure }).map(drop)
}
