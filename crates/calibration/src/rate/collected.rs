//! What was collected and the ground driven meanwhile, either way of doing it.

use super::error::{Input, RateError};
use super::findings::{checked, positive, usable};
use crate::doubt::{Budget, CATCH_LASTS, DoubtOf, HAND_TIMING_EACH_END, Known, hand_timing};
use crate::drive::doubtful_speed;
use units::{Amount, Arg, Finding, Flow, Kind, Length, Speed, Time, Volume, VolumePerArea, Working};

/// How a catch over a course was timed: for as long as the drive had taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CourseTiming {
    /// How long drive and catch lasted.
    pub lasted: Time,
    /// The standard uncertainty of the drive's time.
    pub drive: Time,
    /// The standard uncertainty of the catch's time.
    pub catch: Time,
}

impl CourseTiming {
    /// Drive and catch both timed by hand; a catch of which nobody says how long it lasted is taken for 30 s.
    #[must_use]
    pub fn by_hand(lasted: Option<Time>) -> Self {
        let once = hand_timing(HAND_TIMING_EACH_END, HAND_TIMING_EACH_END);
        Self { lasted: lasted.unwrap_or(CATCH_LASTS), drive: once, catch: once }
    }

    /// The two doubts; the watch's own rate cancels, because drive and catch lasted as long by the same watch.
    fn doubt(&self) -> Budget {
        Budget::nothing()
            .own(DoubtOf::TimingTheDrive, self.drive.ratio_to(self.lasted))
            .own(DoubtOf::TimingTheCatch, self.catch.ratio_to(self.lasted))
    }
}

/// What was collected, and the ground driven meanwhile.
#[derive(Clone, Debug, PartialEq)]
pub enum Collected {
    /// A flow, and the speed driven.
    Flow {
        /// The flow.
        flow: Known<Flow>,
        /// The speed.
        speed: Known<Speed>,
    },
    /// A catch that lasted as long as the drive over a course.
    OverCourse {
        /// What was caught.
        caught: Known<Volume>,
        /// The course.
        course: Known<Length>,
        /// How both were timed.
        timing: CourseTiming,
    },
}

impl Collected {
    /// A catch over a course, both timed by hand.
    #[must_use]
    pub fn over_course(caught: Known<Volume>, course: Known<Length>, lasted: Option<Time>) -> Self {
        Self::OverCourse { caught, course, timing: CourseTiming::by_hand(lasted) }
    }

    /// Returns the rate when the amount serves a width; the width is named `what` where it is no good.
    pub(super) fn rate_over(
        &self,
        what: Input,
        width: &Known<Length>,
    ) -> Result<Known<VolumePerArea>, RateError> {
        checked(what, width, Kind::Width)?;
        match self {
            Self::Flow { flow, speed } => {
                let flow = checked(Input::Flow, flow, Kind::Flow)?.clone();
                let speed = checked(Input::Speed, speed, Kind::Speed)?.clone();
                Ok(flow.over(speed.by(width.clone())))
            }
            Self::OverCourse { caught, course, timing } => {
                let caught = checked(Input::Catch, caught, Kind::Cup)?.clone();
                let course = checked(Input::Course, course, Kind::Length)?.clone();
                positive(Input::CatchTime, timing.lasted, Kind::Time)?;
                usable(&timing.doubt())?;
                let rate: Known<VolumePerArea> = caught.over(course.by(width.clone()));
                Ok(Known::of(rate.value, rate.doubt.times(timing.doubt())))
            }
        }
    }

    /// Begins the working with the figures of what was collected.
    pub(super) fn working(&self, code: &'static str, source: &'static str) -> Working {
        match self {
            Self::Flow { flow, speed } => Working::new(code, "rate = flow ÷ (speed × width)", source)
                .figure("flow", Arg::Amount(Amount::new(flow.value, Kind::Flow)))
                .figure("speed", Arg::Amount(Amount::new(speed.value, Kind::Speed))),
            Self::OverCourse { caught, course, .. } => {
                Working::new(code, "rate = catch ÷ (course × width)", source)
                    .figure("catch", Arg::Amount(Amount::new(caught.value, Kind::Cup)))
                    .figure("course", Arg::Amount(Amount::new(course.value, Kind::Length)))
            }
        }
    }

    /// A speed that no sprayer has.
    pub(super) fn doubtful(&self) -> Option<Finding> {
        match self {
            Self::Flow { speed, .. } => doubtful_speed(speed.value),
            Self::OverCourse { .. } => None,
        }
    }
}
