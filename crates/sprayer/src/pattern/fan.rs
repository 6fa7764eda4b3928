//! A fan: of an assumed shape, or as measured.

use super::measured::MeasuredFan;
use super::shape::Shape;

/// How a tip spreads its flow from side to side.
#[derive(Clone, Debug, PartialEq)]
pub enum Fan {
    /// A shape, as wide as the tip's angle says.
    Assumed(Shape),
    /// As it was measured; the tip's angle is not used.
    Measured(MeasuredFan),
}

impl Fan {
    /// The five shapes that the band runs over.
    #[must_use]
    pub fn tapered() -> Vec<Self> {
        Shape::TAPERED.into_iter().map(Self::Assumed).collect()
    }

    /// The stable word.
    #[must_use]
    pub const fn word(&self) -> &'static str {
        match self {
            Self::Assumed(shape) => shape.word(),
            Self::Measured(_) => "measured",
        }
    }

    /// The share left of a line down from the tip, by its tangent; `half` is the tangent of half the fan's angle.
    pub(super) fn share_left_of(&self, tangent: f64, half: f64) -> f64 {
        match self {
            Self::Assumed(shape) => shape.share_left_of(tangent / half),
            Self::Measured(fan) => fan.share_left_of(tangent),
        }
    }

    /// How far it reaches to either side, by tangents.
    pub(super) fn reach(&self, half: f64) -> (f64, f64) {
        match self {
            Self::Assumed(_) => (-half, half),
            Self::Measured(fan) => fan.reach(),
        }
    }
}
