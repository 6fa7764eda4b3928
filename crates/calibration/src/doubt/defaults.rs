//! The doubts we assume where nobody says better; each one is an input everywhere.
//!
//! All are relative standard uncertainties (one part in one) unless a unit is named. Where no publication
//! gives a figure for the yard, it is marked as our assumption.

use units::{Quantity, Time};

/// A hand on the watch, at the start and at the stop each. Our assumption (a planning value).
pub const HAND_TIMING_EACH_END: Time = Time::seconds(0.2);
/// A watch's own rate, 0.1 %. Our assumption; a quartz watch is far better, an app on a busy phone is not.
pub const WATCH: f64 = 0.001;
/// The scale of a cup or jug, 1 %. Our assumption.
pub const CUP_SCALE: f64 = 0.01;
/// Foam, tilt and a wet cup, 0.5 %. Our assumption.
pub const HANDLING: f64 = 0.005;
/// A tape over a course, 0.2 %. Our assumption: 5 in on 200 ft.
pub const COURSE_TAPE: f64 = 0.002;
/// A spacing, and a swath made of spacings, 0.2 %. Our assumption.
pub const SPACING: f64 = 0.002;
/// A width judged by eye on wetted ground, 5 %. Our assumption.
pub const SWATH_BY_SIGHT: f64 = 0.05;
/// A band width taped on wetted ground, 2 %. Our assumption.
pub const BAND: f64 = 0.02;
/// A flow as given: a catch of 30 s timed by hand, √(1² + 0.94² + 0.5² + 0.1²) % rounded up. Our assumption.
pub const FLOW_AS_GIVEN: f64 = 0.015;
/// A speed as given: one run of some 30 s timed by hand. Our assumption.
pub const SPEED_AS_GIVEN: f64 = 0.01;
/// What a tank took when it was filled up again, 2 %: the jug, and finding the same level. Our assumption.
pub const REFILL: f64 = 0.02;
/// A tank's own marks, 3 %. Our assumption.
pub const TANK: f64 = 0.03;
/// The area of a field from a map or from memory, 2 %. Our assumption.
pub const FIELD_AREA: f64 = 0.02;
/// The area of a taped plot, 1 %. Our assumption.
pub const PLOT_AREA: f64 = 0.01;
/// How long a catch over a course is taken to last where nobody says. Our assumption.
pub const CATCH_LASTS: Time = Time::seconds(30.0);

/// Returns the standard uncertainty of a time taken by hand.
///
/// *Units*: those of the two ends.
///
/// *Assumptions*: the two ends are independent and neither hand is always early.
///
/// *Source*: JCGM 100:2008 (GUM) 5.1.2, a difference of two readings.
///
/// *Example*: 0.2 s at each end make 0.283 s.
#[must_use]
pub fn hand_timing(start: Time, stop: Time) -> Time {
    Time::from_si((start.si() * start.si() + stop.si() * stop.si()).sqrt())
}

/// Returns the standard uncertainty of a reading taken to marks a step apart.
///
/// *Units*: that of the step.
///
/// *Assumptions*: the true value lies anywhere within half a step with equal chance.
///
/// *Source*: JCGM 100:2008 (GUM) F.2.2.1: the step divided by √12.
///
/// *Example*: marks every fluid ounce give 0.289 fl oz.
#[must_use]
pub fn of_marks<Q: Quantity>(step: Q) -> Q {
    Q::from_si(step.si() / 12.0_f64.sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;
    use units::Volume;

    #[test]
    fn expected_from_gum() {
        // JCGM 100:2008 F.2.2.1: a resolution δx has the standard uncertainty 0.29 δx.
        let marks = of_marks(Volume::fluid_ounces(1.0)).as_fluid_ounces();
        assert!((marks - 0.29).abs() < 0.005, "{marks}");
        // By hand: √(0.2² + 0.2²) = 0.28.
        let timing = hand_timing(HAND_TIMING_EACH_END, HAND_TIMING_EACH_END).as_seconds();
        assert!((timing - 0.28).abs() < 0.005, "{timing}");
    }
}
