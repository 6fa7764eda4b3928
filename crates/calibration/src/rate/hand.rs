//! Rates of hand, backpack and spot spraying.

use super::collected::{Collected, CourseTiming};
use super::error::{Input, RateError};
use super::findings::{checked, doubtful_rate, positive, usable};
use super::known_area::over_area;
use super::method::{Method, WidthKind};
use super::outcome::Rate;
use crate::doubt::{Budget, DoubtOf, Known};
use units::{Amount, Area, Arg, Flow, Kind, Length, Speed, Volume, Working};

/// What was used on a measured plot.
#[derive(Clone, Debug, PartialEq)]
pub struct HandPlot {
    /// What was used: filled up again, or started less left.
    pub used: Known<Volume>,
    /// The plot, or the sum of all spots.
    pub plot: Known<Area>,
}

/// A flow, a walking speed and the width sprayed in one pass.
#[derive(Clone, Debug, PartialEq)]
pub struct HandWalking {
    /// The flow at the pressure kept while spraying.
    pub flow: Known<Flow>,
    /// The walking speed while spraying.
    pub speed: Known<Speed>,
    /// The width sprayed in one pass.
    pub width: Known<Length>,
}

/// The seconds it takes to spray a plot, then a catch of as many seconds.
#[derive(Clone, Debug, PartialEq)]
pub struct HandTimed {
    /// What was caught in the time the plot took.
    pub caught: Known<Volume>,
    /// The plot.
    pub plot: Known<Area>,
    /// The time both took.
    pub timing: CourseTiming,
}

/// Who says so.
const SOURCE: &str = "NC State Extension, Christmas Trees, Backpack Sprayer Calibration Worksheet";

impl HandPlot {
    /// Returns the rate: what was used over the plot.
    ///
    /// *Units*: any.
    ///
    /// *Assumptions*: the plot was sprayed as the work will be: same pace, same height, same pressure. Spots count with
    /// the ground they wet.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number.
    ///
    /// *Source*: Montana State Univ. Extension, Calibration using the Test Strip Method.
    ///
    /// *Example*: 40 fl oz on 18.5 ft × 18.5 ft (342.25 sq ft) are 39.8 gal/ac.
    pub fn rate(&self) -> Result<Rate, RateError> {
        let used = checked(Input::Used, &self.used, Kind::Volume)?.clone();
        let plot = checked(Input::Plot, &self.plot, Kind::Area)?.clone();
        let source = "Montana State Univ. Extension, Calibration using the Test Strip Method";
        let working = Working::new(Method::HandPlot.code(), "rate = used ÷ plot", source)
            .figure("used", Arg::Amount(Amount::new(used.value, Kind::Cup)))
            .figure("plot", Arg::Amount(Amount::new(plot.value, Kind::Area)));
        Ok(over_area(used, plot, Method::HandPlot, working))
    }
}

impl HandWalking {
    /// Returns the rate: flow over walking speed times the width of a pass.
    ///
    /// *Units*: any.
    ///
    /// *Assumptions*: a steady walk and pressure; passes side by side. A width judged by eye is 5 % off where nobody
    /// says better.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number.
    ///
    /// *Source*: NC State Extension, Christmas Trees, Backpack Sprayer Calibration Worksheet.
    ///
    /// *Example*: 0.6 L/min at 2.4 km/h (40 m/min) over 0.75 m: 0.6 L on 30 sq m are 200 L/ha.
    pub fn rate(&self) -> Result<Rate, RateError> {
        let collected = Collected::Flow { flow: self.flow.clone(), speed: self.speed.clone() };
        let known = collected.rate_over(Input::Width, &self.width)?;
        let working = collected
            .working(Method::HandWalking.code(), SOURCE)
            .figure("width", Arg::Amount(Amount::new(self.width.value, Kind::Width)));
        let findings = collected.doubtful().into_iter().chain(doubtful_rate(known.value)).collect();
        Ok(Rate::new(known, Method::HandWalking, WidthKind::HandWidth, working, findings))
    }
}

impl HandTimed {
    /// Returns the rate: what was caught in the time the plot took, over the plot.
    ///
    /// *Units*: any. On 1/128 acre fluid ounces are gal/ac.
    ///
    /// *Assumptions*: the catch lasted exactly as long as spraying the plot, at the same pressure.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number.
    ///
    /// *Source*: NC State Extension, Christmas Trees, Backpack Sprayer Calibration Worksheet.
    ///
    /// *Example*: 40 fl oz caught in the 51 s that 18.5 ft × 18.5 ft took are 39.8 gal/ac.
    pub fn rate(&self) -> Result<Rate, RateError> {
        let caught = checked(Input::Catch, &self.caught, Kind::Cup)?.clone();
        let plot = checked(Input::Plot, &self.plot, Kind::Area)?.clone();
        positive(Input::CatchTime, self.timing.lasted, Kind::Time)?;
        let timing = Budget::nothing()
            .own(DoubtOf::TimingTheDrive, self.timing.drive.ratio_to(self.timing.lasted))
            .own(DoubtOf::TimingTheCatch, self.timing.catch.ratio_to(self.timing.lasted));
        usable(&timing)?;
        let caught = Known::of(caught.value, caught.doubt.times(timing));
        let working = Working::new(Method::HandTimed.code(), "rate = catch ÷ plot", SOURCE)
            .figure("catch", Arg::Amount(Amount::new(caught.value, Kind::Cup)))
            .figure("plot", Arg::Amount(Amount::new(plot.value, Kind::Area)));
        Ok(over_area(caught, plot, Method::HandTimed, working))
    }
}
