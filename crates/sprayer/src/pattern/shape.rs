//! Shapes that a single fan's pattern may have, each spread over 1 from edge to edge.

use core::f64::consts::PI;

/// How a single fan spreads its flow from its left edge (−1) over the middle (0) to its right edge (1).
///
/// None of them is any real tip's: they stand for how far patterns may differ.
///
/// *Source*: plane distributions of unit area. Which of them to take is our own choice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Shape {
    /// 1 − |u|: straight flanks.
    Triangle,
    /// ¾(1 − u²): full shoulders.
    Parabola,
    /// cos²(πu/2): soft edges.
    RaisedCosine,
    /// 15/16 (1 − u²)²: softer than the parabola.
    Beta,
    /// A normal curve, cut off at the edges.
    TruncatedNormal,
    /// ½ everywhere: an even fan, made to spray a band by itself.
    EvenFan,
}

/// How wide the cut-off normal curve is, as a share of half the fan. Our assumption: its edges get a seventeenth of its middle.
const NORMAL_WIDTH: f64 = 0.42;

impl Shape {
    /// The shapes of fans that are made to overlap; the band runs over these.
    pub const TAPERED: [Self; 5] =
        [Self::Triangle, Self::Parabola, Self::RaisedCosine, Self::Beta, Self::TruncatedNormal];
    /// Every shape.
    pub const ALL: [Self; 6] = [
        Self::Triangle,
        Self::Parabola,
        Self::RaisedCosine,
        Self::Beta,
        Self::TruncatedNormal,
        Self::EvenFan,
    ];

    /// Returns the share of the flow that falls left of a place, −1 being the fan's left edge and 1 its right.
    ///
    /// *Source*: each shape's integral, in closed form.
    ///
    /// *Example*: a triangle at −0.5: (1 − 0.5)² ÷ 2 = 0.125.
    #[must_use]
    pub fn share_left_of(self, place: f64) -> f64 {
        let u = place.clamp(-1.0, 1.0);
        match self {
            Self::Triangle if u < 0.0 => (1.0 + u) * (1.0 + u) / 2.0,
            Self::Triangle => 1.0 - (1.0 - u) * (1.0 - u) / 2.0,
            Self::Parabola => 0.5 + 0.75 * u * (1.0 - u * u / 3.0),
            Self::RaisedCosine => 0.5 + u / 2.0 + libm::sin(PI * u) / (2.0 * PI),
            Self::Beta => 0.5 + 0.9375 * u * (1.0 - u * u * (2.0 / 3.0 - u * u / 5.0)),
            Self::TruncatedNormal => {
                let scaled = |u: f64| libm::erf(u / (NORMAL_WIDTH * core::f64::consts::SQRT_2));
                0.5 + scaled(u) / (2.0 * scaled(1.0))
            }
            Self::EvenFan => 0.5 + u / 2.0,
        }
    }

    /// The stable word.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Triangle => "triangle",
            Self::Parabola => "parabola",
            Self::RaisedCosine => "raised-cosine",
            Self::Beta => "beta",
            Self::TruncatedNormal => "truncated-normal",
            Self::EvenFan => "even",
        }
    }

    /// Looks the word up.
    #[must_use]
    pub fn named(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|shape| shape.word() == word.trim())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_shape_holds_the_whole_flow_half_of_it_on_each_side() {
        for shape in Shape::ALL {
            for (place, share) in [(-1.0, 0.0), (-7.0, 0.0), (0.0, 0.5), (1.0, 1.0), (3.0, 1.0)] {
                assert!((shape.share_left_of(place) - share).abs() < 1e-15, "{shape:?} at {place}");
            }
            assert_eq!(Shape::named(shape.word()), Some(shape));
        }
    }
}
