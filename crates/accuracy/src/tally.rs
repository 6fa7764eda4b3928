//! What is counted: how often calls are right, how many are left open, whether probabilities mean what they say.

use units::Verdict;

use crate::calls::{Call, Way, by_boom, by_readings, judged, summary};
use crate::draw::{Draw, DrawError};
use crate::ratio::{Counted, Ratio};
use crate::split::{Cores, in_order};
use crate::whole::Whole;

/// The same draws judged in the three ways.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ThreeWays {
    /// By the plain rule.
    pub plain: Tally,
    /// By the readings alone.
    pub measured: Tally,
    /// By the readings and the boom.
    pub boom: Tally,
    /// What was said of booms as a whole.
    pub whole: Whole,
}

impl ThreeWays {
    /// Judges draws of seeds `from`, `from + 1`, … and counts.
    ///
    /// *Errors*: the first draw that cannot be made.
    pub fn of(
        draws: u32,
        from: u64,
        cores: Cores,
        draw: impl Fn(u64) -> Result<Draw, DrawError> + Sync,
    ) -> Result<Self, DrawError> {
        let mut all = Self::default();
        let judged = in_order(draws, cores, |place| {
            let draw = draw(from + u64::from(place))?;
            let summary = summary(&draw)?;
            let judged = judged(&draw, &summary)?;
            let calls =
                [by_readings(&draw, &summary, Way::Plain), by_readings(&draw, &summary, Way::Measured)];
            Ok::<_, DrawError>((calls, by_boom(&draw, &summary, &judged), judged.boom))
        });
        for of_draw in judged {
            let ([plain, measured], boom, whole) = of_draw?;
            all.plain.boom(&plain);
            all.measured.boom(&measured);
            all.boom.boom(&boom);
            all.whole.boom(&boom, &whole);
        }
        Ok(all)
    }
}

/// Faults between these true deviations are counted apart: the hardest that matter.
pub const NEAR_FAULTS: (f64, f64) = (0.10, 0.15);

/// The bins of the reliability curve.
pub const BINS: usize = 10;

/// Counts over many draws.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Tally {
    /// Draws.
    pub draws: u32,
    /// Of tips called within, those that are.
    pub within_right: Ratio,
    /// Of tips called outside, those that are.
    pub outside_right: Ratio,
    /// Tips left open.
    pub cannot_tell: Ratio,
    /// The Brier score.
    pub brier: Ratio,
    /// Ranges that hold the truth.
    pub coverage: Ratio,
    /// Of true faults near the limit, those called within.
    pub near_missed: Ratio,
    /// Of true faults, those called outside.
    pub faults_found: Ratio,
    /// Of sound tips, those called outside.
    pub false_alarms: Ratio,
    /// Wrong calls for each boom.
    pub wrong_calls: Ratio,
    /// For each bin of the probability within: the share that is within.
    pub bins: [Ratio; BINS],
    /// For each bin: the mean of the probability.
    pub said: [Ratio; BINS],
}

impl Tally {
    /// Counts the calls on one boom.
    pub fn boom(&mut self, calls: &[Call]) {
        let mut of_boom = OfBoom::default();
        for call in calls {
            of_boom.count(call);
        }
        self.draws += 1;
        self.within_right.draw(of_boom.within_right);
        self.outside_right.draw(of_boom.outside_right);
        self.cannot_tell.draw(of_boom.cannot_tell);
        self.brier.draw(of_boom.brier);
        self.coverage.draw(of_boom.coverage);
        self.near_missed.draw(of_boom.near_missed);
        self.faults_found.draw(of_boom.faults_found);
        self.false_alarms.draw(of_boom.false_alarms);
        self.wrong_calls.draw(Counted { so: of_boom.wrong, of: 1.0 });
        for (ratio, counted) in self.bins.iter_mut().zip(of_boom.bins) {
            ratio.draw(counted);
        }
        for (ratio, counted) in self.said.iter_mut().zip(of_boom.said) {
            ratio.draw(counted);
        }
    }
}

#[derive(Default)]
struct OfBoom {
    within_right: Counted,
    outside_right: Counted,
    cannot_tell: Counted,
    brier: Counted,
    coverage: Counted,
    near_missed: Counted,
    faults_found: Counted,
    false_alarms: Counted,
    wrong: f64,
    bins: [Counted; BINS],
    said: [Counted; BINS],
}

impl OfBoom {
    fn count(&mut self, call: &Call) {
        let right = call.right();
        let is = |is: bool| f64::from(u8::from(is));
        match call.verdict {
            Verdict::Within => self.within_right.add(is(right == Verdict::Within)),
            Verdict::Outside => self.outside_right.add(is(right == Verdict::Outside)),
            Verdict::CannotTell => {}
        }
        self.wrong += is(call.verdict != Verdict::CannotTell && call.verdict != right);
        self.cannot_tell.add(is(call.verdict == Verdict::CannotTell));
        let truth = is(right == Verdict::Within);
        self.brier.add((call.probability_within - truth) * (call.probability_within - truth));
        if let Some((low, high)) = call.range {
            self.coverage.add(is(low <= call.truth && call.truth <= high));
        }
        if right == Verdict::Outside {
            self.faults_found.add(is(call.verdict == Verdict::Outside));
            if call.truth.abs() <= NEAR_FAULTS.1 {
                self.near_missed.add(is(call.verdict == Verdict::Within));
            }
        } else {
            self.false_alarms.add(is(call.verdict == Verdict::Outside));
        }
        let bin = bin_of(call.probability_within);
        self.bins[bin].add(truth);
        self.said[bin].add(call.probability_within);
    }
}

/// The bin of a probability.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a probability lies in 0 to 1")]
fn bin_of(probability: f64) -> usize {
    ((probability * BINS as f64) as usize).min(BINS - 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn call(truth: f64, verdict: Verdict, probability_within: f64) -> Call {
        Call { tip: 1, truth, verdict, probability_within, range: Some((truth - 0.01, truth + 0.01)) }
    }

    #[test]
    fn calls_are_counted_by_hand() {
        let mut tally = Tally::default();
        tally.boom(&[
            call(0.02, Verdict::Within, 1.0),
            call(0.12, Verdict::Within, 0.96),
            call(-0.30, Verdict::Outside, 0.0),
            call(0.08, Verdict::CannotTell, 0.5),
        ]);
        assert_eq!(tally.within_right.value(), Some(0.5));
        assert_eq!(tally.outside_right.value(), Some(1.0));
        assert_eq!(tally.cannot_tell.value(), Some(0.25));
        assert_eq!(tally.near_missed.value(), Some(1.0));
        assert_eq!(tally.faults_found.value(), Some(0.5));
        assert_eq!(tally.wrong_calls.value(), Some(1.0));
        // (0 + 0.96² + 0 + 0.5²) ÷ 4 = 0.2929.
        assert!((tally.brier.value().unwrap_or(0.0) - 0.2929).abs() < 1e-12);
        assert_eq!(tally.bins[9].value(), Some(0.5));
    }

    #[test]
    fn the_last_bin_holds_certainty() {
        assert_eq!([bin_of(0.0), bin_of(0.0999), bin_of(0.1), bin_of(0.95), bin_of(1.0)], [0, 0, 1, 9, 9]);
    }
}
