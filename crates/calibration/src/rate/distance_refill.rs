//! The rate from what it took to fill up again after a driven length.

use super::error::{Input, RateError};
use super::findings::{checked, doubtful_rate, swath_like_spacing};
use super::method::{Method, WidthKind};
use super::outcome::Rate;
use crate::doubt::Known;
use units::{Amount, Arg, Kind, Length, Volume, VolumePerArea, Working};

/// What was used over a length by the whole boom.
#[derive(Clone, Debug, PartialEq)]
pub struct DistanceRefill {
    /// What it took to fill up to the same level again.
    pub used: Known<Volume>,
    /// The length driven with the boom on.
    pub distance: Known<Length>,
    /// Tips times spacing.
    pub swath: Known<Length>,
}

impl DistanceRefill {
    /// Returns the rate: what was used over distance times swath.
    ///
    /// *Units*: any.
    ///
    /// *Assumptions*: filled to the same level on the same level place; the boom was on over the whole distance.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number.
    ///
    /// *Source*: Good Fruit Grower, Calibration steps (a tenth-acre strip, refilled).
    ///
    /// *Example*: 4 gal on 435.6 ft × 10 ft, a tenth of an acre, are 40 gal/ac.
    pub fn rate(&self) -> Result<Rate, RateError> {
        let used = checked(Input::Used, &self.used, Kind::Volume)?.clone();
        let distance = checked(Input::Distance, &self.distance, Kind::Length)?.clone();
        let swath = checked(Input::Swath, &self.swath, Kind::Length)?.clone();
        let working = Working::new(
            Method::DistanceRefill.code(),
            "rate = used ÷ (distance × width)",
            "Good Fruit Grower, Calibration steps",
        )
        .figure("used", Arg::Amount(Amount::new(used.value, Kind::Volume)))
        .figure("distance", Arg::Amount(Amount::new(distance.value, Kind::Length)))
        .figure("width", Arg::Amount(Amount::new(swath.value, Kind::Length)));
        let rate: Known<VolumePerArea> = used.over(distance.by(swath));
        let findings =
            swath_like_spacing(self.swath.value).into_iter().chain(doubtful_rate(rate.value)).collect();
        Ok(Rate::new(rate, Method::DistanceRefill, WidthKind::Swath, working, findings))
    }
}
