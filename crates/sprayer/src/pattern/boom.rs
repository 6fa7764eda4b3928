//! The boom's tips together, checked.

use units::{Angle, Length, Quantity};

use super::error::PatternError;
use super::fan::Fan;
use super::tip::SprayTip;

/// Tips from left to right as the driver sits, and the spacing they are meant to have.
#[derive(Clone, Debug, PartialEq)]
pub struct SprayBoom {
    tips: Vec<SprayTip>,
    spacing: Length,
}

/// The most tips taken, as on any boom here. Our own bound.
const MOST_TIPS: usize = 1000;

impl SprayBoom {
    /// A boom of these tips.
    ///
    /// *Errors*: fewer than two tips or more than 1000, no spacing, places not from left to right, nothing that sprays, a tip
    /// whose height, angle, flow, tilt or twist cannot be.
    pub fn new(tips: Vec<SprayTip>, spacing: Length) -> Result<Self, PatternError> {
        if !(2..=MOST_TIPS).contains(&tips.len()) {
            return Err(PatternError::Tips { tips: tips.len() });
        }
        if !spacing.is_positive() {
            return Err(PatternError::Spacing { spacing });
        }
        for (number, tip) in (1..).zip(&tips) {
            tip.check(number)?;
        }
        for (number, pair) in (2..).zip(tips.windows(2)) {
            if pair[1].place <= pair[0].place {
                return Err(PatternError::Order { tip: number, place: pair[1].place, before: pair[0].place });
            }
        }
        if tips.iter().all(|tip| tip.flow <= 0.0) {
            return Err(PatternError::AllPlugged);
        }
        Ok(Self { tips, spacing })
    }

    /// A boom of tips all alike, at their places, straight down.
    ///
    /// *Errors*: as [`Self::new`].
    pub fn alike(tips: u32, spacing: Length, height: Length, angle: Angle) -> Result<Self, PatternError> {
        let tip = |number: u32| SprayTip::new(spacing * f64::from(number), height, angle);
        Self::new((0..tips).map(tip).collect(), spacing)
    }

    /// The tips from left to right.
    #[must_use]
    pub fn tips(&self) -> &[SprayTip] {
        &self.tips
    }

    /// The spacing they are meant to have.
    #[must_use]
    pub const fn spacing(&self) -> Length {
        self.spacing
    }

    /// The same boom carried at another height.
    ///
    /// *Errors*: no height.
    pub fn at_height(&self, height: Length) -> Result<Self, PatternError> {
        let tips = self.tips.iter().map(|tip| SprayTip { height, ..*tip }).collect();
        Self::new(tips, self.spacing)
    }

    /// Where its middle is.
    pub(super) fn middle(&self) -> f64 {
        f64::midpoint(self.first(), self.last())
    }

    /// The part that no tip beyond either end would reach if the boom went on: where every fan there is meant to be is there.
    pub(super) fn overlapped(&self, fans: &[Fan]) -> (f64, f64) {
        let (mut left, mut right) = (0.0_f64, 0.0_f64);
        for tip in &self.tips {
            let width = tip.height.si() * libm::cos(tip.twist.as_radians());
            for fan in fans {
                let reach = fan.reach(tip.half_tangent());
                left = left.max(-reach.0 * width);
                right = right.max(reach.1 * width);
            }
        }
        (self.first() - self.spacing.si() + right, self.last() + self.spacing.si() - left)
    }

    /// The tips that lie over a stretch of ground, numbered from the left from 1: the one right above its middle, or those on
    /// either side of it. "Right above" is within a quarter of the spacing: our own choice.
    #[must_use]
    pub fn over(&self, place: Length) -> Vec<u32> {
        let near = |tip: &SprayTip| (tip.axis() - place).abs();
        let numbered = || (1_u32..).zip(&self.tips);
        let nearest = numbered().min_by(|one, other| near(one.1).si().total_cmp(&near(other.1).si()));
        if let Some((number, _)) = nearest.filter(|(_, tip)| near(tip) <= self.spacing / 4.0) {
            return vec![number];
        }
        let left = numbered().filter(|(_, tip)| tip.place <= place).map(|(number, _)| number).last();
        let right = numbered().find(|(_, tip)| tip.place > place).map(|(number, _)| number);
        left.into_iter().chain(right).collect()
    }

    pub(super) fn first(&self) -> f64 {
        self.tips.first().map_or(0.0, |tip| tip.place.si())
    }

    pub(super) fn last(&self) -> f64 {
        self.tips.last().map_or(0.0, |tip| tip.place.si())
    }
}
