//! A value with the range it lies in, 95 times of 100.

use crate::quantity::Quantity;

/// How many standard uncertainties make half of a 95 % range of a normal law.
/// Source: JCGM 100:2008 (GUM), table G.1, 1.96; here to full precision, the normal quantile of 0.975.
pub const NORMAL_95: f64 = 1.959_963_984_540_054;

/// A value and its 95 % range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ranged<Q> {
    /// The best value.
    pub value: Q,
    /// The low end of the 95 % range.
    pub low: Q,
    /// The high end of the 95 % range.
    pub high: Q,
}

impl<Q: Quantity> Ranged<Q> {
    /// A value known from its relative standard uncertainty (GUM, normal law). What is more than nothing stays so: to
    /// first order a large doubt would reach below, where there is none of anything.
    #[must_use]
    pub fn from_relative(value: Q, standard: f64) -> Self {
        let half = value.si() * standard * NORMAL_95;
        let low = value.si() - half;
        let low = if value.si() >= 0.0 { low.max(0.0) } else { low };
        Self { value, low: Q::from_si(low), high: Q::from_si(value.si() + half) }
    }

    /// A value that is taken as it stands.
    #[must_use]
    pub fn exact(value: Q) -> Self {
        Self { value, low: value, high: value }
    }

    /// Half of the range, for choosing digits.
    #[must_use]
    pub fn either_way(&self) -> Q {
        Q::from_si((self.high.si() - self.low.si()) / 2.0)
    }

    /// The relative standard uncertainty that this range stands for (normal law).
    #[must_use]
    pub fn relative_standard(&self) -> f64 {
        if self.value.si() == 0.0 {
            return 0.0;
        }
        (self.high.si() - self.low.si()) / (2.0 * NORMAL_95 * self.value.si())
    }

    /// The same with every number put through `change`, which may turn the order round but must be monotone.
    #[must_use]
    pub fn map<P: Quantity>(&self, change: impl Fn(Q) -> P) -> Ranged<P> {
        let (one, other) = (change(self.low), change(self.high));
        let (low, high) = if one <= other { (one, other) } else { (other, one) };
        Ranged { value: change(self.value), low, high }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Speed;

    #[test]
    fn a_range_does_not_reach_below_nothing() {
        let speed = Ranged::from_relative(Speed::miles_per_hour(5.0), 1.0);
        assert_eq!(speed.low, Speed::ZERO);
        assert!((speed.high.as_miles_per_hour() - 5.0 * (1.0 + NORMAL_95)).abs() < 1e-12);
        let usual = Ranged::from_relative(Speed::miles_per_hour(5.0), 0.01);
        assert!((usual.low.as_miles_per_hour() - 5.0 * (1.0 - 0.01 * NORMAL_95)).abs() < 1e-12);
    }
}
