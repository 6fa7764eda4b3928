//! Cups under one timed run share its time: if the watch was stopped late, all of them hold more. That must not count
//! as so many tips' evidence.

use super::offsets::STEP;

/// A time that is surer than this part of a step moves nothing. Our own choice: a fifth of the spread of new tips.
const SURE: f64 = 0.5;
/// Beyond so many standard deviations nothing is left. Our own choice.
const REACH: f64 = 4.0;

/// Tips of one section whose cups were timed together.
pub(super) struct SharedTime {
    /// The likelihood of all of them on each base, against the best, the run being timed right.
    rise: Vec<f64>,
    /// The weights of its lateness, from the earliest step to the latest, the middle one being in time.
    late: Vec<f64>,
    /// The logarithm of the likelihood on each base, the run being as late as it may be.
    together: Vec<f64>,
}

impl SharedTime {
    /// From the logarithm of their likelihood on each base; `spread` is the standard uncertainty of the run's time (a share).
    pub fn of(logs: Vec<f64>, spread: f64) -> Self {
        let steps = spread / STEP;
        if steps < SURE {
            return Self { rise: Vec::new(), late: Vec::new(), together: logs };
        }
        // Hardly ever more than a dozen.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let reach = (REACH * steps).ceil().min(logs.len() as f64) as usize;
        let weight = |place: usize| {
            let off = (place as f64 - reach as f64) / steps;
            libm::exp(-0.5 * off * off)
        };
        let late: Vec<f64> = (0..=2 * reach).map(weight).collect();
        let all: f64 = late.iter().sum();
        let late: Vec<f64> = late.iter().map(|weight| weight / all).collect();
        let top = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let rise: Vec<f64> = logs.iter().map(|log| libm::exp(log - top)).collect();
        let mut run = Self { rise, late, together: Vec::new() };
        let sum = |base: usize| run.seen_from(base).map(|(_, weight)| weight).sum::<f64>();
        let together =
            (0..logs.len()).map(|base| top + libm::log(sum(base).max(f64::MIN_POSITIVE))).collect();
        run.together = together;
        run
    }

    /// The logarithm of the likelihood on each base.
    pub fn together(&self) -> &[f64] {
        &self.together
    }

    /// From a base, the bases its tips may seem to stand on with their weights. Beyond the ends stands the last of them.
    fn seen_from(&self, base: usize) -> impl Iterator<Item = (usize, f64)> {
        let reach = self.late.len() / 2;
        let last = self.rise.len() - 1;
        self.late.iter().enumerate().map(move |(place, weight)| {
            let seen = (base + place).saturating_sub(reach).min(last);
            (seen, weight * self.rise[seen])
        })
    }

    /// What weights on the section's bases are for its tips, the lateness of the run with them.
    pub fn bases(&self, bases: &[f64]) -> Vec<f64> {
        if self.late.is_empty() {
            return bases.to_vec();
        }
        let mut seen = vec![0.0; bases.len()];
        for (base, weight) in bases.iter().enumerate().filter(|(_, weight)| **weight > 0.0) {
            let all: f64 = self.seen_from(base).map(|(_, weight)| weight).sum();
            if all > 0.0 {
                self.seen_from(base).for_each(|(place, part)| seen[place] += weight * part / all);
            }
        }
        seen
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn normal(places: usize, centre: f64, spread: f64) -> Vec<f64> {
        let off = |place: usize| (place as f64 - centre) / spread;
        (0..places).map(|place| -0.5 * off(place) * off(place)).collect()
    }

    #[test]
    fn what_a_run_tells_is_as_wide_as_its_time() {
        // Many tips that together are sharp to 1 step, timed to 2 steps: √(1² + 2²) is left (sum of normal laws).
        let run = SharedTime::of(normal(201, 100.0, 1.0), 2.0 * STEP);
        let weights: Vec<f64> = run.together().iter().map(|log| libm::exp(*log)).collect();
        let found = super::super::quantile::mean_and_spread(
            weights.iter().enumerate().map(|(place, weight)| (place as f64, *weight)),
        );
        let spread = found.map_or(0.0, |(_, spread)| spread);
        assert!((spread - 5.0_f64.sqrt()).abs() < 0.01, "{spread}");
    }

    #[test]
    fn tips_of_a_late_run_seem_higher() {
        // The section is known to stand at 100, the run's cups point at 104: its tips are seen near there.
        let run = SharedTime::of(normal(201, 104.0, 0.5), 2.0 * STEP);
        let mut bases = vec![0.0; 201];
        bases[100] = 1.0;
        let seen = run.bases(&bases);
        assert!((seen.iter().sum::<f64>() - 1.0).abs() < 1e-12);
        let centre: f64 = seen.iter().enumerate().map(|(place, weight)| place as f64 * weight).sum();
        // Two normal laws multiplied: (100 ÷ 2² + 104 ÷ 0.5²) ÷ (1 ÷ 2² + 1 ÷ 0.5²) = 103.76.
        assert!((centre - 103.76).abs() < 0.05, "{centre}");
    }

    #[test]
    fn a_sure_time_changes_nothing() {
        let run = SharedTime::of(vec![0.0, -1.0], 0.001);
        assert_eq!(run.together(), [0.0, -1.0]);
        assert_eq!(run.bases(&[0.25, 0.75]), [0.25, 0.75]);
    }
}
