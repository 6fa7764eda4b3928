//! The watch and the hand on it: late or early at the start and the stop, a rate that is off.

use units::{Quantity, Time};

use crate::between::{Between, Shape};
use crate::random::Random;

/// A watch in one hand. Nobody at the boom knows how it is off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Watch {
    /// The standard deviation of starting, and again of stopping.
    pub reaction: Time,
    /// How much longer than meant this hand holds every cup under (below nothing: shorter).
    pub lag: Time,
    /// By what share the true time of a run is longer than the watch shows.
    pub rate_error: f64,
}

/// What watches and hands are drawn from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WatchWorld {
    /// The standard deviation of starting, and again of stopping.
    pub reaction: Between<Time>,
    /// How much longer than meant a hand holds every cup under.
    pub lag: Between<Time>,
    /// The standard deviation of the watch's rate, as a share.
    pub rate: f64,
}

impl WatchWorld {
    /// Hand timing of 0.2 s at each end, no lag, a watch true to 0.1 %.
    ///
    /// *Source*: planning values of this house (hand timing 0.2 s at each end, watch 0.1 %), our assumption.
    #[must_use]
    pub const fn by_hand() -> Self {
        Self { reaction: Between::always(Time::seconds(0.2)), lag: Between::always(Time::ZERO), rate: 0.001 }
    }

    /// Draws a watch.
    pub fn draw(&self, random: &mut Random) -> Watch {
        Watch {
            reaction: self.reaction.draw_quantity(random),
            lag: Time::from_si(Between::new(self.lag.low.si(), self.lag.high.si()).draw(Shape::Even, random)),
            rate_error: self.rate * random.normal(),
        }
    }
}

impl Watch {
    /// Returns how long cups truly stood under the tips in a run that was meant to last `meant`.
    pub fn run(&self, meant: Time, random: &mut Random) -> Time {
        let start = self.reaction * random.normal();
        let stop = self.reaction * random.normal();
        (meant * (1.0 + self.rate_error) + self.lag + start + stop).max(Time::ZERO)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::random::Part;

    #[test]
    fn start_and_stop_add_by_their_squares() {
        // JCGM 100:2008, 5.1.2: √(0.2² + 0.2²) = 0.2828 s about 30.3 s + 0.1 s.
        let watch = Watch { reaction: Time::seconds(0.2), lag: Time::seconds(0.1), rate_error: 0.01 };
        let mut random = Random::new(2, Part::Catching);
        let runs: Vec<f64> =
            (0..50_000).map(|_| watch.run(Time::seconds(30.0), &mut random).as_seconds() - 30.4).collect();
        let mean = runs.iter().sum::<f64>() / 50_000.0;
        let spread = (runs.iter().map(|run| run * run).sum::<f64>() / 50_000.0).sqrt();
        assert!(mean.abs() < 0.006 && (spread - 0.2828).abs() < 0.005, "{mean} {spread}");
    }
}
