//! What one test is done with: a cup, perhaps a finer side to it, a watch, a pair of hands.

use units::Time;

use crate::cup::{Cup, CupKind};
use crate::hands::Hands;
use crate::random::{Part, Random};
use crate::watch::{Watch, WatchWorld};

/// What kits are drawn from.
#[derive(Clone, Debug, PartialEq)]
pub struct KitWorld {
    /// The standard deviation, as a share, by which a cup's marks are off as a whole.
    pub cup_scale: f64,
    /// The same of a scale.
    pub weight_scale: f64,
    /// Watches.
    pub watch: WatchWorld,
    /// The hands.
    pub hands: Hands,
}

/// What one test is done with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kit {
    cup_scale: f64,
    weight_scale: f64,
    watch: Watch,
    hands: Hands,
}

impl KitWorld {
    /// Careful hands, a watch worked by hand, a cup true to 1 %, a scale true to 0.2 %.
    ///
    /// *Source*: planning values of this house, our assumption.
    #[must_use]
    pub const fn careful() -> Self {
        Self { cup_scale: 0.01, weight_scale: 0.002, watch: WatchWorld::by_hand(), hands: Hands::careful() }
    }

    /// Draws the kit that belongs to a seed.
    #[must_use]
    pub fn kit(&self, seed: u64) -> Kit {
        let mut random = Random::new(seed, Part::Kit);
        Kit {
            cup_scale: self.cup_scale * random.normal(),
            weight_scale: self.weight_scale * random.normal(),
            watch: self.watch.draw(&mut random),
            hands: self.hands,
        }
    }
}

impl Kit {
    /// A cup of this kit. All its marks, ounces or millilitres, are off by the same share: they are on one vessel.
    #[must_use]
    pub fn cup(&self, kind: CupKind) -> Cup {
        let scale_error = match kind.unit() {
            crate::cup::MarkUnit::Grams => self.weight_scale,
            _ => self.cup_scale,
        };
        Cup { kind, scale_error }
    }

    /// The watch.
    #[must_use]
    pub const fn watch(&self) -> &Watch {
        &self.watch
    }

    /// The hands.
    #[must_use]
    pub const fn hands(&self) -> &Hands {
        &self.hands
    }

    /// The time from one timed run to the next.
    #[must_use]
    pub const fn between_runs(&self) -> Time {
        self.hands.between_runs
    }
}
