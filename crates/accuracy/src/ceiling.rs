//! How much one cup can tell at all: a judge who knows the laws of the world, the boom's offset, the section's loss and how hands
//! and watches are off, and only not what this tip is and whether its cup was misread.
//!
//! Nothing that goes by one cup can do better, so an aim beyond it is out of reach in that world. The judge learns from other
//! sprayers of the world how often each reading, held against what a sound tip would give there, comes from which kind of tip.

use crate::ailing::{Ailing, AilingWorld, Truth};
use crate::diagnosed::TipScore;
use crate::draw::DrawError;
use crate::split::{Cores, in_order};

/// Readings are put into classes so far apart in the logarithm: finer than the marks of the cup. Our own choice.
const CLASS: f64 = 0.004;
/// Readings beyond these logarithms are taken as on them: nothing runs, or five times too much.
const RANGE: (f64, f64) = (-3.0, 1.6);

/// What the judge has learned: of the readings in each class how many tips there were, faulty ones, and odd ones (faulty or
/// misread).
#[derive(Clone, Debug)]
pub struct Judge {
    classes: Vec<(f64, f64, f64)>,
}

impl Judge {
    /// Learns from so many sprayers of a world, which are not those that are judged.
    ///
    /// *Errors*: the first draw that cannot be made.
    pub fn of(world: AilingWorld, count: u32, from: u64, cores: Cores) -> Result<Self, DrawError> {
        let each = in_order(count, cores, |place| {
            let ailing = Ailing::of(world, from + u64::from(place))?;
            let tips = ailing.sections.iter().flatten().zip(ailing.read_against_sound());
            Ok(tips.map(|(tip, read)| (read, tip.truth != Truth::Sound, tip.slip)).collect())
        });
        let tips: Vec<Vec<(f64, bool, bool)>> = each.into_iter().collect::<Result<_, DrawError>>()?;
        Ok(Self::learned(&tips.concat()))
    }

    /// Learns from readings held against what a sound tip gives, each with whether its tip was faulty and its cup misread.
    fn learned(tips: &[(f64, bool, bool)]) -> Self {
        let mut classes = vec![(0.0, 0.0, 0.0); class(f64::INFINITY) + 1];
        for (against_sound, faulty, misread) in tips {
            let of = &mut classes[class(libm::log(*against_sound))];
            of.0 += 1.0;
            of.1 += f64::from(u8::from(*faulty));
            of.2 += f64::from(u8::from(*faulty || *misread));
        }
        Self { classes }
    }

    /// The chance that a tip is faulty.
    #[must_use]
    pub fn faulty(&self, tip: &TipScore) -> f64 {
        self.chance(tip, |of| of.1)
    }

    /// The chance that a tip is faulty or its cup misread.
    #[must_use]
    pub fn odd(&self, tip: &TipScore) -> f64 {
        self.chance(tip, |of| of.2)
    }

    fn chance(&self, tip: &TipScore, so: impl Fn(&(f64, f64, f64)) -> f64) -> f64 {
        let at = class(libm::log(tip.against_sound));
        // As far out as it takes to have seen enough.
        let mut reach = 1;
        loop {
            let near = &self.classes[at.saturating_sub(reach)..(at + reach + 1).min(self.classes.len())];
            let all: f64 = near.iter().map(|of| of.0).sum();
            if all >= ENOUGH || reach > self.classes.len() {
                return near.iter().map(so).sum::<f64>() / all.max(1.0);
            }
            reach *= 2;
        }
    }
}

/// So many tips near a reading are enough to go by. Our own choice: a standard error below a tenth.
const ENOUGH: f64 = 40.0;

// Some thousand classes.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
fn class(log: f64) -> usize {
    ((log.clamp(RANGE.0, RANGE.1) - RANGE.0) / CLASS) as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tip(against_sound: f64, truth: usize) -> TipScore {
        TipScore {
            causes: [1.0, 0.0, 0.0, 0.0, 0.0],
            truth,
            misread: 0.0,
            slipped: false,
            in_order: 1.0,
            against_sound,
            off: [0.0; 3],
        }
    }

    #[test]
    fn what_was_seen_is_what_is_said() {
        // Of a hundred tips that read a tenth high sixty were worn; all that read right were sound.
        let high = (0..100).map(|place| (1.1, place < 60, false));
        let right = (0..900).map(|_| (1.0, false, false));
        let judge = Judge::learned(&high.chain(right).collect::<Vec<_>>());
        assert!((judge.faulty(&tip(1.1, 0)) - 0.6).abs() < 1e-12);
        assert!(judge.faulty(&tip(1.0, 0)).abs() < 1e-12);
        // Nothing runs: the nearest that were seen speak.
        assert!(judge.faulty(&tip(0.0, 3)) <= 0.6);
    }
}
