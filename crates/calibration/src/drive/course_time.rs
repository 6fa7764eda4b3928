//! The time for a course, and courses that are over too soon to be timed by hand.

use super::error::DriveError;
use super::speed::Timing;
use crate::doubt::{HAND_TIMING_EACH_END, hand_timing};
use units::{Amount, Arg, Finding, Kind, Length, NORMAL_95, Quantity, Speed, Time, Weight};

/// A course that is over too soon, and what to do instead.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShortCourse {
    /// The course.
    pub course: Length,
    /// The time it takes at the speed.
    pub time: Time,
    /// How far off the speed of one run may be through the hand alone, in percent, 95 %.
    pub either_way_percent: f64,
    /// How many such courses in one go take long enough; none where no reasonable number does.
    pub courses: Option<u32>,
}

/// A run timed by hand (0.2 s at each end) should take so long: below it one run is worse than 2.8 %.
/// Our rule: 1.96 × 0.283 s ÷ 20 s.
const LONG_ENOUGH: Time = Time::seconds(20.0);
/// Slack for "20 s or more" in binary arithmetic. Our own choice.
const SLACK: f64 = 1e-9;
/// Nobody drives more courses than that in one go. Our assumption.
const MOST_COURSES: u32 = 20;

/// Returns the time a course takes at a speed.
///
/// *Units*: length and speed in, time out.
///
/// *Errors*: [`DriveError`]: a course or speed of nothing, below nothing or not a number.
///
/// *Source*: the definition of speed; table in Pesticide Environmental Stewardship, Measurements, Conversions, and
/// Formulas.
///
/// *Example*: 300 ft at 3 mph (4.4 ft/s) take 68.2 s.
pub fn time_for_course(course: Length, speed: Speed) -> Result<Time, DriveError> {
    if !course.is_positive() {
        return Err(DriveError::Course { given: course });
    }
    if !speed.is_positive() {
        return Err(DriveError::Speed { given: speed });
    }
    Ok(course / speed)
}

/// Returns what to do instead where a course is over too soon at a speed; none where it is long enough.
///
/// *Assumptions*: a run may be 2.8 % off through the hand (95 %), which is 20 s for a hand good to 0.2 s at each end;
/// with a better timer a shorter run will do.
///
/// *Errors*: [`DriveError`]: a course or speed of nothing, below nothing or not a number.
///
/// *Source*: our rule; the hand's doubt: JCGM 100:2008 (GUM) 5.1.2.
///
/// *Example*: 204 ft at 12 mph (17.6 ft/s) take 11.6 s; two courses, 408 ft, take 23.2 s.
pub fn short_course(
    course: Length,
    speed: Speed,
    timing: &Timing,
) -> Result<Option<ShortCourse>, DriveError> {
    let time = time_for_course(course, speed)?;
    let needed =
        LONG_ENOUGH * timing.by_hand().ratio_to(hand_timing(HAND_TIMING_EACH_END, HAND_TIMING_EACH_END));
    let enough = |courses: &u32| time * f64::from(*courses) >= needed * (1.0 - SLACK);
    if enough(&1) {
        return Ok(None);
    }
    Ok(Some(ShortCourse {
        course,
        time,
        either_way_percent: timing.by_hand().ratio_to(time) * NORMAL_95 * 100.0,
        courses: (2..=MOST_COURSES).find(enough),
    }))
}

impl ShortCourse {
    /// The whole length to drive in one go, where there is one.
    #[must_use]
    pub fn length(&self) -> Option<Length> {
        self.courses.map(|courses| self.course * f64::from(courses))
    }

    /// As a sentence with what to do.
    #[must_use]
    pub fn finding(&self) -> Finding {
        let finding = Finding::new(
            Weight::Doubt,
            "drive_course_short",
            "{course} are over in {time}: timed by hand, one run may be {either_way} off.",
        )
        .with("course", Arg::Amount(Amount::new(self.course, Kind::Length)))
        .with("time", Arg::Amount(Amount::new(self.time, Kind::Time)))
        .with("either_way", Arg::Doubt(self.either_way_percent));
        match (self.courses, self.length()) {
            (Some(courses), Some(length)) => finding
                .case("several")
                .with("courses", Arg::Count(courses))
                .with("length", Arg::Amount(Amount::new(length, Kind::Length)))
                .to_do(
                    "Drive {courses} courses in one go, {length}, and divide the catch by {courses}; or catch for 30 s \
                     by the clock and work the rate from flow, speed and width.",
                ),
            _ => finding.case("longer").to_do(
                "Tape a longer course; or catch for 30 s by the clock and work the rate from flow, speed and width.",
            ),
        }
    }
}
