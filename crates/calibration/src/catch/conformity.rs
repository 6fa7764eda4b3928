//! How likely a measured value lies within its limits, by the measurement alone.

use super::limit::Limit;
use super::measured::DeviationRange;

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
