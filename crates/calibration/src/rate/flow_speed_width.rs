//! The rate from flow, speed and width.

use super::broadcast::BroadcastWidth;
use super::collected::Collected;
use super::error::RateError;
use super::method::Method;
use super::outcome::Rate;
use crate::doubt::Known;
use units::{Flow, Speed};

/// Flow, speed and the width that the flow serves.
#[derive(Clone, Debug, PartialEq)]
pub struct FlowSpeedWidth {
    /// One tip's flow, or the whole boom's.
    pub flow: Known<Flow>,
    /// The speed driven.
    pub speed: Known<Speed>,
    /// One tip's spacing, or the whole boom's swath.
    pub width: BroadcastWidth,
}

impl FlowSpeedWidth {
    /// Returns the rate: flow over speed times width.
    ///
    /// *Units*: any; the customary 5,940 of gal/min, mph and inches comes out of the units by itself.
    ///
    /// *Assumptions*: steady flow and speed, the same pressure at the catch as in the field. A watch that timed both
    /// drive and catch cancels.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number.
    ///
    /// *Source*: Cornell Univ., Pesticide application technology, Boom Sprayer Calibration; Univ. of Missouri
    /// Extension, G1270a, for the width of each way of spraying.
    ///
    /// *Example*: 24 L/min at 12 km/h over 12 m: 24 L on 200 m × 12 m = 0.24 ha in a minute, 100 L/ha.
    pub fn rate(&self) -> Result<Rate, RateError> {
        let collected = Collected::Flow { flow: self.flow.clone(), speed: self.speed.clone() };
        self.width.rate(
            &collected,
            Method::FlowSpeedWidth,
            "Cornell Univ., Boom Sprayer Calibration: the definition of the rate",
        )
    }
}
