//! The rate from what was used on an area.

use super::error::{Input, RateError};
use super::findings::{checked, doubtful_rate};
use super::method::{Method, WidthKind};
use super::outcome::Rate;
use crate::doubt::Known;
use units::{Amount, Area, Arg, Kind, Volume, VolumePerArea, Working};

/// What was used on an area.
#[derive(Clone, Debug, PartialEq)]
pub struct KnownArea {
    /// What was used.
    pub used: Known<Volume>,
    /// The area sprayed.
    pub area: Known<Area>,
}

impl KnownArea {
    /// Returns the rate: what was used over the area.
    ///
    /// *Units*: any.
    ///
    /// *Assumptions*: the area is the ground really sprayed; overlaps make it seem higher than it is anywhere.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number.
    ///
    /// *Source*: the definition of the rate.
    ///
    /// *Example*: 6.5 gal on 660 ft × 21.7 ft (0.329 ac) are 19.8 gal/ac.
    pub fn rate(&self) -> Result<Rate, RateError> {
        let used = checked(Input::Used, &self.used, Kind::Volume)?.clone();
        let area = checked(Input::Area, &self.area, Kind::Area)?.clone();
        let working =
            Working::new(Method::KnownArea.code(), "rate = used ÷ area", "the definition of the rate")
                .figure("used", Arg::Amount(Amount::new(used.value, Kind::Volume)))
                .figure("area", Arg::Amount(Amount::new(area.value, Kind::Area)));
        Ok(over_area(used, area, Method::KnownArea, working))
    }
}

/// A volume over ground that is known itself; `working` has its figures already.
pub(super) fn over_area(used: Known<Volume>, area: Known<Area>, method: Method, working: Working) -> Rate {
    let rate: Known<VolumePerArea> = used.over(area);
    let findings = doubtful_rate(rate.value).into_iter().collect();
    Rate::new(rate, method, WidthKind::Ground, working, findings)
}
