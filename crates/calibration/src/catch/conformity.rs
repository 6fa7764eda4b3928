//! How likely a measured value lies within its limits, by the measurement alone.

use units::Verdict;

use super::error::{CatchError, ShareOf};
use super::limit::Limit;
use super::measured::DeviationRange;

/// The risk of being wrong that a verdict may carry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Risk(f64);

impl Risk {
    /// A risk between nothing and a half.
    ///
    /// *Errors*: nothing, a half or more, not a number: with no risk nothing can ever be told, with a half anything.
    pub fn new(risk: f64) -> Result<Self, CatchError> {
        if risk > 0.0 && risk < 0.5 {
            Ok(Self(risk))
        } else {
            Err(CatchError::Share { of: ShareOf::Risk, given: units::tidy_digits(risk).to_string() })
        }
    }

    /// The risk itself, a probability.
    #[must_use]
    pub const fn share(self) -> f64 {
        self.0
    }

    /// The verdict at this risk on something that is within with a probability.
    #[must_use]
    pub fn verdict(self, probability_within: f64) -> Verdict {
        if probability_within >= 1.0 - self.0 {
            Verdict::Within
        } else if probability_within <= self.0 {
            Verdict::Outside
        } else {
            Verdict::CannotTell
        }
    }
}

impl Default for Risk {
    /// One in twenty, the usual risk. Source: JCGM 106:2012, 8.3.2 (guard band of 1.645 u, 5 %).
    fn default() -> Self {
        Self(0.05)
    }
}

/// Returns the probability that a value with a standard uncertainty lies in `[low, high]`.
///
/// *Units*: a probability; the four values are in one unit, whichever.
///
/// *Assumptions*: a normal law about the measured value, nothing known beforehand.
///
/// *Source*: JCGM 106:2012, 7.4 and annex A: Φ((high − value) ÷ u) − Φ((low − value) ÷ u).
///
/// *Example*: 1.76 with a limit at 1.76 above: a half.
#[must_use]
pub fn probability_within(value: f64, standard: f64, low: f64, high: f64) -> f64 {
    if standard <= 0.0 {
        return if (low..=high).contains(&value) { 1.0 } else { 0.0 };
    }
    normal((high - value) / standard) - normal((low - value) / standard)
}

impl DeviationRange {
    /// Returns the probability, by the readings alone, that this deviation is within a limit.
    #[must_use]
    pub fn probability_within(&self, limit: &Limit) -> f64 {
        probability_within(self.deviation, self.standard, -limit.below(), limit.above())
    }
}

/// The normal distribution function.
fn normal(value: f64) -> f64 {
    0.5 * libm::erfc(-value / core::f64::consts::SQRT_2)
}
