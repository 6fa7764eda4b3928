//! A single fan's pattern as it was measured: what each groove of a table collected under one tip.

use units::{Length, Quantity};

use super::error::PatternError;

/// A fan as it was measured, kept as the share of its flow left of each groove's edge, seen from the tip.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredFan {
    /// How far right of the tip each edge lies, per height: the tangent of its angle from straight down.
    tangents: Vec<f64>,
    /// The share of the flow left of it.
    shares: Vec<f64>,
}

/// The most grooves taken. Our own bound: ten metres of the finest grooves, 10 mm.
const MOST_GROOVES: usize = 1000;

impl MeasuredFan {
    /// A fan out of what grooves from the left to the right collected, in any unit, at a height.
    ///
    /// *Units*: `tip_at` is where the tip stood, from the left edge of the first groove; without it over the middle of them.
    ///
    /// *Assumptions*: within a groove it fell evenly; each drop flies straight, so that the pattern widens with the height.
    ///
    /// *Errors*: nothing collected, an amount below nothing, no groove or height, more than 1000 grooves.
    pub fn new(
        collected: &[f64],
        groove: Length,
        height: Length,
        tip_at: Option<Length>,
    ) -> Result<Self, PatternError> {
        if !height.is_positive() {
            return Err(PatternError::NoHeight { tip: None, height });
        }
        if !groove.is_positive() {
            return Err(PatternError::Groove { groove });
        }
        if let Some(at) = collected.iter().position(|amount| !amount.is_finite() || *amount < 0.0) {
            return Err(PatternError::Collected { groove: at + 1, amount: collected[at] });
        }
        let whole: f64 = collected.iter().sum();
        if whole <= 0.0 || collected.len() > MOST_GROOVES {
            return Err(PatternError::NothingCollected { grooves: collected.len() });
        }
        // Counted in grooves, which are few.
        let number = |count: usize| f64::from(u32::try_from(count).unwrap_or(u32::MAX));
        let middle = groove * (number(collected.len()) / 2.0);
        let tip_at = tip_at.unwrap_or(middle);
        let mut left = 0.0;
        let mut fan = Self { tangents: vec![-tip_at.ratio_to(height)], shares: vec![0.0] };
        for (place, amount) in collected.iter().enumerate() {
            left += amount;
            fan.tangents.push((groove * number(place + 1) - tip_at).ratio_to(height));
            fan.shares.push(left / whole);
        }
        Ok(fan)
    }

    /// The share of the flow left of a line down from the tip, by the tangent of its angle.
    pub(super) fn share_left_of(&self, tangent: f64) -> f64 {
        let after = self.tangents.partition_point(|edge| *edge <= tangent);
        let (Some(before), true) = (after.checked_sub(1), after < self.tangents.len()) else {
            return if after == 0 { 0.0 } else { 1.0 };
        };
        let within = (tangent - self.tangents[before]) / (self.tangents[after] - self.tangents[before]);
        self.shares[before] + within * (self.shares[after] - self.shares[before])
    }

    /// How far it reaches to the left and to the right, by tangents: where the first and the last drop was caught.
    pub(super) fn reach(&self) -> (f64, f64) {
        let first = self.shares.iter().rposition(|share| *share <= 0.0).unwrap_or(0);
        let last = self.shares.iter().position(|share| *share >= 1.0).unwrap_or(self.tangents.len() - 1);
        (self.tangents[first], self.tangents[last])
    }
}
