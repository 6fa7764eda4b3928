//! The rate from a whole tank and the acres it did.

use super::error::{Input, RateError};
use super::findings::{checked, doubtful_rate, usable};
use super::method::{Method, WidthKind};
use super::outcome::Rate;
use crate::doubt::{Budget, DoubtOf, Known};
use units::{Amount, Area, Arg, Kind, Quantity, Volume, VolumePerArea, Working};

/// A tank and the ground it did.
#[derive(Clone, Debug, PartialEq)]
pub struct WholeTank {
    /// What the tank held at the start.
    pub tank: Known<Volume>,
    /// What was left in it at the end; nothing when it ran dry.
    pub left: Volume,
    /// The ground sprayed with it.
    pub area: Known<Area>,
}

impl WholeTank {
    /// Returns the rate: what the tank held less what was left, over the area.
    ///
    /// *Units*: any.
    ///
    /// *Assumptions*: nothing was drained or spilt. What was left is read as well as the tank: by the same marks.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number; as much left as there was.
    ///
    /// *Source*: the definition of the rate; Univ. of Missouri Extension, G1272, turned round (500 gal at 20 gal/ac
    /// do 25 ac).
    ///
    /// *Example*: 500 gal that did 25 ac are 20 gal/ac.
    pub fn rate(&self) -> Result<Rate, RateError> {
        let tank = checked(Input::Tank, &self.tank, Kind::Volume)?;
        let area = checked(Input::Area, &self.area, Kind::Area)?.clone();
        if !(self.left.si() >= 0.0 && self.left.si().is_finite()) {
            return Err(RateError::NotPositive {
                what: Input::Left,
                given: Amount::new(self.left, Kind::Volume),
            });
        }
        if self.left >= tank.value {
            return Err(RateError::NothingUsed { tank: tank.value, left: self.left });
        }
        let used = tank.value - self.left;
        // The doubt of the marks is one of the whole tank, so it weighs more the less of it was used.
        let doubt = Budget::nothing().own(DoubtOf::Tank, tank.doubt.relative() * tank.value.ratio_to(used));
        usable(&doubt)?;
        let working = Working::new(
            Method::WholeTank.code(),
            "rate = (tank − left) ÷ area",
            "the definition of the rate; Univ. of Missouri Extension, G1272",
        )
        .figure("tank", Arg::Amount(Amount::new(tank.value, Kind::Volume)))
        .figure("left", Arg::Amount(Amount::new(self.left, Kind::Volume)))
        .figure("area", Arg::Amount(Amount::new(area.value, Kind::Area)));
        let rate: Known<VolumePerArea> = Known::of(used, doubt).over(area);
        let findings = doubtful_rate(rate.value).into_iter().collect();
        Ok(Rate::new(rate, Method::WholeTank, WidthKind::Ground, working, findings))
    }
}
