//! A quantity with the doubts it carries, so that a rate knows where its range comes from.

use super::budget::Budget;
use super::defaults::{self, hand_timing, of_marks};
use super::source::DoubtOf;
use units::{Area, Flow, Length, NORMAL_95, Quantity, Ranged, Speed, Time, Volume};

/// A quantity and its doubts.
#[derive(Clone, Debug, PartialEq)]
pub struct Known<Q> {
    /// The value.
    pub value: Q,
    /// What it may be off by, and why.
    pub doubt: Budget,
}

impl<Q: Quantity> Known<Q> {
    /// A quantity with its doubts.
    #[must_use]
    pub const fn of(value: Q, doubt: Budget) -> Self {
        Self { value, doubt }
    }

    /// A quantity taken as it stands.
    #[must_use]
    pub const fn exact(value: Q) -> Self {
        Self { value, doubt: Budget::nothing() }
    }

    /// A quantity of which someone says how far it may be off either way, 95 times of 100.
    #[must_use]
    pub fn either_way(value: Q, half: Q, of: DoubtOf) -> Self {
        let relative = half.si() / (NORMAL_95 * value.si());
        Self { value, doubt: Budget::nothing().own(of, relative) }
    }

    /// The value with its 95 % range.
    #[must_use]
    pub fn ranged(&self) -> Ranged<Q> {
        Ranged::from_relative(self.value, self.doubt.relative())
    }

    /// This divided by another, with the doubts of both.
    #[must_use]
    pub fn over<D: Quantity, R: Quantity>(self, by: Known<D>) -> Known<R>
    where
        Q: core::ops::Div<D, Output = R>,
    {
        Known { value: self.value / by.value, doubt: self.doubt.times(by.doubt.raised(-1.0)) }
    }

    /// This times another, with the doubts of both.
    #[must_use]
    pub fn by<F: Quantity, R: Quantity>(self, times: Known<F>) -> Known<R>
    where
        Q: core::ops::Mul<F, Output = R>,
    {
        Known { value: self.value * times.value, doubt: self.doubt.times(times.doubt) }
    }

    /// This times a plain number that is not in doubt.
    #[must_use]
    pub fn scaled(self, times: f64) -> Self {
        Self { value: Q::from_si(self.value.si() * times), doubt: self.doubt }
    }

    fn one(value: Q, of: DoubtOf, relative: f64) -> Self {
        Self { value, doubt: Budget::nothing().own(of, relative) }
    }
}

impl Known<Length> {
    /// A course measured with a tape.
    #[must_use]
    pub fn taped_course(length: Length) -> Self {
        Self::one(length, DoubtOf::Course, defaults::COURSE_TAPE)
    }

    /// The spacing of the tips.
    #[must_use]
    pub fn tip_spacing(spacing: Length) -> Self {
        Self::one(spacing, DoubtOf::Spacing, defaults::SPACING)
    }

    /// The swath of a boom: tips times spacing.
    #[must_use]
    pub fn swath(swath: Length) -> Self {
        Self::one(swath, DoubtOf::Swath, defaults::SPACING)
    }

    /// A width judged on wetted ground: a boomless cluster, a hand-held tip.
    #[must_use]
    pub fn swath_by_sight(swath: Length) -> Self {
        Self::one(swath, DoubtOf::SwathBySight, defaults::SWATH_BY_SIGHT)
    }

    /// The width of a band.
    #[must_use]
    pub fn band(band: Length) -> Self {
        Self::one(band, DoubtOf::Band, defaults::BAND)
    }

    /// The spacing of the rows.
    #[must_use]
    pub fn rows(spacing: Length) -> Self {
        Self::one(spacing, DoubtOf::Rows, defaults::SPACING)
    }
}

impl Known<Volume> {
    /// What a cup or jug holds: its scale, foam and tilt, and marks a step apart.
    #[must_use]
    pub fn in_cup(volume: Volume, step: Option<Volume>) -> Self {
        let doubt = Budget::nothing()
            .shared(DoubtOf::CupScale, defaults::CUP_SCALE)
            .own(DoubtOf::Handling, defaults::HANDLING);
        let doubt = match step {
            Some(step) => doubt.own(DoubtOf::CupMarks, of_marks(step).ratio_to(volume)),
            None => doubt,
        };
        Self { value: volume, doubt }
    }

    /// What it took to fill up again to the same level.
    #[must_use]
    pub fn refilled(volume: Volume) -> Self {
        Self::one(volume, DoubtOf::Refill, defaults::REFILL)
    }

    /// What a tank holds by its own marks.
    #[must_use]
    pub fn by_tank_marks(volume: Volume) -> Self {
        Self::one(volume, DoubtOf::Tank, defaults::TANK)
    }
}

impl Known<Time> {
    /// A time taken by hand, with the watch's own rate as a doubt that drive and catch share.
    #[must_use]
    pub fn by_hand(time: Time, of: DoubtOf) -> Self {
        let each_end = defaults::HAND_TIMING_EACH_END;
        let doubt = Budget::nothing()
            .own(of, hand_timing(each_end, each_end).ratio_to(time))
            .shared(DoubtOf::Watch, defaults::WATCH);
        Self { value: time, doubt }
    }
}

impl Known<Flow> {
    /// A flow taken as it was given.
    #[must_use]
    pub fn flow_as_given(flow: Flow) -> Self {
        Self::one(flow, DoubtOf::FlowAsGiven, defaults::FLOW_AS_GIVEN)
    }
}

impl Known<Speed> {
    /// A speed taken as it was given.
    #[must_use]
    pub fn speed_as_given(speed: Speed) -> Self {
        Self::one(speed, DoubtOf::SpeedAsGiven, defaults::SPEED_AS_GIVEN)
    }
}

impl Known<Area> {
    /// The area of a field from a map or from memory.
    #[must_use]
    pub fn field(area: Area) -> Self {
        Self::one(area, DoubtOf::FieldArea, defaults::FIELD_AREA)
    }

    /// The area of a plot that was taped.
    #[must_use]
    pub fn plot(area: Area) -> Self {
        Self::one(area, DoubtOf::PlotArea, defaults::PLOT_AREA)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_default_flow_is_that_of_a_catch_of_thirty_seconds() {
        let catch: Known<Flow> = Known::in_cup(Volume::fluid_ounces(19.2), None)
            .over(Known::by_hand(Time::seconds(30.0), DoubtOf::TimingTheCatch));
        let relative = catch.doubt.relative();
        assert!(
            relative < defaults::FLOW_AS_GIVEN && relative > defaults::FLOW_AS_GIVEN - 0.001,
            "{relative}"
        );
    }

    #[test]
    fn what_someone_says_comes_back_as_it_was_said() {
        let speed = Known::either_way(Speed::miles_per_hour(5.0), Speed::miles_per_hour(0.1), DoubtOf::Given);
        let ranged = speed.ranged();
        assert!((ranged.low.as_miles_per_hour() - 4.9).abs() < 1e-12);
        assert!((ranged.high.as_miles_per_hour() - 5.1).abs() < 1e-12);
    }
}
