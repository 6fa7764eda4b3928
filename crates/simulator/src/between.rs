//! A range to draw from, and how the draws lie in it.

use units::Quantity;

use crate::random::Random;

/// A range to draw from: shares and plain numbers as `f64`, quantities by their type.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Between<Q> {
    /// The lowest.
    pub low: Q,
    /// The highest.
    pub high: Q,
}

/// How draws lie in a range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Shape {
    /// All equally often.
    #[default]
    Even,
    /// Small ones more often: the density falls in a straight line to nothing at the high end.
    MostlySmall,
    /// Large ones more often: the other way round.
    MostlyLarge,
}

impl<Q> Between<Q> {
    /// From `low` to `high`.
    pub const fn new(low: Q, high: Q) -> Self {
        Self { low, high }
    }
}

impl<Q: Copy> Between<Q> {
    /// Always the same.
    pub const fn always(value: Q) -> Self {
        Self { low: value, high: value }
    }
}

impl Between<f64> {
    /// Draws a number.
    pub fn draw(&self, shape: Shape, random: &mut Random) -> f64 {
        let share = random.share();
        let place = match shape {
            Shape::Even => share,
            Shape::MostlySmall => 1.0 - (1.0 - share).sqrt(),
            Shape::MostlyLarge => share.sqrt(),
        };
        self.low + (self.high - self.low) * place
    }
}

impl<Q: Quantity> Between<Q> {
    /// Draws a quantity, all equally often.
    pub fn draw_quantity(&self, random: &mut Random) -> Q {
        let range = Between::new(self.low.si(), self.high.si());
        Q::from_si(range.draw(Shape::Even, random))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::random::Part;

    #[test]
    fn shapes_have_the_means_of_their_triangles() {
        // A triangle's mean lies a third of the way from its heavy end; of an even range in the middle.
        let range = Between::new(1.0, 4.0);
        for (shape, mean) in [(Shape::Even, 2.5), (Shape::MostlySmall, 2.0), (Shape::MostlyLarge, 3.0)] {
            let mut random = Random::new(3, Part::Boom);
            let draws: Vec<f64> = (0..50_000).map(|_| range.draw(shape, &mut random)).collect();
            assert!(draws.iter().all(|draw| (1.0..=4.0).contains(draw)));
            let found = draws.iter().sum::<f64>() / 50_000.0;
            assert!((found - mean).abs() < 0.02, "{shape:?}: {found}");
        }
    }
}
