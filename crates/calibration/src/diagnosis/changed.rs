//! Cups at another pressure: q² = k² (p − p₀). How the flow changed tells p₀, whatever each tip's own k is.

use super::evidence::TipEvidence;
use super::offsets::{FLOWS, STEP};
use super::parts::Parts;
use super::quantile::mean_and_spread;
use crate::verdict::NORMAL_FIVE;

/// How far the change of flow may be off what the pressures say, in steps either way: 30 %. Our own choice.
const REACH: i32 = 60;

/// What the tips caught at two pressures say of the change.
#[derive(Clone, Debug)]
pub(super) struct Changed {
    /// The pressure of the test against the other.
    ratio: f64,
    /// The logarithm of the likelihood of each change beyond √(p₂ ÷ p₁), in steps.
    logs: Vec<f64>,
    /// The spread of the change that is the gauge's or a shared watch's doing.
    spread: f64,
}

/// A change known better than this stands for itself. Our own choice: half of what sound tips differ by.
const SURE: f64 = 0.0065;
/// The least spread of a change, for weighing nodes. Our own choice: under a step of the grid.
const LEAST: f64 = 0.003;

impl Changed {
    /// From each tip's cups at both pressures; `spread` is what shifts all of them alike.
    pub fn of(ratio: f64, tips: &[(TipEvidence, TipEvidence)], spread: f64) -> Self {
        let mut logs = vec![0.0; places()];
        for (before, after) in tips {
            let likely = together(before, after);
            let most = likely.iter().copied().fold(f64::MIN_POSITIVE, f64::max);
            logs.iter_mut()
                .zip(likely)
                .for_each(|(sum, value)| *sum += libm::log((value / most).max(f64::MIN_POSITIVE)));
        }
        Self { ratio, logs, spread }
    }

    /// The change of flow that a zero of the pressure makes beyond √(p₂ ÷ p₁); `share` is of the pressure of the test.
    fn by_zero(&self, share: f64) -> f64 {
        0.5 * (libm::log1p(-(share * self.ratio).min(0.99)) - libm::log1p(-share))
    }

    /// How likely the cups are under a zero.
    pub fn likely(&self, share: f64) -> f64 {
        let by = self.by_zero(share);
        NORMAL_FIVE
            .iter()
            .map(|(node, weight)| weight * libm::exp(self.log_at(by + node * self.spread)))
            .sum()
    }

    /// The logarithm of the likelihood at any change: a parabola through the three nearest nodes.
    fn log_at(&self, change: f64) -> f64 {
        let steps = (change / STEP).clamp(-f64::from(REACH) + 1.0, f64::from(REACH) - 1.0);
        let along = steps - steps.round();
        // Within the grid by the clamp.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let place = (steps.round() + f64::from(REACH)) as usize;
        let at = |place: usize| self.logs.get(place).copied().unwrap_or(0.0);
        let [below, here, above] = [at(place - 1), at(place), at(place + 1)];
        here + 0.5 * along * (above - below) + 0.5 * along * along * (above - 2.0 * here + below)
    }

    /// The changes to try with the logarithms of their weights, the cups of the boom yet to be counted with each: three nodes
    /// of the Gauss–Hermite rule about what is most likely, each weighed by what was believed of it beforehand.
    pub fn nodes(&self, parts: &Parts) -> Vec<(f64, f64)> {
        let believed = |change: f64| -> f64 {
            let spread = self.spread.max(LEAST);
            parts
                .zeros()
                .map(|(share, weight)| {
                    let off = (change - self.by_zero(share)) / spread;
                    weight * libm::exp(-0.5 * off * off)
                })
                .sum()
        };
        let grid = (-REACH + 1..REACH).map(|node| f64::from(node) * STEP);
        let weights = grid.map(|change| (change, believed(change) * libm::exp(self.log_at(change))));
        let Some((mean, spread)) = mean_and_spread(weights) else { return vec![(0.0, 0.0)] };
        if spread < SURE {
            return vec![(mean, 0.0)];
        }
        // Both laws as densities, so that a boom that is off is weighed against the same.
        let all: f64 = parts.zeros().map(|(_, weight)| weight).sum();
        let scale = libm::log(spread / self.spread.max(LEAST) / all.max(f64::MIN_POSITIVE));
        THREE
            .iter()
            .map(|(node, weight)| {
                let change = mean + node * spread;
                // The rule's own law is divided out again.
                let log =
                    libm::log((weight * believed(change)).max(f64::MIN_POSITIVE)) + 0.5 * node * node + scale;
                (change, log)
            })
            .collect()
    }
}

/// Gauss–Hermite nodes and weights for a normal law: exact to the fifth power. Source: Abramowitz and Stegun, table 25.10.
const THREE: [(f64, f64); 3] =
    [(-1.732_050_807_568_877_2, 1.0 / 6.0), (0.0, 2.0 / 3.0), (1.732_050_807_568_877_2, 1.0 / 6.0)];

const fn places() -> usize {
    2 * REACH.unsigned_abs() as usize + 1
}

/// How likely one tip's cups at both pressures are at each change, whatever it gives.
fn together(before: &TipEvidence, after: &TipEvidence) -> Vec<f64> {
    let above = |evidence: &TipEvidence| -> Vec<f64> {
        evidence.all.iter().map(|value| value - evidence.floor).collect()
    };
    let (one, other) = (above(before), above(after));
    let (first, last) = before.stretch;
    let flat = after.floor * one.iter().sum::<f64>()
        + before.floor * other.iter().sum::<f64>()
        + FLOWS as f64 * before.floor * after.floor;
    (-REACH..=REACH)
        .map(|change| {
            let sum: f64 = (first..=last)
                .filter_map(|flow| Some(one[flow] * other.get(flow.checked_add_signed(change as isize)?)?))
                .sum();
            sum + flat
        })
        .collect()
}
