//! The rate from a catch that lasted as long as the drive over a course.

use super::broadcast::BroadcastWidth;
use super::collected::{Collected, CourseTiming};
use super::error::RateError;
use super::method::Method;
use super::outcome::Rate;
use crate::doubt::Known;
use units::{Length, Time, Volume};

/// A catch, the course, and the width that the catch serves.
#[derive(Clone, Debug, PartialEq)]
pub struct CatchOverCourse {
    /// One tip's catch (or the mean of all), or the sum of the whole boom's.
    pub caught: Known<Volume>,
    /// The course, of any length.
    pub course: Known<Length>,
    /// How drive and catch were timed.
    pub timing: CourseTiming,
    /// One tip's spacing, or the whole boom's swath.
    pub width: BroadcastWidth,
}

impl CatchOverCourse {
    /// A catch and a drive that were both timed by hand.
    #[must_use]
    pub fn by_hand(
        caught: Known<Volume>,
        course: Known<Length>,
        width: BroadcastWidth,
        lasted: Option<Time>,
    ) -> Self {
        Self { caught, course, timing: CourseTiming::by_hand(lasted), width }
    }

    /// Returns the rate: the catch over course times width.
    ///
    /// *Units*: any. On 1/128 acre fluid ounces are gal/ac; any other length does as well here.
    ///
    /// *Assumptions*: the catch lasted exactly as long as the drive, at the same pressure and engine speed.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number.
    ///
    /// *Source*: Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration (2016).
    ///
    /// *Example*: 14 fl oz over 204.1875 ft at 20 in: 14/128 gal on 340.3125 sq ft (1/128 ac) are 14 gal/ac.
    pub fn rate(&self) -> Result<Rate, RateError> {
        let collected = Collected::OverCourse {
            caught: self.caught.clone(),
            course: self.course.clone(),
            timing: self.timing,
        };
        let source = "Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration (2016)";
        self.width.rate(&collected, Method::CatchOverCourse, source)
    }
}
